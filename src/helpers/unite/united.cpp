#include "helpers/unite/united.h"

#include "geometry/surface/enclosed_volume.h"
#include "helpers/unite/exact_solid.h"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <utility>

namespace brimwright::helpers {
namespace {

using geometry::SolidUnion;
using geometry::TriangleMesh;
using Outcome = SolidUnion::Outcome;

/// Some solids already united.
struct Group {
  ExactSolid solid;
  double volume_mm3 = 0;
  std::uint64_t solids = 1;
};

struct Larger {
  bool operator()(const Group& a, const Group& b) const {
    return a.solid.facets() > b.solid.facets();
  }
};

/// Nothing if they touch along an edge.
std::optional<Group> merged(Group a, Group b, SolidUnion& found) {
  std::optional<ExactSolid> solid = union_of(std::move(a.solid), std::move(b.solid));
  if (!solid) return std::nullopt;
  const double volume_mm3 = solid->roughly_mm3();
  const Group& smaller = a.volume_mm3 < b.volume_mm3 ? a : b;
  const double larger_mm3 = std::max(a.volume_mm3, b.volume_mm3);
  if (volume_mm3 - larger_mm3 <= 1e-9 * larger_mm3) {
    found.swallowed += smaller.solids;
    found.swallowed_mm3 += smaller.volume_mm3;
  }
  return Group{std::move(*solid), volume_mm3, a.solids + b.solids};
}

/// Always the two smallest next, so that each facet is gone through few times.
Outcome unite(const std::vector<TriangleMesh>& solids, SolidUnion& found) try {
  std::vector<Group> groups;
  for (const TriangleMesh& mesh_of_one : solids) {
    std::optional<ExactSolid> solid = exact_solid(mesh_of_one);
    if (!solid) return Outcome::no_surface;
    groups.push_back(
        {std::move(*solid), geometry::enclosed_volume(mesh_of_one) / cubic_millimetre});
  }
  std::make_heap(groups.begin(), groups.end(), Larger());
  const auto take_smallest = [&] {
    std::pop_heap(groups.begin(), groups.end(), Larger());
    Group smallest = std::move(groups.back());
    groups.pop_back();
    return smallest;
  };
  while (groups.size() > 1) {
    Group a = take_smallest();
    std::optional<Group> both = merged(std::move(a), take_smallest(), found);
    if (!both) return Outcome::touches_along_an_edge;
    groups.push_back(std::move(*both));
    std::push_heap(groups.begin(), groups.end(), Larger());
  }
  found.solid = groups.front().solid.rounded();
  return Outcome::united;
} catch (const CrossesItself&) {
  return Outcome::crosses_itself;
}

}  // namespace

SolidUnion united(const std::vector<TriangleMesh>& solids) {
  SolidUnion found;
  found.outcome = unite(solids, found);
  return found;
}

}  // namespace brimwright::helpers
