#include "records/database.h"

#include "units/user_error.h"

#include <sqlite3.h>
#include <sys/stat.h>

#include <cstdint>
#include <utility>

namespace brimwright::records {
namespace {

constexpr int application = 0x42724d77;  // "BrMw" in the file's header, so that `file` can tell it
constexpr int patience_ms = 5'000;
/// A connection is used by one thread at a time, so SQLite need not see to that at every value.
constexpr int own_thread = SQLITE_OPEN_NOMUTEX;

/// Before anything is opened: what is no file of records is never written to.
const std::string& checked(const std::string& path) {
  struct stat facts {};
  if (::stat(path.c_str(), &facts) != 0)
    throw UserError({path, ""}, "is not there or cannot be looked at", "check the folder's rights");
  if (!S_ISREG(facts.st_mode))
    throw UserError({path, ""}, "is no file", "move it out of the folder");
  if (facts.st_size == 0)
    throw UserError({path, ""}, "is empty: what was recorded in it is lost",
                    "put a backup in its place, or move it away to begin new records");
  return path;
}

/// Something of an act that did not come to its end; SQLite takes it back when it opens the file.
bool has_unfinished_act(const std::string& path) {
  struct stat facts {};
  return ::stat((path + "-journal").c_str(), &facts) == 0 && facts.st_size > 0;
}

void set_up(SQLite::Database& connection) {
  // What is in the file may not make the program do more than read and write it.
  sqlite3_db_config(connection.getHandle(), SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
  connection.exec(
      "PRAGMA trusted_schema = OFF; PRAGMA cell_size_check = ON;"
      "PRAGMA foreign_keys = ON; PRAGMA synchronous = FULL;");
}

/// From one version to another.
void take_steps(SQLite::Database& connection, std::size_t from, std::size_t to) {
  for (std::size_t i = from; i < to; ++i) connection.exec(steps()[i]);
  connection.exec("PRAGMA user_version = " + std::to_string(to));
}

/// Makes the empty database records of `version`.
void begin_records(SQLite::Database& connection, std::size_t version) {
  connection.exec("PRAGMA application_id = " + std::to_string(application));
  take_steps(connection, 0, version);
}

}  // namespace

void refuse(const SQLite::Exception& error, const std::string& path) {
  const Place place{path, ""};
  const char* nothing_changed = "nothing was changed";
  switch (error.getErrorCode() & 0xff) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
      throw UserError(place, std::string("is being written by another program; ") + nothing_changed,
                      "try again when that has ended");
    case SQLITE_FULL:
      throw UserError(place, std::string("cannot be written: the disk is full; ") + nothing_changed,
                      "make room and do it again");
    case SQLITE_READONLY:
    case SQLITE_PERM:
    case SQLITE_CANTOPEN:
      throw UserError(place, std::string("cannot be written; ") + nothing_changed,
                      "check that you may write to the file and its folder");
    case SQLITE_NOTADB:
      throw UserError(place, "is no file of records", "put a backup in its place, or move it away");
    case SQLITE_CORRUPT:
      throw UserError(place, "is damaged; nothing was read from it",
                      "keep it, and put a backup in its place");
    case SQLITE_IOERR:
      throw UserError(place,
                      std::string("cannot be read or written by the disk; ") + nothing_changed,
                      "check the disk and do it again");
    default:
      throw std::runtime_error("records: " + std::string(error.what()));
  }
}

Database::Database(const std::string& path, const std::string& vfs)
    : path_(checked(path)), connection_(told(path_, [&] {
        return SQLite::Database(path_, SQLite::OPEN_READWRITE | own_thread, patience_ms, vfs);
      })) {
  told(path_, [&] {
    const bool may_be_torn = has_unfinished_act(path_);
    set_up(connection_);
    const std::int64_t version = number("PRAGMA user_version");
    check_whose(version);
    if (may_be_torn) check_sound();
    if (version < newest_version()) bring_up_to_date(connection_);
    connection_.exec("PRAGMA journal_mode = TRUNCATE");
  });
}

Database::Database(std::string path, SQLite::Database connection)
    : path_(std::move(path)), connection_(std::move(connection)) {}

Database Database::in_memory(const std::string& path) {
  return told(path, [&] {
    SQLite::Database connection(":memory:",
                                SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE | own_thread);
    set_up(connection);
    begin_records(connection, steps().size());
    return Database(path, std::move(connection));
  });
}

std::int64_t Database::number(const char* query) {
  return connection_.execAndGet(query).getInt64();
}

void Database::check_whose(std::int64_t version) {
  if (number("PRAGMA application_id") != application || version < 1)
    throw UserError({path_, ""}, "is a database of another program",
                    "move it out of the folder; the records are to be called so");
  if (version > newest_version())
    throw UserError({path_, ""}, "is of a newer brimwright, whose records this one cannot read",
                    "install that version; nothing was changed");
}

void Database::check_sound() {
  const std::string found = connection_.execAndGet("PRAGMA quick_check(1)").getString();
  if (found != "ok")
    throw UserError({path_, ""}, "is damaged since the last crash (" + found + ")",
                    "keep it, and put a backup in its place");
}

/// Whoever came first did it.
void bring_up_to_date(SQLite::Database& connection) {
  SQLite::Transaction all_or_none(connection, SQLite::TransactionBehavior::IMMEDIATE);
  const int version = connection.execAndGet("PRAGMA user_version").getInt();
  take_steps(connection, static_cast<std::size_t>(version), steps().size());
  all_or_none.commit();
}

void make_database(const std::string& path, const std::string& vfs, int version,
                   const std::function<void(SQLite::Database&)>& fill) {
  told(path, [&] {
    SQLite::Database connection(path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE | own_thread,
                                patience_ms, vfs);
    set_up(connection);
    SQLite::Transaction all_or_none(connection, SQLite::TransactionBehavior::IMMEDIATE);
    begin_records(connection, static_cast<std::size_t>(version));
    if (fill) fill(connection);
    all_or_none.commit();
  });
}

}  // namespace brimwright::records
