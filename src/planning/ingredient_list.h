#pragma once

#include "chemistry/inci.h"
#include "planning/net_quantity.h"
#include "planning/run.h"
#include "planning/tally.h"

#include <string>
#include <vector>

namespace brimwright::planning {

/// Allergens of the finished piece in descending mass: summed over its parts, on the cured mass
/// where each formula's cure is known, else on the fresh. Soap is rinsed off: those above that
/// share of it are named (data/fragrance_allergens.json). In the EU the oils and extracts that are
/// named themselves are among them, by their entry's name.
std::vector<AllergenAmount> allergens_of(const Run& run, const Plan& plan, Market market);

/// A fragrance that by its name is a listed oil or extract, and goes as Parfum without naming it.
struct UnnamedExtract {
  std::string fragrance, name;  // "lavender essential oil", "Lavandula Oil/Extract"
};
/// Those above the share of the finished piece from which the extract is to be named.
std::vector<UnnamedExtract> unnamed_extracts(const Run& run, const Plan& plan);

/// Ingredients of the whole piece in descending mass, each name once, colours last. As charged: as
/// put together, by what went in. As saponified: of the cured piece, water dried out taken off,
/// where each formula's cure is known; else of the fresh one. Allergens to be named stand at their
/// mass. In the EU what an entry of the list of allergens covers stands under that entry's name.
///
/// Decorations and dusts come in by the composition the run gives for them, or under the maker's
/// own name.
IngredientList ingredient_list(const Run& run, const Plan& plan,
                               chemistry::InciConvention convention, Market market);

}  // namespace brimwright::planning
