#include "reports/gauge_report.h"

#include "reports/json_numbers.h"
#include "reports/text_table.h"
#include "units/printing.h"

#include <nlohmann/json.hpp>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;
using moulds::Mould;
using Side = TextTable::Side;

std::string ml(Volume volume) { return fixed(volume / millilitre, 1) + " ml"; }

std::string in_fluid_ounces(Volume volume) {
  return fixed(volume / us_fluid_ounce, 2) + " US fl oz";
}

std::string measured_line(const moulds::Measurement& measured) {
  std::string text = "by " + moulds::name_of(measured.way) + " " + ml(measured.brimful);
  if (measured.spread)
    text += " (weighings within " + fixed(measured.spread->in_percent(), 1) + " %)";
  return text;
}

/// Every tenth of the depth, or the depths asked for.
std::vector<Length> dip_depths(const Mould& mould, const std::vector<Length>& asked) {
  if (!asked.empty()) return asked;
  std::vector<Length> depths;
  for (int tenth = 1; tenth <= 10; ++tenth) depths.push_back(tenth / 10.0 * mould.curve.height());
  return depths;
}

std::string dip_stick(const Mould& mould, const std::vector<Length>& depths) {
  TextTable table({Side::right, Side::right, Side::right, Side::right, Side::right});
  table.row({"depth", "below the brim", "holds", "US fl oz", "1 mm here is"});
  table.rule();
  for (const Length depth : depths) {
    const Volume held = mould.curve.volume_below(depth);
    table.row({fixed(depth / millimetre, 1) + " mm",
               fixed((mould.curve.height() - depth) / millimetre, 1) + " mm", ml(held),
               fixed(held / us_fluid_ounce, 2),
               fixed(mould.curve.free_surface(depth) * millimetre / millilitre, 2) + " ml"});
  }
  return table.text();
}

std::string count_text(const Mould& mould) {
  if (mould.cavities == 1) return "One cavity";
  return std::to_string(mould.cavities) + " cavities, each";
}

std::string severity_name(Severity severity) {
  return severity == Severity::note ? "note" : "caution";
}

/// A shape opens upward by its definition; whether a mesh has ledges that keep air is not known
/// here.
Json trapped_air(const Mould& mould) {
  for (const auto& measured : mould.measurements)
    if (measured.way == moulds::Way::mesh) return nullptr;
  return 0.0;
}

Json pocket_json(const Mould& mould, const std::vector<Length>& depths) {
  const Length floor = mould.floor;
  const Length brim = floor + mould.curve.height();
  Json levels = Json::array();
  for (const Length depth : depths)
    levels.push_back(
        {{"depth_mm", to_decimals(depth / millimetre, 3)},
         {"volume_ml", to_decimals(mould.curve.volume_below(depth) / millilitre, 4)},
         {"ml_per_mm", to_decimals(mould.curve.free_surface(depth) * millimetre / millilitre, 4)}});
  return {{"brimful_ml", to_decimals(mould.curve.brimful() / millilitre, 4)},
          {"floor_mm", to_decimals(floor / millimetre, 3)},
          {"brim_mm", to_decimals(brim / millimetre, 3)},
          {"opening_cm2",
           to_decimals(mould.curve.free_surface(mould.curve.height()) / square_centimetre, 4)},
          {"trapped_air_ml", trapped_air(mould)},
          {"levels", levels}};
}

}  // namespace

std::string depth_text(Length depth) {
  return trimmed(depth / millimetre, 1) + " mm (" + in_inches(depth) + ")";
}

std::string gauge_text(const Mould& mould, const std::vector<Length>& depths) {
  const Volume brimful = mould.curve.brimful();
  std::string text = mould.name + "\n";
  if (!mould.description.empty()) text += wrapped(mould.description, "  ", "  ");
  if (!mould.note.empty()) text += wrapped(mould.note, "  ", "  ");
  text += "\n" + wrapped(count_text(mould) + " holds " + ml(brimful) + " to the brim (" +
                             in_fluid_ounces(brimful) + "), " + depth_text(mould.curve.height()) +
                             " deep.",
                         "  ", "  ");
  if (mould.cavities > 1)
    text += wrapped("All of them: " + ml(mould.cavities * brimful) + ".", "  ", "  ");
  for (const auto& measured : mould.measurements)
    text += wrapped(measured_line(measured), "  ", "  ");
  text += "\n" + dip_stick(mould, dip_depths(mould, depths));
  if (!mould.remarks.empty()) text += "\n";
  for (const auto& remark : mould.remarks)
    text += wrapped(remark.text, remark.severity == Severity::note ? " - " : " ! ", "   ");
  return text;
}

std::string gauge_json(const Mould& mould, const std::vector<Length>& depths) {
  Json pockets = Json::array();
  for (int i = 0; i < mould.cavities; ++i) pockets.push_back(pocket_json(mould, depths));
  Json measurements = Json::array();
  for (const auto& measured : mould.measurements)
    measurements.push_back({{"by", moulds::name_of(measured.way)},
                            {"brimful_ml", to_decimals(measured.brimful / millilitre, 4)}});
  Json notes = Json::array();
  for (const auto& remark : mould.remarks)
    notes.push_back({{"severity", severity_name(remark.severity)}, {"text", remark.text}});
  const Volume total = mould.cavities * mould.curve.brimful();
  const Json json = {{"schema", "brimwright.gauge/1"},
                     {"source", mould.file},
                     {"name", mould.name},
                     {"role", "cavity"},
                     {"unit", "mm"},
                     {"pockets", pockets},
                     {"total_ml", to_decimals(total / millilitre, 4)},
                     {"measurements", measurements},
                     {"detail_factor", to_decimals(mould.detail_factor, 4)},
                     {"notes", notes}};
  return json.dump(2) + "\n";
}

}  // namespace brimwright::reports
