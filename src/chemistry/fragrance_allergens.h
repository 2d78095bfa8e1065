#pragma once

#include "units/share.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace brimwright::chemistry {

/// An entry of the EU's list of fragrance allergens.
struct ListedAllergen {
  std::string name;           // as a label names it; of a group, for all of it together
  int entry = 0;              // its number in Annex III of Regulation (EC) 1223/2009
  bool is_new = false;        // to be named since (EU) 2023/1545 alone
  bool is_extract = false;    // an oil or extract, named itself whatever is in it
  std::optional<Share> most;  // that the entry allows in a finished rinse-off product
};

/// One that no cosmetic may hold.
struct ProhibitedFragrance {
  std::string name, since;  // "1 March 2022"
};

/// Data/fragrance_allergens.json; its sources, and what of it was read, stand there.
struct FragranceAllergens {
  std::vector<ListedAllergen> entries;
  Share named_above_rinsed_off, named_above_left_on;  // of the finished product
  // The new names: a product without them may be placed on the market until the first day and made
  // available until the second. "31 July 2026"
  std::string placed_until, available_until;
};
const FragranceAllergens& fragrance_allergens();

/// The entry that covers a substance or an oil of that name, however it is written (`inci_key`):
/// "alpha-Pinene" is Pinene's, "LAVANDULA ANGUSTIFOLIA OIL" that of Lavandula Oil/Extract. Or
/// nullptr.
const ListedAllergen* listed_allergen(std::string_view name);
/// What is prohibited and goes by that name; or nullptr.
const ProhibitedFragrance* prohibited_fragrance(std::string_view name);

/// A real substance of fragrance that is known not to be on the list.
bool is_other_fragrance(std::string_view name);

/// The name on the list that `name`, which is not on it, is likely a slip for: one letter off or
/// two swapped, twice in seven letters or more. Nothing for substances that are known to be real
/// and others.
std::optional<std::string> meant_allergen(std::string_view name);

/// The listed oil or extract that something called `name` is, by what makers call it: "lavender
/// essential oil", "Lavandin". Nothing for a fragrance oil or a blend, whose name is only its
/// smell.
const ListedAllergen* listed_extract_called(std::string_view name);

}  // namespace brimwright::chemistry
