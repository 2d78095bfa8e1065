#pragma once

#include "chemistry/alkali.h"
#include "units/quantity.h"
#include "units/share.h"

#include <string>
#include <vector>

namespace brimwright::chemistry {

// Everything that takes part in the saponification, as weighed: the oil that disperses colours and
// the fat in milk too. `step` is the scale's resolution, `weighings` how often it is put on the
// scale.
struct WeighedFat {
  std::string name;
  SaponificationRange saponification;
  Mass mass, step;
  double weighings = 1;
  bool is_slow_wax = false;  // no supplier's value tells how much of it reacts in the pot
};
struct WeighedAlkali {
  Alkali alkali;
  Share purity, purity_low, purity_high;
  Mass mass, step;
  double weighings = 1;
  bool is_solution = false;  // of that strength
};
struct WeighedAcid {
  std::string name;
  double koh_g_per_g;  // of what is weighed
  Mass mass, step;
  double weighings = 1;
};

/// Fats that are weighed together, as a blend: how far off that weighing may be moves all of them.
struct WeighedBlend {
  std::string name;
  std::vector<double> parts;  // of a gram of it, for each of the weighed fats
  Mass mass, step;
  double weighings = 1;
};

/// A batter's alkali that is not weighed by itself but as a share of a lye: how far all of it may
/// be off at once, either way, as a share of it.
struct LyeUncertainty {
  std::string cause;  // "the scale's step of 1 g for its share of the lye"
  Share of_alkali;
};

/// One thing that puts the superfat in doubt.
struct SuperfatUncertainty {
  std::string cause;   // "the scale's step of 1 g for NaOH"
  std::string remedy;  // "ask the supplier for this lot's value, or aim higher" and the like
  bool of_a_scale = false;
  Share of_variance;  // its part of the superfat's variance
};

/// Superfat as it comes out, by lye reduction: 1 - (alkali left after the acids) / (alkali the fats
/// could take), in KOH equivalents.
struct EffectiveSuperfat {
  Share nominal;  // typical saponification values, stated purity, masses as shown
  /// Worst case: every value at the end of its range, every weighing half a step off.
  Share low, high;
  /// Where 19 batches in 20 come out. Every range is taken as equally likely from end to end
  /// (rectangular, JCGM 100:2008, 4.3.7), every weighing as off by up to half a step (the same,
  /// F.2.2.1; the error of a scale that is out of true is not in it), all independent. Their
  /// standard uncertainties act through half the difference that each makes to the superfat when it
  /// alone moves by plus and minus that much (5.1.3, note 2: the partial derivatives, numerically);
  /// combined by the root of the sum of squares (5.1.2), times 1.96 for 95 % of a normal
  /// distribution. Centred where every value is in the middle of its range, widened where that
  /// leaves out `nominal`, and cut off at `low` and `high`: a single wide range alone is
  /// rectangular, for which 1.96 is more than there is.
  Share likely_low, likely_high;
  /// The half-widths, uncut, that the scales alone and the ranges alone would give.
  Share likely_by_scales, likely_by_ranges;
  /// What alone pulls `low` down most, in words: "the range of the saponification value of
  /// Shea butter (160 to 195 mg/g)", "the scale's step of 1 g for NaOH", "the purity of KOH (88 to
  /// 92 %)". Empty, like the remedy, if nothing is in doubt.
  std::string dominant_cause;
  std::string remedy;
  Share dominant_of_variance;  // that cause's part of the variance behind the likely band
  std::vector<SuperfatUncertainty>
      uncertainties;  // those with a part in the variance, largest first
};
/// At least one fat with a mass above zero; `low` <= `likely_low` <= `nominal` <= `likely_high` <=
/// `high`, a finer step never widens either interval, and a larger batch never widens
/// `likely_by_scales`.
EffectiveSuperfat effective_superfat(const std::vector<WeighedFat>& fats,
                                     const std::vector<WeighedAlkali>& alkalis,
                                     const std::vector<WeighedAcid>& acids,
                                     const std::vector<WeighedBlend>& blends = {},
                                     const std::vector<LyeUncertainty>& lye = {});

/// "-0.1 %": never above `superfat`, so that -0.04 % does not read as none. For the end of a range
/// that decides whether a batter may be lye-heavy.
std::string lowest_in_words(Share superfat);
/// "9.3 %": never below it.
std::string highest_in_words(Share superfat);

/// What the likely band means, in a sentence for the maker.
std::string likely_means();

}  // namespace brimwright::chemistry
