#pragma once

#include "chemistry/alkali.h"
#include "chemistry/fatty_acids.h"
#include "units/quantity.h"
#include "units/temperature.h"
#include "units/user_error.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace brimwright::chemistry {

/// Where a figure is from.
struct Citation {
  std::string source;  // document, table, edition in words
  bool read = false;   // the figure was read in its source, not remembered
  std::string also;    // what other sources say; may be empty
};

/// What one document says of a fat's saponification value.
struct SaponificationReading {
  std::optional<double> low, high;  // mg KOH/g; one that states only a least or a most has but one
  Citation from;
};

/// How much denser a molten fat is for each kelvin that it is warmer: below zero.
struct DensitySlope {
  Density per_kelvin;
  Citation from;
};

/// A fat's published density at one temperature.
struct FatDensity {
  Density low, high;
  Temperature at;
  std::string source;
  bool read = false;                       // the figure was read in its source, not remembered
  std::optional<DensitySlope> slope = {};  // a fatty acid's own; fats share one
};

/// A wax that lye attacks so slowly in a pot that nobody knows how much of it becomes soap
/// (beeswax, lanolin): only its free acids are sure to react.
struct SlowToSaponify {
  SaponificationValue sure;      // by the free acids alone: the least acid value
  SaponificationValue titrated;  // the least saponification value that analysts find
  Citation acids_from;           // where the acid value is from
  std::string how;               // what is known of it, in words
  Citation how_from;
};

/// A fat, oil, butter, wax or fatty acid with its published characteristics.
struct Fat {
  std::string id;    // "sweet_almond": how formulas and prices name it
  std::string name;  // "Sweet almond oil"
  std::string kind;  // "triglyceride", "wax_ester", "free_fatty_acid"
  /// Names on a label: as charged, and as saponified by NaOH and by KOH.
  std::string inci, inci_sodium_soap, inci_potassium_soap;
  bool inci_read = false;
  std::string inci_sodium_soap_confidence, inci_potassium_soap_confidence;  // in words
  std::vector<std::string> also_called;  // "Linseed oil"; may be empty

  /// Of a shipped fat from the least to the most that was read or remembered of it and that its
  /// fatty acids ask for; of a slow wax down to what its free acids take. Of a maker's own what its
  /// supplier states; where what is known contradicts that, it reaches over both.
  SaponificationRange saponification;
  std::string typical_chosen;  // how the typical value was chosen, in words
  std::vector<SaponificationReading> saponification_readings;  // the document that governs first
  std::string saponification_source;                           // document, table, edition in words
  /// False: that document or an end of the range is remembered, not read in its source; said
  /// wherever the value is shown.
  bool saponification_read = false;
  std::string saponification_also;  // what other sources say; may be empty
  /// A range read elsewhere, where the one reckoned with was only remembered.
  std::optional<std::pair<double, double>> saponification_read_elsewhere;  // mg KOH/g
  Citation saponification_read_elsewhere_in;

  std::optional<std::pair<double, double>> iodine_value;  // g I2 / 100 g
  Citation iodine_value_from;
  std::optional<FatDensity> density;
  std::optional<std::pair<double, double>> melting_range_c;
  Citation melting_range_from;
  std::optional<Share> unsaponifiable_most;  // of the fat's mass
  Citation unsaponifiable_from;
  std::optional<FattyAcidProfile> fatty_acids;
  std::optional<double> mean_molar_mass_g_per_mol;  // of a wax ester
  Citation mean_molar_mass_from;
  /// Its `saponification` reaches down to what is sure, and on a label it stays what it is: its
  /// INCI name stands in place of a soap's.
  std::optional<SlowToSaponify> slow;
  /// What an analyst may find, by boiling for hours in alcohol: of all but slow waxes the range
  /// that is reckoned with.
  SaponificationRange titrated() const;
  /// Melts below 20 degC, or is called an oil and has no melting range.
  bool liquid_at_room_temperature() const;
  bool is_users_own = false;  // from the maker's own file of fats
  std::string lot;            // the supplier's, of a maker's own fat; may be empty
  // Of a maker's own fat: where its value stands, whether that is one value without a range, and
  // whether the maker confirmed it against what is known.
  Place saponification_at{};
  bool taken_as_exact = false;
  bool confirmed = false;
  std::string note;
};

}  // namespace brimwright::chemistry
