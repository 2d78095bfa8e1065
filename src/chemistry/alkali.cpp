#include "chemistry/alkali.h"

#include "chemistry/alkali_data.h"

namespace brimwright::chemistry {

std::string formula_of(Alkali alkali) {
  return alkali == Alkali::sodium_hydroxide ? "NaOH" : "KOH";
}

double molar_mass_g_per_mol(Alkali alkali) { return data_of(alkali).molar_mass_g_per_mol; }

Mass alkali_for(Alkali alkali, Mass fat, SaponificationValue sv) {
  const double alkali_per_koh =
      molar_mass_g_per_mol(alkali) / molar_mass_g_per_mol(Alkali::potassium_hydroxide);
  return fat * (sv.mg_koh_per_g() / 1000) * alkali_per_koh;
}

}  // namespace brimwright::chemistry
