#pragma once

#include "units/quantity.h"
#include "units/written_number.h"

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace brimwright {

/// A unit with all that people call it; the first name is the one that refusals list.
template <class Unit>
struct UnitNames {
  std::vector<std::string_view> names;
  Unit unit;
};

/// What one kind of quantity accepts, and how to word a refusal.
template <class Unit>
struct Kind {
  std::string_view noun;     // "a length"
  std::string_view example;  // "5 mm"
  std::vector<UnitNames<Unit>> units;
  Unit most;
};

/// A unit's name as it is looked up: small letters, no full stops of short forms ("fl. oz."), one
/// blank where there are several.
std::string unit_key(std::string_view name);

template <class Unit>
const Unit* find_unit(const Kind<Unit>& kind, std::string_view name) {
  const std::string key = unit_key(name);
  for (const auto& candidate : kind.units)
    if (std::find(candidate.names.begin(), candidate.names.end(), key) != candidate.names.end())
      return &candidate.unit;
  return nullptr;
}

template <class Unit>
std::string unit_names(const Kind<Unit>& kind) {
  std::string names;
  for (const auto& unit : kind.units)
    names += (names.empty() ? "" : ", ") + std::string(unit.names.front());
  return names;
}

const Kind<Length>& lengths();
const Kind<Volume>& volumes();
const Kind<Mass>& masses();
const Kind<Area>& areas();
const Kind<AreaDensity>& area_densities();
bool is_per_cent(std::string_view unit_key);

/// What stands up to the next number that follows a blank, or to the end.
std::string_view take_unit(Text& text);

/// The number in front of a unit that is one of a few words, and the word.
struct NumberAndWord {
  double number;
  std::string word;
};
NumberAndWord number_and_word(std::string_view given, const Place& where,
                              const std::string& example);

/// What stands on either side of "/" or "per": "g" and "ml" of "g/ml", "tsp" and "lb" of "tsp per
/// lb". Nothing without such a word.
struct Quotient {
  std::string over, under;
};
std::optional<Quotient> quotient_in(std::string_view unit);

/// "1 g 1 g" is a slip of the hand, and so is "4 oz 1 lb".
[[noreturn]] void refuse_order(std::string_view given, const Place& where,
                               const std::string& example);

}  // namespace brimwright
