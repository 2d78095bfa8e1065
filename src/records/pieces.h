#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <vector>

namespace brimwright::records {

class Notes;
class Records;
struct Batch;

/// Pieces of a batch that went to somebody, or were put right by a count.
struct PieceChange {
  enum class What { sold, given, spoilt, counted };
  std::string batch = {};
  What what = What::sold;
  std::int64_t pieces = 0;  // added to those that are there: below 0 where they went
  std::string day = {};
  std::string of_order = {}, of_order_name = {};  // its id or file, and for whom
  std::string why = {};
};
std::string name_of(PieceChange::What what);  // "sold"

std::vector<PieceChange> changes_of_pieces(const Records& records, const std::string& batch);
/// Those of the order with that id, or with that name whatever the capitals.
std::vector<PieceChange> changes_of_order(const Records& records, const std::string& order);

/// Where the pieces of a batch are. Those made and rejected are what was noted; without such a note
/// nobody knows how many there are.
struct PieceCount {
  bool is_known = false;  // how many were made
  std::int64_t made = 0, rejected = 0, sold = 0, given = 0, spoilt = 0, counted = 0;

  std::int64_t there() const { return made - rejected - sold - given - spoilt + counted; }
};
/// What changed, of all batches, by their ids.
std::map<std::string, PieceCount> changed_pieces(const Records& records);
PieceCount pieces_of(const Records& records, const Batch& batch, const Notes& notes);
/// The same where `changed` is read already.
PieceCount with_notes(PieceCount changed, const Notes& notes);

/// Within an act.
void change_pieces(Records& records, const PieceChange& change);

}  // namespace brimwright::records
