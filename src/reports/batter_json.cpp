#include "reports/batter_json.h"

#include "reports/label_report.h"
#include "reports/lye_report.h"
#include "reports/plan_numbers.h"
#include "reports/weight_json.h"
#include "units/share_of.h"

#include <nlohmann/json.hpp>

#include <cmath>
#include <string>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;
using planning::Ingredient;

/// As the ingredient that it is: never rounded up.
double alkali_grams(Mass mass) {
  return to_decimals(std::floor(mass / gram * 1000 + 1e-6) / 1000, 3);
}

/// "fat", "alkali", "water", ...: what is told of an ingredient beside its name, which may be
/// anything.
std::string role_of(const Ingredient& ingredient, const chemistry::Formula& formula) {
  switch (ingredient.role) {
    case planning::Role::fat:
      return "fat";
    case planning::Role::blend:
      return "blend";
    case planning::Role::extra_oil:
      return "extra_oil";
    case planning::Role::alkali:
      return "alkali";
    case planning::Role::water:
      return "water";
    case planning::Role::additive:
      break;
  }
  const auto& additive = formula.additives[ingredient.index];
  if (additive.liquid) return "liquid";
  if (additive.contains_acid) return "acid";
  return name_of(additive.kind);
}

Json ingredient_json(const Ingredient& ingredient, const std::string& role) {
  Json json =
      with_weight({{"name", ingredient.name}, {"role", role}, {"goes_into", ingredient.goes_into}},
                  "", ingredient.weighed, ingredient.step, ingredient.shown);
  if (ingredient.spoonful) json["teaspoons"] = to_decimals(*ingredient.spoonful / us_teaspoon, 2);
  if (ingredient.set_aside > Mass{}) json["set_aside_for_colours_g"] = grams(ingredient.set_aside);
  return json;
}

/// What of the blend is each fat.
Json parts_json(const chemistry::Formula& formula) {
  Json parts = Json::array();
  for (std::size_t j = 0; j < formula.fats.size(); ++j)
    if (formula.blend->parts[j] > Share{})
      parts.push_back(
          {{"fat", formula.fats[j].fat.id}, {"percent", per_cent(formula.blend->parts[j])}});
  return parts;
}

Json ingredients_json(const std::vector<Ingredient>& ingredients,
                      const chemistry::Formula& formula) {
  Json json = Json::array();
  for (const auto& ingredient : ingredients) {
    json.push_back(ingredient_json(ingredient, role_of(ingredient, formula)));
    if (ingredient.role == planning::Role::fat)
      json.back()["fat"] = formula.fats[ingredient.index].fat.id;
    if (ingredient.role == planning::Role::blend) json.back()["holds"] = parts_json(formula);
  }
  return json;
}

Json colours_json(const std::vector<Ingredient>& colours) {
  Json json = Json::array();
  for (const auto& colour : colours)
    json.push_back(ingredient_json(colour, name_of(chemistry::AdditiveKind::colour)));
  return json;
}

/// Each alkali that is weighed as a solution that stands ready.
Json solutions_json(const planning::Weighing& weighing, const chemistry::Formula& formula) {
  Json solutions = Json::array();
  for (const auto& ingredient : weighing.ingredients) {
    if (ingredient.role != planning::Role::alkali) continue;
    const auto& alkali = formula.alkalis[ingredient.index];
    if (!alkali.solution) continue;
    solutions.push_back({{"solution", alkali.solution->name},
                         {"alkali", chemistry::formula_of(alkali.alkali)},
                         {"g", alkali_grams(ingredient.weighed)},
                         {"strength_percent",
                          {{"stated", per_cent(alkali.purity)},
                           {"low", per_cent(alkali.purity_low)},
                           {"high", per_cent(alkali.purity_high)}}},
                         {"brings_water_g", grams((whole - alkali.purity) * ingredient.weighed)}});
  }
  return solutions;
}

}  // namespace

Json batter_json(const planning::BatterTally& batter, const chemistry::Formula& formula) {
  const auto& weighing = batter.weighing;
  Json superfat_percent = {{"aim", per_cent(weighing.aim)}};
  superfat_percent.update(superfat_json(weighing.superfat));
  return {{"formula", formula.name},
          {"volume_each_ml", ml(batter.volume_each)},
          {"mass_each_g", grams(batter.mass_each)},
          {"density_g_per_ml", to_decimals(batter.density / gram_per_millilitre, 4)},
          {"plain_density_computed_g_per_ml",
           to_decimals(batter.density_computed / gram_per_millilitre, 4)},
          {"in_pieces_g", grams(batter.in_pieces)},
          {"lost_g", grams(batter.lost)},
          {"make_g", grams(weighing.batter)},
          {"fats_g", grams(weighing.fats)},
          {"naoh_g", alkali_grams(weighing.naoh)},
          {"koh_g", alkali_grams(weighing.koh)},
          {"water_g", grams(weighing.water)},
          {"plain_water_g", grams(weighing.plain_water())},
          {"solutions", solutions_json(weighing, formula)},
          {"water_in_acids_g", grams(weighing.water_in_acids)},
          {"lye_strength_percent", per_cent(weighing.lye_strength)},
          {"pot_strength_percent", per_cent(weighing.pot_strength)},
          {"water_to_pure_alkali", to_decimals(weighing.water_to_alkali, 3)},
          {"water_percent_of_fats", per_cent(weighing.water_of_fats)},
          {"superfat_percent", superfat_percent},
          {"heat", heat_json(batter.heat)},
          {"ingredients", ingredients_json(weighing.ingredients, formula)}};
}

namespace {

Json ml_or_null(const std::optional<Volume>& volume) {
  return volume ? Json(ml(*volume)) : Json(nullptr);
}

Json visible_json(const planning::VisibleTopping& visible) {
  Json moves = Json::array();
  for (const auto& laid : visible.moves)
    moves.push_back({{"length_mm", mm(laid.length)}, {"volume_ml", ml(laid.volume)}});
  Json json = {{"trials_ml", ml_or_null(visible.by_trials)},
               {"beads_ml", ml_or_null(visible.by_beads)},
               {"envelope_ml", ml_or_null(visible.by_envelope)},
               {"moves", moves}};
  if (visible.as_given) json["given_ml"] = ml(*visible.as_given);
  if (visible.suggested_correction)
    json["suggested_correction"] = {
        {"correction", to_decimals(visible.suggested_correction->correction, 3)},
        {"trials", visible.suggested_correction->trials}};
  return json;
}

Json readings_json(const std::vector<planning::WhipReading>& readings, std::int64_t per_cast) {
  Json json = Json::array();
  for (const auto& reading : readings)
    json.push_back({{"net_g", grams(reading.net)},
                    {"density_g_per_ml", to_decimals(reading.density / gram_per_millilitre, 4)},
                    {"overrun_percent", to_decimals(100 * reading.overrun, 1)},
                    {"pieces", reading.casts * per_cast},
                    {"casts", reading.casts},
                    {"planned", reading.is_planned}});
  return json;
}

}  // namespace

Json count_or_null(const std::optional<std::int64_t>& count) {
  return count ? Json(*count) : Json(nullptr);
}

Json pour_json(const planning::PourTally& pour, const planning::Run& run) {
  Json json = batter_json(pour.batter, run.pour.formula);
  json["mould"] = run.pour.mould.name;
  json["brimful_ml"] = ml(pour.brimful);
  json["depth_mm"] = mm(pour.line);
  json["below_brim_mm"] = mm(pour.headspace);
  json["poured_to_mm"] = mm(pour.poured_to);
  json["displaced_ml"] = ml(pour.displaced);
  json["cure"] = cure_json(pour.batter);
  json["ml_per_mm"] = to_decimals(pour.surface * millimetre / millilitre, 3);
  Json layers = Json::array();
  for (const auto& layer : pour.layers) {
    Json json_of = {{"name", layer.name},
                    {"from_mm", mm(layer.from)},
                    {"to_mm", mm(layer.to)},
                    {"volume_each_ml", ml(layer.volume_each)},
                    {"mass_each_g", grams(layer.mass_each)}};
    json_of = with_weight(json_of, "", layer.mass, layer.step, Rounded::nearest);
    json_of["colours"] = colours_json(layer.colours);
    layers.push_back(json_of);
    if (layer.surface)
      layers.back()["surface"] = {{"over_origin_mm", mm(layer.surface->over_origin)},
                                  {"rise_x", to_decimals(layer.surface->rise_x, 5)},
                                  {"rise_y", to_decimals(layer.surface->rise_y, 5)}};
  }
  if (!layers.empty()) json["layers"] = layers;
  return json;
}

Json limits_json(const std::vector<planning::Limit>& limits, std::int64_t per_cast) {
  Json json = Json::array();
  for (const auto& limit : limits) {
    const std::string end = limit.is_least ? "least" : "most";
    json.push_back({{"what", limit.what},
                    {end + "_pieces", limit.casts * per_cast},
                    {end + "_casts", limit.casts},
                    {"sets", limit.sets},
                    {"text", limit.text}});
  }
  return json;
}

Json pipe_json(const planning::PipeTally& pipe, const planning::Run& run, std::int64_t per_cast) {
  Json json = batter_json(pipe.batter, run.pipe->formula);
  json["visible_each_ml"] = ml(pipe.visible_each);
  json["in_headspace_each_ml"] = ml(pipe.in_headspace_each);
  json["visible_by"] = visible_json(pipe.visible);
  json["overrun_percent"] = to_decimals(100 * pipe.overrun, 1);
  json["loads"] = count_or_null(pipe.loads);
  json["whippings"] = pipe.whippings;
  json["pieces_now"] = pipe.casts_now ? Json(*pipe.casts_now * per_cast) : Json(nullptr);
  json["casts_now"] = count_or_null(pipe.casts_now);
  json["readings"] = readings_json(pipe.readings, per_cast);
  json["limits"] = limits_json(pipe.limits, per_cast);
  json["least_pieces"] = pipe.least_casts * per_cast;
  json["least_casts"] = pipe.least_casts;
  json["piping_s"] = pipe.piping ? Json(pipe.piping->count()) : Json(nullptr);
  if (pipe.lye)
    json["lye_spoonfuls"] = {{"count", pipe.lye->spoonfuls},
                             {"each_s", pipe.lye->each.count()},
                             {"altogether_s", pipe.lye->altogether.count()}};
  json["cure"] = cure_json(pipe.batter);
  return json;
}

}  // namespace brimwright::reports
