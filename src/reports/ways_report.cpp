#include "reports/ways_report.h"

#include "reports/json_numbers.h"
#include "reports/text_table.h"
#include "units/printing.h"
#include "units/wording.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;
using Side = TextTable::Side;

std::string line(const std::string& text) { return wrapped(text, "  ", "  "); }

std::string difference_text(const WayFinding& way, const WaysFinding& all) {
  if (way.is_used) return "used";
  const double per_cent = 100 * difference(way, all);
  return (per_cent < 0 ? "-" : "+") + fixed(std::abs(per_cent), 1) + " %";
}

Json ml_or_null(const std::optional<Volume>& volume) {
  return volume ? Json(to_decimals(*volume / millilitre, 3)) : Json(nullptr);
}

}  // namespace

double difference(const WayFinding& way, const WaysFinding& all) {
  const auto used = std::find_if(all.ways.begin(), all.ways.end(),
                                 [](const WayFinding& one) { return one.is_used; });
  if (used == all.ways.end()) return 0;
  if (way.at_line && used->at_line) return *way.at_line / *used->at_line - 1;
  return way.brimful / used->brimful - 1;
}

std::string ways_text(const WaysFinding& finding) {
  const std::string at =
      finding.below_brim ? trimmed(*finding.below_brim / millimetre, 1) + " mm below" : "";
  TextTable table({Side::left, Side::right, Side::right, Side::right, Side::right});
  table.row({"by", "to the brim", at, "between", "against it"});
  table.rule();
  for (const WayFinding& way : finding.ways)
    table.row({way.by, fixed_ml(way.brimful), way.at_line ? fixed_ml(*way.at_line) : "",
               way.low ? fixed(*way.low / millilitre, 1) + " to " + fixed_ml(*way.high) : "",
               difference_text(way, finding)});
  std::string text = "\nONE CAVITY, BY EACH WAY\n" + table.text();
  text += line(finding.used_because);
  if (finding.below_brim)
    text += line("The pour line is " + finding.line_of + "; the range is of the volume to it.");
  for (const WayFinding& way : finding.ways)
    if (!way.rests_on.empty()) text += line(way.by + ": " + way.rests_on + ".");
  for (const std::string& remark : finding.remarks) text += line(remark);
  return text;
}

Json ways_json(const WaysFinding& finding) {
  Json ways = Json::array();
  for (const WayFinding& way : finding.ways)
    ways.push_back({{"by", way.by},
                    {"brimful_ml", to_decimals(way.brimful / millilitre, 3)},
                    {"at_line_ml", ml_or_null(way.at_line)},
                    {"low_ml", ml_or_null(way.low)},
                    {"high_ml", ml_or_null(way.high)},
                    {"rests_on", way.rests_on},
                    {"differs_percent", to_decimals(100 * difference(way, finding), 2)},
                    {"used", way.is_used}});
  return {
      {"below_brim_mm",
       finding.below_brim ? Json(to_decimals(*finding.below_brim / millimetre, 3)) : Json(nullptr)},
      {"line_of", finding.line_of},
      {"used_because", finding.used_because},
      {"ways", ways},
      {"remarks", finding.remarks}};
}

}  // namespace brimwright::reports
