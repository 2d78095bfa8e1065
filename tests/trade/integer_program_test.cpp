#include "trade/integer_program.h"

#include <catch2/catch.hpp>

#include <stdexcept>

using namespace brimwright::trade;
using Catch::Matchers::Contains;

TEST_CASE("the cheaper of two columns is taken", "[trade]") {
  const IntegerProgram program{{3, 2}, {{.least = 1, .most = 1, .terms = {{0, 1}, {1, 1}}}}};
  const Solved found = solved(program, 100);
  CHECK(found.is_taken == std::vector<bool>{false, true});
  CHECK(found.bound == Approx(2));
}

TEST_CASE("rows that nothing keeps to leave nothing taken", "[trade]") {
  const IntegerProgram program{{1}, {{.least = 2, .terms = {{0, 1}}}}};
  CHECK(solved(program, 100).is_taken.empty());
}

TEST_CASE("a fault of the solver is an exception, and the next program is solved", "[trade]") {
  // The solver ends the program at a column that there is none of, were it let.
  const IntegerProgram faulty{{1}, {{.least = 0, .terms = {{7, 1}}}}};
  CHECK_THROWS_WITH(solved(faulty, 100), Contains("the solver failed") && Contains("out of range"));
  CHECK_THROWS_AS(solved(faulty, 100), std::runtime_error);
  CHECK(solved({{1, 0}, {{.least = 1, .terms = {{0, 1}, {1, 1}}}}}, 100).bound == Approx(0));
}
