#include "reports/gauge_report.h"
#include "reports/packing_report.h"
#include "reports/text_table.h"
#include "units/bounded_text.h"
#include "units/printing.h"
#include "units/wording.h"

namespace brimwright::reports {
namespace {

std::string line(const std::string& text) { return wrapped(text, "  ", "  "); }
std::string mm(double value) { return fixed(value, 1); }

std::string places_table(const geometry::Packing& packing) {
  using Side = TextTable::Side;
  TextTable table({Side::right, Side::right, Side::right, Side::right});
  table.row({"embed", "x, mm", "y, mm", "height of its middle, mm"});
  for (std::size_t i = 0; i < packing.places.size(); ++i) {
    const auto& at = packing.places[i].move_mm;
    table.row({std::to_string(i + 1), mm(at[0]), mm(at[1]), mm(at[2])});
  }
  return table.text();
}

}  // namespace

std::string name_of(geometry::Lying lying) {
  return lying == geometry::Lying::level     ? "level"
         : lying == geometry::Lying::layered ? "layered"
                                             : "free";
}

std::string packing_text(const PackingFinding& finding) {
  const auto& packing = finding.packing;
  std::string text = "\nEMBEDS  " + finding.embed + "\n";
  const std::string asked = " in a fill " + depth_text(finding.line) + " deep, with " +
                            depth_text(finding.cover) + " cover, lying " + name_of(finding.lying);
  if (packing.places.empty()) {
    text += line("None fits" + asked + ".");
    if (finding.would_fit)
      text += line("One scaled to " + at_most(100 * *finding.would_fit, 0) + " % would fit.");
    return text;
  }
  text += line(std::to_string(packing.places.size()) + " fit" +
               (packing.places.size() == 1 ? "s" : "") + asked + ", as far as the search finds. " +
               (packing.places.size() == 1 ? "It displaces " : "They displace ") +
               fixed_ml(finding.displaced) + ".");
  text += line("Least cover found " + at_most(packing.least_cover / millimetre, 2) + " mm" +
               (packing.places.size() > 1 ? ", least gap between them " +
                                                at_most(packing.least_apart / millimetre, 2) + " mm"
                                          : "") +
               ".");
  return text + places_table(packing);
}

}  // namespace brimwright::reports
