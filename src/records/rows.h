#pragma once

#include <SQLiteCpp/SQLiteCpp.h>

#include <cstdint>
#include <memory>
#include <string_view>

namespace brimwright::records {

/// What a query finds, row by row, as SQLite itself gives it: for what reads ten thousand rows and
/// more, of which a SQLiteCpp column for each value takes longer than the values. For this room
/// alone.
class Rows {
 public:
  /// Of a connection that outlives it. SQLite::Exception where SQLite complains, here and below.
  Rows(SQLite::Database& connection, const char* query);

  /// On to the next row, the first to begin with; false where there is none.
  bool next();
  /// Of the row at hand, and as long as it is that.
  std::string_view text(int column) const;
  std::int64_t number(int column) const;

 private:
  SQLite::Database& connection_;
  std::unique_ptr<sqlite3_stmt, int (*)(sqlite3_stmt*)> statement_;
};

}  // namespace brimwright::records
