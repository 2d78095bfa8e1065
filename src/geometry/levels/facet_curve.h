#pragma once

#include "geometry/levels/level.h"
#include "geometry/surface/triangle_mesh.h"

#include <cstddef>
#include <cstdint>
#include <memory>
#include <mutex>
#include <span>
#include <vector>

namespace brimwright::geometry {

/// The exact level curve of a closed, outward-facing solid, or of a hollow between facets that face
/// into it.
///
/// Each facet lies in the height bins it reaches through. A plane in bin k sums the facets listed
/// there by their formula; those that end in a lower bin are full prisms, whose sum is a straight
/// line kept for each bin. So nothing is sampled, and a level costs only the facets near it. The
/// bins are filled when a level is first asked for; a table of levels needs none, but one look at
/// each facet (level_sums.h).
///
/// May be asked by several threads at once.
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
  double brimful_mm3() const { return brim_.volume_mm3; }
  /// At a depth from 0 to the height; the surface just above it, but at the brim just below it.
  Level at(double depth) const;
  std::vector<Level> at(const std::vector<double>& depths) const;
  /// The bin that holds `volume`, from 0 to brimful.
  DepthRange around(double volume) const;

 private:
  struct Line {  // volume = -(area * depth - moment) of all facets that end below a bin
    double area = 0;
    double moment = 0;
  };

  /// The facets bin after bin; a facet stands in each bin it reaches.
  struct Bins {
    std::vector<std::size_t> first;       // of each bin's facets in `listed`, and one past the last
    std::vector<std::uint32_t> listed;    // facets
    std::vector<Line> settled;            // for each bin, the facets that end in a lower one
    std::vector<double> volume_at_start;  // of each bin
    std::once_flag filled;
  };

  static constexpr std::size_t facets_in_part = std::size_t{1} << 14;  // for each thread's turn

  template <class FacetAt>
  void take(std::size_t count, FacetAt facet_at);
  std::span<const Facet> facets() const { return {all_.get(), size_}; }
  std::size_t bin_of(double depth) const;
  void choose_bins();
  Level level_at_brim() const;
  const Bins& bins() const;
  void fill(Bins& bins) const;
  void list_facets(Bins& bins) const;
  void sum_settled(Bins& bins) const;
  Level at(double depth, const Bins& bins) const;

  double height_ = 0;
  Level brim_;
  std::size_t number_of_bins_ = 1;
  std::unique_ptr<Facet[]> all_;
  std::size_t size_ = 0;
  std::unique_ptr<Bins> bins_ = std::make_unique<Bins>();
};

}  // namespace brimwright::geometry
