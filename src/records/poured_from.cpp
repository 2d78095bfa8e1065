#include "records/poured_from.h"

#include "records/database.h"
#include "records/records.h"

#include <utility>

namespace brimwright::records {
namespace {

template <class... Ids>
std::vector<PouredFrom> found(const Records& records, const std::string& rest, const Ids&... ids) {
  return told(records.path(), [&] {
    SQLite::Statement find(records.database().connection(),
                           "SELECT batch, base, place, takes FROM poured_from " + rest);
    if constexpr (sizeof...(ids) > 0) SQLite::bind(find, ids...);
    std::vector<PouredFrom> all;
    while (find.executeStep())
      all.push_back({find.getColumn(0).getString(), find.getColumn(1).getString(),
                     find.getColumn(2).getInt64(), find.getColumn(3).getInt64()});
    return all;
  });
}

}  // namespace

void pour_from(Records& records, const PouredFrom& poured) {
  told(records.path(), [&] {
    SQLite::Statement put(
        records.database().connection(),
        "INSERT INTO poured_from (batch, base, place, takes) VALUES (?, ?, ?, ?)");
    SQLite::bind(put, poured.batch, poured.base, poured.place, poured.takes);
    put.exec();
  });
}

std::optional<PouredFrom> poured_from(const Records& records, const std::string& batch) {
  auto all = found(records, "WHERE batch = ?", batch);
  if (all.empty()) return std::nullopt;
  return std::move(all.front());
}

std::vector<PouredFrom> poured_of(const Records& records, const std::string& base) {
  return found(records, "WHERE base = ? ORDER BY place", base);
}

std::vector<PouredFrom> all_poured(const Records& records) {
  return found(records, "ORDER BY base, place");
}

std::set<std::string> all_bases(const Records& records) {
  return told(records.path(), [&] {
    SQLite::Statement find(records.database().connection(), "SELECT base FROM poured_from");
    std::set<std::string> all;
    while (find.executeStep()) all.insert(find.getColumn(0).getString());
    return all;
  });
}

trade::Fraction part_of_base(const Records& records, const PouredFrom& poured) {
  trade::Fraction all = 0;
  for (const PouredFrom& one : poured_of(records, poured.base)) all += trade::Fraction(one.takes);
  return trade::Fraction(poured.takes) / all;
}

}  // namespace brimwright::records
