// The shipped moulds and meshes.

#include "geometry/files/mesh_file.h"
#include "geometry/repair/mesh_checks.h"
#include "geometry/surface/enclosed_volume.h"
#include "moulds/mould_file.h"
#include "moulds/shape.h"
#include "moulds/shape_reading.h"
#include "scratch_folder.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace brimwright::moulds {
namespace {

namespace fs = std::filesystem;
using Catch::Matchers::WithinRel;

const fs::path shipped = BRIMWRIGHT_SOURCE_DIR;

std::vector<fs::path> catalogue() {
  std::vector<fs::path> files;
  for (const auto& entry : fs::directory_iterator(shipped / "moulds"))
    if (entry.path().extension() == ".json") files.push_back(entry.path());
  std::sort(files.begin(), files.end());
  return files;
}

std::string content(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

}  // namespace

TEST_CASE("every mould of the catalogue reads and is one a maker could own",
          "[moulds][catalogue]") {
  const Library library{.shipped = shipped.string(), .folders = {}};
  CHECK(catalogue().size() >= 14);
  for (const fs::path& path : catalogue()) {
    CAPTURE(path.string());
    const Mould mould = read_mould(path.string(), library);
    const double ml = mould.curve.brimful() / millilitre;
    // From a bead of 1 ml to a slab of 5 l: common practice, no source.
    CHECK((ml >= 1 && ml <= 5000));
    CHECK((mould.curve.height() > 5 * millimetre && mould.curve.height() < 120 * millimetre));
    CHECK_FALSE(mould.name.empty());
    CHECK_FALSE(mould.description.empty());
    for (const Remark& remark : mould.remarks) {
      // The lettered bar is there to show what water finds, and a cup whose flutes twist leans over
      // itself; nothing else may need a caution.
      CAPTURE(remark.text);
      const bool twists =
          path.filename() == "twisted_cup.json" && remark.text.starts_with("Undercut");
      CHECK((twists || path.filename() == "lettered_bar.json"));
    }
  }
}

TEST_CASE("an undercut holds a cast fast in a stiff mould, not in one that bends", "[moulds]") {
  const Library library{.shipped = shipped.string(), .folders = {}};
  const std::string path = (shipped / "moulds/twisted_cup.json").string();
  std::ifstream file(path);
  std::string text((std::istreambuf_iterator<char>(file)), {});
  const auto severity = [&] {
    for (const Remark& remark : read_mould(Fields::parse(text, path), library).remarks)
      if (remark.text.starts_with("Undercut: ")) return name_of(remark.severity);
    return std::string("not told");
  };
  CHECK(severity() == "note");
  const std::string bends = "\"bends\": true,";
  REQUIRE(text.find(bends) != std::string::npos);
  text.erase(text.find(bends), bends.size());
  CHECK(severity() == "caution");
}

TEST_CASE("the catalogue shows every kind of shape, and two meshes", "[moulds][catalogue]") {
  std::set<std::size_t> kinds;
  int meshes = 0;
  for (const fs::path& path : catalogue()) {
    const Fields fields = Fields::read(path.string());
    if (const auto shape = fields.optional_object("shape"))
      kinds.insert(read_shape(*shape).index());
    if (fields.has("mesh")) ++meshes;
  }
  CHECK(kinds.size() == std::variant_size_v<Shape>);
  CHECK(meshes >= 2);
}

TEST_CASE("the schema offers an editor the very keys that the catalogue's shapes use",
          "[moulds][catalogue]") {
  const fs::path schema = shipped / "src/schemas/mould.schema.json";
  const Fields kinds = Fields::read(schema.string()).object("$defs");
  std::map<std::string, std::set<std::string>> used;
  for (const fs::path& path : catalogue())
    if (const auto shape = Fields::read(path.string()).optional_object("shape"))
      for (const std::string& key : shape->keys()) used[shape->text("kind")].insert(key);
  CHECK(used.size() == std::variant_size_v<Shape>);
  for (auto& [kind, keys] : used) {
    CAPTURE(kind);
    keys.insert("confirmed");  // what keeps a measure far from usual: no shipped shape needs it
    const auto offered = kinds.object(kind).object("properties").keys();
    CHECK(keys == std::set<std::string>(offered.begin(), offered.end()));
  }
}

TEST_CASE("the shipped meshes hold what their README says", "[moulds][catalogue]") {
  // Exact rational arithmetic on the files' numbers, and the smooth shapes' formulas:
  // meshes/README.md.
  struct Row {
    const char* file;
    double facets_mm3, smooth_mm3;
  };
  const auto row = GENERATE(values<Row>({
      {"twisted_cup.stl", 86836.03744139, 86882.60025965},
      {"shell_pebble.stl", 33382.19073426, 33418.91113573},
  }));
  CAPTURE(row.file);
  const std::string path = (shipped / "meshes" / row.file).string();
  const auto read = geometry::read_mesh(path, {.unit = geometry::LengthUnit::millimetre, .up = {}});
  const auto checked = geometry::checked_solid(read.mesh, path);
  const Volume volume = geometry::enclosed_volume(checked.solid);
  CHECK(checked.remarks.empty());
  CHECK_THAT(volume / cubic_millimetre, WithinRel(row.facets_mm3, 1e-12));
  CHECK_THAT(volume / cubic_millimetre, WithinRel(row.smooth_mm3, 2e-3));
  const Mould mould = mould_of_mesh(
      path, {.reading = {.unit = geometry::LengthUnit::millimetre}, .role = Role::cavity});
  CHECK_THAT(mould.curve.brimful() / cubic_millimetre, WithinRel(row.facets_mm3, 1e-11));
}

TEST_CASE("the shipped tray is read as a mould's body, its pockets being the mould's cavities",
          "[moulds][catalogue]") {
  const Library library{.shipped = shipped.string(), .folders = {}};
  const Mould tray = read_mould((shipped / "moulds/six_cup_tray.json").string(), library);
  CHECK(tray.cavities == 6);
  // A frustum between regular 48-gons of radius 20 and 25 mm, 25 mm apart: meshes/README.md.
  const double expected_mm3 = 24 * std::sin(2 * pi / 48) * 25 / 3 * (400 + 500 + 625);
  CHECK_THAT(tray.curve.brimful() / cubic_millimetre, WithinRel(expected_mm3, 1e-6));
  CHECK_THAT(tray.floor / millimetre, WithinRel(5.0, 1e-6));
}

TEST_CASE("the shipped meshes are what their generator writes, byte for byte",
          "[moulds][catalogue]") {
  const ScratchFolder folder;
  const std::string command = "\"" BRIMWRIGHT_MAKE_MESHES "\" \"" + folder.path().string() + "\"";
  REQUIRE(std::system(command.c_str()) == 0);
  for (const char* name : {"twisted_cup.stl", "shell_pebble.stl", "six_pocket_tray.stl"}) {
    CAPTURE(name);
    const std::string made = content(folder.path() / name);
    CHECK(made.size() > 84);
    CHECK((made == content(shipped / "meshes" / name)));
  }
}

}  // namespace brimwright::moulds
