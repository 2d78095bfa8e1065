#pragma once

#include "units/share.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace brimwright::chemistry {

/// An acid that uses up alkali without being a fat (data/neutralisation.json).
struct Acid {
  std::string name;         // "citric acid, anhydrous"
  double koh_g_per_g;       // KOH that one gram of it uses up
  double pure_share;        // of a hydrate or solution: the acid in it; the rest is water
  std::string solution_of;  // of a solution: the acid by which it is counted; otherwise empty
};

/// The most that anything takes up: pure oxalic acid, of all that are added, has 1,246 mg KOH/g by
/// molar masses.
inline constexpr double most_koh_mg_per_g = 1250;

/// The shipped acids in the file's order, less the fatty acids: those belong among the fats.
///
/// koh_g_per_g = protons that soap's pH takes x M(KOH) / M(acid), for a solution times its share.
const std::vector<Acid>& shipped_acids();
/// The acid of that name, or nullptr.
const Acid* find_acid(std::string_view name);

}  // namespace brimwright::chemistry
