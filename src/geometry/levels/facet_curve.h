#pragma once

#include "geometry/surface/triangle_mesh.h"

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace brimwright::geometry {

/// Volume below a plane and the free surface there: the curve's value and its slope.
struct Level {
  double volume_mm3 = 0;
  double surface_mm2 = 0;
};

/// A stretch of depths in which a curve reaches a wanted volume.
struct DepthRange {
  double low_mm = 0;
  double high_mm = 0;
};

/// The exact level curve of a closed, outward-facing solid, or of a hollow between facets that face
/// into it.
///
/// Each facet lies in the height bins it reaches through. A plane in bin k sums the facets listed
/// there by their formula; those that end in a lower bin are full prisms, whose sum is a straight
/// line kept for each bin. So nothing is sampled, and a level costs only the facets near it.
class FacetCurve {
 public:
  struct Facet {
    double z1, z2, z3;  // depths of the corners, ascending
    double area;        // of the horizontal projection, positive where the facet faces up
  };

  explicit FacetCurve(const TriangleMesh& solid);
  /// Of a hollow from its lowest point up to `brim_mm`, above it. `facets` are all that bound it
  /// there; they face into it and may go on above the brim.
  FacetCurve(const TriangleMesh& surface, std::span<const std::uint32_t> facets, double floor_mm,
             double brim_mm);

  /// One facet's share of the column below `depth` and of the surface there, before the sign that
  /// tells a solid from a hollow, for depth >= z1.
  static Level below(const Facet& facet, double depth);
  /// A facet of `mesh`, with depths from `lowest`.
  static Facet facet_of(const TriangleMesh& mesh, std::size_t facet, double lowest);

  double height_mm() const { return height_; }
  double brimful_mm3() const { return brimful_; }
  /// At a depth from 0 to the height; the surface just above it, but at the brim just below it.
  Level at(double depth) const;
  /// The bin that holds `volume`, from 0 to brimful.
  DepthRange around(double volume) const;

 private:
  struct Line {  // volume = -(area * depth - moment) of all facets that end below a bin
    double area = 0;
    double moment = 0;
  };

  void prepare(const std::vector<Facet>& facets);
  std::size_t bin_of(double depth) const;
  void choose_bins(const std::vector<Facet>& facets);
  void sort_into_bins(const std::vector<Facet>& facets);
  void sum_settled(const std::vector<Facet>& facets);

  double height_ = 0;
  double brimful_ = 0;
  std::size_t bins_ = 1;
  std::vector<std::size_t> first_;       // of each bin's facets in facets_, and one past the last
  std::vector<Facet> facets_;            // bin after bin; a facet stands in each bin it reaches
  std::vector<Line> settled_;            // for each bin, the facets that end in a lower one
  std::vector<double> volume_at_start_;  // of each bin
};

}  // namespace brimwright::geometry
