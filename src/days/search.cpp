#include "days/search.h"

#include <algorithm>
#include <string>
#include <unordered_set>
#include <vector>

namespace brimwright::days {
namespace {

using std::chrono::seconds;

class Search {
 public:
  Search(const Problem& problem, Board& board, std::int64_t most_looks)
      : problem_(problem), board_(board), looks_left_(most_looks) {
    for (std::size_t i = 0; i < problem.batches().size(); ++i) urgent_.push_back(i);
    std::stable_sort(urgent_.begin(), urgent_.end(), [&](std::size_t a, std::size_t b) {
      return problem.batches()[a].last < problem.batches()[b].last;
    });
  }

  Verdict verdict() {
    if (from(problem_.begin())) return Verdict::possible;
    return looks_left_ > 0 ? Verdict::impossible : Verdict::unknown;
  }

 private:
  bool from(int day) {
    if (board_.all_left() == 0) return true;
    if (--looks_left_ <= 0 || is_late(day)) return false;
    std::string state = board_.state(day);
    if (leads_nowhere_.contains(state)) return false;
    if (fill(day, 0)) return true;
    leads_nowhere_.insert(std::move(state));
    return false;
  }

  /// Of the batches from `next` on in the order of urgency, as many as fit today, then fewer.
  bool fill(int day, std::size_t next) {
    if (looks_left_ <= 0) return false;
    if (next == urgent_.size()) return from(day + 1);
    int count = 0;
    while (board_.pour(urgent_[next], day)) ++count;
    for (;; --count) {
      if (fill(day, next + 1)) return true;
      if (count == 0) return false;
      board_.undo();
    }
  }

  /// What is left cannot be poured by its last days, by hours, by numbers or by its casts.
  bool is_late(int day) const {
    seconds shortest = seconds::max();
    for (const std::size_t i : urgent_) {
      if (board_.left(i) == 0) continue;
      if (problem_.batches()[i].last < day) return true;
      shortest = std::min(shortest, problem_.batches()[i].least_busy);
    }
    seconds needed{}, before = board_.hours_for_casts_before(day);
    std::int64_t batches = 0;
    for (const std::size_t i : urgent_) {
      const Alike& alike = problem_.batches()[i];
      const int left = board_.left(i);
      if (left == 0) continue;
      seconds casts{};
      for (const Fills& fills : alike.batch.fills)
        casts += left * fills.count * problem_.studio().each_tray_fill;
      const seconds early = std::min(casts, before);  // what the days before can take of it
      before -= early;
      needed += left * alike.least_busy + casts - early;
      batches += left;
      if (!has_days(day, alike.last, needed, batches, shortest)) return true;
    }
    return is_late_in_trays(day);
  }

  bool has_days(int day, int last, seconds needed, std::int64_t batches, seconds shortest) const {
    const int of_pots = problem_.studio().batches_a_day.value_or(batches_of_a_day);
    seconds hours{};
    std::int64_t places = 0;
    for (int t = day; t <= last; ++t) {
      hours += problem_.hours(t);
      std::int64_t of_day = of_pots;
      if (shortest.count() > 0)
        of_day = std::min<std::int64_t>(of_day, problem_.hours(t) / shortest);
      places += of_day;
      if (hours >= needed && places >= batches) return true;
    }
    return hours >= needed && places >= batches;
  }

  bool is_late_in_trays(int day) const {
    const auto& trays = problem_.studio().trays;
    for (std::size_t tray = 0; tray < trays.size(); ++tray) {
      if (!trays[tray].is_counted) continue;
      std::int64_t needed = 0, room = board_.fillings_before(tray, day);
      int counted_to = day;
      for (const std::size_t i : urgent_) {
        const Alike& alike = problem_.batches()[i];
        std::int64_t more = 0;
        for (const Fills& fills : alike.batch.fills)
          if (fills.tray == tray) more += std::int64_t{board_.left(i)} * fills.count;
        if (more == 0) continue;
        needed += more;
        for (; counted_to < alike.last; ++counted_to) room += board_.room_in(tray, counted_to);
        if (needed > room) return true;
      }
    }
    return false;
  }

  static constexpr int batches_of_a_day = 1'000'000;
  const Problem& problem_;
  Board& board_;
  std::int64_t looks_left_;
  std::vector<std::size_t> urgent_;
  std::unordered_set<std::string> leads_nowhere_;
};

}  // namespace

Verdict searched(const Problem& problem, Board& board, std::int64_t most_looks) {
  return Search(problem, board, most_looks).verdict();
}

}  // namespace brimwright::days
