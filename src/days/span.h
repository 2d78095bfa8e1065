#pragma once

#include "days/calendar.h"

#include <chrono>
#include <vector>

namespace brimwright::days {

/// So many days of a calendar from one on, each known by its place, 0 for the first.
class Span {
 public:
  Span(const Calendar& calendar, Day first, int days);

  int size() const { return static_cast<int>(hours_.size()); }
  Day day(int at) const { return first_ + std::chrono::days(at); }
  int at(Day day) const { return static_cast<int>((day - first_).count()); }

  std::chrono::seconds hours(int at) const { return hours_[static_cast<std::size_t>(at)]; }
  /// The first day from `at` on that she is there; size() where none is left.
  int next_in(int at) const;
  /// The last such day up to `at`; below 0 where there is none.
  int last_in(int at) const;
  /// The first and last day, from `at` on and up to it, that is no day off.
  int next_open(int at) const;
  int last_open(int at) const;

 private:
  Day first_;
  std::vector<std::chrono::seconds> hours_;
  std::vector<int> next_in_, last_in_, next_open_, last_open_;
};

}  // namespace brimwright::days
