#pragma once

#include "chemistry/formula.h"
#include "units/fields.h"

#include <string>
#include <string_view>

namespace brimwright::chemistry {

/// Reads what the entry says under "acid" of the acid in `additive`, whose name, kind, fat and
/// liquid are read already: { "acid", "share" }, { "takes_up": "560 mg KOH/g" } or "none".
///
/// UserError where a name sounds like an acid's and nothing is said, with what such a thing usually
/// holds; where more is said than a thing of that name holds (a juice, vinegar, wine or sour milk
/// by acid_bound, anything by the pure acid of its name, by a strength in its name, by 1,250 mg
/// KOH/g). A juice or the like may hold more only if its name says essence or concentrate and
/// "confirmed": true stands with it.
///
/// What is neither acid nor fat in an additive counts as water, unless its name says powder or the
/// like; of a typed figure nothing does but in a juice, vinegar, wine or sour milk. In a liquid a
/// solution counts by its pure acid, as the liquid's own water is said apart.
void read_acid_into(Additive& additive, const Fields& entry);

/// What to write under "acid" for a thing of that name: "say which, as in { ... }, or "none"".
std::string acid_hint_in_words(std::string_view name);

}  // namespace brimwright::chemistry
