#include "chemistry/fat_cautions.h"

#include "units/printing.h"

#include <algorithm>
#include <cmath>

namespace brimwright::chemistry {
namespace {

/// One fat of the formula, wherever it comes in.
struct Part {
  const Fat* fat;
  SaponificationValue reckoned;
  double grams;  // for a gram of the formula's fats

  double need() const { return grams * reckoned.mg_koh_per_g(); }  // in mg of KOH
  /// What its esters are reckoned to take, and may not.
  double in_doubt() const {
    if (!fat->slow) return 0;
    return grams * std::max(0.0, reckoned.mg_koh_per_g() - fat->slow->sure.mg_koh_per_g());
  }
};

std::vector<Part> parts_of(const Formula& formula, const Proportions& per_fat) {
  std::vector<Part> parts;
  for (std::size_t j = 0; j < formula.fats.size(); ++j) {
    const FormulaFat& fat = formula.fats[j];
    parts.push_back({&fat.fat, fat.saponification.typical, per_fat.fats[j]});
  }
  for (std::size_t i = 0; i < formula.additives.size(); ++i) {
    const Additive& additive = formula.additives[i];
    if (additive.dispersal) {
      const Fat& oil = additive.dispersal->oil;
      parts.push_back({&oil, oil.saponification.typical, per_fat.extra_oil[i]});
    }
    if (const auto& inside = additive.contains_fat)
      parts.push_back({&inside->fat, inside->fat.saponification.typical,
                       inside->share.of_one() * per_fat.additives[i]});
  }
  return parts;
}

/// Rounded down, so that what lies below zero is not shown as zero.
std::string in_words(double superfat) {
  return fixed(std::floor(superfat * 1000 + 1e-9) / 10, 1) + " %";
}

Remark caution_on(const Part& wax, const std::string& formula, double superfat) {
  const bool is_danger = superfat < 0;
  return {is_danger ? Severity::danger : Severity::caution,
          (is_danger ? "LYE-HEAVY IS POSSIBLE in " + formula + ": " : formula + ": ") +
              wax.fat->name + " is a wax that lye attacks slowly, if at all: " +
              wax.fat->slow->how + " (" + wax.fat->slow->how_from.source +
              "). It is worked out with " + trimmed(wax.reckoned.mg_koh_per_g(), 1) +
              " mg/g, its free acids alone with " + trimmed(wax.fat->slow->sure.mg_koh_per_g(), 1) +
              " mg/g; if no more than they react, the superfat is " + in_words(superfat) + ". " +
              (is_danger ? "Take less of it, or plan a higher superfat."
                         : "What does not react stays in the soap as wax.")};
}

struct Needs {
  double planned = 0, sure = 0;  // mg of KOH for a gram of the formula's fats
};

Needs needs_of(const std::vector<Part>& parts) {
  Needs needs;
  for (const Part& part : parts) {
    needs.planned += part.need();
    needs.sure += part.need() - part.in_doubt();
  }
  return needs;
}

}  // namespace

void refuse_wax_for_fat(const Formula& formula, const Proportions& per_fat, const Place& where) {
  const auto parts = parts_of(formula, per_fat);
  const Needs needs = needs_of(parts);
  if (needs.sure * 2 >= needs.planned) return;
  const auto most = std::max_element(parts.begin(), parts.end(), [](const Part& a, const Part& b) {
    return a.in_doubt() < b.in_doubt();
  });
  throw UserError(where,
                  "more than half of the alkali would be weighed for " + most->fat->name +
                      ", a wax that lye attacks slowly, if at all",
                  "make the soap of fats and keep such waxes to a few per cent of them");
}

std::vector<Remark> slow_wax_cautions(const Formula& formula, const Proportions& per_fat) {
  const auto parts = parts_of(formula, per_fat);
  const Needs needs = needs_of(parts);
  const double superfat = 1 - (1 - formula.superfat.of_one()) * needs.planned / needs.sure;
  std::vector<Remark> cautions;
  for (const Part& part : parts)
    if (part.fat->slow && part.grams > 0)
      cautions.push_back(caution_on(part, formula.name, superfat));
  return cautions;
}

}  // namespace brimwright::chemistry
