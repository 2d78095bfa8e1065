#include "chemistry/rate_cautions.h"

#include "chemistry/acid_cautions.h"
#include "chemistry/fat_cautions.h"
#include "chemistry/liquids.h"
#include "chemistry/supplied_values.h"
#include "units/printing.h"
#include "units/wording.h"

namespace brimwright::chemistry {
namespace {

void caution_on_strength(const Formula& formula, const Proportions& per_fat,
                         std::vector<Remark>& cautions) {
  const Share strength = per_fat.lye_strength;
  const std::string stated = formula.name + ": a lye strength of " + in_percent(strength, 2) + " ";
  if (strength.of_one() < 0.25 - 1e-9)
    cautions.push_back({Severity::caution, stated + "makes a very wet batter: it is slow to trace "
                                                    "and to unmould, and shrinks as it cures."});
  if (strength.of_one() > 0.40 + 1e-9)
    cautions.push_back({Severity::caution, stated + "traces fast: have everything ready before "
                                                    "lye and fats meet."});
}

}  // namespace

std::vector<Remark> rate_cautions(const Formula& formula, const Proportions& per_fat) {
  std::vector<Remark> cautions;
  caution_on_strength(formula, per_fat, cautions);
  const auto liquids = liquid_cautions(formula, per_fat);
  cautions.insert(cautions.end(), liquids.begin(), liquids.end());
  return cautions;
}

std::vector<Remark> data_doubts(const Formula& formula, const Proportions& per_fat) {
  std::vector<Remark> doubts = supplied_value_cautions(formula);
  for (const auto& more : {slow_wax_cautions(formula, per_fat), acid_cautions(formula, per_fat),
                           own_in_place_notes(formula), taken_as_exact_notes(formula)})
    doubts.insert(doubts.end(), more.begin(), more.end());
  return doubts;
}

}  // namespace brimwright::chemistry
