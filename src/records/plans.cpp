#include "records/plans.h"

#include "records/database.h"
#include "records/documents.h"
#include "records/records.h"

namespace brimwright::records {

std::vector<PackedPlan> packed_plans(const Records& records) {
  return told(records.path(), [&] {
    SQLite::Statement find(records.database().connection(),
                           "SELECT hash, packed, length FROM document "
                           "WHERE hash IN (SELECT plan FROM batch) ORDER BY hash");
    std::vector<PackedPlan> plans;
    while (find.executeStep())
      plans.push_back({find.getColumn(0).getString(), find.getColumn(1).getString(),
                       find.getColumn(2).getInt64()});
    return plans;
  });
}

void unpack(const PackedPlan& plan, const Records& records, std::string& text) {
  if (!inflate(plan.packed, plan.length, text)) refuse_damaged(records);
}

}  // namespace brimwright::records
