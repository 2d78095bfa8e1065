#pragma once

#include "chemistry/saponified.h"
#include "units/quantity.h"

#include <string>
#include <vector>

namespace brimwright::chemistry {

/// The two ways of listing a soap's ingredients: what was put in (oils, Sodium Hydroxide, Aqua), or
/// what it became (Sodium Olivate, Glycerin, Aqua).
enum class InciConvention { as_charged, as_saponified };

/// An ingredient by its INCI name; or by the maker's own where no INCI name was given.
struct InciAmount {
  std::string name;
  Mass mass;
  bool is_inci = true;
  bool is_colour = false;
  std::string key = {};  // `inci_key` of an INCI name, filled in by `put`
};

/// Adds `more` to the ingredient of that name, however it is written, or to the end of `list`: the
/// one place where a label's ingredients are merged. An INCI name becomes the usual one.
void put(std::vector<InciAmount>& list, const InciAmount& more);

/// What `mass` of something with that label data holds; without a composition a fragrance is
/// Parfum, and anything else keeps the maker's name for it.
void put_bought(std::vector<InciAmount>& list, const LabelData& label, const std::string& name,
                AdditiveKind kind, Mass mass);

/// Ingredients of a batter before any water has dried out, in the formula's order, each name once;
/// the masses sum to the charge. As saponified: the fat that stays unsaponified counts with its
/// soap, as nobody knows which fat it is; what is impure in the alkali and the water in liquids
/// count as Aqua. As charged: the alkali as weighed; fats and acids in additives under their own
/// names; a liquid whole under its INCI name, or, without one, by what is in it.
std::vector<InciAmount> inci_amounts(const Formula& formula, const Charge& charge,
                                     InciConvention convention);

}  // namespace brimwright::chemistry
