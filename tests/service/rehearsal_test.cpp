#include "service/rehearsal.h"

#include "scratch_folder.h"
#include "units/user_error.h"

#include <catch2/catch.hpp>

#include <filesystem>

using namespace brimwright;
using namespace brimwright::service;
using Catch::Matchers::Contains;
using records::Records;

namespace {

[[noreturn]] void refuse() { throw UserError({"a.run.json", ""}, "is not so", "correct it"); }

}  // namespace

TEST_CASE("what cannot be done in a folder without records leaves none behind") {
  const ScratchFolder folder;
  std::string path;
  rehearse(folder.path(), [&](Records& none) { path = none.path(); });
  CHECK(path == Records::kept_in(folder.path()).path());
  const ScratchFolder other;
  CHECK_THROWS_WITH(rehearse(other.path(), [](Records&) { refuse(); }), Contains("is not so"));
  CHECK(std::filesystem::is_empty(other.path()));
}

TEST_CASE("a rehearsal refuses nothing once somebody has begun the records") {
  const ScratchFolder folder;
  const auto begun_meanwhile = [&](Records&) {
    Records::kept_in(folder.path());
    refuse();
  };
  CHECK_NOTHROW(rehearse(folder.path(), begun_meanwhile));
}
