#include "reports/inspection_report.h"

#include "reports/json_document.h"
#include "reports/json_numbers.h"
#include "units/printing.h"
#include "units/wording.h"

#include <nlohmann/json.hpp>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;
using geometry::Defect;
using geometry::Inspection;

/// So that a place is told to a thousandth of a millimetre, in whatever unit.
Json place_json(const geometry::Point& at_mm, const geometry::FileFrame& frame) {
  Json place = Json::array();
  for (const double number : geometry::place_in_file(at_mm, frame))
    place.push_back(to_decimals(number, frame.in_mm <= 1 ? 3 : 6));
  return place;
}

std::string place_of(const Defect& defect, const geometry::FileFrame& frame) {
  return (defect.count == 1 ? ", " : ", the first ") + geometry::place_text(defect.first_mm, frame);
}

std::string state_text(const Inspection& found) {
  if (!found.closed) return "not closed";
  return found.facing_consistently ? "closed" : "closed, but not facing one way";
}

std::string rim_text(const InspectionFinding& finding) {
  const Inspection& found = finding.inspection;
  if (!found.widest_rim) return "";
  return counted(found.rims, "rim") + " of open edges, the widest " +
         trimmed(found.widest_rim->width_mm(), 1) + " mm across, its middle " +
         geometry::place_text(found.widest_rim->middle_mm, finding.frame) + "\n";
}

}  // namespace

std::string inspection_text(const InspectionFinding& finding) {
  const Inspection& found = finding.inspection;
  std::string text = finding.file + ": " + counted(found.facets, "facet") + " in " +
                     counted(found.shells, "shell") + ", " + state_text(found) + "\n";
  text += rim_text(finding);
  if (found.defects.empty()) return text + "No defects.\n";
  for (const Defect& defect : found.defects)
    text += "- " + defect.what + place_of(defect, finding.frame) + "\n";
  return text;
}

std::string inspection_json(const InspectionFinding& finding) {
  const Inspection& found = finding.inspection;
  Json defects = Json::array();
  for (const Defect& defect : found.defects)
    defects.push_back({{"kind", name_of(defect.kind)},
                       {"count", defect.count},
                       {"first_at", place_json(defect.first_mm, finding.frame)},
                       {"text", defect.what + place_of(defect, finding.frame)}});
  Json json = {{"schema", "brimwright.inspection/1"},
               {"source", finding.file},
               {"unit", finding.frame.unit},
               {"facets", found.facets},
               {"shells", found.shells},
               {"closed", found.closed},
               {"facing_consistently", found.facing_consistently},
               {"open_edges", found.open_edges},
               {"rims", found.rims}};
  if (found.widest_rim)
    json["widest_rim"] = {{"width_mm", to_decimals(found.widest_rim->width_mm(), 3)},
                          {"middle", place_json(found.widest_rim->middle_mm, finding.frame)}};
  json["defects"] = defects;
  return json_document(json);
}

}  // namespace brimwright::reports
