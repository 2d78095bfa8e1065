#include "records/plans.h"

#include "records/database.h"
#include "records/documents.h"
#include "records/records.h"

#include <cstddef>

namespace brimwright::records {

std::vector<PackedPlan> packed_plans(const Records& records, const TextPlaces& hashes) {
  return told(records.path(), [&] {
    SQLite::Statement find(records.database().connection(),
                           "SELECT packed, length FROM document WHERE hash = ?");
    std::vector<PackedPlan> plans;
    for (std::size_t i = 0; i < hashes.size(); ++i) {
      SQLite::bind(find, hashes[i]);
      if (!find.executeStep()) refuse_damaged(records);
      plans.push_back({find.getColumn(0).getString(), find.getColumn(1).getInt64()});
      find.reset();
    }
    return plans;
  });
}

void unpack(const PackedPlan& plan, const Records& records, std::string& text) {
  if (!inflate(plan.packed, plan.length, text)) refuse_damaged(records);
}

}  // namespace brimwright::records
