#pragma once

#include "planning/ingredient_list.h"
#include "planning/lightest_piece.h"
#include "planning/net_quantity.h"
#include "units/remark.h"

#include <optional>
#include <vector>

namespace brimwright::planning {

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

/// Drafts the label that `run` asks for. UserError at /label when its spread says nothing or too
/// much, or when the piece is too light or heavy for a statement. Expects run.label.
LabelDraft label_draft(const Run& run, const Plan& plan);

}  // namespace brimwright::planning
