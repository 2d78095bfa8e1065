#include "service/lot_taking.h"

#include "planning/cost.h"
#include "records/act.h"
#include "records/batch_cost.h"
#include "scratch_folder.h"
#include "service/run_planning.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <map>

namespace brimwright::service {
namespace {

const std::string root = BRIMWRIGHT_SOURCE_DIR;

TEST_CASE("all batches together weigh of each material what the plan says is used of it") {
  // Two ways to one number: rows of the vessels, and materials_used() for prices.
  const std::string name = GENERATE("plain_bars", "spring_cups", "marble_bowls", "tilted_loaf");
  CAPTURE(name);
  const auto [run, measured, plan] = planned_run(root + "/examples/" + name + ".run.json", 96,
                                                 {.shipped = root, .folders = {}}, {});
  std::map<std::string, double> weighed, used;
  std::map<std::string, int> rows_called;
  for (std::int64_t number = 1; number <= plan.pieces.batches; ++number) {
    rows_called.clear();
    for (const auto& row : weighed_for(run, plan, number)) {
      CHECK(++rows_called[row.row] == 1);
      weighed[row.material] += row.amount.is_pieces() ? static_cast<double>(row.amount.whole())
                                                      : row.amount.mass() / gram;
    }
  }
  for (const auto& line : planning::materials_used(plan))
    used[line.name] += line.pieces > 0 ? static_cast<double>(line.pieces) : line.used / gram;
  REQUIRE(weighed.size() == used.size());
  for (const auto& [material, grams] : used) {
    CAPTURE(material);
    // Each row is taken to the next microgram; one pot's lye may be a step of its scale more.
    const bool is_of_pot = run.lye_pot && (material == "NaOH" || material == "water");
    CHECK(std::abs(weighed[material] - grams) < (is_of_pot ? 10 : 1e-3));
  }
}

TEST_CASE("a batch takes what it weighs, of goods that serve by her word too") {
  const ScratchFolder folder;
  folder.write("studio.json", R"({ "schema": "brimwright.studio/1", "currency": "EUR",
    "packs": { "Goldmill olive": [ { "holds": "5 kg", "paid": "27.50" } ] },
    "serves_as": { "Goldmill olive": "olive" } })");
  const moulds::Library library{
      .shipped = root, .folders = {}, .studio = folder.path() / "studio.json"};
  const auto [run, measured, plan] =
      planned_run(root + "/examples/plain_bars.run.json", std::nullopt, library, {});
  auto records = records::Records::kept_in(folder.path());
  records::Act act(records, "a", "2026-11-14T09:00:00Z", "try", "{}");
  records::add_lot(records, {.id = "1",
                             .code = "G-1",
                             .material = "Goldmill olive",
                             .bought_on = "2026-11-01",
                             .pack = "5 kg",
                             .holds = trade::Amount::micrograms(5'000'000'000),
                             .paid = Money{2750, {"EUR", 2}}});
  const auto batch = records::begin_batch(records,
                                          {.id = "b",
                                           .run = "file:plain",
                                           .run_file = "plain.run.json",
                                           .run_name = "Plain",
                                           .begun_on = "2026-11-14",
                                           .begun_at = "2026-11-14T09:00:00Z",
                                           .pieces = plan.pieces.make,
                                           .program = "0",
                                           .plan = "{}"},
                                          {});
  auto rows = weighed_for(run, plan, 1);
  find_what_serves(rows, records, run, library);
  CHECK(take_of_lots(records, batch, run, std::move(rows), {}, plain_terms()).remarks.empty());
  std::int64_t olive = 0;
  for (const auto& row : records::used_by(records, "b")) {
    if (row.weighed.material != "olive") {
      CHECK(row.takes.empty());
      continue;
    }
    CHECK(row.unknown() == 0);
    olive += row.weighed.amount.whole();
  }
  CHECK(olive > 0);
  CHECK(records::lots_called(records, "G-1").front().left == 5'000'000'000 - olive);
  const auto cost = records::cost_of(records, records::used_by(records, "b"));
  REQUIRE(cost.sums.size() == 1);
  CHECK(cost.sums.front().coins == trade::Fraction(2750) * olive / 5'000'000'000);
}

TEST_CASE("a wish that names no lot is refused as it was typed") {
  const LotWishes typed{.lots = {"olive"}};
  CHECK_THROWS_WITH(read_wishes(typed, plain_terms()),
                    Catch::Matchers::Contains("\"olive\" names no material and lot"));
  const auto wishes =
      read_wishes({.lots = {"olive=A", "olive=B"}, .beyond_stock = {"B"}}, plain_terms());
  CHECK(wishes.chosen.at("olive") == std::vector<std::string>{"A", "B"});
  CHECK(wishes.beyond == std::set<std::string>{"B"});
}

}  // namespace
}  // namespace brimwright::service
