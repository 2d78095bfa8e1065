// Times the whole program as a maker meets it, each case in one interleaved run, and prints the
// medians.
#include "moulds/shape.h"
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
      {"list moulds (measures all)", {"list", "moulds"}, {}}};
  for (int round = 0; round < 21; ++round)
    for (auto& c : cases) c.times.push_back(milliseconds_of(c.words));
  std::printf("%-36s %10s %10s\n", "median of 21", "ms", "worst");
  for (auto& c : cases) {
    std::sort(c.times.begin(), c.times.end());
    std::printf("%-36s %10.1f %10.1f\n", c.name.c_str(), c.times[c.times.size() / 2],
                c.times.back());
  }
  fs::remove_all(folder);
}
