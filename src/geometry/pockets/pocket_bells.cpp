#include "geometry/pockets/pocket_bells.h"

#include "geometry/pockets/pocket_choice.h"
#include "geometry/pockets/pocket_volumes.h"

#include <algorithm>

namespace brimwright::geometry {
namespace {

constexpr std::uint32_t never = AirTree::never;

/// A surface that is turned over as long as this lives.
class TurnedOver {
 public:
  explicit TurnedOver(AirSurface& surface) : surface_(surface) { surface_.turn_over(); }
  ~TurnedOver() { surface_.turn_over(); }
  TurnedOver(const TurnedOver&) = delete;
  TurnedOver& operator=(const TurnedOver&) = delete;

  const AirSurface& surface() const { return surface_; }

 private:
  AirSurface& surface_;
};

/// The bells of a surface, and which of them the liquid in a pocket cuts off.
class Bells {
 public:
  Bells(AirSurface& surface, const AirTree& tree, std::span<const std::uint32_t> pocket_of)
      : tree_(tree),
        pocket_of_(pocket_of),
        turned_(surface),
        bells_(air_tree(over_)),
        vented_(bells_.basins.size(), 0) {
    do choose_outermost();
    while (bar_vented());
  }

  std::vector<double> trapped_below(std::span<const double> brim_mm) const {
    std::vector<double> lips, brims;
    for (const std::uint32_t b : chosen_) {
      lips.push_back(bells_.basins[b].brim_mm);
      brims.push_back(-brim_mm[pocket_at_lip(b)]);
    }
    const std::vector<double> above_lip = volumes_below(over_, bells_, group_of_, lips);
    const std::vector<double> above_brim = volumes_below(over_, bells_, group_of_, brims);
    std::vector<double> trapped(brim_mm.size(), 0);
    for (std::size_t i = 0; i < chosen_.size(); ++i)
      trapped[pocket_at_lip(chosen_[i])] += std::max(0.0, above_lip[i] - above_brim[i]);
    return trapped;
  }

 private:
  /// The pocket in which the bell's lip lies, below the pocket's brim; never if none.
  std::uint32_t pocket_at_lip(std::uint32_t bell) const {
    const Basin& basin = bells_.basins[bell];
    return basin.parent == never ? never : pocket_of_[tree_.basin_at[basin.spill_vertex]];
  }

  /// Of bells within bells only the outermost with its lip in a pocket: that cuts all of them off.
  void choose_outermost() {
    std::vector<char> within(bells_.basins.size(), 0);  // one that is chosen
    chosen_.clear();
    for (auto b = static_cast<std::uint32_t>(bells_.basins.size()); b-- > 1;) {
      const std::uint32_t parent = bells_.basins[b].parent;
      if (parent != never && within[parent] != 0) {
        within[b] = 1;
      } else if (vented_[b] == 0 && pocket_at_lip(b) != never) {
        within[b] = 1;
        chosen_.push_back(b);
      }
    }
    group_of_ = groups_by(bells_, chosen_);
  }

  /// Finds the bells among the chosen that reach down at their lip's level into other air than the
  /// pocket's: by a pipe over the brim, say. They stay open there.
  bool bar_vented() {
    bool any = false;
    leads_out_.assign(over_.mesh().vertices_mm.size(), Answer::unknown);
    for (std::size_t i = 0; i < bells_.basin_of.size(); ++i) {
      const std::uint32_t group = group_of_[bells_.basin_of[i]];
      if (group == never) continue;
      const std::uint32_t bell = chosen_[group];
      if (pocket_of_[tree_.basin_of[i]] == pocket_at_lip(bell) || vented_[bell] != 0) continue;
      const auto& corners = over_.mesh().triangles[i];
      const double lip = bells_.basins[bell].brim_mm;
      vented_[bell] = std::any_of(corners.begin(), corners.end(), [&](std::uint32_t v) {
        return over_.height_of(v) > lip || (over_.height_of(v) == lip && leads_out(v));
      });
      any |= vented_[bell] != 0;
    }
    return any;
  }

  /// Whether the wall goes on out of all bells from a corner at the height of a lip, or from
  /// another that hangs together with it by level edges. Answered once for each level part: a flat
  /// ceiling may have a thousand bells.
  bool leads_out(std::uint32_t corner) {
    const double lip = over_.height_of(corner);
    std::vector<std::uint32_t> reached;
    bool found = false;
    const auto reach = [&](std::uint32_t v) {
      if (over_.height_of(v) != lip) return;
      found |= leads_out_[v] == Answer::yes;
      if (leads_out_[v] != Answer::unknown) return;
      leads_out_[v] = Answer::no;
      reached.push_back(v);
    };
    reach(corner);
    for (std::size_t next = 0; next < reached.size() && !found; ++next) {
      const std::uint32_t v = reached[next];
      for (const std::uint32_t facet : over_.facets_at(v)) {
        const auto& corners = over_.mesh().triangles[facet];
        const bool level = std::all_of(corners.begin(), corners.end(),
                                       [&](std::uint32_t c) { return over_.height_of(c) == lip; });
        found |= !level && group_of_[bells_.basin_of[facet]] == never;
        for (const std::uint32_t c : corners) reach(c);
      }
      if (over_.other_side(v) != never) reach(over_.other_side(v));
    }
    if (found)
      for (const std::uint32_t v : reached) leads_out_[v] = Answer::yes;
    return found;
  }

  enum class Answer : char { unknown, no, yes };

  const AirTree& tree_;
  std::span<const std::uint32_t> pocket_of_;
  const TurnedOver turned_;
  const AirSurface& over_ = turned_.surface();
  AirTree bells_;
  std::vector<char> vented_;           // for each bell
  std::vector<std::uint32_t> chosen_;  // bells
  std::vector<std::uint32_t> group_of_;
  std::vector<Answer> leads_out_;  // for each corner at the height of a lip
};

}  // namespace

std::vector<double> trapped_air(AirSurface& surface, const AirTree& tree,
                                std::span<const std::uint32_t> pocket_of,
                                std::span<const double> brim_mm) {
  return Bells(surface, tree, pocket_of).trapped_below(brim_mm);
}

}  // namespace brimwright::geometry
