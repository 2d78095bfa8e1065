#include "chemistry/fat.h"

namespace brimwright::chemistry {

bool Fat::liquid_at_room_temperature() const {
  // 20 degC for a cool workroom: common practice, no source.
  if (melting_range_c) return melting_range_c->second < 20;
  return name.find(" oil") != std::string::npos;
}

}  // namespace brimwright::chemistry
