#pragma once

#include <chrono>
#include <cstddef>
#include <functional>
#include <string>

namespace brimwright::geometry {

struct ChildLimits {
  std::size_t memory_bytes;  // beside what it has from its parent
  std::chrono::milliseconds time;
};

enum class ChildEnd {
  finished,
  gave_up,
  out_of_memory,
  out_of_time,
  broke_down,
  not_confined  // the system would not set the filter, so the work was not begun
};

struct ChildReport {
  ChildEnd end;
  std::string bytes = {};   // what the child sent, if it finished
  bool unfiltered = false;  // it finished, on a system that has no filter to set
};

/// Sends bytes from the child to its parent; false if the parent no longer listens.
using Send = std::function<bool(const void* data, std::size_t size)>;

/// Runs `work` in a forked child that has only so much memory and time and can ask nothing of the
/// system but memory and to send (see child_filter.h), and gives back what it sent. `work` returns
/// whether it succeeded. Whatever the work does to itself (crash, hang, eat memory, reach for a
/// file) ends the child alone; it ends with its parent.
ChildReport run_in_child(const ChildLimits& limits, const std::function<bool(const Send&)>& work);

}  // namespace brimwright::geometry
