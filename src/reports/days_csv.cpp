#include "reports/days_report.h"
#include "reports/plan_words.h"
#include "units/printing.h"

namespace brimwright::reports {

std::string days_csv(const DaysReport& report, DecimalMark mark) {
  const auto number = [](std::string text) { return CsvCell::number(std::move(text)); };
  CsvTable table(mark);
  table.row({{"day"},
             {"weekday"},
             {"act"},
             {"what"},
             {"run"},
             {"batches"},
             {"pieces"},
             {"minutes"},
             {"for"}});
  for (const DayEntry& entry : entries_of(report)) {
    const std::string day = weekday_and_date(entry.day);
    std::string batches, files;
    for (const std::string& file : entry.files) files += (files.empty() ? "" : " ") + file;
    for (const std::int64_t batch : entry.batches)
      batches += (batches.empty() ? "" : " ") + std::to_string(batch);
    table.row({{day.substr(4)},
               {day.substr(0, 3)},
               {name_of(entry.act)},
               {entry.text},
               {files},
               {batches},
               entry.pieces > 0 ? number(std::to_string(entry.pieces)) : CsvCell{""},
               entry.time.count() > 0
                   ? number(trimmed(static_cast<double>(entry.time.count()) / 60, 2))
                   : CsvCell{""},
               {report.asked[entry.asked].name}});
  }
  return table.take();
}

}  // namespace brimwright::reports
