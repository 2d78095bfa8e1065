#include "records/records.h"

#include "records/act.h"
#include "records/database.h"
#include "records/half_made.h"
#include "scratch_folder.h"
#include "units/user_error.h"

#include <catch2/catch.hpp>
#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>

using namespace brimwright;
using namespace brimwright::records;
using Catch::Matchers::Contains;

namespace fs = std::filesystem;

namespace {

constexpr auto moment = "2026-11-14T09:30:05+01:00";

void act(Records& records, const std::string& id) {
  Act act(records, id, moment, "try", "{}");
  act.done();
}

std::int64_t acts(const Records& records) {
  return records.database().connection().execAndGet("SELECT count(*) FROM act").getInt64();
}

std::string bytes_of(const fs::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

void write(const fs::path& path, const std::string& bytes) {
  std::ofstream(path, std::ios::binary) << bytes;
}

/// The complaint of opening what is in `folder`, of which nothing may change.
std::string complaint_of(const fs::path& folder) {
  const fs::path path = folder / file_name;
  const std::string before = bytes_of(path);
  std::string said;
  try {
    Records::kept_in(folder);
  } catch (const UserError& error) {
    said = error.what();
  }
  CHECK(bytes_of(path) == before);
  CHECK_THAT(said, Contains(path.string()));
  return said;
}

}  // namespace

TEST_CASE("a folder without records has none, and looking makes none") {
  const ScratchFolder folder;
  CHECK(!Records::in(folder.path()));
  CHECK(fs::is_empty(folder.path()));
}

TEST_CASE("records are made whole, and nothing is left beside them") {
  const ScratchFolder folder;
  Records::kept_in(folder.path());
  REQUIRE(std::distance(fs::directory_iterator(folder.path()), {}) == 1);
  auto records = Records::in(folder.path());
  REQUIRE(records);
  auto& connection = records->database().connection();
  // The settings asked for, read back from SQLite itself.
  CHECK(connection.execAndGet("PRAGMA foreign_keys").getInt() == 1);
  CHECK(connection.execAndGet("PRAGMA journal_mode").getString() == "truncate");
  CHECK(connection.execAndGet("PRAGMA synchronous").getInt() == 2);
  CHECK(connection.execAndGet("PRAGMA user_version").getInt() == newest_version());
  CHECK(connection
            .execAndGet("SELECT count(*) FROM pragma_table_list WHERE type = 'table' "
                        "AND name NOT LIKE 'sqlite%' AND strict = 0")
            .getInt() == 0);
}

TEST_CASE("an act is there once it is done, and once only") {
  const ScratchFolder folder;
  auto records = Records::kept_in(folder.path());
  const auto before = records.version();
  act(records, "a");
  CHECK(records.version() > before);
  CHECK(Records::in(folder.path())->version() == records.version());
  {
    const Act again(records, "a", moment, "try", "{}");
    CHECK(again.was_done_before());
  }
  { const Act left_off(records, "b", moment, "try", "{}"); }
  CHECK(acts(records) == 1);
}

TEST_CASE("a rehearsal of records leaves nothing behind, and is as they would be") {
  const ScratchFolder folder;
  auto rehearsed = Records::rehearsed_in(folder.path());
  act(rehearsed, "a");
  CHECK(acts(rehearsed) == 1);
  CHECK(acts(Records::rehearsed_in(folder.path())) == 0);
  CHECK(fs::is_empty(folder.path()));
  const auto records = Records::kept_in(folder.path());
  CHECK(rehearsed.path() == records.path());
  for (const char* asked : {"PRAGMA foreign_keys", "PRAGMA user_version", "PRAGMA application_id",
                            "SELECT group_concat(sql) FROM sqlite_schema"})
    CHECK(rehearsed.database().connection().execAndGet(asked).getString() ==
          records.database().connection().execAndGet(asked).getString());
}

TEST_CASE("what is no file of records is named and left as it is") {
  const ScratchFolder folder;
  const fs::path path = fs::path(folder.path()) / file_name;
  SECTION("empty") {
    write(path, "");
    CHECK_THAT(complaint_of(folder.path()), Contains("is empty"));
  }
  SECTION("something else") {
    write(path, std::string(5000, 'x'));
    CHECK_THAT(complaint_of(folder.path()), Contains("is no file of records"));
  }
  SECTION("a database of another program") {
    {
      SQLite::Database(path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE)
          .exec("CREATE TABLE t (a)");
    }
    CHECK_THAT(complaint_of(folder.path()), Contains("another program"));
  }
  SECTION("of a newer version") {
    Records::kept_in(folder.path());
    { SQLite::Database(path.string(), SQLite::OPEN_READWRITE).exec("PRAGMA user_version = 1000"); }
    CHECK_THAT(complaint_of(folder.path()), Contains("newer brimwright"));
  }
  SECTION("cut off") {
    Records::kept_in(folder.path());
    fs::resize_file(path, fs::file_size(path) / 2);
    CHECK_THAT(complaint_of(folder.path()), Contains("is damaged"));
  }
  SECTION("a folder") {
    fs::create_directory(path);
    CHECK_THROWS_WITH(Records::kept_in(folder.path()), Contains("is no file"));
  }
}

TEST_CASE("while another program writes, one waits some seconds and then says so") {
  const ScratchFolder folder;
  auto records = Records::kept_in(folder.path());
  auto other = Records::kept_in(folder.path());
  const Act held(other, "a", moment, "try", "{}");
  records.database().connection().setBusyTimeout(50);
  CHECK_THROWS_WITH(act(records, "b"), Contains("written by another program"));
}

TEST_CASE("what a crash left behind is taken back, and the file is checked") {
  const ScratchFolder folder;
  const fs::path path = fs::path(folder.path()) / file_name;
  auto records = Records::kept_in(folder.path());
  act(records, "a");
  const ScratchFolder crashed;
  {
    // As a crash leaves it: the act's pages are in the file, its journal beside it.
    Act open(records, "b", moment, "try", std::string(200'000, ' '));
    records.database().connection().exec(
        "PRAGMA cache_spill = 1; PRAGMA cache_size = 1;"
        "CREATE TEMP TABLE none (a)");
    fs::copy_file(path, fs::path(crashed.path()) / file_name);
    fs::copy_file(path.string() + "-journal",
                  (fs::path(crashed.path()) / file_name).string() + "-journal");
  }
  auto found = Records::in(crashed.path());
  REQUIRE(found);
  CHECK(acts(*found) == 1);
}

TEST_CASE("a backup is a whole copy, and never takes a file's place") {
  const ScratchFolder folder, elsewhere;
  auto records = Records::kept_in(folder.path());
  act(records, "a");
  records.back_up(fs::path(elsewhere.path()) / file_name);
  CHECK(acts(*Records::in(elsewhere.path())) == 1);
  CHECK_THROWS_WITH(records.back_up(fs::path(elsewhere.path()) / file_name),
                    Contains("is there already"));
}

TEST_CASE("what a copying service made beside the records is named") {
  const ScratchFolder folder;
  Records::kept_in(folder.path());
  for (const char* name : {"records (conflicted copy 2026-11-14).sqlite", "records.sqlite.bak",
                           "Records-2.sqlite", "recordings.txt", "records.sqlite-journal"})
    write(fs::path(folder.path()) / name, "x");
  CHECK(look_alikes(folder.path()) ==
        std::vector<std::string>{"Records-2.sqlite", "records (conflicted copy 2026-11-14).sqlite",
                                 "records.sqlite.bak"});
}

TEST_CASE("what a program left that was stopped while it made records is told from a copy") {
  const ScratchFolder folder;
  Records::filled(folder.path(), [&](const std::string& file) {
    CHECK(look_alikes(folder.path()) == std::vector{fs::path(file).filename().string()});
    CHECK(is_half_made(fs::path(file).filename()));
    make_database(file);
  });
  for (const char* name : {"records.sqlite", "records-2.sqlite.new", "records.sqlite.1.new"})
    CHECK_FALSE(is_half_made(name));
}
