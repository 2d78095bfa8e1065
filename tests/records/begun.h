#pragma once

#include "records/act.h"
#include "records/database.h"
#include "records/records.h"

#include <string>

namespace brimwright::records {

/// A batch that records name, whatever its plan was.
inline std::string begun(Records& records, const std::string& id) {
  auto& connection = records.database().connection();
  connection.exec("INSERT OR IGNORE INTO document VALUES ('none', 0, x'')");
  SQLite::Statement code(connection, "INSERT INTO code VALUES (?, 'a run', 1, '2026-11-14')");
  SQLite::bind(code, "code of " + id);
  code.exec();
  SQLite::Statement batch(connection,
                          "INSERT INTO batch VALUES (?, ?, 'a run', 'a.run.json', 'Bars', 1, "
                          "'2026-11-14', '2026-11-14T09:00:00Z', 12, '0', 'none', 'none', NULL)");
  SQLite::bind(batch, id, "code of " + id);
  batch.exec();
  return id;
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
