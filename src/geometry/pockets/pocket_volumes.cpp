#include "geometry/pockets/pocket_volumes.h"

#include "geometry/levels/facet_curve.h"

#include <algorithm>

namespace brimwright::geometry {

std::vector<double> volumes_below(const AirSurface& surface, const AirTree& tree,
                                  std::span<const std::uint32_t> group_of,
                                  std::span<const double> level_mm) {
  // long double, so that the sum over a million facets is as good as a single term
  std::vector<long double> sums(level_mm.size(), 0);
  for (std::size_t i = 0; i < surface.mesh().triangles.size(); ++i) {
    const std::uint32_t group = group_of[tree.basin_of[i]];
    if (group == AirTree::never) continue;
    // heights from the level down, so that far from zero no digits are lost
    const FacetCurve::Facet facet = FacetCurve::facet_of(surface.mesh(), i, level_mm[group]);
    if (facet.z1 < 0) sums[group] += FacetCurve::below(facet, 0).volume_mm3;
  }
  std::vector<double> volumes;
  for (const long double sum : sums) volumes.push_back(std::max(0.0, static_cast<double>(sum)));
  return volumes;
}

std::vector<std::vector<std::uint32_t>> facets_of_groups(const AirTree& tree,
                                                         std::span<const std::uint32_t> group_of,
                                                         std::size_t groups) {
  std::vector<std::vector<std::uint32_t>> facets(groups);
  for (std::uint32_t i = 0; i < tree.basin_of.size(); ++i) {
    const std::uint32_t group = group_of[tree.basin_of[i]];
    if (group != AirTree::never) facets[group].push_back(i);
  }
  return facets;
}

}  // namespace brimwright::geometry
