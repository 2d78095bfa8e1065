#pragma once

#include <chrono>
#include <cstddef>
#include <string>

namespace brimwright::sandbox {

struct WorkLimits {
  std::size_t memory_bytes;  // beside the helper program itself and the bytes it is given
  std::chrono::milliseconds time;
};

enum class WorkEnd {
  finished,
  gave_up,
  out_of_memory,
  out_of_time,
  broke_down,
  not_confined,  // the system would not set the filter, so the work was not begun
  no_helper      // its program is not there
};

struct WorkReport {
  WorkEnd end;
  std::string bytes = {};   // what was made, if it finished; as little to be trusted as the input
  bool unfiltered = false;  // it finished, on a system that has no filter to set
};

}  // namespace brimwright::sandbox
