#include "chemistry/lye_need.h"

#include "chemistry/alkali_data.h"
#include "units/share_of.h"

#include <cassert>

namespace brimwright::chemistry {
namespace {

/// KOH that exactly neutralises all that is fat, before superfat.
Mass koh_for_fats(const Formula& formula, const std::vector<Mass>& fats,
                  const std::vector<Mass>& extra_oils, const std::vector<Mass>& additives) {
  const auto koh = [](Mass fat, SaponificationValue sv) {
    return alkali_for(Alkali::potassium_hydroxide, fat, sv);
  };
  Mass need;
  for (std::size_t j = 0; j < fats.size(); ++j)
    need += koh(fats[j], formula.fats[j].saponification.typical);
  for (std::size_t i = 0; i < additives.size(); ++i) {
    const Additive& additive = formula.additives[i];
    if (additive.dispersal)
      need += koh(extra_oils[i], additive.dispersal->oil.saponification.typical);
    if (const auto& fat = additive.contains_fat)
      need += koh(fat->share * additives[i], fat->fat.saponification.typical);
  }
  return need;
}

/// KOH that the acids use up; no superfat is left on them.
Mass koh_for_acids(const Formula& formula, const std::vector<Mass>& additives) {
  Mass need;
  for (std::size_t i = 0; i < additives.size(); ++i)
    if (const auto& acid = formula.additives[i].contains_acid)
      need += acid->share * additives[i] * acid->koh_g_per_g;
  return need;
}

}  // namespace

Mass alkali_for(Alkali alkali, Mass fat, SaponificationValue sv) {
  return fat * (sv.mg_koh_per_g() / 1000) * per_koh(alkali);
}

std::vector<Mass> extra_oils_for(const Formula& formula, const std::vector<Mass>& additives) {
  assert(additives.size() == formula.additives.size());
  std::vector<Mass> oils(additives.size());
  for (std::size_t i = 0; i < additives.size(); ++i) {
    const auto& dispersal = formula.additives[i].dispersal;
    if (dispersal && !dispersal->from_the_formula)
      oils[i] = additives[i] * dispersal->oil_per_powder;
  }
  return oils;
}

std::vector<Mass> alkalis_for(const Formula& formula, const std::vector<Mass>& fats,
                              const std::vector<Mass>& extra_oils,
                              const std::vector<Mass>& additives) {
  assert(fats.size() == formula.fats.size());
  assert(additives.size() == formula.additives.size() && extra_oils.size() == additives.size());
  const Mass koh =
      koh_for_fats(formula, fats, extra_oils, additives) * (1 - formula.superfat.of_one()) +
      koh_for_acids(formula, additives);
  std::vector<Mass> alkalis;
  for (const FormulaAlkali& alkali : formula.alkalis) {
    alkalis.push_back(alkali.share * koh * per_koh(alkali.alkali) / alkali.purity.of_one());
  }
  return alkalis;
}

Mass pure_alkali_in(const Formula& formula, const std::vector<Mass>& alkalis) {
  Mass pure;
  for (std::size_t k = 0; k < alkalis.size(); ++k) pure += formula.alkalis[k].purity * alkalis[k];
  return pure;
}

Mass water_in_solutions(const Formula& formula, const std::vector<Mass>& alkalis) {
  Mass water;
  for (std::size_t k = 0; k < alkalis.size(); ++k)
    if (formula.alkalis[k].solution) water += (whole - formula.alkalis[k].purity) * alkalis[k];
  return water;
}

Mass water_for(const Formula& formula, const std::vector<Mass>& alkalis, Mass all_fats) {
  assert(alkalis.size() == formula.alkalis.size());
  const Mass pure = pure_alkali_in(formula, alkalis);
  if (const auto* strength = std::get_if<LyeStrength>(&formula.water)) {
    const double c = strength->alkali_in_lye.of_one();
    return pure * ((1 - c) / c);
  }
  if (const auto* ratio = std::get_if<WaterToAlkali>(&formula.water)) return pure * ratio->ratio;
  return std::get<WaterOfFats>(formula.water).share * all_fats;
}

}  // namespace brimwright::chemistry
