#include "moulds/mould_workings.h"

#include "units/printing.h"

#include <algorithm>

namespace brimwright::moulds {
namespace {

std::string formula_of(Way way) {
  switch (way) {
    case Way::dimensions:
      return "to the brim = area of the level section, summed from floor to brim";
    case Way::mesh:
      return "to the brim = sum of the signed tetrahedra of the cavity's facets (divergence "
             "theorem)";
    case Way::water:
      break;
  }
  return "to the brim = net weight of the water that fills it ÷ density of water";
}

bool is_weighed(const Mould& mould) {
  return std::any_of(mould.measurements.begin(), mould.measurements.end(),
                     [](const Measurement& one) { return one.way == Way::water; });
}

}  // namespace

std::vector<std::string> measured_by(const Mould& mould) {
  std::vector<std::string> ways;
  for (const Measurement& one : mould.measurements)
    ways.push_back(name_of(one.way) + " (" + in_figures(one.brimful) + " to the brim)");
  if (is_weighed(mould)) ways.emplace_back("density of water: Kell 1975");
  return ways;
}

Working brimful_working(const Mould& mould) {
  const Measurement& trusted = mould.measurements.front();
  Working working{.of = {},
                  .formula = formula_of(trusted.way),
                  .with = {{"the cavity", mould.description}},
                  .comes_to = in_figures(mould.curve.brimful())};
  for (const Measurement& one : mould.measurements)
    working.with.push_back({"by " + name_of(one.way), in_figures(one.brimful)});
  working.with.push_back({"depth to the brim", in_figures(mould.curve.height())});
  if (mould.detail_factor != 1)
    working.with.push_back(
        {"detail factor", in_figures(mould.detail_factor), "by water ÷ by dimensions or mesh"});
  if (is_weighed(mould)) working.sources = {"density of water: Kell 1975"};
  return working;
}

}  // namespace brimwright::moulds
