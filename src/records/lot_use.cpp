#include "records/lot_use.h"

#include "records/database.h"
#include "records/records.h"

#include <set>
#include <utility>

namespace brimwright::records {
namespace {

using trade::Amount;

std::vector<LotChange> takes_of(const Records& records, const std::string& batch,
                                const std::string& row) {
  return told(records.path(), [&] {
    SQLite::Statement find(records.database().connection(),
                           "SELECT lot, whole, day FROM lot_change WHERE batch = ? AND row = ? "
                           "ORDER BY id");
    SQLite::bind(find, batch, row);
    std::vector<LotChange> takes;
    while (find.executeStep())
      takes.push_back({.lot = find.getColumn(0).getString(),
                       .whole = find.getColumn(1).getInt64(),
                       .day = find.getColumn(2).getString(),
                       .batch = batch,
                       .row = row});
    return takes;
  });
}

/// The codes of those of `takes` that took more than there was.
std::vector<std::string> beyond_in(const Records& records, const std::vector<LotChange>& takes) {
  std::vector<std::string> codes;
  for (const LotChange& take : takes)
    if (const auto lot = lot_of_id(records, take.lot); lot && lot->left < 0)
      codes.push_back(lot->lot.code);
  return codes;
}

void put_back(Records& records, const std::string& batch, const std::string& row) {
  SQLite::Statement remove(records.database().connection(),
                           "DELETE FROM lot_change WHERE batch = ? AND row = ?");
  SQLite::bind(remove, batch, row);
  remove.exec();
}

void keep_weighed(Records& records, const std::string& batch, const Weighed& row) {
  SQLite::Statement put(records.database().connection(),
                        "INSERT OR REPLACE INTO weighed (batch, row, material, name, is_pieces, "
                        "whole) VALUES (?, ?, ?, ?, ?, ?)");
  SQLite::bind(put, batch, row.row, row.material, row.shown, row.amount.is_pieces() ? 1 : 0,
               static_cast<std::int64_t>(row.amount.whole()));
  put.exec();
}

void keep_take(Records& records, const std::string& batch, const std::string& day,
               const std::string& row, const std::string& lot, std::int64_t whole) {
  SQLite::Statement put(records.database().connection(),
                        "INSERT INTO lot_change (lot, what, whole, day, batch, row) "
                        "VALUES (?, 'used', ?, ?, ?, ?)");
  SQLite::bind(put, lot, -whole, day, batch, row);
  put.exec();
}

std::vector<std::string> materials_of(const std::vector<Weighed>& rows) {
  std::set<std::string> materials;
  for (const Weighed& row : rows) {
    materials.insert(row.material);
    materials.insert(row.served_by.begin(), row.served_by.end());
  }
  return {materials.begin(), materials.end()};
}

}  // namespace

std::int64_t RowUse::unknown() const {
  std::int64_t left = weighed.amount.whole();
  for (const LotChange& take : takes) left += take.whole;
  return left;
}

std::vector<RowUse> used_by(const Records& records, const std::string& batch) {
  std::vector<RowUse> rows = told(records.path(), [&] {
    SQLite::Statement find(records.database().connection(),
                           "SELECT row, material, name, is_pieces, whole FROM weighed "
                           "WHERE batch = ? ORDER BY row");
    find.bind(1, batch);
    std::vector<RowUse> found;
    while (find.executeStep()) {
      const std::int64_t whole = find.getColumn(4).getInt64();
      found.push_back(
          {.weighed = {.row = find.getColumn(0).getString(),
                       .material = find.getColumn(1).getString(),
                       .shown = find.getColumn(2).getString(),
                       .amount = find.getColumn(3).getInt() == 1 ? Amount::pieces(whole)
                                                                 : Amount::micrograms(whole)}});
    }
    return found;
  });
  for (RowUse& one : rows) one.takes = takes_of(records, batch, one.weighed.row);
  return rows;
}

std::vector<UnknownLot> unknown_lots(const Records& records, const std::string& material,
                                     const std::string& since) {
  return told(records.path(), [&] {
    SQLite::Statement find(
        records.database().connection(),
        "SELECT w.batch, w.row FROM weighed w JOIN batch b ON b.id = w.batch "
        "WHERE w.material = ? AND b.begun_on >= ? AND w.whole + coalesce((SELECT sum(c.whole) "
        "FROM lot_change c WHERE c.batch = w.batch AND c.row = w.row), 0) > 0 "
        "ORDER BY b.begun_on, b.code, w.row");
    SQLite::bind(find, material, since);
    std::vector<UnknownLot> all;
    while (find.executeStep())
      all.push_back({find.getColumn(0).getString(), find.getColumn(1).getString()});
    return all;
  });
}

std::vector<Remark> use_lots(Records& records, const std::string& batch, const std::string& day,
                             std::vector<Weighed> rows, FromLots wishes) {
  for (Weighed& row : rows) {
    const auto takes = takes_of(records, batch, row.row);
    for (const LotChange& take : takes) row.taken_before.push_back(take.lot);
    for (std::string& code : beyond_in(records, takes)) wishes.beyond.insert(std::move(code));
    told(records.path(), [&] { put_back(records, batch, row.row); });
  }
  const auto lots = lots_of(records, materials_of(rows));
  Taking taking = taken_from(lots, rows, wishes, day, records.path());
  told(records.path(), [&] {
    for (const Weighed& row : rows) keep_weighed(records, batch, row);
    for (const Take& take : taking.takes)
      keep_take(records, batch, day, rows[take.weighed].row, lots[take.lot].lot.id, take.whole);
  });
  return std::move(taking.remarks);
}

}  // namespace brimwright::records
