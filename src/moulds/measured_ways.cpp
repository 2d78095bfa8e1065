#include "moulds/measured_ways.h"

#include "geometry/sections/facet_deficit.h"
#include "moulds/mesh_cavity.h"
#include "moulds/poured_factor.h"
#include "moulds/shape_curve.h"
#include "moulds/shape_reading.h"
#include "moulds/water_weighing.h"
#include "schemas/kinds.h"
#include "units/printing.h"
#include "units/reading.h"
#include "units/wording.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <utility>

namespace brimwright::moulds {
namespace {

using Json = nlohmann::ordered_json;

constexpr Length read_to = 0.5 * millimetre;  // common practice, no source
constexpr std::size_t most_measures = 100;    // of an outline: beyond, each tells next to nothing

/// The texts in a shape that are lengths, in its order.
void find_lengths(Json& json, std::vector<Json*>& lengths) {
  if (json.is_structured()) {
    for (Json& inner : json) find_lengths(inner, lengths);
    return;
  }
  if (!json.is_string()) return;
  try {
    (void)read_length(json.get<std::string>(), {});
    lengths.push_back(&json);
  } catch (const UserError&) {
    return;  // a kind, an angle, a share
  }
}

/// What the whole document's shape holds.
std::optional<Volume> brimful_of(const Json& document, const std::string& file) {
  try {
    const Fields fields = Fields::parse(document.dump(), file);
    fields.of(schemas::mould());
    return level_curve(read_shape(fields.object("shape"))).brimful();
  } catch (const UserError&) {
    return std::nullopt;  // a measure that cannot be so
  }
}

/// One measure a little more, or a little less where more cannot be.
Volume effect_of(Json& measure, const Json& document, const std::string& file, Volume brimful) {
  const Json as_it_is = measure;
  const Length length = read_length(as_it_is.get<std::string>(), {});
  Volume effect;
  for (const Length off : {read_to, -read_to}) {
    measure = exact((length + off) / millimetre) + " mm";
    if (const auto other = brimful_of(document, file)) {
      effect = *other - brimful;
      break;
    }
  }
  measure = as_it_is;
  return effect;
}

MeasuredWay by_dimensions(const Fields& fields, const Mould& mould) {
  geometry::LevelCurve curve = level_curve(*mould.shape);
  const Volume brimful = curve.brimful();
  Json document = Json::parse(fields.json());
  std::vector<Json*> lengths;
  find_lengths(document.at("shape"), lengths);
  MeasuredWay way{.way = Way::dimensions, .curve = std::move(curve), .rests_on = {}};
  if (lengths.size() > most_measures) {
    way.rests_on = "so many measures that their errors are not worked out";
    return way;
  }
  double squares = 0;
  for (Json* length : lengths)
    squares += std::pow(effect_of(*length, document, fields.file(), brimful) / millilitre, 2);
  const Volume off = std::sqrt(squares) * millilitre;
  way.low = brimful - off;
  way.high = brimful + off;
  way.rests_on = "each measure good to 0.5 mm; flutes and lettering not counted";
  return way;
}

MeasuredWay by_mesh(const Mould& mould) {
  MeasuredWay way{.way = Way::mesh,
                  .curve = mould.found->typical().curve,
                  .rests_on = "what its facets cut off round walls, no more"};
  const Volume brimful = way.curve.brimful();
  if (!mould.mesh) return way;
  const Volume smooth = (1 + geometry::facet_deficit(*mould.mesh).of_one()) * brimful;
  way.low = std::min(brimful, smooth);
  way.high = std::max(brimful, smooth);
  return way;
}

MeasuredWay by_water(const Fields& fields, const Mould& mould) {
  MeasuredWay way{
      .way = Way::water, .curve = mould.curve.holding(1 / poured_factor(mould)), .rests_on = {}};
  const WaterWeighing water = read_water(fields.object("water"));
  way.rests_on = counted(static_cast<std::int64_t>(water.rounds.size()), "weighing", "weighings");
  if (water.rounds.size() < 2) {
    way.rests_on += ": how well it repeats is not known; weigh once more";
    return way;
  }
  const auto [least, most] = std::minmax_element(water.rounds.begin(), water.rounds.end());
  const auto brimful_by = [&](Mass round) {
    WaterWeighing one = water;
    one.rounds = {round};
    return one.volume_each(mould.cavities) / water.volume_each(mould.cavities) *
           way.curve.brimful();
  };
  way.low = brimful_by(*least);
  way.high = brimful_by(*most);
  way.rests_on += ", from the least to the greatest";
  return way;
}

}  // namespace

std::vector<MeasuredWay> measured_ways(const Fields& fields, const Mould& mould) {
  fields.of(schemas::mould());
  std::vector<MeasuredWay> ways;
  for (const Measurement& measured : mould.measurements) {
    if (measured.way == Way::water) ways.push_back(by_water(fields, mould));
    if (measured.way == Way::mesh) ways.push_back(by_mesh(mould));
    if (measured.way == Way::dimensions) ways.push_back(by_dimensions(fields, mould));
  }
  return ways;
}

}  // namespace brimwright::moulds
