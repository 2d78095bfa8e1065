#include "any_work.h"
#include "every_way.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cstdlib>

using namespace brimwright::days;
using namespace std::chrono;

namespace {

constexpr int far = 13;  // days; what takes longer is not gone through in every way

/// The days on which all are due at once.
std::vector<Day> all_due(const AnyWork& work, Day day) {
  return std::vector<Day>(work.deliveries.size(), day);
}

std::vector<Delivery> due_on(std::vector<Delivery> deliveries, Day day) {
  for (Delivery& delivery : deliveries) delivery.due = day;
  return deliveries;
}

std::optional<Day> promise_by_every_way(const AnyWork& work) {
  for (int day = 1; day <= far; ++day)
    if (is_possible(work.studio, work.deliveries, work.from, all_due(work, work.from + days(day))))
      return work.from + days(day);
  return std::nullopt;
}

std::optional<Day> start_by_every_way(const AnyWork& work, Day due) {
  for (Day from = due - days(1); from >= work.from; from -= days(1))
    if (is_possible(work.studio, work.deliveries, from, all_due(work, due))) return from;
  return std::nullopt;
}

}  // namespace

TEST_CASE("promise and latest start are those that going through every way finds", "[days]") {
  // The oracle is tests/days/every_way: a second scheduler, which leaves nothing out.
  int promises = 0, starts = 0;
  const char* number_alone = std::getenv("DAYS_NUMBER");
  const unsigned first = number_alone ? static_cast<unsigned>(std::atoi(number_alone)) : 1;
  const unsigned last = number_alone ? first : 3'500;
  for (unsigned number = first; number <= last; ++number) {
    const AnyWork work = any_work(number, 4, 4);
    INFO("studio " << number);
    const auto expected = promise_by_every_way(work);
    const auto found = earliest_promise(work.studio, work.deliveries, work.from);
    if (expected) {
      REQUIRE(found);
      CHECK(found->due.front() == *expected);
      CHECK(found->is_proved);
      ++promises;
    } else if (found) {
      CHECK(found->due.front() > work.from + days(far));
    }
    if (found) CHECK(complaint_about(*found, work.studio, work.deliveries, work.from) == "");
    const Day due = expected.value_or(work.from + days(far)) + days(number % 4);
    const auto start = start_by_every_way(work, due);
    const auto latest = latest_start(work.studio, due_on(work.deliveries, due), work.from);
    REQUIRE(latest.schedule.has_value() == start.has_value());
    if (!start) {
      CHECK(latest.is_impossible);
      continue;
    }
    CHECK(latest.schedule->begin == *start);
    CHECK(latest.schedule->is_proved);
    CHECK(complaint_about(*latest.schedule, work.studio, work.deliveries, *start) == "");
    ++starts;
  }
  if (!number_alone) CHECK(std::min(promises, starts) >= 2'000);
}

TEST_CASE("of what cannot be kept, no other batches would give more pieces", "[days]") {
  int some = 0;
  for (unsigned number = 1; number <= 600; ++number) {
    AnyWork work = any_work(number, 4, 4);
    work.deliveries.resize(1);
    if (work.deliveries.front().lines.empty()) continue;
    INFO("studio " << number);
    const auto promise = promise_by_every_way(work);
    if (!promise || *promise <= work.from + days(2)) continue;
    const Day due = *promise - days(1 + number % 2);
    const auto deliveries = due_on(work.deliveries, due);
    // Each choice of batches, gone through as the numbers from 0 in binary.
    std::vector<std::pair<std::size_t, std::size_t>> batches;
    for (std::size_t l = 0; l < deliveries[0].lines.size(); ++l)
      for (std::size_t b = 0; b < deliveries[0].lines[l].batches.size(); ++b)
        batches.emplace_back(l, b);
    std::int64_t most = 0;
    for (unsigned choice = 1; choice < 1U << batches.size(); ++choice) {
      std::vector<Delivery> part = deliveries;
      std::int64_t sold = 0;
      for (Line& line : part[0].lines) line.batches.clear();
      for (std::size_t i = 0; i < batches.size(); ++i)
        if (choice >> i & 1U) {
          const auto& [l, b] = batches[i];
          part[0].lines[l].batches.push_back(deliveries[0].lines[l].batches[b]);
          sold += deliveries[0].lines[l].batches[b].sold;
        }
      if (sold > most && is_possible(work.studio, part, work.from, {due})) most = sold;
    }
    const Parted found = parted(work.studio, deliveries, 0, work.from);
    CHECK(found.pieces_kept == most);
    CHECK(found.is_proved);
    REQUIRE(found.schedule);
    CHECK(complaint_about(*found.schedule, work.studio,
                          parted_deliveries(deliveries, 0, found.kept, found.keeps_ready),
                          work.from) == "");
    if (most > 0) ++some;
  }
  CHECK(some >= 50);
}

TEST_CASE("up to four moulds and eight batches what is found is proved", "[days]") {
  for (unsigned number = 1; number <= 1'500; ++number) {
    const AnyWork work = any_work(number + 50'000, 8, 4);
    INFO("studio " << number + 50'000);
    const auto found = earliest_promise(work.studio, work.deliveries, work.from);
    if (!found) continue;  // a batch that fits on no day
    CHECK(found->is_proved);
    CHECK(complaint_about(*found, work.studio, work.deliveries, work.from) == "");
    const Day due = found->due.front() + days(number % 5);
    const auto latest = latest_start(work.studio, due_on(work.deliveries, due), work.from);
    REQUIRE(latest.schedule);
    CHECK(latest.schedule->is_proved);
  }
}

TEST_CASE("more to work with never makes it later", "[days][law]") {
  int sped_up = 0;  // by one lye for several batches
  for (unsigned number = 1; number <= 500; ++number) {
    const AnyWork work = any_work(number + 100'000, 6, 4);
    INFO("studio " << number + 100'000);
    const auto found = earliest_promise(work.studio, work.deliveries, work.from);
    if (!found) continue;
    const Day promised = found->due.front();
    const auto with = [&](const Studio& studio) {
      const auto more = earliest_promise(studio, work.deliveries, work.from);
      REQUIRE(more);
      return more->due.front();
    };
    Studio studio = work.studio;
    ++studio.moulds[number % studio.moulds.size()].owned;
    CHECK(with(studio) <= promised);  // a mould
    studio = work.studio;
    if (!studio.calendar.off.empty()) studio.calendar.off.pop_back();
    CHECK(with(studio) <= promised);  // days that were off
    studio = work.studio;
    studio.calendar.making[number % 7] += hours(1);
    CHECK(with(studio) <= promised);  // an hour of a weekday
    studio = work.studio;
    if (studio.batches_a_day) ++*studio.batches_a_day;
    if (studio.rack_places) ++*studio.rack_places;
    CHECK(with(studio) <= promised);  // a pot, a place to cure
    studio = work.studio;
    for (Lye& lye : studio.lyes) ++lye.batches_in_pot;
    CHECK(with(studio) <= promised);  // a larger pot for lye
    studio = work.studio;
    studio.each_lye = seconds{};
    const Day without = with(studio);
    CHECK(without >= promised);  // no time that a shared lye saves
    if (without > promised) ++sped_up;

    // A later due day never starts earlier, and forward from that start it is reached.
    std::optional<Day> before;
    for (int later = 0; later < 4; ++later) {
      const Day due = promised + days(later);
      const auto latest = latest_start(work.studio, due_on(work.deliveries, due), work.from);
      REQUIRE(latest.schedule);
      if (before) CHECK(latest.schedule->begin >= *before);
      before = latest.schedule->begin;
      const auto forward = earliest_promise(work.studio, work.deliveries, *before);
      REQUIRE(forward);
      CHECK(forward->due.front() <= due);
    }
  }
  CHECK(sped_up >= 3);
}
