// Times the whole program on the records of a studio that has noted 10,000 batches of 200 runs with
// 100,000 notes, and prints the medians: each command is to take less than 200 ms, a note with its
// syncs less than 30 ms.
#include "records/act.h"
#include "records/batches.h"
#include "records/note.h"
#include "records/noting.h"
#include "records/records.h"
#include "whole_process.h"

#include <algorithm>
#include <cstdio>
#include <exception>
#include <filesystem>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;
using namespace brimwright;
using namespace brimwright::records;

constexpr int batches_in_all = 10'000, runs = 200, notes_each = 10;
constexpr auto moment = "2026-12-01T09:30:05+01:00";
const Place nowhere{"", ""};

std::string day_of(int number) {
  const auto two = [](int n) { return (n < 10 ? "0" : "") + std::to_string(n); };
  return std::to_string(2016 + number / 1000 % 10) + "-" + two(1 + number / 28 % 12) + "-" +
         two(1 + number % 28);
}

/// Everything in one act: only the reading of it is timed. The first run is the example's own.
void fill(const fs::path& folder, const std::string& plan, const std::string& id) {
  Records records = Records::kept_in(folder);
  Act act(records, "fill", moment, "fill", "{}");
  for (int i = 0; i < batches_in_all; ++i) {
    const int run = i % runs;
    std::string its_plan = plan;
    its_plan.insert(its_plan.size() - 2, std::string(static_cast<std::size_t>(run), ' '));
    const Batch batch =
        begin_batch(records,
                    {.id = "batch " + std::to_string(i),
                     .run = run == 0 ? id : "run " + std::to_string(run),
                     .run_file = run == 0 ? "plain_bars.run.json" : "other.run.json",
                     .run_name = "Plain bars",
                     .number = 1,
                     .begun_on = day_of(i),
                     .begun_at = moment,
                     .pieces = 12,
                     .program = "0.1.0",
                     .plan = its_plan},
                    nowhere);
    std::vector<Note> notes;
    for (const char* key :
         {"base.made", "base.left_over", "base.on_tools", "base.cup_holds", "base.cup",
          "pour.filled", "pieces.made", "pieces.rejected", "tested_how", "tested"})
      notes.push_back({key,
                       std::string(key) == "tested"                ? "pass"
                       : std::string(key) == "tested_how"          ? "phenolphthalein"
                       : std::string(key) == "base.cup_holds"      ? "120 ml"
                       : std::string(key) == "base.cup"            ? "121 g"
                       : std::string(key).starts_with("base.made") ? "1.3 kg"
                       : std::string(key).starts_with("base.")     ? "20 g"
                                                                   : "1",
                       nowhere});
    note(records, batch, notes, {.today = "2027-01-01", .noted_at = moment});
  }
  act.done();
}

double median(std::vector<double> times) {
  std::sort(times.begin(), times.end());
  return times[times.size() / 2];
}

void measure() {
  const ScratchFolder folder("records_benchmarks");
  for (const auto& entry : fs::directory_iterator(BRIMWRIGHT_SOURCE_DIR "/examples"))
    if (entry.path().extension() == ".json") fs::copy(entry.path(), folder.path());
  const std::string run = (folder.path() / "plain_bars.run.json").string();
  // The plan as the program itself freezes it.
  (void)spent_by(BRIMWRIGHT_PROGRAM, {"note", run, "--begin"});
  std::string plan, id;
  {
    const auto begun = Records::in(folder.path());
    const Batch batch = batches(*begun).front();
    plan = plan_of(*begun, batch);
    id = batch.run;
  }
  fs::remove(folder.path() / file_name);
  fill(folder.path(), plan, id);
  std::printf("%d batches of %d runs, %d notes: %.1f MB\n", batches_in_all, runs,
              batches_in_all * notes_each,
              static_cast<double>(fs::file_size(folder.path() / file_name)) / 1e6);
  const std::string code = [&] {
    const auto records = Records::in(folder.path());
    return newest_batch(*records, id, 1)->code;
  }();
  struct Case {
    const char* what;
    std::vector<std::string> words;
    std::vector<double> times = {};
  };
  std::vector<Case> cases = {
      {"a note, with its syncs", {"note", run, "--batch-code", code, "--set", "pieces.made=11"}},
      {"three notes at once",
       {"note", run, "--batch-code", code, "--set", "pieces.made=11", "--set", "pieces.rejected=1",
        "--set", "pieces.why=chipped"}},
      {"the blanks of one batch", {"note", run, "--batch-code", code}},
      {"all 50 batches of a run", {"note", run}},
      {"the same as JSON", {"note", run, "--json"}},
      {"begin another making", {"note", run, "--begin", "--again"}},
      {"what the records hold, checked whole", {"records", folder.path().string()}},
      {"the plan, its label with codes", {"plan", run}},
      {"the program alone", {"--version"}}};
  for (int round = 0; round < 15; ++round)
    for (Case& one : cases)
      one.times.push_back(spent_by(BRIMWRIGHT_PROGRAM, one.words).milliseconds);
  for (const Case& one : cases) std::printf("%-40s %7.1f ms\n", one.what, median(one.times));
}

}  // namespace

int main() {
  try {
    measure();
  } catch (const std::exception& error) {
    std::fprintf(stderr, "%s\n", error.what());
    return 1;
  }
}
