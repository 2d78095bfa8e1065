#pragma once

#include "units/user_error.h"

#include <optional>
#include <string>
#include <string_view>

namespace brimwright::chemistry {

/// What a name says that a thing is, if that is an alkali (data/alkali_names.json).
struct AlkaliName {
  std::string is;             // "sodium hydroxide"
  bool belongs_under_alkali;  // NaOH and KOH: under the formula's "alkali"; all others nowhere
};

/// The alkali in `name`, found by whole words in five languages: "NaOH 50 %", "Ätz-Natron", "soude
/// caustique". Nothing for what only sounds so ("sodium lactate", "potash alum") or is said not to
/// be there ("lye-free").
std::optional<AlkaliName> names_an_alkali(std::string_view name);

/// UserError at `where` if `name` names an alkali: anywhere but under "alkali" it would go into the
/// batter uncounted.
void refuse_alkali(std::string_view name, const Place& where);

}  // namespace brimwright::chemistry
