#pragma once

#include "units/share.h"

#include <optional>
#include <string>
#include <string_view>

namespace brimwright::chemistry {

// What names say of acids, in five languages (data/acid_names.json).

/// What something of that name usually holds: from the low end of what is sold, so that taking it
/// over unread leaves more fat and never lye.
struct AcidHint {
  std::string acid;  // as in data/neutralisation.json
  Share share;
  bool is_chemical;                // the acid itself: no scent, colour or fat
  bool confirmed;                  // stronger than such a thing is: needs "confirmed": true
  std::string note;                // may be empty
  std::optional<Share> by_figure;  // the strength that the name states, where it is one
};
std::optional<AcidHint> acid_hint(std::string_view name);

/// The most pure acid that a juice, vinegar, wine or sour milk has.
struct AcidBound {
  std::string kind;  // "juice"
  Share most;
  double most_koh_mg_per_g;  // of the strongest acid it may be of
};
/// The widest bound of those that `name` tells; nothing for anything else.
std::optional<AcidBound> acid_bound(std::string_view name);

/// "citric acid", "vinegar", "lemon juice", "Natron": may use up alkali. Salts ("sodium lactate"),
/// amino acids and dyes do not sound so.
bool names_an_acid(std::string_view name);

/// "sodium lactate", "Trinatriumcitrat": its acid has taken its alkali already. Not where an acid
/// is named beside it.
bool names_a_neutral_salt(std::string_view name);

bool says_concentrated(std::string_view name);  // "vinegar essence", not "from concentrate"
bool says_dry(std::string_view name);           // "vinegar powder", "crystals"
bool says_scent(std::string_view name);         // "baking soda fragrance"

}  // namespace brimwright::chemistry
