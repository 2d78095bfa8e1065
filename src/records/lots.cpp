#include "records/lots.h"

#include "records/database.h"
#include "records/records.h"

#include <algorithm>
#include <charconv>
#include <tuple>

namespace brimwright::records {
namespace {

using trade::Amount;
using Origin = Lot::Origin;
using What = LotChange::What;

constexpr auto lot_columns =
    "SELECT id, code, material, make, origin, seller, bought_on, best_before, packs, pack, "
    "is_pieces, whole, coins, currency, "
    "whole + coalesce((SELECT sum(c.whole) FROM lot_change c WHERE c.lot = lot.id), 0) AS here "
    "FROM lot ";
constexpr auto change_columns =
    "SELECT lot, what, whole, day, batch, row, made, why FROM lot_change ";

std::string name_of(Origin origin) {
  switch (origin) {
    case Origin::bought:
      return "bought";
    case Origin::made:
      return "made";
    case Origin::before_records:
      return "before";
  }
  return "";
}

Origin origin_of(const std::string& name) {
  if (name == "made") return Origin::made;
  return name == "before" ? Origin::before_records : Origin::bought;
}

std::string text_in(SQLite::Statement& row, int column) {
  return row.getColumn(column).getString();  // of nothing the empty text
}

std::optional<std::string> optional_text(SQLite::Statement& row, int column) {
  if (row.getColumn(column).isNull()) return std::nullopt;
  return text_in(row, column);
}

Amount amount(bool is_pieces, std::int64_t whole) {
  return is_pieces ? Amount::pieces(whole) : Amount::micrograms(whole);
}

StandingLot lot_in(SQLite::Statement& row) {
  Lot lot{.id = text_in(row, 0),
          .code = text_in(row, 1),
          .material = text_in(row, 2),
          .make = text_in(row, 3),
          .origin = origin_of(text_in(row, 4)),
          .seller = text_in(row, 5),
          .bought_on = text_in(row, 6),
          .best_before = optional_text(row, 7),
          .packs = row.getColumn(8).getInt64(),
          .pack = text_in(row, 9),
          .holds = amount(row.getColumn(10).getInt() == 1, row.getColumn(11).getInt64()),
          .paid = {}};
  if (!row.getColumn(12).isNull())
    lot.paid = Money{row.getColumn(12).getInt64(), currency(text_in(row, 13), {})};
  return {std::move(lot), row.getColumn(14).getInt64()};
}

LotChange change_in(SQLite::Statement& row) {
  return {.lot = text_in(row, 0),
          .what = text_in(row, 1) == "used" ? What::used : What::counted,
          .whole = row.getColumn(2).getInt64(),
          .day = text_in(row, 3),
          .batch = text_in(row, 4),
          .row = text_in(row, 5),
          .made = text_in(row, 6),
          .why = text_in(row, 7)};
}

template <class Read, class... Values>
auto found(const Records& records, const std::string& query, Read read, const Values&... values) {
  return told(records.path(), [&] {
    SQLite::Statement find(records.database().connection(), query);
    if constexpr (sizeof...(values) > 0) SQLite::bind(find, values...);
    std::vector<decltype(read(find))> all;
    while (find.executeStep()) all.push_back(read(find));
    return all;
  });
}

void put_in_order(std::vector<StandingLot>& lots) {
  std::sort(lots.begin(), lots.end(), [](const StandingLot& a, const StandingLot& b) {
    if (a.lot.material != b.lot.material) return a.lot.material < b.lot.material;
    return goes_before(a.lot, b.lot);
  });
}

/// Nothing of no text.
void bind_optional(SQLite::Statement& put, int at, const std::string& text) {
  if (!text.empty()) put.bind(at, text);
}

void put_change(Records& records, const LotChange& change) {
  told(records.path(), [&] {
    SQLite::Statement put(records.database().connection(),
                          "INSERT INTO lot_change (lot, what, whole, day, batch, row, made, why) "
                          "VALUES (?, ?, ?, ?, ?, ?, ?, ?)");
    put.bind(1, change.lot);
    put.bind(2, change.what == What::used ? "used" : "counted");
    put.bind(3, change.whole);
    put.bind(4, change.day);
    bind_optional(put, 5, change.batch);
    bind_optional(put, 6, change.row);
    bind_optional(put, 7, change.made);
    bind_optional(put, 8, change.why);
    put.exec();
  });
}

}  // namespace

trade::Amount StandingLot::there() const {
  return amount(lot.holds.is_pieces(), std::max<std::int64_t>(left, 0));
}

bool goes_before(const Lot& a, const Lot& b) {
  if (a.best_before.has_value() != b.best_before.has_value()) return a.best_before.has_value();
  return std::tie(a.best_before, a.bought_on, a.code, a.id) <
         std::tie(b.best_before, b.bought_on, b.code, b.id);
}

/// What is used up is left out here: the query would add up each lot's changes once more for that.
std::vector<StandingLot> standing_lots(const Records& records) {
  auto lots = found(records, lot_columns, lot_in);
  std::erase_if(lots, [](const StandingLot& one) { return one.left == 0; });
  put_in_order(lots);
  return lots;
}

std::vector<StandingLot> lots_of(const Records& records,
                                 const std::vector<std::string>& materials) {
  std::vector<StandingLot> lots;
  for (const std::string& material : materials)
    for (StandingLot& one :
         found(records, std::string(lot_columns) + "WHERE material = ?1 OR make = ?1", lot_in,
               material))
      lots.push_back(std::move(one));
  put_in_order(lots);
  lots.erase(
      std::unique(lots.begin(), lots.end(),
                  [](const StandingLot& a, const StandingLot& b) { return a.lot.id == b.lot.id; }),
      lots.end());
  return lots;
}

std::vector<StandingLot> lots_called(const Records& records, const std::string& code) {
  auto lots = found(records, std::string(lot_columns) + "WHERE code = ?", lot_in, code);
  put_in_order(lots);
  return lots;
}

std::optional<StandingLot> lot_of_id(const Records& records, const std::string& id) {
  auto lots = found(records, std::string(lot_columns) + "WHERE id = ?", lot_in, id);
  if (lots.empty()) return std::nullopt;
  return std::move(lots.front());
}

std::vector<std::string> materials_of_lots(const Records& records) {
  return found(records,
               "SELECT material FROM lot UNION SELECT make FROM lot WHERE make IS NOT NULL",
               [](SQLite::Statement& row) { return text_in(row, 0); });
}

std::string own_code(const Records& records) {
  std::int64_t last = 0;
  for (const std::string& code : found(records,
                                       "SELECT code FROM lot WHERE code >= 'L' AND "
                                       "code < 'M'",
                                       [](SQLite::Statement& row) { return text_in(row, 0); })) {
    std::int64_t number = 0;
    const char* end = code.data() + code.size();
    const auto [read, error] = std::from_chars(code.data() + 1, end, number);
    if (error == std::errc() && read == end && number < 1'000'000'000)
      last = std::max(last, number);
  }
  return "L" + std::to_string(last + 1);
}

std::vector<LotChange> changes_of_lot(const Records& records, const std::string& lot) {
  return found(records, std::string(change_columns) + "WHERE lot = ? ORDER BY day, id", change_in,
               lot);
}

std::vector<LotChange> sources_of_lot(const Records& records, const std::string& lot) {
  return found(records, std::string(change_columns) + "WHERE made = ? ORDER BY id", change_in, lot);
}

void add_lot(Records& records, const Lot& lot) {
  told(records.path(), [&] {
    SQLite::Statement put(records.database().connection(),
                          "INSERT INTO lot (id, code, material, make, origin, seller, bought_on, "
                          "best_before, packs, pack, is_pieces, whole, coins, currency) "
                          "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");
    put.bind(1, lot.id);
    put.bind(2, lot.code);
    put.bind(3, lot.material);
    bind_optional(put, 4, lot.make);
    put.bind(5, name_of(lot.origin));
    bind_optional(put, 6, lot.seller);
    put.bind(7, lot.bought_on);
    bind_optional(put, 8, lot.best_before.value_or(""));
    put.bind(9, lot.packs);
    put.bind(10, lot.pack);
    put.bind(11, lot.holds.is_pieces() ? 1 : 0);
    put.bind(12, lot.holds.whole());
    if (lot.paid) {
      put.bind(13, lot.paid->coins);
      put.bind(14, lot.paid->currency.code);
    }
    put.exec();
  });
}

void count_lots(Records& records, const std::vector<StandingLot>& lots, Amount counted,
                const std::string& day, const std::string& why) {
  const auto correct = [&](const StandingLot& of, std::int64_t whole) {
    put_change(records,
               {.lot = of.lot.id, .what = What::counted, .whole = whole, .day = day, .why = why});
  };
  std::int64_t by_records = 0;
  for (const StandingLot& one : lots) by_records += std::max<std::int64_t>(one.left, 0);
  std::int64_t beyond = std::max<std::int64_t>(counted.whole() - by_records, 0);
  std::int64_t still_there = counted.whole() - beyond;
  // What is there is the last of it, and what is missing the first.
  for (std::size_t i = lots.size(); i-- > 0; beyond = 0) {
    const std::int64_t its = std::clamp<std::int64_t>(lots[i].left, 0, still_there);
    still_there -= its;
    const std::int64_t whole = its + beyond - lots[i].left;
    if (whole != 0 || i + 1 == lots.size()) correct(lots[i], whole);
  }
}

void use_for_lot(Records& records, const Lot& of, Amount amount, const Lot& made) {
  put_change(records, {.lot = of.id,
                       .what = What::used,
                       .whole = -amount.whole(),
                       .day = made.bought_on,
                       .made = made.id});
}

}  // namespace brimwright::records
