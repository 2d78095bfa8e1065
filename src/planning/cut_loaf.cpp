#include "planning/cut_loaf.h"

#include "geometry/sections/filled_part.h"
#include "geometry/surface/enclosed_volume.h"
#include "planning/cutting.h"
#include "planning/piece.h"

#include <algorithm>
#include <cmath>

namespace brimwright::planning {
namespace {

using geometry::Plane;
using geometry::TriangleMesh;

/// The surface that a layer ends at, in a cavity whose lowest point is at z = 0.
Plane upper_face(const LayerTally& layer) {
  if (!layer.surface) return Plane::level(layer.to / millimetre);
  const auto& [over_origin, rise_x, rise_y] = *layer.surface;
  const double length = std::hypot(rise_x, rise_y, 1);
  return {{-rise_x / length, -rise_y / length, 1 / length}, over_origin / millimetre / length};
}

std::vector<Plane> upper_faces(const PourTally& pour) {
  std::vector<Plane> faces;
  for (const auto& layer : pour.layers) faces.push_back(upper_face(layer));
  if (faces.empty()) faces.emplace_back();
  // What is pressed in lifts the last layer to the line.
  faces.back() = Plane::level(pour.line / millimetre);
  return faces;
}

/// Each layer is what its own face leaves of what the ones before it left.
void put_in(Inclusion& inclusion, TriangleMesh embed, const std::vector<Plane>& faces) {
  for (std::size_t k = 0; k < faces.size(); ++k) {
    inclusion.in_layers[k].push_back(part_below(embed, faces[k]));
    embed = part_above(embed, faces[k]);
    if (embed.triangles.empty()) return;
  }
  inclusion.proud.push_back(std::move(embed));
}

std::vector<Inclusion> inclusions_of(const std::vector<DecorationBody>& bodies,
                                     const PourTally& pour,
                                     const std::vector<DecorationFit>& fits) {
  const auto faces = upper_faces(pour);
  std::vector<Inclusion> inclusions(fits.size());
  for (std::size_t i = 0; i < fits.size(); ++i) {
    if (fits[i].embeds.empty()) continue;
    const TriangleMesh& solid = *bodies[i].solid;
    inclusions[i].in_layers.resize(faces.size());
    inclusions[i].holding = bodies[i].volume / geometry::enclosed_volume(solid);
    for (const auto& embed : fits[i].embeds)
      put_in(inclusions[i], geometry::placed(solid, embed.place), faces);
  }
  return inclusions;
}

/// A thin slab just under the set top, whose parts go by area.
TriangleMesh top_slab(const Cavity& cavity, Length top) {
  const Length thin = std::min(0.1 * millimetre, top / 2);
  return geometry::layer_between(cavity.solid, top - thin, top);
}

/// `holding` so much that all solids together hold `whole`.
Parted shared_out(const CutTally& cut, const std::vector<TriangleMesh>& solids, Volume whole) {
  Volume volume;
  for (const auto& solid : solids) volume += geometry::enclosed_volume(solid);
  Parted sum{
      .bars = std::vector<Volume>(cut.bars.size()), .offcuts = {}, .kerf = {}, .planing = {}};
  if (!(volume > Volume{})) return sum;
  for (const auto& solid : solids) sum += parted_by(cut, solid, whole / volume);
  return sum;
}

std::vector<double> shares_of_top(const Cavity& cavity, const CutTally& cut) {
  const TriangleMesh slab = top_slab(cavity, cut.knife.planed_to.value_or(cavity.line));
  const Volume whole = geometry::enclosed_volume(slab);
  std::vector<double> shares;
  for (const Volume bar : parted_by(cut, slab, 1).bars) shares.push_back(bar / whole);
  return shares;
}

}  // namespace

CutTally cut_tally(const Run& run, const Cavity& cavity, const std::vector<DecorationBody>& bodies,
                   const PourTally& pour, const std::vector<DecorationFit>& fits) {
  if (run.pipe && run.cut->top_planing > Length{})
    throw UserError(run.place("/cut/top_planing"),
                    "planes off the top that the topping is piped on",
                    "leave out \"top_planing\" or the topping");
  const auto layers = base_solids(run, cavity, pour);
  Volume solids;
  for (const auto& layer : layers) solids += geometry::enclosed_volume(layer);
  const Volume loaf = pour.batter.volume_each + pour.displaced;
  CutTally cut =
      cut_of(*run.cut, layers, loaf / solids, run.place("/cut"), inclusions_of(bodies, pour, fits));
  cut.top = shares_of_top(cavity, cut);
  return cut;
}

Parted topping_parted(const Run& run, const Cavity& cavity, const PourTally& pour,
                      const CutTally& cut, const Topping& topping) {
  const ToppingSolids solids = topping_solids(run, cavity, pour, topping.in_headspace_each);
  const auto& visible = solids.visible.empty()
                            ? std::vector<TriangleMesh>{top_slab(cavity, cavity.line)}
                            : solids.visible;
  Parted parted = shared_out(cut, solids.in_headspace, topping.in_headspace_each);
  parted += shared_out(cut, visible, topping.visible.volume);
  return parted;
}

}  // namespace brimwright::planning
