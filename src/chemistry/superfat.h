#pragma once

#include "chemistry/alkali.h"
#include "units/quantity.h"
#include "units/share.h"

#include <string>
#include <vector>

namespace brimwright::chemistry {

// Everything that takes part in the saponification, as weighed. `step` is the scale's resolution.
struct WeighedFat {
  std::string name;
  SaponificationRange saponification;
  Mass mass, step;
};
struct WeighedAlkali {
  Alkali alkali;
  Share purity, purity_low, purity_high;
  Mass mass, step;
};
struct WeighedAcid {
  std::string name;
  double koh_g_per_g;  // of what is weighed
  Mass mass, step;
};

/// Superfat as it comes out, by lye reduction: 1 - (alkali left after the acids) / (alkali the fats
/// could take), in KOH equivalents.
struct EffectiveSuperfat {
  Share nominal;  // typical saponification values, stated purity, masses as shown
  /// Worst case: every value at the end of its range, every weighing half a step off.
  Share low, high;
  /// What alone pulls `low` down most, in words: "the natural range of the saponification value of
  /// Shea butter (160 to 195 mg/g)", "the scale's step of 1 g for NaOH", "the purity of KOH (88 to
  /// 92 %)". Empty, like the remedy, if nothing is in doubt.
  std::string dominant_cause;
  std::string remedy;  // "ask the supplier for this lot's value, or aim higher" and the like
};
/// At least one fat with a mass above zero; `low` <= `nominal` <= `high`, and a finer step never
/// widens them.
EffectiveSuperfat effective_superfat(const std::vector<WeighedFat>& fats,
                                     const std::vector<WeighedAlkali>& alkalis,
                                     const std::vector<WeighedAcid>& acids);

}  // namespace brimwright::chemistry
