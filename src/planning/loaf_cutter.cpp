#include "planning/loaf_cutter.h"

#include "geometry/levels/level_curve.h"
#include "geometry/sections/filled_part.h"
#include "geometry/sections/plane_cut.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/vectors.h"
#include "geometry/surface/weld.h"

#include <algorithm>
#include <limits>
#include <span>
#include <stdexcept>
#include <utility>

namespace brimwright::planning {
namespace {

using geometry::Box;
using geometry::TriangleMesh;

void widen(Box& box, const Box& by) {
  for (std::size_t i = 0; i < 3; ++i) {
    box.low_mm[i] = std::min(box.low_mm[i], by.low_mm[i]);
    box.high_mm[i] = std::max(box.high_mm[i], by.high_mm[i]);
  }
}

Box box_round(const std::vector<TriangleMesh>& layers) {
  Box box = empty_box();
  for (const auto& layer : layers)
    if (const auto own = box_if_any(layer)) widen(box, *own);
  return box;
}

geometry::Plane plane_across(Axis axis, Length at) {
  geometry::Plane plane{{0, 0, 0}, at / millimetre};
  plane.normal[index(axis)] = 1;
  return plane;
}

/// The volume of a solid between two planes across an axis, by its level curve with that axis up.
/// The solid's surface may lack what stands upright then.
class VolumeAlong {
 public:
  VolumeAlong(const TriangleMesh& solid, Axis axis)
      : low_(bounding_box(solid).low_mm[index(axis)] * millimetre),
        curve_(geometry::LevelCurve::of_solid(standing_on_end(solid, axis))) {}

  Volume whole() const { return curve_.brimful(); }
  Volume between(const Strip& strip) const {
    return curve_.volume_below(strip.to - low_) - curve_.volume_below(strip.from - low_);
  }

 private:
  /// The axes change places in a ring, which mirrors nothing.
  static TriangleMesh standing_on_end(TriangleMesh solid, Axis up) {
    for (auto& p : solid.vertices_mm)
      p = {p[(index(up) + 1) % 3], p[(index(up) + 2) % 3], p[index(up)]};
    return solid;
  }

  Length low_;
  geometry::LevelCurve curve_;
};

/// The box round what of `solid` lies in a strip: the ends of its surface's edges, cut to the
/// strip.
Box box_within(const TriangleMesh& solid, Axis axis, const Strip& strip) {
  using namespace geometry;
  // A wall that stands in the very plane of a cut belongs to the neighbour.
  constexpr double beside_mm = 1e-7;
  const double from = strip.from / millimetre + beside_mm, to = strip.to / millimetre - beside_mm;
  Box box = empty_box();
  for (const auto& corners : solid.triangles) {
    for (std::size_t i = 0; i < 3; ++i) {
      const Vector& a = solid.vertices_mm[corners[i]];
      const Vector& b = solid.vertices_mm[corners[(i + 1) % 3]];
      const double start = a[index(axis)], rise = b[index(axis)] - start;
      if (std::max(start, start + rise) < from || std::min(start, start + rise) > to) continue;
      for (const double end : {from, to}) {
        // An edge along the strip has no end in it but its own, which the next edge begins at.
        const double share = rise == 0 ? 0 : std::clamp((end - start) / rise, 0.0, 1.0);
        const Vector p = a + (b - a) * share;
        widen(box, {p, p});
      }
    }
  }
  return box;
}

/// The surface of `solid` below a plane, left open there; the solid may be open too, but not there.
TriangleMesh surface_below(const TriangleMesh& solid, const geometry::Plane& plane) {
  geometry::PlaneCut cut = plane_cut(solid, plane);
  TriangleMesh part{std::move(cut.vertices_mm), std::move(cut.below)};
  drop_unused_vertices(part);
  return part;
}

/// Where what lies in a row and in a column ends: columns are cut after rows, bars planed last.
Destination crossing(Destination row, Destination column) {
  if (column == Destination::offcuts || column == Destination::kerf) return column;
  return row == Destination::planing ? row : column;
}

/// Cuts one solid.
class SolidCutter {
 public:
  explicit SolidCutter(const Pattern& pattern)
      : pattern_(pattern), rows_(strips_of(pattern.rows)), columns_(strips_of(pattern.columns)) {
    const auto pieces = static_cast<std::size_t>(pattern.pieces());
    parts_.pieces.resize(pieces);
    parts_.boxes.resize(pieces, empty_box());
    constexpr Length endless = Length::from_base(std::numeric_limits<double>::infinity());
    columns_.front().from = -endless;
    columns_.back().to = endless;
  }

  SolidParts cut(const TriangleMesh& solid) && {
    cut_rows(solid, rows_, 0);
    return std::move(parts_);
  }

 private:
  void cut_rows(const TriangleMesh& part, std::span<const Strip> strips, std::size_t row);
  void cut_columns(const TriangleMesh& row, Destination row_destination, std::size_t row_number);
  void add(Destination destination, Volume volume) {
    parts_.destination[static_cast<std::size_t>(destination)] += volume;
  }

  const Pattern& pattern_;
  std::vector<Strip> rows_, columns_;
  SolidParts parts_;
};

/// Halves the strips and the surface with them, again and again: each facet is then cut as often as
/// the number of strips can be halved, not once for each strip. The cuts need no caps: those would
/// stand upright where the columns' direction is up, and bound no volume there.
void SolidCutter::cut_rows(const TriangleMesh& part, std::span<const Strip> strips,
                           std::size_t row) {
  if (part.triangles.empty()) return;
  if (strips.size() == 1) return cut_columns(part, strips.front().destination, row);
  const auto low = strips.first(strips.size() / 2), high = strips.subspan(low.size());
  const auto plane = plane_across(pattern_.across, high.front().from);
  const auto rows_below = std::count_if(low.begin(), low.end(), [](const Strip& strip) {
    return strip.destination == Destination::bars;
  });
  cut_rows(surface_below(part, plane), low, row);
  cut_rows(surface_below(part, plane.flipped()), high, row + static_cast<std::size_t>(rows_below));
}

void SolidCutter::cut_columns(const TriangleMesh& row, Destination row_destination,
                              std::size_t row_number) {
  const VolumeAlong volume(row, pattern_.along);
  if (row_destination == Destination::offcuts || row_destination == Destination::kerf)
    return add(row_destination, volume.whole());
  std::size_t number = row_number * static_cast<std::size_t>(pattern_.columns.bars());
  for (const Strip& strip : columns_) {
    const Destination destination = crossing(row_destination, strip.destination);
    const Volume part = volume.between(strip);
    add(destination, part);
    if (destination != Destination::bars) continue;
    parts_.pieces[number] += part;
    if (part > Volume{}) widen(parts_.boxes[number], box_within(row, pattern_.along, strip));
    ++number;
  }
}

}  // namespace

Loaf planed_loaf(std::vector<TriangleMesh> layers, Length top_planing) {
  Loaf loaf{std::move(layers), {}, {}, {}};
  loaf.planed.resize(loaf.layers.size());
  for (const auto& layer : loaf.layers) loaf.whole += enclosed_volume(layer);
  if (!(loaf.whole > Volume{})) throw std::logic_error("there is no loaf to cut");
  loaf.box = box_round(loaf.layers);
  if (!(top_planing > Length{})) return loaf;
  const auto plane = plane_across(Axis::z, loaf.high(Axis::z) - top_planing);
  for (std::size_t i = 0; i < loaf.layers.size(); ++i) {
    loaf.planed[i] = enclosed_volume(part_above(loaf.layers[i], plane));
    loaf.layers[i] = part_below(loaf.layers[i], plane);
  }
  loaf.box = box_round(loaf.layers);
  return loaf;
}

SolidParts cut_to(const Pattern& pattern, const TriangleMesh& solid) {
  return SolidCutter(pattern).cut(solid);
}

LoafCutter::LoafCutter(const Loaf& loaf, const Pattern& pattern) {
  pieces_.resize(static_cast<std::size_t>(pattern.pieces()));
  for (const auto& layer : loaf.layers) {
    layers_.push_back(cut_to(pattern, layer));
    for (std::size_t i = 0; i < pieces_.size(); ++i) {
      pieces_[i].layers.push_back(layers_.back().pieces[i]);
      pieces_[i].volume += layers_.back().pieces[i];
      widen(pieces_[i].box, layers_.back().boxes[i]);
    }
  }
}

Volume LoafCutter::volume(Destination destination) const {
  Volume sum;
  for (const SolidParts& layer : layers_) sum += layer.volume(destination);
  return sum;
}

}  // namespace brimwright::planning
