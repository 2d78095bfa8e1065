#pragma once

#include <cstdint>
#include <string>

namespace brimwright::reports {

/// A batch of a run that has its code already.
struct CodedBatch {
  std::int64_t number = 1;
  std::string code = {};
  std::string begun_on = {};  // empty: not yet
};

}  // namespace brimwright::reports
