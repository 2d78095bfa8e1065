#include "chemistry/fat.h"

#include <algorithm>

namespace brimwright::chemistry {

SaponificationRange Fat::titrated() const {
  if (!slow) return saponification;
  const auto middle = SaponificationValue::mg_koh_per_g(
      (slow->titrated.mg_koh_per_g() + saponification.high.mg_koh_per_g()) / 2);
  return {slow->titrated, std::max(middle, saponification.typical), saponification.high};
}

bool Fat::liquid_at_room_temperature() const {
  // 20 degC for a cool workroom: common practice, no source.
  if (melting_range_c) return melting_range_c->second < 20;
  return name.find(" oil") != std::string::npos;
}

}  // namespace brimwright::chemistry
