#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace brimwright::records {

class Records;

/// A frozen plan as it is kept.
struct PackedPlan {
  std::string hash, packed;
  std::int64_t length = 0;
};

/// Those of all batches, each once.
std::vector<PackedPlan> packed_plans(const Records& records);

/// The plan's answer, JSON, as plan_of gives it, for what reads a great many: that it is whole is
/// known by zlib's own sum (Adler-32) alone, which is enough where nothing is weighed by it. May be
/// called by several threads at once. UserError where the records have it damaged.
std::string unpacked(const PackedPlan& plan, const Records& records);

}  // namespace brimwright::records
