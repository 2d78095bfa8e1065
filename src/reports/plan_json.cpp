#include "reports/json_numbers.h"
#include "reports/label_report.h"
#include "reports/plan_report.h"

#include <nlohmann/json.hpp>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;
using planning::Ingredient;

double grams(Mass mass) { return to_decimals(mass / gram, 3); }
double ml(Volume volume) { return to_decimals(volume / millilitre, 3); }
double mm(Length length) { return to_decimals(length / millimetre, 3); }
double per_cent(Share share) { return to_decimals(share.in_percent(), 2); }

Json ingredient_json(const Ingredient& ingredient) {
  Json json = {{"name", ingredient.name},
               {"g", grams(ingredient.weighed)},
               {"goes_into", ingredient.goes_into},
               {"scale_step_g", grams(ingredient.step)}};
  if (ingredient.spoonful) json["teaspoons"] = to_decimals(*ingredient.spoonful / us_teaspoon, 2);
  if (ingredient.set_aside > Mass{}) json["set_aside_for_colours_g"] = grams(ingredient.set_aside);
  return json;
}

Json ingredients_json(const std::vector<Ingredient>& ingredients) {
  Json json = Json::array();
  for (const auto& ingredient : ingredients) json.push_back(ingredient_json(ingredient));
  return json;
}

/// What puts the superfat in doubt, with its part of the variance, largest first.
Json doubts_json(const chemistry::EffectiveSuperfat& superfat) {
  Json json = Json::array();
  for (const auto& doubt : superfat.doubts)
    json.push_back({{"cause", doubt.cause},
                    {"remedy", doubt.remedy},
                    {"percent_of_variance", to_decimals(doubt.of_variance.in_percent(), 1)}});
  return json;
}

Json batter_json(const planning::BatterTally& batter, const chemistry::Formula& formula) {
  const auto& weighing = batter.weighing;
  const auto& superfat = weighing.superfat;
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
          {"naoh_g", grams(weighing.naoh)},
          {"koh_g", grams(weighing.koh)},
          {"water_g", grams(weighing.water)},
          {"lye_strength_percent", per_cent(weighing.lye_strength)},
          {"water_to_pure_alkali", to_decimals(weighing.water_to_alkali, 3)},
          {"water_percent_of_fats", per_cent(weighing.water_of_fats)},
          {"superfat_percent",
           {{"aim", per_cent(weighing.aim)},
            {"effective", per_cent(superfat.nominal)},
            {"low", per_cent(superfat.low)},
            {"high", per_cent(superfat.high)},
            {"likely_low", per_cent(superfat.likely_low)},
            {"likely_high", per_cent(superfat.likely_high)},
            {"likely_means", chemistry::likely_means()},
            {"likely_by_scales", per_cent(superfat.likely_by_scales)},
            {"doubts", doubts_json(superfat)}}},
          {"ingredients", ingredients_json(weighing.ingredients)}};
}

Json pour_json(const planning::PourTally& pour, const planning::Run& run) {
  Json json = batter_json(pour.batter, run.pour.formula);
  json["mould"] = run.pour.mould.name;
  json["brimful_ml"] = ml(pour.brimful);
  json["depth_mm"] = mm(pour.line);
  json["below_brim_mm"] = mm(pour.headspace);
  json["cure"] = cure_json(pour.batter);
  json["ml_per_mm"] = to_decimals(pour.surface * millimetre / millilitre, 3);
  Json layers = Json::array();
  for (const auto& layer : pour.layers)
    layers.push_back({{"name", layer.name},
                      {"from_mm", mm(layer.from)},
                      {"to_mm", mm(layer.to)},
                      {"volume_each_ml", ml(layer.volume_each)},
                      {"mass_each_g", grams(layer.mass_each)},
                      {"g", grams(layer.mass)},
                      {"colours", ingredients_json(layer.colours)}});
  if (!layers.empty()) json["layers"] = layers;
  return json;
}

Json count_or_null(const std::optional<std::int64_t>& count) {
  return count ? Json(*count) : Json(nullptr);
}

Json pipe_json(const planning::PipeTally& pipe, const planning::Run& run) {
  Json json = batter_json(pipe.batter, run.pipe->formula);
  json["visible_each_ml"] = ml(pipe.visible_each);
  json["in_headspace_each_ml"] = ml(pipe.in_headspace_each);
  json["overrun_percent"] = to_decimals(100 * pipe.overrun, 1);
  json["loads"] = count_or_null(pipe.loads);
  json["pieces_now"] = count_or_null(pipe.pieces_now);
  json["cure"] = cure_json(pipe.batter);
  return json;
}

Json money_json(const Money& money) {
  return {{"amount", amount_text(money)}, {"currency", money.currency.code}};
}

Json cost_json(const planning::Cost& cost) {
  Json json = money_json(cost.per_piece);
  json["total"] = amount_text(cost.total);
  json["unpriced"] = cost.unpriced;
  Json lines = Json::array();
  for (const auto& line : cost.lines)
    lines.push_back({{"name", line.name},
                     {"g", grams(line.used)},
                     {"amount", line.cost ? Json(amount_text(*line.cost)) : Json(nullptr)}});
  json["materials"] = lines;
  return json;
}

Json piece_json(const planning::Plan& plan) {
  const auto& piece = plan.piece;
  return {{"fresh_g", to_decimals(piece.fresh / gram, 1)},
          {"cured_g", piece.cured ? Json(to_decimals(*piece.cured / gram, 1)) : Json(nullptr)},
          {"label_g", plan.label && plan.label->net ? Json(grams(plan.label->net->stated))
                                                    : Json(nullptr)},
          {"cost", plan.cost ? cost_json(*plan.cost) : Json(nullptr)}};
}

}  // namespace

std::string plan_json(const planning::Run& run, const planning::Plan& plan) {
  Json json = {{"schema", "brimwright.plan/1"},
               {"run", plan.name},
               {"source", plan.file},
               {"pieces",
                {{"sell", plan.pieces.sell},
                 {"make", plan.pieces.make},
                 {"fillings", plan.pieces.fillings},
                 {"cavities", plan.pieces.cavities}}},
               {"pour", pour_json(plan.pour, run)}};
  if (plan.pipe) json["pipe"] = pipe_json(*plan.pipe, run);
  json["perch"] = Json::array();
  for (const auto& perch : plan.perch)
    json["perch"].push_back({{"name", perch.name},
                             {"material", perch.material},
                             {"casts", perch.casts},
                             {"cavity_fills", perch.cavity_fills},
                             {"tray_fills", perch.tray_fills},
                             {"volume_each_ml", ml(perch.volume_each)},
                             {"mass_each_g", grams(perch.mass_each)},
                             {"make_g", grams(perch.make)}});
  json["dust"] = Json::array();
  for (const auto& dust : plan.dust)
    json["dust"].push_back({{"name", dust.name}, {"g", grams(dust.make)}});
  json["bottles"] = bottles_json(plan);
  json["piece"] = piece_json(plan);
  json["label"] = label_json(plan);
  json["cautions"] = Json::array();
  for (const auto& caution : plan.cautions)
    json["cautions"].push_back({{"severity", name_of(caution.severity)},
                                {"topic", name_of(caution.topic)},
                                {"text", caution.text}});
  return json.dump(2) + "\n";
}

}  // namespace brimwright::reports
