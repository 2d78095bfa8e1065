#pragma once

#include "units/text_places.h"

#include <cstdint>
#include <string>
#include <vector>

namespace brimwright::records {

class Records;

/// A frozen plan as it is kept.
struct PackedPlan {
  std::string packed;
  std::int64_t length = 0;
};

/// Those of these hashes, in their order. UserError where the records have one not at all.
std::vector<PackedPlan> packed_plans(const Records& records, const TextPlaces& hashes);

/// The plan's answer, JSON, into `text`, as plan_of gives it, for what reads a great many: that it
/// is whole is known by the sum beside it (Adler-32, RFC 1950) alone, which is enough where nothing
/// is weighed by it. May be called by several threads at once. UserError where the records have it
/// damaged.
void unpack(const PackedPlan& plan, const Records& records, std::string& text);

}  // namespace brimwright::records
