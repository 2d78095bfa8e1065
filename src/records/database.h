#pragma once

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/SQLiteCpp.h>
#include <SQLiteCpp/VariadicBind.h>

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

namespace brimwright::records {

/// The steps from one version of records to the next, each as SQL: the first makes an empty file
/// version 1. The newest is today's.
const std::vector<std::string>& steps();
int newest_version();

/// What SQLite says of the file `path`, in a maker's words.
[[noreturn]] void refuse(const SQLite::Exception& error, const std::string& path);

/// What `work` gives; SQLite's own complaints become a UserError that names the file.
template <class Work>
auto told(const std::string& path, Work work) {
  try {
    return work();
  } catch (const SQLite::Exception& error) {
    refuse(error, path);
  }
}

/// One connection to a file of records, with this room's settings: foreign keys, TRUNCATE journal,
/// synchronous FULL, a busy timeout. For this room alone.
class Database {
 public:
  /// UserError naming `path` for what is no sound file of records; one of an earlier version is
  /// brought up to today's.
  explicit Database(const std::string& path, const std::string& vfs = "");

  /// Empty records in no file, whose complaints name `path`.
  static Database in_memory(const std::string& path);

  SQLite::Database& connection() { return connection_; }
  const std::string& path() const { return path_; }

 private:
  Database(std::string path, SQLite::Database connection);

  void check_whose(std::int64_t version);
  void check_sound();
  std::int64_t number(const char* query);

  std::string path_;
  SQLite::Database connection_;
};

/// Takes the steps that lead from the file's version to today's, all or none.
void bring_up_to_date(SQLite::Database& connection);

/// Records of `version` in a file that is empty or not there yet, with what `fill` puts into them.
void make_database(const std::string& path, const std::string& vfs = "",
                   int version = newest_version(),
                   const std::function<void(SQLite::Database&)>& fill = {});

}  // namespace brimwright::records
