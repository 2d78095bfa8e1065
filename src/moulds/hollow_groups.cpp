#include "moulds/hollow_groups.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace brimwright::moulds {
namespace {

constexpr double alike = 0.005;  // half a per cent is below what anyone weighs a piece to

bool are_alike(const Hollow& a, const Hollow& b) {
  const double volume = a.curve.brimful() / b.curve.brimful();
  const double depth = a.curve.height() / b.curve.height();
  return std::abs(volume - 1) <= alike && std::abs(depth - 1) <= alike;
}

/// The member of middle volume; of those equal to it but for the rounding of sums, the one that
/// stands first, so that no last bit of a volume decides which is shown.
std::size_t typical_of(const std::vector<std::size_t>& by_volume,
                       const std::vector<Hollow>& hollows) {
  constexpr double rounding = 1e-6;  // of thousands of facets' prisms; nobody fills so exactly
  const Volume middle = hollows[by_volume[by_volume.size() / 2]].curve.brimful();
  std::size_t first = by_volume[by_volume.size() / 2];
  for (const std::size_t i : by_volume)
    if (std::abs(hollows[i].curve.brimful() / middle - 1) <= rounding) first = std::min(first, i);
  return first;
}

Volume held(const HollowGroup& group) {
  return static_cast<double>(group.members.size()) * group.most;
}

}  // namespace

std::vector<HollowGroup> groups_of(const std::vector<Hollow>& hollows) {
  std::vector<std::size_t> by_volume(hollows.size());
  std::iota(by_volume.begin(), by_volume.end(), 0);
  std::stable_sort(by_volume.begin(), by_volume.end(), [&](std::size_t a, std::size_t b) {
    return hollows[a].curve.brimful() < hollows[b].curve.brimful();
  });
  std::vector<HollowGroup> groups;
  for (const std::size_t i : by_volume) {
    const auto group = std::find_if(groups.begin(), groups.end(), [&](const HollowGroup& g) {
      return are_alike(hollows[g.members.front()], hollows[i]);
    });
    const Volume brimful = hollows[i].curve.brimful();
    if (group == groups.end())
      groups.push_back({.members = {i}, .typical = i, .least = brimful, .most = brimful});
    else {
      group->members.push_back(i);
      group->most = brimful;
    }
  }
  for (auto& group : groups) {
    group.typical = typical_of(group.members, hollows);  // while they are still by volume
    std::sort(group.members.begin(), group.members.end());
  }
  std::stable_sort(groups.begin(), groups.end(),
                   [](const HollowGroup& a, const HollowGroup& b) { return held(a) > held(b); });
  return groups;
}

}  // namespace brimwright::moulds
