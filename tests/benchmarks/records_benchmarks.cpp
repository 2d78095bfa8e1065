// Times the whole program on the records of a studio that has noted 10,000 batches with 100,000
// notes, of 200 runs and of one run alone, and prints the medians: each command is to take less
// than 200 ms, a note with its syncs less than 30 ms. An order takes what of the batches stands
// ready.
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
#include <utility>
#include <vector>

namespace {

namespace fs = std::filesystem;
using namespace brimwright;
using namespace brimwright::records;

constexpr int batches_in_all = 10'000, notes_each = 10;
constexpr auto moment = "2026-12-01T09:30:05+01:00";
const Place nowhere{"", ""};

std::string day_of(int number) {
  const auto two = [](int n) { return (n < 10 ? "0" : "") + std::to_string(n); };
  return std::to_string(2016 + number / 1000 % 10) + "-" + two(1 + number / 28 % 12) + "-" +
         two(1 + number % 28);
}

const std::vector<std::pair<std::string, std::string>>& noted() {
  static const std::vector<std::pair<std::string, std::string>> all = {
      {"base.made", "1.3 kg"},   {"base.left_over", "20 g"},
      {"base.on_tools", "20 g"}, {"base.cup_holds", "120 ml"},
      {"base.cup", "121 g"},     {"pieces.made", "12"},
      {"pieces.rejected", "1"},  {"tested_how", "phenolphthalein"},
      {"tested", "pass"},        {"ready_on", "2026-12-01"}};
  return all;
}

/// A batch as the program itself freezes it.
struct Frozen {
  std::string run, plan;
  std::vector<Source> sources;
};

/// Everything in one act: only the reading of it is timed. The first run is the example's own.
void fill(const fs::path& folder, const Frozen& frozen, int runs) {
  Records records = Records::kept_in(folder);
  Act act(records, "fill", moment, "fill", "{}");
  std::vector<Note> notes;
  for (const auto& [key, value] : noted()) notes.push_back({key, value, nowhere});
  for (int i = 0; i < batches_in_all; ++i) {
    const int run = i % runs;
    std::string its_plan = frozen.plan;
    its_plan.insert(its_plan.size() - 2, std::string(static_cast<std::size_t>(run), ' '));
    const Batch batch =
        begin_batch(records,
                    {.id = "batch " + std::to_string(i),
                     .run = run == 0 ? frozen.run : "run " + std::to_string(run),
                     .run_file = run == 0 ? "plain_bars.run.json" : "other.run.json",
                     .run_name = "Plain bars",
                     .number = 1,
                     .begun_on = day_of(i),
                     .begun_at = moment,
                     .pieces = 12,
                     .program = "0.1.0",
                     .plan = its_plan,
                     .sources = frozen.sources},
                    nowhere);
    note(records, batch, notes, {.today = "2027-01-01", .noted_at = moment});
  }
  act.done();
}

double median(std::vector<double> times) {
  std::sort(times.begin(), times.end());
  return times[times.size() / 2];
}

struct Case {
  const char* what;
  std::vector<std::string> words;
  std::vector<double> times = {};
};

void time_all(std::vector<Case> cases) {
  for (int round = 0; round < 15; ++round)
    for (Case& one : cases)
      one.times.push_back(spent_by(BRIMWRIGHT_PROGRAM, one.words).milliseconds);
  for (const Case& one : cases) std::printf("%-40s %7.1f ms\n", one.what, median(one.times));
}

/// Where 50 batches are of the run, 550 pieces stand ready and the rest is planned.
std::vector<Case> order_cases(const fs::path& folder) {
  const std::string order = folder / "market.order.json";
  write_file(order, R"({ "schema": "brimwright.order/1", "ready": "take", "due": "2027-03-01",
    "lines": [ { "run": "plain_bars.run.json", "pieces": 600 } ] })");
  return {{"quote an order that takes ready pieces", {"quote", order}},
          {"buy for it", {"buy", order}},
          {"days for it", {"days", order}}};
}

void measure(int runs) {
  const ScratchFolder folder("records_benchmarks");
  for (const auto& entry : fs::directory_iterator(BRIMWRIGHT_SOURCE_DIR "/examples"))
    if (entry.path().extension() == ".json") fs::copy(entry.path(), folder.path());
  write_file(folder.path() / "studio.json",
             R"({ "schema": "brimwright.studio/1", "currency": "EUR",
  "days": { "making": { "tuesday": "6 h", "friday": "6 h" }, "pots_owned": 1, "rack_places": 5000 },
  "work": { "paid_an_hour": "20.00", "each_batch": "90 min", "each_piece_packed": "1 min" } })");
  const std::string run = (folder.path() / "plain_bars.run.json").string();
  (void)spent_by(BRIMWRIGHT_PROGRAM, {"note", run, "--begin"});
  Frozen frozen;
  {
    const auto begun = Records::in(folder.path());
    const Batch batch = batches(*begun).front();
    frozen = {batch.run, plan_of(*begun, batch), sources_of(*begun, batch)};
  }
  fs::remove(folder.path() / file_name);
  fill(folder.path(), frozen, runs);
  std::printf("%d batches of %d runs, %d notes: %.1f MB\n", batches_in_all, runs,
              batches_in_all * notes_each,
              static_cast<double>(fs::file_size(folder.path() / file_name)) / 1e6);
  if (runs == 1) return time_all(order_cases(folder.path()));
  const std::string code = [&] {
    const auto records = Records::in(folder.path());
    return newest_batch(*records, frozen.run, 1)->code;
  }();
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
  for (Case& one : order_cases(folder.path())) cases.push_back(std::move(one));
  time_all(std::move(cases));
}

}  // namespace

int main() {
  try {
    measure(200);
    measure(1);
  } catch (const std::exception& error) {
    std::fprintf(stderr, "%s\n", error.what());
    return 1;
  }
}
