#include "reports/vessel.h"

#include <algorithm>

namespace brimwright::reports {

std::string name_of(Vessel::Kind kind) {
  switch (kind) {
    case Vessel::Kind::fats:
      return "fats";
    case Vessel::Kind::lye:
      return "lye";
    case Vessel::Kind::lye_pot:
      return "lye_pot";
    case Vessel::Kind::share:
      return "share";
    case Vessel::Kind::batter:
      return "batter";
    case Vessel::Kind::layers:
      return "layers";
    case Vessel::Kind::melt:
      return "melt";
    case Vessel::Kind::dust:
      return "dust";
  }
  return "";
}

const Vessel* find_vessel(const std::vector<Vessel>& vessels, const std::string& key) {
  const auto found = std::find_if(vessels.begin(), vessels.end(),
                                  [&](const Vessel& vessel) { return vessel.key == key; });
  return found == vessels.end() ? nullptr : &*found;
}

}  // namespace brimwright::reports
