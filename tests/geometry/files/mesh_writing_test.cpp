#include "geometry/files/mesh_writing.h"

#include "geometry/files/mesh_file.h"
#include "geometry/repair/mesh_checks.h"
#include "geometry/surface/enclosed_volume.h"
#include "scratch_file.h"
#include "solids.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <cmath>
#include <cstring>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using Json = nlohmann::json;

std::uint32_t number_at(const std::string& bytes, std::size_t at) {
  std::uint32_t number = 0;
  std::memcpy(&number, bytes.data() + at, sizeof number);
  return number;
}

float float_at(const std::string& bytes, std::size_t at) {
  float number = 0;
  std::memcpy(&number, bytes.data() + at, sizeof number);
  return number;
}

std::vector<ColouredPart> two_parts() {
  return {{"white layer", test::turned({{20, 0}, {25, 10}}, 16), {1, 1, 1, 1}},
          {"\"gold\" & Öl", test::box({-30, -20, 10}, {30, 20, 35}), {0.5F, 0.25F, 0, 0.5F}},
          {"nothing", {}, {0, 0, 0, 1}}};
}

/// The two chunks of a GLB, after plain checks of its container (glTF 2.0, section 4.4).
struct Chunks {
  Json json;
  std::string binary;
};

Chunks chunks_of(const std::string& glb) {
  REQUIRE(glb.size() >= 28);
  CHECK(glb.substr(0, 4) == "glTF");
  CHECK(number_at(glb, 4) == 2);
  CHECK(number_at(glb, 8) == glb.size());
  const std::uint32_t json_size = number_at(glb, 12);
  CHECK(number_at(glb, 16) == 0x4E4F534A);  // "JSON"
  CHECK(json_size % 4 == 0);
  const std::size_t second = 20 + json_size;
  REQUIRE(second + 8 <= glb.size());
  CHECK(number_at(glb, second + 4) == 0x004E4942);  // "BIN"
  CHECK(number_at(glb, second) % 4 == 0);
  CHECK(second + 8 + number_at(glb, second) == glb.size());
  return {Json::parse(glb.substr(20, json_size)), glb.substr(second + 8)};
}

}  // namespace

TEST_CASE("an STL that was written reads back as the same solid", "[geometry][writing]") {
  const TriangleMesh solid =
      GENERATE(test::box({-40, -30, 0}, {40, 30, 40}), test::torus(30, 8, 9, 17),
               test::moved(test::ball(21, 8, 12), {5, -7, 100}));
  const std::string bytes = binary_stl_of(solid);
  CHECK(bytes.size() == 84 + 50 * solid.triangles.size());
  CHECK(number_at(bytes, 80) == solid.triangles.size());
  CHECK_FALSE(bytes.starts_with("solid"));
  const test::ScratchFile file("written.stl", bytes);
  const MeshFile read = read_mesh(file.path(), {.unit = LengthUnit::millimetre, .up = {}});
  const CheckedSolid checked = checked_solid(read.mesh, file.path());
  CHECK(checked.solid.triangles.size() == solid.triangles.size());
  // Coordinates are rounded to single precision, 6e-8.
  CHECK_THAT(enclosed_volume(checked.solid) / cubic_millimetre,
             WithinRel(enclosed_volume(solid) / cubic_millimetre, 1e-5));
  CHECK(binary_stl_of(solid) == bytes);
}

TEST_CASE("an STL's normals stand on its facets", "[geometry][writing]") {
  const std::string bytes = binary_stl_of(test::box({0, 0, 0}, {1, 2, 3}));
  int upward = 0;
  for (std::size_t at = 84; at < bytes.size(); at += 50) {
    const double x = float_at(bytes, at), y = float_at(bytes, at + 4), z = float_at(bytes, at + 8);
    CHECK_THAT(std::hypot(x, y, z), WithinAbs(1, 1e-6));
    upward += z == 1 ? 1 : 0;
  }
  CHECK(upward == 2);  // the lid's two facets
}

TEST_CASE("a GLB keeps to the container's rules and gives each part its name and colour",
          "[geometry][writing]") {
  const auto [json, binary] = chunks_of(glb_of(two_parts()));
  CHECK(json["asset"]["version"] == "2.0");
  REQUIRE(json["nodes"].size() == 2);  // the empty part is left away
  CHECK(json["scenes"][0]["nodes"] == Json({0, 1}));
  CHECK(json["nodes"][1]["name"] == "\"gold\" & Öl");
  CHECK(json["buffers"][0]["byteLength"] == binary.size());
  CHECK_FALSE(json["buffers"][0].contains("uri"));
  for (const Json& view : json["bufferViews"]) {
    CHECK(view["byteOffset"].get<std::size_t>() % 4 == 0);
    CHECK(view["byteOffset"].get<std::size_t>() + view["byteLength"].get<std::size_t>() <=
          binary.size());
  }
  const Json& gold = json["materials"][1];
  // sRGB 0.5 and 0.25 in linear light, IEC 61966-2-1: 0.2140 and 0.0509.
  const auto colour = gold["pbrMetallicRoughness"]["baseColorFactor"].get<std::vector<double>>();
  CHECK_THAT(colour[0], WithinAbs(0.2140, 5e-5));
  CHECK_THAT(colour[1], WithinAbs(0.0509, 5e-5));
  CHECK(colour[3] == 0.5);
  CHECK(gold["alphaMode"] == "BLEND");
  CHECK_FALSE(json["materials"][0].contains("alphaMode"));
}

TEST_CASE("a GLB is in metres with +y up, and its boxes are those of its points",
          "[geometry][writing]") {
  const auto [json, binary] = chunks_of(glb_of(two_parts()));
  // -30..30, -20..20, 10..35 mm: x, z, -y by the specification's "+Y up, +Z forward".
  const Json& box =
      json["accessors"][json["meshes"][1]["primitives"][0]["attributes"]["POSITION"].get<int>()];
  CHECK(box["min"] == Json({-0.03F, 0.01F, -0.02F}));
  CHECK(box["max"] == Json({0.03F, 0.035F, 0.02F}));
  CHECK(box["count"] == 8);
  for (const Json& mesh : json["meshes"]) {
    const Json& indices = json["accessors"][mesh["primitives"][0]["indices"].get<int>()];
    const Json& points =
        json["accessors"][mesh["primitives"][0]["attributes"]["POSITION"].get<int>()];
    const Json& view = json["bufferViews"][indices["bufferView"].get<int>()];
    std::uint32_t highest = 0;
    for (std::size_t i = 0; i < indices["count"]; ++i)
      highest = std::max(highest, number_at(binary, view["byteOffset"].get<std::size_t>() + 4 * i));
    CHECK(highest + 1 == points["count"]);
  }
}

TEST_CASE("a GLB that was written reads back in millimetres with +z up", "[geometry][writing]") {
  const TriangleMesh cup = test::moved(test::obelisk(40, 30, 60, 50, 20), {3, 4, 5});
  const test::ScratchFile file("written.glb", glb_of({{"cup", cup, {1, 0, 0, 1}}}));
  const MeshFile read = read_mesh(file.path(), {});
  const CheckedSolid checked = checked_solid(read.mesh, file.path());
  CHECK_THAT(enclosed_volume(checked.solid) / cubic_millimetre,
             WithinRel(enclosed_volume(cup) / cubic_millimetre, 1e-5));
  const Box expected = bounding_box(cup), box = bounding_box(checked.solid);
  for (std::size_t i = 0; i < 3; ++i) {
    CHECK_THAT(box.low_mm[i], WithinAbs(expected.low_mm[i], 1e-5));
    CHECK_THAT(box.high_mm[i], WithinAbs(expected.high_mm[i], 1e-5));
  }
}

TEST_CASE("a GLB of several parts reads back as all of them", "[geometry][writing]") {
  const auto parts = two_parts();
  const test::ScratchFile file("layers.glb", glb_of(parts));
  const MeshFile read = read_mesh(file.path(), {});
  const Volume both = enclosed_volume(parts[0].mesh) + enclosed_volume(parts[1].mesh);
  CHECK_THAT(enclosed_volume(read.mesh) / cubic_millimetre,
             WithinRel(both / cubic_millimetre, 1e-5));
}

TEST_CASE("a GLB without parts, or with a broken name, is still a GLB", "[geometry][writing]") {
  const std::string none = glb_of({});
  CHECK(number_at(none, 8) == none.size());
  CHECK(number_at(none, 12) + 20 == none.size());
  CHECK(Json::parse(none.substr(20))["asset"]["version"] == "2.0");
  const auto [json, binary] = chunks_of(glb_of({{"\xff\xfe", test::ball(9, 4, 5), {1, 1, 1, 1}}}));
  CHECK(json["nodes"][0]["name"] == "\xef\xbf\xbd\xef\xbf\xbd");
  CHECK(glb_of(two_parts()) == glb_of(two_parts()));
}

}  // namespace brimwright::geometry
