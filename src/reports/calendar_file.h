#pragma once

#include "reports/days_report.h"

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace brimwright::reports {

/// An entry of an earlier export. Date and summary are as they stand there.
struct CalendarEvent {
  std::string uid, start, end, summary;
  std::int64_t sequence = 0;
  bool is_cancelled = false;
};

/// The entries of a calendar that this program wrote, others left out. UserError at `file` where
/// the text is no such calendar, or not all of one.
std::vector<CalendarEvent> events_in(std::string_view text, const std::string& file);

struct CalendarWishes {
  std::string stamp;  // when it is made, in UTC: "20261120T093000Z"
  std::optional<std::chrono::minutes> alarm =
      {};  // on the day of what is to be done, from midnight
  std::vector<CalendarEvent> earlier = {};
};

/// The days as a calendar (iCalendar, RFC 5545): an entry that takes the whole day for all that is
/// done on it. An entry's UID is made of its file's id and of what it is, not of its day, so that
/// one that moves stays the same; its SEQUENCE goes up where it differs from the earlier export.
/// What stands in that and is not done any more is written as cancelled, of these files alone.
///
/// All files must have an id. UserError where two have the same.
std::string calendar_file(const DaysReport& report, const CalendarWishes& wishes);

}  // namespace brimwright::reports
