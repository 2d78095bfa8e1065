#include "service/lye_gate.h"

#include "units/printing.h"
#include "units/user_error.h"

#include <charconv>
#include <cmath>
#include <stdexcept>

namespace brimwright::service {
namespace {

using planning::Ingredient;
using planning::Role;

// IUPAC 2021 abridged atomic weights, rounded: K 39.098, Na 22.990, O 15.999, H 1.008. Kept apart
// from the chemistry room's own on purpose.
constexpr double koh_g_per_mol = 56.105;
constexpr double naoh_g_per_mol = 39.997;

double grams_as_printed(const Ingredient& ingredient) {
  const std::string text = fixed(ingredient.weighed / gram, decimals_for(ingredient.step));
  double grams = 0;
  std::from_chars(text.data(), text.data() + text.size(), grams);
  return grams;
}

/// Walks the printed list in its own order and keeps two sums in grams of KOH.
struct Account {
  double fats_take = 0;
  double alkali_gives = 0;
  double printed = 0;
};

Account account_of(const chemistry::Formula& formula, const planning::Weighing& weighing) {
  Account account;
  for (const auto& ingredient : weighing.ingredients) {
    const double grams = grams_as_printed(ingredient);
    account.printed += grams;
    if (ingredient.role == Role::fat) {
      account.fats_take +=
          grams * formula.fats[ingredient.index].saponification.typical.mg_koh_per_g() / 1000;
    } else if (ingredient.role == Role::extra_oil) {
      const auto& oil = formula.additives[ingredient.index].dispersal->oil;
      account.fats_take += grams * oil.saponification.typical.mg_koh_per_g() / 1000;
    } else if (ingredient.role == Role::alkali) {
      const auto& a = formula.alkalis[ingredient.index];
      const bool is_naoh = a.alkali == chemistry::Alkali::sodium_hydroxide;
      account.alkali_gives +=
          grams * a.purity.of_one() * (is_naoh ? koh_g_per_mol / naoh_g_per_mol : 1);
    } else if (ingredient.role == Role::additive) {
      const auto& a = formula.additives[ingredient.index];
      if (a.contains_fat)
        account.fats_take += grams * a.contains_fat->share.of_one() *
                             a.contains_fat->fat.saponification.typical.mg_koh_per_g() / 1000;
      if (a.contains_acid)
        account.alkali_gives -=
            grams * a.contains_acid->share.of_one() * a.contains_acid->koh_g_per_g;
    }
  }
  return account;
}

}  // namespace

void pass_lye_gate(const chemistry::Formula& formula, const planning::Weighing& weighing) {
  const Account account = account_of(formula, weighing);
  const double superfat = 1 - account.alkali_gives / account.fats_take;
  if (!(superfat >= 0))
    throw UserError(
        {formula.file, "/superfat",
         "the printed weights would be lye-heavy: superfat " + fixed(superfat * 100, 2) + " %",
         "nothing is shown; aim higher or use a finer scale"});
  if (!(std::abs(superfat - weighing.superfat.nominal.of_one()) <= 2e-4))
    throw std::logic_error("the superfat of the printed weights is " + exact(superfat) +
                           ", planned was " + exact(weighing.superfat.nominal.of_one()));
  if (!(std::abs(account.printed - weighing.batter / gram) <= 1e-6 * account.printed))
    throw std::logic_error("the printed ingredients do not add up to the printed batter");
}

}  // namespace brimwright::service
