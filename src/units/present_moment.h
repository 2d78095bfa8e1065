#pragma once

#include <string>

namespace brimwright {

/// The date and time of day where the program runs: "2026-05-30 19:46". Where SOURCE_DATE_EPOCH is
/// set (reproducible-builds.org), that moment in UTC, so that the same is printed twice.
std::string present_moment();
/// The same to the second, in UTC, as iCalendar writes it (RFC 5545): "20260530T174612Z".
std::string present_moment_in_utc();
/// The same where the program runs, with its offset (RFC 3339): "2026-05-30T19:46:12+02:00".
std::string present_moment_with_offset();

}  // namespace brimwright
