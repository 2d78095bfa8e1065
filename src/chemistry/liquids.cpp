#include "chemistry/liquids.h"

#include "chemistry/into_lye.h"
#include "chemistry/liquid_compositions.h"
#include "units/advice_text.h"
#include "units/letters.h"
#include "units/printing.h"
#include "units/wording.h"

#include <cmath>

namespace brimwright::chemistry {
namespace {

Place place_of_additives(const Formula& formula) { return {formula.file, "/additives"}; }

void refuse_one_name_twice(const Formula& formula, const Additive& one, const Additive& other) {
  if (in_small_letters(one.name) != in_small_letters(other.name)) return;
  // One colour may be in two places of a design; what is chemistry counts once.
  if (!one.contains_acid && !other.contains_acid && !one.liquid && !other.liquid) return;
  throw UserError(place_of_additives(formula), "\"" + one.name + "\" is listed twice",
                  "put all of it in one place, so that its acid, fat and water count once");
}

void refuse_one_acid_twice(const Formula& formula, const Additive& one, const Additive& other) {
  if (!one.contains_acid || !other.contains_acid) return;
  if (one.contains_acid->name.empty()) return;
  if (one.contains_acid->name != other.contains_acid->name) return;
  if (one.liquid.has_value() == other.liquid.has_value()) return;
  const Additive& liquid = one.liquid ? one : other;
  const Additive& additive = one.liquid ? other : one;
  throw UserError(place_of_additives(formula),
                  "\"" + one.contains_acid->name + "\" counts twice: in the liquid \"" +
                      liquid.name + "\" and in \"" + additive.name + "\"",
                  "if it is the same acid, leave one out; if both go in, give their acid together "
                  "in one of them");
}

void refuse_fatty_acid_twice(const Formula& formula, const Additive& additive) {
  if (!additive.contains_fat || additive.contains_fat->fat.kind != "free_fatty_acid") return;
  for (const FormulaFat& fat : formula.fats)
    if (fat.fat.id == additive.contains_fat->fat.id)
      throw UserError(
          place_of_additives(formula),
          "\"" + fat.fat.id + "\" counts twice: among the fats and in \"" + additive.name + "\"",
          "keep it among the fats, with its share of them");
}

/// Additives that carry a Liquid, with their mass for each gram of fats.
template <class Say>
void for_each_liquid(const Formula& formula, const Proportions& per_fat, Say say) {
  for (std::size_t i = 0; i < formula.additives.size(); ++i)
    if (formula.additives[i].liquid) say(formula.additives[i], per_fat.additives[i]);
}

void caution_on_lye_liquid(const Additive& additive, std::vector<Remark>& cautions) {
  const Liquid& liquid = *additive.liquid;
  if (additive.contains_fat && additive.contains_fat->share >= 1 * percent)
    cautions.push_back({Severity::note, additive.name +
                                            " begins to turn into soap in the lye: it "
                                            "thickens and may curdle; keep it cold and sieve it "
                                            "into the fats (common practice)."});
  if (liquid.salt >= 5 * percent)
    cautions.push_back({Severity::caution,
                        "The salt in " + additive.name +
                            " leaves less room for the alkali: dissolve the alkali in plain water "
                            "first and add the brine cold, or some of either stays undissolved."});
}

/// The lye on the bench is stronger than the batter's while some of its water is still in the jug
/// of milk.
void tell_pot_strength(const Formula& formula, const Proportions& per_fat,
                       std::vector<Remark>& cautions) {
  const Share pot = per_fat.pot_strength, batter = per_fat.lye_strength;
  if ((pot - batter).in_percent() < 0.5) return;
  cautions.push_back(
      {Severity::note, formula.name + ": the lye solution is " + in_percent(pot) +
                           " strong in its pot and " + in_percent(batter) +
                           " in the batter, once all that goes into it has brought its water."});
}

void caution_on_sugar(const Formula& formula, const Proportions& per_fat,
                      std::vector<Remark>& cautions) {
  double sugar = 0;
  for_each_liquid(formula, per_fat, [&](const Additive& additive, double mass) {
    sugar += mass * additive.liquid->sugar.of_one();
  });
  // 2 % of the fats: common practice, no source.
  if (sugar > 0.02)
    cautions.push_back({Severity::caution,
                        formula.name + ": the liquids bring " + in_percent(Share::of_one(sugar)) +
                            " of the fats as sugar: the batter heats up, may crack or volcano, and "
                            "turns tan. Pour cool and do not insulate."});
}

void caution_on_salt(const Formula& formula, const Proportions& per_fat,
                     std::vector<Remark>& cautions) {
  double salt = 0;
  for_each_liquid(formula, per_fat, [&](const Additive& additive, double mass) {
    salt += mass * additive.liquid->salt.of_one();
  });
  // 5 % of the fats: common practice, no source.
  if (salt > 0.05)
    cautions.push_back(
        {Severity::note, formula.name + ": the liquids bring " + in_percent(Share::of_one(salt)) +
                             " of the fats as salt: the bar hardens within hours and lathers less; "
                             "cut it early."});
}

}  // namespace

void settle_liquids(Formula& formula) {
  // Each round changes the masses by a few hundredths of the round before (fat's share x its need
  // of lye x water for that lye), so 100 rounds reach the last digit even where it is a half.
  for (int round = 0; round < 100; ++round) {
    const Proportions p = proportions(formula);
    const double water = p.water + p.water_in_liquids + p.water_in_solutions;
    double moved = 0;
    for (Additive& additive : formula.additives) {
      if (!additive.liquid || !additive.liquid->replaces) continue;
      const double mass =
          additive.liquid->replaces->of_one() * water / additive.liquid->water.of_one();
      moved = std::max(moved, std::abs(mass - std::get<Share>(additive.rate.amount).of_one()));
      additive.rate = {Share::of_one(mass), RateBasis::fats};
    }
    if (!(moved > 1e-15)) return;
  }
}

void refuse_starved_lye(const Proportions& per_fat, const Place& where) {
  const double water = per_fat.water + per_fat.water_in_liquids;
  if (per_fat.water < -1e-12)
    throw UserError(where,
                    "the liquids bring " +
                        in_percent(Share::of_one(per_fat.water_in_liquids / water)) +
                        " of the formula's water, more than all of it",
                    "lower what they replace, or give the formula more water");
  // Without the acids' water: what the formula calls its water must dissolve the alkali.
  const Share strength = per_fat.stated_pot_strength;
  if (strength.of_one() <= 0.50 + 1e-9) return;
  throw UserError(
      where,
      "the liquids for the batter leave so little water in the lye solution that it would be " +
          in_percent(strength) + " strong, which does not dissolve",
      "at 50 % the alkali needs its own weight of water: replace at most " +
          most_text(Share::of_one(std::max(0.0, (water - per_fat.pure_alkali) / water))) +
          " of the water by liquids that go into the batter");
}

void refuse_counted_twice(const Formula& formula) {
  const auto& all = formula.additives;
  for (std::size_t i = 0; i < all.size(); ++i) {
    refuse_fatty_acid_twice(formula, all[i]);
    for (std::size_t j = i + 1; j < all.size(); ++j) {
      refuse_one_name_twice(formula, all[i], all[j]);
      refuse_one_acid_twice(formula, all[i], all[j]);
    }
  }
}

std::vector<Remark> liquid_cautions(const Formula& formula, const Proportions& per_fat) {
  std::vector<Remark> cautions = cautions_into_lye(formula);
  for_each_liquid(formula, per_fat, [&](const Additive& additive, double) {
    if (additive.goes_into == GoesInto::lye) caution_on_lye_liquid(additive, cautions);
    const std::string& source = additive.liquid->source;
    if (source.find("not checked") != std::string::npos ||
        source.find("from memory") != std::string::npos)
      cautions.push_back(
          {Severity::note, "The composition of " + additive.name +
                               " is not checked at the source; your label's figures are better."});
  });
  tell_pot_strength(formula, per_fat, cautions);
  caution_on_sugar(formula, per_fat, cautions);
  caution_on_salt(formula, per_fat, cautions);
  return cautions;
}

}  // namespace brimwright::chemistry
