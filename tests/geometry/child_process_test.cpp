#include "geometry/child_process.h"

#include <catch2/catch.hpp>
#include <fcntl.h>
#include <sys/mman.h>
#include <unistd.h>

#include <csignal>
#include <cstring>
#include <string>
#include <vector>

namespace brimwright::geometry {
namespace {

using namespace std::chrono_literals;

constexpr ChildLimits limits{.memory_bytes = std::size_t{1} << 30, .time = 2s};

TEST_CASE("a child hands back what it made", "[geometry][child]") {
  const std::string long_text(3'000'000, 'x');
  const ChildReport report = run_in_child(
      limits, [&](const Send& send) { return send(long_text.data(), long_text.size()); });
  CHECK(report.end == ChildEnd::finished);
  CHECK(report.bytes == long_text);
}

TEST_CASE("a child that crashes, hangs or eats memory ends alone", "[geometry][child]") {
  const ChildLimits brief{.memory_bytes = limits.memory_bytes, .time = 300ms};
  CHECK(run_in_child(limits, [](const Send&) { return false; }).end == ChildEnd::gave_up);
  CHECK(run_in_child(limits, [](const Send&) -> bool { throw 7; }).end == ChildEnd::gave_up);
  CHECK(run_in_child(limits, [](const Send&) { return std::raise(SIGSEGV) == 0; }).end ==
        ChildEnd::broke_down);
  CHECK(run_in_child(limits, [](const Send&) -> bool { std::abort(); }).end ==
        ChildEnd::broke_down);
  CHECK(run_in_child(brief, [](const Send&) { return ::pause() == 0; }).end ==
        ChildEnd::out_of_time);
#ifndef __SANITIZE_ADDRESS__  // under which the memory limit is off
  CHECK(run_in_child(limits, [](const Send& send) {
          const std::vector<char> much(std::size_t{3} << 30);
          return send(much.data(), 1);
        }).end == ChildEnd::out_of_memory);
#endif
}

TEST_CASE("a child of a large program has as much memory as one of a small", "[geometry][child]") {
  constexpr std::size_t kept = std::size_t{3} << 30;  // above the child's own limit
  void* const meshes =
      ::mmap(nullptr, kept, PROT_READ, MAP_PRIVATE | MAP_ANONYMOUS | MAP_NORESERVE, -1, 0);
  REQUIRE(meshes != MAP_FAILED);
  const ChildReport report = run_in_child(limits, [](const Send& send) {
    const std::vector<char> some(std::size_t{200} << 20);
    return send(some.data(), 1);
  });
  ::munmap(meshes, kept);
  CHECK(report.end == ChildEnd::finished);
}

TEST_CASE("a child can neither write nor open files", "[geometry][child]") {
  const ChildReport report = run_in_child(limits, [](const Send& send) {
    const bool opened = ::open("/dev/null", O_RDONLY) >= 0 || ::open("/tmp", O_RDONLY) >= 0;
    return send(opened ? "yes" : "no", 3 - (opened ? 0 : 1));
  });
  CHECK(report.end == ChildEnd::finished);
  CHECK(report.bytes == "no");
}

}  // namespace
}  // namespace brimwright::geometry
