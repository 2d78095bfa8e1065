#pragma once

#include "geometry/triangle_mesh.h"

#include <cstddef>
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

/// The exact level curve of a closed, outward-facing solid.
///
/// Each facet lies in the height bins it reaches through. A plane in bin k sums the facets listed
/// there by their formula; those that end in a lower bin are full prisms, whose sum is a straight
/// line kept for each bin. So nothing is sampled, and a level costs only the facets near it.
class FacetCurve {
 public:
  explicit FacetCurve(const TriangleMesh& solid);

  double height_mm() const { return height_; }
  double brimful_mm3() const { return brimful_; }
  /// At a depth from 0 to the height; the surface just above it, but at the brim just below it.
  Level at(double depth) const;
  /// The bin that holds `volume`, from 0 to brimful.
  DepthRange around(double volume) const;

 private:
  struct Facet {
    double z1, z2, z3;  // depths of the corners, ascending
    double area;        // of the horizontal projection, positive where the facet faces up
  };
  struct Line {  // volume = -(area * depth - moment) of all facets that end below a bin
    double area = 0;
    double moment = 0;
  };

  static Level below(const Facet& facet, double depth);
  static std::vector<Facet> facets_of(const TriangleMesh& solid, double lowest);
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
