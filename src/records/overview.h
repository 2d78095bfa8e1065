#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::records {

class Records;

/// What records hold in all.
struct Overview {
  std::int64_t version = 1;  // of the file
  std::int64_t batches = 0, lots = 0, acts = 0;
  std::optional<std::string> since = {};   // the first act's moment
  std::optional<std::string> latest = {};  // and the last one's
  std::uint64_t bytes = 0;
  std::vector<std::string> faults = {};  // what SQLite's own check of the whole file finds; none
                                         // where it is sound
};
Overview overview_of(const Records& records);

}  // namespace brimwright::records
