#pragma once

#include <string_view>

namespace brimwright::chemistry {

// What an additive's name gives away. A name proves nothing, so a suspicion only leads to a
// question that the formula must answer. Acids and alkalis: acid_names.h, alkali_names.h.

/// "stearic acid", "Stearinsäure": saponified like a fat, so it belongs among the fats.
bool names_a_fatty_acid(std::string_view name);
/// "goat milk", "shea butter", "egg yolk": may hold fat that counts.
bool names_something_fatty(std::string_view name);

}  // namespace brimwright::chemistry
