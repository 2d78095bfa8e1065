// Times the whole program as a maker meets it, each case in one interleaved run, and prints the
// medians.
#include "geometry/files/mesh_writing.h"
#include "moulds/shape.h"
#include "moulds/shape_solid.h"
#include "units/quantity.h"
#include "whole_process.h"

#include <algorithm>
#include <cstdio>
#include <exception>
#include <filesystem>
#include <fstream>
#include <stdexcept>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;
using namespace brimwright;

std::string text_of(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::string text((std::istreambuf_iterator<char>(in)), {});
  if (!in) throw std::runtime_error(path.string() + " could not be read");
  return text;
}

/// std::runtime_error where `part`, which an example has to have, is not there.
void replace(std::string& text, const std::string& part, const std::string& by) {
  const std::size_t at = text.find(part);
  if (at == std::string::npos) throw std::runtime_error("an example no longer says " + part);
  text.replace(at, part.size(), by);
}

/// A dome of about `facets` facets, with a mould and a run that pour it.
fs::path run_with_mesh(const fs::path& folder, std::size_t facets) {
  const moulds::Dome dome{70 * millimetre, 40 * millimetre};
  int round = 32;
  geometry::TriangleMesh mesh = moulds::solid_of(dome, round);
  while (mesh.triangles.size() < facets) mesh = moulds::solid_of(dome, round = round * 11 / 10 + 1);
  std::printf("mesh of %zu facets\n", mesh.triangles.size());
  write_file(folder / "dome.stl", geometry::binary_stl_of(mesh));
  write_file(folder / "dome.json",
             R"({"schema": "brimwright.mould/2", "name": "Dome", "cavities": 6, "owned": 1,
                 "mesh": {"file": "dome.stl", "unit": "mm", "role": "cavity", "up": "+z"}})");
  fs::copy(fs::path(BRIMWRIGHT_SOURCE_DIR) / "examples/meadow_base.formula.json", folder);
  std::string text = text_of(fs::path(BRIMWRIGHT_SOURCE_DIR) / "examples/plain_bars.run.json");
  replace(text, "moulds/plain_bar.json", "dome.json");
  write_file(folder / "dome.run.json", text);
  return folder / "dome.run.json";
}

/// The same pour with a swept topping of about 20 thousand facets and three buried balls of 10
/// thousand each, set at given places; and a bowl in which places for twelve are searched.
fs::path decorated_run(const fs::path& folder) {
  const fs::path examples = fs::path(BRIMWRIGHT_SOURCE_DIR) / "examples";
  int round = 32;
  const moulds::Ball ball{12 * millimetre};
  while (moulds::solid_of(ball, round).triangles.size() < 10'000) ++round;
  const auto mesh = moulds::solid_of(ball, round);
  std::printf("embeds of %zu facets\n", mesh.triangles.size());
  write_file(folder / "ball.stl", geometry::binary_stl_of(mesh));
  write_file(folder / "ball.json",
             R"({"schema": "brimwright.mould/2", "name": "Ball", "cavities": 12, "owned": 1,
                 "mesh": {"file": "ball.stl", "unit": "mm", "role": "cavity", "up": "+z"}})");
  fs::copy(examples / "cloud_topping.formula.json", folder);
  std::string text = text_of(folder / "dome.run.json");
  replace(text, "\"losses\"", R"("pipe": {"formula": "cloud_topping.formula.json",
      "beads": {"tip": "fine star 12 x 16 mm", "bead_to_opening": 1, "moves": [
        {"move": "spiral", "turns": 3, "start_radius": "14 mm", "end_radius": "2 mm", "rise": "40 mm"},
        {"move": "shells", "count": 8, "circle_radius": "10 mm", "length": "14 mm", "at_height": "20 mm"}]},
      "fills_headspace": "100 %", "whip": {"holds": "120 ml", "net": "78 g"}},
    "decorations": [{"name": "Ball", "material": "clear base", "mould": "ball.json",
      "fill": {"below_brim": "0 mm"}, "cast_as": "one cast", "per_piece": 3, "density": "1.03 g/ml",
      "spares": "0 %", "melt_loss": "0 %", "left_in_jug": "0 g",
      "buried": {"cover": "3 mm", "placed": "before the pour", "places": [
        {"x": "-10 mm", "y": "0 mm", "height": "15 mm"}, {"x": "10 mm", "y": "6 mm", "height": "15 mm"},
        {"x": "5 mm", "y": "-13 mm", "height": "15 mm"}]}}],
    "dust": [{"name": "mica", "on_covered_surface": "1 mg/cm2", "coverage": "50 %", "share_that_sticks": "50 %"}],
    "losses")");
  const std::string losses = "\"test_piece\": \"0 g\" }";
  replace(text, losses, losses + R"(, "pipe": {"bag": "30 g", "bowl_and_whisk": "20 g"})");
  write_file(folder / "decorated.run.json", text);
  return folder / "decorated.run.json";
}

}  // namespace

int main() try {
  const ScratchFolder scratch("brimwright_bench");
  const fs::path& folder = scratch.path();
  const std::string examples = BRIMWRIGHT_SOURCE_DIR "/examples/";
  struct Case {
    std::string name;
    std::vector<std::string> words;
    std::vector<double> times;
  };
  std::vector<Case> cases = {
      {"--version (start of the program)", {"--version"}, {}},
      {"plan, parametric mould", {"plan", examples + "plain_bars.run.json"}, {}},
      {"plan, shipped order with a mesh", {"plan", examples + "spring_cups.run.json"}, {}},
      {"plan, mesh of 100 thousand facets", {"plan", run_with_mesh(folder, 100'000).string()}, {}},
      {"list moulds (measures all)", {"list", "moulds"}, {}},
      {"plan, whole piece, 100 thousand facets", {"plan", decorated_run(folder).string()}, {}},
      {"gauge, places for embeds in that dome",
       {"gauge", (folder / "dome.json").string(), "--embed", "ball.json", "--cover", "2 mm",
        "--library", folder.string()},
       {}}};
  for (int round = 0; round < 21; ++round)
    for (auto& c : cases) c.times.push_back(spent_by(BRIMWRIGHT_PROGRAM, c.words).milliseconds);
  std::printf("%-40s %10s %10s\n", "median of 21", "ms", "worst");
  for (auto& c : cases) {
    std::sort(c.times.begin(), c.times.end());
    std::printf("%-40s %10.1f %10.1f\n", c.name.c_str(), c.times[c.times.size() / 2],
                c.times.back());
  }
} catch (const std::exception& error) {
  std::fprintf(stderr, "%s\n", error.what());
  return 1;
}
