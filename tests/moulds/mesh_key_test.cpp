// What a mesh leaves open is asked of who wrote a mould file by the keys of that file.
#include "moulds/mould_file.h"
#include "scratch_folder.h"

#include <catch2/catch.hpp>

using namespace brimwright;
using namespace brimwright::moulds;
using Catch::Contains;

namespace {

const std::string root = BRIMWRIGHT_SOURCE_DIR;

struct Complaint {
  std::string field, line;
};

/// Of a mould whose mesh is of the tests' own or the shipped ones.
Complaint complaint_of(const std::string& mesh, const std::string& says) {
  const ScratchFolder folder;
  const std::string path = folder.write(
      "tray.json", R"({"schema": "brimwright.mould/2", "name": "Tray", "cavities": 1, "mesh": {)"
                   R"("file": ")" +
                       mesh + "\", " + says + "}}");
  try {
    read_mould(path, {.shipped = root, .folders = {}});
  } catch (const UserError& error) {
    return {error.parts().field, error.what()};
  }
  return {};
}

}  // namespace

TEST_CASE("a mesh whose unit is not said is asked for it at its key", "[moulds]") {
  const auto [field, line] = complaint_of("meshes/twisted_cup.stl", R"("role": "cavity")");
  CHECK(field == "/mesh/unit");
  CHECK_THAT(line, Contains("is missing, and ") && Contains("does not say its unit") &&
                       Contains("; give \"mm\", \"cm\", \"m\" or \"in\"") && !Contains("--"));
}

TEST_CASE("a body that holds nothing is asked about at its role", "[moulds]") {
  const auto [field, line] =
      complaint_of("meshes/twisted_cup.stl", R"("unit": "mm", "role": "body")");
  CHECK(field == "/mesh/role");
  CHECK_THAT(line, Contains("twisted_cup.stl holds no liquid, whichever way up") &&
                       Contains("stand it on a board with \"on_board\": true") &&
                       Contains("give \"role\": \"cavity\"") && !Contains("--"));
}

TEST_CASE("a body the wrong way up is asked for the key that turns it", "[moulds]") {
  const auto [field, line] = complaint_of("tests/data/meshes/slab4_body.stl",
                                          R"("unit": "mm", "role": "body", "up": "-z")");
  CHECK(field == "/mesh/up");
  CHECK_THAT(line, Contains("with \"up\": \"+z\" it has 4 cavities") && !Contains("--"));
}
