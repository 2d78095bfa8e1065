#include "runs/days_reading.h"

#include "planning/usual_bench.h"
#include "units/reading.h"
#include "units/written_number.h"

#include <algorithm>
#include <array>
#include <string>
#include <string_view>

namespace brimwright::runs {
namespace {

using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;

// From Sunday on, as std::chrono counts them.
constexpr std::array<std::string_view, 7> weekdays = {"sunday",   "monday", "tuesday", "wednesday",
                                                      "thursday", "friday", "saturday"};

Place place_in(const Fields& days, std::string_view list, std::size_t at) {
  return {days.file(), days.place(list).field + "/" + std::to_string(at)};
}

[[noreturn]] void refuse_twice(const std::string& name, const Place& where) {
  throw UserError(where, brimwright::quoted(name) + " stands there twice",
                  "take one of the two out, or write the day that was meant");
}

void read_making(days::Calendar& calendar, const Fields& days) {
  const Fields making = days.object("making");
  bool has_any = false;
  for (std::size_t i = 0; i < weekdays.size(); ++i) {
    if (making.is_empty(weekdays[i])) continue;
    const minutes time = making.duration(weekdays[i], "6 h");
    if (time.count() == 0)
      throw UserError(making.place(weekdays[i]), "is zero",
                      "give the hours of that day, such as \"6 h\", or take it out");
    if (time > hours(24))
      throw UserError(making.place(weekdays[i]), "is more than a day has",
                      "give the hours of that day, such as \"6 h\"");
    calendar.making[i] = time;
    has_any = true;
  }
  making.refuse_unknown();
  if (!has_any)
    throw UserError(days.place("making"), "has no making day",
                    R"(give the hours of at least one, such as { "saturday": "6 h" })");
}

void read_small_jobs(days::Calendar& calendar, const Fields& days) {
  const auto names = days.texts("small_jobs");
  for (std::size_t i = 0; i < names.size(); ++i) {
    const auto known = std::find(weekdays.begin(), weekdays.end(), names[i]);
    if (known == weekdays.end())
      throw UserError(place_in(days, "small_jobs", i),
                      brimwright::quoted(names[i]) + " is not a weekday",
                      "write it in full and in small letters, such as \"monday\"");
    bool& is_there = calendar.small_jobs[static_cast<std::size_t>(known - weekdays.begin())];
    if (is_there) refuse_twice(names[i], place_in(days, "small_jobs", i));
    is_there = true;
  }
}

/// "2026-12-24" or "2026-12-24/2027-01-02" (an interval of ISO 8601).
days::DaysOff days_off(const std::string& text, const Place& where) {
  const auto slash = text.find('/');
  const days::Day first = read_date(text.substr(0, slash), where);
  const days::Day last =
      slash == std::string::npos ? first : days::Day(read_date(text.substr(slash + 1), where));
  if (last < first)
    throw UserError(where, brimwright::quoted(text) + " ends before it begins",
                    "write the first day, a slash and the last day");
  return {first, last};
}

void read_off(days::Calendar& calendar, const Fields& days) {
  const auto texts = days.texts("off");
  for (std::size_t i = 0; i < texts.size(); ++i) {
    const Place where = place_in(days, "off", i);
    const days::DaysOff off = days_off(texts[i], where);
    for (const days::DaysOff& other : calendar.off)
      if (other.first == off.first && other.last == off.last) refuse_twice(texts[i], where);
    calendar.off.push_back(off);
  }
}

void read_limits(StudioDays& studio, const Fields& days) {
  constexpr std::int64_t most_vessels = 1000, most_pieces = 1'000'000;  // beyond any studio
  const auto used = days.has("used_a_day") ? days.whole_number("used_a_day", 1, 24) : 1;
  const auto a_day = [&](const char* key) -> std::optional<int> {
    if (!days.has(key)) return std::nullopt;
    return static_cast<int>(used * days.whole_number(key, 1, most_vessels));
  };
  studio.batches_a_day = a_day("pots_owned");
  studio.whippings_a_day = a_day("bowls_owned");
  if (days.has("rack_places"))
    studio.rack_places = days.whole_number("rack_places", 1, most_pieces);
  if (!days.has("cast_beforehand")) return;
  constexpr minutes a_day_long = hours(24);
  const minutes ahead = days.duration("cast_beforehand", "7 days");
  if (ahead < a_day_long)
    throw UserError(days.place("cast_beforehand"), "is less than a day, and casts need one to set",
                    "give days, such as \"7 days\"");
  studio.cast_ahead_at_most = static_cast<int>(ahead / a_day_long);
}

void read_one_lye(StudioDays& studio, const Fields& days) {
  const auto lye = days.optional_object("one_lye_a_day");
  if (!lye) return;
  lye->may_hold({"holds", "pot_tare", "saves", "confirmed"});
  OneLye read{.where = lye->place(), .holds = lye->positive_volume("holds", "5 l")};
  planning::usual_bench().ask(*lye, "holds", "lye jug", read.holds);
  if (lye->has("pot_tare")) {
    read.pot_tare = lye->positive_mass("pot_tare", "412 g");
    planning::usual_bench().ask(*lye, "pot_tare", "empty pot", *read.pot_tare);
  }
  read.saves = lye->positive_short_time("saves", "20 min");
  lye->refuse_unknown();
  studio.one_lye = read;
}

/// What it saves is a part of what a batch takes.
void refuse_too_much_saved(const StudioDays& studio, const Fields& days) {
  if (!studio.one_lye || studio.one_lye->saves < studio.each_batch) return;
  throw UserError(days.object("one_lye_a_day").place("saves"),
                  "is no less than a whole batch takes by the studio's work",
                  "give what of a batch's time goes into making its lye solution");
}

void read_times(StudioDays& times, const Studio& studio) {
  const auto work = studio.section("work");
  if (!work || work->is_empty("each_batch"))
    throw UserError(work ? work->place("each_batch") : studio.fields()->place("work"),
                    "is missing, so nobody knows how many batches a day holds",
                    work ? "give how long a batch takes you, such as \"90 min\""
                         : R"(give it with "each_batch", how long a batch takes you: "90 min")");
  const auto time = [&](const char* key) {
    return work->is_empty(key) ? seconds{} : work->positive_short_time(key, "90 min");
  };
  times.each_batch = time("each_batch");
  times.each_piece_made = time("each_piece_made");
  times.each_tray_fill = time("each_tray_fill");
  times.each_piece_packed = time("each_piece_packed");
}

}  // namespace

std::optional<OneLye> one_lye_of(const Studio& studio) {
  StudioDays days;
  if (const auto section = studio.section("days")) read_one_lye(days, *section);
  return days.one_lye;
}

StudioDays read_days(const Studio& studio) {
  const auto days = studio.section("days");
  if (!days)
    throw UserError(studio.fields()->place("days"), "is missing, so there is no making day",
                    R"(say when you make, such as "days": { "making": { "saturday": "6 h" } })");
  StudioDays read;
  read_making(read.calendar, *days);
  read_small_jobs(read.calendar, *days);
  read_off(read.calendar, *days);
  read_limits(read, *days);
  read_one_lye(read, *days);
  days->refuse_unknown();
  read_times(read, studio);
  refuse_too_much_saved(read, *days);
  return read;
}

}  // namespace brimwright::runs
