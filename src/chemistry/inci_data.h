#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace brimwright::chemistry {

/// What two ways of writing one INCI name have in common: small letters, Greek ones by their names,
/// without blanks, hyphens and what stands in brackets. "Elaeis Guineensis (Palm) Oil" and "ELAEIS
/// GUINEENSIS OIL" are one, and so are "CI77891" and "CI 77891", "α-Pinene" and "alpha pinene".
std::string inci_key(std::string_view name);

/// An acid's names on a label, free and as the salts it becomes in lye (data/inci.json).
struct AcidNames {
  std::string acid;  // as in data/neutralisation.json
  std::string inci, sodium_salt, potassium_salt;
  double acid_share;  // of pure acid; the rest is water
};

struct InciData {
  std::string water, fragrance, glycerol, wax_alcohols, salt;
  std::string sodium_hydroxide, potassium_hydroxide;
  double glycerol_g_per_mol, water_g_per_mol;
  std::vector<AcidNames> acids;
  std::map<std::string, std::string> usual_by_key, english;

  /// `name` as the EU writes it where it is known by another: "Aqua" for "water" and "Aqua/Water".
  std::string usual(const std::string& name) const;
  /// `name`, which is the EU's, as the US writes it: "Water" for "Aqua".
  std::string in_english(const std::string& name) const;
  /// The acid of that name, which must be one of data/neutralisation.json.
  const AcidNames& acid(std::string_view name) const;
};

/// Parsed once, at the first call.
const InciData& inci_data();

}  // namespace brimwright::chemistry
