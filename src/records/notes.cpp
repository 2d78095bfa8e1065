#include "records/notes.h"

#include "records/batches.h"
#include "records/database.h"
#include "records/note_values.h"
#include "records/records.h"
#include "units/reading.h"

#include <utility>

namespace brimwright::records {
namespace {

const Place in_records{file_name, ""};

template <class Value, class Read>
std::optional<Value> read_if_noted(const Notes& notes, const std::string& key, Read read) {
  const auto text = notes.text(key);
  if (!text) return std::nullopt;
  return read(*text, in_records);
}

/// By their batches.
std::map<std::string, Notes> notes_in(SQLite::Statement& rows) {
  std::map<std::string, Notes> notes;
  while (rows.executeStep())
    notes[rows.getColumn(0).getString()].all[rows.getColumn(1).getString()] = {
        rows.getColumn(2).getString(), rows.getColumn(3).getString()};
  return notes;
}

Weighing weighing_in(SQLite::Statement& row) {
  const std::string written = row.getColumn("written").getString();
  return {row.getColumn("day").getString(), row.getColumn("pieces").getInt64(), written,
          read_mass(written, in_records)};
}

}  // namespace

std::optional<std::string> Notes::text(const std::string& key) const {
  const auto at = all.find(key);
  if (at == all.end()) return std::nullopt;
  return at->second.value;
}
std::optional<Mass> Notes::mass(const std::string& key) const {
  return read_if_noted<Mass>(*this, key, [](const std::string& text, const Place& where) {
    return read_mass(text, where);
  });
}
std::optional<Volume> Notes::volume(const std::string& key) const {
  return read_if_noted<Volume>(*this, key, [](const std::string& text, const Place& where) {
    return read_volume(text, where);
  });
}
std::optional<Temperature> Notes::temperature(const std::string& key) const {
  return read_if_noted<Temperature>(*this, key, read_temperature);
}
std::optional<std::chrono::seconds> Notes::minutes(const std::string& key) const {
  return read_if_noted<std::chrono::seconds>(
      *this, key,
      [](const std::string& text, const Place& where) { return read_short_time(text, where); });
}
std::optional<std::int64_t> Notes::count(const std::string& key) const {
  return read_if_noted<std::int64_t>(*this, key, read_count);
}
std::optional<Length> Notes::length(const std::string& key) const {
  return read_if_noted<Length>(*this, key, read_signed_length);
}
std::optional<std::chrono::year_month_day> Notes::date(const std::string& key) const {
  return read_if_noted<std::chrono::year_month_day>(*this, key, read_date);
}

Notes notes_of(const Records& records, const Batch& batch) {
  return told(records.path(), [&] {
    SQLite::Statement find(records.database().connection(),
                           "SELECT key, value, noted_at FROM note WHERE batch = ?");
    SQLite::bind(find, batch.id);
    Notes notes;
    while (find.executeStep())
      notes.all[find.getColumn(0).getString()] = {find.getColumn(1).getString(),
                                                  find.getColumn(2).getString()};
    return notes;
  });
}

std::map<std::string, Notes> all_notes(const Records& records) {
  return told(records.path(), [&] {
    SQLite::Statement find(records.database().connection(),
                           "SELECT batch, key, value FROM note ORDER BY batch, key");
    std::map<std::string, Notes> notes;
    auto of = notes.end();
    while (find.executeStep()) {  // in the order of the table, so each comes last
      std::string batch = find.getColumn(0).getString();
      if (of == notes.end() || of->first != batch)
        of = notes.emplace_hint(notes.end(), std::move(batch), Notes{});
      auto& all = of->second.all;
      all.emplace_hint(all.end(), find.getColumn(1).getString(),
                       Noted{find.getColumn(2).getString(), {}});
    }
    return notes;
  });
}

std::map<std::string, Notes> piece_notes(const Records& records, const std::string& run) {
  return told(records.path(), [&] {
    SQLite::Statement find(records.database().connection(),
                           "SELECT note.batch, key, value, noted_at FROM batch JOIN note "
                           "ON note.batch = batch.id WHERE batch.run = ? AND +key IN ('tested', "
                           "'held_back', 'ready_on', 'pieces.made', 'pieces.rejected')");
    SQLite::bind(find, run);
    return notes_in(find);
  });
}

std::vector<Weighing> weighings_of(const Records& records, const Batch& batch) {
  return told(records.path(), [&] {
    SQLite::Statement find(
        records.database().connection(),
        "SELECT day, pieces, written FROM weighing WHERE batch = ? ORDER BY day");
    SQLite::bind(find, batch.id);
    std::vector<Weighing> weighings;
    while (find.executeStep()) weighings.push_back(weighing_in(find));
    return weighings;
  });
}

std::map<std::string, std::vector<Weighing>> all_weighings(const Records& records) {
  return told(records.path(), [&] {
    SQLite::Statement find(records.database().connection(),
                           "SELECT batch, day, pieces, written FROM weighing ORDER BY batch, day");
    std::map<std::string, std::vector<Weighing>> weighings;
    while (find.executeStep())
      weighings[find.getColumn("batch").getString()].push_back(weighing_in(find));
    return weighings;
  });
}

ForSale for_sale(const Notes& notes, const std::string& today) {
  const auto tested = notes.text("tested");
  if (!tested) return {.why_not = "has no test result"};
  if (tested != "pass") return {.why_not = "is on hold by its test"};
  if (const auto why = notes.text("held_back")) return {.why_not = "is held back: " + *why};
  const auto ready = notes.text("ready_on");
  if (!ready) return {.why_not = "is not noted as ready"};
  if (*ready > today) return {.why_not = "is ready on " + *ready};
  return {.is = true};
}

}  // namespace brimwright::records
