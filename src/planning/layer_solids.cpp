#include "planning/layer_solids.h"

#include "geometry/levels/level_curve.h"
#include "geometry/sections/filled_part.h"
#include "geometry/surface/disjoint_sets.h"
#include "geometry/surface/enclosed_volume.h"
#include "units/advice_text.h"
#include "units/printing.h"
#include "units/wording.h"

#include <algorithm>
#include <cstdint>
#include <limits>
#include <string>
#include <utility>

namespace brimwright::planning {
namespace {

using geometry::Tilt;
using geometry::TriangleMesh;

bool is_tilted(const LayerPour& layer) { return layer.tilted && layer.tilted->angle > Angle(); }

/// The plane that is level, at `height` over the origin, while the mould is tilted.
geometry::Plane surface(const Tilt& tilt, double height_mm) {
  // How high the mould's own directions end when it is tilted.
  const TriangleMesh axes{.vertices_mm = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}, .triangles = {}};
  const auto ends = tilted(axes, tilt).vertices_mm;
  return {{ends[0][2], ends[1][2], ends[2][2]}, height_mm};
}

SlopingSurface sloping(const geometry::Plane& plane, double floor_mm) {
  const auto& [x, y, z] = plane.normal;
  return {(plane.offset_mm / z - floor_mm) * millimetre, -x / z, -y / z};
}

/// The height of the low brim over the origin while the mould is tilted: the lowest point of the
/// opening, the cavity's highest flat or point.
double low_brim(const TriangleMesh& cavity, const Tilt& tilt) {
  const auto box = bounding_box(cavity);
  // A brim out of a modelling program is level but for single precision's rounding.
  const double opening = box.high_mm[2] - 1e-6 * (box.high_mm[2] - box.low_mm[2]);
  const auto heights = tilted(cavity, tilt).vertices_mm;
  double lowest = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < heights.size(); ++i)
    if (cavity.vertices_mm[i][2] >= opening) lowest = std::min(lowest, heights[i][2]);
  return lowest;
}

/// Into how many bodies that share no corner a solid falls.
std::size_t bodies_of(const TriangleMesh& solid) {
  geometry::DisjointSets body(solid.vertices_mm.size());
  for (const auto& [a, b, c] : solid.triangles) {
    body.unite(a, b);
    body.unite(b, c);
  }
  std::size_t bodies = 0;
  for (std::uint32_t v = 0; v < body.size(); ++v) bodies += body.root(v) == v ? 1 : 0;
  return bodies;
}

/// Pours layer after layer into what is left free of a cavity.
class Pouring {
 public:
  Pouring(const TriangleMesh& cavity, double holding)
      : cavity_(cavity),
        holding_(holding),
        free_(cavity),
        floor_(bounding_box(cavity).low_mm[2]),
        hair_(1e-9 * enclosed_volume(cavity)) {}

  LayerSolid pour(const LayerPour& layer, const Place& where) {
    const Tilt tilt = is_tilted(layer) ? *layer.tilted : Tilt{};
    check(tilt, where);
    const Volume volume = layer.volume / holding_;
    if (!(volume > hair_)) throw UserError(where, "is a layer that holds nothing", "leave it out");
    if (free_.triangles.empty()) refuse_overflow(layer, Volume{}, where);
    const TriangleMesh standing = tilted(free_, tilt);
    const double lowest = bounding_box(standing).low_mm[2];
    const auto curve = geometry::LevelCurve::of_solid(standing);
    const Volume most = curve.volume_below((low_brim(cavity_, tilt) - lowest) * millimetre);
    if (volume > most + hair_) refuse_overflow(layer, holding_ * most, where);
    const auto plane = surface(tilt, lowest + curve.depth_at(volume) / millimetre);
    TriangleMesh part = part_below(free_, plane);
    free_ = part_above(free_, plane);
    tilted_ = tilted_ || is_tilted(layer);
    if (tilted_) refuse_pools(part, is_tilted(layer), where);
    const auto box = bounding_box(part);
    LayerSolid poured{std::move(part), (box.low_mm[2] - floor_) * millimetre,
                      (box.high_mm[2] - floor_) * millimetre};
    if (is_tilted(layer)) poured.surface = sloping(plane, floor_);
    return poured;
  }

 private:
  [[noreturn]] static void refuse_overflow(const LayerPour& layer, Volume most,
                                           const Place& where) {
    const std::string spills = is_tilted(layer)
                                   ? ", which spills over the low brim of a mould tilted by " +
                                         trimmed(layer.tilted->angle.degrees(), 2) + "\u00b0"
                                   : ", which spills over the brim";
    throw UserError(
        where, "is " + in_ml(layer.volume) + spills,
        "pour at most " + most_text(most) + (is_tilted(layer) ? ", or tilt the mould less" : ""));
  }

  static void refuse_pools(const TriangleMesh& part, bool is_tilted, const Place& where) {
    const std::size_t pools = bodies_of(part);
    if (pools < 2) return;
    throw UserError(where,
                    "lies in " + std::to_string(pools) +
                        " pools that do not meet, and a pour fills only the one it goes into",
                    is_tilted ? "tilt the mould less or pour more"
                              : "pour more, or tilt the mould less for the layer below");
  }

  const TriangleMesh& cavity_;
  double holding_;
  TriangleMesh free_;
  double floor_;
  Volume hair_;          // what rounding may leave of a cavity or take from it
  bool tilted_ = false;  // some layer so far has a sloping surface
};

void refuse_above_line(const std::vector<LayerSolid>& solids, const std::vector<LayerPour>& layers,
                       const Place& where) {
  const Length line = solids.back().to;
  for (std::size_t i = 0; i < solids.size(); ++i)
    if (is_tilted(layers[i]) && solids[i].to > line + 1e-6 * millimetre)
      throw UserError({where.file, where.field + "/" + std::to_string(i)},
                      "stands " + in_mm(solids[i].to) +
                          " up the low wall, above the last layer's surface at " + in_mm(line),
                      "tilt the mould less, make this layer smaller or raise the pour line");
}

}  // namespace

std::vector<LayerSolid> layer_solids(const TriangleMesh& cavity,
                                     const std::vector<LayerPour>& layers, double holding,
                                     const Place& where) {
  Pouring pouring(cavity, holding);
  std::vector<LayerSolid> solids;
  for (const LayerPour& layer : layers)
    solids.push_back(
        pouring.pour(layer, {where.file, where.field + "/" + std::to_string(solids.size())}));
  if (!solids.empty()) refuse_above_line(solids, layers, where);
  return solids;
}

PouredCavity poured_cavity(const Run& run, const TriangleMesh& cavity, Length line,
                           const std::vector<LayerTally>& layers) {
  TriangleMesh filled = filled_part(cavity, line);
  // To the line, not to the brim, so that the last layer ends at the line and nowhere else.
  const double holding = run.pour.mould.curve.volume_below(line) / enclosed_volume(filled);
  if (layers.empty()) return {{{std::move(filled), Length{}, line}}, holding};
  std::vector<LayerPour> pours;
  for (const auto& layer : layers) pours.push_back({layer.volume_each, layer.tilted});
  return {layer_solids(cavity, pours, holding, run.place("/pour/layers")), holding};
}

}  // namespace brimwright::planning
