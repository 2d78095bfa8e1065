#include "records/rows.h"

#include <sqlite3.h>

namespace brimwright::records {
namespace {

constexpr int to_its_end = -1;

sqlite3_stmt* prepared(SQLite::Database& connection, const char* query) {
  sqlite3_stmt* statement = nullptr;
  const int code =
      sqlite3_prepare_v2(connection.getHandle(), query, to_its_end, &statement, nullptr);
  if (code != SQLITE_OK) throw SQLite::Exception(connection.getHandle(), code);
  return statement;
}

}  // namespace

Rows::Rows(SQLite::Database& connection, const char* query)
    : connection_(connection), statement_(prepared(connection, query), sqlite3_finalize) {}

bool Rows::next() {
  const int code = sqlite3_step(statement_.get());
  if (code == SQLITE_ROW) return true;
  if (code != SQLITE_DONE) throw SQLite::Exception(connection_.getHandle(), code);
  return false;
}

std::string_view Rows::text(int column) const {
  const auto* bytes = sqlite3_column_text(statement_.get(), column);  // before its length
  if (bytes == nullptr) return {};
  return {reinterpret_cast<const char*>(bytes),
          static_cast<std::size_t>(sqlite3_column_bytes(statement_.get(), column))};
}

std::int64_t Rows::number(int column) const {
  return sqlite3_column_int64(statement_.get(), column);
}

}  // namespace brimwright::records
