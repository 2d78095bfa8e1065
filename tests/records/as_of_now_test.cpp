#include "records/as_of_now.h"

#include "begun.h"
#include "scratch_folder.h"

#include <catch2/catch.hpp>

#include <chrono>
#include <optional>
#include <thread>
#include <utility>

using namespace brimwright;
using namespace brimwright::records;

TEST_CASE("what is read at one moment is whole, though another writes, and then does",
          "[records]") {
  const ScratchFolder folder;
  Records reader = Records::kept_in(folder.path());
  act(reader, [&] { (void)begun(reader, "first"); });
  std::optional<AsOfNow> moment(std::in_place, reader);
  REQUIRE(batches(reader).size() == 1);
  std::thread writer([path = folder.path()] {
    Records records = Records::kept_in(path);
    act(records, [&] { (void)begun(records, "second"); });
  });
  std::this_thread::sleep_for(std::chrono::milliseconds(50));  // in which it would be done
  CHECK(batches(reader).size() == 1);
  CHECK_FALSE(batch_of_id(reader, "second"));
  moment.reset();
  writer.join();
  CHECK(batches(reader).size() == 2);
}
