#include "geometry/levels/tilted_pour.h"

#include "geometry/sections/filled_part.h"
#include "geometry/surface/disjoint_sets.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/vectors.h"
#include "units/bounded_text.h"
#include "units/printing.h"
#include "units/wording.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>
#include <stdexcept>
#include <utility>
#include <vector>

namespace brimwright::geometry {
namespace {

bool is_tilt(const Tilt& tilt) {
  const double right_angle = pi / 2;
  return tilt.angle >= Angle() && tilt.angle.radians() < right_angle &&
         std::isfinite(tilt.low_side.radians());
}

/// The tilted mould's three directions as the level mould sees them: towards the low side, along
/// the axis, up.
std::array<Point, 3> tilted_axes(const Tilt& tilt) {
  const double c = std::cos(tilt.angle.radians()), s = std::sin(tilt.angle.radians());
  const double x = std::cos(tilt.low_side.radians()), y = std::sin(tilt.low_side.radians());
  return {{{c * x, c * y, s}, {-y, x, 0}, {-s * x, -s * y, c}}};
}

/// A straight piece of surface as the level mould sees it, from its lower end to its higher.
struct Edge {
  Point low, high;
};

template <class See>
void for_each_edge(const TriangleMesh& mesh, See see) {
  for (const auto& corners : mesh.triangles) {
    for (std::size_t i = 0; i < 3; ++i) {
      const Point& a = mesh.vertices_mm[corners[i]];
      const Point& b = mesh.vertices_mm[corners[(i + 1) % 3]];
      see(a[2] <= b[2] ? Edge{a, b} : Edge{b, a});
    }
  }
}

double between(double from, double to, double share) { return from + share * (to - from); }

}  // namespace

void check(const Tilt& tilt, const Place& where) {
  if (is_tilt(tilt)) return;
  throw UserError(where, "is " + trimmed(tilt.angle.degrees(), 2) + "\u00b0, which is not a tilt",
                  "give how far the mould is tilted from level, from 0\u00b0 to below 90\u00b0");
}

TriangleMesh tilted(const TriangleMesh& cavity, const Tilt& tilt) {
  const auto axes = tilted_axes(tilt);
  TriangleMesh turned = cavity;
  for (Point& p : turned.vertices_mm) p = {dot(axes[0], p), dot(axes[1], p), dot(axes[2], p)};
  return turned;
}

TiltedPour::TiltedPour(TriangleMesh cavity, Tilt tilt)
    : cavity_(std::move(cavity)),
      tilt_(is_tilt(tilt) ? tilt : throw std::logic_error("the angle is no tilt")),
      up_(tilted_axes(tilt)[2]),
      curve_(LevelCurve::of_solid(tilted(cavity_, tilt))) {
  const Box box = bounding_box(cavity_);
  floor_z_ = box.low_mm[2];
  brim_z_ = box.high_mm[2];
  // A brim out of a modelling program is level but for single precision's rounding.
  const double opening_z = brim_z_ - 1e-6 * (brim_z_ - floor_z_);
  lowest_ = spill_ = std::numeric_limits<double>::infinity();
  for (const Point& p : cavity_.vertices_mm) {
    const double height = dot(up_, p);
    if (height < lowest_) lowest_z_ = p[2];
    lowest_ = std::min(lowest_, height);
    if (p[2] >= opening_z) spill_ = std::min(spill_, height);
  }
}

Length TiltedPour::lowest_mark() const { return (lowest_z_ - floor_z_) * millimetre; }
Length TiltedPour::brim() const { return (brim_z_ - floor_z_) * millimetre; }
Volume TiltedPour::most() const { return volume_at(brim()); }

/// The surface lies where the wall at the mark's height is lowest when tilted.
double TiltedPour::surface_at(Length mark) const {
  const double z = floor_z_ + mark / millimetre;
  if (z <= lowest_z_) return lowest_;
  if (z >= brim_z_) return spill_;
  double surface = spill_;
  for_each_edge(cavity_, [&](const Edge& edge) {
    if (z < edge.low[2] || z > edge.high[2]) return;
    const double low = dot(up_, edge.low), high = dot(up_, edge.high);
    const double rise = edge.high[2] - edge.low[2];
    const double here =
        rise > 0 ? between(low, high, (z - edge.low[2]) / rise) : std::min(low, high);
    surface = std::min(surface, here);
  });
  return std::max(surface, lowest_);
}

double TiltedPour::surface_with(Volume volume) const {
  return std::min(lowest_ + curve_.depth_at(volume) / millimetre, spill_);
}

Volume TiltedPour::volume_at(Length mark) const {
  return curve_.volume_below((surface_at(mark) - lowest_) * millimetre);
}

/// The highest wetted spot, as the level mould sees it.
Length TiltedPour::mark_for(Volume volume) const {
  if (!(volume > Volume())) return lowest_mark();
  if (volume >= most()) return brim();
  const double surface = surface_with(volume);
  double highest = lowest_z_;
  for_each_edge(cavity_, [&](const Edge& edge) {
    const double low = dot(up_, edge.low), high = dot(up_, edge.high);
    if (low <= surface) highest = std::max(highest, edge.low[2]);
    if (high <= surface) highest = std::max(highest, edge.high[2]);
    if ((low <= surface) == (high <= surface)) return;
    highest = std::max(highest, between(edge.low[2], edge.high[2], (surface - low) / (high - low)));
  });
  return (highest - floor_z_) * millimetre;
}

/// The wetted part of a facet hangs together, so pools are what wetted vertices and edges join.
std::size_t TiltedPour::pools_below(double surface) const {
  std::vector<bool> wet;
  for (const Point& p : cavity_.vertices_mm) wet.push_back(dot(up_, p) < surface);
  DisjointSets pool(wet.size());
  for (const auto& corners : cavity_.triangles) {
    for (std::size_t i = 0; i < 3; ++i) {
      const std::uint32_t a = corners[i], b = corners[(i + 1) % 3];
      if (wet[a] && wet[b]) pool.unite(a, b);
    }
  }
  std::size_t pools = 0;
  for (std::uint32_t v = 0; v < wet.size(); ++v) pools += wet[v] && pool.root(v) == v ? 1 : 0;
  return pools;
}

TriangleMesh TiltedPour::part_poured(double surface) const {
  return part_below(cavity_, {.normal = up_, .offset_mm = surface});
}

TriangleMesh TiltedPour::part_left_free(double surface) const {
  return part_above(cavity_, {.normal = up_, .offset_mm = surface});
}

namespace {

std::string marks_of(const TiltedPour& pour) {
  return "from " + at_least_text(pour.lowest_mark()) + " to " + at_most_text(pour.brim());
}

}  // namespace

Length reachable(const TiltedPour& pour, Length mark, const Place& where) {
  if (!(pour.most() > Volume()))
    throw UserError(where, "cannot be poured to: tilted so far, the cavity holds nothing",
                    "tilt the mould less");
  if (mark < pour.lowest_mark())
    throw UserError(where,
                    "is " + in_mm(mark) +
                        " up the low wall, below where the pour gathers when the "
                        "mould is tilted",
                    "give " + marks_of(pour));
  if (mark > pour.brim())
    throw UserError(where, "is " + in_mm(mark) + " up the low wall, above its brim",
                    "give " + marks_of(pour));
  return mark;
}

PourOverLayer::PourOverLayer(const TriangleMesh& cavity, const TriangleMesh& layer,
                             const TriangleMesh& free)
    : set_layer_(enclosed_volume(layer)) {
  const double floor = bounding_box(cavity).low_mm[2];
  if (!layer.triangles.empty()) covered_at_ = (bounding_box(layer).high_mm[2] - floor) * millimetre;
  if (free.triangles.empty()) return;
  lowest_ = (bounding_box(free).low_mm[2] - floor) * millimetre;
  left_free_ = LevelCurve::of_solid(free);
}

PourOverLayer::PourOverLayer(const TriangleMesh& cavity, const TiltedPour& first, Length mark)
    : PourOverLayer(cavity, first.poured(mark), first.left_free(mark)) {}

PourOverLayer::PourOverLayer(const TriangleMesh& cavity, const TiltedPour& first, Volume volume)
    : PourOverLayer(cavity, first.poured(volume), first.left_free(volume)) {}

Volume PourOverLayer::set_layer() const { return set_layer_; }
Length PourOverLayer::covered_at() const { return covered_at_; }

Volume PourOverLayer::volume_below(Length depth) const {
  return left_free_ ? left_free_->volume_below(depth - lowest_) : Volume();
}

Length PourOverLayer::depth_at(Volume second) const {
  return left_free_ ? lowest_ + left_free_->depth_at(second) : lowest_;
}

}  // namespace brimwright::geometry
