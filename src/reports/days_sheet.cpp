#include "reports/days_report.h"
#include "units/shown_text.h"
#include "units/wording.h"

#include <filesystem>
#include <optional>
#include <utility>

namespace brimwright::reports {
namespace {

std::string when_and_what(const DaysReport& report) {
  std::string text;
  for (const auto& asked : report.asked) {
    text += (text.empty() ? "" : " ") + asked.name + ": " + counted(asked.pieces, "piece");
    if (asked.due) text += ", due " + weekday_and_date(*asked.due);
    text += ".";
    if (asked.is_late)
      text += " THE DUE DAY CANNOT BE KEPT: " + std::to_string(asked.in_time) +
              " in time, the rest on " + weekday_and_date(*asked.rest) + ".";
  }
  return text;
}

std::string names_of(const DaysReport& report) {
  std::string names;
  for (const auto& asked : report.asked) names += (names.empty() ? "" : " + ") + asked.name;
  return names;
}

}  // namespace

Sheet days_sheet(const DaysReport& report, const std::string& printed_at) {
  Sheet sheet{
      .title = "Days: " + names_of(report), .subtitle = when_and_what(report), .blocks = {}};
  std::optional<days::Day> day;
  for (const DayEntry& entry : entries_of(report)) {
    if (day != entry.day) sheet.blocks.emplace_back(SheetStep{weekday_and_date(entry.day)});
    day = entry.day;
    sheet.blocks.emplace_back(SheetWords{entry.text + ".", true});
    if (!entry.caution.empty())
      sheet.blocks.emplace_back(SheetWarning{Severity::caution, entry.caution});
  }
  sheet.blocks.emplace_back(SheetDrawing{days_drawing(report)});
  const auto file =
      on_one_line(std::filesystem::path(report.asked.front().file).filename().string());
  sheet.foot =
      (printed_at.empty() ? "Days from " : "Printed " + printed_at + ", days from ") + file;
  sheet.printed_at = printed_at;
  return sheet;
}

}  // namespace brimwright::reports
