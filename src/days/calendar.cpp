#include "days/calendar.h"

#include <algorithm>

namespace brimwright::days {
namespace {

unsigned weekday_of(Day day) { return std::chrono::weekday(day).c_encoding(); }

}  // namespace

bool Calendar::is_off(Day day) const {
  return std::any_of(off.begin(), off.end(),
                     [day](const DaysOff& days) { return days.first <= day && day <= days.last; });
}

std::chrono::seconds Calendar::hours(Day day) const {
  return is_off(day) ? std::chrono::seconds{} : making[weekday_of(day)];
}

bool Calendar::is_in(Day day) const {
  if (is_off(day)) return false;
  return making[weekday_of(day)].count() > 0 || small_jobs[weekday_of(day)];
}

}  // namespace brimwright::days
