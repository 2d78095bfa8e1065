#include "any_work.h"

#include <string>

using namespace brimwright::days;
using namespace std::chrono;

namespace {

class Chance {
 public:
  explicit Chance(unsigned number) : engine_(number) {}
  /// The same numbers everywhere, which std::uniform_int_distribution does not promise.
  int in(int least, int most) {
    return least + static_cast<int>(engine_() % static_cast<unsigned>(most - least + 1));
  }
  bool is(int percent) { return in(1, 100) <= percent; }
  template <class Value>
  Value of(const std::vector<Value>& values) {
    return values[static_cast<std::size_t>(in(0, static_cast<int>(values.size()) - 1))];
  }

 private:
  std::mt19937 engine_;
};

Calendar any_calendar(Chance& chance, Day from) {
  Calendar calendar;
  for (std::size_t day = 0; day < 7; ++day) {
    if (chance.is(70)) calendar.making[day] = minutes(chance.of<int>({60, 120, 180, 300, 420}));
    calendar.small_jobs[day] = chance.is(40);
  }
  calendar.making[static_cast<std::size_t>(chance.in(0, 6))] = hours(chance.in(3, 6));
  for (int i = chance.in(0, 2); i > 0; --i) {
    const Day first = from + days(chance.in(0, 12));
    calendar.off.push_back({first, first + days(chance.in(0, 3))});
  }
  return calendar;
}

Line any_line(Chance& chance, const Studio& studio, int batches) {
  Line line;
  const auto any_mould = [&] {
    return static_cast<std::size_t>(chance.in(0, static_cast<int>(studio.moulds.size()) - 1));
  };
  std::vector<std::size_t> moulds = {any_mould()};
  if (chance.is(20)) moulds.push_back(any_mould());  // poured together with another
  line.unmould_after = hours(chance.of<int>({2, 12, 18, 24, 30, 48, 60}));
  if (chance.is(30)) {
    line.cut_within = line.unmould_after + hours(chance.of<int>({1, 2, 6, 24}));
    if (*line.cut_within < hours(24) && line.unmould_after > hours(3)) line.cut_within = hours(48);
    line.is_cut = true;
  }
  line.cure_days = chance.of<int>({0, 1, 2, 4});
  line.is_chilled = chance.is(30);
  if (chance.is(20)) line.make_lead = chance.in(0, 3);
  Batch batch;
  for (int i = 0; i < batches; ++i) {
    if (i == 0 || chance.is(40)) {
      batch.filled.clear();
      std::int64_t casts = 0;
      for (const std::size_t kind : moulds) {
        const Mould& mould = studio.moulds[kind];
        batch.filled.push_back(
            {kind, chance.in(1, static_cast<int>(mould.cavities) * mould.owned)});
        casts += batch.filled.back().casts;
      }
      batch.pieces = casts * chance.in(1, 2);
      batch.sold = batch.pieces - (chance.is(30) ? 1 : 0);
      batch.work = minutes(chance.of<int>({30, 60, 90, 120, 180}));
      batch.whippings = chance.in(0, 2);
      batch.fills.clear();
      if (!studio.trays.empty() && chance.is(40))
        batch.fills.push_back(
            {static_cast<std::size_t>(chance.in(0, static_cast<int>(studio.trays.size()) - 1)),
             chance.in(1, 2)});
    }
    line.batches.push_back(batch);
  }
  if (!batch.fills.empty() && chance.is(30)) line.cast_lead = chance.in(0, 3);
  return line;
}

/// In two studios of five, by chance of its own, so that all others stay as they were. What two
/// batches save together is put on their work, so that it is often just enough for a day.
void share_lyes(AnyWork& work, unsigned number) {
  Chance chance(number ^ 0x51f0a3U);
  if (!chance.is(40)) return;
  Studio& studio = work.studio;
  studio.each_lye = minutes(chance.of<int>({10, 20, 30}));
  for (int i = chance.in(1, 2); i > 0; --i)
    studio.lyes.push_back({.batches_in_pot = chance.in(2, 3)});
  for (Delivery& delivery : work.deliveries)
    for (Line& line : delivery.lines) {
      if (chance.is(20)) continue;
      line.lye = static_cast<std::size_t>(chance.in(0, static_cast<int>(studio.lyes.size()) - 1));
      for (Batch& batch : line.batches) batch.work += studio.each_lye / 2;
    }
}

}  // namespace

AnyWork any_work(unsigned number, int most_batches, int most_moulds) {
  Chance chance(number);
  AnyWork work;
  // From a leap day's month and from a year's last one, too.
  work.from = chance.of<Day>({sys_days(year(2024) / 2 / 25), sys_days(year(2026) / 12 / 27),
                              sys_days(year(2026) / 6 / 3)});
  Studio& studio = work.studio;
  studio.calendar = any_calendar(chance, work.from);
  const int kinds = chance.in(1, std::min(3, most_moulds));
  for (int i = 0; i < kinds; ++i)
    studio.moulds.push_back({.name = "mould",
                             .owned = i + 1 < kinds ? 1 : chance.in(1, most_moulds - kinds + 1),
                             .cavities = chance.in(1, 3)});
  for (int i = chance.in(0, 2); i > 0; --i) {
    Tray tray{.name = "tray", .is_counted = chance.is(80)};
    if (chance.is(60)) tray.sets_in = minutes(chance.of<int>({45, 60, 150}));
    studio.trays.push_back(tray);
  }
  if (chance.is(40)) studio.batches_a_day = chance.in(1, 2);
  if (chance.is(30)) studio.whippings_a_day = chance.in(2, 3);
  if (chance.is(30)) studio.rack_places = chance.in(8, 24);
  if (chance.is(30)) studio.cast_ahead_at_most = chance.in(1, 3);
  studio.each_tray_fill = minutes(chance.of<int>({0, 30, 60}));
  studio.each_piece_packed = minutes(chance.of<int>({0, 5, 20}));
  int left = chance.in(1, most_batches);
  work.deliveries.resize(static_cast<std::size_t>(chance.is(25) ? 2 : 1));
  for (std::size_t i = 0; left > 0; ++i) {
    const int batches = chance.in(1, left);
    work.deliveries[i % work.deliveries.size()].lines.push_back(any_line(chance, studio, batches));
    left -= batches;
  }
  if (work.deliveries.back().lines.empty()) work.deliveries.pop_back();
  if (chance.is(20)) work.deliveries.front().pack_lead = chance.in(0, 4);
  share_lyes(work, number);
  return work;
}
