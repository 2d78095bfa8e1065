#include "chemistry/density_workings.h"

#include "chemistry/batter_density.h"
#include "chemistry/fat.h"
#include "chemistry/fat_density.h"
#include "chemistry/proportions.h"
#include "chemistry/salts.h"
#include "units/water.h"

#include <algorithm>
#include <numeric>

namespace brimwright::chemistry {
namespace {

/// A part of the batter that has a density of its own.
struct Part {
  std::string name;
  Mass mass;
  Density density;
  std::string from;
};

constexpr double hundred = 100;  // grams of fats

std::string source_of(const Fat& fat, Temperature at) {
  if (density_of(fat, at).estimated || !fat.density) return "estimated by Lund's relation";
  return fat.density->source;
}

Part lye_of(const Formula& formula, const Proportions& per_fat) {
  std::vector<Mass> alkalis;
  for (const double alkali : per_fat.alkalis) alkalis.push_back(hundred * alkali * gram);
  const Mass water = hundred * per_fat.water * gram;
  const Mass lye = std::accumulate(alkalis.begin(), alkalis.end(), water);
  return {"lye", lye, lye / lye_volume(formula, alkalis, water),
          "Laliberté and Cooper 2004, by its strength"};
}

Part additive_of(const Additive& additive, Mass mass, Temperature at) {
  if (additive.density) return {additive.name, mass, *additive.density, "the formula"};
  if (const auto known = known_density(additive))
    return {additive.name, mass, *known, "the table of substances"};
  return {additive.name, mass, water_density(at), "taken as water's"};
}

std::vector<Part> parts_of(const Formula& formula, const Proportions& per_fat) {
  const Temperature at = formula.pour_temperature;
  std::vector<Part> parts;
  for (std::size_t j = 0; j < formula.fats.size(); ++j) {
    const Fat& fat = formula.fats[j].fat;
    parts.push_back({fat.name, hundred * per_fat.fats[j] * gram, density_of(fat, at).density,
                     source_of(fat, at)});
  }
  for (std::size_t i = 0; i < formula.additives.size(); ++i)
    if (const auto& dispersal = formula.additives[i].dispersal)
      parts.push_back({dispersal->oil.name + " that disperses colour",
                       hundred * per_fat.extra_oil[i] * gram,
                       density_of(dispersal->oil, at).density, source_of(dispersal->oil, at)});
  parts.push_back(lye_of(formula, per_fat));
  for (std::size_t i = 0; i < formula.additives.size(); ++i)
    parts.push_back(additive_of(formula.additives[i], hundred * per_fat.additives[i] * gram, at));
  std::erase_if(parts, [](const Part& part) { return !(part.mass > Mass{}); });
  return parts;
}

}  // namespace

Working computed_density_working(const Formula& formula, const Proportions& per_fat) {
  Working working;
  working.formula = "density = mass of everything ÷ sum of the volumes, at the pouring temperature";
  working.with = {{"pouring temperature", in_figures(formula.pour_temperature), formula.name}};
  std::vector<std::string> masses, volumes;
  for (const Part& part : parts_of(formula, per_fat)) {
    working.with.push_back({part.name, in_figures(part.mass) + " for 100 g of fats",
                            in_figures(part.density) + ", " + part.from});
    masses.push_back(in_figures(part.mass));
    volumes.push_back(in_figures(part.mass) + " ÷ " + in_figures(part.density));
  }
  working.sum = in_brackets(masses) + " ÷ " + in_brackets(volumes);
  working.comes_to = in_figures(batter_density(formula, per_fat).computed);
  working.sources = {"volumes taken as additive, good to 1 to 2 %",
                     "fats: each fat's published density and slope"};
  return working;
}

Working density_working(const Formula& formula, const Proportions& per_fat) {
  Working working = computed_density_working(formula, per_fat);
  if (!formula.measured_density) return working;
  return {.of = {},
          .formula = "density of the plain batter, as measured",
          .with = {{"measured", in_figures(*formula.measured_density), formula.name},
                   {"calculated from its ingredients", working.comes_to}},
          .comes_to = in_figures(*formula.measured_density)};
}

}  // namespace brimwright::chemistry
