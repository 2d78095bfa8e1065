#include "geometry/files/mesh_file.h"
#include "geometry/repair/mesh_checks.h"
#include "geometry/surface/enclosed_volume.h"
#include "mesh_writers.h"
#include "scratch_file.h"
#include "solids.h"
#include "units/question.h"

#include <catch2/catch.hpp>
#include <sys/stat.h>

#include <filesystem>
#include <limits>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::Contains;
using Catch::Matchers::WithinRel;
using test::ScratchFile;

const MeshReading in_mm{.unit = LengthUnit::millimetre, .up = {}};
const MeshReading unsaid{};

std::string refusal_of(const std::string& path, const MeshReading& reading) {
  try {
    read_mesh(path, reading);
  } catch (const UserError& error) {
    CHECK(error.parts().file == path);
    CHECK_FALSE(error.parts().problem.empty());
    CHECK_FALSE(error.parts().remedy.empty());
    return error.what();
  }
  return "not refused";
}

TriangleMesh box() { return test::box({0, 0, 0}, {60, 40, 25}); }

std::string cut(const std::string& bytes, std::size_t off_the_end) {
  return bytes.substr(0, bytes.size() - off_the_end);
}

std::string with(std::string bytes, const std::string& what, const std::string& instead) {
  const std::size_t at = bytes.find(what);
  REQUIRE(at != std::string::npos);
  return bytes.replace(at, what.size(), instead);
}

std::string with_float(std::string stl, std::size_t facet, float number) {
  return stl.replace(84 + 50 * facet + 12, 4, reinterpret_cast<const char*>(&number), 4);
}

struct Refused {
  std::string name, bytes;
  MeshReading reading;
  std::string says;
};

std::vector<Refused> broken_files() {
  using namespace test;
  const std::string stl = binary_stl(box());
  const std::string nothing = binary_stl({});
  const float nan = std::numeric_limits<float>::quiet_NaN();
  const float infinite = std::numeric_limits<float>::infinity();
  const std::string model = model_xml(box(), "inch");
  const auto cube = [](const char* unit) { return three_mf(model_xml(box(), unit)); };
  return {
      {"a.step", "ISO-10303-21;", in_mm, "not a kind of mesh file"},
      {"stl", stl, in_mm, "not a kind of mesh file"},
      {"empty.stl", "", in_mm, "is empty"},
      {"short.stl", stl.substr(0, 60), in_mm, "too short"},
      {"cut.stl", cut(stl, 7), in_mm, "states 12 facets, which take 684 bytes, but has 677"},
      {"cut-solid.stl", cut(binary_stl(box(), "solid box"), 50), in_mm, "states 12 facets"},
      {"more.stl", stl + "xyz", in_mm, "states 12 facets"},
      {"none.stl", nothing, in_mm, "holds no facets"},
      {"nan.stl", with_float(stl, 3, nan), in_mm, "facet 4: has a corner that is not a number"},
      {"inf.stl", with_float(stl, 11, -infinite), in_mm, "facet 12"},
      {"nan-text.stl", with(text_stl(box()), "vertex 0", "vertex nan"), in_mm, "not a number"},
      {"cut-text.stl", cut(text_stl(box()), 40), in_mm, "lacks \"endloop\""},
      {"hole-text.stl", with(text_stl(box()), "endfacet", "endface"), in_mm, "hole-text.stl"},
      {"word-text.stl", with(text_stl(box()), "vertex 0", "vertex x"), in_mm, "not a sound STL"},
      {"garbage.stl", std::string(500, '\xA7'), in_mm, "no STL file"},
      {"garbage.obj", std::string(500, '\xA7'), in_mm, "not a sound OBJ"},
      {"points.obj", "v 0 0 0\nv 1 0 0\nv 0 1 0\n", in_mm, "points.obj"},
      {"nan.obj", with(obj(box()), "v 0 ", "v nan "), in_mm, "not a number"},
      {"beyond.obj", obj(box()) + "f 1 2 99\n", in_mm, "beyond.obj"},
      {"garbage.ply", std::string(500, '\xA7'), in_mm, "not a sound PLY"},
      {"cut.ply", cut(text_ply(box()), 30), in_mm, "cut.ply"},
      {"cut-binary.ply", cut(binary_ply(box()), 30), in_mm, "cut-binary.ply"},
      {"many.ply", with(text_ply(box()), "vertex 8", "vertex 4000000000"), in_mm,
       "says it holds more"},
      {"headless.ply", text_ply(box()).substr(0, 60), in_mm, "not a sound PLY"},
      {"garbage.off", std::string(500, '\xA7'), in_mm, "not a sound OFF"},
      {"cut.off", cut(off(box()), 30), in_mm, "cut.off"},
      {"many.off", with(off(box()), "8 12 0", "8 999999999 0"), in_mm, "says it holds more"},
      {"garbage.3mf", std::string(500, '\xA7'), unsaid, "not a package"},
      {"cut.3mf", cut(cube("inch"), 30), unsaid, "package"},
      {"other.3mf", zip({{"word/document.xml", "<a/>"}}, Packing::stored), unsaid, "not a 3MF"},
      {"league.3mf", cube("league"), unsaid, "\"league\""},
      {"no-build.3mf", three_mf(model_xml(box(), "inch", "")), unsaid, "holds no facets"},
      {"xml.3mf", three_mf("<model unit=inch>"), unsaid, "not a sound 3MF"},
      {"paths.3mf", three_mf(with(model, "<item ", "<item p:path=\"/3D/b.model\" ")), unsaid,
       "no extension known here"},
      {"bomb.3mf", three_mf(model + std::string(30'000'000, ' ')), unsaid, "1000 times"},
      {"round.3mf",
       three_mf(model_xml(box(), "", "<item objectid=\"2\"/>",
                          "<object id=\"2\"><components><component objectid=\"2\"/></components>"
                          "</object>")),
       unsaid, "round.3mf"},
      {"garbage.gltf", std::string(500, '\xA7'), unsaid, "not a sound glTF"},
      {"cut.gltf", cut(gltf(box()), 30), unsaid, "not a sound glTF"},
      {"beside.gltf", with(gltf(box()), "data:application/octet-stream;base64,", "other.bin?"),
       unsaid, "another file, \"other.bin?"},
      {"garbage.glb", std::string(500, '\xA7'), unsaid, "not a sound GLB"},
      {"cut.glb", cut(glb(box()), 30), unsaid, "bytes but has"},
      {"old.glb", with(glb(box()), std::string("\2\0\0\0", 4), std::string("\1\0\0\0", 4)), unsaid,
       "version 1"},
      // what the maker said does not fit the file
      {"no-unit.stl", stl, unsaid, "60 x 40 x 25 mm"},
      {"no-unit2.stl", stl, unsaid, "unit \"mm\""},
      {"no-unit.obj", obj(box()), unsaid, "unit \"m\" or unit \"in\""},
      {"no-unit.ply", text_ply(box()), unsaid, "60 x 40 x 25 cm"},
      {"no-unit.off", off(box()), unsaid, "60 x 40 x 25 in, which is 1524 x 1016 x 635 mm"},
      {"inch.3mf", cube("inch"), in_mm, "is in inches, not in millimetres"},
      {"default.3mf",
       cube(""),
       {.unit = LengthUnit::inch, .up = {}},
       "says that it is in millimetres, not in inches"},
      {"metres.glb", glb(box()), in_mm, "is in metres, not in millimetres"},
      {"huge.stl", stl, {.unit = LengthUnit::metre, .up = {}}, "60000 x 40000 x 25000 mm"},
      {"tiny.stl", binary_stl(scaled(box(), 0.001)), in_mm, "check its unit"},
  };
}

TEST_CASE("a broken or unfitting mesh file is refused with its reason", "[geometry][files]") {
  for (const Refused& row : broken_files()) {
    INFO(row.name);
    const ScratchFile file(row.name, row.bytes);
    CHECK_THAT(refusal_of(file.path(), row.reading), Contains(row.says));
  }
}

struct Sound {
  std::string name, bytes;
  MeshReading reading;
};

std::vector<Sound> sound_files() {
  return {{"a.stl", test::binary_stl(box()), in_mm},
          {"b.stl", test::text_stl(box()), in_mm},
          {"c.obj", test::obj(box()), in_mm},
          {"d.ply", test::text_ply(box()), in_mm},
          {"e.ply", test::binary_ply(box()), in_mm},
          {"f.off", test::off(box()), in_mm},
          {"g.3mf", test::three_mf(test::model_xml(box(), ""), test::Packing::stored), unsaid},
          {"h.gltf", test::gltf(box()), unsaid},
          {"i.glb", test::glb(box()), unsaid}};
}

/// The volume in ml, or nothing if the file is refused as it should be; anything else is thrown on.
std::optional<double> volume_or_refusal(const Sound& file) {
  const ScratchFile scratch(file.name, file.bytes);
  try {
    const MeshFile read = read_mesh(scratch.path(), file.reading);
    return enclosed_volume(checked_solid(read.mesh, scratch.path()).solid) / millilitre;
  } catch (const UserError&) {
    return std::nullopt;
  }
}

TEST_CASE("a mesh file cut short anywhere never gives a wrong volume", "[geometry][files]") {
  for (const Sound& file : sound_files()) {
    for (std::size_t off = 1; off < file.bytes.size(); off += 1 + file.bytes.size() / 60) {
      const auto volume = volume_or_refusal({file.name, cut(file.bytes, off), file.reading});
      INFO(file.name << " without its last " << off << " bytes");
      // Without its last line's end, a text is still whole: 60 x 40 x 25 mm are 60 ml.
      if (volume) CHECK_THAT(*volume, WithinRel(60.0, 1e-6));
    }
  }
}

TEST_CASE("a mesh file with scrambled bytes is read or refused, never worse", "[geometry][files]") {
  for (const Sound& file : sound_files()) {
    for (std::uint32_t round = 1; round <= 40; ++round) {
      std::string scrambled = file.bytes;
      std::uint32_t random = 2654435761U * round;
      for (std::uint32_t i = 0; i < 1 + round % 6; ++i) {
        random = 1664525U * random + 1013904223U;  // Numerical Recipes, chapter 7: a fixed sequence
        scrambled[random % scrambled.size()] = static_cast<char>(random >> 24);
      }
      INFO(file.name << ", round " << round);
      CHECK_NOTHROW(volume_or_refusal({file.name, scrambled, file.reading}));
    }
  }
}

TEST_CASE("a missing unit is asked for with the size that each would make", "[geometry][files]") {
  const ScratchFile file("cup.stl", test::binary_stl(box()));
  try {
    read_mesh(file.path(), {});
    FAIL("a mesh without a unit was read");
  } catch (const Question& question) {
    CHECK_THAT(question.what(), Contains("60 x 40 x 25 mm"));
    CHECK(question.in_parts().asks == "unit");
    const auto& choices = question.in_parts().choices;
    REQUIRE(choices.size() == 4);  // mm, cm, m, in
    CHECK(choices.front().answers.front().value == "mm");
    CHECK((*choices.front().size)[0] / millimetre == Approx(60));
    CHECK(choices.back().answers.front().value == "in");
    CHECK((*choices.back().size)[2] / millimetre == Approx(25 * 25.4));
  }
}

TEST_CASE("only ordinary files are opened", "[geometry][files]") {
  const ScratchFile file("there.stl", test::binary_stl(box()));
  const std::string folder = std::filesystem::path(file.path()).parent_path().string();
  CHECK_THAT(refusal_of(folder + "/missing.stl", in_mm), Contains("is not there"));
  CHECK_THAT(refusal_of(file.path() + "/under.stl", in_mm), Contains("is not there"));
  std::filesystem::create_directory(folder + "/folder.stl");
  CHECK_THAT(refusal_of(folder + "/folder.stl", in_mm), Contains("is a folder"));
  REQUIRE(::mkfifo((folder + "/pipe.stl").c_str(), 0600) == 0);
  CHECK_THAT(refusal_of(folder + "/pipe.stl", in_mm), Contains("not an ordinary file"));
  std::filesystem::create_symlink("/dev/zero", folder + "/zero.stl");
  CHECK_THAT(refusal_of(folder + "/zero.stl", in_mm), Contains("not an ordinary file"));
}

}  // namespace
}  // namespace brimwright::geometry
