#include "chemistry/batter_density.h"

#include "chemistry/alkali_data.h"
#include "chemistry/fat_density.h"
#include "chemistry/lye.h"
#include "chemistry/lye_need.h"
#include "chemistry/salts.h"
#include "units/printing.h"
#include "units/share_of.h"
#include "units/water.h"
#include "units/wording.h"

#include <cmath>
#include <numeric>

namespace brimwright::chemistry {
namespace {

Volume volume_of_fats(const Formula& formula, const Proportions& per_fat) {
  const Temperature at = formula.pour_temperature;
  Volume volume;
  for (std::size_t j = 0; j < formula.fats.size(); ++j)
    volume += per_fat.fats[j] * gram / density_of(formula.fats[j].fat, at).density;
  for (std::size_t i = 0; i < formula.additives.size(); ++i)
    if (const auto& dispersal = formula.additives[i].dispersal)
      volume += per_fat.extra_oil[i] * gram / density_of(dispersal->oil, at).density;
  return volume;
}

Volume volume_of_lye(const Formula& formula, const Proportions& per_fat) {
  std::vector<Mass> alkalis;
  for (const double alkali : per_fat.alkalis) alkalis.push_back(alkali * gram);
  return lye_volume(formula, alkalis, per_fat.water * gram);
}

Volume volume_of_additives(const Formula& formula, const Proportions& per_fat) {
  Volume volume;
  for (std::size_t i = 0; i < formula.additives.size(); ++i) {
    const Additive& additive = formula.additives[i];
    const Density known = known_density(additive).value_or(water_density(formula.pour_temperature));
    volume += per_fat.additives[i] * gram / additive.density.value_or(known);
  }
  return volume;
}

/// What of a weighed alkali, without a solution's water, is as dense in the lye as alkali is.
Share dense_part(const FormulaAlkali& alkali) {
  if (alkali.solution) return whole;
  return data_of(alkali.alkali).inert_part_is_water ? alkali.purity : whole;
}

std::string listed(const std::vector<std::string>& names) {
  std::string list;
  for (std::size_t i = 0; i < names.size(); ++i)
    list += (i == 0 ? "" : i + 1 == names.size() ? " and " : ", ") + names[i];
  return list;
}

void remark_on_estimates(const Formula& formula, std::vector<Remark>& remarks) {
  std::vector<std::string> names;
  for (const FormulaFat& fat : formula.fats)
    if (density_of(fat.fat, formula.pour_temperature).estimated) names.push_back(fat.fat.name);
  if (names.empty()) return;
  remarks.push_back({Severity::note, "No density is published for " + listed(names) +
                                         "; it is estimated from the saponification and iodine "
                                         "values (Lund's relation)."});
}

void remark_on_water_like(const Formula& formula, std::vector<Remark>& remarks) {
  std::vector<std::string> names;
  for (const Additive& additive : formula.additives)
    if (!additive.density && !known_density(additive)) names.push_back(additive.name);
  if (names.empty()) return;
  remarks.push_back({Severity::note, "The density of " + listed(names) +
                                         " is not given and taken as water's; give \"density\" if "
                                         "there is much of it."});
}

/// Tabled densities are said where they are used: the maker's powder may be another.
void remark_on_tabled(const Formula& formula, std::vector<Remark>& remarks) {
  std::string list;
  for (const Additive& additive : formula.additives) {
    const auto tabled = known_density(additive);
    if (additive.density || !tabled) continue;
    list += (list.empty() ? "" : ", ") + additive.name + " " + in_g_per_ml(*tabled, 2) +
            (find_substance(additive.name)->read ? "" : " (unchecked)");
  }
  if (!list.empty())
    remarks.push_back({Severity::note, "Densities taken from the table by name: " + list + "."});
}

/// Published densities of warm fats are for the molten fat; a set fat is denser.
void remark_on_set_fats(const Formula& formula, std::vector<Remark>& remarks) {
  std::vector<std::string> names;
  for (const FormulaFat& fat : formula.fats) {
    const auto& melting = fat.fat.melting_range_c;
    if (melting && formula.pour_temperature.celsius() < melting->first)
      names.push_back(fat.fat.name);
  }
  if (names.empty()) return;
  remarks.push_back(
      {Severity::note, "At " + in_both_scales(formula.pour_temperature) + " " + listed(names) +
                           " would set; the batter's density is calculated as if they were molten "
                           "and may be a few per cent low. Weigh a cup of it to be sure."});
}

void remark_on_measured(const BatterDensity& density, std::vector<Remark>& remarks) {
  const double ratio = density.used / density.computed;
  // Adding volumes is good to 1-2 %; 3 % is beyond it and beyond a careful weigh-cup.
  if (std::abs(ratio - 1) <= 0.03) return;
  const auto shown = [](Density d) { return fixed(d / gram_per_millilitre, 3); };
  remarks.push_back(
      {Severity::caution,
       "The measured density, " + shown(density.used) + " g/ml, is " +
           trimmed(std::abs(ratio - 1) * 100, 1) + " % " + (ratio > 1 ? "above" : "below") +
           " the calculated " + shown(density.computed) +
           " g/ml. The measured one is used; weigh a cup of plain, unwhipped batter again."});
}

}  // namespace

Volume lye_volume(const Formula& formula, const std::vector<Mass>& alkalis, Mass plain_water) {
  std::vector<Mass> dry = alkalis;
  for (std::size_t k = 0; k < dry.size(); ++k)
    if (formula.alkalis[k].solution) dry[k] = formula.alkalis[k].purity * dry[k];
  const Mass water = plain_water + water_in_solutions(formula, alkalis);
  const Mass weighed = std::accumulate(dry.begin(), dry.end(), Mass{});
  if (!(weighed > Mass{})) return water / water_density(formula.pour_temperature);
  const double lye_per_alkali = (weighed + water) / weighed;
  Volume volume;
  for (std::size_t k = 0; k < formula.alkalis.size(); ++k)
    volume += lye_per_alkali * dry[k] /
              lye_density(formula.alkalis[k].alkali,
                          (1 / lye_per_alkali) * dense_part(formula.alkalis[k]),
                          formula.pour_temperature);
  return volume;
}

BatterDensity batter_density(const Formula& formula, const Proportions& per_fat) {
  const Volume volume = volume_of_fats(formula, per_fat) + volume_of_lye(formula, per_fat) +
                        volume_of_additives(formula, per_fat);
  BatterDensity density;
  density.computed = per_fat.batter * gram / volume;
  density.used = formula.measured_density.value_or(density.computed);
  remark_on_measured(density, density.remarks);
  remark_on_set_fats(formula, density.remarks);
  remark_on_estimates(formula, density.remarks);
  remark_on_tabled(formula, density.remarks);
  remark_on_water_like(formula, density.remarks);
  return density;
}

}  // namespace brimwright::chemistry
