#include "moulds/water_weighing.h"

#include "moulds/usual_moulds.h"
#include "units/printing.h"
#include "units/reading.h"
#include "units/water.h"
#include "units/wording.h"

#include <algorithm>
#include <numeric>

namespace brimwright::moulds {
namespace {

WaterLine read_line(const Fields& fields) {
  if (fields.is_text("filled_to")) {
    fields.choice("filled_to", {"brim"});
    return {};
  }
  if (!fields.has("filled_to"))
    throw UserError(fields.place("filled_to"), "is missing",
                    "give how far the water was filled: \"brim\", {\"depth\": \"30 mm\"} or "
                    "{\"below_brim\": \"5 mm\"}");
  const Fields to = fields.object("filled_to");
  if (to.has("depth") == to.has("below_brim"))
    throw UserError(to.place(), "must hold either \"depth\" or \"below_brim\"",
                    "give the line's distance from the lowest point or from the brim");
  const WaterLine line =
      to.has("depth")
          ? WaterLine{.from = WaterLine::From::floor,
                      .distance = to.positive_length("depth", "25 mm")}
          : WaterLine{.from = WaterLine::From::brim, .distance = to.length("below_brim")};
  to.refuse_unknown();
  return line;
}

Temperature read_temperature_of_water(const Fields& fields) {
  const Temperature temperature = fields.temperature("temperature");
  // Outside this the mould itself swells or the water freezes or steams; common practice, no
  // source.
  if (temperature < Temperature::in_celsius(0) || temperature > Temperature::in_celsius(60))
    throw UserError(fields.place("temperature"), "is " + in_both_scales(temperature),
                    "weigh water between 0 and 60 \u00b0C");
  return temperature;
}

std::vector<Mass> read_rounds(const Fields& fields) {
  const Place where = fields.place("weighings");
  std::vector<Mass> rounds;
  for (const std::string& text : fields.texts("weighings")) {
    const Place place{where.file, where.field + "/" + std::to_string(rounds.size())};
    rounds.push_back(read_mass(text, place));
    if (!(rounds.back() > Mass{}))
      throw UserError(place, "is zero", "give the grams of water, without the mould");
  }
  if (rounds.empty())
    throw UserError(where, "holds no weighing",
                    "give the grams of water of each round, such as [\"101.2 g\", \"100.8 g\"]");
  return rounds;
}

Mass mean(const std::vector<Mass>& rounds) {
  return std::accumulate(rounds.begin(), rounds.end(), Mass{}) / static_cast<double>(rounds.size());
}

}  // namespace

Volume WaterWeighing::volume_each(int cavities) const {
  const Volume weighed = mean(rounds) / water_density(temperature);
  return filled == Filled::all_cavities ? weighed / cavities : weighed;
}

std::optional<Share> WaterWeighing::spread() const {
  if (rounds.size() < 2) return std::nullopt;
  const auto [least, most] = std::minmax_element(rounds.begin(), rounds.end());
  return Share::of_one((*most - *least) / mean(rounds));
}

Length WaterWeighing::depth_in(const geometry::LevelCurve& curve) const {
  const Length height = curve.height();
  const bool from_brim = line.from == WaterLine::From::brim;
  const Length depth = from_brim ? height - line.distance : line.distance;
  // A mesh's height is a rounded number; a depth given as the whole height is the brim.
  if (depth > Length{} && depth <= height * (1 + 1e-4)) return std::min(depth, height);
  throw UserError({line_place.file, line_place.field + (from_brim ? "/below_brim" : "/depth")},
                  in_mm(line.distance, 2) + (from_brim ? " below the brim" : " deep") +
                      " lies outside the cavity, which is " + in_mm(height, 2) + " deep",
                  "check the line and the mould's height");
}

WaterWeighing read_water(const Fields& fields) {
  const auto filled = fields.choice("weighed_in", {"each cavity", "all cavities"});
  WaterWeighing water{
      .temperature = read_temperature_of_water(fields),
      .line = read_line(fields),
      .filled = filled == "all cavities" ? Filled::all_cavities : Filled::each_cavity,
      .rounds = read_rounds(fields),
      .place = fields.place(),
      .line_place = fields.place("filled_to")};
  fields.has("confirmed");
  fields.refuse_unknown();
  if (const auto spread = water.spread())
    usual_moulds().ask_found(fields, "spread of water", spread->of_one(),
                             in_percent(*spread, 0) + " apart");
  return water;
}

}  // namespace brimwright::moulds
