#include "geometry/pockets/pocket_tree.h"

#include "geometry/pockets/pocket_minimum.h"
#include "geometry/pockets/pocket_plumb.h"
#include "geometry/surface/disjoint_sets.h"
#include "geometry/surface/parallel.h"

#include <algorithm>
#include <map>
#include <optional>
#include <span>
#include <utility>

namespace brimwright::geometry {
namespace {

constexpr std::uint32_t none = AirSurface::none;
constexpr std::uint32_t nothing_lower = none - 1;

/// Vertices of one height that hang together by level edges.
using Plateau = std::span<const std::uint32_t>;

/// Takes the surface's vertices in ascending order and keeps account of the basins below.
class Sweep {
 public:
  explicit Sweep(const AirSurface& surface)
      : surface_(surface), level_(surface.mesh().vertices_mm.size()) {
    tree_.basin_at.assign(surface.mesh().vertices_mm.size(), none);
    add_basin({.parent = AirTree::never});  // the outside
    look_round();
  }

  AirTree run() && {
    std::vector<std::uint32_t> order = ascending();
    if (!order.empty()) lowest_ = surface_.height_of(order.front());
    for (std::size_t start = 0; start < order.size();) {
      std::size_t end = start + 1;
      height_ = surface_.height_of(order[start]);
      while (end < order.size() && surface_.height_of(order[end]) == height_) ++end;
      take(std::span(order).subspan(start, end - start));
      start = end;
    }
    tree_.basin_of.resize(surface_.mesh().triangles.size());
    in_stretches(tree_.basin_of.size(), [&](std::size_t facet) {
      tree_.basin_of[facet] = tree_.basin_at[surface_.lowest_corner(facet)];
    });
    return std::move(tree_);
  }

 private:
  std::vector<std::uint32_t> ascending() const {
    std::vector<std::pair<double, std::uint32_t>> by_height;
    by_height.reserve(surface_.mesh().vertices_mm.size());
    for (std::uint32_t v = 0; v < surface_.mesh().vertices_mm.size(); ++v)
      if (!surface_.facets_at(v).empty()) by_height.emplace_back(surface_.height_of(v), v);
    sort_in_parallel(by_height);
    std::vector<std::uint32_t> order;
    order.reserve(by_height.size());
    for (const auto& [height, v] : by_height) order.push_back(v);
    return order;
  }

  /// Finds which vertices hang together by level edges, and those round which the neighbours that
  /// lie lower follow each other: these are of one basin then, and any of them tells which.
  void look_round() {
    lower_.assign(level_.size(), none);
    in_stretches(level_.size(), [this, heights = surface_.mesh().vertices_mm.data(),
                                 triangles = surface_.mesh().triangles.data(),
                                 lower = lower_.data()](std::size_t at) {
      const auto v = static_cast<std::uint32_t>(at);
      const double height = heights[v][2];
      int falls = 0;
      bool is_lowest = true;
      bool is_level = surface_.other_side(v) != none;
      std::uint32_t last = none;
      for (const std::uint32_t facet : surface_.facets_at(v)) {
        const auto& [a, b, c] = triangles[facet];
        const std::uint32_t from = v == a ? b : v == b ? c : a, to = v == a ? c : v == b ? a : b;
        const double height_from = heights[from][2], height_to = heights[to][2];
        is_lowest &= height_from >= height && height_to >= height;
        for (const std::uint32_t other : {from, to}) {
          if (heights[other][2] != height) continue;
          is_level = true;
          if (other < v) level_.unite(v, other);
        }
        if (height_from < height || height_to >= height) continue;
        ++falls;
        last = to;
      }
      if (surface_.other_side(v) != none) level_.unite(v, surface_.other_side(v));
      if (falls == 1 && !is_level) lower[v] = last;
      if (is_lowest) lower[v] = nothing_lower;
    });
  }

  /// All vertices of one height. What they unite is told only when all of them are known: one may
  /// link what another spills.
  void take(std::span<std::uint32_t> batch) {
    if (const std::uint32_t lower = lower_[batch.front()];
        batch.size() == 1 && lower != none && lower != nothing_lower) {
      tree_.basin_at[batch.front()] = top(tree_.basin_at[lower]);
      return;
    }
    minima_.clear();
    if (batch.size() == 1) {
      attach(batch);
    } else {
      for (const Plateau plateau : plateaus(batch)) attach(plateau);
    }
    tips_.clear();
    for (const Plateau minimum : minima_) {
      if (is_floor(surface_, minimum)) {
        begin_at(minimum);
      } else {
        tips_.push_back(minimum);
      }
    }
    for (const Plateau tip : tips_) hang(tip);
    if (meeting_.empty()) return;
    unite();
    for (const std::uint32_t v : batch) tree_.basin_at[v] = top(tree_.basin_at[v]);
  }

  template <class See>
  void for_each_neighbour(std::uint32_t v, See see) const {
    const auto* const triangles = surface_.mesh().triangles.data();
    // Round a vertex of a closed surface each neighbour comes next to it in one facet.
    for (const std::uint32_t facet : surface_.facets_at(v)) {
      const auto& [a, b, c] = triangles[facet];
      see(v == a ? b : v == b ? c : a);
      if (surface_.is_skin()) see(v == a ? c : v == b ? a : b);
    }
    if (surface_.other_side(v) != none) see(surface_.other_side(v));
  }

  /// Sorts the batch by plateau.
  std::vector<Plateau> plateaus(std::span<std::uint32_t> batch) {
    // The batch ascends, and the least of each plateau stands for it.
    place_.resize(surface_.mesh().vertices_mm.size());
    std::vector<std::uint32_t> size;
    for (const std::uint32_t v : batch) {
      const std::uint32_t root = level_.root(v);
      if (root == v) {
        place_[v] = static_cast<std::uint32_t>(size.size());
        size.push_back(0);
      }
      ++size[place_[root]];
    }
    std::vector<std::size_t> next;
    std::vector<Plateau> found;
    for (std::size_t start = 0; const std::uint32_t vertices : size) {
      next.push_back(start);
      found.push_back(batch.subspan(start, vertices));
      start += vertices;
    }
    unsorted_.assign(batch.begin(), batch.end());
    for (const std::uint32_t v : unsorted_) batch[next[place_[level_.root(v)]]++] = v;
    return found;
  }

  /// Finds the basins that a plateau rises from: it lies in the one, or several meet at it.
  void attach(Plateau plateau) {
    ++plateaus_seen_;
    rises_from_.clear();
    beside_.clear();
    for (const std::uint32_t v : plateau) {
      if (lower_[v] == nothing_lower) continue;
      for_each_neighbour(v, [&](std::uint32_t other) {
        if (!(surface_.height_of(other) < height_)) return;
        const std::uint32_t basin = top(tree_.basin_at[other]);
        if (plateau.size() > 1 && (beside_.empty() || beside_.back() != std::pair(v, basin)))
          beside_.emplace_back(v, basin);
        if (seen_at_[basin] == plateaus_seen_) return;
        seen_at_[basin] = plateaus_seen_;
        rises_from_.emplace_back(v, basin);
      });
    }
    if (rises_from_.empty()) {
      minima_.push_back(plateau);
      return;
    }
    const std::uint32_t first = rises_from_.front().second;
    for (const std::uint32_t v : plateau) tree_.basin_at[v] = first;
    if (rises_from_.size() < 2) return;
    for (const auto& [v, basin] : rises_from_) meet(basin, v);
    if (plateau.size() > 1) find_crossings(plateau);
    for (const auto& [v, basin] : rises_from_) join(first, basin);
  }

  /// A wide plateau touches a basin in many places; what spills does so where the way across it to
  /// another basin has the fewest edges.
  void find_crossings(Plateau plateau) {
    nearest_.resize(surface_.mesh().vertices_mm.size(), none);
    steps_.resize(nearest_.size(), 0);
    std::map<std::uint32_t, std::pair<std::uint32_t, std::uint32_t>> best;  // steps, vertex
    const auto offer = [&](std::uint32_t basin, std::uint32_t steps, std::uint32_t v) {
      const auto [at, is_new] = best.try_emplace(basin, steps, v);
      if (!is_new && steps < at->second.first) at->second = {steps, v};
    };
    std::vector<std::uint32_t> front;
    for (const auto& [v, basin] : beside_) {
      if (nearest_[v] == none) {
        nearest_[v] = basin;
        steps_[v] = 0;
        front.push_back(v);
      } else if (nearest_[v] != basin) {
        offer(basin, 0, v);
        offer(nearest_[v], 0, v);
      }
    }
    for (std::size_t i = 0; i < front.size(); ++i) {
      const std::uint32_t v = front[i];
      for_each_neighbour(v, [&](std::uint32_t other) {
        if (surface_.height_of(other) != height_) return;
        if (nearest_[other] == none) {
          nearest_[other] = nearest_[v];
          steps_[other] = steps_[v] + 1;
          front.push_back(other);
        } else if (nearest_[other] != nearest_[v]) {
          offer(nearest_[v], steps_[v] + steps_[other] + 1, v);
        }
      });
    }
    for (const auto& [basin, way] : best) tree_.basins[basin].spill_vertex = way.second;
    for (const std::uint32_t v : plateau) nearest_[v] = none;
  }

  void meet(std::uint32_t basin, std::uint32_t at_vertex) {
    if (meets_[basin] != 0) return;
    meets_[basin] = 1;
    tree_.basins[basin].spill_vertex = at_vertex;
    meeting_.push_back(basin);
  }

  void join(std::uint32_t a, std::uint32_t b) { top_.hang(b, a); }

  void begin_at(Plateau floor) {
    const std::uint32_t leaf =
        add_basin({.floor_mm = height_, .floor_vertex = floor.front(), .parent = AirTree::never});
    for (const std::uint32_t v : floor) tree_.basin_at[v] = leaf;
  }

  /// The air round a tip is that over the facet straight below it.
  void hang(Plateau tip) {
    std::uint32_t basin = AirTree::outside;
    if (const auto facet = facet_below(tip.front())) {
      const std::uint32_t below = tree_.basin_at[surface_.lowest_corner(*facet)];
      if (below != none) basin = below;
    }
    for (const std::uint32_t v : tip) tree_.basin_at[v] = top(basin);
  }

  /// Nothing under what is lowest of all, as most bodies' undersides are.
  std::optional<std::uint32_t> facet_below(std::uint32_t vertex) {
    if (height_ == lowest_) return std::nullopt;
    if (!plumb_) plumb_.emplace(surface_);
    return plumb_->facet_below(vertex);
  }

  /// Ends the basins that met at this height, group by group.
  void unite() {
    std::vector<std::pair<std::uint32_t, std::uint32_t>> by_group;
    for (const std::uint32_t basin : meeting_) by_group.emplace_back(top(basin), basin);
    std::sort(by_group.begin(), by_group.end());
    for (std::size_t start = 0, end = 0; end < by_group.size(); start = end) {
      bool spills = false;
      for (; end < by_group.size() && by_group[end].first == by_group[start].first; ++end)
        spills |= by_group[end].second == AirTree::outside;
      const auto group = std::span(by_group).subspan(start, end - start);
      const std::uint32_t parent = spills ? AirTree::outside : add_basin(whole_of(group));
      top_.separate(parent);
      for (const auto& [root, basin] : group) {
        meets_[basin] = 0;
        if (basin == AirTree::outside) continue;
        tree_.basins[basin].brim_mm = height_;
        tree_.basins[basin].parent = parent;
        top_.separate(basin);
        top_.hang(basin, parent);
      }
    }
    meeting_.clear();
  }

  Basin whole_of(std::span<const std::pair<std::uint32_t, std::uint32_t>> group) const {
    const auto lowest = std::min_element(group.begin(), group.end(), [&](auto& a, auto& b) {
      return tree_.basins[a.second].floor_mm < tree_.basins[b.second].floor_mm;
    });
    const Basin& deepest = tree_.basins[lowest->second];
    return {.floor_mm = deepest.floor_mm,
            .floor_vertex = deepest.floor_vertex,
            .parent = AirTree::never};
  }

  std::uint32_t add_basin(const Basin& basin) {
    tree_.basins.push_back(basin);
    top_.grow_to(tree_.basins.size());
    seen_at_.push_back(0);
    meets_.push_back(0);
    return static_cast<std::uint32_t>(tree_.basins.size() - 1);
  }

  /// The basin that `basin` is part of at this height.
  std::uint32_t top(std::uint32_t basin) { return top_.root(basin); }

  const AirSurface& surface_;
  AirTree tree_;
  double height_ = 0, lowest_ = 0;
  std::optional<PlumbLine> plumb_;
  SharedSets level_;  // vertices of one height, by their plateaus
  /// For a vertex that only lies on a slope, a lower neighbour; for others whether there is one.
  std::vector<std::uint32_t> lower_;
  DisjointSets top_;                    // basins, under the ones that they are part of
  std::vector<std::uint32_t> seen_at_;  // for each basin, the last plateau that rose from it
  std::vector<char> meets_;             // for each basin, whether it is in meeting_
  std::vector<std::uint32_t> meeting_;  // basins that meet another at this height
  std::vector<Plateau> minima_;         // plateaus of this height without a lower neighbour
  std::vector<Plateau> tips_;           // those of them with air below
  std::uint32_t plateaus_seen_ = 0;
  // Scratch of attach and find_crossings.
  std::vector<std::uint32_t> place_, unsorted_;  // of plateaus
  using VertexAndBasin = std::pair<std::uint32_t, std::uint32_t>;
  std::vector<VertexAndBasin> rises_from_, beside_;
  std::vector<std::uint32_t> nearest_, steps_;  // by vertex
};

}  // namespace

AirTree air_tree(const AirSurface& surface) { return Sweep(surface).run(); }

}  // namespace brimwright::geometry
