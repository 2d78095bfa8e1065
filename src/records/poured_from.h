#pragma once

#include "trade/fraction.h"

#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace brimwright::records {

class Records;

/// A batch whose base was mixed for several runs at once: as a batch of its own, without pieces.
struct PouredFrom {
  std::string batch = {}, base = {};  // their ids
  std::int64_t place = 1;             // among those that are poured from it
  std::int64_t takes = 1;             // base by the plan, micrograms
};

/// Within the act that begins both batches.
void pour_from(Records& records, const PouredFrom& poured);

/// What `batch` was poured from; nothing where its base was mixed for it alone.
std::optional<PouredFrom> poured_from(const Records& records, const std::string& batch);
/// All that were poured from `base`, in their order.
std::vector<PouredFrom> poured_of(const Records& records, const std::string& base);
/// All that were poured from any, those of a base together and in their order.
std::vector<PouredFrom> all_poured(const Records& records);
/// The ids of all that anything was poured from.
std::set<std::string> all_bases(const Records& records);
/// What a batch has of all that was poured from its base, 0 to 1.
trade::Fraction part_of_base(const Records& records, const PouredFrom& poured);

}  // namespace brimwright::records
