#pragma once

#include <array>
#include <chrono>
#include <vector>

namespace brimwright::days {

/// A day of the calendar that ISO 8601 uses; two of them are so many days apart.
using Day = std::chrono::sys_days;

/// Both days and all between them.
struct DaysOff {
  Day first, last;
};

/// When she works.
struct Calendar {
  /// Hours of a making day, by weekday from Sunday on, as std::chrono counts them.
  std::array<std::chrono::seconds, 7> making = {};
  /// Weekdays beside these on which she unmoulds, cuts and sets to chill.
  std::array<bool, 7> small_jobs = {};
  std::vector<DaysOff> off = {};

  bool is_off(Day day) const;
  /// None on a day off.
  std::chrono::seconds hours(Day day) const;
  /// Whether she is there at all.
  bool is_in(Day day) const;
};

}  // namespace brimwright::days
