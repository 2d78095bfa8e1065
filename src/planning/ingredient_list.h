#pragma once

#include "chemistry/inci.h"
#include "planning/net_quantity.h"
#include "units/quantity.h"
#include "units/share.h"

#include <string>
#include <vector>

namespace brimwright::planning {

struct Plan;
struct Run;

/// One ingredient of a whole piece, base, topping, decoration and dust merged.
struct ListedIngredient {
  std::string name;  // INCI, in the market's words for water and fragrance; or the maker's own
  Mass mass;         // in one piece
  Share share;       // of the piece
  bool is_inci = true;
  bool is_colour = false;
  bool is_allergen = false;  // named for itself; its mass is within the fragrance's
};

/// A fragrance allergen in the finished piece, from the suppliers' documents.
struct AllergenAmount {
  std::string name;
  Mass mass;
  Share share;  // of the finished piece
  bool is_to_be_named = false;
  std::vector<std::string> documents;
};

// Above these shares of the finished product a fragrance allergen is named on the label:
// Regulation (EC) 1223/2009, Annex III, as amended by (EU) 2023/1545 (its recitals read).
inline constexpr Share allergen_named_above_rinsed_off = 0.01 * percent;
inline constexpr Share allergen_named_above_left_on = 0.001 * percent;

struct IngredientList {
  std::vector<ListedIngredient> ingredients;
  Mass total;        // of the piece, allergens not counted twice
  std::string text;  // "Sodium Olivate, Aqua, ..."
};

/// Allergens of the finished piece in descending mass: summed over its parts, on the cured mass
/// where each formula's cure is known, else on the fresh. Soap is rinsed off.
std::vector<AllergenAmount> allergens_of(const Run& run, const Plan& plan);

/// Ingredients of the whole piece in descending mass, colours last. As charged: as put together, by
/// what went in. As saponified: of the cured piece, water dried out taken off, where each formula's
/// cure is known; else of the fresh one. Allergens to be named stand at their mass.
///
/// Decorations and dusts come in by the composition the run gives for them, or under the maker's
/// own name.
IngredientList ingredient_list(const Run& run, const Plan& plan,
                               chemistry::InciConvention convention, Market market);

}  // namespace brimwright::planning
