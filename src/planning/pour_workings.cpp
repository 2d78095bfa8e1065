#include "planning/pour_workings.h"

#include "chemistry/density_workings.h"
#include "chemistry/heat_workings.h"
#include "moulds/mould_workings.h"
#include "planning/batch_trials.h"
#include "planning/rate_working.h"
#include "planning/weighing_workings.h"
#include "units/printing.h"
#include "units/weight_text.h"

#include <algorithm>
#include <string>

namespace brimwright::planning {
namespace {

constexpr auto the_run = "the run";

std::vector<Given> losses_of(const PourLosses& losses) {
  return {{"overpour", in_figures(losses.overpour) + " of what is in the pieces", the_run},
          {"pot", in_figures(losses.pot), the_run},
          {"jugs", in_figures(losses.jugs), the_run},
          {"test piece", in_figures(losses.test_piece), the_run}};
}

Working volume_each(const Run& run, const PourTally& pour) {
  const Volume to_line = run.pour.mould.curve.volume_below(pour.line);
  Working working{
      .of = "volume_each_ml",
      .formula = "poured into each = volume below the pour line",
      .with = {{"pour line", in_figures(pour.line), "above the lowest point"},
               {"volume below it", in_figures(to_line), "level curve of " + run.pour.mould.name}},
      .sum = in_figures(to_line),
      .comes_to = in_figures(pour.batter.volume_each),
      .sources = moulds::measured_by(run.pour.mould)};
  if (pour.displaced > Volume{}) {
    working.formula += " − what embeds displace";
    working.with.push_back({"displaced by embeds", in_figures(pour.displaced)});
    working.sum += " − " + in_figures(pour.displaced);
  }
  return working;
}

Working one_millimetre(const Run& run, const PourTally& pour) {
  return {.of = "ml_per_mm",
          .formula = "one millimetre = area of the free surface at the pour line × 1 mm",
          .with = {{"free surface", in_figures(pour.surface),
                    "slope of the level curve at " + in_figures(pour.line)},
                   {"to the brim", in_figures(pour.headspace)}},
          .sum = in_figures(pour.surface) + " × 1 mm",
          .comes_to = in_figures(pour.surface * millimetre),
          .sources = moulds::measured_by(run.pour.mould)};
}

/// What a layer asks for before its jug is rounded.
Mass asked_for(const Run& run, const PourTally& pour, std::size_t layer, std::int64_t casts) {
  const PourLosses& losses = run.pour.losses;
  return static_cast<double>(casts) * pour.layers[layer].mass_each *
             (1 + losses.overpour.of_one()) +
         losses.jugs / static_cast<double>(pour.layers.size());
}

/// As fill_jugs has it: what a jug's rounding leaves over goes into the next one.
Working layer_working(const Run& run, const PourTally& pour, std::size_t k, std::int64_t casts) {
  const LayerTally& layer = pour.layers[k];
  const PourLosses& losses = run.pour.losses;
  Mass over;
  for (std::size_t i = 0; i < k; ++i) over += asked_for(run, pour, i, casts) - pour.layers[i].mass;
  Working working{.of = "layers." + std::to_string(k) + ".g",
                  .formula =
                      "weigh for a layer = mass in one piece × pieces cast × (1 + overpour) "
                      "+ its part of what stays in the jugs",
                  .with = {{"from", in_figures(layer.from)},
                           {"to", in_figures(layer.to)},
                           {"volume in one", in_figures(layer.volume_each)},
                           {"mass in one", in_figures(layer.mass_each)},
                           {"cast", in_figures(casts)},
                           {"overpour", in_figures(losses.overpour), the_run},
                           {"jugs", in_figures(losses.jugs), the_run}},
                  .sum = in_figures(layer.mass_each) + " × " + in_figures(casts) + " × (1 + " +
                         in_figures(losses.overpour) + ") + " + in_figures(losses.jugs) + " ÷ " +
                         std::to_string(pour.layers.size()),
                  .rounded = to_step(Rounded::down, layer.step),
                  .comes_to = on_scale(layer.mass, layer.step)};
  if (k == 0) return working;
  working.formula += " + what rounding left over of the layers below";
  working.with.push_back({"left over below", in_figures(over)});
  working.sum += " + " + in_figures(over);
  return working;
}

Working mass_in_layer(const PourTally& pour, std::size_t k) {
  const LayerTally& layer = pour.layers[k];
  return {.of = "layers." + std::to_string(k) + ".mass_each_g",
          .formula = "a layer in one piece = its volume × density of the batter",
          .with = {{"volume in one", in_figures(layer.volume_each)},
                   {"density", in_figures(pour.batter.density)}},
          .sum = in_figures(layer.volume_each) + " × " + in_figures(pour.batter.density),
          .comes_to = in_figures(layer.mass_each)};
}

Working colour_working(const Run& run, const PourTally& pour, std::size_t k, std::size_t c) {
  const LayerColour& colour = run.pour.layers[k].colours[c];
  const LayerTally& layer = pour.layers[k];
  const Weighing& weighing = pour.batter.weighing;
  const RateWorking rate = rate_working(colour.rate, colour.bulk_density, the_run);
  Working working{.of = "layers." + std::to_string(k) + ".colours." + std::to_string(c) + ".g",
                  .formula =
                      "powder = rate × what the rate is of: this layer's batter, or the "
                      "fats in it (layer × fats ÷ batter); a rate by the spoon × bulk "
                      "density",
                  .with = rate.given,
                  .sum = rate.factor + " × " + in_figures(layer.mass),
                  .rounded = to_step(Rounded::nearest, layer.colours[c].step),
                  .comes_to = on_scale(layer.colours[c].weighed, layer.colours[c].step)};
  working.with.push_back({"this layer's batter", in_figures(layer.mass)});
  working.with.push_back({"fats of the base", in_figures(weighing.fats)});
  working.with.push_back({"all of the base", in_figures(weighing.batter)});
  if (colour.rate.of == RateBasis::fats)
    working.sum += " × " + in_figures(weighing.fats) + " ÷ " + in_figures(weighing.batter);
  return working;
}

std::vector<Working> layer_workings(const Run& run, const PourTally& pour, std::int64_t casts) {
  std::vector<Working> all;
  for (std::size_t k = 0; k < pour.layers.size(); ++k) {
    all.push_back(mass_in_layer(pour, k));
    all.push_back(layer_working(run, pour, k, casts));
    for (std::size_t c = 0; c < pour.layers[k].colours.size(); ++c)
      all.push_back(colour_working(run, pour, k, c));
  }
  return all;
}

}  // namespace

std::vector<Working> batter_workings(const BatterTally& batter, std::int64_t casts,
                                     const std::vector<Given>& lost) {
  const Mass make = batter.weighing.batter;
  return {{.of = "mass_each_g",
           .formula = "mass in each = volume in each × density of the batter",
           .with = {{"volume in each", in_figures(batter.volume_each)},
                    {"density", in_figures(batter.density)}},
           .sum = in_figures(batter.volume_each) + " × " + in_figures(batter.density),
           .comes_to = in_figures(batter.mass_each)},
          {.of = "in_pieces_g",
           .formula = "in the pieces = mass in each × cast",
           .with = {{"mass in each", in_figures(batter.mass_each)}, {"cast", in_figures(casts)}},
           .sum = in_figures(batter.mass_each) + " × " + in_figures(casts),
           .comes_to = in_figures(batter.in_pieces)},
          {.of = "lost_g",
           .formula = "losses, with what rounding to the scales adds = batter to make − in the "
                      "pieces",
           .with = lost,
           .sum = in_figures(make) + " − " + in_figures(batter.in_pieces),
           .comes_to = in_figures(batter.lost)}};
}

Working make_working(const BatterTally& batter, const std::vector<Given>& lost, Mass asked) {
  Working working{.of = "make_g",
                  .formula =
                      "batter to make = in the pieces + losses, then the sum of what is "
                      "weighed, every ingredient rounded to its scale",
                  .with = {{"in the pieces", in_figures(batter.in_pieces)}},
                  .comes_to = in_figures(batter.weighing.batter)};
  working.with.insert(working.with.end(), lost.begin(), lost.end());
  working.with.push_back({"asked for", in_figures(asked), "before rounding"});
  std::vector<std::string> terms;
  for (const Ingredient& i : batter.weighing.ingredients) terms.push_back(in_figures(i.weighed));
  working.sum = added(terms);
  return working;
}

std::vector<Working> pour_workings(const Run& run, const PourTally& pour, std::int64_t casts) {
  const chemistry::Formula& formula = run.pour.formula;
  const auto lost = losses_of(run.pour.losses);
  const auto& per_fat = pour.batter.per_fat;
  std::vector<Working> all{volume_each(run, pour), one_millimetre(run, pour)};
  append_at(all, "brimful_ml", {moulds::brimful_working(run.pour.mould)});
  append_at(all, "density_g_per_ml", {chemistry::density_working(formula, per_fat)});
  append_at(all, "plain_density_computed_g_per_ml",
            {chemistry::computed_density_working(formula, per_fat)});
  append_at(all, "", batter_workings(pour.batter, casts, lost));
  all.push_back(make_working(pour.batter, lost, base_to_make(run, pour, casts)));
  append_at(all, "", weighing_workings(formula, per_fat, pour.batter.weighing));
  append_at(all, "heat",
            chemistry::heat_workings(pour.batter.heat,
                                     run.pour.temperatures.value_or(chemistry::HeatQuestion{}),
                                     pour.batter.weighing.pot_strength));
  append_at(all, "", layer_workings(run, pour, casts));
  return all;
}

}  // namespace brimwright::planning
