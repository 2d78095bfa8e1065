#include "geometry/levels/stl_scan.h"

#include "geometry/files/input_file.h"
#include "geometry/files/mapped_file.h"
#include "geometry/files/mesh_file.h"
#include "geometry/files/stl_blocks.h"
#include "geometry/levels/stl_scan_kernel.h"
#include "geometry/surface/enclosed_volume.h"
#include "mesh_writers.h"
#include "scratch_file.h"
#include "solids.h"
#include "units/user_error.h"

#include <catch2/catch.hpp>
#include <fcntl.h>
#include <rapidcheck/catch.h>
#include <unistd.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <limits>
#include <random>
#include <string>
#include <vector>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::Contains;
using Catch::Matchers::WithinRel;
using test::ScratchFile;

constexpr std::size_t facet_size = 50;  // of a binary STL, after 84 bytes (3D Systems, 1989)

StlScan scan_of(const std::string& bytes) {
  const ScratchFile file("mesh.stl", bytes);
  return scanned_stl(file.path());
}

StlScan scan_of(const TriangleMesh& mesh) { return scan_of(test::binary_stl(mesh)); }

TriangleMesh without_facets(TriangleMesh mesh, std::size_t first, std::size_t count) {
  const auto at = mesh.triangles.begin() + static_cast<std::ptrdiff_t>(first);
  mesh.triangles.erase(at, at + static_cast<std::ptrdiff_t>(count));
  return mesh;
}

TEST_CASE("a scanned box has the volume, area and size on its drawing", "[geometry][stl]") {
  // Binary fractions, which single precision holds: 60 x 40 x 25 at (100, -20, 1/4), on paper.
  const StlScan scan = scan_of(test::box({100, -20, 0.25}, {160, 20, 25.25}));
  CHECK(scan.facets == 12);
  CHECK_THAT(scan.volume / cubic_millimetre, WithinRel(60000.0, 1e-14));
  CHECK_THAT(scan.area / square_millimetre, WithinRel(2 * (60.0 * 40 + 40 * 25 + 60 * 25), 1e-14));
  CHECK(scan.box.low_mm == std::array<double, 3>{100, -20, 0.25});
  CHECK(scan.box.high_mm == std::array<double, 3>{160, 20, 25.25});
  CHECK(scan.closed == true);
}

TEST_CASE("what lies a metre from the origin scans as what lies on it", "[geometry][stl]") {
  // Steps of 1/16 stay exact in single precision up to 1024 mm, so only the place differs.
  const TriangleMesh here = test::obelisk(60, 40, 30.5, 20.25, 25);
  const StlScan near = scan_of(here), far = scan_of(test::moved(here, {1000, -1000, 1000}));
  CHECK_THAT(far.volume / cubic_millimetre, WithinRel(near.volume / cubic_millimetre, 1e-13));
  CHECK_THAT(far.area / square_millimetre, WithinRel(near.area / square_millimetre, 1e-13));
}

TEST_CASE("a million facets sum as well as a few", "[geometry][stl]") {
  // A box of 64 x 64 x 32, its sides cut 9 times into four: 3.1 million equal facets whose corners
  // single precision holds exactly. Volume and area on paper.
  TriangleMesh mesh = test::box({0, 0, 0}, {64, 64, 32});
  for (int cuts = 0; cuts < 9; ++cuts) mesh = test::refined(mesh);
  const StlScan scan = scan_of(mesh);
  REQUIRE(scan.facets == 12u << 18);
  CHECK_THAT(scan.volume / cubic_millimetre, WithinRel(64.0 * 64 * 32, 1e-13));
  CHECK_THAT(scan.area / square_millimetre, WithinRel(2.0 * 64 * 64 + 4 * 64 * 32, 1e-13));
  CHECK(scan.closed == true);
}

TEST_CASE("a scan agrees with the mesh as read", "[geometry][stl]") {
  const TriangleMesh mesh = test::turned_about_z(test::torus(40, 12.5, 90, 120), 0.3);
  const ScratchFile file("ring.stl", test::binary_stl(mesh));
  const StlScan scan = scanned_stl(file.path(), {.closedness = false});
  const TriangleMesh read = read_mesh(file.path(), {.unit = LengthUnit::millimetre, .up = {}}).mesh;
  CHECK_THAT(scan.volume / cubic_millimetre,
             WithinRel(enclosed_volume(read) / cubic_millimetre, 1e-12));
  CHECK(scan.box.low_mm == bounding_box(read).low_mm);
  CHECK(scan.box.high_mm == bounding_box(read).high_mm);
  CHECK_FALSE(scan.closed.has_value());
}

TEST_CASE("a solid turned inside out scans as closed, with its volume below nought",
          "[geometry][stl]") {
  const StlScan scan = scan_of(test::inside_out(test::box({0, 0, 0}, {4, 3, 2})));
  CHECK(scan.closed == true);
  CHECK_THAT(scan.volume / cubic_millimetre, WithinRel(-24.0, 1e-14));
}

TEST_CASE("a surface with anything amiss at an edge is not called closed", "[geometry][stl]") {
  const TriangleMesh cup = test::turned({{20, 0}, {30, 40}}, 32);
  TriangleMesh one_turned = cup;
  std::swap(one_turned.triangles[5][0], one_turned.triangles[5][1]);
  TriangleMesh doubled = cup;
  doubled.triangles.push_back(cup.triangles[7]);
  TriangleMesh jittered = test::without_sharing(cup);
  jittered.vertices_mm[10][0] += 1e-5;  // some last digits of single precision
  TriangleMesh tube = cup;
  std::erase_if(tube.triangles, [&](const auto& t) {
    const auto z = [&](int i) { return cup.vertices_mm[t[i]][2]; };
    return z(0) == z(1) && z(1) == z(2);
  });
  REQUIRE(tube.triangles.size() == 64);
  const auto [name, mesh] = GENERATE_COPY(table<std::string, TriangleMesh>(
      {{"a facet missing", without_facets(cup, 9, 1)},
       {"two neighbours missing", without_facets(cup, 2, 2)},
       {"a facet turned", one_turned},
       {"a facet twice", doubled},
       {"a corner out of place", jittered},
       {"both lids missing", tube},
       {"two solids, one open",
        test::together(test::box({100, 0, 0}, {110, 10, 10}), without_facets(cup, 0, 1))}}));
  INFO(name);
  CHECK(scan_of(mesh).closed == false);
}

TEST_CASE("how corners are shared, ordered or signed at zero does not open a surface",
          "[geometry][stl]") {
  TriangleMesh box = test::without_sharing(test::box({0, 0, 0}, {1, 1, 1}));
  for (std::size_t i = 0; i < box.vertices_mm.size(); i += 2) {
    for (double& x : box.vertices_mm[i]) x = x == 0 ? -0.0 : x;
  }
  CHECK(scan_of(box).closed == true);
  TriangleMesh ball = test::ball(20, 40, 60);
  std::shuffle(ball.triangles.begin(), ball.triangles.end(), std::mt19937(5));
  for (std::size_t i = 0; i < ball.triangles.size(); i += 3) {
    auto& [a, b, c] = ball.triangles[i];
    std::swap(a, b);
    std::swap(b, c);
  }
  CHECK(scan_of(ball).closed == true);
}

TEST_CASE("taking away any facets opens a surface", "[geometry][stl][law]") {
  const TriangleMesh ring = test::torus(30, 10, 12, 18);
  rc::prop("unless all are taken", [&] {
    TriangleMesh some = ring;
    const auto kept =
        *rc::gen::container<std::vector<bool>>(ring.triangles.size(), rc::gen::arbitrary<bool>());
    some.triangles.clear();
    for (std::size_t i = 0; i < kept.size(); ++i) {
      if (kept[i]) some.triangles.push_back(ring.triangles[i]);
    }
    RC_PRE(!some.triangles.empty());
    RC_ASSERT(*scan_of(some).closed == (some.triangles.size() == ring.triangles.size()));
  });
}

/// Facets of every size and place that single precision allows, as an STL holds them.
std::string wild_facets(std::size_t count, unsigned seed) {
  std::mt19937 random(seed);
  std::uniform_real_distribution<float> size(-60, 60), place(-1, 1);
  TriangleMesh mesh;
  for (std::uint32_t i = 0; i < count; ++i) {
    for (int corner = 0; corner < 3; ++corner) {
      const double scale = std::exp2(std::round(size(random)));
      mesh.vertices_mm.push_back(
          {scale * place(random), i % 5 == 0 ? 0.0 : scale * place(random), place(random)});
    }
    mesh.triangles.push_back({3 * i, 3 * i + 1, 3 * i + 2});
  }
  return test::binary_stl(mesh).substr(84);
}

TEST_CASE("processors with and without AVX2 compute the same bits", "[geometry][stl]") {
  const StlKernel* avx2 = avx2_stl_kernel();
  if (avx2 == nullptr) {
    WARN("this processor has no AVX2");
    return;
  }
  const StlKernel& plain = plain_stl_kernel();
  const std::size_t count = GENERATE(0, 1, 7, 8, 9, 31, 32, 200, 511, 512);
  const std::size_t columned = std::min(count, FacetColumns::most);
  const std::string facets = wild_facets(count, static_cast<unsigned>(count));
  INFO(count << " facets");
  StretchSums sums[2];
  CornerRange range[2];
  EdgeSums edges[2] = {};
  float low[2] = {9, 9}, high[2] = {-9, -9};
  std::vector<FacetColumns> columns(2);
  for (int i = 0; i < 2; ++i) {
    const StlKernel& kernel = i == 0 ? plain : *avx2;
    kernel.sum(facets.data(), count, {0.5, -3, 1e3}, sums[i], range[i]);
    kernel.sum_edges(facets.data(), count, edges[i]);
    kernel.columns(facets.data(), columned, -1.5, columns[i], low[i], high[i]);
  }
  CHECK(sums[0].six_volumes == sums[1].six_volumes);
  CHECK(sums[0].doubled_areas == sums[1].doubled_areas);
  CHECK(range[0].low == range[1].low);
  CHECK(range[0].high == range[1].high);
  CHECK(edges[0] == edges[1]);
  CHECK(low[0] == low[1]);
  CHECK(high[0] == high[1]);
  for (const auto part :
       {&FacetColumns::z1, &FacetColumns::z2, &FacetColumns::z3, &FacetColumns::area,
        &FacetColumns::mean, &FacetColumns::lower, &FacetColumns::upper}) {
    for (std::size_t i = 0; i < columned; ++i) {
      const double one = (columns[0].*part)[i], other = (columns[1].*part)[i];
      CHECK((one == other || (std::isnan(one) && std::isnan(other))));
    }
  }
  float widened_low[2] = {9, 9}, widened_high[2] = {-9, -9};
  plain.widen(facets.data(), count, widened_low[0], widened_high[0]);
  avx2->widen(facets.data(), count, widened_low[1], widened_high[1]);
  CHECK(widened_low[0] == widened_low[1]);
  CHECK(widened_high[0] == widened_high[1]);
}

std::string refusal_of(const std::string& bytes) {
  const ScratchFile file("mesh.stl", bytes);
  try {
    scanned_stl(file.path());
  } catch (const UserError& error) {
    CHECK(error.parts().file == file.path());
    CHECK_FALSE(error.parts().remedy.empty());
    return error.what();
  }
  return "not refused";
}

TEST_CASE("one corner that is not a number is found wherever it stands", "[geometry][stl]") {
  const std::string sound = test::binary_stl(test::ball(20, 30, 100));  // 5800 facets, three blocks
  REQUIRE(sound.size() > 84 + facet_size * 2 * StlBlocks::block_facets);
  const float bad =
      GENERATE(std::numeric_limits<float>::quiet_NaN(), std::numeric_limits<float>::infinity(),
               -std::numeric_limits<float>::infinity());
  const std::size_t facet = GENERATE(0, 1, 6, 2047, 2048, 5799);
  const std::size_t number = GENERATE(range(std::size_t{0}, std::size_t{9}));
  std::string stl = sound;
  stl.replace(84 + facet_size * facet + 12 + 4 * number, 4, reinterpret_cast<const char*>(&bad), 4);
  CHECK_THAT(refusal_of(stl), Contains("facet " + std::to_string(facet + 1) +
                                       ": has a corner that is not a number"));
}

TEST_CASE("what a scan cannot be sure of it refuses", "[geometry][stl]") {
  const std::string sound = test::binary_stl(test::box({0, 0, 0}, {1, 1, 1}));
  const auto [name, bytes, says] = GENERATE_COPY(table<std::string, std::string, std::string>(
      {{"empty", "", "is empty"},
       {"a few bytes", "solid", "is too short for an STL file"},
       {"cut short", sound.substr(0, sound.size() - 1), "states 12 facets, which take 684 bytes"},
       {"bytes to spare", sound + "x", "but has 685"},
       {"no facets", test::binary_stl({}), "holds no facets"},
       {"text", test::text_stl(test::box({0, 0, 0}, {1, 1, 1})), "is an STL written as text"}}));
  INFO(name);
  CHECK_THAT(refusal_of(bytes), Contains(says));
}

TEST_CASE("a binary STL whose header begins with solid is scanned as binary", "[geometry][stl]") {
  CHECK(scan_of(test::binary_stl(test::box({0, 0, 0}, {1, 1, 1}), "solid box")).facets == 12);
}

TEST_CASE("nobody cuts a mapped file short, nor is one mapped while somebody writes to it",
          "[geometry][stl]") {
  const std::string bytes = wild_facets(5000, 1);
  const ScratchFile scratch("mesh.stl", bytes);
  const InputFile file(scratch.path());
  auto map = file.mapped();
  if (map == nullptr) {
    WARN("files here cannot be leased");
    return;
  }
  CHECK(std::string(map->bytes().begin(), map->bytes().end()) == bytes);
  CHECK(open(scratch.path().c_str(), O_WRONLY | O_TRUNC | O_NONBLOCK) == -1);
  CHECK(std::filesystem::file_size(scratch.path()) == bytes.size());
  map.reset();
  const int writer = open(scratch.path().c_str(), O_WRONLY | O_NONBLOCK);
  REQUIRE(writer != -1);
  CHECK(file.mapped() == nullptr);
  CHECK(ftruncate(writer, 100) == 0);
  close(writer);
  CHECK(file.mapped() == nullptr);  // no longer as long as when it was opened
}

TEST_CASE("a file that is not there is refused", "[geometry][stl]") {
  CHECK_THROWS_AS(scanned_stl("/no such folder/mesh.stl"), UserError);
}

}  // namespace
}  // namespace brimwright::geometry
