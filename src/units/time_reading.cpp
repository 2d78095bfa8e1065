#include "units/reading.h"
#include "units/unit_names.h"

#include <cmath>
#include <optional>
#include <string>

namespace brimwright {
namespace {

using TimeUnits = Kind<double>;  // in seconds

/// "1 h 30 min", in seconds.
double read_time(std::string_view given, const TimeUnits& kind, const Place& where,
                 std::string_view written_example) {
  const std::string example = quoted(written_example);
  const std::string clean = plain(given);
  Text text{clean};
  double sum = 0;
  std::optional<double> last;
  do {
    const double number = take_number(text, given, where, example);
    const std::string_view name = take_unit(text);
    const double* unit = find_unit(kind, name);
    if (unit == nullptr)
      throw UserError(
          where,
          quoted(given) + (name.empty() ? " has no unit" : " is not " + std::string(kind.noun)),
          "write it as " + example + "; units are " + unit_names(kind));
    if (last && *unit >= *last) refuse_order(given, where, "\"1 h 30 min\"");
    last = *unit;
    sum += number * *unit;
  } while (!text.rest.empty());
  return sum;
}

constexpr double minute = 60, hour = 60 * minute, day = 24 * hour, week = 7 * day;
const UnitNames<double>& minutes() {
  static const UnitNames<double> names{{"min", "mins", "minute", "minutes"}, minute};
  return names;
}
const UnitNames<double>& hours() {
  static const UnitNames<double> names{{"h", "hr", "hrs", "hour", "hours"}, hour};
  return names;
}

}  // namespace

std::chrono::minutes read_duration(std::string_view given, const Place& where,
                                   std::string_view example) {
  static const TimeUnits kind{
      "a duration",
      "36 h",
      {minutes(), hours(), {{"days", "d", "day"}, day}, {{"weeks", "wk", "wks", "week"}, week}},
      3650 * day};
  const double seconds = read_time(given, kind, where, example);
  if (seconds > kind.most)
    throw UserError(where, quoted(given) + " is over ten years", "check the number and its unit");
  return std::chrono::minutes(static_cast<std::int64_t>(std::llround(seconds / minute)));
}

std::chrono::seconds read_short_time(std::string_view given, const Place& where,
                                     std::string_view example) {
  static const TimeUnits kind{
      "a time", "20 s", {{{"s", "sec", "secs", "second", "seconds"}, 1}, minutes(), hours()}, day};
  const double seconds = read_time(given, kind, where, example);
  if (seconds > kind.most)
    throw UserError(where, quoted(given) + " is over a day", "check the number and its unit");
  return std::chrono::seconds(static_cast<std::int64_t>(std::llround(seconds)));
}

std::chrono::year_month_day read_date(std::string_view given, const Place& where) {
  const std::string text = plain(given);
  const auto is_written_so = [](std::string_view date) {
    constexpr std::string_view form = "0000-00-00";
    return date.size() == form.size() &&
           std::equal(date.begin(), date.end(), form.begin(), [](char c, char in_form) {
             return in_form == '0' ? c >= '0' && c <= '9' : c == in_form;
           });
  };
  const std::string example = "write year, month and day as in 2026-11-14";
  if (!is_written_so(text)) throw UserError(where, quoted(given) + " is not a date", example);
  const auto digits = [&](std::size_t from, std::size_t count) {
    return std::stoi(text.substr(from, count));
  };
  const std::chrono::year_month_day date{std::chrono::year(digits(0, 4)),
                                         std::chrono::month(static_cast<unsigned>(digits(5, 2))),
                                         std::chrono::day(static_cast<unsigned>(digits(8, 2)))};
  if (!date.ok()) throw UserError(where, quoted(given) + " is not a day of the calendar", example);
  constexpr std::chrono::year first{1900}, last{2999};  // beyond whatever is made, bought or due
  if (date.year() < first || date.year() > last)
    throw UserError(where, quoted(given) + " is in no year of these times", example);
  return date;
}

}  // namespace brimwright
