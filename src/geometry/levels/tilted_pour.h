#pragma once

#include "geometry/levels/level_curve.h"
#include "geometry/sections/plane_cut.h"
#include "geometry/surface/triangle_mesh.h"
#include "units/angle.h"
#include "units/quantity.h"
#include "units/user_error.h"

#include <cstddef>
#include <optional>

namespace brimwright::geometry {

/// How a mould is tilted: from standing level, it is turned about a horizontal axis until one
/// side is low.
struct Tilt {
  Angle angle;     // between the brim and the liquid's surface; from 0 to below 90 degrees
  Angle low_side;  // the direction of the low side: 0 is +x, 90 degrees +y, seen from above
};

/// UserError at `where` for an angle that is no tilt.
void check(const Tilt& tilt, const Place& where);

/// `cavity` turned as its mould is, so that the liquid's surface is level in it.
TriangleMesh tilted(const TriangleMesh& cavity, const Tilt& tilt);

/// A pour into a cavity while its mould is tilted.
///
/// The opening is the cavity's highest flat or, where it has none, its highest point; the low brim
/// is the opening's lowest point when tilted. How far a pour stands up the low wall is its *mark*:
/// the height, above the cavity's lowest point and measured upright while the mould stands level,
/// of the highest spot on the wall that the liquid touches. So on an upright wall the mark is the
/// length of wetted wall, and at the low brim it is the cavity's height whatever the angle.
///
/// The volumes are those of the cavity below the liquid's surface, exact for the facetted solid.
/// All of it is taken to be reached by the liquid: see pools_at.
class TiltedPour {
 public:
  /// `cavity` is closed and faces outward (see checked_solid), standing level with +z up, and has
  /// no vertex that no facet uses; std::logic_error for a tilt that `check` refuses.
  TiltedPour(TriangleMesh cavity, Tilt tilt);

  Length lowest_mark() const;  ///< where the first drop gathers: 0 unless the floor is round
  Length brim() const;         ///< the mark of a pour about to spill over the low brim
  Volume most() const;         ///< that pour, the most it holds

  /// The least pour that wets the low wall at `mark`; marks outside lowest_mark() to brim() give
  /// the nearest end's volume. (Under a level overhang of the low wall the liquid rises while its
  /// mark stays, and there is more than this pour with that mark.)
  Volume volume_at(Length mark) const;
  /// How far up the low wall `volume` stands; volumes outside 0 to most() give the nearest end.
  Length mark_for(Volume volume) const;

  // Of the least pour to a mark, or of a pour of a volume from 0 to most():

  /// How many separate pools the liquid lies in. With more than one, a pour into one of them stands
  /// higher, and the others stay empty until it runs over.
  std::size_t pools_at(Length mark) const { return pools_below(surface_at(mark)); }
  std::size_t pools_with(Volume volume) const { return pools_below(surface_with(volume)); }
  /// The pour, and what it leaves of the cavity, as closed solids in the level mould; either may be
  /// empty.
  TriangleMesh poured(Length mark) const { return part_poured(surface_at(mark)); }
  TriangleMesh poured(Volume volume) const { return part_poured(surface_with(volume)); }
  TriangleMesh left_free(Length mark) const { return part_left_free(surface_at(mark)); }
  TriangleMesh left_free(Volume volume) const { return part_left_free(surface_with(volume)); }

 private:
  // A surface is told by its height over the origin, upright as tilted, in millimetres.
  double surface_at(Length mark) const;
  double surface_with(Volume volume) const;
  std::size_t pools_below(double surface) const;
  TriangleMesh part_poured(double surface) const;
  TriangleMesh part_left_free(double surface) const;

  TriangleMesh cavity_;
  Tilt tilt_;
  Point up_;                 // the way up, as the level mould sees it when tilted
  LevelCurve curve_;         // of the tilted cavity
  double floor_z_, brim_z_;  // lowest and highest of the level cavity
  double lowest_, spill_;    // lowest point and low brim of the tilted cavity
  double lowest_z_;          // of the spot where the first drop gathers, in the level cavity
};

/// The mark, if a pour can stand there; otherwise UserError at `where`, with the marks that can be.
Length reachable(const TiltedPour& pour, Length mark, const Place& where);

/// A second pour over a set layer, the mould standing level again.
class PourOverLayer {
 public:
  /// The set layer is `first`, a pour into `cavity`, up to a mark or of a volume.
  PourOverLayer(const TriangleMesh& cavity, const TiltedPour& first, Length mark);
  PourOverLayer(const TriangleMesh& cavity, const TiltedPour& first, Volume volume);

  Volume set_layer() const;   ///< the first pour
  Length covered_at() const;  ///< the depth at which the second pour just covers the set layer
  /// The second pour up to `depth` above the cavity's lowest point: what the cavity holds there
  /// less the part of the set layer below it.
  Volume volume_below(Length depth) const;
  Length depth_at(Volume second) const;  ///< its inverse

 private:
  PourOverLayer(const TriangleMesh& cavity, const TriangleMesh& layer, const TriangleMesh& free);

  Volume set_layer_;
  Length covered_at_;
  Length lowest_;                        // of what is left free, above the cavity's lowest point
  std::optional<LevelCurve> left_free_;  // nothing where the set layer fills the cavity
};

}  // namespace brimwright::geometry
