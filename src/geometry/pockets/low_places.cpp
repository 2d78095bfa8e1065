#include "geometry/pockets/low_places.h"

#include "geometry/pockets/pocket_minimum.h"
#include "geometry/pockets/pocket_walls.h"
#include "geometry/surface/disjoint_sets.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/vectors.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <span>
#include <utility>
#include <vector>

namespace brimwright::geometry {
namespace {

/// The facets round some of a mesh's vertices.
class Stars {
 public:
  Stars(const TriangleMesh& mesh, const std::vector<char>& is_wanted)
      : mesh_(mesh), number_(is_wanted.size(), none) {
    for (std::uint32_t v = 0; v < is_wanted.size(); ++v) {
      if (is_wanted[v] == 0) continue;
      number_[v] = static_cast<std::uint32_t>(vertices_.size());
      vertices_.push_back(v);
    }
    first_.assign(vertices_.size() + 1, 0);
    for_each_corner([&](std::uint32_t star, std::uint32_t) { ++first_[star + 1]; });
    for (std::size_t i = 1; i < first_.size(); ++i) first_[i] += first_[i - 1];
    facets_.resize(first_.back());
    std::vector<std::uint32_t> next(first_.begin(), first_.end() - 1);
    for_each_corner(
        [&](std::uint32_t star, std::uint32_t facet) { facets_[next[star]++] = facet; });
  }

  const std::vector<std::uint32_t>& vertices() const { return vertices_; }
  std::span<const std::uint32_t> facets_at(std::uint32_t vertex) const {
    const std::uint32_t star = number_[vertex];
    return std::span(facets_).subspan(first_[star], first_[star + 1] - first_[star]);
  }
  /// Whether one walk round the vertex, from facet to facet, comes by all of them.
  bool is_one_fan(std::uint32_t vertex) const {
    std::vector<std::pair<std::uint32_t, std::uint32_t>> ahead;  // from one neighbour to the next
    for (const std::uint32_t facet : facets_at(vertex)) {
      const auto& c = mesh_.triangles[facet];
      const std::size_t i = c[0] == vertex ? 0 : c[1] == vertex ? 1 : 2;
      ahead.emplace_back(c[(i + 1) % 3], c[(i + 2) % 3]);
    }
    std::sort(ahead.begin(), ahead.end());
    std::size_t steps = 0, at = 0;
    do {
      const auto next = std::lower_bound(ahead.begin(), ahead.end(),
                                         std::pair(ahead[at].second, std::uint32_t{0}));
      if (next == ahead.end() || next->first != ahead[at].second) return false;
      at = static_cast<std::size_t>(next - ahead.begin());
    } while (++steps < ahead.size() && at != 0);
    return steps == ahead.size() && at == 0;
  }

 private:
  static constexpr std::uint32_t none = std::numeric_limits<std::uint32_t>::max();

  template <class See>
  void for_each_corner(See see) const {
    for (std::uint32_t facet = 0; facet < mesh_.triangles.size(); ++facet)
      for (const std::uint32_t v : mesh_.triangles[facet])
        if (number_[v] != none) see(number_[v], facet);
  }

  const TriangleMesh& mesh_;
  std::vector<std::uint32_t> number_;  // for each vertex
  std::vector<std::uint32_t> vertices_, first_, facets_;
};

/// The lowest places of a closed surface: vertices, or plateaus of them, without a lower neighbour.
class LowPlaces {
 public:
  explicit LowPlaces(const TriangleMesh& mesh)
      : mesh_(mesh),
        plateaus_(mesh.vertices_mm.size()),
        is_low_(find_low()),
        stars_(mesh, is_low_) {}

  /// Whether a place is lowest for all facets at it alike: several fans of them may touch in one
  /// vertex, and one of them be lowest there.
  bool are_plain() const {
    const std::vector<char> doubtful = where_fans_may_touch();
    const Stars stars(mesh_, doubtful);
    return std::all_of(stars.vertices().begin(), stars.vertices().end(),
                       [&](std::uint32_t v) { return stars.is_one_fan(v); });
  }

  std::size_t count() {
    return static_cast<std::size_t>(
        std::count_if(stars_.vertices().begin(), stars_.vertices().end(),
                      [&](std::uint32_t v) { return plateaus_.root(v) == v; }));
  }

  /// Whether one of them has air over it.
  bool has_floor() {
    std::vector<char> is_known(mesh_.vertices_mm.size(), 0);  // by the plateau's root
    for (const std::uint32_t v : stars_.vertices()) {
      char& known = is_known[plateaus_.root(v)];
      if (known != 0) continue;
      const auto answer = carries_air(mesh_, v, stars_.facets_at(v));
      if (answer && *answer) return true;
      known = answer.has_value();
    }
    return false;
  }

 private:
  std::vector<char> find_low() {
    std::vector<char> spills(mesh_.vertices_mm.size(), 1);
    for (const auto& corners : mesh_.triangles)
      for (const std::uint32_t v : corners) spills[v] = 0;
    for_each_edge([&](std::uint32_t a, std::uint32_t b) {
      if (height(a) == height(b))
        plateaus_.unite(a, b);
      else
        spills[height(a) > height(b) ? a : b] = 1;
    });
    for (std::uint32_t v = 0; v < spills.size(); ++v)
      if (spills[v] != 0) spills[plateaus_.root(v)] = 1;
    std::vector<char> is_low(spills.size());
    for (std::uint32_t v = 0; v < spills.size(); ++v) is_low[v] = spills[plateaus_.root(v)] == 0;
    return is_low;
  }

  /// A fan has three facets or more, and where it is lowest none of them reaches below.
  std::vector<char> where_fans_may_touch() const {
    constexpr std::uint8_t fan = 3;
    std::vector<std::uint8_t> facets(mesh_.vertices_mm.size(), 0), lying_over(facets.size(), 0);
    for (const auto& corners : mesh_.triangles) {
      const double lowest = std::min({height(corners[0]), height(corners[1]), height(corners[2])});
      for (const std::uint32_t v : corners) {
        if (facets[v] < 2 * fan) ++facets[v];
        if (lying_over[v] < fan && height(v) == lowest) ++lying_over[v];
      }
    }
    std::vector<char> doubtful(facets.size());
    for (std::size_t v = 0; v < facets.size(); ++v)
      doubtful[v] = facets[v] == 2 * fan && lying_over[v] == fan;
    return doubtful;
  }

  /// Each edge once, by the facet that runs through it upwards in number.
  template <class See>
  void for_each_edge(See see) const {
    for (const auto& c : mesh_.triangles)
      for (std::size_t i = 0; i < 3; ++i)
        if (c[i] < c[(i + 1) % 3]) see(c[i], c[(i + 1) % 3]);
  }

  double height(std::uint32_t vertex) const { return mesh_.vertices_mm[vertex][2]; }

  const TriangleMesh& mesh_;
  DisjointSets plateaus_;
  const std::vector<char> is_low_;
  const Stars stars_;
};

}  // namespace

bool surely_holds_nothing(const TriangleMesh& body) {
  LowPlaces places(body);
  return !places.has_floor() && places.are_plain();
}

bool is_surely_one_open_well(const TriangleMesh& solid) {
  const Box box = bounding_box(solid);
  const double top = box.high_mm[2], height = top - box.low_mm[2];
  bool has_lid = false;
  double roofed_mm2 = 0;
  for (const auto& [a, b, c] : solid.triangles) {
    const Point &p = solid.vertices_mm[a], &q = solid.vertices_mm[b], &r = solid.vertices_mm[c];
    const double lowest = std::min({p[2], q[2], r[2]});
    if (lowest == top) has_lid = true;
    if (lowest == top) continue;
    if (lowest >= top - 1e-9 * height) return false;  // a lid that is not level
    const Vector normal = doubled_area(p, q, r);
    if (!(normal[2] > 0)) continue;
    if (normal[2] > least_lean * length(normal)) return false;
    roofed_mm2 += normal[2] / 2;
  }
  if (!has_lid) return false;
  if (roofed_mm2 * height > least_roof * (enclosed_volume(solid) / cubic_millimetre)) return false;
  LowPlaces places(solid);
  return places.count() == 1 && places.are_plain();
}

}  // namespace brimwright::geometry
