// Times the whole command that learns, in a studio that has noted 10,000 batches of 200 runs with
// 170,000 notes, of which every figure that they tell is other than planned: each is suggested, and
// the run is planned once more for it. Then once more where each batch has noted weights too.
// Prints medians: the command is to take less than 200 ms, and what it takes more than a plan
// alone, the figures, less than 100 ms.
#include "records/act.h"
#include "records/batches.h"
#include "records/note.h"
#include "records/noting.h"
#include "records/records.h"
#include "whole_process.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <exception>
#include <filesystem>
#include <random>
#include <string>
#include <utility>
#include <vector>

namespace {

namespace fs = std::filesystem;
using namespace brimwright;
using namespace brimwright::records;
using Json = nlohmann::json;

constexpr int batches_in_all = 10'000, runs = 200, rounds = 15;
constexpr std::size_t weights_each = 5;
constexpr auto moment = "2026-12-01T09:30:05+01:00";
constexpr auto run_file = "spring_cups.run.json";
const Place nowhere{"", ""};

std::string day_of(int number) {
  const auto two = [](int n) { return (n < 10 ? "0" : "") + std::to_string(n); };
  return std::to_string(2016 + number / 1000 % 10) + "-" + two(1 + number / 28 % 12) + "-" +
         two(1 + number % 28);
}

/// What is noted of batches in which all is other than the plan took for granted.
class Making {
 public:
  explicit Making(const Json& plan) : plan_(plan) {}

  /// Of the first things that are weighed for the base, a little other than planned.
  std::vector<Note> weights() {
    std::vector<Note> all;
    for (const Json& vessel : plan_["batches"][0]["weigh_out"])
      for (const Json& row : vessel["rows"]) {
        const auto key = row["key"].get<std::string>();
        if (key.starts_with("pour.") && all.size() < weights_each)
          all.push_back(of(("weighed." + key).c_str(), near(row["g"])));
      }
    return all;
  }

  std::vector<Note> notes() {
    const Json& batch = plan_["batches"][0];
    const Json& pipe = plan_["assumptions"]["pipe"];
    const double casts = batch["casts"], pot = near(35), jugs = near(30), density = near(1.03);
    const double in_pieces = 1.02 * casts * density * plan_["pour"]["volume_each_ml"].get<double>();
    const double bowl = near(36), bag = near(30), tip = near(6), changes = 2 * near(12);
    const double topping = 0.63 * casts * (near(39) + pipe["in_headspace_each_ml"].get<double>());
    const std::string count = std::to_string(batch["casts"].get<int>());
    return {of("base.made", in_pieces + pot + jugs + 85 + 20),
            of("base.left_over", 20),
            of("base.on_tools", pot + jugs + 85),
            of("base.in_pot", pot),
            of("base.in_jugs", jugs),
            of("base.cup", 120 * density),
            {"pour.filled", count, nowhere},
            {"pour.line_off", "0 mm", nowhere},
            of("topping.made", topping + bowl + bag + tip + changes + 15),
            of("topping.left_over", 15),
            of("topping.on_tools", bowl + bag + tip + changes),
            of("topping.in_bowl", bowl),
            of("topping.in_bag", bag),
            of("topping.in_tip", tip),
            of("topping.cup", 120 * 0.63),
            {"topping.piped", count, nowhere},
            {"minutes.making", "90 min", nowhere}};
  }

 private:
  double near(double value) { return value * std::normal_distribution<double>(1, 0.02)(random_); }
  static Note of(const char* key, double grams) {
    return {key, std::to_string(std::round(10 * grams) / 10) + " g", nowhere};
  }

  const Json& plan_;
  std::mt19937_64 random_{1};
};

/// Everything in one act: only the reading of it is timed.
void fill(const fs::path& folder, const std::string& plan, const std::string& id,
          bool with_weights) {
  const Json planned = Json::parse(plan);
  Making making(planned);
  Records records = Records::kept_in(folder);
  Act act(records, "fill", moment, "fill", "{}");
  for (int i = 0; i < batches_in_all; ++i) {
    const int run = i % runs;
    std::string its_plan = plan;  // blanks make it another document of the same plan
    its_plan.insert(its_plan.size() - 2, std::string(static_cast<std::size_t>(run), ' '));
    const Batch batch = begin_batch(records,
                                    {.id = "batch " + std::to_string(i),
                                     .run = run == 0 ? id : "run " + std::to_string(run),
                                     .run_file = run == 0 ? run_file : "other.run.json",
                                     .run_name = "Cups",
                                     .number = 1,
                                     .begun_on = day_of(i),
                                     .begun_at = moment,
                                     .pieces = 24,
                                     .program = "0.1.0",
                                     .plan = its_plan},
                                    nowhere);
    auto notes = making.notes();
    if (with_weights)
      for (Note& weight : making.weights()) notes.push_back(std::move(weight));
    std::vector<std::string> confirmed;
    for (const Note& one : notes) confirmed.push_back(one.value);
    note(records, batch, notes,
         {.today = "2027-01-01", .noted_at = moment, .confirmed = confirmed});
  }
  act.done();
}

double median_ms(const std::vector<std::string>& words) {
  std::vector<double> times;
  for (int round = 0; round < rounds; ++round)
    times.push_back(spent_by(BRIMWRIGHT_PROGRAM, words).milliseconds);
  std::sort(times.begin(), times.end());
  return times[times.size() / 2];
}

void measure(bool with_weights) {
  const ScratchFolder folder("learn_benchmarks");
  for (const auto& entry : fs::directory_iterator(BRIMWRIGHT_SOURCE_DIR "/examples"))
    if (entry.path().extension() == ".json") fs::copy(entry.path(), folder.path());
  const std::string run = (folder.path() / run_file).string();
  // The plan as the program itself freezes it.
  (void)spent_by(BRIMWRIGHT_PROGRAM, {"note", run, "--batch", "1", "--begin"});
  std::string plan, id;
  {
    const auto begun = Records::in(folder.path());
    const Batch batch = batches(*begun).front();
    plan = plan_of(*begun, batch);
    id = batch.run;
  }
  fs::remove(folder.path() / file_name);
  const double plan_ms = median_ms({"plan", run});
  fill(folder.path(), plan, id, with_weights);
  std::printf("%d batches of %d runs%s: %.1f MB\n", batches_in_all, runs,
              with_weights ? ", with weights" : "",
              static_cast<double>(fs::file_size(folder.path() / file_name)) / 1e6);
  std::printf("%-40s %7.1f ms\n", "a plan of the run", plan_ms);
  const double text_ms = median_ms({"learn", run});
  std::printf("%-40s %7.1f ms\n", "what batches tell of it", text_ms);
  std::printf("%-40s %7.1f ms\n", "of that, more than a plan", text_ms - plan_ms);
  std::printf("%-40s %7.1f ms\n", "the same as JSON", median_ms({"learn", run, "--json"}));
}

}  // namespace

int main() {
  try {
    for (const bool with_weights : {false, true}) measure(with_weights);
  } catch (const std::exception& error) {
    std::fprintf(stderr, "%s\n", error.what());
    return 1;
  }
}
