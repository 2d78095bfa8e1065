#include "chemistry/supplied_values.h"

#include "chemistry/theoretical_value.h"
#include "units/printing.h"

namespace brimwright::chemistry {
namespace {

/// Outside the published range, widened by 5 %.
std::optional<Remark> far_from_published(const FormulaFat& fat) {
  const double typical = fat.saponification.typical.mg_koh_per_g();
  const double low = fat.fat.saponification.low.mg_koh_per_g();
  const double high = fat.fat.saponification.high.mg_koh_per_g();
  if (typical >= low * 0.95 && typical <= high * 1.05) return std::nullopt;
  return Remark{Severity::caution, "the supplier's saponification value of " + trimmed(typical, 1) +
                                       " for " + fat.fat.name + " is far from the published " +
                                       trimmed(low, 1) + " to " + trimmed(high, 1) +
                                       " mg/g. Check it before weighing lye."};
}

std::optional<Remark> caution_on(const FormulaFat& fat) {
  if (!fat.from_supplier && !fat.fat.is_users_own) return std::nullopt;
  if (const auto far = far_from_published(fat)) return far;
  return profile_disagreement(fat.fat, fat.saponification);
}

}  // namespace

std::vector<Remark> supplied_value_cautions(const Formula& formula) {
  std::vector<Remark> cautions;
  for (const FormulaFat& fat : formula.fats)
    if (const auto caution = caution_on(fat))
      cautions.push_back({caution->severity, formula.name + ": " + caution->text});
  return cautions;
}

}  // namespace brimwright::chemistry
