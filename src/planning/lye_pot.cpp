#include "planning/lye_pot.h"

#include "planning/scales.h"
#include "units/printing.h"
#include "units/rounding.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace brimwright::planning {
namespace {

using chemistry::Alkali;
using chemistry::Formula;

std::string in_percent(Share share, int decimals = 1) {
  return trimmed(share.in_percent(), decimals) + " %";
}
std::string shown(Mass mass, Mass step) { return fixed(mass / gram, decimals_for(step)) + " g"; }

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
                    "one pot is shared by weight only if all of it is the same lye; make two");
  for (std::size_t k = 0; k < one.alkalis.size(); ++k) {
    const auto &a = one.alkalis[k], &b = other.alkalis[k];
    if (a.alkali != b.alkali || std::abs((a.saponifies - b.saponifies).of_one()) > 1e-9)
      throw UserError(where, both + "take different alkalis, or in different proportions",
                      "one pot is shared by weight only if all of it is the same lye; make two");
    if (std::abs((a.purity - b.purity).of_one()) > 1e-9)
      throw UserError(where,
                      both + "state different purities of " + chemistry::formula_of(a.alkali) +
                          ", " + in_percent(a.purity, 2) + " and " + in_percent(b.purity, 2),
                      "weigh both from one lot and state its purity in both, or make two lyes");
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
    alkali.step = on_fine_scale(scales, alkali.weighed).step;
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

Mass pure_in(const std::vector<PotAlkali>& alkalis, const Formula& formula) {
  Mass pure;
  for (std::size_t k = 0; k < alkalis.size(); ++k)
    pure += alkalis[k].weighed * formula.alkalis[k].purity.of_one();
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

void refuse_undissolved(const LyePot& pot, const Place& where) {
  if (pot.strength.of_one() <= 0.50 + 1e-9) return;
  throw UserError(
      where,
      "the shared lye would be " + in_percent(pot.strength) + " strong, which does not dissolve",
      "a batter whose water is mostly milk or purée needs a lye of its own");
}

/// Multiples of `step` in proportion to `parts` that sum to `whole`, itself one: each is rounded
/// down, then those with the largest remainder get the steps left over.
std::vector<Mass> shared_by_steps(Mass whole, const std::vector<Mass>& parts, Mass step) {
  const Mass all = std::accumulate(parts.begin(), parts.end(), Mass{});
  std::vector<Mass> shares;
  std::vector<std::size_t> by_remainder(parts.size());
  Mass given;
  for (const Mass part : parts) {
    shares.push_back(rounded_down(whole * (part / all), step));
    given += shares.back();
  }
  std::iota(by_remainder.begin(), by_remainder.end(), std::size_t{0});
  const auto remainder = [&](std::size_t i) { return whole * (parts[i] / all) - shares[i]; };
  std::stable_sort(by_remainder.begin(), by_remainder.end(),
                   [&](std::size_t a, std::size_t b) { return remainder(a) > remainder(b); });
  const auto left = whole_nearest((whole - given) / step);
  for (std::int64_t n = 0; n < left; ++n)
    shares[by_remainder[static_cast<std::size_t>(n) % shares.size()]] += step;
  return shares;
}

/// The step in which all the shares can be weighed.
Mass share_step_of(const std::vector<Mass>& exact, const Scales& scales) {
  Mass step;
  for (const Mass share : exact) step = std::max(step, on_fine_scale(scales, share).step);
  return step;
}

/// KOH that a batter's acids use up.
Mass koh_for_acids(const PotBatter& batter) {
  Mass koh;
  for (const Ingredient& i : batter.weighing.ingredients) {
    if (i.role != Role::additive) continue;
    if (const auto& acid = batter.formula.additives[i.index].contains_acid)
      koh += i.weighed * acid->share.of_one() * acid->koh_g_per_g;
  }
  return koh;
}

Mass koh_planned(const PotBatter& batter) {
  Mass koh;
  for (const Ingredient& i : batter.weighing.ingredients) {
    if (i.role != Role::alkali) continue;
    const auto& alkali = batter.formula.alkalis[i.index];
    koh += i.weighed * alkali.purity.of_one() *
           (chemistry::molar_mass_g_per_mol(Alkali::potassium_hydroxide) /
            chemistry::molar_mass_g_per_mol(alkali.alkali));
  }
  return koh;
}

/// From superfat = 1 - (alkali - acids) / fats' need: the need stays, the alkali is `taken` of what
/// was planned.
Share superfat_with(const PotBatter& batter, double taken) {
  const Mass acids = koh_for_acids(batter), planned = koh_planned(batter);
  const double left = 1 - batter.weighing.superfat.nominal.of_one();
  return Share::of_one(1 - left * ((planned * taken - acids) / (planned - acids)));
}

PotShare share_of(const PotBatter& batter, Mass lye, const LyePot& pot, Mass in_pot,
                  const Scales& scales) {
  const double of_pot = lye / in_pot;
  PotShare share;
  share.batter = batter.formula.name;
  share.lye = lye;
  share.alkali = sum_of_role(batter.weighing, Role::alkali);
  share.alkali_taken = sum_of(pot.alkalis) * of_pot;
  const Mass lacking = plain_water(batter.weighing) - pot.water * of_pot;
  share.top_up = rounded_nearest(std::max(lacking, Mass{}), scales.fine.reads);
  if (share.top_up > scales.fine.holds) share.top_up = rounded_nearest(lacking, scales.large.reads);
  // Less than half a gram of water is what any jug keeps.
  if (share.top_up < gram / 2) share.top_up = Mass{};
  share.superfat = superfat_with(batter, share.alkali_taken / share.alkali);
  return share;
}

void refuse_lye_heavy(const PotShare& share, const LyePot& pot, const Place& where) {
  if (share.superfat >= Share{}) return;
  throw UserError(where,
                  "a share weighed to " + trimmed(pot.share_step / gram, 3) + " g would make \"" +
                      share.batter + "\" lye-heavy: superfat " + in_percent(share.superfat),
                  "weigh the shares on a finer scale, make each batter its own lye, or aim higher");
}

void remark_on_share(const PotShare& share, const PotBatter& batter, LyePot& pot) {
  const Share shift = share.superfat - batter.weighing.superfat.nominal;
  // Half a point is what a maker can tell in a soap: common practice, no source.
  if (std::abs(shift.in_percent()) > 0.5)
    pot.remarks.push_back({Severity::caution, share.batter + ": its share of lye, weighed to " +
                                                  trimmed(pot.share_step / gram, 3) +
                                                  " g, makes the superfat " +
                                                  in_percent(share.superfat) + " instead of " +
                                                  in_percent(batter.weighing.superfat.nominal) +
                                                  ". Weigh the shares on a finer scale."});
  for (const Ingredient& i : batter.weighing.ingredients)
    if (i.role == Role::additive && i.goes_into == "lye")
      pot.remarks.push_back({Severity::caution, i.name + " goes into the share of " + share.batter +
                                                    " after the lye is shared, not into the pot."});
}

void remark_on_pot(LyePot& pot) {
  std::string evaporation =
      "When the lye is cool, before it is shared: put back what has steamed "
      "off with plain water, until the lye weighs " +
      shown(pot.lye, pot.share_step);
  if (pot.full_pot) evaporation += ", " + shown(*pot.full_pot, pot.share_step) + " with its pot";
  pot.remarks.push_back({Severity::note, evaporation + ". Stir until it is clear."});
  pot.remarks.push_back(
      {Severity::note, "Share the lye by weight, each batter its own figure; never by halves."});
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
  pot.water_step = on_large_scale(scales, water).step;
  pot.water = rounded_nearest(water, pot.water_step);
  const Mass pure = pure_in(pot.alkalis, batters.front().formula);
  pot.strength = Share::of_one(pure / (pure + pot.water));
  refuse_undissolved(pot, question.where);

  std::vector<Mass> parts, exact;
  for (const PotBatter& batter : batters)
    parts.push_back(sum_of_role(batter.weighing, Role::alkali));
  const Mass in_pot = alkali + pot.water;
  for (const Mass part : parts) exact.push_back(in_pot * (part / alkali));
  pot.share_step = share_step_of(exact, scales);
  pot.lye = rounded_nearest(in_pot, pot.share_step);
  if (question.pot_tare) pot.full_pot = *question.pot_tare + pot.lye;

  const auto shares = shared_by_steps(pot.lye, parts, pot.share_step);
  remark_on_pot(pot);
  for (std::size_t i = 0; i < batters.size(); ++i) {
    pot.shares.push_back(share_of(batters[i], shares[i], pot, in_pot, scales));
    refuse_lye_heavy(pot.shares.back(), pot, question.where);
    remark_on_share(pot.shares.back(), batters[i], pot);
  }
  return pot;
}

}  // namespace brimwright::planning
