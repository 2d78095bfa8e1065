#pragma once

#include "units/user_error.h"

#include <string>
#include <vector>

namespace brimwright::records {

/// What is noted, or taken back with an empty value. A key "cured.2026-12-29" is a weighing:
/// "12 pieces, 1040 g".
struct Note {
  std::string key, value;
  Place where;  // of the value, for complaints
};
/// What a note is held against.
struct Noting {
  std::string today;                        // ISO 8601 day
  std::string noted_at;                     // moment with offset
  std::vector<std::string> confirmed = {};  // values that were asked about, as they are written
  Place confirmed_at = {};
};

}  // namespace brimwright::records
