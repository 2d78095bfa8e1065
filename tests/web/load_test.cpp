#include "client.h"
#include "scratch_folder.h"

#include <catch2/catch.hpp>
#include <unistd.h>

#include <future>

using namespace brimwright;
using namespace brimwright::web;
using namespace brimwright::web::test;
using namespace std::chrono_literals;

namespace {

/// Of the server and its worker.
std::size_t memory() {
  std::size_t bytes = resident_bytes(::getpid());
  for (const pid_t worker : children()) bytes += resident_bytes(worker);
  return bytes;
}

}  // namespace

TEST_CASE("a thousand plans in a row leave the memory as it was", "[web][load]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  const auto plans = [&](int count) {
    int answered = 0;
    for (int i = 0; i < count; ++i)
      answered +=
          server.ask("POST", "/api/plan", R"({"file":"examples/spring_cups.run.json"})").status ==
          200;
    return answered;
  };
  CHECK(plans(200) == 200);  // what is kept for good is kept by now
  CHECK(children().size() == 1);
  const std::size_t before = memory();
  CHECK(plans(1000) == 1000);
  const std::size_t after = memory();
#ifndef __SANITIZE_ADDRESS__  // which keeps what was freed for a while
  // A plan answers with some 20 kB; a thousand leaked, or a tenth of each, would show.
  CHECK(after < before + (2 << 20));
#endif
}

TEST_CASE("a long measurement holds nobody up who does not wait for one", "[web][load]") {
  const ScratchFolder folder;
  ServerSettings settings = settings_in(folder.path().string());
  settings.limits.body = settings.limits.body_pause = 30s;
  RunningServer server(settings);
  REQUIRE(server.ask("POST", "/api/mesh?name=large.stl", large_mesh(100)).status == 200);
  auto slow = std::async(std::launch::async, [&] {
    return server.ask("POST", "/api/gauge", R"({"file":"upload:1","unit":"mm"})").status;
  });
  int meanwhile = 0;
  while (slow.wait_for(0s) != std::future_status::ready) {
    CHECK(server.ask("POST", "/api/plan", R"({"file":"examples/plain_bars.run.json"})").status ==
          200);
    ++meanwhile;
  }
  CHECK(slow.get() == 200);
  CHECK(meanwhile > 10);
}
