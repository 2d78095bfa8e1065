#include "geometry/surface/parallel.h"

#include <catch2/catch.hpp>

#include <atomic>
#include <stdexcept>
#include <vector>

namespace brimwright::geometry {
namespace {

TEST_CASE("each part is done once, before the call is back", "[geometry]") {
  const std::size_t parts = GENERATE(0, 1, 2, 1000);
  std::vector<int> done(parts, 0);
  in_parallel(parts, [&](std::size_t part) { ++done[part]; });
  CHECK(done == std::vector<int>(parts, 1));
}

TEST_CASE("what a part throws reaches who asked, and no further part is begun", "[geometry]") {
  std::atomic<int> begun = 0;
  const auto work = [&](std::size_t) {
    ++begun;
    throw std::runtime_error("no");
  };
  CHECK_THROWS_WITH(in_parallel(1'000'000, work), "no");
  CHECK(begun <= 8);  // one for each thread that may have been at work
}

TEST_CASE("parts may have parts of their own", "[geometry]") {
  std::atomic<int> sum = 0;
  in_parallel(4, [&](std::size_t a) {
    in_parallel(4, [&](std::size_t b) { sum += static_cast<int>(10 * a + b); });
  });
  CHECK(sum == 4 * (0 + 10 + 20 + 30) + 4 * (0 + 1 + 2 + 3));  // on paper
}

}  // namespace
}  // namespace brimwright::geometry
