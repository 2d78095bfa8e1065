#include "every_way.h"

#include <algorithm>
#include <map>
#include <string>
#include <tuple>
#include <utility>

using namespace brimwright::days;
using std::chrono::days;
using std::chrono::hours;
using std::chrono::seconds;

namespace {

/// The rules, asked of one way to put everything on days.
struct Way {
  struct One {
    std::size_t delivery, line, batch;
    Day poured;
  };
  struct Fill {
    std::size_t of;  // its place among the batches
    std::size_t tray;
    Day day;
  };
  std::vector<One> batches;
  std::vector<Fill> fills;
};

class Rules {
 public:
  Rules(const Studio& of, const std::vector<Delivery>& what, Day begin, std::vector<Day> until)
      : studio(of), deliveries(what), from(begin), due(std::move(until)) {
    last = *std::max_element(due.begin(), due.end());
    for (Day day = from; day < last; day += days(1)) free_hours[day] = hours_of(day);
    for (const Delivery& delivery : deliveries)
      for (const Line& line : delivery.lines)
        for (const Batch& batch : line.batches) longest = std::max(longest, batch.work);
    keep_time_for_packing();
  }

  const Studio& studio;
  const std::vector<Delivery>& deliveries;
  Day from, last;
  std::vector<Day> due;
  seconds longest{};
  std::map<Day, seconds> free_hours;
  std::map<std::size_t, Day> packed_from;
  bool is_packed = true;

  seconds hours_of(Day day) const {
    for (const auto& off : studio.calendar.off)
      if (off.first <= day && day <= off.last) return {};
    return studio.calendar.making[std::chrono::weekday(day).c_encoding()];
  }
  bool is_off(Day day) const {
    for (const auto& off : studio.calendar.off)
      if (off.first <= day && day <= off.last) return true;
    return false;
  }
  bool is_there(Day day) const {
    return !is_off(day) && (hours_of(day).count() > 0 ||
                            studio.calendar.small_jobs[std::chrono::weekday(day).c_encoding()]);
  }

  /// What is ordered at once is there on that day.
  Day there(const Lead& lead) const {
    if (!lead) return from;
    Day day = from;
    while (is_off(day)) day += days(1);
    return day + days(*lead);
  }

  void keep_time_for_packing() {
    std::vector<std::pair<Day, std::size_t>> order;
    for (std::size_t d = 0; d < deliveries.size(); ++d) order.emplace_back(due[d], d);
    std::stable_sort(order.begin(), order.end(),
                     [](const auto& a, const auto& b) { return a.first > b.first; });
    for (const auto& [until, d] : order) {
      seconds left{};
      for (const Line& line : deliveries[d].lines)
        for (const Batch& batch : line.batches) left += batch.sold * studio.each_piece_packed;
      const bool takes_none = left.count() == 0;
      bool is_done = false;
      for (Day day = until - days(1); day >= from && !is_done; day -= days(1)) {
        if (hours_of(day).count() == 0) continue;
        const seconds taken = std::min(left, free_hours[day]);
        if (taken.count() == 0 && !takes_none) continue;
        free_hours[day] -= taken;
        left -= taken;
        packed_from[d] = day;
        is_done = left.count() == 0;
      }
      if (!is_done || packed_from[d] < there(deliveries[d].pack_lead)) is_packed = false;
    }
  }

  const Line& line(const Way::One& one) const { return deliveries[one.delivery].lines[one.line]; }
  const Batch& batch(const Way::One& one) const { return line(one).batches[one.batch]; }

  bool is_cut_today(const Line& of) const { return of.cut_within && *of.cut_within < hours(24); }
  bool is_idle_meanwhile(const Line& of) const {
    return is_cut_today(of) && *of.cut_within - of.unmould_after < longest;
  }
  std::optional<Day> unmoulded(const Way::One& one) const {
    const Line& of = line(one);
    if (is_cut_today(of)) return one.poured;
    Day day = one.poured + days(1);
    while (day - one.poured < of.unmould_after || !is_there(day)) {
      day += days(1);
      if (day > one.poured + days(40)) return std::nullopt;
    }
    return day;
  }
  std::optional<Day> evening_before(Day day) const {
    for (Day eve = day - days(1); eve >= from; eve -= days(1))
      if (is_there(eve)) return eve;
    return std::nullopt;
  }

  /// Whether its lye can be made on the evening before, for other batches of the day too.
  bool may_share_lye(const Way::One& one) const {
    if (!line(one).lye) return false;
    const auto eve = evening_before(one.poured);
    return eve && *eve >= there(line(one).make_lead) && one.poured - *eve <= days(4);
  }

  /// Of one batch by itself.
  bool may_be(const Way::One& one) const {
    const Line& of = line(one);
    if (hours_of(one.poured).count() == 0) return false;
    const Day there_on = there(of.make_lead);
    if (one.poured < there_on) return false;
    if (of.is_chilled) {
      const auto eve = evening_before(one.poured);
      if (!eve || *eve < there_on || one.poured - *eve > days(4)) return false;
    }
    const auto out = unmoulded(one);
    if (!out) return false;
    if (of.cut_within && !is_cut_today(of) && *out - one.poured > *of.cut_within) return false;
    const Day cured = std::max(one.poured + days(of.cure_days), *out);
    return cured <= packed_from.at(one.delivery);
  }

  bool may_be(const Way& way, const Way::Fill& fill) const {
    const auto& one = way.batches[fill.of];
    if (hours_of(fill.day).count() == 0 || fill.day < there(line(one).cast_lead)) return false;
    return !studio.cast_ahead_at_most || one.poured - fill.day <= days(*studio.cast_ahead_at_most);
  }

  /// Of all together, as far as they are put on days.
  std::string against(const Way& way) const {
    for (Day day = from; day < last; day += days(1)) {
      const std::string why = against_day(way, day);
      if (!why.empty()) return std::to_string((day - from).count()) + ": " + why;
    }
    return "";
  }

 private:
  std::string against_day(const Way& way, Day day) const {
    seconds busy{}, busy_today{}, wait{};
    int batches = 0, whippings = 0;
    std::int64_t on_rack = 0;
    std::map<std::size_t, int> moulds;
    std::map<std::size_t, int> of_lye;  // batches that may share one
    // Of each part of a line, on the day it is poured.
    std::map<std::tuple<std::size_t, std::size_t, std::size_t, Day>, std::int64_t> casts;
    for (const auto& one : way.batches) {
      const Line& of = line(one);
      const Day out = *unmoulded(one);
      const Day free = std::max(out, one.poured + days(1));
      if (one.poured <= day && day < free)
        for (std::size_t part = 0; part < batch(one).filled.size(); ++part)
          casts[{one.delivery, one.line, part, one.poured}] += batch(one).filled[part].casts;
      if (out <= day && day < std::max(one.poured + days(of.cure_days), out))
        on_rack += batch(one).pieces;
      if (studio.rack_places && batch(one).pieces > *studio.rack_places) return "rack";
      if (one.poured != day) continue;
      const seconds takes =
          batch(one).work + (is_idle_meanwhile(of) ? seconds(of.unmould_after) : seconds{});
      busy += takes;
      if (may_share_lye(one)) ++of_lye[*of.lye];
      ++batches;
      whippings += batch(one).whippings;
      if (!is_cut_today(of)) continue;
      busy_today += takes;
      if (!is_idle_meanwhile(of)) wait = std::max(wait, seconds(of.unmould_after));
    }
    for (const auto& [key, count] : casts) {
      const auto& [d, l, part, poured] = key;
      const std::size_t kind = deliveries[d].lines[l].batches.front().filled[part].mould;
      const std::int64_t cavities = studio.moulds[kind].cavities;
      moulds[kind] += static_cast<int>(count / cavities + (count % cavities > 0 ? 1 : 0));
    }
    for (const auto& [kind, count] : moulds)
      if (count > studio.moulds[kind].owned) return "moulds";
    std::map<std::size_t, int> trays;
    for (const auto& fill : way.fills)
      if (fill.day == day) {
        busy += studio.each_tray_fill;
        ++trays[fill.tray];
      }
    for (const auto& [kind, count] : trays) {
      const Tray& tray = studio.trays[kind];
      if (!tray.is_counted) continue;
      if (!tray.sets_in && count > 1) return "trays";
      if (tray.sets_in && count > 1 && count * *tray.sets_in > hours_of(day)) return "trays";
    }
    // Each pot of lye is made once, and a batch that has none of its own takes so much less time.
    for (const auto& [kind, count] : of_lye)
      for (int one = 0; one < count; ++one)
        if (one % studio.lyes[kind].batches_in_pot != 0) busy -= studio.each_lye;
    if (busy > free_hours.at(day)) return "hours";
    if (busy_today + wait > free_hours.at(day) && busy_today.count() > 0) return "same day";
    if (studio.batches_a_day && batches > *studio.batches_a_day) return "pots";
    if (studio.whippings_a_day && whippings > *studio.whippings_a_day) return "bowls";
    if (studio.rack_places && on_rack > *studio.rack_places) return "rack";
    return "";
  }
};

/// Batches that may share a lye, by day and kind.
using Sharing = std::map<std::pair<Day, std::size_t>, int>;

/// As few pots as can be for those of a day, no batch in two of them, none that holds too much.
std::string against_lyes(const Schedule& schedule, const Rules& rules, const Way& way,
                         const Sharing& sharing) {
  std::map<std::size_t, int> in_pots;  // by batch
  std::map<std::pair<Day, std::size_t>, int> saved;
  int taking = 0, taking_expected = 0;
  for (const auto& lye : schedule.lyes) {
    const auto& first = way.batches[lye.batches.front()];
    const std::size_t kind = rules.line(first).lye.value();
    const int most = rules.studio.lyes[kind].batches_in_pot;
    if (lye.batches.size() < 2 || static_cast<int>(lye.batches.size()) > most)
      return "so many batches in a pot of lye";
    for (const std::size_t b : lye.batches) {
      const auto& one = way.batches[b];
      if (++in_pots[b] > 1) return "two lyes for one batch";
      if (!rules.may_share_lye(one) || rules.line(one).lye != kind || one.poured != first.poured)
        return "a lye that is not its own";
      if (lye.made != rules.evening_before(one.poured) || schedule.batches[b].chilled != lye.made)
        return "lye made on another day";
    }
    saved[{first.poured, kind}] += static_cast<int>(lye.batches.size()) - 1;
    taking_expected += static_cast<int>(lye.batches.size()) - 1;
  }
  for (const auto& one : schedule.batches) taking += one.takes_lye_of_another;
  if (taking != taking_expected) return "so many take another's lye";
  for (const auto& [where, count] : sharing) {
    const int most = rules.studio.lyes[where.second].batches_in_pot;
    if (saved[where] != count - (count + most - 1) / most) return "more lyes than need be";
  }
  return "";
}

class EveryWay {
 public:
  explicit EveryWay(const Rules& of) : rules(of) {
    for (std::size_t d = 0; d < rules.deliveries.size(); ++d)
      for (std::size_t l = 0; l < rules.deliveries[d].lines.size(); ++l)
        for (std::size_t b = 0; b < rules.deliveries[d].lines[l].batches.size(); ++b)
          todo.push_back({d, l, b, {}});
  }

  bool finds_one() { return rules.is_packed && pour(0); }

 private:
  bool pour(std::size_t next) {
    if (next == todo.size()) return cast(0, 0, 0);
    Way::One one = todo[next];
    // Of two that are alike the first is poured no later.
    Day day = rules.from;
    if (next > 0 && todo[next - 1].delivery == one.delivery && todo[next - 1].line == one.line &&
        are_alike(rules.batch(todo[next - 1]), rules.batch(one)))
      day = way.batches[next - 1].poured;
    for (; day < rules.last; day += days(1)) {
      one.poured = day;
      if (!rules.may_be(one)) continue;
      way.batches.push_back(one);
      if (rules.against(way).empty() && pour(next + 1)) return true;
      way.batches.pop_back();
    }
    return false;
  }

  bool cast(std::size_t of, std::size_t which, int number) {
    if (of == way.batches.size()) return true;
    const auto& fills = rules.batch(way.batches[of]).fills;
    if (which == fills.size()) return cast(of + 1, 0, 0);
    if (number == fills[which].count) return cast(of, which + 1, 0);
    for (Day day = rules.from; day < way.batches[of].poured; day += days(1)) {
      const Way::Fill fill{of, fills[which].tray, day};
      if (!rules.may_be(way, fill)) continue;
      way.fills.push_back(fill);
      if (rules.against(way).empty() && cast(of, which, number + 1)) return true;
      way.fills.pop_back();
    }
    return false;
  }

  const Rules& rules;
  std::vector<Way::One> todo;
  Way way;
};

}  // namespace

bool is_possible(const Studio& studio, const std::vector<Delivery>& deliveries, Day from,
                 const std::vector<Day>& due) {
  if (std::any_of(due.begin(), due.end(), [from](Day day) { return day <= from; })) return false;
  const Rules rules(studio, deliveries, from, due);
  return EveryWay(rules).finds_one();
}

std::string complaint_about(const Schedule& schedule, const Studio& studio,
                            const std::vector<Delivery>& deliveries, Day from) {
  const Rules rules(studio, deliveries, from, schedule.due);
  if (!rules.is_packed) return "no time to pack";
  Way way;
  std::map<std::pair<std::size_t, std::size_t>, std::vector<bool>> made;
  Sharing sharing;
  for (const auto& one : schedule.batches) {
    way.batches.push_back({one.delivery, one.line, one.batch, one.poured});
    const auto& of = way.batches.back();
    if (!rules.may_be(of)) return "a batch on a day that it may not be on";
    if (*rules.unmoulded(of) != one.unmoulded) return "unmoulded on another day";
    if (rules.line(of).is_chilled && one.chilled != rules.evening_before(one.poured))
      return "chilled on another day";
    if (rules.may_share_lye(of)) ++sharing[{one.poured, *rules.line(of).lye}];
    if (one.cured != std::max(one.poured + days(rules.line(of).cure_days), one.unmoulded))
      return "cured on another day";
    auto& seen = made[{one.delivery, one.line}];
    seen.resize(rules.line(of).batches.size());
    if (seen[one.batch]) return "a batch made twice";
    seen[one.batch] = true;
  }
  if (const std::string why = against_lyes(schedule, rules, way, sharing); !why.empty()) return why;
  std::size_t all = 0;
  for (const Delivery& delivery : deliveries)
    for (const Line& line : delivery.lines) all += line.batches.size();
  if (way.batches.size() != all) return "not all batches";
  std::map<std::pair<std::size_t, std::size_t>, int> fills;
  for (const auto& cast : schedule.casts)
    for (int i = 0; i < cast.count; ++i) {
      way.fills.push_back({cast.batch, cast.tray, cast.day});
      ++fills[{cast.batch, cast.tray}];
      if (!rules.may_be(way, way.fills.back()) || cast.day >= way.batches[cast.batch].poured)
        return "cast on a day that it may not be on";
    }
  for (std::size_t b = 0; b < way.batches.size(); ++b)
    for (const Fills& wanted : rules.batch(way.batches[b]).fills)
      if (fills[{b, wanted.tray}] != wanted.count) return "not all is cast";
  std::map<std::size_t, seconds> packed;
  for (const auto& packing : schedule.packing) {
    packed[packing.delivery] += packing.time;
    if (packing.day < rules.packed_from.at(packing.delivery) ||
        packing.day >= schedule.due[packing.delivery] || rules.hours_of(packing.day).count() == 0)
      return "packed on a day that it may not be on";
  }
  for (std::size_t d = 0; d < deliveries.size(); ++d) {
    std::int64_t sold = 0;
    for (const Line& line : deliveries[d].lines)
      for (const Batch& batch : line.batches) sold += batch.sold;
    if (packed[d] != sold * studio.each_piece_packed) return "not all is packed";
  }
  for (const auto& ordering : schedule.ordering) {
    const Line& line = deliveries[ordering.delivery].lines[ordering.line];
    using For = Schedule::Ordering::For;
    const Lead lead = ordering.what == For::casts   ? line.cast_lead
                      : ordering.what == For::batch ? line.make_lead
                                                    : deliveries[ordering.delivery].pack_lead;
    if (ordering.ordered < from || rules.is_off(ordering.ordered) ||
        ordering.ordered + days(*lead) > ordering.needed)
      return "ordered on a day that it may not be on";
  }
  return rules.against(way);
}
