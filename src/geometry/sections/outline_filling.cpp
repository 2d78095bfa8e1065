#include "geometry/sections/outline_filling.h"

#include <CGAL/Constrained_Delaunay_triangulation_2.h>
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Triangulation_face_base_with_info_2.h>
#include <CGAL/Triangulation_vertex_base_with_info_2.h>

#include <cmath>
#include <cstddef>
#include <cstdlib>
#include <exception>
#include <map>
#include <optional>
#include <utility>

namespace brimwright::geometry {
namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
/// The vertex's number in the cut.
using VertexBase = CGAL::Triangulation_vertex_base_with_info_2<std::uint32_t, Kernel>;
/// How many times the outlines wind round the face, once that is known.
using FaceBase =
    CGAL::Triangulation_face_base_with_info_2<std::optional<int>, Kernel,
                                              CGAL::Constrained_triangulation_face_base_2<Kernel>>;
/// Constraints that cross throw, because a new vertex there would open the solid.
using Triangulation = CGAL::Constrained_Delaunay_triangulation_2<
    Kernel, CGAL::Triangulation_data_structure_2<VertexBase, FaceBase>,
    CGAL::No_constraint_intersection_requiring_constructions_tag>;

using Facet = std::array<std::uint32_t, 3>;
using Facets = std::vector<Facet>;
using Ends = std::pair<std::uint32_t, std::uint32_t>;

/// How many more times each edge is run from its lower vertex to its higher one than back.
class Chain {
 public:
  void run(std::uint32_t from, std::uint32_t to) { net_[ordered(from, to)] += from < to ? 1 : -1; }
  int net(std::uint32_t from, std::uint32_t to) const {
    const auto known = net_.find(ordered(from, to));
    return known == net_.end() ? 0 : from < to ? known->second : -known->second;
  }
  void drop_empty() {
    std::erase_if(net_, [](const auto& edge) { return edge.second == 0; });
  }
  const std::map<Ends, int>& edges() const { return net_; }

 private:
  static Ends ordered(std::uint32_t a, std::uint32_t b) { return std::minmax(a, b); }
  std::map<Ends, int> net_;
};

Chain border_of(const std::vector<std::vector<std::uint32_t>>& outlines) {
  Chain chain;
  for (const auto& outline : outlines) {
    for (std::size_t i = 0; i < outline.size(); ++i)
      chain.run(outline[i], outline[(i + 1) % outline.size()]);
  }
  chain.drop_empty();
  return chain;
}

Chain border_of(const Facets& facets) {
  Chain chain;
  for (const auto& [a, b, c] : facets) {
    chain.run(a, b);
    chain.run(b, c);
    chain.run(c, a);
  }
  chain.drop_empty();
  return chain;
}

/// The two axes that the plane is seen along, so that its upper side keeps its sense of turning.
std::array<std::size_t, 2> axes_of(const Plane& plane) {
  std::size_t steepest = 0;
  for (std::size_t i = 1; i < 3; ++i)
    if (std::abs(plane.normal[i]) > std::abs(plane.normal[steepest])) steepest = i;
  std::array<std::size_t, 2> axes = {(steepest + 1) % 3, (steepest + 2) % 3};
  if (plane.normal[steepest] < 0) std::swap(axes[0], axes[1]);
  return axes;
}

/// A triangulation that has every edge of `border`.
Triangulation triangulated(const Chain& border, const PlaneCut& cut, const Plane& plane) {
  const auto axes = axes_of(plane);
  Triangulation triangulation;
  std::map<std::uint32_t, Triangulation::Vertex_handle> handles;
  Triangulation::Face_handle near;
  const auto handle_of = [&](std::uint32_t vertex) {
    const auto [known, is_new] = handles.try_emplace(vertex);
    if (is_new) {
      const auto& p = cut.vertices_mm[vertex];
      known->second = triangulation.insert(Kernel::Point_2(p[axes[0]], p[axes[1]]), near);
      known->second->info() = vertex;
      near = known->second->face();
    }
    return known->second;
  };
  for (const auto& outline : cut.outlines)
    for (const std::uint32_t vertex : outline) handle_of(vertex);
  for (const auto& [ends, net] : border.edges())
    triangulation.insert_constraint(handle_of(ends.first), handle_of(ends.second));
  return triangulation;
}

/// Tells every face how often the border winds round it, from the outside inward.
void count_windings(Triangulation& triangulation, const Chain& border) {
  std::vector<Triangulation::Face_handle> open = {triangulation.infinite_face()};
  open.front()->info() = 0;
  while (!open.empty()) {
    const auto face = open.back();
    open.pop_back();
    for (int i = 0; i < 3; ++i) {
      const auto other = face->neighbor(i);
      if (other->info()) continue;
      int net = 0;  // of the edge as this face, on its left, sees it
      if (face->is_constrained(i))
        net = border.net(face->vertex(Triangulation::ccw(i))->info(),
                         face->vertex(Triangulation::cw(i))->info());
      other->info() = *face->info() - net;
      open.push_back(other);
    }
  }
}

Facets delaunay_filling(const Chain& border, const PlaneCut& cut, const Plane& plane) {
  Triangulation triangulation = triangulated(border, cut, plane);
  if (triangulation.dimension() < 2) return {};
  count_windings(triangulation, border);
  Facets facets;
  for (const auto face : triangulation.finite_face_handles()) {
    const int windings = *face->info();
    Facet facet;
    for (int i = 0; i < 3; ++i) facet[static_cast<std::size_t>(i)] = face->vertex(i)->info();
    if (windings < 0) std::swap(facet[1], facet[2]);
    facets.insert(facets.end(), static_cast<std::size_t>(std::abs(windings)), facet);
  }
  return facets;
}

Facets filling_from_middles(PlaneCut& cut) {
  Facets facets;
  for (const auto& outline : cut.outlines) {
    const auto middle = static_cast<std::uint32_t>(cut.vertices_mm.size());
    Point sum{};
    for (const std::uint32_t vertex : outline)
      for (std::size_t i = 0; i < 3; ++i) sum[i] += cut.vertices_mm[vertex][i];
    for (double& coordinate : sum) coordinate /= static_cast<double>(outline.size());
    cut.vertices_mm.push_back(sum);
    for (std::size_t i = 0; i < outline.size(); ++i)
      facets.push_back({outline[i], outline[(i + 1) % outline.size()], middle});
  }
  return facets;
}

}  // namespace

Facets outline_filling(PlaneCut& cut, const Plane& plane) {
  const Chain border = border_of(cut.outlines);
  if (border.edges().empty()) return {};
  try {
    Facets facets = delaunay_filling(border, cut, plane);
    if (border_of(facets).edges() == border.edges()) return facets;
  } catch (const std::exception&) {
    // Crossing outlines, or an assertion of CGAL's; they can be filled the plain way.
  }
  return filling_from_middles(cut);
}

}  // namespace brimwright::geometry
