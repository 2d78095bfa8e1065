#include "records/exchange.h"

#include "records/act.h"
#include "records/batch_code.h"
#include "records/batches.h"
#include "records/database.h"
#include "records/documents.h"
#include "records/overview.h"
#include "records/records.h"
#include "scratch_folder.h"
#include "units/user_error.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

using namespace brimwright;
using namespace brimwright::records;
using Catch::Matchers::Contains;

namespace fs = std::filesystem;

namespace {

constexpr auto moment = "2026-12-01T09:30:05+01:00";
const Place nowhere{"", ""};

void write(const fs::path& path, const std::string& bytes) {
  std::ofstream(path, std::ios::binary) << bytes;
}

/// What JSON, SQL and a careless reader may trip over, and what is common.
std::string any_text() {
  static const std::vector<std::string> odd = {
      "Olive oil", "größer", "\"quoted\" \\ back",           "a\nb\tc", "'; DROP TABLE act; --",
      "",          "🧼",   std::string("nul\0inside", 10), "\x1b[31m"};
  return *rc::gen::elementOf(odd) + std::to_string(*rc::gen::inRange(0, 1000));
}

template <class... Values>
void put(Records& records, const std::string& query, const Values&... values) {
  SQLite::Statement statement(records.database().connection(), query);
  SQLite::bind(statement, values...);
  statement.exec();
}

/// Some of everything, as chance has it.
void fill(Records& records) {
  Act act(records, any_text(), moment, "try", any_text());
  const int batches = *rc::gen::inRange(0, 6);
  for (int i = 0; i < batches; ++i) {
    const std::string id = "batch " + std::to_string(i);
    (void)begin_batch(records,
                      {.id = id,
                       .run = any_text(),
                       .run_file = any_text(),
                       .run_name = any_text(),
                       .number = *rc::gen::inRange(1, 9),
                       .begun_on = "2026-12-01",
                       .begun_at = moment,
                       .pieces = *rc::gen::inRange(0, 100),
                       .program = any_text(),
                       .plan = "{" + any_text() + "}",
                       .sources = {{.path = "may.run.json", .text = any_text()}}},
                      nowhere);
    const int notes = *rc::gen::inRange(0, 4);
    for (int n = 0; n < notes; ++n)
      put(records, "INSERT INTO note VALUES (?, ?, ?, ?)", id, "key " + std::to_string(n),
          any_text(), std::string(moment));
    put(records, "INSERT INTO weighing VALUES (?, '2026-12-29', ?, ?, ?)", id,
        *rc::gen::inRange(1, 50), any_text(), *rc::gen::inRange(1, 2'000'000'000));
    put(records,
        "INSERT INTO piece_change (batch, what, pieces, day, why) VALUES (?, 'sold', ?, "
        "'2027-01-05', ?)",
        id, *rc::gen::inRange(-50, 0), any_text());
  }
  (void)reserve_code(records, any_text(), 1, "2026-12-02", {}, nowhere);
  act.done();
}

/// How every table, index and trigger was made.
std::string tables_of(const Records& records) {
  return records.database()
      .connection()
      .execAndGet(
          "SELECT group_concat(sql, ';') FROM (SELECT sql FROM sqlite_schema WHERE sql IS NOT "
          "NULL ORDER BY name)")
      .getString();
}

std::string said_by_importing(const std::string& text) {
  const ScratchFolder folder, elsewhere;
  const fs::path file = fs::path(folder.path()) / "all.json";
  write(file, text);
  std::string said;
  try {
    import_records(elsewhere.path(), file);
  } catch (const UserError& error) {
    said = error.what();
  }
  CHECK(fs::is_empty(elsewhere.path()));
  return said;
}

}  // namespace

TEST_CASE("what was exported and imported exports to the same bytes", "[law]") {
  rc::prop("export(import(x)) == x", [] {
    const ScratchFolder one, other;
    auto records = Records::kept_in(one.path());
    fill(records);
    const std::string text = exported(records);
    const fs::path file = fs::path(one.path()) / "all.json";
    write(file, text);
    import_records(other.path(), file);
    const auto imported = Records::in(other.path());
    RC_ASSERT(imported.has_value());
    RC_ASSERT(exported(*imported) == text);
    RC_ASSERT(overview_of(*imported).faults.empty());
    RC_ASSERT(batches(*imported).size() == batches(records).size());
    for (const Batch& batch : batches(records))
      RC_ASSERT(plan_of(*imported, *batch_called(*imported, batch.code)) ==
                plan_of(records, batch));
  });
}

TEST_CASE("a backup exports to the same bytes as what it was made of") {
  const ScratchFolder folder, elsewhere;
  auto records = Records::kept_in(folder.path());
  Act act(records, "a", moment, "try", "{}");
  (void)keep_document(records, "some text");
  act.done();
  records.back_up(fs::path(elsewhere.path()) / file_name);
  CHECK(exported(*Records::in(elsewhere.path())) == exported(records));
}

TEST_CASE("what is no export of records begins none") {
  for (const char* text :
       {"", "{", "[]", "7", "{\"schema\": \"brimwright.run/2\"}",
        "{\"schema\": \"brimwright.records/1\"}",
        "{\"schema\": \"brimwright.records/1\", \"version\": 1, \"tables\": []}",
        "{\"schema\": \"brimwright.records/1\", \"version\": \"1\", \"tables\": {}}"})
    CHECK_THAT(said_by_importing(text), Contains("no export of records"));
  CHECK_THAT(
      said_by_importing(R"({"schema": "brimwright.records/1", "version": 99, "tables": {}})"),
      Contains("newer brimwright"));
  CHECK_THAT(said_by_importing(R"({"schema": "brimwright.records/1", "version": 1, "tables": {}})"),
             Contains("/tables/act: is missing"));
}

TEST_CASE("records of every version that was ever made are opened, and lose nothing") {
  // Made by the program of that version: one file each, with its export beside it.
  int versions = 0;
  for (const auto& entry : fs::directory_iterator(BRIMWRIGHT_SOURCE_DIR "/tests/data/records")) {
    if (entry.path().extension() != ".sqlite") continue;
    ++versions;
    CAPTURE(entry.path());
    const ScratchFolder folder, fresh;
    fs::copy_file(entry.path(), fs::path(folder.path()) / file_name);
    const auto records = Records::in(folder.path());
    REQUIRE(records);
    const Overview found = overview_of(*records);
    CHECK(found.version == newest_version());
    CHECK(tables_of(*records) == tables_of(Records::kept_in(fresh.path())));
    CHECK(found.faults.empty());
    CHECK(found.batches == 2);
    CHECK(batch_called(*records, "2026-12-01A")->run_name == "Plain bars");
    CHECK(plan_of(*records, *batch_called(*records, "KO-7")).size() > 1000);
  }
  CHECK(versions == newest_version());
}

TEST_CASE("a step to a newer version that fails leaves the file as it was") {
  const ScratchFolder folder;
  const fs::path path = fs::path(folder.path()) / file_name;
  Records::kept_in(folder.path());
  { SQLite::Database(path.string(), SQLite::OPEN_READWRITE).exec("PRAGMA user_version = 0"); }
  // As though it were of the version before the first, whose step then meets tables that are there.
  std::ifstream before_file(path, std::ios::binary);
  const std::string before{std::istreambuf_iterator<char>(before_file), {}};
  SQLite::Database connection(path.string(), SQLite::OPEN_READWRITE);
  CHECK_THROWS(bring_up_to_date(connection));
  std::ifstream after_file(path, std::ios::binary);
  const std::string after{std::istreambuf_iterator<char>(after_file), {}};
  CHECK(after == before);
}
