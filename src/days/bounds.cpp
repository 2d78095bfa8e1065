#include "days/bounds.h"

#include <algorithm>
#include <limits>
#include <map>
#include <vector>

namespace brimwright::days {
namespace {

using std::chrono::seconds;

constexpr int no_limit = std::numeric_limits<int>::max();

std::size_t at(int day) { return static_cast<std::size_t>(day); }

/// What has to be poured by its last day, most urgent first.
std::vector<const Alike*> by_urgency(const Problem& problem) {
  std::vector<const Alike*> all;
  for (const Alike& alike : problem.batches()) all.push_back(&alike);
  std::stable_sort(all.begin(), all.end(),
                   [](const Alike* a, const Alike* b) { return a->last < b->last; });
  return all;
}

std::int64_t fills_of(const Alike& alike) {
  std::int64_t count = 0;
  for (const Fills& fills : alike.batch.fills) count += fills.count;
  return count;
}

/// Hours, batches and whippings up to each last day against what is poured by then.
bool is_too_much_for_the_days(const Problem& problem) {
  const Studio& studio = problem.studio();
  seconds needed{};
  std::int64_t batches = 0, whippings = 0;
  seconds shortest = seconds::max();
  int first = no_limit;
  for (const Alike& alike : problem.batches()) {
    shortest = std::min(shortest, alike.least_busy);
    first = std::min(first, alike.first);
  }
  for (const Alike* alike : by_urgency(problem)) {
    const auto count = static_cast<std::int64_t>(alike->numbers.size());
    needed += count * (alike->least_busy + fills_of(*alike) * studio.each_tray_fill);
    batches += count;
    whippings += count * alike->batch.whippings;
    seconds hours{};
    std::int64_t places = 0, bowls = 0;
    for (int day = problem.begin(); day <= alike->last; ++day) {
      hours += problem.hours(day);
      if (day < first) continue;
      std::int64_t of_day = studio.batches_a_day.value_or(no_limit);
      if (shortest.count() > 0)
        of_day = std::min<std::int64_t>(of_day, problem.hours(day) / shortest);
      places += of_day;
      bowls += studio.whippings_a_day.value_or(no_limit);
    }
    if (needed > hours || batches > places || whippings > bowls) return true;
  }
  return false;
}

/// A line by itself, each of its batches as small as its smallest. Poured as early as can be, one
/// after the other, the i-th is never later than in any other schedule: each condition on it holds
/// from some day on, which is no later where the ones before it are no later.
class Alone {
 public:
  Alone(const Problem& problem, std::size_t line) : problem_(problem), line_(line) {
    for (const Alike& alike : problem.batches()) {
      if (alike.line != line) continue;
      count_casts(alike.batch);
      smallest_.pieces = std::min(smallest_.pieces, alike.batch.pieces);
      smallest_.whippings = std::min(smallest_.whippings, alike.batch.whippings);
      busy_ = std::min(busy_, alike.least_busy);
      first_ = std::min(first_, alike.first);
      last_ = std::max(last_, alike.last);
      count_ += alike.numbers.size();
    }
    limit();
  }

  bool is_late() const {
    if (count_ == 0) return false;
    if (at_once_ < 1 || on_rack_ < 1) return true;
    std::vector<int> poured;
    int day = first_, today = 0;
    while (poured.size() < count_) {
      if (day > last_) return true;
      if (today < most_on(day) && has_moulds(poured, day) && has_rack(poured, day)) {
        poured.push_back(day);
        ++today;
      } else {
        ++day;
        today = 0;
      }
    }
    return false;
  }

 private:
  const LineRules& rules() const { return problem_.lines()[line_]; }
  const Pouring& on(int day) const { return rules().on[at(day)]; }

  /// The least of all batches, kind by kind.
  void count_casts(const Batch& batch) {
    std::map<std::size_t, std::int64_t> casts;
    for (const Filled& filled : batch.filled) casts[filled.mould] += filled.casts;
    if (count_ == 0) casts_ = casts;
    for (auto& [kind, least] : casts_) least = std::min(least, casts[kind]);
  }

  void limit() {
    const Studio& studio = problem_.studio();
    for (const auto& [kind, casts] : casts_) {
      const Mould& mould = studio.moulds[kind];
      if (casts > 0) at_once_ = std::min(at_once_, mould.owned * mould.cavities / casts);
    }
    if (studio.rack_places)
      on_rack_ = *studio.rack_places / std::max<std::int64_t>(1, smallest_.pieces);
  }

  int most_on(int day) const {
    if (!on(day).is_allowed || problem_.span().hours(day).count() == 0) return 0;
    const Studio& studio = problem_.studio();
    seconds hours = problem_.hours(day);
    if (rules().is_cut_same_day && !rules().waits_idle) hours -= rules().line->unmould_after;
    std::int64_t most = studio.batches_a_day.value_or(no_limit);
    if (studio.whippings_a_day && smallest_.whippings > 0)
      most = std::min<std::int64_t>(most, *studio.whippings_a_day / smallest_.whippings);
    if (busy_.count() > 0)
      most = std::min<std::int64_t>(most, hours.count() < 0 ? 0 : hours / busy_);
    return static_cast<int>(std::min<std::int64_t>(most, no_limit));
  }

  bool has_moulds(const std::vector<int>& poured, int day) const {
    const auto many = static_cast<std::size_t>(at_once_);
    return poured.size() < many || on(poured[poured.size() - many]).free <= day;
  }
  bool has_rack(const std::vector<int>& poured, int day) const {
    const auto many = static_cast<std::size_t>(on_rack_);
    return poured.size() < many || on(poured[poured.size() - many]).ready <= on(day).unmould;
  }

  const Problem& problem_;
  std::size_t line_;
  std::map<std::size_t, std::int64_t> casts_;  // by kind of mould
  Batch smallest_{
      .filled = {}, .pieces = std::numeric_limits<std::int64_t>::max(), .whippings = no_limit};
  seconds busy_ = seconds::max();
  int first_ = no_limit, last_ = -1;
  std::size_t count_ = 0;
  std::int64_t at_once_ = std::numeric_limits<std::int64_t>::max(),
               on_rack_ = std::numeric_limits<std::int64_t>::max();
};

}  // namespace

bool is_too_much(const Problem& problem) {
  if (problem.is_hopeless() || is_too_much_for_the_days(problem)) return true;
  for (std::size_t line = 0; line < problem.lines().size(); ++line)
    if (Alone(problem, line).is_late()) return true;
  return false;
}

}  // namespace brimwright::days
