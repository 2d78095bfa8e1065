#include "geometry/files/text_meshes.h"
#include "geometry/files/zip_archive.h"
#include "geometry/pockets/pocket_plumb.h"
#include "geometry/surface/place_table.h"
#include "geometry/surface/vectors.h"
#include "mesh_writers.h"
#include "moulds/mesh_survey.h"
#include "scratch_file.h"
#include "solids.h"
#include "survey_wishes.h"

#include <catch2/catch.hpp>

#include <bit>
#include <cmath>
#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

// Files whose writer wants the reader to work for ever. What is asserted is work that was counted,
// or the refusal; a clock would say more of the machine.

namespace brimwright::geometry {

using namespace moulds;

namespace {

using Catch::Matchers::Contains;

struct Counted {
  std::size_t* looks;
  void operator++() { ++*looks; }
};

// The hash that corners had before it was keyed: anyone could work it backwards.
constexpr std::uint64_t golden = 0x9e3779b97f4a7c15;

constexpr std::uint64_t inverse_of_golden() {
  std::uint64_t inverse = golden;  // Newton's steps double the bits that are right
  for (int i = 0; i < 6; ++i) inverse *= 2 - golden * inverse;
  return inverse;
}
static_assert(golden * inverse_of_golden() == 1);

/// The coordinates in single precision whose old hash was `goal` with `z` as the third.
std::array<float, 3> made_to_meet(std::uint64_t goal, float z) {
  goal ^= goal >> 32;
  std::uint64_t two = (goal * inverse_of_golden()) ^ std::bit_cast<std::uint32_t>(z);
  two ^= two >> 29 ^ two >> 58;
  two *= inverse_of_golden();
  return {std::bit_cast<float>(static_cast<std::uint32_t>(two >> 32)),
          std::bit_cast<float>(static_cast<std::uint32_t>(two)), z};
}

std::uint64_t old_hash_of(const std::array<float, 3>& p) {
  const auto bits = [](float x) { return std::uint64_t{std::bit_cast<std::uint32_t>(x)}; };
  std::uint64_t hash = (bits(p[0]) << 32 | bits(p[1])) * golden;
  hash ^= hash >> 29;
  hash = (hash ^ bits(p[2])) * golden;
  return hash ^ hash >> 32;
}

std::vector<std::array<float, 3>> corners_that_met(std::size_t count) {
  constexpr std::uint64_t goal = 0x0123456789abcdef;
  std::vector<std::array<float, 3>> corners;
  for (float z = 1; corners.size() < count; z = std::nextafter(z, 2.0F)) {
    const auto p = made_to_meet(goal, z);
    if (!std::isfinite(p[0]) || !std::isfinite(p[1])) continue;
    REQUIRE(old_hash_of(p) == goal);
    corners.push_back(p);
  }
  return corners;
}

}  // namespace

TEST_CASE("corners made to lie in one slot are told apart as quickly as any",
          "[geometry][hostile]") {
  const auto corners = corners_that_met(20'000);
  std::vector<std::vector<std::uint32_t>> numbered;
  for (const std::uint64_t seed : {0x9e3779b97f4a7c15, 0xd1b54a32d192ed03}) {
    std::array<std::uint64_t, 8> drawn{};
    for (std::uint64_t i = 0; i < 8; ++i) drawn[i] = (seed + i) * seed ^ (seed + i) << 31;
    const HashKeys keys(drawn);
    std::size_t looks = 0;
    PlaceTable<float, Counted> table(keys, {&looks});
    std::vector<std::uint32_t> numbers;
    for (int twice = 0; twice < 2; ++twice) {
      for (const auto& corner : corners) {
        table.reserve(1);
        numbers.push_back(table.number_of(corner, table.hash_of(corner)));
      }
    }
    // Each alone in its slot would be one look, and one more for each time that the table grows.
    // All in one slot: two hundred million.
    CHECK(looks < 8 * corners.size());
    CHECK(table.known() == corners);
    numbered.push_back(std::move(numbers));
  }
  CHECK(numbered[0] == numbered[1]);
}

TEST_CASE("the names in a package are not each held against each", "[geometry][hostile]") {
  constexpr std::size_t most = 65'000;  // a directory counts them in 16 bits
  std::vector<test::Part> parts;
  const std::string alike(40, 'a');
  for (std::size_t i = 0; i < most; ++i) parts.push_back({alike + std::to_string(i), ""});
  const std::string bytes = test::zip(parts, test::Packing::stored);
  const ZipArchive archive(bytes, "many.3mf");
  CHECK(archive.has("AAAA" + alike.substr(4) + "64999"));
  CHECK_FALSE(archive.has("65000"));
  // A sort compares some 16 times a name; each with each would be two thousand million.
  CHECK(archive.names_compared() < 40 * most);
}

TEST_CASE("a plumb line in a pile of ten thousand facets looks at a few", "[geometry][hostile]") {
  // Wedges that hang point down, one under the other, within one square of the grid from above.
  constexpr std::uint32_t wedges = 5000;
  TriangleMesh pile = test::box({-1000, -1000, -10}, {1000, 1000, -5});
  const auto first = static_cast<std::uint32_t>(pile.vertices_mm.size());
  const auto facets_before = static_cast<std::uint32_t>(pile.triangles.size());
  for (std::uint32_t i = 0; i < wedges; ++i) {
    const double z = 3.0 * i;
    const std::uint32_t tip = first + 4 * i;
    for (const Vector& p : {Vector{0, 0, z}, {1, 0, z + 2}, {-1, 1, z + 2}, {-1, -1, z + 2}})
      pile.vertices_mm.push_back(p);
    for (const auto& [a, b, c] : {std::array{1U, 2U, 3U}, {0U, 2U, 1U}, {0U, 3U, 2U}, {0U, 1U, 3U}})
      pile.triangles.push_back({tip + a, tip + b, tip + c});
  }
  const AirSurface surface = AirSurface::of_body(pile);
  PlumbLine plumb(surface);
  for (std::uint32_t i = 1; i < wedges; ++i)
    REQUIRE(plumb.facet_below(first + 4 * i) == facets_before + 4 * (i - 1));  // the top below
  CHECK(plumb.looked_at() < 4 * wedges);
}

TEST_CASE("more parts or hollows than any tray has are refused, not held against each other",
          "[geometry][hostile]") {
  const auto many = [](std::uint32_t count) {
    TriangleMesh mesh;
    for (std::uint32_t i = 0; i < count; ++i) {
      const double x = 3.0 * (i % 200), y = 3.0 * (i / 200);
      const std::uint32_t at = 4 * i;
      for (const Vector& p : {Vector{x, y, 0}, {x + 2, y, 0}, {x, y + 2, 0}, {x, y, 2}})
        mesh.vertices_mm.push_back(p);
      for (const auto& [a, b, c] :
           {std::array{0U, 2U, 1U}, {0U, 1U, 3U}, {1U, 2U, 3U}, {0U, 3U, 2U}})
        mesh.triangles.push_back({at + a, at + b, at + c});
    }
    return mesh;
  };
  const SurveyWishes wishes = moulds::test::in_mm(Role::cavity);
  const test::ScratchFile tray("tray.stl", test::binary_stl(many(1001)));
  CHECK_THROWS_WITH(surveyed(tray.path(), wishes), Contains("has 1001 separate cavities"));
  const test::ScratchFile dust("dust.stl", test::binary_stl(many(20'001)));
  CHECK_THROWS_WITH(surveyed(dust.path(), wishes), Contains("too many separate parts (20001)"));
}

TEST_CASE("a thousand facets at one edge are refused, not paired each with each",
          "[geometry][hostile]") {
  constexpr std::uint32_t wedges = 501;  // with two facets each at the edge
  TriangleMesh fan{.vertices_mm = {{0, 0, 0}, {0, 0, 10}}, .triangles = {}};
  for (std::uint32_t i = 0; i < wedges; ++i) {
    const double from = 2 * M_PI * i / wedges, to = 2 * M_PI * (i + 0.5) / wedges;
    const auto a = static_cast<std::uint32_t>(fan.vertices_mm.size()), b = a + 1;
    fan.vertices_mm.push_back({20 * std::cos(from), 20 * std::sin(from), 5});
    fan.vertices_mm.push_back({20 * std::cos(to), 20 * std::sin(to), 5});
    for (const auto& corners : {std::array{0U, a, 1U}, {0U, 1U, b}, {0U, b, a}, {1U, a, b}})
      fan.triangles.push_back(corners);
  }
  const SurveyWishes wishes = moulds::test::in_mm(Role::cavity);
  const test::ScratchFile file("fan.stl", test::binary_stl(fan));
  CHECK_THROWS_WITH(surveyed(file.path(), wishes), Contains("touch along an edge"));
}

TEST_CASE("rows of nothing in a PLY, which cost a file no byte, are refused",
          "[geometry][hostile]") {
  std::string head = "ply\nformat binary_little_endian 1.0\n";
  for (int i = 0; i < 1000; ++i) head += "element nothing 40000\n";
  head += "end_header\n";
  head += std::string(100'000, '\0');
  CHECK_THROWS_WITH(polygons_of_ply(head, "rows.ply"),
                    Contains("an element of which it does not say how it is written"));
}

TEST_CASE("long text is refused by its first bytes, with the way out", "[geometry][hostile]") {
  const std::string name = GENERATE("long.stl", "long.obj", "long.off", "long.ply", "long.gltf");
  const std::string start = name == "long.ply" ? "ply\nformat ascii 1.0\n" : "solid long\n";
  const test::ScratchFile file(name, start + std::string(5000, ' '));
  std::filesystem::resize_file(file.path(), std::uintmax_t{600} << 20);  // holds no such bytes
  CHECK_THROWS_WITH(read_mesh(file.path(), {.unit = LengthUnit::millimetre}),
                    Contains("is 600 MiB of text, and at most 128 MiB of text are read") &&
                        Contains("export it as a binary STL"));
}

}  // namespace brimwright::geometry
