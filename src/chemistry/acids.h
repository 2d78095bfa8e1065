#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace brimwright::chemistry {

/// An acid that uses up alkali without being a fat (data/neutralisation.json).
struct Acid {
  std::string name;    // "citric acid, anhydrous"
  double koh_g_per_g;  // KOH that one gram of it uses up
};

/// The shipped acids in the file's order, less the fatty acids: those belong among the fats.
const std::vector<Acid>& shipped_acids();
/// The acid of that name, or nullptr.
const Acid* find_acid(std::string_view name);

}  // namespace brimwright::chemistry
