#include "geometry/exact/shell_union.h"

#include "geometry/exact/exact_solid.h"
#include "geometry/files/mesh_file.h"
#include "geometry/sandbox/child_process.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/placed_error.h"
#include "units/printing.h"
#include "units/user_error.h"

#include <algorithm>
#include <bit>
#include <cstdint>
#include <cstring>
#include <optional>
#include <utility>

namespace brimwright::geometry {
namespace {

enum class Outcome : std::uint32_t { united, crosses_itself, touches_along_an_edge, no_surface };

struct Head {
  Outcome outcome = Outcome::united;
  std::uint32_t swallowed = 0;
  double swallowed_mm3 = 0;
  std::uint64_t vertices = 0, triangles = 0;
};

/// Some solids already united.
struct Group {
  ExactSolid solid;
  double volume_mm3 = 0;
  std::uint32_t solids = 1;
};

struct Larger {
  bool operator()(const Group& a, const Group& b) const {
    return a.solid.facets() > b.solid.facets();
  }
};

/// Nothing if they touch along an edge.
std::optional<Group> merged(Group a, Group b, Head& head) {
  std::optional<ExactSolid> solid = union_of(std::move(a.solid), std::move(b.solid));
  if (!solid) return std::nullopt;
  const double volume_mm3 = solid->roughly_mm3();
  const Group& smaller = a.volume_mm3 < b.volume_mm3 ? a : b;
  const double larger_mm3 = std::max(a.volume_mm3, b.volume_mm3);
  if (volume_mm3 - larger_mm3 <= 1e-9 * larger_mm3) {
    head.swallowed += smaller.solids;
    head.swallowed_mm3 += smaller.volume_mm3;
  }
  return Group{std::move(*solid), volume_mm3, a.solids + b.solids};
}

/// In the child. Always the two smallest next, so that each facet is gone through few times.
Outcome unite(const std::vector<TriangleMesh>& solids, Head& head, TriangleMesh& mesh) try {
  std::vector<Group> groups;
  for (const TriangleMesh& mesh_of_one : solids) {
    std::optional<ExactSolid> solid = exact_solid(mesh_of_one);
    if (!solid) return Outcome::no_surface;
    groups.push_back({std::move(*solid), enclosed_volume(mesh_of_one) / cubic_millimetre});
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
    std::optional<Group> both = merged(std::move(a), take_smallest(), head);
    if (!both) return Outcome::touches_along_an_edge;
    groups.push_back(std::move(*both));
    std::push_heap(groups.begin(), groups.end(), Larger());
  }
  mesh = groups.front().solid.rounded();
  return Outcome::united;
} catch (const CrossesItself&) {
  return Outcome::crosses_itself;
}

bool unite_and_send(const std::vector<TriangleMesh>& solids, const Send& send) {
  Head head;
  TriangleMesh mesh;
  head.outcome = unite(solids, head, mesh);
  head.vertices = mesh.vertices_mm.size();
  head.triangles = mesh.triangles.size();
  return send(&head, sizeof head) &&
         send(mesh.vertices_mm.data(), head.vertices * sizeof mesh.vertices_mm[0]) &&
         send(mesh.triangles.data(), head.triangles * sizeof mesh.triangles[0]);
}

TriangleMesh unpacked(const std::string& bytes, const Head& head) {
  TriangleMesh mesh;
  mesh.vertices_mm.resize(head.vertices);
  mesh.triangles.resize(head.triangles);
  const char* from = bytes.data() + sizeof head;
  if (head.vertices > 0)
    std::memcpy(mesh.vertices_mm.data(), from, head.vertices * sizeof mesh.vertices_mm[0]);
  from += head.vertices * sizeof mesh.vertices_mm[0];
  if (head.triangles > 0)
    std::memcpy(mesh.triangles.data(), from, head.triangles * sizeof mesh.triangles[0]);
  return mesh;
}

std::string reason_for(ChildEnd end, Outcome outcome) {
  if (end == ChildEnd::out_of_time) return "they could not be united in reasonable time";
  if (end == ChildEnd::out_of_memory) return "uniting them took more than 2 GiB of memory";
  if (end == ChildEnd::not_confined) {
    return "the system would not confine what unites them (seccomp)";
  }
  if (end != ChildEnd::finished) return "they could not be united";
  if (outcome == Outcome::crosses_itself) return "one of them crosses itself";
  if (outcome == Outcome::touches_along_an_edge) return "they touch along an edge only";
  return "one of them touches itself";
}

/// How many facets are gone through: all of them at each doubling of the solids' number.
std::size_t facets_to_see(const std::vector<TriangleMesh>& solids) {
  std::size_t facets = 0;
  for (const TriangleMesh& solid : solids) facets += solid.triangles.size();
  return facets * std::bit_width(solids.size() - 1);
}

}  // namespace

UnionBudget::UnionBudget(std::size_t facets)
    : end_(std::chrono::steady_clock::now() +
           corefinement_limits(facets * std::bit_width(facets)).time) {}

std::chrono::milliseconds UnionBudget::left() const {
  const auto left = end_ - std::chrono::steady_clock::now();
  return std::max(std::chrono::milliseconds(0),
                  std::chrono::duration_cast<std::chrono::milliseconds>(left));
}

UnitedSolid united(const std::vector<TriangleMesh>& solids, const UnionBudget& budget,
                   const std::array<double, 3>& place_mm, const std::string& file) {
  ChildLimits limits = corefinement_limits(facets_to_see(solids));
  limits.time = std::min(limits.time, budget.left());
  const ChildReport report =
      run_in_child(limits, [&](const Send& send) { return unite_and_send(solids, send); });
  Head head;
  if (report.end == ChildEnd::finished) std::memcpy(&head, report.bytes.data(), sizeof head);
  if (report.end == ChildEnd::finished && head.outcome == Outcome::united) {
    return {unpacked(report.bytes, head), head.swallowed, head.swallowed_mm3};
  }
  throw PlacedError(
      {.file = file,
       .field = place_text(place_mm),
       .problem = "has parts that overlap or touch, the first here, and " +
                  reason_for(report.end, head.outcome),
       .remedy = "unite the parts into one solid in the modelling program and export it again"},
      place_mm);
}

}  // namespace brimwright::geometry
