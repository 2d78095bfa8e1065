#include "moulds/mesh_cavity.h"
#include "moulds/mould_workings.h"
#include "reports/gauge_report.h"
#include "reports/json_document.h"
#include "reports/json_numbers.h"
#include "reports/workings_json.h"
#include "units/bounded_text.h"
#include "units/number_text.h"

#include <nlohmann/json.hpp>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;
using moulds::Mould;

double ml(Volume volume) { return to_decimals(volume / millilitre, 4); }
double mm(Length length) { return to_decimals(length / millimetre, 3); }

Json levels_json(const geometry::LevelCurve& curve, const std::vector<Length>& depths) {
  std::vector<Length> reached;
  for (const Length depth : depths)
    if (depth <= curve.height()) reached.push_back(depth);
  Json levels = Json::array();
  for (const auto& [depth, volume, surface] : curve.levels(reached))
    levels.push_back({{"depth_mm", mm(depth)},
                      {"volume_ml", ml(volume)},
                      {"ml_per_mm", to_decimals(surface * millimetre / millilitre, 4)}});
  return levels;
}

/// One of a mould's cavities that are known by one curve. A shape opens upward by its definition
/// and keeps no air.
Json cavity_json(const Mould& mould, const std::vector<Length>& depths) {
  const auto& curve = mould.curve;
  Area opening = curve.free_surface(curve.height());
  Json air = 0.0;
  if (mould.found) {
    const auto& trapped = mould.found->typical().trapped_air;
    air = trapped ? Json(ml(*trapped)) : Json(nullptr);
    if (mould.detail_factor == 1) opening = mould.found->typical().opening;
  }
  return {{"brimful_ml", ml(curve.brimful())},
          {"floor_mm", mm(mould.floor)},
          {"brim_mm", mm(mould.floor + curve.height())},
          {"opening_cm2", to_decimals(opening / square_centimetre, 4)},
          {"trapped_air_ml", air},
          {"levels", levels_json(curve, depths)}};
}

Json hollow_json(const moulds::Hollow& hollow, const std::vector<Length>& depths) {
  Json json = {
      {"brimful_ml", ml(hollow.curve.brimful())},
      {"floor_mm", to_decimals(hollow.floor_mm, 3)},
      {"brim_mm", to_decimals(hollow.brim_mm, 3)},
      {"opening_cm2", to_decimals(hollow.opening / square_centimetre, 4)},
      {"trapped_air_ml", hollow.trapped_air ? Json(ml(*hollow.trapped_air)) : Json(nullptr)},
      {"levels", levels_json(hollow.curve, depths)},
      {"middle_mm", {to_decimals(hollow.middle_mm[0], 3), to_decimals(hollow.middle_mm[1], 3)}}};
  if (hollow.spills_at_mm) {
    const auto& [x, y, z] = *hollow.spills_at_mm;
    json["spills_at_mm"] = {to_decimals(x, 3), to_decimals(y, 3), to_decimals(z, 3)};
    json["rim_above_brim_mm"] = to_decimals(hollow.rim_highest_mm - hollow.brim_mm, 3);
  }
  return json;
}

Json pockets_json(const GaugeFindings& findings) {
  Json pockets = Json::array();
  const Mould& mould = findings.mould;
  if (shows_each_hollow(mould)) {
    for (const auto& hollow : mould.found->survey.hollows)
      pockets.push_back(hollow_json(hollow, findings.depths));
  } else {
    for (int i = 0; i < mould.cavities; ++i) pockets.push_back(cavity_json(mould, findings.depths));
  }
  return pockets;
}

Volume total(const Mould& mould) {
  if (!shows_each_hollow(mould)) return mould.cavities * mould.curve.brimful();
  Volume sum;
  for (const auto& hollow : mould.found->survey.hollows) sum += hollow.curve.brimful();
  return sum;
}

Json fit_json(const FitFinding& finding) {
  const auto& fit = finding.fit;
  return {{"pour_ml", ml(finding.wish.pour)},   {"across", to_decimals(fit.across, 6)},
          {"depth", to_decimals(fit.depth, 6)}, {"length_mm", mm(fit.length)},
          {"width_mm", mm(fit.width)},          {"height_mm", mm(fit.height)},
          {"brimful_ml", ml(fit.brimful)}};
}

Json casting_json(const CastingFinding& finding) {
  const auto& need = finding.need;
  Json json = {{"material_ml", ml(need.material)},
               {"master_ml", ml(need.master)},
               {"length_mm", mm(need.length)},
               {"width_mm", mm(need.width)},
               {"height_mm", mm(need.height)}};
  if (finding.density) json["material_g"] = to_decimals(need.material * *finding.density / gram, 1);
  return json;
}

/// Rounded so that either length, typed back, holds no more than the pour.
Json pour_json(const PourFinding& finding, const Mould& mould) {
  const auto number = [](const std::string& text) { return number_of(text).value(); };
  return {
      {"pour_ml", ml(finding.pour)},
      {"depth_mm", number(at_most(finding.depth / millimetre, 3))},
      {"below_brim_mm", number(at_least((mould.curve.height() - finding.depth) / millimetre, 3))},
      {"ml_per_mm",
       to_decimals(mould.curve.free_surface(finding.depth) * millimetre / millilitre, 4)}};
}

Json tilt_json(const TiltFinding& finding) {
  Json second = Json::array();
  for (const auto& [depth, volume] : finding.second)
    second.push_back({{"depth_mm", mm(depth)}, {"volume_ml", ml(volume)}});
  return {{"angle_degrees", to_decimals(finding.tilt.angle.degrees(), 4)},
          {"low_side_degrees", to_decimals(finding.tilt.low_side.degrees(), 4)},
          {"mark_mm", mm(finding.mark)},
          {"pour_ml", ml(finding.pour)},
          {"spills_at_mark_mm", mm(finding.brim)},
          {"most_ml", ml(finding.most)},
          {"pools", finding.pools},
          {"covered_at_depth_mm", mm(finding.covered_at)},
          {"second_pours", second}};
}

Json packing_json(const PackingFinding& finding) {
  const auto& packing = finding.packing;
  Json places = Json::array();
  for (const auto& place : packing.places) {
    const auto& at = place.move_mm;
    places.push_back(
        {{"middle_mm", {to_decimals(at[0], 3), to_decimals(at[1], 3), to_decimals(at[2], 3)}},
         {"turn", place.turn}});
  }
  Json json = {{"embed", finding.embed},
               {"lying", name_of(finding.lying)},
               {"cover_mm", mm(finding.cover)},
               {"fill_depth_mm", mm(finding.line)},
               {"count", packing.places.size()},
               {"displaced_ml", ml(finding.displaced)},
               {"places", places}};
  if (!packing.places.empty()) json["least_cover_mm"] = mm(packing.least_cover);
  if (packing.places.size() > 1) json["least_apart_mm"] = mm(packing.least_apart);
  if (finding.would_fit) json["scale_that_fits"] = to_decimals(*finding.would_fit, 3);
  return json;
}

/// Of the first cavity; where each hollow is shown for itself, that one has its own figure.
Json brimful_how(const Mould& mould) {
  Working working = moulds::brimful_working(mould);
  if (shows_each_hollow(mould)) working.comes_to.clear();
  std::vector<Working> how;
  append_at(how, "pockets.0.brimful_ml", {working});
  return how_json(how);
}

}  // namespace

std::string gauge_json(const GaugeFindings& findings) {
  const Mould& mould = findings.mould;
  Json measurements = Json::array();
  for (const auto& measured : mould.measurements)
    measurements.push_back(
        {{"by", moulds::name_of(measured.way)}, {"brimful_ml", ml(measured.brimful)}});
  Json notes = Json::array();
  for (const auto& remark : mould.remarks)
    notes.push_back({{"severity", name_of(remark.severity)}, {"text", remark.text}});
  Json json = {
      {"schema", "brimwright.gauge/1"},
      {"source", mould.file},
      {"name", mould.name},
      {"role", moulds::name_of(mould.found ? mould.found->survey.role : moulds::Role::cavity)},
      {"unit", mould.found ? geometry::name_of(mould.found->survey.unit) : "mm"},
      {"pockets", pockets_json(findings)},
      {"total_ml", ml(total(mould))},
      {"measurements", measurements},
      {"detail_factor", to_decimals(mould.detail_factor, 4)}};
  if (findings.ways) json["ways"] = ways_json(*findings.ways);
  if (mould.found && mould.found->one) json["cavity"] = *mould.found->one + 1;
  if (mould.found && !mould.found->survey.basins.empty()) {
    json["joint_basins"] = Json::array();
    for (const auto& basin : mould.found->survey.basins)
      json["joint_basins"].push_back({{"pockets", basin.pockets},
                                      {"brimful_ml", ml(basin.brimful)},
                                      {"brim_mm", to_decimals(basin.brim_mm, 3)}});
  }
  if (findings.fit) json["fit"] = fit_json(*findings.fit);
  if (findings.casting) json["casting"] = casting_json(*findings.casting);
  if (findings.pour) json["poured"] = pour_json(*findings.pour, mould);
  if (findings.tilt) json["tilted"] = tilt_json(*findings.tilt);
  if (findings.packing) json["embeds"] = packing_json(*findings.packing);
  if (!findings.written.empty()) json["written"] = findings.written;
  json["notes"] = notes;
  json["how"] = brimful_how(mould);
  return json_document(json);
}

}  // namespace brimwright::reports
