#include "service/lye_gate.h"

#include "units/complaint_facts.h"
#include "units/number_text.h"
#include "units/printing.h"
#include "units/user_error.h"
#include "units/weight_text.h"

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

// International avoirdupois ounce, exact by definition.
constexpr double grams_per_ounce = 28.349523125;

/// Weights are printed in two units; a maker reads one of them.
enum class Column { of_the_scale, grams, ounces };

double number_in(const std::string& text) { return leading_number(text).value().value; }

double grams_as_printed(Mass mass, Mass step, Rounded towards, Column column) {
  const WeightText text = weight_text(mass, step, towards);
  const bool by_ounces =
      column == Column::ounces || (column == Column::of_the_scale && reads_ounces(step));
  return by_ounces ? number_in(text.ounces) * grams_per_ounce : number_in(text.grams);
}
double grams_as_printed(const Ingredient& i, Column column) {
  return grams_as_printed(i.weighed, i.step, i.shown, column);
}

/// Which end of what is known of an alkali: as stated, or the most that may be in it.
enum class Alkaline { as_stated, at_most };

double part_of(const chemistry::FormulaAlkali& alkali, Alkaline how) {
  return (how == Alkaline::at_most ? alkali.purity_high : alkali.purity).of_one();
}

/// Walks the printed list in its own order and keeps two sums in grams of KOH.
struct Account {
  double fats_take = 0;
  double alkali_gives = 0;
  double acids_take = 0;
  double printed = 0;

  double superfat() const { return 1 - (alkali_gives - acids_take) / fats_take; }
};

Account account_of(const chemistry::Formula& formula, const planning::Weighing& weighing,
                   Column column, Alkaline how = Alkaline::as_stated) {
  Account account;
  for (const auto& ingredient : weighing.ingredients) {
    const double grams = grams_as_printed(ingredient, column);
    account.printed += grams;
    if (ingredient.role == Role::fat) {
      account.fats_take +=
          grams * formula.fats[ingredient.index].saponification.typical.mg_koh_per_g() / 1000;
    } else if (ingredient.role == Role::blend) {
      for (std::size_t j = 0; j < formula.fats.size(); ++j)
        account.fats_take += grams * formula.blend->parts[j].of_one() *
                             formula.fats[j].saponification.typical.mg_koh_per_g() / 1000;
    } else if (ingredient.role == Role::extra_oil) {
      const auto& oil = formula.additives[ingredient.index].dispersal->oil;
      account.fats_take += grams * oil.saponification.typical.mg_koh_per_g() / 1000;
    } else if (ingredient.role == Role::alkali) {
      const auto& a = formula.alkalis[ingredient.index];
      const bool is_naoh = a.alkali == chemistry::Alkali::sodium_hydroxide;
      account.alkali_gives +=
          grams * part_of(a, how) * (is_naoh ? koh_g_per_mol / naoh_g_per_mol : 1);
    } else if (ingredient.role == Role::additive) {
      const auto& a = formula.additives[ingredient.index];
      if (a.contains_fat)
        account.fats_take += grams * a.contains_fat->share.of_one() *
                             a.contains_fat->fat.saponification.typical.mg_koh_per_g() / 1000;
      if (a.contains_acid)
        account.acids_take +=
            grams * a.contains_acid->share.of_one() * a.contains_acid->koh_g_per_g;
    }
  }
  return account;
}

/// The batter's account with the alkali of its share of the pot, by the pot's printed weights.
Account account_of_share(const chemistry::Formula& formula, const planning::Weighing& weighing,
                         const planning::LyePot& pot, const planning::PotShare& share,
                         Column column) {
  Account account = account_of(formula, weighing, column);
  const double of_pot = grams_as_printed(share.lye, pot.share_step, Rounded::down, column) /
                        grams_as_printed(pot.lye, pot.lye_step, Rounded::up, column);
  account.alkali_gives = 0;
  for (std::size_t k = 0; k < pot.alkalis.size(); ++k) {
    const auto& a = formula.alkalis[k];
    const bool is_naoh = a.alkali == chemistry::Alkali::sodium_hydroxide;
    account.alkali_gives +=
        of_pot *
        grams_as_printed(pot.alkalis[k].weighed, pot.alkalis[k].step, Rounded::down, column) *
        a.purity.of_one() * (is_naoh ? koh_g_per_mol / naoh_g_per_mol : 1);
  }
  return account;
}

void refuse_lye_heavy(double superfat, const Place& where) {
  if (superfat >= 0) return;
  throw UserErrorWithFacts(
      where, "the printed weights would be lye-heavy: superfat " + fixed(superfat * 100, 2) + " %",
      "nothing is shown; plan a higher superfat, use a finer scale or make a larger batch",
      {.is_lye_heavy = true});
}

/// `planned` is what the plan says of the same weights.
void require_agreement(double superfat, Share planned) {
  if (!(std::abs(superfat - planned.of_one()) <= 2e-4))
    throw std::logic_error("the superfat of the printed weights is " + exact(superfat) +
                           ", planned was " + exact(planned.of_one()));
}

/// The strongest that a solution or an alkali may be is in the plan's worst corner.
void require_strongest_is_told(const chemistry::Formula& formula,
                               const planning::Weighing& weighing) {
  const double strongest =
      account_of(formula, weighing, Column::of_the_scale, Alkaline::at_most).superfat();
  if (strongest < weighing.superfat.low.of_one() - 2e-4)
    throw std::logic_error("the superfat of the printed weights at the alkali's strongest is " +
                           exact(strongest) + ", below the plan's lowest of " +
                           exact(weighing.superfat.low.of_one()));
}

}  // namespace

void pass_lye_gate(const chemistry::Formula& formula, const planning::Weighing& weighing) {
  const Place where{formula.file, "/superfat"};
  const Account account = account_of(formula, weighing, Column::of_the_scale);
  refuse_lye_heavy(account.superfat(), where);
  require_agreement(account.superfat(), weighing.superfat.nominal);
  require_strongest_is_told(formula, weighing);
  for (const Column column : {Column::grams, Column::ounces})
    refuse_lye_heavy(account_of(formula, weighing, column).superfat(), where);
  if (!(std::abs(account.printed - weighing.batter / gram) <= 1e-6 * account.printed))
    throw std::logic_error("the printed ingredients do not add up to the printed batter");
}

void require_alarm(const planning::Weighing& weighing) {
  if (weighing.superfat.low < Share{} && weighing.alarms.empty())
    throw std::logic_error("a superfat that may come out below zero is not told");
}

void pass_pot_gate(const std::vector<planning::PotBatter>& batters, const planning::LyePot& pot,
                   const Place& where) {
  for (std::size_t i = 0; i < batters.size(); ++i) {
    const auto superfat = [&](Column column) {
      return account_of_share(batters[i].formula, batters[i].weighing, pot, pot.shares[i], column)
          .superfat();
    };
    for (const Column column : {Column::of_the_scale, Column::grams, Column::ounces})
      refuse_lye_heavy(superfat(column), where);
    require_agreement(superfat(Column::of_the_scale), pot.shares[i].superfat.nominal);
  }
}

}  // namespace brimwright::service
