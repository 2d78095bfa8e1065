#include "reports/catalogue_report.h"

#include "chemistry/fat_density.h"
#include "chemistry/theoretical_value.h"
#include "reports/fat_text.h"
#include "reports/json_document.h"
#include "reports/json_numbers.h"
#include "reports/text_table.h"
#include "units/printing.h"
#include "units/wording.h"

#include <nlohmann/json.hpp>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;
using Side = TextTable::Side;
using chemistry::Fat;

std::string value_text(chemistry::SaponificationValue value) {
  return trimmed(value.mg_koh_per_g(), 2);
}

std::string range_text(const chemistry::SaponificationRange& range) {
  if (range.low == range.high) return value_text(range.typical);
  return value_text(range.low) + " to " + value_text(range.high);
}

std::string moulds_text(const std::vector<ShippedMould>& moulds) {
  TextTable table({Side::left, Side::left, Side::right, Side::right});
  table.row({"Mould", "named in a run as", "cavities", "brimful each"});
  table.rule();
  for (const auto& [path, mould] : moulds)
    table.row({mould.name, path, std::to_string(mould.cavities), fixed_ml(mould.curve.brimful())});
  return table.text();
}

std::string fats_text(const std::vector<Fat>& fats) {
  TextTable table({Side::left, Side::left, Side::left});
  table.row({"Fat", "name in a formula", "mg KOH/g (range)"});
  table.rule();
  for (const auto& fat : fats)
    table.row({fat.name, fat.id,
               value_text(fat.saponification.typical) + " (" + range_text(fat.saponification) +
                   ")" + (fat.saponification_read ? "" : " *")});
  return table.text() +
         wrapped(
             "The saponification value used is the middle of the published range, or less where "
             "other documents or the fatty acids call for less; the range covers all of them, and "
             "of "
             "a wax that lye attacks slowly it reaches down to what is sure to react. * part of "
             "the "
             "range has not been checked at its source: ask your supplier for the lot's own value "
             "and give it in the formula.",
             "  ", "  ");
}

Json citation_json(const chemistry::Citation& from) {
  Json json = {{"source", from.source}, {"read", from.read}};
  if (!from.also.empty()) json["also"] = from.also;
  return json;
}

Json range_json(std::pair<double, double> range, const chemistry::Citation& from) {
  Json json = {{"low", range.first}, {"high", range.second}};
  json.update(citation_json(from));
  return json;
}

/// Every document's own range; null where it states no least or no most.
Json readings_json(const Fat& fat) {
  Json readings = Json::array();
  for (const auto& reading : fat.saponification_readings) {
    Json json = {{"low", reading.low ? Json(*reading.low) : Json(nullptr)},
                 {"high", reading.high ? Json(*reading.high) : Json(nullptr)},
                 {"source", reading.from.source},
                 {"read", reading.from.read}};
    if (!reading.from.also.empty()) json["note"] = reading.from.also;
    readings.push_back(std::move(json));
  }
  return readings;
}

Json saponification_json(const Fat& fat) {
  const auto& range = fat.saponification;
  Json json = {{"low", range.low.mg_koh_per_g()},
               {"typical", range.typical.mg_koh_per_g()},
               {"high", range.high.mg_koh_per_g()},
               {"typical_chosen", fat.typical_chosen},
               {"readings", readings_json(fat)}};
  json.update(
      citation_json({fat.saponification_source, fat.saponification_read, fat.saponification_also}));
  if (fat.saponification_read_elsewhere)
    json["read_elsewhere"] =
        range_json(*fat.saponification_read_elsewhere, fat.saponification_read_elsewhere_in);
  return json;
}

Json theory_json(const Fat& fat) {
  const auto theory = chemistry::theoretical_value(fat);
  if (!theory) return nullptr;
  const auto rounded = [](chemistry::SaponificationValue value) {
    return to_decimals(value.mg_koh_per_g(), 2);
  };
  const auto disagreement = chemistry::profile_disagreement(fat, fat.saponification);
  return {{"low", rounded(theory->pure.low)},
          {"middle", rounded(theory->pure.typical)},
          {"high", rounded(theory->pure.high)},
          {"low_with_unsaponifiable", rounded(theory->least)},
          {"unsaponifiable_percent", to_decimals(theory->unsaponifiable.in_percent(), 3)},
          {"unsaponifiable_assumed", theory->unsaponifiable_assumed},
          {"disagreement", disagreement ? Json(disagreement->text) : Json(nullptr)}};
}

Json fatty_acids_json(const chemistry::FattyAcidProfile& profile) {
  Json acids = Json::array();
  for (const auto& [acid, low, high, read] : profile.acids)
    acids.push_back({{"name", acid.name},
                     {"common_name", chemistry::common_name(acid)},
                     {"carbons", acid.carbons},
                     {"double_bonds", acid.double_bonds},
                     {"low_percent", to_decimals(low.in_percent(), 3)},
                     {"high_percent", to_decimals(high.in_percent(), 3)},
                     {"read", read}});
  return {{"source", profile.source}, {"read", profile.read()}, {"acids", acids}};
}

/// With the slope, which is one for all molten fats but the fatty acids. Expects a density.
Json density_json(const Fat& fat) {
  const auto& density = *fat.density;
  const auto slope = chemistry::density_slope_of(fat);
  return {{"low", to_decimals(density.low / gram_per_millilitre, 4)},
          {"high", to_decimals(density.high / gram_per_millilitre, 4)},
          {"at_celsius", density.at.celsius()},
          {"per_kelvin", to_decimals(slope.per_kelvin / gram_per_millilitre, 6)},
          {"per_kelvin_source", slope.from.source},
          {"source", density.source},
          {"read", density.read}};
}

Json slow_json(const chemistry::SlowToSaponify& slow) {
  Json json = {{"how", slow.how}};
  json.update(citation_json(slow.how_from));
  json["sure_mg_koh_per_g"] = {{"value", slow.sure.mg_koh_per_g()}};
  json["sure_mg_koh_per_g"].update(citation_json(slow.acids_from));
  return json;
}

void put_figures(Json& json, const Fat& fat) {
  if (fat.iodine_value)
    json["iodine_value_g_i2_per_100g"] = range_json(*fat.iodine_value, fat.iodine_value_from);
  if (fat.density) json["density_g_per_ml"] = density_json(fat);
  if (fat.melting_range_c)
    json["melting_range_celsius"] = range_json(*fat.melting_range_c, fat.melting_range_from);
  if (fat.unsaponifiable_most) {
    json["unsaponifiable"] = {
        {"most_percent", to_decimals(fat.unsaponifiable_most->in_percent(), 3)}};
    json["unsaponifiable"].update(citation_json(fat.unsaponifiable_from));
  }
  if (fat.mean_molar_mass_g_per_mol) {
    json["mean_molar_mass_g_per_mol"] = {{"value", *fat.mean_molar_mass_g_per_mol}};
    json["mean_molar_mass_g_per_mol"].update(citation_json(fat.mean_molar_mass_from));
  }
  if (fat.fatty_acids) json["fatty_acids"] = fatty_acids_json(*fat.fatty_acids);
  if (fat.slow) json["saponifies_slowly"] = slow_json(*fat.slow);
}

Json fat_json(const Fat& fat) {
  Json json = {{"id", fat.id},
               {"name", fat.name},
               {"also_called", fat.also_called},
               {"kind", fat.kind},
               {"liquid_at_room_temperature", fat.liquid_at_room_temperature()},
               {"inci", fat.inci},
               {"inci_read", fat.inci_read},
               {"inci_sodium_soap", fat.inci_sodium_soap},
               {"inci_sodium_soap_confidence", fat.inci_sodium_soap_confidence},
               {"inci_potassium_soap", fat.inci_potassium_soap},
               {"inci_potassium_soap_confidence", fat.inci_potassium_soap_confidence},
               {"saponification_value_mg_koh_per_g", saponification_json(fat)},
               {"theoretical_value_mg_koh_per_g", theory_json(fat)}};
  put_figures(json, fat);
  if (!fat.note.empty()) json["note"] = fat.note;
  return json;
}

std::string opening_text(const geometry::Opening& opening) {
  const auto mm = [](Length length) { return trimmed(length / millimetre, 2); };
  if (const auto* round = std::get_if<geometry::RoundOpening>(&opening))
    return "round, radius " + mm(round->radius) + " mm";
  if (const auto* star = std::get_if<geometry::StarOpening>(&opening))
    return std::to_string(star->points) + "-point star, radii " + mm(star->outer_radius) + " and " +
           mm(star->inner_radius) + " mm";
  return "an outline of " +
         std::to_string(std::get<geometry::OutlineOpening>(opening).points_mm.size()) + " corners";
}

std::string tips_text(const std::vector<planning::Tip>& tips) {
  TextTable table({Side::left, Side::left, Side::right});
  table.row({"Tip, as a run names it", "opening", "area"});
  table.rule();
  for (const auto& tip : tips)
    table.row({tip.name, opening_text(tip.opening),
               fixed(geometry::area_of(tip.opening) / square_millimetre, 1) + " mm²"});
  return table.text() +
         wrapped(
             "Generic sizes, common practice, no source. Measure your own tip's opening and "
             "write it in the run, or in a file of tips with the correction for your hand.",
             "  ", "  ");
}

}  // namespace

std::string catalogue_text(const Catalogue& catalogue, bool in_full) {
  std::string text;
  if (!catalogue.moulds.empty()) {
    text += moulds_text(catalogue.moulds);
    if (in_full) {
      const auto& mould = catalogue.moulds.front().mould;
      text += wrapped(mould.description, "  ", "  ");
      text += wrapped("gauge " + catalogue.moulds.front().path + " shows its depths.", "  ", "  ");
    }
  }
  const auto add = [&](const std::string& more) { text += (text.empty() ? "" : "\n") + more; };
  if (!catalogue.fats.empty())
    add(in_full ? fat_in_full(catalogue.fats.front()) : fats_text(catalogue.fats));
  if (!catalogue.tips.empty()) add(tips_text(catalogue.tips));
  return text;
}

std::string catalogue_json(const Catalogue& catalogue) {
  Json json = {{"schema", "brimwright.list/1"}};
  if (!catalogue.moulds.empty()) json["moulds"] = Json::array();
  for (const auto& [path, mould] : catalogue.moulds)
    json["moulds"].push_back({{"path", path},
                              {"name", mould.name},
                              {"description", mould.description},
                              {"cavities", mould.cavities},
                              {"brimful_ml", to_decimals(mould.curve.brimful() / millilitre, 4)},
                              {"depth_mm", to_decimals(mould.curve.height() / millimetre, 3)}});
  if (!catalogue.fats.empty()) json["fats"] = Json::array();
  for (const auto& fat : catalogue.fats) json["fats"].push_back(fat_json(fat));
  if (!catalogue.tips.empty()) json["tips"] = Json::array();
  for (const auto& tip : catalogue.tips)
    json["tips"].push_back(
        {{"name", tip.name},
         {"opening", opening_text(tip.opening)},
         {"area_mm2", to_decimals(geometry::area_of(tip.opening) / square_millimetre, 3)}});
  return json_document(json);
}

}  // namespace brimwright::reports
