#include "reports/json_numbers.h"
#include "reports/label_report.h"
#include "reports/weight_json.h"

#include <nlohmann/json.hpp>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;

double grams(Mass mass, int decimals = 2) { return to_decimals(mass / gram, decimals); }
double per_cent(Share share) { return to_decimals(share.in_percent(), 4); }

Json remarks_json(const std::vector<Remark>& remarks) {
  Json json = Json::array();
  for (const auto& remark : remarks)
    json.push_back({{"severity", name_of(remark.severity)}, {"text", remark.text}});
  return json;
}

Json net_json(const planning::LabelDraft& label) {
  if (!label.net) return nullptr;
  const auto& net = *label.net;
  return {{"statement", net.statement},
          {"stated_g", grams(net.stated)},
          {"lightest_g", grams(label.lightest->mass)},
          {"mean_g", grams(label.lightest->mean)},
          {"because", label.lightest->because},
          {"tolerance_g", net.tolerance ? Json(grams(*net.tolerance)) : Json(nullptr)},
          {"figures_mm",
           net.figures ? Json(to_decimals(*net.figures / millimetre, 1)) : Json(nullptr)}};
}

Json held_json(const planning::LabelDraft& label) {
  if (!label.held) return nullptr;
  const auto& held = *label.held;
  return {{"pieces", held.packs},       {"held_against_g", grams(held.stated)},
          {"mean_g", grams(held.mean)}, {"mean_reaches", held.mean_reaches},
          {"short", held.short_once},   {"short_twice", held.short_twice},
          {"passes", held.passes}};
}

Json list_json(const planning::IngredientList& list) {
  Json items = Json::array();
  for (const auto& ingredient : list.ingredients) {
    Json item = {{"name", ingredient.name},
                 {"g", grams(ingredient.mass, 4)},
                 {"percent", per_cent(ingredient.share)}};
    if (!ingredient.is_inci) item["inci_given"] = false;
    if (ingredient.is_colour) item["colour"] = true;
    if (ingredient.is_allergen) item["allergen"] = true;
    items.push_back(item);
  }
  return {{"text", list.text}, {"piece_g", grams(list.total)}, {"ingredients", items}};
}

Json allergens_json(const planning::LabelDraft& label) {
  Json json = Json::array();
  for (const auto& allergen : label.allergens) {
    Json item = {{"name", allergen.name},
                 {"percent", per_cent(allergen.share)},
                 {"named", allergen.is_to_be_named},
                 {"listed", !allergen.is_unknown},
                 {"documents", allergen.documents}};
    if (allergen.is_ingredient) item["ingredient"] = true;
    json.push_back(item);
  }
  return json;
}

Json batch_codes_json(const BatchCodes& codes) {
  Json json = Json::array();
  for (const auto& [number, code] : codes) json.push_back({{"batch", number}, {"code", code}});
  return json;
}

}  // namespace

Json cure_json(const planning::BatterTally& part) {
  if (!part.cure || !part.cure->curve) return nullptr;
  const auto& curve = *part.cure->curve;
  Json json = {{"cured_g", grams(part.cure->cured)},
               {"end_g", grams(curve.end)},
               {"to_lose_g", grams(curve.to_lose)},
               {"time_constant_days", to_decimals(curve.tau_days, 3)}};
  if (part.cure->fit) {
    const auto& fit = *part.cure->fit;
    json["fit"] = {{"weighings", fit.weighings},
                   {"spread_g", fit.spread ? Json(grams(*fit.spread, 3)) : Json(nullptr)}};
  }
  return json;
}

Json label_json(const planning::Plan& plan, const BatchCodes& codes) {
  if (!plan.label) return nullptr;
  const auto& label = *plan.label;
  return {{"market", name_of(label.market)},
          {"net_quantity", net_json(label)},
          {"pieces_weighed", held_json(label)},
          {"as_saponified", list_json(label.as_saponified)},
          {"as_charged", list_json(label.as_charged)},
          {"allergens", allergens_json(label)},
          {"batch_codes", batch_codes_json(codes)},
          {"remarks", remarks_json(label.remarks)}};
}

Json bottles_json(const std::vector<planning::BottleTally>& bottles) {
  Json json = Json::array();
  for (const auto& bottle : bottles) {
    Json parts = Json::array();
    for (const auto& part : bottle.parts)
      parts.push_back(with_weight({{"part", part.name},
                                   {"count", part.count},
                                   {"percent_of_batter", per_cent(part.of_batter)}},
                                  "", part.gives, part.step, Rounded::nearest));
    json.push_back({{"name", bottle.name}, {"holds_g", grams(bottle.holds)}, {"parts", parts}});
  }
  return json;
}

}  // namespace brimwright::reports
