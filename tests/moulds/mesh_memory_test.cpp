#include "moulds/mesh_memory.h"

#include "moulds/library.h"
#include "moulds/mesh_reading.h"
#include "moulds/mould_file.h"
#include "scratch_folder.h"

#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>
#include <future>
#include <sstream>
#include <thread>

using namespace brimwright;
using namespace brimwright::moulds;

namespace {

namespace fs = std::filesystem;

const fs::path meshes = fs::path(BRIMWRIGHT_SOURCE_DIR) / "meshes";
const SurveyWishes in_mm = {.reading = {.unit = geometry::LengthUnit::millimetre},
                            .role = Role::cavity};

std::string bytes_of(const fs::path& path) {
  std::ostringstream bytes;
  bytes << std::ifstream(path, std::ios::binary).rdbuf();
  return bytes.str();
}

/// Files that changed just now are not remembered: the file system's clock could hide a change.
std::string settled(const std::string& path) {
  std::this_thread::sleep_for(std::chrono::milliseconds(40));
  return path;
}

double brimful_ml(const MeshCavities& cavities) {
  return cavities.typical().curve.brimful() / millilitre;
}

}  // namespace

TEST_CASE("a mesh once measured is known until its file changes", "[moulds][memory]") {
  const ScratchFolder folder;
  const std::string path = settled(folder.write("cup.stl", bytes_of(meshes / "twisted_cup.stl")));
  MeshMemory memory;
  CHECK_THROWS_AS(memory.measured(path, in_mm, true), NotYetMeasured);
  const double first = brimful_ml(memory.measured(path, in_mm, false));
  CHECK(brimful_ml(memory.measured(path, in_mm, true)) == first);
  CHECK(first == brimful_ml(measured_mesh(path, in_mm)));

  settled(folder.write("cup.stl", bytes_of(meshes / "shell_pebble.stl")));
  CHECK_THROWS_AS(memory.measured(path, in_mm, true), NotYetMeasured);
  CHECK(brimful_ml(memory.measured(path, in_mm, false)) ==
        brimful_ml(measured_mesh((meshes / "shell_pebble.stl").string(), in_mm)));
}

TEST_CASE("a mesh measured in millimetres is not known in inches", "[moulds][memory]") {
  const ScratchFolder folder;
  const std::string path = settled(folder.write("cup.stl", bytes_of(meshes / "twisted_cup.stl")));
  MeshMemory memory;
  const double in_millimetres = brimful_ml(memory.measured(path, in_mm, false));
  const SurveyWishes in_inches = {.reading = {.unit = geometry::LengthUnit::inch},
                                  .role = Role::cavity};
  CHECK_THROWS_AS(memory.measured(path, in_inches, true), NotYetMeasured);
  // Cubes of inches: 25.4^3 times as much.
  CHECK(brimful_ml(memory.measured(path, in_inches, false)) ==
        Approx(in_millimetres * 16387.064).epsilon(1e-9));
}

TEST_CASE("a mesh that was refused is refused again at once, in the same words",
          "[moulds][memory]") {
  const ScratchFolder folder;
  const std::string path = settled(folder.write("cup.stl", "no mesh at all"));
  MeshMemory memory;
  const auto complaint = [&](bool only_remembered) -> std::string {
    try {
      memory.measured(path, in_mm, only_remembered);
    } catch (const UserError& error) {
      return error.what();
    }
    return "";
  };
  const std::string first = complaint(false);
  CHECK(first.starts_with(path + ": "));
  CHECK(complaint(true) == first);
  settled(folder.write("cup.stl", bytes_of(meshes / "twisted_cup.stl")));
  CHECK_NOTHROW(memory.measured(path, in_mm, false));
}

TEST_CASE("the meshes least lately used are forgotten first", "[moulds][memory]") {
  const ScratchFolder folder;
  const std::string bytes = bytes_of(meshes / "twisted_cup.stl");
  std::vector<std::string> paths;
  for (const char* name : {"a.stl", "b.stl", "c.stl"}) paths.push_back(folder.write(name, bytes));
  settled(paths.back());
  const std::size_t facets = measured_mesh(paths[0], in_mm).survey.mesh.triangles.size();
  MeshMemory memory(2 * facets);
  memory.measured(paths[0], in_mm, false);
  memory.measured(paths[1], in_mm, false);
  memory.measured(paths[0], in_mm, true);  // used again, so b goes
  memory.measured(paths[2], in_mm, false);
  CHECK(memory.count() == 2);
  CHECK_NOTHROW(memory.measured(paths[0], in_mm, true));
  CHECK_THROWS_AS(memory.measured(paths[1], in_mm, true), NotYetMeasured);
}

TEST_CASE("a mesh larger than all there is room for is remembered until the next",
          "[moulds][memory]") {
  const ScratchFolder folder;
  const std::string bytes = bytes_of(meshes / "twisted_cup.stl");
  const std::string first = folder.write("a.stl", bytes), second = folder.write("b.stl", bytes);
  settled(second);
  MeshMemory memory(1);
  memory.measured(first, in_mm, false);
  CHECK_NOTHROW(memory.measured(first, in_mm, true));
  memory.measured(second, in_mm, false);
  CHECK_THROWS_AS(memory.measured(first, in_mm, true), NotYetMeasured);
}

TEST_CASE("a mould of a body is the same from memory, its solid too", "[moulds][memory]") {
  const std::string path = (fs::path(BRIMWRIGHT_SOURCE_DIR) / "moulds/six_cup_tray.json").string();
  const Library fresh{BRIMWRIGHT_SOURCE_DIR, {}};
  Library remembering = fresh;
  remembering.memory = std::make_shared<MeshMemory>();
  const Mould plain = read_mould(path, fresh);
  read_mould(path, remembering);
  remembering.only_remembered = true;
  const Mould again = read_mould(path, remembering);
  const Mould third = read_mould(path, remembering);
  CHECK(again.curve.brimful() == plain.curve.brimful());
  CHECK(again.cavities == plain.cavities);
  CHECK(again.mesh->vertices_mm == plain.mesh->vertices_mm);
  CHECK(again.mesh->triangles == plain.mesh->triangles);
  CHECK(again.mesh == third.mesh);  // cut out once
}

TEST_CASE("asked by several at once, a mesh is measured for all of them", "[moulds][memory]") {
  const std::string path = (meshes / "six_pocket_tray.stl").string();
  MeshMemory memory;
  std::vector<std::future<double>> answers;
  for (int i = 0; i < 8; ++i)
    answers.push_back(std::async(std::launch::async,
                                 [&] { return brimful_ml(memory.measured(path, in_mm, false)); }));
  const double expected = brimful_ml(measured_mesh(path, in_mm));
  for (auto& answer : answers) CHECK(answer.get() == expected);
  CHECK(memory.count() == 1);
}
