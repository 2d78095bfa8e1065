#include "planning/lye_pot_workings.h"

#include "chemistry/lye_workings.h"
#include "units/printing.h"
#include "units/rounding.h"
#include "units/weight_text.h"

#include <algorithm>
#include <string>

namespace brimwright::planning {
namespace {

std::string never_more(Mass alkali) { return in_figures(alkali, Rounded::down); }

/// What of one kind a batter's own weighing has, before or after rounding.
Mass sum_of(const PotBatter& batter, Role role, Mass Ingredient::*mass) {
  Mass sum;
  for (const Ingredient& i : batter.weighing.ingredients)
    if (i.role == role) sum += i.*mass;
  return sum;
}
Mass alkali_of(const PotBatter& batter) {
  return sum_of(batter, Role::alkali, &Ingredient::weighed);
}
/// Before its own scale rounded it.
Mass water_of(const PotBatter& batter) { return sum_of(batter, Role::water, &Ingredient::exact); }

Working alkali_working(const std::vector<PotBatter>& batters, const LyePot& pot, std::size_t k) {
  std::vector<std::string> terms;
  std::vector<Given> with;
  for (std::size_t b = 0; b < batters.size(); ++b)
    for (const Ingredient& i : batters[b].weighing.ingredients)
      if (i.role == Role::alkali && i.index == k) {
        terms.push_back(never_more(i.weighed));
        with.push_back({"for " + pot.shares[b].batter, terms.back(), "its own weighing"});
      }
  const PotAlkali& alkali = pot.alkalis[k];
  return {.of = "alkalis." + std::to_string(k) + ".g",
          .formula = "alkali in the pot = what each batter's own weighing takes, added up",
          .with = with,
          .sum = added(terms),
          .rounded = to_step(Rounded::down, alkali.step),
          .comes_to = on_scale(alkali.weighed, alkali.step, Rounded::down)};
}

/// Of the batter that takes the strongest lye.
const PotBatter& strongest(const std::vector<PotBatter>& batters) {
  return *std::min_element(batters.begin(), batters.end(), [](const auto& a, const auto& b) {
    return water_of(a) / alkali_of(a) < water_of(b) / alkali_of(b);
  });
}

std::string all_alkali(const LyePot& pot) {
  std::vector<std::string> terms;
  for (const PotAlkali& alkali : pot.alkalis) terms.push_back(never_more(alkali.weighed));
  return terms.size() == 1 ? terms.front() : in_brackets(terms);
}

Working water_working(const std::vector<PotBatter>& batters, const LyePot& pot) {
  const PotBatter& least = strongest(batters);
  Mass alkali;
  for (const PotAlkali& one : pot.alkalis) alkali += one.weighed;
  const Mass exact = alkali * (water_of(least) / alkali_of(least));
  Working working{.of = "water_g",
                  .formula =
                      "water in the pot = all the alkali × the least plain water for a gram "
                      "of alkali that one of the batters takes, before its own scale "
                      "rounded it",
                  .rounded = to_step(Rounded::nearest, pot.water_step),
                  .comes_to = on_scale(pot.water, pot.water_step)};
  for (std::size_t b = 0; b < batters.size(); ++b)
    working.with.push_back({"for " + pot.shares[b].batter,
                            in_figures(water_of(batters[b])) + " of water",
                            "with " + never_more(alkali_of(batters[b])) + " of alkali"});
  working.sum =
      all_alkali(pot) + " × " + in_figures(water_of(least)) + " ÷ " + never_more(alkali_of(least));
  if (pot.water == rounded_nearest(exact, pot.water_step)) return working;
  working.formula += "; up to the next step in which the alkali dissolves";
  working.rounded = to_step(Rounded::up, pot.water_step);
  return working;
}

std::vector<Working> lye_workings(const std::vector<PotBatter>& batters, const LyePot& pot,
                                  const PotQuestion& question) {
  std::vector<std::string> pure;
  for (std::size_t k = 0; k < pot.alkalis.size(); ++k)
    pure.push_back(never_more(pot.alkalis[k].weighed) + " × " +
                   in_figures(batters.front().formula.alkalis[k].purity));
  std::vector<Given> with = {{"water", in_figures(pot.water)}};
  for (const PotAlkali& alkali : pot.alkalis)
    with.push_back({alkali.name, never_more(alkali.weighed)});
  std::vector<Working> all = {
      {.of = "lye_g",
       .formula = "lye solution in the pot = alkali + water, to the step that its scale shows",
       .with = with,
       .sum = all_alkali(pot) + " + " + in_figures(pot.water),
       .rounded = to_step(Rounded::up, pot.lye_step),
       .comes_to = on_scale(pot.lye, pot.lye_step, Rounded::up)},
      {.of = "strength_percent",
       .formula = "strength = pure alkali ÷ (pure alkali + water)",
       .with = with,
       .sum = in_brackets(pure) + " ÷ (" + added(pure) + " + " + in_figures(pot.water) + ")",
       .comes_to = in_figures(pot.strength)}};
  if (pot.full_pot)
    all.push_back({.of = "full_pot_g",
                   .formula = "pot and lye solution = the empty pot + lye solution in the pot",
                   .with = {{"the empty pot", in_figures(*question.pot_tare), "the run"},
                            {"lye solution in the pot", in_figures(pot.lye)}},
                   .sum = in_figures(*question.pot_tare) + " + " + in_figures(pot.lye),
                   .comes_to = on_scale(*pot.full_pot, pot.lye_step, Rounded::up)});
  std::string left = in_figures(pot.lye);
  for (const PotShare& share : pot.shares) left += " − " + in_figures(share.lye);
  all.push_back({.of = "left_g",
                 .formula = "left in the pot = lye solution − all shares",
                 .sum = left,
                 .comes_to = on_scale(pot.left, pot.share_step)});
  return all;
}

Working share_working(const std::vector<PotBatter>& batters, const LyePot& pot, std::size_t b) {
  std::vector<std::string> asked;
  Working working{.of = "lye_g",
                  .formula =
                      "share = lye solution in the pot × this batter's alkali ÷ all the alkali "
                      "that the batters' own weighings ask for; down, as alkali is",
                  .with = {{"lye solution in the pot", in_figures(pot.lye)}},
                  .rounded = to_step(Rounded::down, pot.share_step),
                  .comes_to = on_scale(pot.shares[b].lye, pot.share_step, Rounded::down)};
  for (std::size_t other = 0; other < batters.size(); ++other) {
    asked.push_back(never_more(alkali_of(batters[other])));
    working.with.push_back(
        {"alkali for " + pot.shares[other].batter, asked.back(), "its own weighing"});
  }
  working.sum = in_figures(pot.lye) + " × " + asked[b] + " ÷ " + in_brackets(asked);
  return working;
}

Working top_up_working(const PotBatter& batter, const LyePot& pot, const PotShare& share) {
  Working working{.of = "top_up_g",
                  .formula =
                      "plain water to add = the water that this batter takes − the water that is "
                      "in its share, both before rounding; under half a gram is left out",
                  .with = {{"water that it takes", in_figures(water_of(batter)),
                            "its own weighing, before rounding"},
                           {"its share of the lye solution", in_figures(share.lye)},
                           {"lye solution in the pot", in_figures(pot.lye)}},
                  .rounded = to_step(Rounded::nearest, share.top_up_step),
                  .comes_to = on_scale(share.top_up, share.top_up_step)};
  if (share.top_up > Mass{})
    working.sum = in_figures(water_of(batter)) + " − (" + in_figures(share.lye) + " − " +
                  all_alkali(pot) + " × " + in_figures(share.lye) + " ÷ " + in_figures(pot.lye) +
                  ")";
  return working;
}

/// As though each alkali had been weighed for this batter alone.
Working superfat_working(const PotBatter& batter, const LyePot& pot, const PotShare& share) {
  Reacting reacting = planning::reacting(batter.formula, batter.weighing.ingredients);
  reacting.alkalis.clear();
  for (std::size_t k = 0; k < pot.alkalis.size(); ++k) {
    const auto& alkali = batter.formula.alkalis[k];
    reacting.alkalis.push_back({alkali.alkali, alkali.purity, alkali.purity_low, alkali.purity_high,
                                pot.alkalis[k].weighed * (share.lye / pot.lye),
                                pot.alkalis[k].step});
  }
  Working working = chemistry::superfat_working(
      batter.formula, {reacting.fats, reacting.alkalis, reacting.acids}, share.superfat);
  working.of = "superfat_percent";
  working.formula += "; alkali weighed = alkali in the pot × share ÷ lye solution in the pot";
  working.with.push_back(
      {"with a lye solution of its own", in_figures(batter.weighing.superfat.nominal)});
  working.comes_to = in_figures(share.superfat.nominal);
  return working;
}

}  // namespace

std::vector<Working> lye_pot_workings(const std::vector<PotBatter>& batters, const LyePot& pot,
                                      const PotQuestion& question) {
  std::vector<Working> all;
  for (std::size_t k = 0; k < pot.alkalis.size(); ++k)
    all.push_back(alkali_working(batters, pot, k));
  all.push_back(water_working(batters, pot));
  append_at(all, "", lye_workings(batters, pot, question));
  for (std::size_t b = 0; b < batters.size(); ++b)
    append_at(all, "shares." + std::to_string(b),
              {share_working(batters, pot, b), top_up_working(batters[b], pot, pot.shares[b]),
               superfat_working(batters[b], pot, pot.shares[b])});
  return all;
}

}  // namespace brimwright::planning
