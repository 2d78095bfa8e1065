// Power cuts while `note` and `stock` work as they do for her: batches begun with lots taken,
// weights that were otherwise, pieces that go.
#include "records/exchange.h"
#include "records/records.h"
#include "remembering_disk.h"
#include "schemas/tidying.h"
#include "scratch_folder.h"
#include "service/service.h"

#include <catch2/catch.hpp>

#include <array>
#include <filesystem>
#include <string>
#include <utility>
#include <vector>

namespace brimwright::service {
namespace {

namespace fs = std::filesystem;
using records::Records;

const fs::path root = BRIMWRIGHT_SOURCE_DIR;
constexpr auto now = "2026-12-01T09:30:05+01:00", today = "2026-12-01";
constexpr auto code = "A1";

/// A folder of hers, with the plain bars, in which nothing is recorded yet.
class Studio {
 public:
  Studio() {
    for (const char* name : {"plain_bars.run.json", "meadow_base.formula.json"})
      fs::copy(root / "examples" / name, folder_.path());
    Records::kept_in(folder_.path());
  }

  std::string file(const std::string& name) const { return folder_.path() / name; }
  std::string records() const { return records::exported(*Records::in(folder_.path())); }

  void bought(const std::string& material, const std::string& lot) const {
    StockRequest asked = stock();
    asked.bought = material;
    asked.pack = "1 kg";
    asked.lot = lot;
    asked.on = "2026-11-01";
    done(asked);
  }
  void pieces(std::vector<std::string> StockRequest::*what, const std::string& told) const {
    StockRequest asked = stock();
    (asked.*what).emplace_back(told);
    done(asked);
  }
  void begun(const std::vector<std::string>& lots) const {
    NoteRequest asked = note();
    asked.begin = true;
    asked.code = code;
    asked.lots = lots;
    done(asked);
  }
  void begun_again() const {
    NoteRequest asked = note();
    asked.begin = asked.again = true;
    asked.set = {"base.made=1.2 kg"};
    done(asked);
  }
  void reserved() const {
    NoteRequest asked = note();
    asked.reserve = asked.again = true;
    done(asked);
  }
  void noted(const std::vector<std::string>& set,
             const std::vector<std::string>& confirmed = {}) const {
    NoteRequest asked = note();
    asked.batch_code = code;
    asked.set = set;
    asked.confirmed = confirmed;
    done(asked);
  }

 private:
  StockRequest stock() const {
    StockRequest asked;
    asked.file = folder_.path();
    asked.now = now;
    asked.today = today;
    return asked;
  }
  NoteRequest note() const {
    NoteRequest asked;
    asked.file = file("plain_bars.run.json");
    asked.now = now;
    asked.today = today;
    asked.program = "0";
    return asked;
  }
  static void done(const Request& request) {
    const Reply reply = answer(request, {.shipped = root.string(), .folders = {}});
    REQUIRE(reply.complaint == "");
  }
  template <class What>
  static void done(const What& what) {
    done(Request{.what = what});
  }

  ScratchFolder folder_;
};

/// What she does, one act after the other, each told by `after`.
template <class After>
void work(const Studio& studio, After after) {
  const auto act = [&](const auto& one) {
    one();
    after();
  };
  act([&] { studio.bought("olive oil", "OL-1"); });
  act([&] { studio.bought("olive oil", "OL-2"); });
  act([&] { studio.bought("coconut", "CO-1"); });
  act([&] { studio.bought("NaOH", "NA-1"); });
  act([&] { studio.begun({"olive=OL-2"}); });
  act([&] { studio.noted({"weighed.pour.fats.olive=400 g"}); });
  act([&] { studio.noted({"base.made=1.2 kg", "base.left_over=20 g", "base.trace=10 min"}); });
  act([&] { studio.noted({"pieces.made=12", "pieces.rejected=1"}); });
  act([&] { studio.noted({"tested_how=strip", "tested=pass"}); });
  act([&] { studio.noted({"ready_on=2026-12-01"}, {"2026-12-01"}); });
  act([&] { studio.pieces(&StockRequest::spoilt, "A1=2"); });
  act([&] { studio.pieces(&StockRequest::counted_pieces, "A1=8"); });
  act([&] { studio.noted({"weighed.pour.fats.olive="}); });
  act([&] { studio.reserved(); });
  act([&] { studio.begun_again(); });
}

/// What was asked of the disk by all acts, and what the records were after each of them.
struct Written {
  ScratchFolder before;  // the records as they were begun
  std::vector<DiskAct> disk = {};
  std::vector<std::size_t> acknowledged = {};
  std::vector<std::string> states = {};
};

void write_all(Written& written) {
  const Studio studio;
  fs::copy_file(studio.file(records::file_name), written.before.path() / records::file_name);
  written.states.push_back(studio.records());
  const RememberingDisk disk(RememberingDisk::Under::all);
  work(studio, [&] {
    written.acknowledged.push_back(disk.acts().size());
    written.states.push_back(studio.records());
    REQUIRE(written.states.back() != *(written.states.end() - 2));
    REQUIRE(written.acknowledged.back() == disk.acts().size());  // to look changes nothing
  });
  written.disk = disk.acts();
}

/// The power fails after the first `count` of what was asked of the disk: the records are, to the
/// byte, those after the last act that was acknowledged or after the one that was under way.
void check_cut(const Written& written, std::size_t count, Left left) {
  const ScratchFolder folder;
  cut_off(written.disk, count, left, written.before.path(), folder.path());
  std::size_t certain = 0;
  for (const std::size_t at : written.acknowledged) certain += at <= count ? 1 : 0;
  INFO("after " << count << " of " << written.disk.size() << ", left " << static_cast<int>(left));
  const auto records = Records::in(folder.path());
  REQUIRE(records);
  const std::string found = records::exported(*records);
  const bool is_next = certain + 1 < written.states.size() && found == written.states[certain + 1];
  CHECK((found == written.states[certain] || is_next));
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
TEST_CASE("a power cut while lots are taken, weights noted or pieces go leaves no half act") {
  CHECK(check_cuts(17) >= 100);
}

TEST_CASE("the same of the service for every state there is", "[.every]") {
  const std::size_t tried = check_cuts(1);
  WARN(tried << " states");
  CHECK(tried >= 1'000);
}

}  // namespace brimwright::service
