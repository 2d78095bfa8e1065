#pragma once

#include "records/act.h"
#include "records/batches.h"
#include "records/database.h"
#include "records/records.h"

#include <string>

namespace brimwright::records {

/// A batch that records name, whatever its plan was. Within an act.
inline Batch begun(Records& records, const std::string& id, std::int64_t pieces = 12) {
  return begin_batch(records,
                     {.id = id,
                      .run = "file:bars.run.json",
                      .run_file = "bars.run.json",
                      .run_name = "Bars",
                      .begun_on = "2026-11-14",
                      .begun_at = "2026-11-14T09:00:00Z",
                      .pieces = pieces,
                      .program = "0",
                      .plan = "{}"},
                     {});
}

/// What `work` does, as one act.
template <class Work>
void act(Records& records, Work work) {
  static int acts = 0;
  Act act(records, "act " + std::to_string(++acts), "2026-11-14T09:00:00Z", "try", "{}");
  work();
  act.done();
}

}  // namespace brimwright::records
