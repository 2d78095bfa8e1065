#include "chemistry/liquid_water.h"

#include "units/share_of.h"

#include <cassert>

namespace brimwright::chemistry {
namespace {

template <class Counts>
Mass water_in(const Formula& formula, const std::vector<Mass>& additives, Counts counts) {
  assert(additives.size() == formula.additives.size());
  Mass water;
  for (std::size_t i = 0; i < additives.size(); ++i) {
    const Additive& additive = formula.additives[i];
    if (additive.liquid && counts(additive)) water += additive.liquid->water * additives[i];
  }
  return water;
}

template <class Counts>
Mass acids_water(const Formula& formula, const std::vector<Mass>& additives, Counts counts) {
  assert(additives.size() == formula.additives.size());
  Mass water;
  for (std::size_t i = 0; i < additives.size(); ++i) {
    const Additive& additive = formula.additives[i];
    if (additive.contains_acid && !additive.liquid && counts(additive))
      water += additive.contains_acid->water() * additives[i];
  }
  return water;
}

bool goes_into_lye(const Additive& additive) { return additive.goes_into == GoesInto::lye; }

}  // namespace

Mass water_in_liquids(const Formula& formula, const std::vector<Mass>& additives) {
  return water_in(formula, additives, [](const Additive&) { return true; });
}

Mass water_in_lye_liquids(const Formula& formula, const std::vector<Mass>& additives) {
  return water_in(formula, additives, goes_into_lye);
}

Mass water_in_acids(const Formula& formula, const std::vector<Mass>& additives) {
  return acids_water(formula, additives, [](const Additive&) { return true; });
}

Mass water_in_lye_acids(const Formula& formula, const std::vector<Mass>& additives) {
  return acids_water(formula, additives, goes_into_lye);
}

}  // namespace brimwright::chemistry
