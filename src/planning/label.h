#pragma once

#include "planning/lightest_piece.h"
#include "planning/net_quantity.h"
#include "units/quantity.h"
#include "units/remark.h"
#include "units/share.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::planning {

/// One ingredient of a whole piece, base, topping, decoration and dust merged.
struct ListedIngredient {
  std::string name;  // INCI, in the market's words for water and fragrance; or the maker's own
  Mass mass;         // in one piece
  Share share;       // of the piece
  bool is_inci = true;
  bool is_colour = false;
  bool is_allergen = false;  // named for itself; its mass is within the fragrance's
};

/// A fragrance allergen in the finished piece, from the suppliers' documents, and where it is an
/// ingredient by its INCI name.
struct AllergenAmount {
  std::string name;  // of the EU's list where it is on it
  Mass mass;
  Share share;  // of the finished piece
  bool is_to_be_named = false;
  bool is_unknown = false;     // neither on the list nor known not to be: named to be safe
  bool is_ingredient = false;  // stands in the list of ingredients anyhow
  std::vector<std::string> documents;
};

struct IngredientList {
  std::vector<ListedIngredient> ingredients;
  Mass total;        // of the piece, allergens not counted twice
  std::string text;  // "Sodium Olivate, Aqua, ..."
};

/// What a label may say: a draft for a licensed assessor and for the law where it is sold.
struct LabelDraft {
  Market market = Market::EU;
  std::optional<LightestPiece> lightest;  // where a cured weight or weighed pieces are known
  std::optional<NetQuantity> net;         // rounded down from it
  std::optional<PacksHeld> held;          // the pieces weighed, against what is stated
  IngredientList as_saponified, as_charged;
  std::vector<AllergenAmount> allergens;
  std::vector<Remark> remarks;
};

}  // namespace brimwright::planning
