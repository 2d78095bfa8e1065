#include "planning/memo.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <atomic>
#include <stdexcept>
#include <thread>
#include <vector>

using namespace brimwright;
using namespace brimwright::planning;
using geometry::TriangleMesh;

namespace {

TriangleMesh any_mesh() {
  // Few and small numbers, so that meshes often differ in one place only.
  const auto number = [] { return static_cast<double>(*rc::gen::inRange(0, 3)); };
  const int corners = *rc::gen::inRange(0, 4), facets = *rc::gen::inRange(0, 3);
  TriangleMesh mesh;
  for (int i = 0; i < corners; ++i) mesh.vertices_mm.push_back({number(), number(), number()});
  for (int i = 0; i < facets; ++i)
    mesh.triangles.push_back({0, 1, static_cast<std::uint32_t>(*rc::gen::inRange(0, 3))});
  return mesh;
}

bool same(const TriangleMesh& a, const TriangleMesh& b) {
  return a.vertices_mm == b.vertices_mm && a.triangles == b.triangles;
}

}  // namespace

TEST_CASE("arguments are the same bytes if, and only if, they are the same",
          "[planning][remembered][law]") {
  rc::prop("two meshes, one after the other", [] {
    const TriangleMesh a = any_mesh(), b = any_mesh(), c = any_mesh(), d = any_mesh();
    const bool alike = same(a, c) && same(b, d);
    RC_ASSERT((MemoKey().with(a).with(b).bytes() == MemoKey().with(c).with(d).bytes()) == alike);
  });
}

TEST_CASE("what is remembered is what would be worked out", "[planning][remembered][law]") {
  rc::prop("however little there is room for", [] {
    Memo<int> squares(static_cast<std::size_t>(*rc::gen::inRange(0, 60)));
    for (const int number : *rc::gen::container<std::vector<int>>(rc::gen::inRange(-5, 6)))
      RC_ASSERT(squares(MemoKey().with(number), [&] { return number * number; }) ==
                number * number);
  });
}

TEST_CASE("what was just asked is not worked out again, and the oldest goes first",
          "[planning][remembered]") {
  Memo<int> twice(2 * sizeof(int));  // room for two arguments
  int worked = 0;
  const auto ask = [&](int number) {
    return twice(MemoKey().with(number), [&] {
      ++worked;
      return 2 * number;
    });
  };
  for (const int number : {1, 2, 1, 2, 1}) CHECK(ask(number) == 2 * number);
  CHECK(worked == 2);
  CHECK(ask(3) == 6);  // 2 was used least lately
  CHECK(twice.count() == 2);
  CHECK(ask(1) == 2);
  CHECK(worked == 3);
  CHECK(ask(2) == 4);
  CHECK(worked == 4);
}

TEST_CASE("a complaint is not remembered", "[planning][remembered]") {
  Memo<int> answers(100);
  const auto fails = []() -> int { throw std::runtime_error("no"); };
  CHECK_THROWS_AS(answers(MemoKey().with(1), fails), std::runtime_error);
  CHECK(answers(MemoKey().with(1), [] { return 7; }) == 7);
}

TEST_CASE("many may ask at once", "[planning][remembered]") {
  Memo<int> squares(5 * sizeof(int));
  std::atomic<int> wrong = 0;
  std::vector<std::thread> askers;
  for (int asker = 0; asker < 4; ++asker)
    askers.emplace_back([&, asker] {
      for (int i = 0; i < 2000; ++i) {
        const int number = (i * (asker + 1)) % 9;
        if (squares(MemoKey().with(number), [&] { return number * number; }) != number * number)
          ++wrong;
      }
    });
  for (auto& asker : askers) asker.join();
  CHECK(wrong == 0);
  CHECK(squares.count() <= 5);
}
