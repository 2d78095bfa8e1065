#include "days/schedule.h"

#include "days/decision.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <utility>

namespace brimwright::days {
namespace {

constexpr int five_years = 5 * 366;

const LineRules& rules_of(const Problem& problem, std::size_t delivery, std::size_t line) {
  return *std::find_if(problem.lines().begin(), problem.lines().end(), [&](const LineRules& r) {
    return r.delivery == delivery && r.number == line;
  });
}

/// One asking after the other, of the same work in the same days.
class Asking {
 public:
  Asking(const Studio& studio, const std::vector<Delivery>& deliveries, Day from, int days,
         std::int64_t most_looks)
      : studio_(studio),
        deliveries_(deliveries),
        span_(studio.calendar, from, days),
        most_looks_(most_looks) {}

  Decision decided(int begin, const std::vector<int>& due) const {
    return decide(Problem(studio_, deliveries_, span_, begin, due), most_looks_);
  }

  Schedule schedule(const Decision& decision, int begin, const std::vector<int>& due) const;
  const Span& span() const { return span_; }

 private:
  void share_lye(Schedule& schedule, const Problem& problem) const;
  void order(Schedule& schedule) const;

  const Studio& studio_;
  const std::vector<Delivery>& deliveries_;
  Span span_;
  std::int64_t most_looks_;
};

Schedule Asking::schedule(const Decision& decision, int begin, const std::vector<int>& due) const {
  Schedule schedule{.begin = span_.day(begin), .due = {}};
  for (const int day : due) schedule.due.push_back(span_.day(day));
  const Problem problem(studio_, deliveries_, span_, begin, due);
  for (const auto& [delivery, line, batch, day] : decision.made) {
    const LineRules& rules = rules_of(problem, delivery, line);
    const Pouring& on = rules.on[static_cast<std::size_t>(day)];
    schedule.batches.push_back({.delivery = delivery,
                                .line = line,
                                .batch = batch,
                                .poured = span_.day(day),
                                .unmoulded = span_.day(on.unmould),
                                .cured = span_.day(on.ready)});
    if (rules.line->is_chilled) schedule.batches.back().chilled = span_.day(span_.last_in(day - 1));
  }
  share_lye(schedule, problem);
  for (const auto& cast : decision.casts)
    schedule.casts.push_back({cast.made, cast.tray, span_.day(cast.day), cast.count});
  for (const auto& packing : decision.packing)
    schedule.packing.push_back({packing.delivery, span_.day(packing.day), packing.time});
  std::stable_sort(schedule.packing.begin(), schedule.packing.end(),
                   [](const auto& a, const auto& b) { return a.day < b.day; });
  for (const Alike& alike : problem.batches()) {
    const LineRules& rules = problem.lines()[alike.line];
    int last = alike.last;
    while (last > alike.first &&
           (span_.hours(last).count() == 0 || !rules.on[static_cast<std::size_t>(last)].is_allowed))
      --last;
    schedule.last_days.push_back({rules.delivery, rules.number, span_.day(last)});
  }
  order(schedule);
  return schedule;
}

void Asking::share_lye(Schedule& schedule, const Problem& problem) const {
  std::map<std::pair<Day, std::size_t>, std::vector<std::size_t>> sharing;  // by day and kind
  for (std::size_t b = 0; b < schedule.batches.size(); ++b) {
    const ScheduledBatch& one = schedule.batches[b];
    const LineRules& rules = rules_of(problem, one.delivery, one.line);
    if (rules.on[static_cast<std::size_t>(span_.at(one.poured))].shares_lye)
      sharing[{one.poured, *rules.line->lye}].push_back(b);
  }
  for (auto& [where, all] : sharing) {
    const auto& [poured, kind] = where;
    std::sort(all.begin(), all.end(), [&](std::size_t a, std::size_t b) {
      const auto &one = schedule.batches[a], &other = schedule.batches[b];
      return std::tie(one.delivery, one.line, one.batch) <
             std::tie(other.delivery, other.line, other.batch);
    });
    const auto in_pot = static_cast<std::size_t>(studio_.lyes[kind].batches_in_pot);
    for (std::size_t first = 0; first < all.size(); first += in_pot) {
      const std::size_t end = std::min(first + in_pot, all.size());
      if (end - first < 2) continue;
      const Day evening = span_.day(span_.last_in(span_.at(poured) - 1));
      ScheduledLye lye{.batches = {}, .made = evening};
      for (std::size_t i = first; i < end; ++i) {
        lye.batches.push_back(all[i]);
        schedule.batches[all[i]].chilled = evening;
        schedule.batches[all[i]].takes_lye_of_another = i > first;
      }
      schedule.lyes.push_back(std::move(lye));
    }
  }
}

void Asking::order(Schedule& schedule) const {
  using For = Schedule::Ordering::For;
  const auto add = [&](std::size_t delivery, std::size_t line, For what, const Lead& lead,
                       std::optional<Day> needed) {
    if (!lead || !needed) return;
    const int ordered = span_.last_open(span_.at(*needed) - *lead);
    schedule.ordering.push_back({delivery, line, what, span_.day(ordered), *needed});
  };
  for (std::size_t d = 0; d < deliveries_.size(); ++d) {
    for (std::size_t l = 0; l < deliveries_[d].lines.size(); ++l) {
      std::optional<Day> made, cast;
      for (std::size_t b = 0; b < schedule.batches.size(); ++b) {
        const ScheduledBatch& batch = schedule.batches[b];
        if (batch.delivery != d || batch.line != l) continue;
        const Day begun = batch.chilled.value_or(batch.poured);
        made = made ? std::min(*made, begun) : begun;
        for (const auto& one : schedule.casts)
          if (one.batch == b) cast = cast ? std::min(*cast, one.day) : one.day;
      }
      add(d, l, For::casts, deliveries_[d].lines[l].cast_lead, cast);
      add(d, l, For::batch, deliveries_[d].lines[l].make_lead, made);
    }
    std::optional<Day> packed;
    for (const auto& one : schedule.packing)
      if (one.delivery == d) packed = packed ? std::min(*packed, one.day) : one.day;
    add(d, 0, For::packing, deliveries_[d].pack_lead, packed);
  }
}

}  // namespace

LatestStart latest_start(const Studio& studio, const std::vector<Delivery>& deliveries, Day from,
                         std::int64_t most_looks) {
  std::vector<int> due;
  int last = 0;
  for (const Delivery& delivery : deliveries) {
    due.push_back(static_cast<int>((*delivery.due - from).count()));
    last = std::max(last, due.back());
  }
  if (*std::min_element(due.begin(), due.end()) <= 0)
    return {.schedule = {}, .is_impossible = true};
  const Asking asking(studio, deliveries, from, last + 1, most_looks);
  Decision best = asking.decided(0, due);
  if (best.verdict != Verdict::possible)
    return {.schedule = {}, .is_impossible = best.verdict == Verdict::impossible};
  int begin = 0, too_late = last;
  Verdict next = Verdict::impossible;  // of `too_late`: nothing is made on the due day
  while (too_late - begin > 1) {
    const int middle = begin + (too_late - begin) / 2;
    Decision decision = asking.decided(middle, due);
    if (decision.verdict == Verdict::possible) {
      begin = middle;
      best = std::move(decision);
    } else {
      too_late = middle;
      next = decision.verdict;
    }
  }
  LatestStart found{.schedule = asking.schedule(best, begin, due)};
  found.schedule->is_proved = next == Verdict::impossible;
  return found;
}

std::optional<NeverMade> never_made(const Studio& studio, const std::vector<Delivery>& deliveries,
                                    Day from) {
  for (std::size_t d = 0; d < deliveries.size(); ++d)
    for (std::size_t l = 0; l < deliveries[d].lines.size(); ++l) {
      const auto& batches = deliveries[d].lines[l].batches;
      for (std::size_t b = 0; b < batches.size(); ++b) {
        if (b > 0 && are_alike(batches[b - 1], batches[b])) continue;
        Delivery alone = deliveries[d];
        alone.lines = {deliveries[d].lines[l]};
        alone.lines.front().batches = {batches[b]};
        const std::vector<Delivery> only = {std::move(alone)};
        const Asking asking(studio, only, from, five_years, usual_looks);
        if (asking.decided(0, {five_years - 1}).verdict != Verdict::possible)
          return NeverMade{d, l, b};
      }
    }
  return std::nullopt;
}

std::optional<Schedule> earliest_promise(const Studio& studio,
                                         const std::vector<Delivery>& deliveries, Day from,
                                         std::int64_t most_looks) {
  int last = five_years;
  for (const Delivery& delivery : deliveries)
    if (delivery.due) last = std::max(last, static_cast<int>((*delivery.due - from).count()) + 1);
  const Asking asking(studio, deliveries, from, last, most_looks);
  const auto due_on = [&](int day) {
    std::vector<int> due;
    for (const Delivery& delivery : deliveries)
      due.push_back(delivery.due ? asking.span().at(*delivery.due) : day);
    return due;
  };
  const auto is_early = [](const std::vector<int>& due) {
    return *std::min_element(due.begin(), due.end()) <= 0;
  };
  if (is_early(due_on(1)) || never_made(studio, deliveries, from)) return std::nullopt;
  int too_early = 0, day = 1;
  Verdict before = Verdict::impossible;
  Decision best;
  for (;; day = std::min(2 * day, last - 1)) {
    best = asking.decided(0, due_on(day));
    if (best.verdict == Verdict::possible) break;
    too_early = day;
    before = best.verdict;
    if (day == last - 1) return std::nullopt;
  }
  while (day - too_early > 1) {
    const int middle = too_early + (day - too_early) / 2;
    Decision decision = asking.decided(0, due_on(middle));
    if (decision.verdict == Verdict::possible) {
      day = middle;
      best = std::move(decision);
    } else {
      too_early = middle;
      before = decision.verdict;
    }
  }
  Schedule schedule = asking.schedule(best, 0, due_on(day));
  schedule.is_proved = before == Verdict::impossible;
  return schedule;
}

}  // namespace brimwright::days
