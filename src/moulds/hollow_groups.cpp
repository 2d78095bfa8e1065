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
    group.typical = group.members[group.members.size() / 2];  // still by volume
    std::sort(group.members.begin(), group.members.end());
  }
  std::stable_sort(groups.begin(), groups.end(),
                   [](const HollowGroup& a, const HollowGroup& b) { return held(a) > held(b); });
  return groups;
}

}  // namespace brimwright::moulds
