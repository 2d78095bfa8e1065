#include "geometry/pockets/pocket_surface.h"

#include "geometry/surface/parallel.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <utility>

namespace brimwright::geometry {
namespace {

/// A facet at a vertex, by its other two corners in the facet's order.
struct Spoke {
  std::uint32_t from, to;
  std::uint32_t facet;
};

/// The facets round one vertex, parted into fans that hang together by edges at it.
class Fans {
 public:
  void read(const TriangleMesh& mesh, std::uint32_t vertex, std::span<const std::uint32_t> facets) {
    spokes_.clear();
    for (const std::uint32_t facet : facets) {
      const auto& c = mesh.triangles[facet];
      const std::size_t i = c[0] == vertex ? 0 : c[1] == vertex ? 1 : 2;
      spokes_.push_back({c[(i + 1) % 3], c[(i + 2) % 3], facet});
    }
    std::sort(spokes_.begin(), spokes_.end(),
              [](const Spoke& a, const Spoke& b) { return a.from < b.from; });
    fan_.assign(spokes_.size(), AirSurface::none);
    open_.clear();
    for (std::size_t i = 0; i < spokes_.size(); ++i)
      if (fan_[i] == AirSurface::none) walk(i);
  }

  std::size_t count() const { return open_.size(); }
  bool is_open(std::size_t fan) const { return open_[fan] != 0; }
  const std::vector<Spoke>& spokes() const { return spokes_; }
  std::uint32_t fan_of(std::size_t spoke) const { return fan_[spoke]; }

 private:
  /// From facet to facet round the vertex, back to the first or to an open edge; an open fan that
  /// was entered in its middle is joined when the walk from an earlier facet reaches that.
  void walk(std::size_t start) {
    const auto fresh = static_cast<std::uint32_t>(open_.size());
    path_.clear();
    std::size_t i = start;
    while (i < spokes_.size() && fan_[i] == AirSurface::none) {
      fan_[i] = fresh;
      path_.push_back(i);
      i = next(i);
    }
    if (i < spokes_.size() && fan_[i] != fresh) {
      for (const std::size_t passed : path_) fan_[passed] = fan_[i];
    } else {
      open_.push_back(i == spokes_.size());
    }
  }

  std::size_t next(std::size_t i) const {
    const auto after =
        std::lower_bound(spokes_.begin(), spokes_.end(), spokes_[i].to,
                         [](const Spoke& spoke, std::uint32_t to) { return spoke.from < to; });
    if (after == spokes_.end() || after->from != spokes_[i].to) return spokes_.size();
    return static_cast<std::size_t>(after - spokes_.begin());
  }

  std::vector<Spoke> spokes_;  // ascending by `from`
  std::vector<std::uint32_t> fan_;
  std::vector<char> open_;  // for each fan, whether it ends at open edges
  std::vector<std::size_t> path_;
};

/// Whether a walk round the vertex, from facet to facet, comes back after all of them. Of few
/// facets, as nearly all vertices have; of many it says no.
bool is_surely_one_closed_fan(const TriangleMesh& mesh, std::uint32_t vertex,
                              std::span<const std::uint32_t> facets) {
  constexpr std::size_t few = 12;
  if (facets.empty() || facets.size() > few) return false;
  std::array<std::uint32_t, few> from{}, to{};
  for (std::size_t i = 0; i < facets.size(); ++i) {
    const auto& [a, b, c] = mesh.triangles.data()[facets[i]];
    from[i] = vertex == a ? b : vertex == b ? c : a;
    to[i] = vertex == a ? c : vertex == b ? a : b;
  }
  std::size_t at = 0;
  for (std::size_t step = 1; step <= facets.size(); ++step) {
    std::size_t next = 0;
    while (next < facets.size() && from[next] != to[at]) ++next;
    if (next == facets.size()) return false;
    at = next;
    if (at == 0) return step == facets.size();
  }
  return false;
}

}  // namespace

std::uint32_t AirSurface::lowest_corner(std::size_t facet) const {
  const auto& c = mesh_.triangles[facet];
  return *std::min_element(c.begin(), c.end(), [this](std::uint32_t a, std::uint32_t b) {
    return height_of(a) < height_of(b);
  });
}

std::uint32_t AirSurface::back_of(std::uint32_t facet) const {
  if (sheet_facets_ == 0) return none;
  return facet < sheet_facets_ ? facet + sheet_facets_ : facet - sheet_facets_;
}

void AirSurface::list_facets_at_vertices() {
  first_at_.assign(mesh_.vertices_mm.size() + 1, 0);
  for (const auto& corners : mesh_.triangles)
    for (const std::uint32_t v : corners) ++first_at_[v + 1];
  for (std::size_t v = 1; v < first_at_.size(); ++v) first_at_[v] += first_at_[v - 1];
  facets_at_.resize(3 * mesh_.triangles.size());
  std::vector<std::uint32_t> next(first_at_.begin(), first_at_.end() - 1);
  for (std::uint32_t facet = 0; facet < mesh_.triangles.size(); ++facet)
    for (const std::uint32_t v : mesh_.triangles[facet]) facets_at_[next[v]++] = facet;
}

/// Gives each fan its own vertex; tells which vertices lie on open edges.
std::vector<char> AirSurface::part_fans() {
  list_facets_at_vertices();
  const auto given = static_cast<std::uint32_t>(mesh_.vertices_mm.size());
  std::vector<char> on_border(given, 0);
  // Nearly all have one fan that closes, and need no more than to be looked at.
  constexpr std::size_t in_turn = std::size_t{1} << 12;
  std::vector<std::vector<std::uint32_t>> others((given + in_turn - 1) / in_turn);
  in_parallel(others.size(), [&](std::size_t turn) {
    Fans fans;
    const auto end = static_cast<std::uint32_t>(std::min<std::size_t>(given, (turn + 1) * in_turn));
    for (auto v = static_cast<std::uint32_t>(turn * in_turn); v < end; ++v) {
      if (is_surely_one_closed_fan(mesh_, v, facets_at(v))) continue;
      fans.read(mesh_, v, facets_at(v));
      if (fans.count() != 1 || fans.is_open(0)) others[turn].push_back(v);
    }
  });
  Fans fans;
  for (const std::uint32_t v : joined(others)) {
    fans.read(mesh_, v, facets_at(v));
    if (fans.count() == 0) continue;
    on_border[v] = fans.is_open(0);
    if (fans.count() == 1) continue;
    // Each spoke once: a hundred thousand fans may meet in one corner.
    const auto own = static_cast<std::uint32_t>(mesh_.vertices_mm.size()) - 1;
    const auto place = mesh_.vertices_mm[v];
    mesh_.vertices_mm.insert(mesh_.vertices_mm.end(), fans.count() - 1, place);
    for (std::size_t fan = 1; fan < fans.count(); ++fan) on_border.push_back(fans.is_open(fan));
    for (std::size_t i = 0; i < fans.spokes().size(); ++i) {
      if (fans.fan_of(i) == 0) continue;
      auto& corners = mesh_.triangles[fans.spokes()[i].facet];
      std::replace(corners.begin(), corners.end(), v, own + fans.fan_of(i));
    }
  }
  if (mesh_.vertices_mm.size() > given) list_facets_at_vertices();
  return on_border;
}

AirSurface AirSurface::of_body(TriangleMesh body) {
  AirSurface surface;
  surface.mesh_ = std::move(body);
  surface.part_fans();
  return surface;
}

AirSurface AirSurface::of_skin(TriangleMesh skin) {
  AirSurface surface;
  surface.mesh_ = std::move(skin);
  const std::vector<char> on_border = surface.part_fans();
  TriangleMesh& mesh = surface.mesh_;
  const auto vertices = static_cast<std::uint32_t>(mesh.vertices_mm.size());
  surface.sheet_facets_ = static_cast<std::uint32_t>(mesh.triangles.size());
  mesh.vertices_mm.reserve(2 * mesh.vertices_mm.size());
  std::copy_n(mesh.vertices_mm.begin(), vertices, std::back_inserter(mesh.vertices_mm));
  mesh.triangles.reserve(2 * mesh.triangles.size());
  for (std::uint32_t i = 0; i < surface.sheet_facets_; ++i) {
    const auto [a, b, c] = mesh.triangles[i];
    mesh.triangles.push_back({a + vertices, c + vertices, b + vertices});
  }
  surface.other_side_.assign(mesh.vertices_mm.size(), none);
  for (std::uint32_t v = 0; v < vertices; ++v) {
    if (on_border[v] == 0) continue;
    surface.other_side_[v] = v + vertices;
    surface.other_side_[v + vertices] = v;
  }
  surface.list_facets_at_vertices();
  return surface;
}

AirSurface AirSurface::turned(const std::function<Point(const Point&)>& turn) const {
  AirSurface other = *this;
  for (Point& p : other.mesh_.vertices_mm) p = turn(p);
  return other;
}

void AirSurface::turn_over() {
  for (Point& p : mesh_.vertices_mm) p = {p[0], -p[1], -p[2]};
}

}  // namespace brimwright::geometry
