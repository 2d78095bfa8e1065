#include "records/exchange.h"

#include "records/content_hash.h"
#include "records/database.h"
#include "records/documents.h"
#include "records/records.h"
#include "units/user_error.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <utility>
#include <vector>

namespace brimwright::records {

namespace fs = std::filesystem;

namespace {

using Json = nlohmann::ordered_json;

constexpr auto schema = "brimwright.records/1";
constexpr auto documents = "document";
constexpr std::uintmax_t longest_file = 1u << 30;

struct Column {
  std::string name, type;
  bool is_key = false;
};
struct Table {
  std::string name;
  std::vector<Column> columns;
};

std::vector<Column> columns_of(SQLite::Database& connection, const std::string& table) {
  if (table == documents) return {{"hash", "TEXT", true}, {"text", "TEXT", false}};
  SQLite::Statement find(connection, "SELECT name, type, pk FROM pragma_table_info(?)");
  SQLite::bind(find, table);
  std::vector<Column> columns;
  while (find.executeStep())
    columns.push_back({find.getColumn(0).getString(), find.getColumn(1).getString(),
                       find.getColumn(2).getInt() > 0});
  return columns;
}

/// In the order in which they were made.
std::vector<Table> tables_of(SQLite::Database& connection) {
  SQLite::Statement find(connection,
                         "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE "
                         "'sqlite%' ORDER BY rowid");
  std::vector<Table> tables;
  while (find.executeStep()) {
    const std::string name = find.getColumn(0).getString();
    tables.push_back({name, columns_of(connection, name)});
  }
  return tables;
}

Json value_in(const SQLite::Column& column) {
  if (column.isNull()) return nullptr;
  if (column.isInteger()) return column.getInt64();
  return column.getString();
}

/// A document's own text stands for what is packed.
std::string query_of(const Table& table) {
  if (table.name == documents) return "SELECT hash, hash FROM document ORDER BY hash";
  std::string names, keys;
  for (const Column& column : table.columns) {
    names += (names.empty() ? "\"" : ", \"") + column.name + "\"";
    if (column.is_key) keys += (keys.empty() ? "\"" : ", \"") + column.name + "\"";
  }
  return "SELECT " + names + " FROM \"" + table.name + "\" ORDER BY " + keys;
}

std::string rows_text(const Records& records, const Table& table) {
  SQLite::Statement find(records.database().connection(), query_of(table));
  std::string text;
  while (find.executeStep()) {
    Json row;
    for (std::size_t i = 0; i < table.columns.size(); ++i)
      row[table.columns[i].name] = value_in(find.getColumn(static_cast<int>(i)));
    if (table.name == documents)
      row["text"] = document(records, row["hash"].get_ref<const std::string&>());
    text += (text.empty() ? "\n    " : ",\n    ") + row.dump();
  }
  return text;
}

/// The whole file; nothing in it is looked into here.
Json read_whole(const std::string& file) {
  std::error_code none;
  if (!fs::is_regular_file(file, none))
    throw UserError({file, ""}, "is not there or is no file", "name a file that was exported");
  if (fs::file_size(file, none) > longest_file)
    throw UserError({file, ""}, "is longer than 1 GiB", "name a file that was exported");
  std::ifstream stream(file, std::ios::binary);
  const std::string text{std::istreambuf_iterator<char>(stream), {}};
  Json json = Json::parse(text, nullptr, false);
  if (stream.bad() || !json.is_object() || json.value("schema", Json()) != schema)
    throw UserError({file, ""}, "is no export of records", "name a file that was exported");
  return json;
}

/// Puts rows into tables, each looked at.
class Import {
 public:
  Import(SQLite::Database& connection, const std::string& file)
      : connection_(connection), file_(file) {}

  void put_all(const Json& tables) {
    const auto known = tables_of(connection_);
    for (const Table& table : known)
      if (!tables.contains(table.name)) refuse(table.name, "is missing");
    for (const auto& [name, rows] : tables.items())
      if (std::none_of(known.begin(), known.end(),
                       [&, its = name](const Table& table) { return table.name == its; }))
        refuse(name, "is not known here");
    connection_.exec("PRAGMA defer_foreign_keys = ON");
    for (const Table& table : known) put_table(table, tables.at(table.name));
    if (connection_.execAndGet("SELECT count(*) FROM pragma_foreign_key_check").getInt64() > 0)
      refuse("", "has rows that name others which are not in it");
  }

 private:
  [[noreturn]] void refuse(const std::string& where, const std::string& problem) const {
    throw UserError({file_, where.empty() ? "/tables" : "/tables/" + where}, problem,
                    "export the records again; nothing was imported");
  }

  void put_table(const Table& table, const Json& rows) {
    if (!rows.is_array()) refuse(table.name, "is not a list");
    for (std::size_t i = 0; i < rows.size(); ++i) {
      const std::string where = table.name + "/" + std::to_string(i);
      check_row(table, rows[i], where);
      try {
        table.name == documents ? put_document(rows[i], where) : put_row(table, rows[i]);
      } catch (const SQLite::Exception& error) {
        refuse(where, std::string("cannot be so: ") + error.what());
      }
    }
  }

  void check_row(const Table& table, const Json& row, const std::string& where) const {
    if (!row.is_object() || row.size() != table.columns.size())
      refuse(where, "does not have the keys that it should");
    for (const Column& column : table.columns) {
      if (!row.contains(column.name)) refuse(where, "lacks \"" + column.name + "\"");
      const Json& value = row[column.name];
      const bool fits = value.is_null() ||
                        (column.type == "INTEGER" ? value.is_number_integer() : value.is_string());
      if (!fits) refuse(where + "/" + column.name, "is of another kind than it should be");
    }
  }

  void put_document(const Json& row, const std::string& where) {
    if (row["hash"].is_null() || row["text"].is_null() ||
        content_hash(row["text"].get_ref<const std::string&>()) != row["hash"])
      refuse(where, "is not the text that its hash is of");
    brimwright::records::put_document(connection_, row["hash"].get_ref<const std::string&>(),
                                      row["text"].get_ref<const std::string&>());
  }

  void put_row(const Table& table, const Json& row) {
    std::string places;
    for (std::size_t i = 0; i < table.columns.size(); ++i) places += i == 0 ? "?" : ", ?";
    SQLite::Statement put(connection_,
                          "INSERT INTO \"" + table.name + "\" VALUES (" + places + ")");
    int place = 0;
    for (const Column& column : table.columns) {
      const Json& value = row[column.name];
      ++place;
      if (value.is_number_integer())
        put.bind(place, value.get<std::int64_t>());
      else if (value.is_string())
        put.bind(place, value.get_ref<const std::string&>());
    }
    put.exec();
  }

  SQLite::Database& connection_;
  const std::string& file_;
};

}  // namespace

std::string exported(const Records& records) {
  return told(records.path(), [&] {
    auto& connection = records.database().connection();
    const SQLite::Transaction as_of_now(connection);
    std::string text = "{\n  \"schema\": \"" + std::string(schema) +
                       "\",\n  \"version\": " + std::to_string(newest_version()) +
                       ",\n  \"tables\": {";
    bool is_first = true;
    for (const Table& table : tables_of(connection)) {
      text += (is_first ? "\n   \"" : ",\n   \"") + table.name + "\": [" +
              rows_text(records, table) + "]";
      is_first = false;
    }
    return text + "\n  }\n}\n";
  });
}

void import_records(const std::string& folder, const std::string& file) {
  const Json json = read_whole(file);
  const Json version = json.value("version", Json());
  if (!version.is_number_integer() || version.get<std::int64_t>() < 1 || !json.contains("tables") ||
      !json["tables"].is_object())
    throw UserError({file, ""}, "is no export of records", "name a file that was exported");
  if (version.get<std::int64_t>() > newest_version())
    throw UserError({file, "/version"}, "is of a newer brimwright", "install that version");
  Records::filled(folder, [&](const std::string& path) {
    make_database(path, "", version.get<int>(), [&](SQLite::Database& connection) {
      Import(connection, file).put_all(json["tables"]);
    });
  });
}

}  // namespace brimwright::records
