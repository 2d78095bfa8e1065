#include "reports/assumptions_json.h"

#include "moulds/poured_factor.h"
#include "reports/plan_numbers.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <filesystem>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;

/// A file by its name alone, wherever it lies: what was learned outlives a folder's move.
std::string known_as(const std::string& file) {
  return std::filesystem::path(file).filename().generic_string();
}

bool is_tilted(const planning::PourTally& pour) {
  return std::any_of(pour.layers.begin(), pour.layers.end(),
                     [](const auto& layer) { return layer.tilted.has_value(); });
}

/// As measured, about the line that is poured to: volumes of one cast with what displaces it off.
Json levels_json(const planning::PourTally& pour, const moulds::Mould& mould, double factor) {
  constexpr int reach_mm = 10;
  Json levels = Json::array();
  const Volume off = mould.curve.volume_below(pour.poured_to) - pour.batter.volume_each;
  for (int mm_off = -reach_mm; mm_off <= reach_mm; ++mm_off) {
    const Length depth = pour.poured_to + mm_off * millimetre;
    const bool is_in_cavity = depth > Length{} && depth <= mould.curve.height();
    if (mm_off != 0 && !is_in_cavity) continue;
    levels.push_back(
        {{"line_off_mm", mm_off},
         {"volume_each_ml", ml((mould.curve.volume_below(depth) - off) / factor)},
         {"ml_per_mm",
          to_decimals(mould.curve.free_surface(depth) / factor * millimetre / millilitre, 4)}});
  }
  return levels;
}

Json pour_json(const planning::Run& run, const planning::PourTally& pour) {
  const moulds::Mould& mould = run.pour.mould;
  const double factor = moulds::poured_factor(mould);
  const auto& losses = run.pour.losses;
  Json json = {
      {"formula", known_as(run.pour.formula.file)},
      {"computed_g_per_ml", to_decimals(pour.batter.density_computed / gram_per_millilitre, 4)},
      {"g_per_ml", to_decimals(pour.batter.density / gram_per_millilitre, 4)},
      {"mould", known_as(mould.file)},
      {"measured_brimful_ml", ml(mould.curve.brimful() / factor)},
      {"poured_factor", to_decimals(factor, 5)},
      {"overpour_percent", per_cent(losses.overpour)},
      {"pot_g", grams(losses.pot)},
      {"jugs_g", grams(losses.jugs)},
      {"test_piece_g", grams(losses.test_piece)}};
  if (!is_tilted(pour)) json["levels"] = levels_json(pour, mould, factor);
  return json;
}

/// What she measured of the topping, before anything that is learned of it: another one is another
/// topping.
Volume sized_by(const planning::Pipe& pipe, const planning::VisibleTopping& visible) {
  if (visible.by_trials) return *visible.by_trials;
  if (!pipe.beads) return *visible.by_envelope / pipe.envelope->soap_share.of_one();
  Volume laid;
  for (const auto& move : visible.moves) laid += move.volume;
  return laid;
}

Json pipe_json(const planning::Run& run, const planning::PipeTally& pipe) {
  const auto& losses = run.pipe->losses;
  Json json = {{"formula", known_as(run.pipe->formula.file)},
               {"g_per_ml", to_decimals(pipe.batter.density / gram_per_millilitre, 4)},
               {"visible_each_ml", ml(pipe.visible_each)},
               {"sized_by_ml", ml(sized_by(*run.pipe, pipe.visible))},
               {"in_headspace_each_ml", ml(pipe.in_headspace_each)},
               {"fills_headspace_percent", per_cent(run.pipe->fills_headspace)},
               {"bowl_and_whisk_g", grams(losses.bowl_and_whisk)},
               {"bag_g", grams(losses.bag)},
               {"tip_g", grams(losses.tip)},
               {"each_bag_change_g", grams(losses.each_bag_change)}};
  if (run.pipe->beads) {
    const double hand = pipe.visible.correction_used ? pipe.visible.correction_used->correction : 1;
    json["tip"] = run.pipe->beads->tip.name;
    json["by_moves_ml"] = ml(*pipe.visible.by_beads / hand);
    json["hand_correction"] = to_decimals(hand, 5);
  }
  return json;
}

Json decorations_json(const planning::Run& run) {
  Json json = Json::array();
  for (const auto& decoration : run.decorations)
    json.push_back({{"name", decoration.name},
                    {"melt_loss_percent", per_cent(decoration.melt_loss)},
                    {"left_in_jug_g", grams(decoration.left_in_jug)}});
  return json;
}

/// Nothing where the formula does not say how long it cures: then there is no day to tell of.
Json cure_json(const planning::Run& run, const planning::PourTally& pour) {
  const auto& formula = run.pour.formula;
  if (!formula.cure) return nullptr;
  const auto& weighing = pour.batter.weighing;
  const double water = (weighing.water + weighing.water_in_acids) / weighing.batter;
  const auto& cure = pour.batter.cure;
  Json json = {
      {"sold_on_day", to_decimals(static_cast<double>(formula.cure->count()) / (24 * 60), 3)},
      {"water_percent", to_decimals(100 * water, 4)},
      {"plain_piece", !run.pipe && run.decorations.empty()}};
  if (cure) json["lost_percent"] = to_decimals(100 * (1 - cure->cured / cure->fresh) / water, 2);
  return json;
}

}  // namespace

Json assumptions_json(const planning::Run& run, const planning::Plan& plan) {
  Json json = {{"pour", pour_json(run, plan.pour)}};
  if (plan.pipe) json["pipe"] = pipe_json(run, *plan.pipe);
  json["decorations"] = decorations_json(run);
  json["cure"] = cure_json(run, plan.pour);
  return json;
}

}  // namespace brimwright::reports
