#include "chemistry/proportions.h"

#include "chemistry/liquid_water.h"
#include "chemistry/lye_need.h"
#include "units/printing.h"
#include "units/share_of.h"
#include "units/user_error.h"

#include <cassert>
#include <numeric>

namespace brimwright::chemistry {
namespace {

Mass sum_of(const std::vector<Mass>& masses) {
  return std::accumulate(masses.begin(), masses.end(), Mass());
}

/// A rate as grams for each gram of its basis.
double grams_per_gram(const Additive& additive) {
  if (const auto* share = std::get_if<Share>(&additive.rate.amount)) return share->of_one();
  assert(additive.bulk_density);  // read_formula refuses a spoon without it
  return (std::get<SpecificVolume>(additive.rate.amount) * *additive.bulk_density).base();
}

/// Additives for `all_fats` of fats that end in `batter` of batter.
std::vector<Mass> additives_for(const Formula& formula, Mass all_fats, Mass batter) {
  std::vector<Mass> masses;
  for (const Additive& additive : formula.additives)
    masses.push_back(grams_per_gram(additive) *
                     (additive.rate.of == RateBasis::fats ? all_fats : batter));
  return masses;
}

/// All that goes together, on the assumption that it makes `batter`; right when the sum is just
/// that.
struct Masses {
  std::vector<Mass> fats, extra_oils, alkalis, additives;
  Mass water;

  Mass sum() const {
    return sum_of(fats) + sum_of(extra_oils) + sum_of(alkalis) + water + sum_of(additives);
  }
};

Masses masses_for_one_gram(const Formula& formula, Mass batter) {
  Masses m;
  for (const FormulaFat& fat : formula.fats) m.fats.push_back(fat.share * gram);
  m.additives = additives_for(formula, gram, batter);
  m.extra_oils = extra_oils_for(formula, m.additives);
  m.alkalis = alkalis_for(formula, m.fats, m.extra_oils, m.additives);
  m.water = water_for(formula, m.alkalis, gram) - water_in_liquids(formula, m.additives) -
            water_in_solutions(formula, m.alkalis);
  return m;
}

/// Every mass is a linear function of the batter, so the sum at no batter and at one gram of it
/// tell where sum and batter meet.
Mass batter_of_one_gram(const Formula& formula) {
  const Mass at_none = masses_for_one_gram(formula, Mass()).sum();
  const Mass at_one = masses_for_one_gram(formula, gram).sum();
  const double slope = (at_one - at_none) / gram;
  // Salt bars, the heaviest laden, hold as much salt as fats, 40 % of the batter: common practice,
  // no source. Above two thirds it is no soap batter, at a whole there is no answer.
  const Mass batter = slope < 1 ? at_none / (1 - slope) : Mass();
  const Mass additives = slope < 1 ? sum_of(additives_for(formula, gram, batter)) : Mass();
  if (slope < 1 && additives / batter <= 2.0 / 3) return batter;
  throw UserError({formula.file, "/additives"},
                  slope < 1 ? "the additives, fragrances and colours make up " +
                                  trimmed(additives / batter * 100, 1) + " % of the batter"
                            : "the additives, fragrances and colours leave no room for the batter",
                  "lower their rates until they are less than two thirds of it");
}

std::vector<double> in_grams(const std::vector<Mass>& masses) {
  std::vector<double> grams;
  grams.reserve(masses.size());
  for (const Mass mass : masses) grams.push_back(mass / gram);
  return grams;
}

/// Of each fat: the oil taken out of it to disperse colours.
std::vector<double> set_aside_in_grams(const Formula& formula, const std::vector<Mass>& additives) {
  std::vector<double> grams(formula.fats.size());
  for (std::size_t i = 0; i < additives.size(); ++i) {
    const auto& dispersal = formula.additives[i].dispersal;
    if (!dispersal || !dispersal->from_the_formula) continue;
    for (std::size_t j = 0; j < formula.fats.size(); ++j)
      if (formula.fats[j].fat.id == dispersal->oil.id)
        grams[j] += additives[i] / gram * dispersal->oil_per_powder;
  }
  return grams;
}

}  // namespace

Proportions proportions(const Formula& formula) {
  const Masses m = masses_for_one_gram(formula, batter_of_one_gram(formula));
  const Mass pure = pure_alkali_in(formula, m.alkalis);
  Proportions p;
  p.fats = in_grams(m.fats);
  p.alkalis = in_grams(m.alkalis);
  p.additives = in_grams(m.additives);
  p.extra_oil = in_grams(m.extra_oils);
  p.set_aside = set_aside_in_grams(formula, m.additives);
  p.water = m.water / gram;
  p.batter = m.sum() / gram;
  p.pure_alkali = pure / gram;
  const Mass in_liquids = water_in_liquids(formula, m.additives);
  const Mass in_solutions = water_in_solutions(formula, m.alkalis);
  const Mass all_water = m.water + in_liquids + in_solutions;
  const Mass in_pot = m.water + in_solutions + water_in_lye_liquids(formula, m.additives);
  const Mass in_acids = water_in_acids(formula, m.additives);
  p.water_in_liquids = in_liquids / gram;
  p.water_in_solutions = in_solutions / gram;
  p.water_in_acids = in_acids / gram;
  const auto strength = [&](Mass water) { return Share::of_one(pure / (pure + water)); };
  p.stated_strength = strength(all_water);
  p.stated_pot_strength = strength(in_pot);
  p.lye_strength = strength(all_water + in_acids);
  p.pot_strength = strength(in_pot + water_in_lye_acids(formula, m.additives));
  p.water_to_alkali = (all_water + in_acids) / pure;
  p.water_of_fats = Share::of_one((all_water + in_acids) / gram);
  return p;
}

}  // namespace brimwright::chemistry
