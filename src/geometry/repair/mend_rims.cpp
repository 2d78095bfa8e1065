#include "geometry/repair/facet_neighbours.h"
#include "geometry/repair/mend_holes.h"
#include "geometry/surface/surface_edges.h"
#include "geometry/surface/vectors.h"

#include <algorithm>
#include <cstddef>
#include <map>
#include <utility>

namespace brimwright::geometry {
namespace {

/// One open edge as a lid would run through it, against its facet.
struct Step {
  std::uint32_t to;
  std::uint32_t facet;
};

class Walk {
 public:
  explicit Walk(const TriangleMesh& mesh) {
    const FacetNeighbours neighbours(mesh);
    for (std::uint32_t facet = 0; facet < mesh.triangles.size(); ++facet) {
      for (std::size_t i = 0; i < 3; ++i) {
        if (neighbours.across(facet, i) != FacetNeighbours::open) continue;
        const auto& corners = mesh.triangles[facet];
        steps_[corners[(i + 1) % 3]].push_back({corners[i], facet});
      }
    }
  }

  /// Takes the steps from some vertex on, cutting off a rim whenever a vertex comes again, so that
  /// holes which touch at a corner are told apart.
  std::vector<Rim> take_rims(const SurfaceEdges& edges) {
    std::vector<Rim> rims;
    for (auto& [start, steps] : steps_)
      while (!steps.empty()) walk_from(start, edges, rims);
    return rims;
  }

 private:
  void walk_from(std::uint32_t start, const SurfaceEdges& edges, std::vector<Rim>& rims) {
    std::vector<std::uint32_t> path = {start}, beside;
    std::map<std::uint32_t, std::size_t> at = {{start, 0}};
    while (true) {
      const auto found = steps_.find(path.back());
      if (found == steps_.end() || found->second.empty()) return;  // ran into a crowded edge
      const Step step = found->second.back();
      found->second.pop_back();
      beside.push_back(step.facet);
      const auto before = at.find(step.to);
      if (before == at.end()) {
        at.emplace(step.to, path.size());
        path.push_back(step.to);
        continue;
      }
      const auto first = static_cast<std::ptrdiff_t>(before->second);
      Rim rim{.corners = {path.begin() + first, path.end()},
              .beside = {beside.begin() + first, beside.end()},
              .shell = edges.shell[step.facet]};
      for (std::size_t i = 1; i < rim.corners.size(); ++i) at.erase(rim.corners[i]);
      rims.push_back(std::move(rim));
      path.resize(before->second + 1);
      beside.resize(before->second);
      if (path.size() == 1) return;
    }
  }

  std::map<std::uint32_t, std::vector<Step>> steps_;
};

void measure(const TriangleMesh& mesh, Rim& rim) {
  const auto& v = mesh.vertices_mm;
  rim.low_mm = rim.high_mm = v[rim.corners.front()];
  for (const std::uint32_t corner : rim.corners) {
    rim.middle_mm = rim.middle_mm + v[corner] * (1.0 / static_cast<double>(rim.corners.size()));
    for (std::size_t k = 0; k < 3; ++k) {
      rim.low_mm[k] = std::min(rim.low_mm[k], v[corner][k]);
      rim.high_mm[k] = std::max(rim.high_mm[k], v[corner][k]);
    }
  }
  for (std::size_t i = 0; i < rim.corners.size(); ++i) {
    const Vector& here = v[rim.corners[i]];
    const Vector& next = v[rim.corners[(i + 1) % rim.corners.size()]];
    rim.vector_area_mm2 = rim.vector_area_mm2 + doubled_area(rim.middle_mm, here, next) * 0.5;
  }
}

}  // namespace

double Rim::area_mm2() const { return length(vector_area_mm2); }
double Rim::width_mm() const { return length(high_mm - low_mm); }

std::vector<Rim> rims_of(const TriangleMesh& mesh) {
  const SurfaceEdges edges = surface_edges(mesh);
  if (edges.open.edges == 0) return {};
  std::vector<Rim> rims = Walk(mesh).take_rims(edges);
  for (Rim& rim : rims) measure(mesh, rim);
  std::stable_sort(rims.begin(), rims.end(),
                   [](const Rim& a, const Rim& b) { return a.area_mm2() > b.area_mm2(); });
  return rims;
}

}  // namespace brimwright::geometry
