#include "chemistry/acid_cautions.h"
#include "chemistry/batter.h"
#include "chemistry/liquids.h"
#include "chemistry/supplied_values.h"
#include "units/printing.h"

#include <cassert>

namespace brimwright::chemistry {
namespace {

std::string in_percent(Share share) { return trimmed(share.in_percent(), 2) + " %"; }

/// A limit as a share of its basis, spoons by the additive's bulk density.
Share limit_of(const Additive& additive) {
  const auto& amount = additive.limit->amount;
  if (const auto* share = std::get_if<Share>(&amount)) return *share;
  assert(additive.bulk_density);  // read_formula refuses a spoon without it
  return Share::of_one((std::get<SpecificVolume>(amount) * *additive.bulk_density).base());
}

void caution_on_limits(const Formula& formula, const Proportions& per_fat,
                       std::vector<Remark>& cautions) {
  for (std::size_t i = 0; i < formula.additives.size(); ++i) {
    const Additive& additive = formula.additives[i];
    if (!additive.limit) continue;
    const bool of_fats = additive.limit->of == RateBasis::fats;
    const Share used = Share::of_one(per_fat.additives[i] / (of_fats ? 1 : per_fat.batter));
    const Share most = limit_of(additive);
    if (used.of_one() <= most.of_one() * (1 + 1e-9)) continue;
    const std::string basis = of_fats ? " of the fats" : " of the batter";
    cautions.push_back({Severity::caution, formula.name + ": " + additive.name + " makes up " +
                                               in_percent(used) + basis +
                                               "; its supplier allows at most " + in_percent(most) +
                                               basis + "."});
  }
}

void caution_on_strength(const Formula& formula, const Proportions& per_fat,
                         std::vector<Remark>& cautions) {
  const Share strength = per_fat.lye_strength;
  const std::string stated = formula.name + ": a lye strength of " + in_percent(strength) + " ";
  if (strength.of_one() < 0.25 - 1e-9)
    cautions.push_back({Severity::caution, stated + "makes a very wet batter: slow to trace and to "
                                                    "unmould, and it shrinks as it cures."});
  if (strength.of_one() > 0.40 + 1e-9)
    cautions.push_back({Severity::caution, stated + "traces fast: have everything ready before "
                                                    "lye and fats meet."});
}

}  // namespace

std::vector<Remark> rate_cautions(const Formula& formula, const Proportions& per_fat) {
  std::vector<Remark> cautions = supplied_value_cautions(formula);
  caution_on_limits(formula, per_fat, cautions);
  caution_on_strength(formula, per_fat, cautions);
  for (const auto& more : {liquid_cautions(formula, per_fat), acid_cautions(formula, per_fat),
                           taken_as_exact_notes(formula)})
    cautions.insert(cautions.end(), more.begin(), more.end());
  return cautions;
}

}  // namespace brimwright::chemistry
