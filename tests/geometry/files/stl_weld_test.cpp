#include "geometry/files/stl_weld.h"

#include "geometry/surface/weld.h"
#include "mesh_writers.h"
#include "scratch_file.h"
#include "solids.h"
#include "units/user_error.h"

#include <catch2/catch.hpp>

#include <array>
#include <cstdint>
#include <cstring>
#include <limits>
#include <string>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::Contains;
using test::ScratchFile;

/// The facets of a sound binary STL, three vertices each.
TriangleMesh plainly_read(const std::string& bytes) {
  TriangleMesh mesh;
  for (std::size_t facet = 84; facet < bytes.size(); facet += 50) {
    const auto first = static_cast<std::uint32_t>(mesh.vertices_mm.size());
    for (std::size_t corner = 0; corner < 3; ++corner) {
      std::array<float, 3> p;
      std::memcpy(p.data(), bytes.data() + facet + 12 + 12 * corner, sizeof p);
      mesh.vertices_mm.push_back({p[0], p[1], p[2]});
    }
    mesh.triangles.push_back({first, first + 1, first + 2});
  }
  return mesh;
}

TEST_CASE("a file welded on the way is the file read and welded after", "[geometry][files]") {
  // The balls have more facets than one block, one of them corners at -0 and 0 alike.
  const TriangleMesh mesh = GENERATE(
      test::box({-1, -1, -1}, {1, 1, 1}), test::ball(20, 40, 60), test::torus(30, 9, 40, 90),
      test::together(test::ball(20, 40, 60), test::inside_out(test::ball(20, 40, 60))));
  const std::string bytes = test::binary_stl(mesh);
  const ScratchFile file("ball.stl", bytes);
  const TriangleMesh at_once = welded_stl(file.path());
  const TriangleMesh after = welded(plainly_read(bytes));
  CHECK(at_once.vertices_mm == after.vertices_mm);
  CHECK(at_once.triangles == after.triangles);
}

TEST_CASE("a large file, welded a stretch by each thread, has the same numbers",
          "[geometry][files]") {
  // Some corners of each stretch stand in the others: the balls are the same and one torus is the
  // other turned inside out.
  const TriangleMesh ball = test::ball(20, 150, 300), torus = test::torus(30, 9, 150, 300);
  const std::string bytes = test::binary_stl(
      test::together(test::together(ball, torus), test::together(test::inside_out(torus), ball)));
  REQUIRE(bytes.size() > std::size_t{16} << 20);
  const ScratchFile file("large.stl", bytes);
  const TriangleMesh at_once = welded_stl(file.path());
  const TriangleMesh after = welded(plainly_read(bytes));
  CHECK(at_once.vertices_mm == after.vertices_mm);
  CHECK(at_once.triangles == after.triangles);
}

TEST_CASE("what is no binary STL is not welded but refused", "[geometry][files]") {
  const std::string bytes = test::binary_stl(test::ball(20, 40, 60));
  const float nan = std::numeric_limits<float>::quiet_NaN();
  std::string broken = bytes;
  broken.replace(84 + 50 * 3000 + 16, 4, reinterpret_cast<const char*>(&nan), 4);
  const auto [content, says] = GENERATE_COPY(table<std::string, std::string>({
      {"", "is empty"},
      {bytes.substr(0, 5000), "states 4680 facets"},
      {test::text_stl(test::box({0, 0, 0}, {1, 1, 1})), "written as text"},
      {broken, "facet 3001: has a corner that is not a number"},
  }));
  const ScratchFile file("ball.stl", content);
  CHECK_THROWS_WITH(welded_stl(file.path()), Contains(says) && Contains("ball.stl"));
}

}  // namespace
}  // namespace brimwright::geometry
