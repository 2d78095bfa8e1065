#include "planning/plan.h"
#include "reports/assumptions_json.h"
#include "reports/batter_json.h"
#include "reports/blanks_json.h"
#include "reports/json_document.h"
#include "reports/label_report.h"
#include "reports/lye_report.h"
#include "reports/made_lye_report.h"
#include "reports/plan_numbers.h"
#include "reports/plan_report.h"
#include "reports/plan_words.h"
#include "reports/weigh_out.h"
#include "reports/weigh_out_json.h"
#include "reports/weight_json.h"
#include "units/rounding.h"

#include <nlohmann/json.hpp>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;

/// A gap to a part that a hollow does not have is none.
Json mm_or_null(const std::optional<Length>& length) {
  return length && is_finite(*length) ? Json(mm(*length)) : Json(nullptr);
}

Json embeds_json(const planning::DecorationFit& fit) {
  Json json = Json::array();
  for (const auto& embed : fit.embeds) {
    const auto& m = embed.place.move_mm;
    json.push_back(
        {{"middle_mm", {to_decimals(m[0], 3), to_decimals(m[1], 3), to_decimals(m[2], 3)}},
         {"turn", embed.place.turn},
         {"floor_cover_mm", mm_or_null(embed.floor_cover)},
         {"wall_cover_mm", mm_or_null(embed.wall_cover)},
         {"pour_line_cover_mm", mm(embed.line_cover)},
         {"apart_mm", mm_or_null(embed.apart)},
         {"displaced_ml", ml(embed.displaced)}});
  }
  return json;
}

Json mass_each_json(const planning::DecorationTally& decoration) {
  const bool is_unknown = decoration.is_bought && !(decoration.mass_each > Mass{});
  return is_unknown ? Json(nullptr) : Json(grams(decoration.mass_each));
}

Json decoration_json(const planning::DecorationTally& decoration, const planning::Scales& scales) {
  Json json = {{"name", decoration.name},
               {"material", decoration.material},
               {"bought", decoration.is_bought},
               {"casts", decoration.casts},
               {"per_piece", to_decimals(decoration.per_piece, 3)},
               {"cavity_fills", decoration.cavity_fills},
               {"tray_fills", decoration.tray_fills},
               {"volume_each_ml", ml(decoration.volume_each)},
               {"mass_each_g", mass_each_json(decoration)},
               {"casting_s", decoration.time ? Json(decoration.time->count()) : Json(nullptr)}};
  json = with_weight(json, "make_", decoration.make, scales.large.step, Rounded::nearest);
  const auto& fit = decoration.fit;
  if (fit.contact)
    json["on_top"] = {{"contact_mm", mm(*fit.contact)},
                      {"peak_flat_mm", mm_or_null(fit.peak_flat)},
                      {"stands_proud_mm", mm(*fit.stands_proud)},
                      {"sunk_ml", ml(fit.sunk)}};
  if (!fit.embeds.empty())
    json["buried"] = {{"displaced_ml", ml(fit.displaced)},
                      {"in_headspace_ml", ml(fit.in_headspace)},
                      {"embeds", embeds_json(fit)}};
  return json;
}

Json dust_json(const planning::DustTally& dust, const planning::Scales& scales) {
  Json json = {{"name", dust.name}, {"each_g", to_decimals(dust.each / gram, 4)}};
  json = with_weight(json, "", dust.make, scales.fine.step, Rounded::nearest);
  if (dust.exposed) json["exposed_cm2"] = to_decimals(*dust.exposed / square_centimetre, 2);
  return json;
}

Json bar_json(const planning::Bar& bar, const planning::BarMass& mass) {
  Json layers = Json::array(), parts = Json::array();
  for (const Volume layer : bar.layers) layers.push_back(ml(layer));
  for (const Mass part : mass.parts) parts.push_back(to_decimals(part / gram, 2));
  return {{"along_mm", mm(bar.along)},
          {"across_mm", mm(bar.across)},
          {"height_mm", mm(bar.height)},
          {"volume_ml", ml(bar.volume)},
          {"layers_ml", layers},
          {"fresh_g", to_decimals(mass.fresh / gram, 2)},
          {"cured_g", mass.cured ? Json(to_decimals(*mass.cured / gram, 2)) : Json(nullptr)},
          {"parts_g", parts}};
}

Json cut_json(const planning::CutTally& cut, const planning::PieceTally& piece) {
  Json bars = Json::array();
  for (std::size_t i = 0; i < cut.bars.size(); ++i)
    bars.push_back(bar_json(cut.bars[i], piece.bars[i]));
  Json more = Json::array();
  for (const auto& one : cut.one_more)
    more.push_back({{"direction", name_of(one.direction)},
                    {"size_mm", to_decimals(one.size / millimetre, 5)},
                    {"size_text", one.text},
                    {"bars", one.bars}});
  return {{"bars_each", cut.bars.size()},
          {"along", name_of(cut.along)},
          {"columns", cut.columns},
          {"rows", cut.rows},
          {"bars_the_other_way", count_or_null(cut.other_way)},
          {"bar_ml",
           {{"least", ml(cut.least)}, {"mean", ml(cut.mean)}, {"greatest", ml(cut.greatest)}}},
          {"loaf_ml", ml(cut.loaf)},
          {"offcuts_ml", ml(cut.offcuts)},
          {"kerf_ml", ml(cut.kerf)},
          {"planing_ml", ml(cut.planing)},
          {"offcuts_g", to_decimals(piece.cut_off.offcuts / gram, 1)},
          {"kerf_g", to_decimals(piece.cut_off.kerf / gram, 1)},
          {"planing_g", to_decimals(piece.cut_off.planing / gram, 1)},
          {"lightest_bar", piece.lightest_bar},
          {"one_more", more},
          {"bars", bars}};
}

Json money_json(const Money& money) {
  return {{"amount", amount_text(money)}, {"currency", money.currency.code}};
}

Json cost_json(const planning::Cost& cost, const planning::Run& run) {
  Json json = money_json(cost.per_piece);
  json["total"] = amount_text(cost.total);
  if (!planning::is_any_priced(cost)) json["amount"] = json["total"] = nullptr;  // not 0
  json["unpriced"] = cost.unpriced;
  Json lines = Json::array();
  for (const auto& line : cost.lines) {
    Json json_of = {{"name", line.name}, {"shown_as", material_name(line.name, run)}};
    if (line.pieces > 0)
      json_of["pieces"] = line.pieces;
    else
      json_of["g"] = grams(line.used);
    json_of["amount"] = line.cost ? Json(amount_text(*line.cost)) : Json(nullptr);
    if (line.is_from_tap) json_of["from_tap"] = true;
    lines.push_back(std::move(json_of));
  }
  json["materials"] = lines;
  return json;
}

/// Rounded down: what the lightest bar has at least.
Json down_to_decimals_g(const std::optional<Mass>& mass) {
  if (!mass) return nullptr;
  return to_decimals(rounded_down(*mass, 0.1 * gram) / gram, 1);
}

Json piece_json(const planning::Plan& plan, const planning::Run& run) {
  const auto& piece = plan.piece;
  Json parts = Json::array();
  for (const auto& part : piece.parts)
    parts.push_back(
        {{"name", part.name},
         {"fresh_g", to_decimals(part.fresh / gram, 2)},
         {"cured_g", part.cured ? Json(to_decimals(*part.cured / gram, 2)) : Json(nullptr)}});
  const Json size = piece.size ? Json{{"width_mm", mm(piece.size->width)},
                                      {"depth_mm", mm(piece.size->depth)},
                                      {"height_mm", mm(piece.size->height)}}
                               : Json(nullptr);
  Json lightest = nullptr;
  if (plan.cut) {
    const auto& bar = piece.bars[piece.lightest_bar];
    lightest = {{"fresh_g", down_to_decimals_g(bar.fresh)},
                {"cured_g", down_to_decimals_g(bar.cured)}};
  }
  return {{"is", plan.cut ? "bar on average" : "piece"},
          {"lightest", lightest},
          {"fresh_g", to_decimals(piece.fresh / gram, 1)},
          {"cured_g", piece.cured ? Json(to_decimals(*piece.cured / gram, 1)) : Json(nullptr)},
          {"label_g",
           plan.label && plan.label->net ? Json(grams(plan.label->net->stated)) : Json(nullptr)},
          {"parts", parts},
          {"size", size},
          {"cost", plan.cost ? cost_json(*plan.cost, run) : Json(nullptr)}};
}

Json dusts_json(const std::vector<planning::DustTally>& dusts, const planning::Scales& scales) {
  Json json = Json::array();
  for (const auto& dust : dusts) json.push_back(dust_json(dust, scales));
  return json;
}

Json whippings_json(const planning::Batch& batch, const planning::Run& run, std::int64_t per_cast) {
  Json json = Json::array();
  for (const auto& whipping : batch.whippings) {
    Json one = {{"count", whipping.count},
                {"pieces", whipping.casts * per_cast},
                {"casts", whipping.casts}};
    one.update(pipe_json(whipping.pipe, run, per_cast));
    json.push_back(one);
  }
  return json;
}

/// Of a base that is mixed with others' nothing is weighed or noted here.
Json with_work(Json one, const planning::Run& run, const planning::Plan& plan,
               const planning::Batch& batch, planning::BaseIs base) {
  auto blanks = planning::blanks_of(run, plan, batch);
  const bool is_shared = base == planning::BaseIs::shared;
  if (is_shared) {
    one["beside_base"] = true;
    std::erase_if(blanks, planning::is_of_base);
  }
  one["blanks"] = blanks_json(blanks);
  return with_weigh_out(std::move(one), is_shared ? weigh_out_beside_base(run, plan, batch)
                                                  : weigh_out(run, plan, batch));
}

Json batches_json(const planning::Run& run, const planning::Plan& plan, planning::BaseIs base) {
  const std::int64_t per_cast = plan.pieces.per_cast;
  Json json = Json::array();
  for (const auto& batch : plan.batches) {
    Json one = {{"count", batch.count()},
                {"pieces", batch.pieces},
                {"casts", batch.casts},
                {"numbers", batch.numbers},
                {"pour", pour_json(batch.pour, run)}};
    if (batch.pipe) {
      one["pipe"] = pipe_json(*batch.pipe, run, per_cast);
      one["pipe"]["whippings"] = whippings_json(batch, run, per_cast);
    }
    one["lye_pot"] = lye_pot_json(batch);
    one["bottles"] = bottles_json(batch.bottles);
    one["dust"] = dusts_json(batch.dust, run.scales);
    json.push_back(with_work(std::move(one), run, plan, batch, base));
  }
  return json;
}

Json around_json(const std::vector<planning::Around>& around) {
  Json json = Json::array();
  for (const auto& one : around)
    json.push_back({{"sell", one.sell},
                    {"fillings", one.fillings},
                    {"batches", one.batches},
                    {"text", one.text}});
  return json;
}

Json first_aid_json() {
  Json lines = Json::array();
  for (const auto& line : planning::first_aid())
    lines.push_back({{"what", line.what}, {"do", line.to_do}});
  return {{"lines", lines}, {"source", planning::first_aid_source()}};
}

Json caution_json(const planning::Caution& caution) {
  Json json = {{"severity", name_of(caution.severity)},
               {"topic", name_of(caution.topic)},
               {"general", caution.is_general},
               {"text", caution.text}};
  if (caution.batter)
    json["batter"] = *caution.batter == planning::BatterRole::base ? "pour" : "pipe";
  if (caution.batch_pieces) json["batch_pieces"] = *caution.batch_pieces;
  return json;
}

Json document_of(const planning::Run& run, const planning::Plan& plan,
                 const std::vector<planning::MadeLye>& made, const BatchCodes& codes,
                 const std::optional<LyeOfDay>& lye_of_day, planning::BaseIs base) {
  Json json = {{"schema", "brimwright.plan/1"},
               {"run", plan.name},
               {"source", plan.file},
               {"pieces",
                {{"sell", plan.pieces.sell},
                 {"make", plan.pieces.make},
                 {"fillings", plan.pieces.fillings},
                 {"cavities", plan.pieces.cavities},
                 {"casts", plan.pieces.casts},
                 {"per_cast", plan.pieces.per_cast},
                 {"batches", plan.pieces.batches},
                 {"to_stock", plan.pieces.to_stock}}},
               {"pour", pour_json(plan.pour, run)}};
  if (!run.from_studio.sections.empty())
    json["from_studio"] = {{"file", run.from_studio.file},
                           {"sections", run.from_studio.sections},
                           {"text", studio_words(run.from_studio)}};
  if (!made.empty()) json["made_lye"] = made_lye_json(made);
  if (lye_of_day)
    json["lye_of_day"] = {{"may_be_shared", lye_of_day->own_because.empty()},
                          {"text", words_of(*lye_of_day)}};
  if (plan.pipe) json["pipe"] = pipe_json(*plan.pipe, run, plan.pieces.per_cast);
  json["batches"] = batches_json(run, plan, base);
  json["batch_limits"] = limits_json(plan.batch_limits, plan.pieces.per_cast);
  json["around"] = around_json(plan.around);
  json["decorations"] = Json::array();
  for (const auto& decoration : plan.decorations)
    json["decorations"].push_back(decoration_json(decoration, run.scales));
  json["dust"] = dusts_json(plan.dust, run.scales);
  if (plan.cut) json["cut"] = cut_json(*plan.cut, plan.piece);
  json["bottles"] = bottles_json(plan.bottles);
  json["lye_pot"] = lye_pot_json(plan.batches.front());
  json["piece"] = piece_json(plan, run);
  json["label"] = label_json(plan, codes);
  json["cautions"] = Json::array();
  for (const auto& caution : plan.cautions) json["cautions"].push_back(caution_json(caution));
  json["first_aid"] = first_aid_json();
  json["assumptions"] = assumptions_json(run, plan);
  return json;
}

}  // namespace

std::string plan_json(const planning::Run& run, const planning::Plan& plan,
                      const std::vector<planning::MadeLye>& made, const BatchCodes& codes,
                      const std::optional<LyeOfDay>& lye_of_day) {
  return json_document(document_of(run, plan, made, codes, lye_of_day, planning::BaseIs::its_own));
}

std::string line_json(const planning::Run& run, const planning::Plan& plan) {
  return json_document(document_of(run, plan, {}, {}, {}, planning::BaseIs::shared));
}

}  // namespace brimwright::reports
