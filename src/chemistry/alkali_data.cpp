#include "chemistry/alkali_data.h"

#include "units/fields.h"

#include <algorithm>
#include <stdexcept>
#include <string>

namespace brimwright::embedded {
std::string_view lye_json();
}

namespace brimwright::chemistry {
namespace {

/// M(metal) + M(O) + M(H), from the atomic weights of the file.
double molar_mass(const Fields& lye, const std::string& metal) {
  const Fields weights = lye.object("molar_masses_g_mol").object("atomic_weights");
  return weights.number(metal) + weights.number("O") + weights.number("H");
}

std::optional<AssumedPurity> read_assumed_purity(const Fields& lye, const std::string& formula) {
  const auto assumed = lye.object("purity_without_range").optional_object(formula);
  if (!assumed) return std::nullopt;
  return AssumedPurity{assumed->number("points_either_way") * percent,
                       assumed->number("reaches_at_least_percent") * percent, assumed->text("why")};
}

AlkaliData read_alkali(const Fields& lye, const std::string& formula, const std::string& metal) {
  AlkaliData data;
  data.molar_mass_g_per_mol = molar_mass(lye, metal);

  const Fields sets = lye.object("density_model").object("coefficients").object(formula);
  const auto c = sets.object(sets.text("used")).numbers("c");
  if (c.size() != data.laliberte_cooper.size())
    throw std::logic_error("data/lye.json: " + formula + " needs five density coefficients");
  std::copy(c.begin(), c.end(), data.laliberte_cooper.begin());

  data.solubility_at_20_celsius =
      lye.object("solubility_20c").object(formula).number("mass_percent") * percent;
  data.assumed_purity = read_assumed_purity(lye, formula);
  data.inert_part_is_water =
      lye.object("inert_part").object(formula).choice("counts_as", {"water", "alkali"}) == "water";
  return data;
}

struct BothAlkalis {
  AlkaliData sodium_hydroxide, potassium_hydroxide;
};

BothAlkalis read_both() {
  const Fields lye = Fields::parse(embedded::lye_json(), "data/lye.json");
  return {read_alkali(lye, "NaOH", "Na"), read_alkali(lye, "KOH", "K")};
}

}  // namespace

Share AssumedPurity::low(Share stated) const { return stated - either_way; }

Share AssumedPurity::high(Share stated) const {
  return std::min(whole, std::max(stated + either_way, reaches_at_least));
}

const AlkaliData& data_of(Alkali alkali) {
  static const BothAlkalis both = read_both();
  return alkali == Alkali::sodium_hydroxide ? both.sodium_hydroxide : both.potassium_hydroxide;
}

double molar_mass_g_per_mol(Alkali alkali) { return data_of(alkali).molar_mass_g_per_mol; }

double per_koh(Alkali alkali) {
  return molar_mass_g_per_mol(alkali) / molar_mass_g_per_mol(Alkali::potassium_hydroxide);
}

}  // namespace brimwright::chemistry
