#include "days/decision.h"
#include "days/schedule.h"

#include <algorithm>
#include <utility>

namespace brimwright::days {
namespace {

using Batches = std::vector<std::vector<std::size_t>>;  // of each line

constexpr std::size_t most_choices = 512;

std::int64_t sold_of(const Delivery& delivery) {
  std::int64_t sold = delivery.ready;
  for (const Line& line : delivery.lines)
    for (const Batch& batch : line.batches) sold += batch.sold;
  return sold;
}

std::int64_t sold_of(const Delivery& delivery, const Batches& kept) {
  std::int64_t sold = 0;
  for (std::size_t l = 0; l < kept.size(); ++l)
    for (const std::size_t b : kept[l]) sold += delivery.lines[l].batches[b].sold;
  return sold;
}

Delivery part(const Delivery& of, const Batches& batches) {
  Delivery part = of;
  for (std::size_t l = 0; l < part.lines.size(); ++l) {
    part.lines[l].batches.clear();
    for (const std::size_t b : batches[l]) part.lines[l].batches.push_back(of.lines[l].batches[b]);
  }
  return part;
}

Batches others(const Delivery& of, const Batches& kept) {
  Batches rest(of.lines.size());
  for (std::size_t l = 0; l < of.lines.size(); ++l)
    for (std::size_t b = 0; b < of.lines[l].batches.size(); ++b)
      if (std::find(kept[l].begin(), kept[l].end(), b) == kept[l].end()) rest[l].push_back(b);
  return rest;
}

/// A part without what is made already.
Delivery without_ready(Delivery part) {
  part.ready = 0;
  part.ready_on.reset();
  return part;
}

/// Batches of one line that are one like the other.
struct Likes {
  std::size_t line;
  std::vector<std::size_t> batches;
};

std::vector<Likes> likes_in(const Delivery& late) {
  std::vector<Likes> all;
  for (std::size_t l = 0; l < late.lines.size(); ++l) {
    const auto& batches = late.lines[l].batches;
    for (std::size_t b = 0; b < batches.size(); ++b) {
      const auto known = std::find_if(all.begin(), all.end(), [&](const Likes& likes) {
        return likes.line == l && are_alike(batches[likes.batches.front()], batches[b]);
      });
      if (known == all.end())
        all.push_back({l, {b}});
      else
        known->batches.push_back(b);
    }
  }
  return all;
}

/// So many of these and so many of those, most pieces first; none where there are too many ways.
std::vector<Batches> choices(const Delivery& late) {
  std::vector<Batches> all = {Batches(late.lines.size())};
  for (const auto& [line, batches] : likes_in(late)) {
    std::vector<Batches> longer;
    for (const Batches& one : all) {
      longer.push_back(one);
      for (const std::size_t b : batches) {
        longer.push_back(longer.back());
        longer.back()[line].push_back(b);
      }
      if (longer.size() > most_choices) return {};
    }
    all = std::move(longer);
  }
  std::stable_sort(all.begin(), all.end(), [&](const Batches& a, const Batches& b) {
    return sold_of(late, a) > sold_of(late, b);
  });
  return all;
}

/// Where there are too many choices: the batches one after the other, half of them, a quarter ...
std::vector<Batches> few_choices(const Delivery& late) {
  std::vector<Batches> all = {Batches(late.lines.size())};
  for (std::size_t l = 0; l < late.lines.size(); ++l)
    for (std::size_t b = 0; b < late.lines[l].batches.size(); ++b) {
      all.push_back(all.back());
      all.back()[l].push_back(b);
    }
  std::reverse(all.begin(), all.end());
  return all;
}

class Parting {
 public:
  Parting(const Studio& studio, const std::vector<Delivery>& deliveries, std::size_t late, Day from,
          std::int64_t most_looks)
      : studio_(studio),
        deliveries_(deliveries),
        late_(late),
        from_(from),
        most_looks_(most_looks) {}

  Parted parted() {
    const Delivery& late = deliveries_[late_];
    const auto all = choices(late);
    Batches kept = all.empty() ? last_that_holds(few_choices(late)) : first_that_holds(all);
    Parted parted{.kept = kept,
                  .pieces_kept = sold_of(late, kept) + (keeps_ready_ ? late.ready : 0),
                  .pieces = sold_of(late),
                  .keeps_ready = keeps_ready_,
                  .schedule = earliest_promise(
                      studio_, parted_deliveries(deliveries_, late_, kept, keeps_ready_), from_,
                      most_looks_)};
    parted.is_proved = is_proved_ && !all.empty() && parted.schedule && parted.schedule->is_proved;
    return parted;
  }

 private:
  Verdict holds(const Batches& kept) const {
    std::vector<Delivery> deliveries = deliveries_;
    deliveries[late_] = part(deliveries_[late_], kept);
    std::vector<int> due;
    for (const Delivery& one : deliveries)
      due.push_back(static_cast<int>((*one.due - from_).count()));
    const int last = *std::max_element(due.begin(), due.end());
    if (*std::min_element(due.begin(), due.end()) <= 0) return Verdict::impossible;
    const Span span(studio_.calendar, from_, last + 1);
    return decide(Problem(studio_, deliveries, span, 0, due), most_looks_).verdict;
  }

  /// What is made already is in time with each of them, or nothing is.
  Batches first_that_holds(const std::vector<Batches>& all) {
    keeps_ready_ = deliveries_[late_].ready > 0;
    for (const Batches& kept : all) {
      if (sold_of(deliveries_[late_], kept) == 0 && !keeps_ready_) break;
      const Verdict verdict = holds(kept);
      if (verdict == Verdict::possible) return kept;
      if (verdict == Verdict::unknown) is_proved_ = false;
    }
    keeps_ready_ = false;
    return Batches(deliveries_[late_].lines.size());
  }

  /// They shrink from one to the next, and what holds for one holds for all after it.
  Batches last_that_holds(const std::vector<Batches>& shrinking) {
    keeps_ready_ = deliveries_[late_].ready > 0 && holds(shrinking.back()) == Verdict::possible;
    std::size_t fails = 0, holds_at = shrinking.size() - 1;  // that of none
    while (holds_at - fails > 1) {
      const std::size_t middle = fails + (holds_at - fails) / 2;
      (holds(shrinking[middle]) == Verdict::possible ? holds_at : fails) = middle;
    }
    return shrinking[holds_at];
  }

  const Studio& studio_;
  const std::vector<Delivery>& deliveries_;
  std::size_t late_;
  Day from_;
  std::int64_t most_looks_;
  bool is_proved_ = true, keeps_ready_ = false;
};

}  // namespace

std::vector<Delivery> parted_deliveries(const std::vector<Delivery>& deliveries, std::size_t late,
                                        const std::vector<std::vector<std::size_t>>& kept,
                                        bool keeps_ready) {
  std::vector<Delivery> all = deliveries;
  all[late] = part(deliveries[late], kept);
  all.push_back(part(deliveries[late], others(deliveries[late], kept)));
  Delivery& without = keeps_ready ? all.back() : all[late];
  without = without_ready(std::move(without));
  all.back().due.reset();
  all.back().is_rest = true;
  if (sold_of(all[late]) == 0) {
    all[late] = all.back();
    all.pop_back();
  }
  return all;
}

Parted parted(const Studio& studio, const std::vector<Delivery>& deliveries, std::size_t late,
              Day from, std::int64_t most_looks) {
  return Parting(studio, deliveries, late, from, most_looks).parted();
}

}  // namespace brimwright::days
