// Times the program on the records of a long life: 10,000 batches, 100,000 rows of lots and of what
// was taken from them. Each case is the whole program, in one interleaved run; medians are printed.
#include "records/act.h"
#include "records/batches.h"
#include "records/database.h"
#include "records/lots.h"
#include "records/pieces.h"
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

constexpr int batches = 10'000, lots = 10'000, rows_a_batch = 9;  // 10,000 + 90,000 rows
constexpr auto day = "2026-11-14";

const std::vector<std::string>& materials() {
  static const std::vector<std::string> all = {"olive", "coconut", "shea", "castor", "NaOH",
                                               "mica",  "kaolin",  "palm", "water"};
  return all;
}

/// As use_lots() leaves it, without looking through all lots for each.
void take(records::Records& records, int lot, const std::string& batch, int row) {
  auto& connection = records.database().connection();
  SQLite::Statement weighed(connection, "INSERT INTO weighed VALUES (?, ?, ?, 'Something', 0, ?)");
  const std::string key = "row " + std::to_string(row);
  SQLite::bind(weighed, batch, key, materials()[static_cast<std::size_t>(row)], 100'000'000);
  weighed.exec();
  SQLite::Statement put(connection,
                        "INSERT INTO lot_change (lot, what, whole, day, batch, row) "
                        "VALUES (?, 'used', ?, ?, ?, ?)");
  SQLite::bind(put, "lot " + std::to_string(lot), -100'000'000, day, batch, key);
  put.exec();
}

void keep_a_long_life(const fs::path& folder) {
  auto records = records::Records::kept_in(folder);
  records::Act act(records, "all", "2026-11-14T09:00:00Z", "try", "{}");
  for (int i = 0; i < lots; ++i)
    records::add_lot(records,
                     {.id = "lot " + std::to_string(i),
                      .code = "C-" + std::to_string(i),
                      .material = materials()[static_cast<std::size_t>(i) % materials().size()],
                      .bought_on = day,
                      .best_before = "2028-01-01",
                      .pack = "10 kg",
                      .holds = trade::Amount::micrograms(10'000'000'000),
                      .paid = Money{5000, {"EUR", 2}}});
  for (int i = 0; i < batches; ++i) {
    const std::string id = "batch " + std::to_string(i);
    records::begin_batch(records,
                         {.id = id,
                          .run = "file:plain_bars.run.json",
                          .run_file = "plain_bars.run.json",
                          .run_name = "Plain bars",
                          .begun_on = day,
                          .begun_at = "2026-11-14T09:00:00Z",
                          .pieces = 12,
                          .program = "0",
                          .plan = "{}",
                          .code = "B" + std::to_string(i)},
                         {});
    for (int row = 0; row < rows_a_batch; ++row) take(records, i, id, row);
    records::change_pieces(records, {.batch = id, .pieces = -1, .day = day});
  }
  act.done();
}

struct Case {
  std::string name;
  std::vector<std::string> words;
  std::vector<double> times = {};
};

double median(std::vector<double> times) {
  std::sort(times.begin(), times.end());
  return times[times.size() / 2];
}

void measure() {
  const ScratchFolder scratch("stock-benchmarks");
  const fs::path examples = fs::path(BRIMWRIGHT_SOURCE_DIR) / "examples";
  for (const char* name : {"plain_bars.run.json", "meadow_base.formula.json"})
    fs::copy(examples / name, scratch.path() / name);
  write_file(scratch.path() / "studio.json",
             R"({ "schema": "brimwright.studio/1", "currency": "EUR" })");
  keep_a_long_life(scratch.path());
  const std::string folder = scratch.path(), run = scratch.path() / "plain_bars.run.json";
  std::vector<Case> cases = {
      {"stock", {"stock", folder}},
      {"stock --json", {"stock", folder, "--json"}},
      {"stock --counted", {"stock", folder, "--counted", "C-5=3 kg"}},
      {"stock --bought",
       {"stock", folder, "--bought", "olive", "--pack", "10 kg", "--price", "50"}},
      {"trail of a lot", {"trail", folder, "C-77"}},
      {"trail of a batch", {"trail", folder, "B77"}},
      {"buy", {"buy", run}},
      {"quote", {"quote", run}},
      {"plan, which reads no records", {"plan", run}}};
  constexpr int rounds = 7;
  for (int round = 0; round < rounds; ++round)
    for (Case& one : cases)
      one.times.push_back(spent_by(BRIMWRIGHT_PROGRAM, one.words).milliseconds);
  std::printf("%d batches, %d rows of lots and changes; median of %d\n", batches,
              lots + batches * rows_a_batch, rounds);
  for (const Case& one : cases)
    std::printf("%-32s %7.1f ms\n", one.name.c_str(), median(one.times));
}

}  // namespace

int main() {
  try {
    measure();
    return 0;
  } catch (const std::exception& error) {
    std::fprintf(stderr, "%s\n", error.what());
    return 1;
  }
}
