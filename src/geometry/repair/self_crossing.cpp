#include "geometry/repair/self_crossing.h"

#include "geometry/repair/corner_stars.h"
#include "geometry/repair/facet_pairs.h"
#include "geometry/surface/parallel.h"
#include "geometry/surface/triangle_distance.h"
#include "geometry/surface/vectors.h"
#include "units/user_error.h"

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>

#include <algorithm>
#include <atomic>
#include <cmath>
#include <mutex>
#include <utility>
#include <vector>

namespace brimwright::geometry {
namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using ExactPoint = Kernel::Point_3;
using Triangle = Kernel::Triangle_3;
using Segment = Kernel::Segment_3;
using Corners = std::array<std::uint32_t, 3>;

/// Two facets' corners, those they share first.
struct Pair {
  Corners a, b;
  std::size_t shared = 0;
};

Pair shared_first(Corners a, Corners b) {
  std::size_t shared = 0;
  for (std::size_t i = 0; i < 3; ++i) {
    const auto same = std::find(b.begin() + static_cast<std::ptrdiff_t>(shared), b.end(), a[i]);
    if (same == b.end()) continue;
    std::iter_swap(b.begin() + static_cast<std::ptrdiff_t>(shared), same);
    std::swap(a[shared], a[i]);
    ++shared;
  }
  return {a, b, shared};
}

// Plain arithmetic settles most questions; what it leaves within its own rounding goes to CGAL.
// Each sum below has relative errors under ten half-units (1.1e-16) of its largest terms.
constexpr double rounding = 1e-14;

struct Projection {
  double value, error;
};

Projection projected(const Vector& along, const Vector& v) {
  Projection sum{0, 0};
  for (std::size_t i = 0; i < 3; ++i) {
    sum.value += along[i] * v[i];
    sum.error += rounding * std::abs(along[i] * v[i]);
  }
  return sum;
}

/// From the direction of `a` to that of `b`, at any length.
Vector between(const Vector& a, const Vector& b) {
  const double la = std::hypot(a[0], a[1], a[2]);
  const double lb = std::hypot(b[0], b[1], b[2]);
  return {b[0] * la - a[0] * lb, b[1] * la - a[1] * lb, b[2] * la - a[2] * lb};
}

/// A surface's facets, asked whether two of them meet where they should not.
class Surface {
 public:
  explicit Surface(const TriangleMesh& mesh) : mesh_(mesh) {}

  bool has_area(const Corners& c) const {
    const Vector u = from_to(c[0], c[1]), v = from_to(c[0], c[2]);
    for (std::size_t i = 0; i < 3; ++i) {
      const double p = u[i] * v[(i + 1) % 3], q = u[(i + 1) % 3] * v[i];
      if (std::abs(p - q) > rounding * (std::abs(p) + std::abs(q))) return true;
    }
    return !CGAL::collinear(point(c[0]), point(c[1]), point(c[2]));
  }

  bool meet(std::uint32_t first, std::uint32_t second) const {
    const auto [a, b, shared] = shared_first(mesh_.triangles[first], mesh_.triangles[second]);
    if (shared == 0 && (apart(a, b) || apart_across_a_side(a, b) || apart_across_a_side(b, a)))
      return false;
    if (shared == 1 && apart_at_corner(a, b)) return false;
    if (shared == 0) return CGAL::do_intersect(triangle(a), triangle(b));
    if (shared == 1) return meet_beyond_corner(a, b);
    if (shared == 2) return folded_together(a, b);
    return true;
  }

  /// How far the less entangled of two facets reaches through the other's plane.
  double depth(std::uint32_t first, std::uint32_t second) const {
    const Corners& a = mesh_.triangles[first];
    const Corners& b = mesh_.triangles[second];
    return std::min(reach_through(a, b), reach_through(b, a));
  }

 private:
  ExactPoint point(std::uint32_t v) const {
    const auto& [x, y, z] = mesh_.vertices_mm[v];
    return {x, y, z};
  }

  Triangle triangle(const Corners& c) const { return {point(c[0]), point(c[1]), point(c[2])}; }

  CGAL::Orientation side(const Corners& plane, std::uint32_t v) const {
    return CGAL::orientation(point(plane[0]), point(plane[1]), point(plane[2]), point(v));
  }

  Vector from_to(std::uint32_t from, std::uint32_t to) const {
    const Vector& p = mesh_.vertices_mm[from];
    const Vector& q = mesh_.vertices_mm[to];
    return {q[0] - p[0], q[1] - p[1], q[2] - p[2]};
  }

  /// Whether a plane across the line between the facets' middles surely parts them.
  bool apart(const Corners& a, const Corners& b) const {
    Vector along{};
    for (const std::uint32_t v : b) {
      const Vector to = from_to(a[0], v);
      for (std::size_t i = 0; i < 3; ++i) along[i] += to[i];
    }
    for (const std::uint32_t v : a) {
      const Vector to = from_to(a[0], v);
      for (std::size_t i = 0; i < 3; ++i) along[i] -= to[i];
    }
    double a_end = 0;  // a[0] itself
    for (std::size_t i = 1; i < 3; ++i) {
      const auto [value, error] = projected(along, from_to(a[0], a[i]));
      a_end = std::max(a_end, value + error);
    }
    for (const std::uint32_t v : b) {
      const auto [value, error] = projected(along, from_to(a[0], v));
      if (value - error <= a_end) return false;
    }
    return true;
  }

  /// Whether, seen along the axis nearest to the first's normal, a line through one of its sides
  /// surely parts them: so facets of one plane are told apart, which their planes cannot do.
  bool apart_across_a_side(const Corners& a, const Corners& b) const {
    const Vector normal = cross(from_to(a[0], a[1]), from_to(a[0], a[2]));
    std::size_t k = 0;
    for (std::size_t i = 1; i < 3; ++i)
      if (std::abs(normal[i]) > std::abs(normal[k])) k = i;
    const std::size_t x = (k + 1) % 3, y = (k + 2) % 3;
    const double front = normal[k] < 0 ? -1 : 1;
    const auto is_outside = [&](const Vector& side, const Vector& to) {
      const double p = side[x] * to[y], q = side[y] * to[x];
      return front * (p - q) < -rounding * (std::abs(p) + std::abs(q));
    };
    for (std::size_t i = 0; i < 3; ++i) {
      const Vector side = from_to(a[i], a[(i + 1) % 3]);
      if (is_outside(side, from_to(a[i], a[(i + 2) % 3]))) continue;  // no true front
      if (std::all_of(b.begin(), b.end(),
                      [&](std::uint32_t v) { return is_outside(side, from_to(a[i], v)); }))
        return true;
    }
    return false;
  }

  /// Whether a plane through the shared corner a[0] surely parts the rest of two facets.
  bool apart_at_corner(const Corners& a, const Corners& b) const {
    const auto middle = [this](const Corners& c) {
      const Vector u = from_to(c[0], c[1]), v = from_to(c[0], c[2]);
      return Vector{u[0] + v[0], u[1] + v[1], u[2] + v[2]};
    };
    const Vector along = between(middle(a), middle(b));
    for (std::size_t i = 1; i < 3; ++i) {
      const auto [to_a, error_a] = projected(along, from_to(a[0], a[i]));
      const auto [to_b, error_b] = projected(along, from_to(a[0], b[i]));
      if (to_a >= -error_a || to_b <= error_b) return false;
    }
    return true;
  }

  /// Facets sharing the corner a[0] meet elsewhere if the side across from it of one meets the
  /// other.
  bool meet_beyond_corner(const Corners& a, const Corners& b) const {
    const auto clear_of = [this](const Corners& plane, std::uint32_t p, std::uint32_t q) {
      const CGAL::Orientation side_of_p = side(plane, p);
      return side_of_p != CGAL::COPLANAR && side_of_p == side(plane, q);
    };
    if (clear_of(a, b[1], b[2]) || clear_of(b, a[1], a[2])) return false;
    return CGAL::do_intersect(triangle(a), Segment(point(b[1]), point(b[2]))) ||
           CGAL::do_intersect(triangle(b), Segment(point(a[1]), point(a[2])));
  }

  /// Facets sharing the edge a[0], a[1] meet elsewhere only if they lie on each other.
  bool folded_together(const Corners& a, const Corners& b) const {
    return side(a, b[2]) == CGAL::COPLANAR &&
           CGAL::coplanar_orientation(point(a[0]), point(a[1]), point(a[2]), point(b[2])) ==
               CGAL::POSITIVE;
  }

  double reach_through(const Corners& plane, const Corners& facet) const {
    const auto normal = CGAL::normal(point(plane[0]), point(plane[1]), point(plane[2]));
    const double length = std::sqrt(normal.squared_length());
    double above = 0, below = 0;
    for (const std::uint32_t v : facet) {
      const double distance = normal * (point(v) - point(plane[0])) / length;
      above = std::max(above, distance);
      below = std::max(below, -distance);
    }
    return std::min(above, below);
  }

  const TriangleMesh& mesh_;
};

[[noreturn]] void refuse_undecided(const std::string& file) {
  throw UserError(
      {.file = file,
       .field = "",
       .problem = "has its facets so thick that it cannot be checked for crossing itself",
       .remedy = "simplify or remesh it in the modelling program"});
}

using FacetPair = std::pair<std::uint32_t, std::uint32_t>;

/// Facets that meet, found by several threads.
class Meetings {
 public:
  Meetings(const TriangleMesh& mesh, const Surface& surface, bool is_closed,
           const std::string& file)
      : mesh_(mesh),
        surface_(surface),
        pairs_(mesh, facets_with_area(),
               is_closed ? spread_stars(mesh) : std::vector<char>(mesh.vertices_mm.size(), 0)),
        left_(pairs_allowed(mesh)),
        file_(file) {}

  std::vector<FacetPair> found() && {
    in_parallel(pairs_.tasks(), [this](std::size_t task) { look_through(task); });
    std::sort(meeting_.begin(), meeting_.end());
    return std::move(meeting_);
  }

 private:
  /// A sound surface has some ten pairs a facet; this many take a few seconds.
  static std::int64_t pairs_allowed(const TriangleMesh& mesh) {
    return 50'000'000 + 100 * static_cast<std::int64_t>(mesh.triangles.size());
  }

  std::vector<std::uint32_t> facets_with_area() const {
    std::vector<char> has_area(mesh_.triangles.size());
    in_stretches(has_area.size(), [&](std::size_t facet) {
      has_area[facet] = surface_.has_area(mesh_.triangles[facet]);
    });
    std::vector<std::uint32_t> facets;
    facets.reserve(has_area.size());
    for (std::uint32_t facet = 0; facet < has_area.size(); ++facet)
      if (has_area[facet] != 0) facets.push_back(facet);
    return facets;
  }

  void look_through(std::size_t task) {
    constexpr std::int64_t stretch = 1 << 16;  // so that threads seldom meet at the common count
    std::int64_t seen = 0;
    std::vector<FacetPair> meeting;
    const auto count_by_stretches = [&](int pairs) {
      if ((seen += pairs) >= stretch) count(std::exchange(seen, 0));
    };
    pairs_.for_each_pair(task, count_by_stretches, [&](std::uint32_t a, std::uint32_t b) {
      const auto [first, second] = std::minmax(a, b);
      if (surface_.meet(first, second)) meeting.emplace_back(first, second);
    });
    count(seen);
    const std::scoped_lock alone(mutex_);
    meeting_.insert(meeting_.end(), meeting.begin(), meeting.end());
  }

  void count(std::int64_t pairs) {
    if ((left_ -= pairs) < 0) refuse_undecided(file_);
  }

  const TriangleMesh& mesh_;
  const Surface& surface_;
  const FacetPairs pairs_;
  std::atomic<std::int64_t> left_;
  const std::string& file_;
  std::mutex mutex_;
  std::vector<FacetPair> meeting_;
};

/// A place where two facets that meet do so, to rounding: of the points in which the edges of one
/// pass the other's plane, of the corners and of the middles of both, the one nearest to both, and
/// not at a corner that they share unless there is no other.
Vector meeting_place(const TriangleMesh& mesh, const FacetPair& pair) {
  const std::array<Corners, 2> corners = {mesh.triangles[pair.first], mesh.triangles[pair.second]};
  const auto at = [&](std::uint32_t v) { return mesh.vertices_mm[v]; };
  const auto facet = [&](const Corners& c) { return Facet(at(c[0]), at(c[1]), at(c[2])); };
  const std::array<Facet, 2> facets = {facet(corners[0]), facet(corners[1])};
  std::vector<Vector> candidates;
  for (std::size_t one = 0; one < 2; ++one) {
    const Facet& plane = facets[1 - one];
    candidates.push_back(middle_of(mesh, corners[one]));
    for (std::size_t i = 0; i < 3; ++i) {
      const Vector a = at(corners[one][i]), b = at(corners[one][(i + 1) % 3]);
      const double from = dot(plane.normal, a - plane.corner[0]);
      const double to = dot(plane.normal, b - plane.corner[0]);
      candidates.push_back(a);
      if ((from < 0) != (to < 0)) candidates.push_back(a + (b - a) * (from / (from - to)));
    }
  }
  const double size = length(facets[0].along[0]) + length(facets[0].along[1]);
  const auto is_shared = [&](const Vector& p) {
    return std::any_of(corners[0].begin(), corners[0].end(), [&](std::uint32_t v) {
      return std::find(corners[1].begin(), corners[1].end(), v) != corners[1].end() &&
             length(at(v) - p) <= 1e-6 * size;
    });
  };
  Vector best = candidates.front();
  double least = HUGE_VAL;
  for (const Vector& p : candidates) {
    NearestPair to_first, to_second;
    lower_to_distance(p, facets[0], to_first);
    lower_to_distance(p, facets[1], to_second);
    const double off =
        std::max(to_first.distance_mm, to_second.distance_mm) + (is_shared(p) ? 1e-3 * size : 0);
    if (off >= least) continue;
    least = off;
    best = p;
  }
  return best;
}

/// CGAL's own handler prints; a broken precondition is told by its exception alone.
void stay_silent(const char*, const char*, const char*, int, const char*) {}

}  // namespace

std::optional<SelfCrossing> self_crossing(const TriangleMesh& mesh, const SurfaceEdges& edges,
                                          const std::string& file) try {
  CGAL::set_error_handler(stay_silent);
  const bool is_closed = edges.open.edges + edges.crowded.edges + edges.turned.edges == 0;
  const Surface surface(mesh);
  const std::vector<FacetPair> meeting = Meetings(mesh, surface, is_closed, file).found();
  if (meeting.empty()) return std::nullopt;
  SelfCrossing crossing{.pairs = meeting.size()};
  for (const auto& [a, b] : meeting) {
    crossing.deepest_mm = std::max(crossing.deepest_mm, surface.depth(a, b));
    const auto [low, high] = std::minmax(edges.shell[a], edges.shell[b]);
    if (low != high) crossing.shells.push_back({low, high});
  }
  std::sort(crossing.shells.begin(), crossing.shells.end());
  const auto repeated = std::unique(crossing.shells.begin(), crossing.shells.end());
  crossing.shells.erase(repeated, crossing.shells.end());
  crossing.between_shells = !crossing.shells.empty();
  crossing.first_mm = meeting_place(mesh, meeting.front());
  return crossing;
} catch (const CGAL::Failure_exception&) {
  refuse_undecided(file);
}

}  // namespace brimwright::geometry
