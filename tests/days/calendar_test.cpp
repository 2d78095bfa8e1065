#include "days/schedule.h"

#include <catch2/catch.hpp>

using namespace brimwright::days;
using namespace std::chrono;

// Weekdays are those of any printed calendar: 2024-02-29, 2026-12-20 and 2028-02-27 are a Thursday
// and two Sundays. Days are counted on paper.

namespace {

constexpr Day on(int y, unsigned m, unsigned d) { return sys_days(year(y) / month(m) / d); }

/// Six hours on Tuesdays and Fridays, and nothing else to do on any other day.
Studio studio() {
  Studio studio{.calendar = {}, .moulds = {{.name = "loaf", .owned = 1, .cavities = 1}}};
  studio.calendar.making[2] = studio.calendar.making[5] = hours(6);
  return studio;
}

/// One batch of ten pieces: 36 h in the mould, four weeks to cure.
Delivery ten_pieces(Day due) {
  Line line{.name = "bars",
            .batches = {{.filled = {{0, 1}}, .pieces = 10, .sold = 10, .work = hours(3)}}};
  line.unmould_after = hours(36);
  line.cure_days = 28;
  return {.name = "order", .lines = {line}, .due = due};
}

Schedule latest(const Studio& of, const std::vector<Delivery>& what, Day from) {
  const auto found = latest_start(of, what, from);
  REQUIRE(found.schedule);
  CHECK(found.schedule->is_proved);
  return *found.schedule;
}

}  // namespace

TEST_CASE("back from a Sunday: packed on Friday, poured on the Friday four weeks before",
          "[days]") {
  // Due on Sunday 20 December 2026; packed on Friday the 18th; 28 days before is Friday 20
  // November.
  const auto found = latest(studio(), {ten_pieces(on(2026, 12, 20))}, on(2026, 10, 1));
  CHECK(found.begin == on(2026, 11, 20));
  REQUIRE(found.batches.size() == 1);
  CHECK(found.batches[0].poured == on(2026, 11, 20));
  // 36 h are over on Sunday the 22nd; the next day she is there is Tuesday the 24th.
  CHECK(found.batches[0].unmoulded == on(2026, 11, 24));
  CHECK(found.batches[0].cured == on(2026, 12, 18));
  REQUIRE(found.packing.size() == 1);
  CHECK(found.packing[0].day == on(2026, 12, 18));
}

TEST_CASE("a holiday on the last making day takes the one before", "[days]") {
  Studio of = studio();
  of.calendar.off = {{on(2026, 11, 20), on(2026, 11, 20)}};
  CHECK(latest(of, {ten_pieces(on(2026, 12, 20))}, on(2026, 10, 1)).begin == on(2026, 11, 17));
}

TEST_CASE("a holiday on the packing day brings all forward", "[days]") {
  // Packed on Tuesday 15 December; 28 days before is Tuesday 17 November.
  Studio of = studio();
  of.calendar.off = {{on(2026, 12, 16), on(2026, 12, 20)}};
  CHECK(latest(of, {ten_pieces(on(2026, 12, 20))}, on(2026, 10, 1)).begin == on(2026, 11, 17));
}

TEST_CASE("a leap day is a day of the cure", "[days]") {
  // Due on Saturday 2 March 2024, packed on Friday the 1st. 28 days before, over the 29th, is
  // Friday 2 February; in 2023, without it, from Friday 3 March back, it is Friday 3 February.
  CHECK(latest(studio(), {ten_pieces(on(2024, 3, 2))}, on(2024, 1, 1)).begin == on(2024, 2, 2));
  CHECK(latest(studio(), {ten_pieces(on(2023, 3, 4))}, on(2023, 1, 1)).begin == on(2023, 2, 3));
}

TEST_CASE("a cure that goes over the year's end", "[days]") {
  // From Sunday 20 December 2026 on: poured on Tuesday the 22nd, cured on Tuesday 19 January 2027,
  // packed that day, promised for the day after.
  Delivery what = ten_pieces({});
  what.due.reset();
  const std::vector<Delivery> all = {what};
  const auto found = earliest_promise(studio(), all, on(2026, 12, 20));
  REQUIRE(found);
  CHECK(found->is_proved);
  CHECK(found->batches[0].poured == on(2026, 12, 22));
  CHECK(found->due[0] == on(2027, 1, 20));
}

TEST_CASE("a mould is locked overnight, and filled again on the day it is emptied", "[days]") {
  // Every day is a making day. 24 h: poured on Monday 1 June 2026, then on Tuesday. 25 h: then on
  // Wednesday.
  Studio of = studio();
  of.calendar.making.fill(hours(6));
  Delivery what = ten_pieces({});
  what.due.reset();
  what.lines[0].batches.push_back(what.lines[0].batches[0]);
  const auto second = [&](minutes locked) {
    what.lines[0].unmould_after = locked;
    return earliest_promise(of, {what}, on(2026, 6, 1))->batches.at(1).poured;
  };
  CHECK(second(hours(24)) == on(2026, 6, 2));
  CHECK(second(hours(24) + minutes(1)) == on(2026, 6, 3));
  CHECK(second(hours(3)) == on(2026, 6, 2));  // never twice on one day
}

TEST_CASE("one lye for the batches of a day saves the time of the others", "[days]") {
  // Due on Sunday 20 December 2026, so poured on Friday 20 November at the latest, as above, or on
  // Tuesday the 17th. Two batches of 3 h 10 min are 6 h 20 min; with 20 min saved they are the 6 h
  // of a Friday. Three, in pots for two, are two lyes: 9 h 10 min do not go into a Friday.
  Studio of = studio();
  of.moulds[0].owned = 3;
  of.lyes = {{.batches_in_pot = 2}};
  of.each_lye = minutes(20);
  Delivery what = ten_pieces(on(2026, 12, 20));
  auto& line = what.lines[0];
  line.batches[0].work = hours(3) + minutes(10);
  line.batches.push_back(line.batches[0]);
  CHECK(latest(of, {what}, on(2026, 10, 1)).begin == on(2026, 11, 17));  // each its own
  line.lye = 0;
  of.calendar.small_jobs[4] = true;  // there on Thursdays, she makes the lye on that evening
  const auto found = latest(of, {what}, on(2026, 10, 1));
  CHECK(found.begin == on(2026, 11, 19));
  REQUIRE(found.lyes.size() == 1);
  CHECK(found.lyes[0].made == on(2026, 11, 19));
  for (const auto& batch : found.batches) CHECK(batch.poured == on(2026, 11, 20));
  CHECK(!found.batches[0].takes_lye_of_another);
  CHECK(found.batches[1].takes_lye_of_another);
  line.batches.push_back(line.batches[0]);
  CHECK(latest(of, {what}, on(2026, 10, 1)).begin == on(2026, 11, 17));
  // A pot for three saves twice: 3 x 3 h 10 min - 40 min is 8 h 50 min.
  of.calendar.making[5] = hours(8) + minutes(50);
  CHECK(latest(of, {what}, on(2026, 10, 1)).begin == on(2026, 11, 17));
  of.lyes[0].batches_in_pot = 3;
  CHECK(latest(of, {what}, on(2026, 10, 1)).begin == on(2026, 11, 19));
}

TEST_CASE("a salt bar is cut on the day it is poured, while she is there", "[days]") {
  // Three hours of work and two until it can be cut: five of a day's hours. Tuesdays have four,
  // Fridays six.
  Studio of = studio();
  of.calendar.making[2] = hours(4);
  Delivery what = ten_pieces(on(2026, 12, 20));
  what.lines[0].unmould_after = hours(2);
  what.lines[0].cut_within = hours(6);
  what.lines[0].is_cut = true;
  const auto found = latest(of, {what}, on(2026, 10, 1));
  CHECK(found.batches[0].poured == on(2026, 11, 20));
  CHECK(found.batches[0].unmoulded == on(2026, 11, 20));
  of.calendar.off = {{on(2026, 11, 20), on(2026, 11, 20)}};
  CHECK(latest(of, {what}, on(2026, 10, 1)).begin == on(2026, 11, 13));
}

TEST_CASE("what must be cut within two days is not poured before a weekend away", "[days]") {
  // Poured on Friday she would be back on Tuesday, after four days.
  Delivery what = ten_pieces(on(2026, 12, 20));
  what.lines[0].unmould_after = hours(18);
  what.lines[0].cut_within = hours(48);
  const auto none = latest_start(studio(), {what}, on(2026, 10, 1));
  CHECK_FALSE(none.schedule);
  CHECK(none.is_impossible);
  Studio of = studio();
  of.calendar.small_jobs[3] = true;  // there on Wednesdays, to unmould and cut
  CHECK(latest(of, {what}, on(2026, 10, 1)).begin == on(2026, 11, 17));
}

TEST_CASE("fats and lye are chilled the evening before, on a day she is there", "[days]") {
  Delivery what = ten_pieces(on(2026, 12, 20));
  what.lines[0].is_chilled = true;
  // The last day she is there before Friday 20 November is Tuesday the 17th.
  const auto found = latest(studio(), {what}, on(2026, 10, 1));
  CHECK(found.begin == on(2026, 11, 17));
  CHECK(found.batches[0].chilled == on(2026, 11, 17));
  CHECK(found.batches[0].poured == on(2026, 11, 20));
}

TEST_CASE("nothing stands cold over a holiday", "[days]") {
  // Away from Wednesday 11 to Thursday 19 November 2026: what is poured on Friday the 20th would
  // have been set cold on the 10th, ten nights before. Poured on the 10th it is, chilled on Friday
  // the 6th.
  Studio of = studio();
  of.calendar.off = {{on(2026, 11, 11), on(2026, 11, 19)}};
  Delivery what = ten_pieces(on(2026, 12, 20));
  what.lines[0].is_chilled = true;
  const auto found = latest(of, {what}, on(2026, 10, 1));
  CHECK(found.batches[0].poured == on(2026, 11, 10));
  CHECK(found.batches[0].chilled == on(2026, 11, 6));
}

TEST_CASE("what takes five days to come is ordered five days before it is used", "[days]") {
  Delivery what = ten_pieces(on(2026, 12, 20));
  what.lines[0].make_lead = 5;
  auto found = latest(studio(), {what}, on(2026, 10, 1));
  CHECK(found.begin == on(2026, 11, 15));
  REQUIRE(found.ordering.size() == 1);
  CHECK(found.ordering[0].ordered == on(2026, 11, 15));
  CHECK(found.ordering[0].needed == on(2026, 11, 20));
  Studio of = studio();
  of.calendar.off = {{on(2026, 11, 14), on(2026, 11, 16)}};
  CHECK(latest(of, {what}, on(2026, 10, 1)).begin == on(2026, 11, 13));
}

TEST_CASE("a tray is filled as often as it sets in a day", "[days]") {
  // Three fillings of a tray that takes two and a half hours: two on a day of six hours. The batch
  // is poured on Friday 20 November, so one is cast on Tuesday the 17th at the latest, or, of
  // three, two there and one on Friday the 13th.
  Studio of = studio();
  of.trays = {{.name = "beads", .is_counted = true, .sets_in = minutes(150)}};
  of.each_tray_fill = minutes(20);
  Delivery what = ten_pieces(on(2026, 12, 20));
  what.lines[0].batches[0].fills = {{0, 3}};
  const auto found = latest(of, {what}, on(2026, 10, 1));
  CHECK(found.begin == on(2026, 11, 13));
  REQUIRE(found.casts.size() == 2);
  CHECK(found.casts[0].count == 1);
  CHECK(found.casts[1].day == on(2026, 11, 17));
  CHECK(found.casts[1].count == 2);
  // Not earlier than four days before: then not all three can be cast for it.
  of.cast_ahead_at_most = 4;
  CHECK_FALSE(latest_start(of, {what}, on(2026, 10, 1)).schedule);
  CHECK(never_made(of, {what}, on(2026, 10, 1)));
}

TEST_CASE("packing that takes longer than a day begins on the one before", "[days]") {
  // 50 min a piece, ten pieces: eight hours and twenty minutes, six of them on Friday the 18th and
  // the rest on Tuesday the 15th, by when all has cured: poured on Tuesday 17 November.
  Studio of = studio();
  of.each_piece_packed = minutes(50);
  const auto found = latest(of, {ten_pieces(on(2026, 12, 20))}, on(2026, 10, 1));
  CHECK(found.begin == on(2026, 11, 17));
  REQUIRE(found.packing.size() == 2);
  CHECK(found.packing[0].day == on(2026, 12, 15));
  CHECK(found.packing[0].time == minutes(140));
}

TEST_CASE("a curing rack that is full holds up the next batch", "[days]") {
  // Places for 15: the second ten are poured when the first have cured. A cast is on the rack from
  // the day it is unmoulded: poured on Tuesday 2 June 2026, cured on Tuesday the 30th; what is
  // poured on Friday the 26th is unmoulded on the 30th.
  Studio of = studio();
  of.moulds[0].owned = 4;
  of.rack_places = 15;
  Delivery what = ten_pieces({});
  what.due.reset();
  what.lines[0].batches.push_back(what.lines[0].batches[0]);
  const auto found = earliest_promise(of, {what}, on(2026, 6, 1));
  REQUIRE(found);
  CHECK(found->batches[0].poured == on(2026, 6, 2));
  CHECK(found->batches[1].poured == on(2026, 6, 26));
}
