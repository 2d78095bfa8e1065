#include "records/act.h"
#include "records/database.h"
#include "records/records.h"
#include "remembering_disk.h"
#include "scratch_folder.h"

#include <catch2/catch.hpp>

#include <array>

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

/// What was asked of the disk by all acts, and how much of it before each was acknowledged.
struct Written {
  ScratchFolder before;  // the records as they were begun
  std::vector<DiskAct> disk = {};
  std::vector<std::size_t> acknowledged = {};
};

void write_all(Written& written) {
  const ScratchFolder folder;
  Records::kept_in(folder.path());
  fs::copy_file(folder.path() / file_name, written.before.path() / file_name);
  const RememberingDisk disk;
  auto records = Records::kept_in(folder.path(), RememberingDisk::name);
  for (int i = 0; i < acts; ++i) {
    write(records, i);
    written.acknowledged.push_back(disk.acts().size());
  }
  written.disk = disk.acts();
}

/// The power fails after the first `count` of what was asked of the disk.
void check_cut(const Written& written, std::size_t count, Left left) {
  const ScratchFolder folder;
  cut_off(written.disk, count, left, written.before.path(), folder.path());
  int certain = 0;
  for (const std::size_t at : written.acknowledged) certain += at <= count ? 1 : 0;
  INFO("after " << count << " of " << written.disk.size() << ", left " << static_cast<int>(left));
  const auto records = Records::in(folder.path());
  REQUIRE(records);
  CHECK(number(*records, "SELECT count(*) FROM pragma_quick_check WHERE quick_check = 'ok'") == 1);
  const int found = acts_in(*records);
  CHECK(found >= certain);
  CHECK(found <= certain + 1);
}

constexpr std::array ways = {Left::all, Left::none, Left::records_only, Left::journal_only,
                             Left::half_of_last};

/// Every `stride`-th of all states there are.
std::size_t check_cuts(std::size_t stride) {
  Written written;
  write_all(written);
  std::size_t states = 0, tried = 0;
  for (std::size_t count = 0; count <= written.disk.size(); ++count)
    for (const Left left : ways)
      if (states++ % stride == 0) {
        check_cut(written, count, left);
        ++tried;
      }
  return tried;
}

}  // namespace

// What SQLite promises of a disk that keeps what it synced: sqlite.org/atomiccommit.html.
TEST_CASE("a power cut loses nothing that was acknowledged, and leaves no half act") {
  CHECK(check_cuts(113) >= 100);
}

TEST_CASE("the same for every state there is", "[.every]") {
  const std::size_t tried = check_cuts(1);
  WARN(tried << " states");
  CHECK(tried >= 1'000);
}

// A test that cannot fail is none: a program that does not wait for the disk loses acts.
TEST_CASE("what was acknowledged before it was synced is seen to be lost") {
  const ScratchFolder before, after;
  Records::kept_in(before.path());
  const ScratchFolder folder;
  fs::copy_file(before.path() / file_name, folder.path() / file_name);
  std::vector<DiskAct> asked;
  {
    const RememberingDisk disk;
    auto records = Records::kept_in(folder.path(), RememberingDisk::name);
    records.database().connection().exec("PRAGMA synchronous = OFF");
    write(records, 0);
    asked = disk.acts();
  }
  cut_off(asked, asked.size(), Left::none, before.path(), after.path());
  CHECK(number(*Records::in(after.path()), "SELECT count(*) FROM act") == 0);
}
