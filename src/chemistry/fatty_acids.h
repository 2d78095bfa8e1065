#pragma once

#include "chemistry/alkali.h"
#include "units/share.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace brimwright::chemistry {

/// A fatty acid by its chain: oleic acid, C18:1, has 18 carbons and one double bond.
struct FattyAcid {
  std::string name;  // "C18:1", "gamma-C18:3", "ricinoleic": as its table prints it
  int carbons = 0;
  int double_bonds = 0;
  int hydroxyls = 0;  // on the chain, beside the acid group: one in ricinoleic acid
};

/// The acid of that name: a chain from C4 to C30 ("C18:1", also "18:1" and "gamma-C18:3"), or one
/// of the common names ("oleic"). Nothing for anything else.
std::optional<FattyAcid> fatty_acid_called(std::string_view name);
/// The common name of a chain ("oleic" for C18:1), or an empty text.
std::string common_name(const FattyAcid& acid);
/// C(n) H(2n - 2d) O(2 + hydroxyls), from the shipped atomic weights.
double molar_mass_g_per_mol(const FattyAcid& acid);

/// How much of one acid a fat's acids may hold, by mass of all its fatty acids.
struct FattyAcidRange {
  FattyAcid acid;
  Share low, high;
  bool read = false;  // in the source, not remembered
};

/// The acids that a fat is made of. The lows add to at most a whole.
struct FattyAcidProfile {
  std::vector<FattyAcidRange> acids;
  std::string source;  // document, table, edition in words
  bool read() const;   // every one of them
};

/// What the acids are bound to.
enum class BoundAs { triglyceride, free_acid };

/// The saponification values that a profile allows, from molar masses alone: `typical` is that of
/// the profile's middle scaled to a whole, `low` and `high` those of the heaviest and the lightest
/// acids that its ranges let add to a whole.
///
/// The mean molar mass M of acids with mass shares w is 1 / sum(w / M). Free acids take one KOH
/// each, 1000 M(KOH) / M. A triglyceride weighs 3 M + M(glycerol) - 3 M(water) and takes three. The
/// extremes are exact: sum(w / M) is linear in w, and filling up from the lightest (or heaviest)
/// acid on is the best that ranges and sum allow. Where the highs add to less than a whole, what
/// is not listed counts as the mean of what is.
///
/// Shares that a gas chromatograph gives are of the methyl esters; taking them for shares of the
/// acids makes the value up to 0.2 % too high, most in coconut. Mono- and diglycerides take less
/// alkali, free acids in a fat more (0.09 mg/g for each per cent).
SaponificationRange theoretical_saponification(const FattyAcidProfile& profile, BoundAs bound);

/// Of one pure wax ester, which takes one KOH: 1000 M(KOH) / M. Its alcohol stays unsaponified.
SaponificationValue wax_ester_saponification(double mean_molar_mass_g_per_mol);

}  // namespace brimwright::chemistry
