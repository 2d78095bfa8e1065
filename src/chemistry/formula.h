#pragma once

#include "chemistry/alkali.h"
#include "chemistry/drying.h"
#include "chemistry/fat.h"
#include "chemistry/label_data.h"
#include "chemistry/liquid.h"
#include "units/quantity.h"
#include "units/rate.h"
#include "units/share.h"
#include "units/spelling.h"
#include "units/temperature.h"
#include "units/user_error.h"

#include <chrono>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace brimwright::chemistry {

/// A fat of a formula. `saponification` is the supplier's analysis where the formula gives it;
/// where what is known of the fat contradicts that, its low and high reach over both.
struct FormulaFat {
  Fat fat;
  Share share;
  SaponificationRange saponification;
  bool from_supplier = false;
  std::string lot;  // the supplier's lot that the analysis belongs to; may be empty
  // Of a value that the formula gives: whether it is one without a range, whether the maker
  // confirmed it against what is known of the fat, and where it stands.
  bool taken_as_exact = false;
  bool confirmed = false;
  Place stated_at{};
};

/// A lye solution that stands ready on the shelf. What of it is no alkali is water.
struct LyeSolution {
  std::string name;     // what its maker calls it; prices and packs go by it
  Temperature kept_at;  // the coldest it stands
  std::optional<Share> dissolved_of =
      {};  // purity of the alkali she makes it of; none: it is bought
};

/// An alkali of a formula. `share` is the share of the saponifying that it does (by
/// equivalents, not by weight), so shares of NaOH and KOH have one meaning whatever their purities.
struct FormulaAlkali {
  Alkali alkali;
  Share share;
  Share purity;                   // pure alkali in what is weighed; of a solution its strength
  Share purity_low, purity_high;  // the supplier's range, or the solution's
  // Where none is given: NaOH is taken as exact, KOH gets the range of data/lye.json.
  bool taken_as_exact = false;
  bool range_assumed = false;
  std::optional<LyeSolution> solution = {};  // weighed in place of dry alkali
};

// The three ways the trade states water. All count pure alkali, and all are reported. "Fats" are
// those that the formula's shares are of, without extra dispersing oil and the fat inside
// additives.
struct LyeStrength {
  Share alkali_in_lye;
};
struct WaterToAlkali {
  double ratio;
};
struct WaterOfFats {
  Share share;
};
using WaterAmount = std::variant<LyeStrength, WaterToAlkali, WaterOfFats>;

enum class AdditiveKind { additive, fragrance, colour };
enum class GoesInto { lye, fats, batter };
std::string name_of(AdditiveKind kind);
std::string name_of(GoesInto where);  // "lye", "fats", "batter"

/// A share of an additive that is a fat (milk, coconut milk) or an acid (vinegar, citric acid).
struct ContainedFat {
  Fat fat;
  Share share;
};
struct ContainedAcid {
  std::string name;    // as in data/neutralisation.json; empty where only what it takes up is known
  Share share;         // of that acid, as named, in what is weighed; whole where it has no name
  double koh_g_per_g;  // KOH one gram of it uses up
  double pure_share = 1;    // of a hydrate or solution: the acid in it, the rest is water
  Share water_beside = {};  // of what is weighed: water that comes with the acid ("lactic 80 %")
  bool confirmed = false;   // more than such a thing is known to have, which the formula confirms

  /// All the water in what is weighed.
  Share water() const { return water_beside + (1 - pure_share) * share; }
};
/// Oil that a powder is stirred into before it joins the batter.
struct Dispersal {
  Fat oil;
  double oil_per_powder;  // g / g
  bool from_the_formula;  // set aside from the formula's own share of that fat; otherwise added to
                          // it
  std::string measured = {};  // how spoons came to that weight; empty where it was given itself
};

struct Additive {
  std::string name;
  AdditiveKind kind = AdditiveKind::additive;
  Rate rate;
  std::optional<Density> bulk_density;  // of the powder in the spoon; needed for spoon rates
  std::optional<Density> density;       // in the batter; taken as water's where absent, and said so
  GoesInto goes_into = GoesInto::batter;
  bool into_cooled_lye = false;  // of what goes into the lye: after the alkali, once it has cooled
  std::optional<ContainedFat> contains_fat;
  std::optional<ContainedAcid> contains_acid;
  bool denies_acid = false;  // says "none", though its name sounds like an acid's
  std::optional<Dispersal> dispersal;
  std::optional<Rate> limit;  // the most the supplier's document allows, on the mass it names
  std::optional<Share> limit_of_finished_soap;  // the same where it names the finished soap
  LabelData label;
  std::optional<Liquid> liquid;  // stands in for water: its own water counts as the formula's
};

/// Fats that stand ready, melted together: weighed as one in place of part of a formula's own.
struct FatBlend {
  std::string name;          // what its maker calls it; prices and packs go by it
  Share of_fats;             // of all fats of the formula, with which it is made up
  std::vector<Share> parts;  // of the blend: what of it is each of the formula's fats
};

/// The composition of a batter by share of its fats.
struct Formula {
  std::string file;
  Spelling spelling = {};  // of the file's keys
  std::string name;
  std::vector<FormulaFat> fats;        // shares sum to one
  std::optional<FatBlend> blend = {};  // weighed in place of what it holds of them
  Share superfat;                      // lye reduction, on everything that is fat
  std::vector<FormulaAlkali> alkalis;
  WaterAmount water;
  std::vector<Additive> additives;          // fragrance, colour and liquids too, in this order
  Temperature pour_temperature;             // at which volumes turn into masses
  std::optional<Density> measured_density;  // plain batter, unwhipped; replaces the computed one
  std::optional<Share> water_lost_in_cure;  // share of the batter's water gone when it is sold
  std::optional<std::chrono::minutes> cure;
  /// How long its soap stays in a mould, whatever the mould's file says; and within what time from
  /// the pour a loaf of it must be cut.
  std::optional<std::chrono::minutes> unmould_after, cut_within;
  std::optional<Drying> drying;  // the course of the cure; then `water_lost_in_cure` is absent
  std::string note;              // the maker's own words; may be empty
};

}  // namespace brimwright::chemistry
