#include "reports/catalogue_report.h"

#include "reports/json_numbers.h"
#include "reports/text_table.h"
#include "units/printing.h"

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
    table.row({mould.name, path, std::to_string(mould.cavities),
               fixed(mould.curve.brimful() / millilitre, 1) + " ml"});
  return table.text();
}

std::string range_text(std::pair<double, double> range) {
  if (range.first == range.second) return trimmed(range.first, 1);
  return trimmed(range.first, 1) + " to " + trimmed(range.second, 1);
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
             "The saponification value reckoned with is the middle of the published range. * "
             "the range is from memory, not read in its source: ask your supplier for the "
             "lot's own value and give it in the formula.",
             "  ", "  ");
}

std::string read_or_remembered(bool read) {
  return read ? "read in the source" : "from memory, not read in the source";
}

std::string fat_in_full(const Fat& fat) {
  TextTable table({Side::left, Side::left});
  table.row({"named in a formula as", fat.id});
  table.row({"kind", fat.kind});
  table.row({"INCI name", fat.inci});
  table.row({"INCI name of its sodium soap", fat.inci_sodium_soap});
  const bool is_exact = fat.saponification.low == fat.saponification.high;
  table.row({"saponification value, mg KOH/g",
             range_text(fat.saponification) +
                 (is_exact ? "" : ", reckoned with " + value_text(fat.saponification.typical))});
  if (fat.iodine_value) table.row({"iodine value, g I2/100 g", range_text(*fat.iodine_value)});
  if (fat.melting_range_c) table.row({"melts at, °C", range_text(*fat.melting_range_c)});
  if (fat.density)
    table.row({"density at " + trimmed(fat.density->at.celsius(), 0) + " °C, g/ml",
               fixed(fat.density->low / gram_per_millilitre, 3) + " to " +
                   fixed(fat.density->high / gram_per_millilitre, 3)});
  std::string text = fat.name + "\n" + table.text();
  text += wrapped("Saponification value: " + fat.saponification_source + "; " +
                      read_or_remembered(fat.saponification_read) + ".",
                  "  ", "  ");
  if (fat.density)
    text += wrapped(
        "Density: " + fat.density->source + "; " + read_or_remembered(fat.density->read) + ".",
        "  ", "  ");
  if (!fat.note.empty()) text += wrapped("Note: " + fat.note + ".", "  ", "  ");
  return text;
}

Json fat_json(const Fat& fat) {
  const auto& range = fat.saponification;
  Json json = {{"id", fat.id},
               {"name", fat.name},
               {"kind", fat.kind},
               {"inci", fat.inci},
               {"inci_sodium_soap", fat.inci_sodium_soap},
               {"saponification_value_mg_koh_per_g",
                {{"low", range.low.mg_koh_per_g()},
                 {"typical", range.typical.mg_koh_per_g()},
                 {"high", range.high.mg_koh_per_g()},
                 {"source", fat.saponification_source},
                 {"read", fat.saponification_read}}}};
  if (fat.density)
    json["density_g_per_ml"] = {{"low", to_decimals(fat.density->low / gram_per_millilitre, 4)},
                                {"high", to_decimals(fat.density->high / gram_per_millilitre, 4)},
                                {"at_celsius", fat.density->at.celsius()},
                                {"source", fat.density->source},
                                {"read", fat.density->read}};
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
               fixed(geometry::area_of(tip.opening) / square_millimetre, 1) + " mm2"});
  return table.text() +
         wrapped(
             "Generic sizes, common practice, no source. Measure your own tip's opening and "
             "write it in the run, or in a file of tips with your hand's factor.",
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
  return json.dump(2) + "\n";
}

}  // namespace brimwright::reports
