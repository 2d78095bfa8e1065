// Power cuts while `note` and `stock` work as they do for her: batches begun with lots taken, lines
// begun with their base, weights that were otherwise, lye made of lots, pieces that go.
#include "power_cuts.h"
#include "records/batches.h"
#include "records/exchange.h"
#include "studio_bench.h"

#include <catch2/catch.hpp>

namespace brimwright::service {
namespace {

using records::Records;
using Acts = std::vector<StudioAct>;

constexpr auto bars = Studio::bars, small_bars = Studio::small_bars, order = Studio::order;
constexpr auto sold = &StockRequest::sold, given = &StockRequest::given;
constexpr auto spoilt = &StockRequest::spoilt, counted = &StockRequest::counted;
constexpr auto counted_pieces = &StockRequest::counted_pieces;

Acts purchases() {
  return {bought("olive oil", "OL-1"), bought("olive oil", "OL-2"), bought("coconut", "CO-1"),
          bought("NaOH", "NA-1")};
}

Acts on_a_run() {
  return {begun(bars, "A1", {"olive=OL-2"}),
          noted(bars, "A1", {"weighed.pour.fats.olive=400 g"}),
          noted(bars, "A1", {"base.made=1.2 kg", "base.left_over=20 g", "base.trace=10 min"}),
          noted(bars, "A1", {"pieces.made=12", "pieces.rejected=1"}),
          noted(bars, "A1", {"tested_how=strip", "tested=pass"}),
          noted(bars, "A1", {"ready_on=2026-11-30"}),
          went({{spoilt, {"A1=2"}}}),
          went({{counted_pieces, {"A1=8"}}}),
          noted(bars, "A1", {"weighed.pour.fats.olive="}),
          reserved(bars),
          begun_again(bars, {"base.made=1.2 kg"})};
}

/// Of the 6 plain bars of the order 2 are sold to it and 3 are ready when the rest is begun, of the
/// 6 small ones 1 and 3.
Acts on_an_order() {
  return {bought("NaOH", "NA-2"),
          made("The jug", {"NA-1=200 g", "NA-2=300 g"}),
          taken_over(),
          reserved(order),
          begun(order, "A1", {"olive=OL-1", "NaOH=NA-2"}),
          noted(order, "A1", {"weighed.pour.fats.olive=350 g"}, {"pour.fats.olive=OL-2"}),
          noted(order, "A1", {"weighed.pour.fats.olive="}),
          renamed(order, "A1", "M1"),
          noted(bars, "A1-1",
                {"pieces.made=6", "pieces.rejected=1", "tested=pass", "ready_on=2026-11-30"}),
          noted(small_bars, "A1-2", {"pieces.made=6", "tested=pass", "ready_on=2026-11-30"}),
          went({{sold, {"A1-1=2", "A1-2=1"}}}),
          went({{given, {"A1-1=1"}}, {spoilt, {"A1-2=2"}}}),
          went({{counted_pieces, {"A1-1=3"}}, {counted, {"OL-1=600 g", "CO-1=700 g"}}}),
          begun_again(order, {}),
          noted(bars, "A1-1", {"pieces.rejected="}),
          noted(small_bars, "A1-2", {"tested=", "ready_on="})};
}

/// What was asked of the disk by all acts, and what the records were after each of them.
struct Written {
  AskedOfDisk asked = {};
  std::vector<std::string> states = {};
};

/// `acts` with the power on; those before them are not looked at.
Written written(const Studio& studio, const Acts& before, const Acts& acts) {
  for (const StudioAct& act : before) studio.does(act);
  const auto now = [&] { return records::exported(*Records::in(studio.folder())); };
  std::vector<std::string> states = {now()};
  const auto work = [&](const RememberingDisk& disk, const auto& acknowledged) {
    for (const StudioAct& act : acts) {
      studio.does(act);
      acknowledged();
      const std::size_t asked = disk.acts().size();
      states.push_back(now());
      REQUIRE(states.back() != *(states.end() - 2));
      REQUIRE(disk.acts().size() == asked);  // to look changes nothing
    }
  };
  return {asked_of_disk(studio.folder(), RememberingDisk::Under::all, work), std::move(states)};
}

/// The records are, to the byte, those after the last act that was acknowledged or after the one
/// that was under way.
bool is_whole(const Written& written, const Records& records, std::size_t certain) {
  const std::string found = records::exported(records);
  return found == written.states[certain] ||
         (certain + 1 < written.states.size() && found == written.states[certain + 1]);
}

std::size_t check_whole(const Written& written, std::size_t stride) {
  return check_cuts(written.asked, stride, [&](const Records& records, std::size_t certain) {
    CHECK(is_whole(written, records, certain));
  });
}

}  // namespace

// What SQLite promises of a disk that keeps what it synced: sqlite.org/atomiccommit.html.
TEST_CASE("a power cut while lots are taken, weights noted or pieces go leaves no half act") {
  CHECK(check_whole(written(Studio(), purchases(), on_a_run()), 17) >= 100);
}

TEST_CASE("a power cut while a base begins with its lines or pieces are sold leaves no half act") {
  const Studio studio;
  CHECK(check_whole(written(studio, purchases(), on_an_order()), 23) >= 100);
  const auto batches = records::batches(*Records::in(studio.folder()));
  REQUIRE(batches.size() == 6);  // twice a base and its two lines
  CHECK(batches[4].pieces == 6 - 2 - 3);
  CHECK(batches[5].pieces == 6 - 1 - 3);
}

TEST_CASE("the same of the service for every state there is", "[.every]") {
  const std::size_t tried = check_whole(written(Studio(), {}, purchases()), 1) +
                            check_whole(written(Studio(), purchases(), on_a_run()), 1) +
                            check_whole(written(Studio(), purchases(), on_an_order()), 1);
  WARN(tried << " states");
  CHECK(tried >= 3'000);
}

// A test that cannot fail is none: between two acts that are taken for one is half of it.
TEST_CASE("half an act that a power cut left is seen") {
  Written both = written(Studio(), purchases(), {taken_over(), reserved(order)});
  both.asked.acknowledged.erase(both.asked.acknowledged.begin());
  both.states.erase(both.states.begin() + 1);
  std::size_t half = 0;
  check_cuts(both.asked, 3, [&](const Records& records, std::size_t certain) {
    half += is_whole(both, records, certain) ? 0 : 1;
  });
  CHECK(half >= 10);
}

}  // namespace brimwright::service
