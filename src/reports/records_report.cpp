#include "reports/records_report.h"

#include "records/half_made.h"
#include "reports/json_document.h"
#include "reports/text_table.h"
#include "units/printing.h"
#include "units/shown_text.h"
#include "units/wording.h"

#include <nlohmann/json.hpp>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;

std::string day_of(const std::string& moment) { return moment.substr(0, 10); }

std::string holding(const records::Overview& overview) {
  std::string text = "  " + counted(overview.batches, "batch", "batches") + ", " +
                     counted(overview.lots, "lot") + ", " + counted(overview.acts, "act");
  if (overview.since)
    text += " from " + day_of(*overview.since) + " to " + day_of(*overview.latest);
  text += "; " + fixed(static_cast<double>(overview.bytes) / 1e6, 1) + " MB.\n";
  if (overview.faults.empty()) return text + "  The file is sound.\n";
  for (const std::string& fault : overview.faults)
    text += wrapped("DAMAGED: " + on_one_line(fault), "  !! ", "     ");
  return text + "  Keep the file, and put a backup in its place.\n";
}

}  // namespace

std::string records_text(const RecordsReport& report) {
  std::string text;
  for (const std::string& done : report.done) text += on_one_line(done) + "\n";
  text += on_one_line(report.path) + "\n";
  text += report.overview ? holding(*report.overview) : "  There are no records here yet.\n";
  for (const std::string& name : report.look_alikes)
    text += wrapped(
        on_one_line(name) +
            (records::is_half_made(name)
                 ? " was being made when a program was stopped: nothing is recorded in it alone. "
                   "Remove it."
                 : " lies beside it and is in no answer: a copy by hand, or one that a service "
                   "made because two machines wrote at once. Look into it, then move it away."),
        "  ! ", "    ");
  return text;
}

std::string records_json(const RecordsReport& report) {
  Json json = {{"schema", "brimwright.records_overview/1"}, {"file", report.path}};
  json["done"] = report.done;
  json["records"] = nullptr;
  if (report.overview) {
    const auto& overview = *report.overview;
    json["records"] = {{"version", overview.version},
                       {"batches", overview.batches},
                       {"lots", overview.lots},
                       {"acts", overview.acts},
                       {"since", overview.since ? Json(*overview.since) : Json(nullptr)},
                       {"latest", overview.latest ? Json(*overview.latest) : Json(nullptr)},
                       {"bytes", overview.bytes},
                       {"sound", overview.faults.empty()},
                       {"faults", overview.faults}};
  }
  json["look_alikes"] = report.look_alikes;
  return json_document(json);
}

}  // namespace brimwright::reports
