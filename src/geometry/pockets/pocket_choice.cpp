#include "geometry/pockets/pocket_choice.h"

#include "geometry/pockets/pocket_volumes.h"
#include "geometry/surface/enclosed_volume.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <utility>

namespace brimwright::geometry {
namespace {

constexpr std::uint32_t never = AirTree::never;

// All: common practice, no source.
constexpr double least_depth = 1e-4;  // of the body's height: print and scan are no finer
// Of the largest pocket: engraving, vents and screw holes hold less. A hair below 2 %, so that
// rounding does not decide about what holds just that.
constexpr double least_volume = 0.02 * (1 - 1e-9);
constexpr double least_step = 0.01;  // of a joint basin's depth, for one within another to be told
constexpr std::size_t most_joints = 50;       // our own bound: beyond it, the outermost alone
constexpr double least_share_of_depth = 0.5;  // for a hollow to be more than relief in a floor

double depth_of(const Basin& basin) { return basin.brim_mm - basin.floor_mm; }

/// The hollows that spill to the outside, and how each parts into pockets.
class Chooser {
 public:
  Chooser(const AirSurface& surface, const AirTree& tree)
      : surface_(surface), tree_(tree), basins_(tree.basins.size()) {
    const Box box = bounding_box(surface.mesh());
    shallow_ = least_depth * (box.high_mm[2] - box.low_mm[2]);
    for (std::uint32_t b = 1; b < basins_; ++b)
      if (tree.basins[b].parent == AirTree::outside) wholes_.push_back(b);
    whole_of_ = groups_by(tree, wholes_);
    whole_volume_ = volumes_of(wholes_, whole_of_);
  }

  PocketChoice choice() && {
    keep_deep();
    part_wholes();
    while (drop_small_parts()) part_wholes();
    drop_dents();
    return PocketChoice{
        .pockets = parts_, .joints = joints(), .dents = dents_, .dents_mm3 = dents_mm3_};
  }

 private:
  std::vector<double> volumes_of(const std::vector<std::uint32_t>& chosen,
                                 const std::vector<std::uint32_t>& group_of) const {
    std::vector<double> brims;
    for (const std::uint32_t b : chosen) brims.push_back(tree_.basins[b].brim_mm);
    return volumes_below(surface_, tree_, group_of, brims);
  }

  const Basin& whole(std::uint32_t basin) const { return tree_.basins[wholes_[whole_of_[basin]]]; }

  /// Of every whole that is no dent, what is deep enough to be a pocket of its own.
  void keep_deep() {
    kept_.assign(basins_, 0);
    for (std::uint32_t b = 1; b < basins_; ++b) {
      if (whole_of_[b] == never || depth_of(whole(b)) < shallow_) continue;
      kept_[b] = depth_of(tree_.basins[b]) >= least_share_of_depth * depth_of(whole(b));
    }
  }

  /// A part is the highest kept basin below a branching, one with two kept basins or more in it.
  void part_wholes() {
    std::vector<std::uint32_t> kept_children(basins_, 0);
    for (std::uint32_t b = 1; b < basins_; ++b)
      if (kept_[b] != 0 && whole_of_[b] != never) ++kept_children[tree_.basins[b].parent];
    // A basin branches if it or one of those in it has two kept children: children come first.
    std::vector<char> branches(basins_, 0);
    for (std::uint32_t b = 1; b < basins_; ++b) {
      branches[b] |= kept_children[b] > 1;
      const std::uint32_t parent = tree_.basins[b].parent;
      if (branches[b] != 0 && parent != never) branches[parent] = 1;
    }
    parts_.clear();
    for (std::uint32_t b = 1; b < basins_; ++b) {
      if (kept_[b] == 0 || whole_of_[b] == never || branches[b] != 0) continue;
      const std::uint32_t parent = tree_.basins[b].parent;
      if (parent == AirTree::outside || branches[parent] != 0) parts_.push_back(b);
    }
    std::stable_sort(parts_.begin(), parts_.end(), [this](std::uint32_t a, std::uint32_t b) {
      return tree_.basins[a].floor_mm < tree_.basins[b].floor_mm;
    });
    part_volume_ = volumes_of(parts_, groups_by(tree_, parts_));
  }

  /// Small parts beside a large one, or small even together, are relief in the whole's floor.
  bool drop_small_parts() {
    std::vector<double> largest(wholes_.size(), 0), sum(wholes_.size(), 0);
    for (std::size_t i = 0; i < parts_.size(); ++i) {
      const std::uint32_t w = whole_of_[parts_[i]];
      largest[w] = std::max(largest[w], part_volume_[i]);
      sum[w] += part_volume_[i];
    }
    std::vector<char> dropped(basins_, 0);
    bool any = false;
    for (std::size_t i = 0; i < parts_.size(); ++i) {
      const std::uint32_t w = whole_of_[parts_[i]];
      if (parts_[i] == wholes_[w]) continue;
      const bool small = part_volume_[i] < least_volume * largest[w];
      dropped[parts_[i]] = small || sum[w] < least_volume * whole_volume_[w];
      any |= dropped[parts_[i]] != 0;
    }
    for (std::uint32_t b = static_cast<std::uint32_t>(basins_); b-- > 1;) {
      const std::uint32_t parent = tree_.basins[b].parent;
      if (parent != never) dropped[b] |= dropped[parent];
      if (dropped[b] != 0) kept_[b] = 0;
    }
    return any;
  }

  void drop_dents() {
    const double largest =
        parts_.empty() ? 0 : *std::max_element(part_volume_.begin(), part_volume_.end());
    std::vector<char> has_pocket(wholes_.size(), 0);
    std::vector<std::uint32_t> pockets;
    for (std::size_t i = 0; i < parts_.size(); ++i) {
      if (part_volume_[i] < least_volume * largest || !(part_volume_[i] > 0)) continue;
      has_pocket[whole_of_[parts_[i]]] = 1;
      pockets.push_back(parts_[i]);
    }
    parts_ = std::move(pockets);
    for (std::size_t w = 0; w < wholes_.size(); ++w) {
      if (has_pocket[w] != 0) continue;
      ++dents_;
      dents_mm3_ += whole_volume_[w];
    }
  }

  /// By ascending number, so that a basin comes before what it is part of.
  std::vector<PocketChoice::Joint> joints() const {
    std::map<std::uint32_t, std::vector<std::size_t>> pockets_in;
    std::vector<double> lowest_brim(basins_, HUGE_VAL);
    for (std::size_t i = 0; i < parts_.size(); ++i) {
      const double brim = tree_.basins[parts_[i]].brim_mm;
      for (std::uint32_t b = tree_.basins[parts_[i]].parent; b != AirTree::outside && b != never;
           b = tree_.basins[b].parent) {
        pockets_in[b].push_back(i);
        lowest_brim[b] = std::min(lowest_brim[b], brim);
      }
    }
    std::vector<PocketChoice::Joint> found;
    for (const auto& [basin, pockets] : pockets_in) {
      const bool is_whole = tree_.basins[basin].parent == AirTree::outside;
      if (pockets.size() < 2 || (!is_whole && !is_worth_telling(basin, pockets, pockets_in)))
        continue;
      // Rims that differ by less than a print can are one rim, not a wall with a basin above it.
      const double rise = tree_.basins[basin].brim_mm - lowest_brim[basin];
      if (rise >= (is_whole ? shallow_ : least_step * depth_of(tree_.basins[basin])))
        found.push_back({basin, pockets});
    }
    // Each takes the facets of all that is in it anew.
    if (found.size() > most_joints)
      std::erase_if(found, [this](const PocketChoice::Joint& joint) {
        return tree_.basins[joint.basin].parent != AirTree::outside;
      });
    return found;
  }

  /// A basin within another: one that unites other pockets, at a level of its own. Those that
  /// differ by a scan's noise are one.
  bool is_worth_telling(std::uint32_t basin, const std::vector<std::size_t>& pockets,
                        const std::map<std::uint32_t, std::vector<std::size_t>>& pockets_in) const {
    const std::uint32_t parent = tree_.basins[basin].parent;
    if (parent == never) return false;
    const double step = tree_.basins[parent].brim_mm - tree_.basins[basin].brim_mm;
    return pockets_in.at(parent) != pockets && step >= least_step * depth_of(tree_.basins[basin]);
  }

  const AirSurface& surface_;
  const AirTree& tree_;
  std::size_t basins_;
  double shallow_ = 0;
  std::vector<std::uint32_t> wholes_;    // basins that spill to the outside
  std::vector<std::uint32_t> whole_of_;  // for each basin
  std::vector<double> whole_volume_;
  std::vector<char> kept_;            // for each basin
  std::vector<std::uint32_t> parts_;  // basins
  std::vector<double> part_volume_;
  std::size_t dents_ = 0;
  double dents_mm3_ = 0;
};

void count_voids(const AirSurface& surface, const AirTree& tree, PocketChoice& choice) {
  std::vector<std::uint32_t> voids;
  for (std::uint32_t b = 1; b < tree.basins.size(); ++b)
    if (tree.basins[b].parent == AirTree::never) voids.push_back(b);
  if (voids.empty()) return;
  const std::vector<double> tops(voids.size(), bounding_box(surface.mesh()).high_mm[2]);
  const std::vector<double> volumes = volumes_below(surface, tree, groups_by(tree, voids), tops);
  choice.sealed_voids = voids.size();
  choice.sealed_mm3 = std::accumulate(volumes.begin(), volumes.end(), 0.0);
}

}  // namespace

std::vector<std::uint32_t> groups_by(const AirTree& tree,
                                     const std::vector<std::uint32_t>& chosen) {
  std::vector<std::uint32_t> group_of(tree.basins.size(), never);
  for (std::uint32_t i = 0; i < chosen.size(); ++i) group_of[chosen[i]] = i;
  for (auto b = static_cast<std::uint32_t>(tree.basins.size()); b-- > 1;) {
    const std::uint32_t parent = tree.basins[b].parent;
    if (group_of[b] == never && parent != never && parent != AirTree::outside)
      group_of[b] = group_of[parent];
  }
  return group_of;
}

PocketChoice chosen_pockets(const AirSurface& surface, const AirTree& tree) {
  PocketChoice choice = Chooser(surface, tree).choice();
  count_voids(surface, tree, choice);
  return choice;
}

}  // namespace brimwright::geometry
