#include "reports/calendar_file.h"

#include "units/number_text.h"
#include "units/user_error.h"

#include <algorithm>
#include <map>
#include <set>

namespace brimwright::reports {
namespace {

using Act = DayEntry::Act;

constexpr std::string_view domain = "@brimwright";
constexpr auto maker = "PRODID:-//Brimwright//Days//EN";

/// "20261120".
std::string date(days::Day day) {
  std::string text = weekday_and_date(day).substr(4);
  std::erase(text, '-');
  return text;
}

/// TEXT of RFC 5545, 3.3.11. Other control codes have no place in it.
std::string escaped(std::string_view text) {
  std::string out;
  for (const char c : text) {
    if (c == '\n') {
      out += "\\n";
    } else if (c == '\\' || c == ';' || c == ',') {
      out += '\\';
      out += c;
    } else if (static_cast<unsigned char>(c) >= 0x20 && c != 0x7f) {
      out += c;
    }
  }
  return out;
}

/// Content lines of at most 75 octets (RFC 5545, 3.1), broken before a character, never within one.
void put(std::string& calendar, std::string_view line) {
  constexpr std::size_t longest = 75;
  const auto continues = [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U; };
  for (std::size_t room = longest; line.size() > room; room = longest - 1) {  // the blank counts
    std::size_t end = room;
    while (end > 1 && continues(line[end])) --end;
    calendar.append(line.substr(0, end)).append("\r\n ");
    line.remove_prefix(end);
  }
  calendar.append(line).append("\r\n");
}

std::vector<std::string> unfolded(std::string_view text) {
  std::vector<std::string> lines;
  while (!text.empty()) {
    const auto end = std::min(text.find('\n'), text.size());
    std::string_view line = text.substr(0, end);
    text.remove_prefix(std::min(end + 1, text.size()));
    while (line.ends_with('\r')) line.remove_suffix(1);
    const bool goes_on = !lines.empty() && (line.starts_with(' ') || line.starts_with('\t'));
    if (goes_on)
      lines.back().append(line.substr(1));
    else
      lines.emplace_back(line);
  }
  return lines;
}

/// What stands after the property's name and its parameters.
std::string value_of(const std::string& line) { return line.substr(line.find(':') + 1); }

bool is_date(const std::string& text) {
  return text.size() == 8 &&
         std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

std::string without_controls(std::string text) {
  std::erase_if(text, [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; });
  return text;
}

void take(CalendarEvent& event, const std::string& line) {
  const std::string name = line.substr(0, line.find_first_of(":;"));
  const std::string value = without_controls(value_of(line));
  if (name == "UID") event.uid = value;
  if (name == "DTSTART") event.start = value;
  if (name == "DTEND") event.end = value;
  if (name == "SUMMARY") event.summary = value;
  if (name == "STATUS") event.is_cancelled = value == "CANCELLED";
  if (name != "SEQUENCE") return;
  const auto number = number_of(value);
  if (number && *number >= 0 && *number < 1e9) event.sequence = static_cast<std::int64_t>(*number);
}

class Writing {
 public:
  Writing(const DaysReport& report, const CalendarWishes& wishes)
      : report_(report), wishes_(wishes) {
    refuse_same_ids();
    for (const CalendarEvent& event : wishes.earlier) earlier_.emplace(event.uid, event);
  }

  std::string calendar() {
    for (const char* text : {"BEGIN:VCALENDAR", "VERSION:2.0", maker, "CALSCALE:GREGORIAN"})
      line(text);
    for (const DayEntry& entry : entries_of(report_)) event(entry);
    for (const CalendarEvent& event : wishes_.earlier)
      if (!written_.contains(event.uid) && is_of_these(event)) cancel(event);
    line("END:VCALENDAR");
    return std::move(text_);
  }

 private:
  void line(const std::string& text) { put(text_, text); }

  void refuse_same_ids() const {
    std::map<std::string, std::string> files;
    for (const auto& asked : report_.asked) {
      const auto [known, is_new] = files.emplace(asked.id, asked.file);
      if (!is_new)
        throw UserError({asked.file, "/id"}, "is the id of " + known->second + " too",
                        "give each file an id of its own: a copy needs a new one");
    }
  }

  bool is_of_these(const CalendarEvent& event) const {
    return std::any_of(report_.asked.begin(), report_.asked.end(),
                       [&](const auto& asked) { return event.uid.starts_with(asked.id + "-"); });
  }

  std::string uid(const DayEntry& entry) const {
    return report_.asked[entry.asked].id + "-" + entry.key + std::string(domain);
  }

  void head(const std::string& uid, std::int64_t sequence, const std::string& start,
            const std::string& end, const std::string& summary) {
    line("BEGIN:VEVENT");
    line("UID:" + uid);
    line("DTSTAMP:" + wishes_.stamp);
    line("SEQUENCE:" + std::to_string(sequence));
    line("DTSTART;VALUE=DATE:" + start);
    line("DTEND;VALUE=DATE:" + end);
    line("SUMMARY:" + summary);
  }

  void event(const DayEntry& entry) {
    const std::string id = uid(entry), start = date(entry.day), summary = escaped(entry.text);
    std::int64_t sequence = 0;
    if (const auto before = earlier_.find(id); before != earlier_.end()) {
      const CalendarEvent& event = before->second;
      const bool is_same = event.start == start && event.summary == summary && !event.is_cancelled;
      sequence = event.sequence + (is_same ? 0 : 1);
    }
    written_.insert(id);
    head(id, sequence, start, date(entry.day + std::chrono::days(1)), summary);
    if (!entry.caution.empty()) line("DESCRIPTION:" + escaped(entry.caution));
    line("CATEGORIES:" + name_of(entry.act));
    line("STATUS:CONFIRMED");
    line("TRANSP:TRANSPARENT");
    if (wishes_.alarm && entry.act != Act::cured && entry.act != Act::due) alarm(entry);
    line("END:VEVENT");
  }

  void alarm(const DayEntry& entry) {
    const auto time = *wishes_.alarm;
    line("BEGIN:VALARM");
    line("ACTION:DISPLAY");
    line("TRIGGER:PT" + std::to_string(time / std::chrono::hours(1)) + "H" +
         std::to_string((time % std::chrono::hours(1)).count()) + "M");
    line("DESCRIPTION:" +
         escaped(entry.caution.empty() ? entry.text : entry.text + "\n" + entry.caution));
    line("END:VALARM");
  }

  void cancel(const CalendarEvent& event) {
    if (event.is_cancelled) return;
    head(event.uid, event.sequence + 1, event.start, event.end, event.summary);
    line("STATUS:CANCELLED");
    line("TRANSP:TRANSPARENT");
    line("END:VEVENT");
  }

  const DaysReport& report_;
  const CalendarWishes& wishes_;
  std::map<std::string, CalendarEvent> earlier_;
  std::set<std::string> written_;
  std::string text_;
};

}  // namespace

std::vector<CalendarEvent> events_in(std::string_view text, const std::string& file) {
  const auto lines = unfolded(text);
  const std::string remedy = "give the .ics file that was written before";
  if (lines.empty() || lines.front() != "BEGIN:VCALENDAR" ||
      std::find(lines.begin(), lines.end(), maker) == lines.end())
    throw UserError({file, ""}, "is not a calendar that this program wrote", remedy);
  if (lines.back() != "END:VCALENDAR")
    throw UserError({file, ""}, "is cut off: the calendar's end is missing", remedy);
  std::vector<CalendarEvent> events;
  int depth = 0;  // within an entry: in its alarm
  for (const std::string& line : lines) {
    if (line == "BEGIN:VEVENT") {
      events.emplace_back();
      depth = 1;
    } else if (line == "END:VEVENT") {
      depth = 0;
    } else if (depth > 0 && line.starts_with("BEGIN:")) {
      ++depth;
    } else if (depth > 1 && line.starts_with("END:")) {
      --depth;
    } else if (depth == 1) {
      take(events.back(), line);
    }
  }
  std::erase_if(events, [](const CalendarEvent& event) {
    return !event.uid.ends_with(domain) || !is_date(event.start) || !is_date(event.end);
  });
  return events;
}

std::string calendar_file(const DaysReport& report, const CalendarWishes& wishes) {
  return Writing(report, wishes).calendar();
}

}  // namespace brimwright::reports
