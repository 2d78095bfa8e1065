#pragma once

#include "chemistry/formula.h"
#include "chemistry/superfat.h"
#include "units/quantity.h"
#include "units/working.h"

#include <string>
#include <vector>

namespace brimwright::chemistry {

// How a batter's lye comes about, from the masses that were weighed. Each tells its figure before
// it is rounded to a scale; where it stands, and how it is rounded, is for the caller to say.

/// Everything that reacts in a batter, as weighed.
struct Reactants {
  const std::vector<WeighedFat>& fats;
  const std::vector<WeighedAlkali>& alkalis;
  const std::vector<WeighedAcid>& acids;
};

/// The `which`th alkali of `formula`, as alkalis_for has it.
Working alkali_working(const Formula& formula, std::size_t which, const Reactants& weighed);

/// Plain water, as water_for has it, less what liquids bring.
Working water_working(const Formula& formula, const Reactants& weighed, Mass all_fats,
                      Mass in_liquids);

/// As effective_superfat has it.
Working superfat_working(const Formula& formula, const Reactants& weighed,
                         const EffectiveSuperfat& superfat);

/// Where the saponification values reckoned with are from, fat by fat.
std::vector<std::string> value_sources(const Formula& formula);

/// The lye strength, and water said as a share of the fats: the last parts of a place's name are
/// "lye_strength_percent", "water_to_pure_alkali" and "water_percent_of_fats".
std::vector<Working> strength_workings(const Reactants& weighed, Mass all_water, Mass all_fats);

}  // namespace brimwright::chemistry
