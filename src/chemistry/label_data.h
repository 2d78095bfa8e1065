#pragma once

#include "units/fields.h"
#include "units/share.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::chemistry {

/// One ingredient by its INCI name (International Nomenclature of Cosmetic Ingredients) and its
/// share of what is weighed.
struct InciShare {
  std::string name;
  Share share;
};

/// A fragrance allergen and its share of what is weighed, by the supplier's document. One that is
/// on the EU's list goes by its entry's name, alpha- and beta-pinene together as Pinene.
struct Allergen {
  std::string name;
  Share share;
  bool is_other = false;  // known, or said by the maker, not to be on the list
};

/// What a label needs to know of something bought.
struct LabelData {
  /// Composition by INCI name, shares summing to one; empty: not given. Of an additive that names
  /// the fat and acid in it: of the rest.
  std::vector<InciShare> inci;
  std::vector<Allergen> allergens;
  std::string document;  // of the supplier, where the allergens are from

  bool says_composition() const { return !inci.empty(); }
};

/// Reads "inci" (one name, or a list of { "name", "share" }), "allergens" (a list of the same) and
/// "document" of `entry`; each may be absent. UserError when shares of "inci" do not sum to 100 %,
/// when allergens exceed it, when a name stands twice, when an allergen's name looks like a slip
/// for one on the EU's list (unless it says "listed": false), or when allergens have no document.
LabelData read_label_data(const Fields& entry);

/// The most of something that its supplier's document allows in the finished, cured soap:
/// "limit": "1.5 % of finished soap". Nothing when "limit" is absent or names fats or batter.
std::optional<Share> read_limit_of_finished_soap(const Fields& entry);

}  // namespace brimwright::chemistry
