#include "geometry/files/mesh_file.h"

#include "geometry/files/mesh_import.h"
#include "geometry/levels/level_curve.h"
#include "geometry/repair/mesh_checks.h"
#include "geometry/surface/enclosed_volume.h"
#include "mesh_writers.h"
#include "scratch_file.h"
#include "solids.h"

#include <catch2/catch.hpp>

#include <clocale>
#include <cstdlib>
#include <functional>
#include <locale>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using test::ScratchFile;

const MeshReading in_mm{.unit = LengthUnit::millimetre, .up = {}};
const MeshReading unsaid{};

/// 80 x 60 below, 60 x 30 above, 40 high: 128000 mm3 by the obelisk formula of CRC Standard
/// Mathematical Tables; beside the origin, so that no axis can be taken for another unnoticed.
TriangleMesh obelisk() { return test::moved(test::obelisk(80, 60, 60, 30, 40), {100, 25, -10}); }

struct Format {
  std::string name;
  std::function<std::string(const TriangleMesh&)> bytes;
  MeshReading reading;
  LengthUnit unit;
  double exactness_mm;
};

std::vector<Format> all_formats() {
  using namespace test;
  const auto mm = LengthUnit::millimetre;
  const double float_metres = 2e-5;  // half a step of a float near 0.1 m, in mm, and some
  const auto as_3mf = [](Packing packing) {
    return [packing](const TriangleMesh& mesh) {
      return three_mf(model_xml(mesh, "millimeter"), packing);
    };
  };
  return {
      {"a.stl", [](const auto& m) { return binary_stl(m); }, in_mm, mm, 0},
      {"b.STL", [](const auto& m) { return binary_stl(m, "solid but binary"); }, in_mm, mm, 0},
      {"c.stl", text_stl, in_mm, mm, 0},
      {"d.obj", obj, in_mm, mm, 0},
      {"e.ply", text_ply, in_mm, mm, 0},
      {"f.ply", binary_ply, in_mm, mm, 0},
      {"g.off", off, in_mm, mm, 0},
      {"h.3mf", as_3mf(Packing::stored), unsaid, mm, 0},
      {"i.3mf", as_3mf(Packing::deflated), unsaid, mm, 0},
      {"j.gltf", gltf, unsaid, LengthUnit::metre, float_metres},
      {"k.glb", glb, unsaid, LengthUnit::metre, float_metres},
  };
}

void check_is_the_obelisk(const MeshFile& read, double exactness_mm) {
  const Box box = bounding_box(read.mesh);
  const std::array<double, 3> low = {60, -5, -10}, high = {140, 55, 30};
  for (std::size_t i = 0; i < 3; ++i) {
    CHECK_THAT(box.low_mm[i], WithinAbs(low[i], exactness_mm));
    CHECK_THAT(box.high_mm[i], WithinAbs(high[i], exactness_mm));
  }
  CHECK(read.mesh.triangles.size() == 12);
  const LevelCurve curve = LevelCurve::of_solid(checked_solid(read.mesh, "test").solid);
  CHECK_THAT(curve.brimful() / cubic_millimetre, WithinRel(128000.0, 1e-12 + exactness_mm / 10));
  // 20 / 6 (4800 + 4 (75 x 52.5) + 70 x 45), the prismoidal rule
  CHECK_THAT(curve.volume_below(20 * millimetre) / cubic_millimetre,
             WithinRel(79000.0, 1e-12 + exactness_mm / 10));
}

TEST_CASE("one solid is read alike from every kind of file", "[geometry][files]") {
  for (const Format& format : all_formats()) {
    const ScratchFile file(format.name, format.bytes(obelisk()));
    INFO(format.name);
    const MeshFile read = read_mesh(file.path(), format.reading);
    CHECK(read.unit == format.unit);
    check_is_the_obelisk(read, format.exactness_mm);
  }
}

TEST_CASE("a comma locale changes nothing that is read", "[geometry][files]") {
  struct Comma : std::numpunct<char> {
    char do_decimal_point() const override { return ','; }
    char do_thousands_sep() const override { return '.'; }
    std::string do_grouping() const override { return "\3"; }
  };
  // The machine may have no comma locale, so one is made where its sources are; streams get commas
  // in any case.
  const ScratchFile folder("locales/none", "");
  const std::string locales = std::filesystem::path(folder.path()).parent_path().string();
  const std::string make =
      "localedef -i de_DE -f UTF-8 " + locales + "/de_DE.UTF-8 >/dev/null 2>&1";
  const bool made = std::system(make.c_str()) == 0;
  ::setenv("LOCPATH", locales.c_str(), 1);
  const bool set = std::setlocale(LC_ALL, "de_DE.UTF-8") != nullptr;
  ::unsetenv("LOCPATH");
  if (made) CHECK(set);
  if (!set) WARN("no comma locale here; only the streams' was tried");
  if (set) CHECK(std::string(std::localeconv()->decimal_point) == ",");
  const std::locale before = std::locale::global(std::locale(std::locale::classic(), new Comma));
  const TriangleMesh halves = test::scaled(obelisk(), 0.5);  // numbers with a point in them
  for (const Format& format : all_formats()) {
    const ScratchFile file(format.name, format.bytes(test::moved(halves, {0.25, 0.125, 0.5})));
    INFO(format.name);
    const Box box = bounding_box(read_mesh(file.path(), format.reading).mesh);
    CHECK_THAT(box.low_mm[0], WithinAbs(30.25, format.exactness_mm));
    CHECK_THAT(box.high_mm[1], WithinAbs(27.625, format.exactness_mm));
    CHECK_THAT(box.high_mm[2], WithinAbs(15.5, format.exactness_mm));
  }
  std::locale::global(before);
  std::setlocale(LC_ALL, "C");
}

TEST_CASE("our own STL reader and Assimp's read the same facets", "[geometry][files]") {
  const TriangleMesh solid = test::torus(30, 10, 12, 24);
  const std::string bytes = test::binary_stl(solid);
  const ScratchFile file("ring.stl", bytes);
  const TriangleMesh own = read_mesh(file.path(), in_mm).mesh;
  const TriangleMesh other = import_mesh(bytes, MeshFormat::stl, "ring.stl").mesh;
  REQUIRE(own.triangles.size() == solid.triangles.size());
  REQUIRE(other.triangles.size() == own.triangles.size());
  for (std::size_t i = 0; i < own.triangles.size(); ++i) {
    for (std::size_t corner = 0; corner < 3; ++corner) {
      CHECK(own.vertices_mm[own.triangles[i][corner]] ==
            other.vertices_mm[other.triangles[i][corner]]);
    }
  }
}

TEST_CASE("the unit said is the unit measured in", "[geometry][files]") {
  // An inch is 25.4 mm by definition (NIST SP 811, appendix B.8).
  const auto [unit, factor] = GENERATE(table<LengthUnit, double>({{LengthUnit::millimetre, 1},
                                                                  {LengthUnit::centimetre, 10},
                                                                  {LengthUnit::metre, 1000},
                                                                  {LengthUnit::inch, 25.4}}));
  const ScratchFile file("small.stl", test::binary_stl(test::box({0, 0, 0}, {1, 2, 4})));
  const MeshFile read = read_mesh(file.path(), {.unit = unit, .up = {}});
  CHECK(read.unit == unit);
  CHECK_THAT(bounding_box(read.mesh).high_mm[2], WithinRel(4 * factor, 1e-15));
}

TEST_CASE("a 3MF file's own unit holds, millimetres if it names none", "[geometry][files]") {
  // 3MF Core Specification 1.3, section 3.4 and ST_Unit.
  const auto [name, unit, factor] =
      GENERATE(table<std::string, LengthUnit, double>({{"", LengthUnit::millimetre, 1},
                                                       {"millimeter", LengthUnit::millimetre, 1},
                                                       {"centimeter", LengthUnit::centimetre, 10},
                                                       {"meter", LengthUnit::metre, 1000},
                                                       {"inch", LengthUnit::inch, 25.4},
                                                       {"foot", LengthUnit::millimetre, 304.8},
                                                       {"micron", LengthUnit::millimetre, 0.001}}));
  const double size = name == "micron" ? 30000 : 3;
  const auto cube = test::box({0, 0, 0}, {size, size, size});
  const ScratchFile file("cube.3mf", test::three_mf(test::model_xml(cube, name)));
  const MeshFile read = read_mesh(file.path(), unsaid);
  CHECK(read.unit == unit);
  CHECK_THAT(bounding_box(read.mesh).high_mm[0], WithinRel(size * factor, 1e-12));
  CHECK(read.remarks.size() == (name == "foot" || name == "micron" ? 1 : 0));
}

TEST_CASE("the parts of a 3MF build lie where the build puts them", "[geometry][files]") {
  // Row vectors times a 4 x 3 matrix, the last row being the shift (3MF Core, section 3.3): the
  // second item is moved by 200 mm and doubled along z; the third is object 1 again inside an
  // assembly.
  const std::string build =
      "<item objectid=\"1\"/><item objectid=\"1\" transform=\"1 0 0 0 1 0 0 0 2 200 0 0\"/>"
      "<item objectid=\"7\" transform=\"1 0 0 0 1 0 0 0 1 0 300 0\"/>";
  const std::string assembly =
      "<object id=\"7\" type=\"model\"><components><component objectid=\"1\" "
      "transform=\"1 0 0 0 1 0 0 0 1 0 0 5\"/></components></object>";
  const auto model = test::model_xml(test::box({0, 0, 0}, {10, 20, 30}), "", build, assembly);
  const ScratchFile file("three.3mf", test::three_mf(model));
  const MeshFile read = read_mesh(file.path(), unsaid);
  const Box box = bounding_box(read.mesh);
  CHECK(box.high_mm == std::array<double, 3>{210, 320, 60});
  CHECK_THAT(enclosed_volume(checked_solid(read.mesh, "three.3mf").solid) / millilitre,
             WithinRel(6.0 + 12.0 + 6.0, 1e-12));
  REQUIRE(read.remarks.size() == 1);
  CHECK_THAT(read.remarks[0].text, Contains("3 objects"));
}

TEST_CASE("a mirrored part still faces outward", "[geometry][files]") {
  const std::string build = "<item objectid=\"1\" transform=\"-1 0 0 0 1 0 0 0 1 0 0 0\"/>";
  const auto model = test::model_xml(test::box({0, 0, 0}, {10, 20, 30}), "", build);
  const ScratchFile file("mirrored.3mf", test::three_mf(model));
  CHECK_THAT(enclosed_volume(read_mesh(file.path(), unsaid).mesh) / millilitre,
             WithinRel(6.0, 1e-12));
}

TEST_CASE("the direction said to be up comes to point up", "[geometry][files]") {
  const auto [name, low, high] = GENERATE(table<std::string, double, double>({{"+x", 1, 4},
                                                                              {"-x", -4, -1},
                                                                              {"+y", 2, 7},
                                                                              {"-y", -7, -2},
                                                                              {"+z", 3, 11},
                                                                              {"-z", -11, -3}}));
  const auto solid = test::box({1, 2, 3}, {4, 7, 11});
  const ScratchFile file("box.stl", test::binary_stl(solid));
  const MeshFile read =
      read_mesh(file.path(), {.unit = LengthUnit::millimetre, .up = axis(name, Place{})});
  const Box box = bounding_box(read.mesh);
  INFO(name);
  CHECK(name_of(read.up) == name);
  CHECK(box.low_mm[2] == low);
  CHECK(box.high_mm[2] == high);
  // Turned, never mirrored: 3 x 5 x 8 is still enclosed from outside.
  CHECK_THAT(enclosed_volume(read.mesh) / cubic_millimetre, WithinRel(120.0, 1e-12));
}

TEST_CASE("glTF has +y up unless told otherwise, and says so", "[geometry][files]") {
  // glTF 2.0 specification, section 3.4: +Y up, metres.
  const ScratchFile file("box.glb", test::glb(test::box({0, 0, 0}, {10, 20, 40})));
  const MeshFile standard = read_mesh(file.path(), unsaid);
  CHECK_THAT(bounding_box(standard.mesh).high_mm[2], WithinAbs(40.0, 1e-5));
  REQUIRE(standard.remarks.size() == 1);
  CHECK_THAT(standard.remarks[0].text, Contains("+y up"));
  const MeshFile told = read_mesh(file.path(), {.unit = {}, .up = Axis::plus_z});
  CHECK_THAT(bounding_box(told.mesh).high_mm[1], WithinAbs(40.0, 1e-5));
  CHECK(told.remarks.empty());
}

TEST_CASE("quads, comments and several objects are read too", "[geometry][files]") {
  const std::string cube_corners =
      "v 0 0 0\nv 10 0 0\nv 10 10 0\nv 0 10 0\nv 0 0 10\nv 10 0 10\nv 10 10 10\nv 0 10 10\n";
  const std::string cube_faces =
      "f 4 3 2 1\nf 5 6 7 8\nf 1 2 6 5\nf 2 3 7 6\nf 3 4 8 7\nf 4 1 5 8\n";
  const std::string far_corners =
      "v 50 0 0\nv 60 0 0\nv 60 10 0\nv 50 10 0\nv 50 0 10\nv 60 0 10\nv 60 10 10\nv 50 10 10\n";
  const std::string counted_back =
      "f -5 -6 -7 -8\nf -4 -3 -2 -1\nf -8 -7 -3 -4\nf -7 -6 -2 -3\nf -6 -5 -1 -2\nf -5 -8 -4 -1\n";
  const std::string off_cube =
      "OFF # a cube\n# counts\n8 6 12\n0 0 0\n10 0 0\n10 10 0\n0 10 0\n0 0 10\n10 0 10\n10 10 10\n"
      "0 10 10\n4 3 2 1 0\n4 4 5 6 7\n4 0 1 5 4\n4 1 2 6 5\n4 2 3 7 6\n4 3 0 4 7\n";
  const auto [name, bytes, expected_ml] = GENERATE_COPY(table<std::string, std::string, double>(
      {{"quads.obj", cube_corners + cube_faces, 1.0},
       {"two.obj", cube_corners + "o one\n" + cube_faces + "o two\n" + far_corners + counted_back,
        2.0},
       {"comments.off", off_cube, 1.0}}));
  INFO(name);
  const ScratchFile file(name, bytes);
  const MeshFile read = read_mesh(file.path(), in_mm);
  CHECK_THAT(enclosed_volume(checked_solid(read.mesh, name).solid) / millilitre,
             WithinRel(expected_ml, 1e-12));
}

TEST_CASE("units and directions are read by name", "[geometry]") {
  for (const std::string unit : {"mm", "cm", "m", "in"}) {
    CHECK(name_of(length_unit(unit, Place{})) == unit);
  }
  for (const std::string up : {"+x", "-x", "+y", "-y", "+z", "-z"}) {
    CHECK(name_of(axis(up, Place{})) == up);
  }
  const Place option{.file = "command line", .field = "--unit"};
  CHECK_THROWS_WITH(
      length_unit("furlong", option),
      "command line: --unit: \"furlong\" is not a unit of length known here; give mm, "
      "cm, m or in");
  CHECK_THROWS_WITH(axis("up", Place{.file = "command line", .field = "--up"}), Contains("+x, -x"));
}

}  // namespace
}  // namespace brimwright::geometry
