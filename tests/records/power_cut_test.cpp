#include "power_cuts.h"
#include "records/act.h"
#include "records/database.h"
#include "records/exchange.h"
#include "records/overview.h"
#include "records/records.h"
#include "scratch_folder.h"

#include <catch2/catch.hpp>

using namespace brimwright;
using namespace brimwright::records;

namespace fs = std::filesystem;

namespace {

constexpr int acts = 40;

/// So many rows that an act touches several pages, in a table and its indices.
int rows_of(int act) { return 1 + act * 7 % 13; }

void write(Records& records, int number) {
  Act act(records, "act " + std::to_string(number), "2026-11-14T09:30:05+01:00", "try", "{}");
  for (int row = 0; row < rows_of(number); ++row) {
    SQLite::Statement put(
        records.database().connection(),
        "INSERT INTO lot (id, code, material, origin, bought_on, packs, pack, is_pieces, whole) "
        "VALUES (?, ?, 'olive', 'bought', '2026-11-14', 1, '5 kg', 0, 5000000000)");
    SQLite::bind(put, std::to_string(number) + "." + std::to_string(row),
                 std::string(static_cast<std::size_t>(40 + row * 90), 'x'));
    put.exec();
  }
  act.done();
}

std::int64_t number(const Records& records, const std::string& query) {
  return records.database().connection().execAndGet(query).getInt64();
}

/// How many acts are there: each of them whole, and none that came after one that is not there.
int acts_in(const Records& records) {
  const int count = static_cast<int>(number(records, "SELECT count(*) FROM act"));
  std::int64_t rows = 0;
  for (int i = 0; i < count; ++i) {
    CHECK(number(records, "SELECT count(*) FROM act WHERE id = 'act " + std::to_string(i) + "'") ==
          1);
    CHECK(number(records, "SELECT count(*) FROM lot WHERE id LIKE '" + std::to_string(i) + ".%'") ==
          rows_of(i));
    rows += rows_of(i);
  }
  CHECK(number(records, "SELECT count(*) FROM lot") == rows);
  return count;
}

AskedOfDisk asked_by_all() {
  const ScratchFolder folder;
  Records::kept_in(folder.path());
  return asked_of_disk(folder.path(), RememberingDisk::Under::those_who_name_it,
                       [&](const auto&, const auto& acknowledged) {
                         auto records = Records::kept_in(folder.path(), RememberingDisk::name);
                         for (int i = 0; i < acts; ++i) {
                           write(records, i);
                           acknowledged();
                         }
                       });
}

std::size_t check_all(std::size_t stride) {
  return check_cuts(asked_by_all(), stride, [](const Records& records, std::size_t certain) {
    const auto found = static_cast<std::size_t>(acts_in(records));
    CHECK(found >= certain);
    CHECK(found <= certain + 1);
  });
}

}  // namespace

// What SQLite promises of a disk that keeps what it synced: sqlite.org/atomiccommit.html.
TEST_CASE("a power cut loses nothing that was acknowledged, and leaves no half act") {
  CHECK(check_all(113) >= 100);
}

TEST_CASE("the same for every state there is", "[.every]") {
  const std::size_t tried = check_all(1);
  WARN(tried << " states");
  CHECK(tried >= 1'000);
}

// A test that cannot fail is none: a program that does not wait for the disk loses acts.
TEST_CASE("what was acknowledged before it was synced is seen to be lost") {
  const ScratchFolder folder, after;
  Records::kept_in(folder.path());
  const AskedOfDisk asked =
      asked_of_disk(folder.path(), RememberingDisk::Under::those_who_name_it,
                    [&](const auto&, const auto& acknowledged) {
                      auto records = Records::kept_in(folder.path(), RememberingDisk::name);
                      records.database().connection().exec("PRAGMA synchronous = OFF");
                      write(records, 0);
                      acknowledged();
                    });
  REQUIRE(asked.acknowledged == std::vector{asked.disk.size()});
  cut_off(asked.disk, asked.disk.size(), Left::none, asked.before, after.path());
  CHECK(number(*Records::in(after.path()), "SELECT count(*) FROM act") == 0);
}

// The file was made by the program while its records were of version 1 (tests/data/records).
TEST_CASE("a power cut while records are brought to a newer version leaves them whole") {
  const ScratchFolder folder, uncut;
  const auto old = fs::path(BRIMWRIGHT_SOURCE_DIR) / "tests/data/records/version_1.sqlite";
  fs::copy_file(old, folder.path() / file_name);
  fs::copy_file(old, uncut.path() / file_name);
  const std::string all = exported(*Records::in(uncut.path()));
  const AskedOfDisk asked = asked_of_disk(folder.path(), RememberingDisk::Under::those_who_name_it,
                                          [&](const auto&, const auto& acknowledged) {
                                            Records::kept_in(folder.path(), RememberingDisk::name);
                                            acknowledged();
                                          });
  const std::size_t tried = check_cuts(asked, 1, [&](const Records& records, std::size_t) {
    CHECK(exported(records) == all);
    CHECK(overview_of(records).faults.empty());
  });
  CHECK(tried >= 50);
}
