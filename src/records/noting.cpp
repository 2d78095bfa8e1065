#include "records/noting.h"

#include "records/batches.h"
#include "records/blanks.h"
#include "records/database.h"
#include "records/note_checks.h"
#include "records/note_values.h"
#include "records/notes.h"
#include "records/records.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <utility>

namespace brimwright::records {
namespace {

void put(Records& records, const Batch& batch, const Note& change, const Noting& noting) {
  SQLite::Statement write(
      records.database().connection(),
      "INSERT INTO note (batch, key, value, noted_at) VALUES (?, ?, ?, ?) "
      "ON CONFLICT DO UPDATE SET value = excluded.value, noted_at = excluded.noted_at");
  SQLite::bind(write, batch.id, change.key, change.value, noting.noted_at);
  write.exec();
}

void take_back(Records& records, const Batch& batch, const std::string& key) {
  SQLite::Statement remove(records.database().connection(),
                           "DELETE FROM note WHERE batch = ? AND key = ?");
  SQLite::bind(remove, batch.id, key);
  remove.exec();
}

void put_weighing(Records& records, const Batch& batch, const Weighing& weighing) {
  SQLite::Statement write(
      records.database().connection(),
      "INSERT INTO weighing (batch, day, pieces, written, micrograms) VALUES (?, ?, ?, ?, ?) "
      "ON CONFLICT DO UPDATE SET pieces = excluded.pieces, written = excluded.written, "
      "micrograms = excluded.micrograms");
  SQLite::bind(write, batch.id, weighing.day, weighing.pieces, weighing.written,
               static_cast<std::int64_t>(std::llround(weighing.together / gram * 1e6)));
  write.exec();
}

void take_weighing_back(Records& records, const Batch& batch, const std::string& day) {
  SQLite::Statement remove(records.database().connection(),
                           "DELETE FROM weighing WHERE batch = ? AND day = ?");
  SQLite::bind(remove, batch.id, day);
  remove.exec();
}

}  // namespace

void note(Records& records, const Batch& batch, const std::vector<Note>& changes,
          const Noting& noting) {
  const std::string plan = plan_of(records, batch);
  auto blanks = blanks_in(plan, batch.number);
  if (std::any_of(changes.begin(), changes.end(),
                  [](const Note& change) { return change.key.starts_with(weighed_prefix); }))
    for (Blank& row : rows_in(plan, batch.number)) blanks.push_back(std::move(row));
  NoteChecks checks(batch, blanks, notes_of(records, batch), noting);
  const auto kept = checks.checked(changes);
  told(records.path(), [&] {
    for (const Note& change : kept) {
      const auto day = weighing_day(change.key);
      if (day && change.value.empty())
        take_weighing_back(records, batch, *day);
      else if (day)
        put_weighing(records, batch, read_weighing(change.value, *day, change.where));
      else if (change.value.empty())
        take_back(records, batch, change.key);
      else
        put(records, batch, change, noting);
    }
  });
}

}  // namespace brimwright::records
