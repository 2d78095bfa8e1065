#include "reports/buying_report.h"
#include "units/printing.h"
#include "units/wording.h"

#include <algorithm>

namespace brimwright::reports {

std::string pack_size(const trade::Amount& amount) {
  if (amount.is_pieces()) return counted(amount.whole(), "piece");
  const Mass mass = amount.mass();
  return mass < kilogram ? trimmed(mass / gram, 2) + " g" : trimmed(mass / kilogram, 3) + " kg";
}

std::string shown_as(const Buying& buying, const std::string& material) {
  const auto known =
      std::find_if(buying.materials.begin(), buying.materials.end(),
                   [&](const Buying::Material& one) { return one.name == material; });
  return known == buying.materials.end() ? material : known->shown;
}

}  // namespace brimwright::reports
