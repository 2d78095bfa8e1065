#pragma once

#include "units/quantity.h"

#include <cstdint>
#include <string>

namespace brimwright::records {

/// Pieces of a batch put on a scale together on a day of their cure.
struct Weighing {
  std::string day;  // ISO 8601
  std::int64_t pieces = 0;
  std::string written = {};
  Mass together = {};
};

}  // namespace brimwright::records
