#include "planning/lye_pot.h"

#include "planning/scales.h"
#include "planning/share_superfat.h"
#include "planning/weighing_remarks.h"
#include "units/complaint_facts.h"
#include "units/printing.h"
#include "units/rounding.h"
#include "units/share_of.h"
#include "units/weight_text.h"
#include "units/wording.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace brimwright::planning {
namespace {

using chemistry::Formula;

Mass sum_of_role(const Weighing& weighing, Role role) {
  Mass sum;
  for (const Ingredient& i : weighing.ingredients)
    if (i.role == role) sum += i.weighed;
  return sum;
}

/// Plain water that a batter's lye asks for, before its own scale rounded it: batters of one
/// strength are told by it.
Mass plain_water(const Weighing& weighing) {
  Mass sum;
  for (const Ingredient& i : weighing.ingredients)
    if (i.role == Role::water) sum += i.exact;
  return sum;
}

/// A lye of another make-up is another lye, whatever its strength.
void refuse_other_alkali(const Formula& one, const Formula& other, const Place& where) {
  const std::string both = "\"" + one.name + "\" and \"" + other.name + "\" ";
  if (one.alkalis.size() != other.alkalis.size())
    throw UserError(where, both + "take different alkalis",
                    "one pot can be shared only if both need the same lye solution; make two pots");
  for (std::size_t k = 0; k < one.alkalis.size(); ++k) {
    const auto &a = one.alkalis[k], &b = other.alkalis[k];
    if (a.alkali != b.alkali || std::abs((a.share - b.share).of_one()) > 1e-9)
      throw UserError(
          where, both + "take different alkalis, or in different proportions",
          "one pot can be shared only if both need the same lye solution; make two pots");
    if (std::abs((a.purity - b.purity).of_one()) > 1e-9)
      throw UserError(where,
                      both + "state different purities of " + chemistry::formula_of(a.alkali) +
                          ", " + in_percent(a.purity, 2) + " and " + in_percent(b.purity, 2),
                      "weigh both from one lot and give its purity in both, or make two pots");
  }
}

std::vector<PotAlkali> alkalis_together(const std::vector<PotBatter>& batters,
                                        const Scales& scales) {
  std::vector<PotAlkali> together(batters.front().formula.alkalis.size());
  for (const PotBatter& batter : batters)
    for (const Ingredient& i : batter.weighing.ingredients)
      if (i.role == Role::alkali) {
        together[i.index].name = i.name;
        together[i.index].weighed += i.weighed;
      }
  for (PotAlkali& alkali : together) {
    const auto [step, weighings] = on_fine_scale(scales, alkali.weighed);
    alkali.step = step;
    alkali.weighings = weighings;
    // Down, as for a single batter: too much alkali cannot be taken out again.
    alkali.weighed = rounded_down(alkali.weighed, alkali.step);
  }
  return together;
}

Mass sum_of(const std::vector<PotAlkali>& alkalis) {
  Mass sum;
  for (const PotAlkali& alkali : alkalis) sum += alkali.weighed;
  return sum;
}

Mass alkali_asked(const std::vector<PotBatter>& batters) {
  Mass sum;
  for (const PotBatter& batter : batters) sum += sum_of_role(batter.weighing, Role::alkali);
  return sum;
}

Mass pure_in(const std::vector<PotAlkali>& alkalis, const Formula& formula) {
  Mass pure;
  for (std::size_t k = 0; k < alkalis.size(); ++k)
    pure += formula.alkalis[k].purity * alkalis[k].weighed;
  return pure;
}

/// Plain water for each gram of alkali of the batter that takes the strongest lye.
double least_water_per_alkali(const std::vector<PotBatter>& batters) {
  double least = INFINITY;
  for (const PotBatter& batter : batters)
    least =
        std::min(least, plain_water(batter.weighing) / sum_of_role(batter.weighing, Role::alkali));
  return least;
}

/// The step nearest to `exact`, or the next above in which the alkali dissolves.
Mass pot_water(Mass exact, Mass pure, Mass step, const Place& where) {
  if (pure > exact + 1e-9 * pure)
    throw UserError(where,
                    "the shared lye solution would be " +
                        in_percent(Share::of_one(pure / (pure + exact)), 2) +
                        " strong, which does not dissolve",
                    "a batter whose water is mostly milk or purée needs a lye solution of its own: "
                    "take \"lye_pot\" out");
  const Mass nearest = rounded_nearest(exact, step);
  return nearest >= pure - 1e-9 * pure ? nearest : rounded_up(pure, step);
}

/// The step in which all the shares can be weighed.
Mass share_step_of(const std::vector<Mass>& exact, const Scales& scales) {
  Mass step;
  for (const Mass share : exact) step = std::max(step, on_fine_scale(scales, share).step);
  return step;
}

std::vector<WeighedPart> parts_of(const std::vector<PotAlkali>& alkalis) {
  std::vector<WeighedPart> all;
  for (const PotAlkali& alkali : alkalis)
    all.push_back({alkali.weighed, alkali.step, alkali.weighings});
  return all;
}

PotShare share_of(const PotBatter& batter, Mass lye, const LyePot& pot, const Scales& scales) {
  const double of_pot = lye / pot.lye;
  PotShare share;
  share.batter = batter.called.empty() ? batter.formula.name : batter.called;
  share.lye = lye;
  share.alkali = sum_of_role(batter.weighing, Role::alkali);
  share.alkali_taken = sum_of(pot.alkalis) * of_pot;
  const Mass in_share = lye - share.alkali_taken;
  const Mass lacking = plain_water(batter.weighing) - in_share;
  share.top_up_step = on_fine_scale(scales, lacking).step;
  share.top_up = rounded_nearest(std::max(lacking, Mass{}), share.top_up_step);
  // Less than half a gram of water is what any jug keeps.
  if (share.top_up < gram / 2) share.top_up = Mass{};
  share.superfat = share_superfat(batter.formula, batter.weighing, parts_of(pot.alkalis),
                                  {lye, pot.share_step}, {pot.lye, pot.lye_step});
  share.alarms = superfat_alarms(share.superfat, share.batter + " from the shared lye solution");
  return share;
}

void refuse_no_share(Mass share, const PotBatter& batter, const LyePot& pot, const Place& where) {
  if (share > Mass{}) return;
  throw UserError(where,
                  "the share of \"" + batter.formula.name + "\" is less than the scale's step of " +
                      on_scale(pot.share_step, pot.share_step),
                  "weigh the shares on a finer scale, or make a lye solution for each batter");
}

void refuse_lye_heavy(const PotShare& share, const LyePot& pot, const Place& where) {
  if (share.superfat.nominal >= Share{}) return;
  throw UserErrorWithFacts(where,
                           "a share weighed to " + on_scale(pot.share_step, pot.share_step) +
                               " would make \"" + share.batter + "\" lye-heavy: superfat " +
                               chemistry::lowest_in_words(share.superfat.nominal),
                           "weigh the shares on a finer scale, make a lye solution for each "
                           "batter, or plan a higher superfat",
                           {.is_lye_heavy = true});
}

void remark_on_share(const PotShare& share, const PotBatter& batter, LyePot& pot) {
  const Share shift = share.superfat.nominal - batter.weighing.superfat.nominal;
  // Half a point is what a maker can tell in a soap: common practice, no source.
  if (std::abs(shift.in_percent()) > 0.5)
    pot.remarks.push_back(
        {Severity::caution, share.batter + ": its share of the lye solution, weighed to " +
                                on_scale(pot.share_step, pot.share_step) + ", makes the superfat " +
                                in_percent(share.superfat.nominal) + " instead of " +
                                in_percent(batter.weighing.superfat.nominal) +
                                ". Weigh the shares on a finer scale."});
  for (const Ingredient& i : batter.weighing.ingredients)
    if (i.role == Role::additive && i.goes_into == "lye")
      pot.remarks.push_back(
          {Severity::caution, i.name + " goes into the share of " + share.batter +
                                  " after the lye solution is shared, not into the pot."});
}

void remark_on_pot(LyePot& pot) {
  std::string evaporation =
      "When the lye solution has cooled, before it is shared: top it up with plain water (some has "
      "evaporated) until it weighs " +
      on_scale(pot.lye, pot.lye_step);
  if (pot.full_pot)
    evaporation += ", " + on_scale(*pot.full_pot, pot.lye_step, Rounded::up) + " with its pot";
  pot.remarks.push_back({Severity::note, evaporation + ". Stir until it is clear."});
  pot.remarks.push_back({Severity::note,
                         "Share the lye solution by weight, each batter its own figure; never half "
                         "and half. Shares are rounded down, as alkali is: " +
                             on_scale(pot.left, pot.share_step) +
                             " of lye solution stays in the pot and goes into no batter."});
}

}  // namespace

LyePot lye_pot(const std::vector<PotBatter>& batters, const Scales& scales,
               const PotQuestion& question) {
  assert(!batters.empty());
  for (const PotBatter& batter : batters)
    refuse_other_alkali(batters.front().formula, batter.formula, question.where);

  LyePot pot;
  pot.alkalis = alkalis_together(batters, scales);
  const Mass alkali = sum_of(pot.alkalis);
  const Mass water = alkali * least_water_per_alkali(batters);
  const Mass pure = pure_in(pot.alkalis, batters.front().formula);
  pot.water_step = on_large_scale(scales, water).step;
  pot.water = pot_water(water, pure, pot.water_step, question.where);
  pot.strength = Share::of_one(pure / (pure + pot.water));
  const Mass with_pot = alkali + pot.water + question.pot_tare.value_or(Mass{});
  pot.lye_step = on_fine_scale(scales, with_pot).step;
  // Up: a lye made up to less than went into it would be stronger than reckoned.
  pot.lye = rounded_up(alkali + pot.water, pot.lye_step);
  if (question.pot_tare) pot.full_pot = *question.pot_tare + pot.lye;

  const Mass asked = alkali_asked(batters);
  std::vector<Mass> exact;
  for (const PotBatter& batter : batters)
    exact.push_back(pot.lye * (sum_of_role(batter.weighing, Role::alkali) / asked));
  pot.share_step = share_step_of(exact, scales);
  pot.left = pot.lye;
  for (std::size_t i = 0; i < batters.size(); ++i) {
    const Mass lye = rounded_down(exact[i], pot.share_step);
    refuse_no_share(lye, batters[i], pot, question.where);
    pot.left -= lye;
    pot.shares.push_back(share_of(batters[i], lye, pot, scales));
    refuse_lye_heavy(pot.shares.back(), pot, question.where);
    remark_on_share(pot.shares.back(), batters[i], pot);
  }
  remark_on_pot(pot);
  return pot;
}

}  // namespace brimwright::planning
