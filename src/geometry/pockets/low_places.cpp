#include "geometry/pockets/low_places.h"

#include "geometry/pockets/pocket_minimum.h"
#include "geometry/pockets/pocket_walls.h"
#include "geometry/surface/disjoint_sets.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/parallel.h"
#include "geometry/surface/vectors.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <optional>
#include <span>
#include <utility>
#include <vector>

namespace brimwright::geometry {
namespace {

using Turn = std::function<Point(const Point&)>;

constexpr std::uint32_t none = std::numeric_limits<std::uint32_t>::max();

using Numbers = std::vector<std::uint32_t>;

/// The facets that have one of the marked vertices among their corners, in their order.
std::vector<std::uint32_t> facets_at_marked(const TriangleMesh& mesh,
                                            const std::vector<char>& is_marked) {
  const auto* const triangles = mesh.triangles.data();
  const char* const marked = is_marked.data();
  return joined(in_parts<Numbers>(mesh.triangles.size(), [=](std::size_t facet, Numbers& touch) {
    const auto& [a, b, c] = triangles[facet];
    if ((marked[a] | marked[b] | marked[c]) != 0)
      touch.push_back(static_cast<std::uint32_t>(facet));
  }));
}

/// The facets round some of a mesh's vertices.
class Stars {
 public:
  Stars(const TriangleMesh& mesh, const std::vector<char>& is_wanted) : mesh_(mesh) {
    vertices_ = joined(in_parts<Numbers>(
        is_wanted.size(), [wanted = is_wanted.data()](std::size_t v, Numbers& vertices) {
          if (wanted[v] != 0) vertices.push_back(static_cast<std::uint32_t>(v));
        }));
    first_.assign(vertices_.size() + 1, 0);
    if (vertices_.empty()) return;
    number_.assign(is_wanted.size(), none);
    for (std::uint32_t star = 0; star < vertices_.size(); ++star) number_[vertices_[star]] = star;
    const std::vector<std::uint32_t> facets = facets_at_marked(mesh, is_wanted);
    const auto for_each_corner = [&](auto see) {
      for (const std::uint32_t facet : facets)
        for (const std::uint32_t v : mesh_.triangles[facet])
          if (number_[v] != none) see(number_[v], facet);
    };
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
  const TriangleMesh& mesh_;
  std::vector<std::uint32_t> number_;  // for each vertex
  std::vector<std::uint32_t> vertices_, first_, facets_;
};

/// The facets at a vertex that do not reach below it; several threads may add to it at once.
class LyingOver {
 public:
  /// One that goes round by `from` and `to`. They are counted up to what `count` tells.
  void add(std::uint32_t from, std::uint32_t to) {
    const std::atomic_ref<std::int64_t> shared(packed_);
    if (count_in(shared.load(std::memory_order_relaxed)) > most) return;
    shared.fetch_add(one + from - std::int64_t{to}, std::memory_order_relaxed);
  }

  /// Up to 3, or that they are more.
  std::size_t count() const { return static_cast<std::size_t>(count_in(packed_)); }
  /// Whether they may go once round: then each `from` is another's `to`. Of `count` up to 3.
  bool may_close() const { return packed_ == count_in(packed_) * one; }

 private:
  static constexpr std::int64_t most = 3;
  static constexpr std::int64_t one = std::int64_t{1} << 48;  // above all differences of a few
  static std::int64_t count_in(std::int64_t packed) { return (packed + one / 2) / one; }

  std::int64_t packed_ = 0;  // their number, times `one`, and all `from` less all `to`
};

/// The lowest places of a closed surface, turned: vertices, or plateaus of them, without a lower
/// neighbour.
class LowPlaces {
 public:
  LowPlaces(const TriangleMesh& mesh, const Turn& turn)
      : mesh_(mesh),
        turn_(turn),
        height_(mesh.vertices_mm.size()),
        spills_(height_.size(), 0),
        lying_over_(height_.size()) {
    in_stretches(height_.size(), [&](std::size_t v) { height_[v] = place(v)[2]; });
    look_at_facets();
    low_ = find_low();
  }

  /// Whether a place is lowest for all facets at it alike: several fans of them may touch in one
  /// vertex, and one of them be lowest there. A fan has three facets or more, and where it is
  /// lowest none of them reaches below.
  bool are_plain() const {
    constexpr std::size_t fan = 3;
    std::vector<char> doubtful(lying_over_.size());
    for (std::size_t v = 0; v < doubtful.size(); ++v)
      doubtful[v] =
          static_cast<char>(lying_over_[v].count() > fan ||
                            (lying_over_[v].count() == fan && lying_over_[v].may_close()));
    const Stars stars(mesh_, doubtful);
    std::atomic<bool> all_plain = true;
    in_stretches(stars.vertices().size(), [&](std::size_t i) {
      const std::uint32_t v = stars.vertices()[i];
      if (stars.facets_at(v).size() < 2 * fan || !all_plain || stars.is_one_fan(v)) return;
      all_plain = false;
    });
    return all_plain;
  }

  std::size_t count() const {
    return static_cast<std::size_t>(
        std::count_if(low_.begin(), low_.end(), [&](std::uint32_t v) { return root_of(v) == v; }));
  }

  /// Whether one of them has air over it. One vertex of a plateau tells it nearly always.
  bool has_floor() const {
    std::vector<char> is_known(mesh_.vertices_mm.size(), 0);  // by the plateau's root
    for (const bool first_of_each : {true, false}) {
      std::vector<char> wanted(mesh_.vertices_mm.size(), 0);
      for (const std::uint32_t v : low_)
        wanted[v] =
            static_cast<char>((root_of(v) == v) == first_of_each && is_known[root_of(v)] == 0);
      const Stars stars(mesh_, wanted);
      for (const std::uint32_t v : stars.vertices()) {
        char& known = is_known[root_of(v)];
        if (known != 0) continue;
        const auto answer = has_air_over(v, stars.facets_at(v));
        if (answer && *answer) return true;
        known = static_cast<char>(answer.has_value());
      }
    }
    return false;
  }

 private:
  Point place(std::size_t vertex) const {
    const Point& p = mesh_.vertices_mm[vertex];
    return turn_ ? turn_(p) : p;
  }

  /// Which vertices have a lower neighbour, and which facets lie over them.
  void look_at_facets() {
    level_below_.resize(mesh_.triangles.size());
    in_stretches(
        mesh_.triangles.size(),
        [triangles = mesh_.triangles.data(), height = height_.data(), spills = spills_.data(),
         over = lying_over_.data(), level = level_below_.data()](std::size_t facet) {
          const auto& corners = triangles[facet];
          const double lowest =
              std::min(std::min(height[corners[0]], height[corners[1]]), height[corners[2]]);
          int at_lowest = 0;
          for (std::size_t i = 0; i < 3; ++i) {
            const std::uint32_t v = corners[i];
            if (height[v] == lowest) {
              ++at_lowest;
              over[v].add(corners[(i + 1) % 3], corners[(i + 2) % 3]);
            } else {
              const std::atomic_ref<char> shared(spills[v]);
              if (shared.load(std::memory_order_relaxed) == 0)
                shared.store(1, std::memory_order_relaxed);
            }
          }
          level[facet] = static_cast<char>(at_lowest > 1);
        });
  }

  /// What hangs together by level edges is low if all of it is. Where both ends of an edge have a
  /// lower neighbour of their own, nothing hangs on the edge.
  Numbers find_low() {
    const auto matters = [height = height_.data(), spills = spills_.data()](std::uint32_t a,
                                                                            std::uint32_t b) {
      return height[a] == height[b] && (spills[a] == 0 || spills[b] == 0);
    };
    const Numbers uniting = joined(in_parts<Numbers>(
        level_below_.size(), [=, level = level_below_.data(), triangles = mesh_.triangles.data()](
                                 std::size_t facet, Numbers& all) {
          if (level[facet] == 0) return;
          const auto& [a, b, c] = triangles[facet];
          if (matters(a, b) || matters(b, c) || matters(c, a))
            all.push_back(static_cast<std::uint32_t>(facet));
        }));
    level_below_ = {};
    if (!uniting.empty()) plateaus_.emplace(height_.size());
    in_stretches(uniting.size(), [&](std::size_t at) {
      const auto& corners = mesh_.triangles[uniting[at]];
      for (std::size_t i = 0; i < 3; ++i) {
        const std::uint32_t a = corners[i], b = corners[(i + 1) % 3];
        if (matters(a, b)) plateaus_->unite(a, b);
      }
    });
    if (plateaus_) {
      in_stretches(spills_.size(), [&, spills = spills_.data()](std::size_t v) {
        const std::uint32_t root = plateaus_->root(static_cast<std::uint32_t>(v));
        if (root != v && spills[v] != 0)
          std::atomic_ref<char>(spills[root]).store(1, std::memory_order_relaxed);
      });
    }
    return joined(in_parts<Numbers>(spills_.size(), [&](std::size_t at, Numbers& low) {
      const auto v = static_cast<std::uint32_t>(at);
      if (spills_[root_of(v)] == 0 && lying_over_[v].count() > 0) low.push_back(v);
    }));
  }

  std::uint32_t root_of(std::uint32_t vertex) const {
    return plateaus_ ? plateaus_->root(vertex) : vertex;
  }

  std::optional<bool> has_air_over(std::uint32_t vertex,
                                   std::span<const std::uint32_t> facets) const {
    if (!turn_) return carries_air(mesh_, vertex, facets);
    TriangleMesh star;
    star.vertices_mm.push_back(place(vertex));
    std::vector<std::uint32_t> numbers;
    for (const std::uint32_t facet : facets) {
      numbers.push_back(static_cast<std::uint32_t>(star.triangles.size()));
      auto& corners = star.triangles.emplace_back();
      for (std::size_t i = 0; i < 3; ++i) {
        if (mesh_.triangles[facet][i] == vertex) continue;
        corners[i] = static_cast<std::uint32_t>(star.vertices_mm.size());
        star.vertices_mm.push_back(place(mesh_.triangles[facet][i]));
      }
    }
    return carries_air(star, 0, numbers);
  }

  const TriangleMesh& mesh_;
  const Turn& turn_;
  std::vector<double> height_;          // for each vertex, turned
  std::vector<char> spills_;            // for each vertex, whether it has a lower neighbour
  std::vector<LyingOver> lying_over_;   // for each vertex
  std::vector<char> level_below_;       // for each facet, whether its lowest edge is level
  std::optional<SharedSets> plateaus_;  // none where no level edge matters
  Numbers low_;                         // vertices
};

/// What a look at each facet tells of a solid as a well, all but its lowest places.
class WellWalls {
 public:
  explicit WellWalls(const TriangleMesh& solid) : parts_(parts_of(solid)) {
    const Box box = bounding_box(solid);
    const double top = box.high_mm[2], height = top - box.low_mm[2];
    in_parallel(parts_.size(), [&](std::size_t number) {
      Part& part = parts_[number];
      const std::size_t end = std::min(solid.triangles.size(), (number + 1) * facets_in_part);
      for (std::size_t i = number * facets_in_part; i < end && part.is_plain; ++i) {
        const auto& [a, b, c] = solid.triangles[i];
        look_at(solid.vertices_mm[a], solid.vertices_mm[b], solid.vertices_mm[c], top, height,
                part);
      }
    });
  }

  /// All of its lid is level, and no wall leans over it to speak of.
  bool are_plain() const {
    return std::all_of(parts_.begin(), parts_.end(),
                       [](const Part& part) { return part.is_plain; });
  }
  bool have_lid() const {
    return std::any_of(parts_.begin(), parts_.end(), [](const Part& part) { return part.has_lid; });
  }
  double roofed_mm2() const {
    double sum = 0;
    for (const Part& part : parts_) sum += part.roofed_mm2;
    return sum;
  }

 private:
  struct Part {
    bool is_plain = true, has_lid = false;
    double roofed_mm2 = 0;
  };
  static constexpr std::size_t facets_in_part = std::size_t{1} << 14;
  static std::vector<Part> parts_of(const TriangleMesh& solid) {
    return std::vector<Part>((solid.triangles.size() + facets_in_part - 1) / facets_in_part);
  }

  static void look_at(const Point& p, const Point& q, const Point& r, double top, double height,
                      Part& part) {
    const double lowest = std::min({p[2], q[2], r[2]});
    if (lowest == top) {
      part.has_lid = true;
      return;
    }
    if (lowest >= top - 1e-9 * height) part.is_plain = false;  // a lid that is not level
    const Vector normal = doubled_area(p, q, r);
    if (!(normal[2] > 0)) return;
    if (normal[2] > least_lean * length(normal)) part.is_plain = false;
    part.roofed_mm2 += normal[2] / 2;
  }

  std::vector<Part> parts_;
};

}  // namespace

bool surely_holds_nothing(const TriangleMesh& body, const Turn& turn) {
  LowPlaces places(body, turn);
  return !places.has_floor() && places.are_plain();
}

bool is_surely_one_open_well(const TriangleMesh& solid) {
  const WellWalls walls(solid);
  if (!walls.are_plain() || !walls.have_lid()) return false;
  const auto [low, high] = bounding_box(solid);
  const double roofed_mm3 = walls.roofed_mm2() * (high[2] - low[2]);
  if (roofed_mm3 > least_roof * (enclosed_volume(solid) / cubic_millimetre)) return false;
  const Turn as_it_stands;
  LowPlaces places(solid, as_it_stands);
  return places.count() == 1 && places.are_plain();
}

}  // namespace brimwright::geometry
