#pragma once

#include "geometry/levels/level_band.h"
#include "geometry/levels/level_row.h"
#include "geometry/surface/triangle_mesh.h"
#include "units/quantity.h"

#include <cstdint>
#include <memory>
#include <span>
#include <vector>

namespace brimwright::geometry {

/// V(depth) of one cavity: the volume below a horizontal plane `depth` above the cavity's lowest
/// point.
///
/// Exact for the solid it was made from, at every depth: nothing is sampled or interpolated. A
/// value type; copies are cheap (they share the solid).
class LevelCurve {
 public:
  using Band = LevelBand;
  /// The bands must start at depth zero and follow each other without a gap, upwards.
  static LevelCurve of_bands(std::vector<Band> bands);
  /// A band whose section is a + b t + c t^2 with t = depth - bottom, in mm2, mm2/mm and mm2/mm2.
  static Band quadratic_band(Length bottom, Length top, Area a, Length b, double c);

  /// The curve of a closed, outward-facing solid (see mesh_checks.h, which refuses others).
  ///
  /// For each facet with signed horizontal area a and heights z1 <= z2 <= z3 the volume below h is
  /// minus a times: 0 up to z1; (h-z1)^3 / [3 (z2-z1)(z3-z1)] up to z2; h - mean z + (z3-h)^3 /
  /// [3 (z3-z1)(z3-z2)] up to z3; h - mean z beyond. The free surface is its derivative.
  static LevelCurve of_solid(const TriangleMesh& solid);
  /// The curve of a hollow from its lowest point up to `brim_mm`, above it. `facets` are all that
  /// bound it there; they face into it and may go on above the brim.
  static LevelCurve of_facets(const TriangleMesh& surface, std::span<const std::uint32_t> facets,
                              double floor_mm, double brim_mm);

  Length height() const;   ///< lowest point to brim
  Volume brimful() const;  ///< volume to the brim
  /// Depths outside 0 to height() give the nearest end's value.
  Volume volume_below(Length depth) const;
  Area free_surface(Length depth) const;
  /// The same for many depths, in the order given.
  std::vector<LevelRow> levels(const std::vector<Length>& depths) const;
  /// The depth that holds `volume`; volumes outside 0 to brimful() give the nearest end. Good to
  /// 1e-12 of the height or of the volume, whichever is reached first.
  Length depth_at(Volume volume) const;

  /// The same cavity holding `factor` times as much at every depth (a mould's detail factor).
  LevelCurve holding(double factor) const;

  struct Solid;  // implementation
  explicit LevelCurve(std::shared_ptr<const Solid> solid);

 private:
  std::shared_ptr<const Solid> solid_;
};

}  // namespace brimwright::geometry
