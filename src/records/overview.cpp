#include "records/overview.h"

#include "records/database.h"
#include "records/records.h"

#include <filesystem>
#include <system_error>

namespace brimwright::records {
namespace {

constexpr auto most_faults = 20;

std::int64_t number(SQLite::Database& connection, const std::string& query) {
  return connection.execAndGet(query).getInt64();
}

std::optional<std::string> text(SQLite::Database& connection, const std::string& query) {
  SQLite::Statement find(connection, query);
  if (!find.executeStep()) return std::nullopt;
  return find.getColumn(0).getString();
}

std::vector<std::string> faults_in(SQLite::Database& connection) {
  std::vector<std::string> faults;
  SQLite::Statement check(connection, "PRAGMA quick_check(" + std::to_string(most_faults) + ")");
  while (check.executeStep()) faults.push_back(check.getColumn(0).getString());
  if (faults == std::vector<std::string>{"ok"}) faults.clear();
  if (number(connection, "SELECT count(*) FROM pragma_foreign_key_check") > 0)
    faults.emplace_back("rows name others that are not there");
  return faults;
}

}  // namespace

Overview overview_of(const Records& records) {
  return told(records.path(), [&] {
    auto& connection = records.database().connection();
    std::error_code none;
    return Overview{.version = number(connection, "PRAGMA user_version"),
                    .batches = number(connection, "SELECT count(*) FROM batch"),
                    .lots = number(connection, "SELECT count(*) FROM lot"),
                    .acts = number(connection, "SELECT count(*) FROM act"),
                    .since = text(connection, "SELECT at FROM act ORDER BY number LIMIT 1"),
                    .latest = text(connection, "SELECT at FROM act ORDER BY number DESC LIMIT 1"),
                    .bytes = std::filesystem::file_size(records.path(), none),
                    .faults = faults_in(connection)};
  });
}

}  // namespace brimwright::records
