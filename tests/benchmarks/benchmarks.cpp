// Times the whole program as a maker meets it, each case in one interleaved run, and prints the
// medians.
#include "moulds/shape.h"
#include "moulds/shape_solid.h"
#include "units/quantity.h"

#include <spawn.h>
#include <sys/wait.h>

#include <algorithm>
#include <chrono>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;
using namespace brimwright;

extern "C" char** environ;

/// Milliseconds for one run of the program, its output thrown away; stops the benchmark if it
/// fails.
double milliseconds_of(const std::vector<std::string>& words) {
  std::vector<char*> arguments;
  std::string program = BRIMWRIGHT_PROGRAM;
  arguments.push_back(program.data());
  std::vector<std::string> copies = words;
  for (auto& word : copies) arguments.push_back(word.data());
  arguments.push_back(nullptr);
  posix_spawn_file_actions_t actions;
  posix_spawn_file_actions_init(&actions);
  posix_spawn_file_actions_addopen(&actions, 1, "/dev/null", 1, 0);
  const auto start = std::chrono::steady_clock::now();
  pid_t child = 0;
  int status = 1;
  posix_spawn(&child, program.c_str(), &actions, nullptr, arguments.data(), environ);
  waitpid(child, &status, 0);
  const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - start;
  posix_spawn_file_actions_destroy(&actions);
  if (status != 0) {
    std::fprintf(stderr, "the program failed on: %s\n", words.back().c_str());
    std::exit(1);
  }
  return took.count();
}

template <class T>
void put(std::ofstream& out, T value) {
  out.write(reinterpret_cast<const char*>(&value), sizeof value);
}

/// Binary STL, little-endian as this machine is.
void write_stl(const geometry::TriangleMesh& mesh, const fs::path& path) {
  std::ofstream out(path, std::ios::binary);
  out << std::string(80, ' ');
  put(out, static_cast<std::uint32_t>(mesh.triangles.size()));
  for (const auto& triangle : mesh.triangles) {
    for (int i = 0; i < 3; ++i) put(out, 0.0f);
    for (const auto corner : triangle)
      for (const double x : mesh.vertices_mm[corner]) put(out, static_cast<float>(x));
    put(out, std::uint16_t{0});
  }
}

/// A dome of about `facets` facets, with a mould and a run that pour it.
fs::path run_with_mesh(const fs::path& folder, std::size_t facets) {
  const moulds::Dome dome{70 * millimetre, 40 * millimetre};
  int round = 32;
  geometry::TriangleMesh mesh = moulds::solid_of(dome, round);
  while (mesh.triangles.size() < facets) mesh = moulds::solid_of(dome, round = round * 11 / 10 + 1);
  std::printf("mesh of %zu facets\n", mesh.triangles.size());
  write_stl(mesh, folder / "dome.stl");
  std::ofstream(folder / "dome.json")
      << R"({"schema": "brimwright.mould/1", "name": "Dome", "cavities": 6, "owned": 1,
             "mesh": {"file": "dome.stl", "unit": "mm", "role": "cavity", "up": "+z"}})";
  fs::copy(fs::path(BRIMWRIGHT_SOURCE_DIR) / "examples/meadow_base.formula.json", folder);
  std::ifstream plain(fs::path(BRIMWRIGHT_SOURCE_DIR) / "examples/plain_bars.run.json");
  std::string text((std::istreambuf_iterator<char>(plain)), {});
  const std::string named = "moulds/plain_bar.json";
  text.replace(text.find(named), named.size(), "dome.json");
  std::ofstream(folder / "dome.run.json") << text;
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
  write_stl(mesh, folder / "ball.stl");
  std::ofstream(folder / "ball.json")
      << R"({"schema": "brimwright.mould/1", "name": "Ball", "cavities": 12, "owned": 1,
             "mesh": {"file": "ball.stl", "unit": "mm", "role": "cavity", "up": "+z"}})";
  fs::copy(examples / "cloud_topping.formula.json", folder);
  std::ifstream plain(folder / "dome.run.json");
  std::string text((std::istreambuf_iterator<char>(plain)), {});
  text.replace(text.find("\"losses\""), 8, R"("pipe": {"formula": "cloud_topping.formula.json",
      "beads": {"tip": "fine star 12 x 16 mm", "swell": 1, "moves": [
        {"move": "spiral", "turns": 3, "start_radius": "14 mm", "end_radius": "2 mm", "rise": "40 mm"},
        {"move": "shells", "count": 8, "circle_radius": "10 mm", "length": "14 mm", "at_height": "20 mm"}]},
      "fills_headspace": "100 %", "whip": {"holds": "120 ml", "net": "78 g"}},
    "perch": [{"name": "Ball", "material": "clear base", "mould": "ball.json",
      "fill": {"below_brim": "0 mm"}, "made_of": "one cast", "per_piece": 3, "density": "1.03 g/ml",
      "spares": "0 %", "melt_loss": "0 %", "jug_film": "0 g",
      "buried": {"cover": "3 mm", "set": "before the pour", "places": [
        {"x": "-10 mm", "y": "0 mm", "height": "15 mm"}, {"x": "10 mm", "y": "6 mm", "height": "15 mm"},
        {"x": "5 mm", "y": "-13 mm", "height": "15 mm"}]}}],
    "dust": [{"name": "mica", "on_surface": "1 mg/cm2", "covered": "50 %", "lands": "50 %"}],
    "losses")");
  const std::string losses = "\"test_piece\": \"0 g\" }";
  text.replace(text.find(losses), losses.size(),
               losses + R"(, "pipe": {"bag": "30 g", "bowl_and_whisk": "20 g"})");
  std::ofstream(folder / "decorated.run.json") << text;
  return folder / "decorated.run.json";
}

}  // namespace

int main() {
  const fs::path folder =
      fs::temp_directory_path() / ("brimwright_bench_" + std::to_string(getpid()));
  fs::create_directories(folder);
  const std::string examples = BRIMWRIGHT_SOURCE_DIR "/examples/";
  struct Case {
    std::string name;
    std::vector<std::string> words;
    std::vector<double> times;
  };
  std::vector<Case> cases = {
      {"--version (start of the program)", {"--version"}, {}},
      {"plan, parametric mould", {"plan", examples + "plain_bars.run.json"}, {}},
      {"plan, shipped order with a mesh", {"plan", examples + "spring_order.run.json"}, {}},
      {"plan, mesh of 100 thousand facets", {"plan", run_with_mesh(folder, 100'000).string()}, {}},
      {"list moulds (measures all)", {"list", "moulds"}, {}},
      {"plan, whole piece, 100 thousand facets", {"plan", decorated_run(folder).string()}, {}},
      {"gauge, places for embeds in that dome",
       {"gauge", (folder / "dome.json").string(), "--embed", "ball.json", "--cover", "2 mm",
        "--library", folder.string()},
       {}}};
  for (int round = 0; round < 21; ++round)
    for (auto& c : cases) c.times.push_back(milliseconds_of(c.words));
  std::printf("%-40s %10s %10s\n", "median of 21", "ms", "worst");
  for (auto& c : cases) {
    std::sort(c.times.begin(), c.times.end());
    std::printf("%-40s %10.1f %10.1f\n", c.name.c_str(), c.times[c.times.size() / 2],
                c.times.back());
  }
  fs::remove_all(folder);
}
