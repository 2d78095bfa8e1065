#pragma once

#include "units/remark.h"

#include <string>
#include <vector>

namespace brimwright::reports {

/// What nobody said of the days, and what is done without it: "what: then".
struct DayLack {
  Severity severity;
  std::string what, then;
  std::vector<std::string> keys;  // where a file says it: a section of the studio and a key in it
  bool is_of_studio = true;
};

/// For whoever writes it into a file, with the keys; and for others, without.
std::string words_with_keys(const DayLack& lack);
std::string words_of(const DayLack& lack);

}  // namespace brimwright::reports
