#pragma once

#include "chemistry/alkali.h"
#include "units/quantity.h"
#include "units/temperature.h"

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace brimwright::chemistry {

/// A fat's published density at one temperature.
struct FatDensity {
  Density low, high;
  Temperature at;
  std::string source;
  bool read = false;  // the figure was read in its source, not remembered
};

/// A fat, oil, butter, liquid wax or fatty acid with its published characteristics.
struct Fat {
  std::string id;    // "sweet_almond": how formulas and prices name it
  std::string name;  // "Sweet almond oil"
  std::string kind;  // "triglyceride", "wax_ester", "free_fatty_acid"
  std::string inci, inci_sodium_soap;
  SaponificationRange saponification;  // typical: the middle of the published range
  std::string saponification_source;   // document, table, edition in words
  /// False: remembered, not read in the source; said wherever the value is shown.
  bool saponification_read = false;
  std::optional<std::pair<double, double>> iodine_value;  // g I2 / 100 g
  std::optional<FatDensity> density;
  std::optional<std::pair<double, double>> melting_range_c;
  /// Melts below 20 degC, or is called an oil and has no melting range.
  bool liquid_at_room_temperature() const;
  std::string note;
};

/// The shipped table (src/chemistry/data/fats.json), in its order.
const std::vector<Fat>& shipped_fats();
/// The fat of that id, or nullptr.
const Fat* find_fat(std::string_view id);
/// All ids, for hints.
std::vector<std::string> fat_ids();

/// Density of a fat at a temperature: the middle of its published range, moved along the published
/// slope (data/densities.json). Without a published density: Lund's relation from the
/// saponification and iodine values, with `estimated` set.
struct DensityAt {
  Density density;
  bool estimated = false;
};
DensityAt density_of(const Fat& fat, Temperature at);

}  // namespace brimwright::chemistry
