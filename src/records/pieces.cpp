#include "records/pieces.h"

#include "records/batches.h"
#include "records/database.h"
#include "records/notes.h"
#include "records/records.h"

namespace brimwright::records {
namespace {

using What = PieceChange::What;

constexpr auto columns =
    "SELECT batch, what, pieces, day, of_order, of_order_name, why FROM piece_change ";

What what_of(const std::string& name) {
  for (const What what : {What::given, What::spoilt, What::counted})
    if (name_of(what) == name) return what;
  return What::sold;
}

void add(PieceCount& count, What what, std::int64_t pieces) {
  switch (what) {
    case What::sold:
      count.sold -= pieces;
      break;
    case What::given:
      count.given -= pieces;
      break;
    case What::spoilt:
      count.spoilt -= pieces;
      break;
    case What::counted:
      count.counted += pieces;
      break;
  }
}

std::vector<PieceChange> found(const Records& records, const std::string& rest,
                               const std::string& value) {
  return told(records.path(), [&] {
    SQLite::Statement find(records.database().connection(), columns + rest);
    find.bind(1, value);
    std::vector<PieceChange> all;
    while (find.executeStep())
      all.push_back({.batch = find.getColumn(0).getString(),
                     .what = what_of(find.getColumn(1).getString()),
                     .pieces = find.getColumn(2).getInt64(),
                     .day = find.getColumn(3).getString(),
                     .of_order = find.getColumn(4).getString(),
                     .of_order_name = find.getColumn(5).getString(),
                     .why = find.getColumn(6).getString()});
    return all;
  });
}

/// Nothing of no text.
void bind_optional(SQLite::Statement& put, int at, const std::string& text) {
  if (!text.empty()) put.bind(at, text);
}

}  // namespace

std::string name_of(What what) {
  switch (what) {
    case What::sold:
      return "sold";
    case What::given:
      return "given";
    case What::spoilt:
      return "spoilt";
    case What::counted:
      return "counted";
  }
  return "";
}

std::vector<PieceChange> changes_of_pieces(const Records& records, const std::string& batch) {
  return found(records, "WHERE batch = ? ORDER BY day, id", batch);
}

std::vector<PieceChange> changes_of_order(const Records& records, const std::string& order) {
  return found(records, "WHERE of_order = ?1 OR of_order_name = ?1 COLLATE NOCASE ORDER BY day, id",
               order);
}

std::map<std::string, PieceCount> changed_pieces(const Records& records) {
  return told(records.path(), [&] {
    SQLite::Statement find(
        records.database().connection(),
        "SELECT batch, what, sum(pieces) FROM piece_change GROUP BY batch, what");
    std::map<std::string, PieceCount> counts;
    while (find.executeStep())
      add(counts[find.getColumn(0).getString()], what_of(find.getColumn(1).getString()),
          find.getColumn(2).getInt64());
    return counts;
  });
}

PieceCount with_notes(PieceCount changed, const Notes& notes) {
  const auto made = notes.count("pieces.made");
  changed.is_known = made.has_value();
  changed.made = made.value_or(0);
  changed.rejected = notes.count("pieces.rejected").value_or(0);
  return changed;
}

PieceCount pieces_of(const Records& records, const Batch& batch, const Notes& notes) {
  PieceCount count;
  for (const PieceChange& change : changes_of_pieces(records, batch.id))
    add(count, change.what, change.pieces);
  return with_notes(count, notes);
}

void change_pieces(Records& records, const PieceChange& change) {
  told(records.path(), [&] {
    SQLite::Statement put(records.database().connection(),
                          "INSERT INTO piece_change (batch, what, pieces, day, of_order, "
                          "of_order_name, why) VALUES (?, ?, ?, ?, ?, ?, ?)");
    put.bind(1, change.batch);
    put.bind(2, name_of(change.what));
    put.bind(3, change.pieces);
    put.bind(4, change.day);
    bind_optional(put, 5, change.of_order);
    bind_optional(put, 6, change.of_order_name);
    bind_optional(put, 7, change.why);
    put.exec();
  });
}

}  // namespace brimwright::records
