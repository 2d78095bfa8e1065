#include "records/notes.h"

#include "records/batches.h"
#include "records/database.h"
#include "records/note_values.h"
#include "records/records.h"
#include "records/rows.h"
#include "units/reading.h"

#include <algorithm>
#include <utility>

namespace brimwright::records {
namespace {

const Place in_records{file_name, ""};

template <class Value, class Read>
std::optional<Value> read_if_noted(const NotedValues& notes, std::string_view key, Read read) {
  const auto value = notes.value(key);
  if (!value) return std::nullopt;
  return read(std::string(*value), in_records);
}

/// Of rows of batch, key and value.
std::map<std::string, Notes> notes_in(SQLite::Statement& rows) {
  std::map<std::string, Notes> all;
  while (rows.executeStep())
    all[rows.getColumn(0).getString()].all[rows.getColumn(1).getString()] = {
        rows.getColumn(2).getString(), {}};
  return all;
}

const std::string piece_keys =
    "('tested', 'held_back', 'ready_on', 'pieces.made', 'pieces.rejected')";

Weighing weighing_in(SQLite::Statement& row) {
  const std::string written = row.getColumn("written").getString();
  return {row.getColumn("day").getString(), row.getColumn("pieces").getInt64(), written,
          read_mass(written, in_records)};
}

}  // namespace

std::optional<std::string_view> Notes::value(std::string_view key) const {
  const auto at = all.find(key);
  if (at == all.end()) return std::nullopt;
  return at->second.value;
}
bool Notes::has_any_from(std::string_view beginning) const {
  const auto at = all.lower_bound(beginning);
  return at != all.end() && at->first.starts_with(beginning);
}

std::optional<std::string> NotedValues::text(std::string_view key) const {
  const auto noted = value(key);
  if (!noted) return std::nullopt;
  return std::string(*noted);
}
std::optional<Mass> NotedValues::mass(std::string_view key) const {
  return read_if_noted<Mass>(*this, key, [](const std::string& text, const Place& where) {
    return read_mass(text, where);
  });
}
std::optional<Volume> NotedValues::volume(std::string_view key) const {
  return read_if_noted<Volume>(*this, key, [](const std::string& text, const Place& where) {
    return read_volume(text, where);
  });
}
std::optional<Temperature> NotedValues::temperature(std::string_view key) const {
  return read_if_noted<Temperature>(*this, key, read_temperature);
}
std::optional<std::chrono::seconds> NotedValues::minutes(std::string_view key) const {
  return read_if_noted<std::chrono::seconds>(
      *this, key,
      [](const std::string& text, const Place& where) { return read_short_time(text, where); });
}
std::optional<std::int64_t> NotedValues::count(std::string_view key) const {
  return read_if_noted<std::int64_t>(*this, key, read_count);
}
std::optional<Length> NotedValues::length(std::string_view key) const {
  return read_if_noted<Length>(*this, key, read_signed_length);
}
std::optional<std::chrono::year_month_day> NotedValues::date(std::string_view key) const {
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

PackedNotes::PackedNotes(const Records& records) {
  told(records.path(), [&] {
    Rows found(records.database().connection(),
               "SELECT batch, key, value FROM note ORDER BY batch, key");
    while (found.next()) {
      const std::string_view batch = found.text(0), value = found.text(2);
      if (batches_.empty() || batches_.back().id != batch)
        batches_.push_back({std::string(batch), rows_.size()});
      rows_.push_back({text_.size(), static_cast<std::uint32_t>(value.size()),
                       static_cast<std::uint32_t>(keys_.place_of(found.text(1)))});
      text_ += value;
    }
  });
}

std::size_t PackedNotes::end_of(std::size_t place) const {
  return place + 1 < batches_.size() ? batches_[place + 1].begin : rows_.size();
}
std::string_view PackedNotes::value(const Row& row) const {
  return std::string_view(text_).substr(row.begin, row.length);
}

PackedNotes::Of PackedNotes::of(std::size_t place) const {
  const auto at = [&](std::size_t row) { return rows_.begin() + static_cast<std::ptrdiff_t>(row); };
  return {*this, at(batches_[place].begin), at(end_of(place))};
}
PackedNotes::Of PackedNotes::of_none() const { return {*this, rows_.end(), rows_.end()}; }

std::optional<std::string_view> PackedNotes::Of::value(std::string_view key) const {
  const auto place = all_.keys_.known(key);
  if (!place) return std::nullopt;
  const auto at = std::find_if(begin_, end_, [&](const Row& row) { return row.key == *place; });
  if (at == end_) return std::nullopt;
  return all_.value(*at);
}
bool PackedNotes::Of::has_any_from(std::string_view beginning) const {
  const auto at = std::lower_bound(begin_, end_, beginning, [&](const Row& row, auto wanted) {
    return all_.keys_[row.key] < wanted;
  });
  return at != end_ && all_.keys_[at->key].starts_with(beginning);
}

Notes PackedNotes::Of::copy() const {
  Notes notes;
  for (auto at = begin_; at != end_; ++at)
    notes.all.emplace_hint(notes.all.end(), all_.keys_[at->key],
                           Noted{std::string(all_.value(*at)), {}});
  return notes;
}

std::map<std::string, Notes> piece_notes(const Records& records, const std::string& run) {
  return told(records.path(), [&] {
    SQLite::Statement find(records.database().connection(),
                           "SELECT note.batch, key, value FROM batch JOIN note "
                           "ON note.batch = batch.id WHERE batch.run = ? AND +key IN " +
                               piece_keys);
    SQLite::bind(find, run);
    return notes_in(find);
  });
}

std::map<std::string, Notes> all_piece_notes(const Records& records) {
  return told(records.path(), [&] {
    SQLite::Statement find(
        records.database().connection(),
        "SELECT batch, key, value FROM note WHERE +key IN " + piece_keys + " ORDER BY batch, key");
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
