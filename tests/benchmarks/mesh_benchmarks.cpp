// Times the whole program with large binary STL files, as a maker starts it, and parts of what it
// does with them, beside a raw read() of the same file and beside other libraries; all cases in one
// interleaved run. mesh_benchmarks [--large] [--json FILE]
//
// The file is in memory each time, as after it was written or copied, but not in the processor's
// caches: another case ran before, and to be fair to all, some memory is swept before each.
#include "geometry/files/mesh_writing.h"
#include "geometry/files/stl_weld.h"
#include "geometry/levels/level_curve.h"
#include "geometry/pockets/pockets.h"
#include "geometry/repair/mesh_inspection.h"
#include "geometry/repair/self_crossing.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/surface_edges.h"
#include "peers.h"
#include "whole_process.h"

#include <fcntl.h>
#include <nlohmann/json.hpp>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <exception>
#include <filesystem>
#include <fstream>
#include <functional>
#include <memory>
#include <optional>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

namespace {

namespace fs = std::filesystem;
using namespace brimwright;
using namespace brimwright::geometry;

/// A closed surface over a grid that closes on itself in one direction, with fans at both ends.
TriangleMesh revolved(std::uint32_t rings, std::uint32_t sides,
                      const std::function<std::array<double, 3>(double up, double round)>& at,
                      double bottom, double top) {
  TriangleMesh mesh;
  for (std::uint32_t k = 0; k <= rings; ++k)
    for (std::uint32_t i = 0; i < sides; ++i)
      mesh.vertices_mm.push_back(at(double(k) / rings, double(i) / sides));
  const std::uint32_t low = std::uint32_t(mesh.vertices_mm.size()), high = low + 1;
  mesh.vertices_mm.push_back({0, 0, bottom});
  mesh.vertices_mm.push_back({0, 0, top});
  for (std::uint32_t i = 0; i < sides; ++i) {
    const std::uint32_t j = (i + 1) % sides, last = rings * sides;
    mesh.triangles.push_back({low, j, i});
    mesh.triangles.push_back({high, last + i, last + j});
    for (std::uint32_t k = 0; k < rings; ++k) {
      const std::uint32_t a = k * sides;
      mesh.triangles.push_back({a + i, a + j, a + sides + j});
      mesh.triangles.push_back({a + i, a + sides + j, a + sides + i});
    }
  }
  return mesh;
}

TriangleMesh cup(std::size_t facets) {
  const auto sides = std::uint32_t(std::sqrt(facets));
  return revolved(
      sides / 2, sides,
      [](double up, double round) {
        const double angle = 2 * pi * round;
        const double r = (22 + 11 * up) * (1 + 0.05 * std::cos(8 * angle));
        return std::array{r * std::cos(angle), r * std::sin(angle), 36 * up};
      },
      0, 36);
}

/// A long trough with rounded corners and leaning walls.
TriangleMesh loaf(std::size_t facets) {
  const auto sides = std::uint32_t(std::sqrt(facets));
  return revolved(
      sides / 2, sides,
      [](double up, double round) {
        const double angle = 2 * pi * round, x = std::cos(angle), y = std::sin(angle);
        const double square =
            1 / std::pow(std::pow(std::abs(x), 8) + std::pow(std::abs(y), 8), 1.0 / 8);
        return std::array{(115 + 8 * up) * square * x, (40 + 6 * up) * square * y, 65 * up};
      },
      0, 65);
}

/// A slab whose top is a grid of heights with 4 x 3 round pockets in it.
TriangleMesh tray(std::size_t facets) {
  const auto n = std::uint32_t(std::sqrt(facets / 4.0));
  TriangleMesh mesh;
  const auto height = [](double x, double y) {
    const double u = std::fmod(x, 50) - 25, v = std::fmod(y, 60) - 30;
    const double r = std::hypot(u, v);
    return 5 + 25 * std::clamp((r - 14) / 6, 0.0, 1.0);
  };
  for (const bool top : {false, true})
    for (std::uint32_t j = 0; j <= n; ++j)
      for (std::uint32_t i = 0; i <= n; ++i) {
        const double x = 200.0 * i / n, y = 180.0 * j / n;
        const bool border = i == 0 || j == 0 || i == n || j == n;
        mesh.vertices_mm.push_back({x, y, !top ? 0 : border ? 30 : height(x, y)});
      }
  const std::uint32_t row = n + 1, layer = row * row;
  const auto quad = [&](std::uint32_t a, std::uint32_t b, std::uint32_t c, std::uint32_t d) {
    mesh.triangles.push_back({a, b, c});
    mesh.triangles.push_back({a, c, d});
  };
  for (std::uint32_t j = 0; j < n; ++j)
    for (std::uint32_t i = 0; i < n; ++i) {
      const std::uint32_t a = j * row + i, b = a + 1, c = a + row + 1, d = a + row;
      quad(d, c, b, a);
      quad(layer + a, layer + b, layer + c, layer + d);
    }
  for (std::uint32_t i = 0; i < n; ++i) {
    const std::uint32_t back = n * row + i, left = i * row, right = i * row + n;
    quad(i, i + 1, layer + i + 1, layer + i);
    quad(back + 1, back, layer + back, layer + back + 1);
    quad(left + row, left, layer + left, layer + left + row);
    quad(right, right + row, layer + right + row, layer + right);
  }
  return mesh;
}

/// A file that is open for reading; std::runtime_error if it cannot be, or if a read fails.
class OpenFile {
 public:
  explicit OpenFile(const std::string& path) : path_(path), file_(open(path.c_str(), O_RDONLY)) {
    if (file_ < 0) throw std::runtime_error(path + " could not be opened");
  }
  ~OpenFile() { close(file_); }
  OpenFile(const OpenFile&) = delete;
  OpenFile& operator=(const OpenFile&) = delete;

  std::size_t next(char* buffer, std::size_t size) {
    const ssize_t bytes = read(file_, buffer, size);
    if (bytes < 0) throw std::runtime_error(path_ + " could not be read");
    return static_cast<std::size_t>(bytes);
  }

 private:
  std::string path_;
  int file_;
};

/// The bytes into one buffer again and again.
void raw_read(const std::string& path, std::size_t buffer_size) {
  static std::vector<char> buffer(1 << 20);
  OpenFile file(path);
  while (file.next(buffer.data(), buffer_size) > 0) {
  }
}

/// The bytes into memory of their own, as a reader needs that keeps them.
void raw_read_whole(const std::string& path) {
  const auto size = static_cast<std::size_t>(fs::file_size(path));
  const auto bytes = std::make_unique_for_overwrite<char[]>(size);
  OpenFile file(path);
  std::size_t done = 0;
  while (done < size) {
    const std::size_t more = file.next(bytes.get() + done, size - done);
    if (more == 0) throw std::runtime_error(path + " was cut short");
    done += more;
  }
}

/// The volume found by those that look for it.
using Work = std::function<std::optional<double>()>;

struct Case {
  std::string name;
  Work work;  // none: not measured, and why stands in its place
  int rounds = 0;
  std::string why = {};
  bool is_raw_read = false;
  std::vector<double> times = {};
  std::optional<double> volume_mm3 = {};
  std::vector<std::string> words = {};  // of the whole program, in place of work
  double peak_mib = 0;
};

void sweep_caches() {
  static std::vector<char> memory(std::size_t{96} << 20);  // three times a large third cache
  for (std::size_t at = 0; at < memory.size(); at += 64) ++memory[at];
}

double milliseconds(Case& c) {
  sweep_caches();
  if (!c.words.empty()) {
    const Spent spent = spent_by(BRIMWRIGHT_PROGRAM, c.words);
    c.peak_mib = std::max(c.peak_mib, spent.peak_mib);
    return spent.milliseconds;
  }
  const auto start = std::chrono::steady_clock::now();
  c.volume_mm3 = c.work();
  return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start)
      .count();
}

double median(std::vector<double> times) {
  std::sort(times.begin(), times.end());
  return times[times.size() / 2];
}

/// Work that finds no volume.
template <class Function>
Work without_volume(Function work) {
  return [work] {
    work();
    return std::nullopt;
  };
}

double mm3(Volume volume) { return volume / cubic_millimetre; }

std::vector<Case> raw_reads(const std::string& path, int rounds) {
  std::vector<Case> cases = {
      {"raw read(), 1 MiB buffer", without_volume([=] { raw_read(path, 1 << 20); }), rounds},
      {"the same, 256 KiB buffer", without_volume([=] { raw_read(path, 1 << 18); }), rounds},
      {"the same, whole file", without_volume([=] { raw_read_whole(path); }), rounds}};
  for (auto& c : cases) c.is_raw_read = true;
  return cases;
}

/// A run that pours into the cup, and its mould.
std::string run_with_cup(const fs::path& folder, const std::string& path) {
  const fs::path examples = fs::path(BRIMWRIGHT_SOURCE_DIR) / "examples";
  const nlohmann::json mesh = {{"file", fs::path(path).filename().string()},
                               {"unit", "mm"},
                               {"role", "cavity"},
                               {"up", "+z"}};
  const nlohmann::json mould = {{"schema", "brimwright.mould/2"},
                                {"name", "Cup"},
                                {"cavities", 6},
                                {"owned", 1},
                                {"mesh", mesh}};
  write_file(folder / "cup.json", mould.dump());
  const auto formula = examples / "meadow_base.formula.json";
  fs::copy_file(formula, folder / formula.filename(), fs::copy_options::overwrite_existing);
  std::ifstream plain(examples / "plain_bars.run.json");
  nlohmann::json run = nlohmann::json::parse(plain);
  run["pour"]["mould"] = "cup.json";
  write_file(folder / "cup.run.json", run.dump());
  return (folder / "cup.run.json").string();
}

/// The whole program from its start to its end.
std::vector<Case> whole_cases(const std::string& shape, const std::string& path, bool large) {
  const int rounds = large ? 3 : 5;
  const std::string role = shape == "tray" ? "body" : "cavity";
  std::vector<Case> cases = {{.name = "gauge, role given",
                              .work = {},
                              .rounds = rounds,
                              .words = {"gauge", "--unit", "mm", "--role", role, "--json", path}},
                             {.name = "gauge, role found",
                              .work = {},
                              .rounds = rounds,
                              .words = {"gauge", "--unit", "mm", "--json", path}},
                             {.name = "gauge --inspect",
                              .work = {},
                              .rounds = rounds,
                              .words = {"gauge", "--unit", "mm", "--inspect", "--json", path}}};
  if (shape == "cup")
    cases.push_back(
        {.name = "plan with that mould",
         .work = {},
         .rounds = rounds,
         .words = {"plan", "--json", run_with_cup(fs::path(path).parent_path(), path)}});
  return cases;
}

Volume last_level(const TriangleMesh& solid) {
  const LevelCurve curve = LevelCurve::of_solid(solid);
  std::vector<Length> depths;
  for (int i = 1; i <= 1000; ++i) depths.push_back(i / 1000.0 * curve.height());
  return curve.levels(depths).back().volume;
}

std::vector<Case> part_cases(const std::string& path, bool is_tray, bool large) {
  const int rounds = large ? 5 : 9, slow = large ? 1 : 3;
  const auto welded = std::make_shared<const TriangleMesh>(welded_stl(path));
  const auto edges = std::make_shared<const SurfaceEdges>(surface_edges(*welded));
  std::vector<Case> cases = {
      {"read, equal corners joined", [=] { return mm3(enclosed_volume(welded_stl(path))); },
       rounds},
      {"defect list",
       without_volume([=] { inspected_welded(welded_stl(path), InspectFor::defects, path); }),
       rounds},
      {"proof: nothing crosses itself", without_volume([=] {
         if (self_crossing(*welded, *edges, path)) throw std::runtime_error("it crosses itself");
       }),
       rounds},
      {"table of 1000 levels, from memory", [=] { return mm3(last_level(*welded)); }, rounds}};
  if (is_tray) {
    cases.push_back({"pockets", without_volume([=] { pockets_of_body(*welded); }), slow});
  }
  return cases;
}

std::vector<Case> peer_cases(const std::string& path, bool large) {
  const int rounds = large ? 1 : 3;
  std::vector<Case> cases = {
      {"peer: Assimp import", without_volume([=] { assimp_import(path); }), rounds}};
#ifdef HAVE_ADMESH
  cases.push_back(
      {"peer: libadmesh, volume", [=] { return admesh_read_and_volume(path); }, rounds});
#else
  cases.push_back({.name = "peer: libadmesh, volume", .work = {}, .why = "not installed"});
#endif
#ifdef HAVE_VTK
  cases.push_back({"peer: VTK, volume", [=] { return vtk_read_and_volume(path); }, rounds});
#else
  cases.push_back({.name = "peer: VTK, volume", .work = {}, .why = "not installed"});
#endif
  if (large) {
    const std::string why = "left out, it takes minutes";
    cases.push_back({.name = "peer: CGAL, volume", .work = {}, .why = why});
    cases.push_back({.name = "peer: CGAL, one clip", .work = {}, .why = why});
    return cases;
  }
  cases.push_back({"peer: CGAL, volume", [=] { return cgal_read_and_volume(path); }, 1});
  cases.push_back({"peer: CGAL, one clip", without_volume([=] { cgal_clip_at_half(path); }), 1});
  return cases;
}

/// Prints a case's line, and gives it back for the JSON.
nlohmann::ordered_json reported(const Case& c, double raw_ms, double volume_mm3) {
  if (!c.work && c.words.empty()) {
    std::printf("  %-30s %s\n", c.name.c_str(), c.why.c_str());
    return {{"case", c.name}, {"not_measured", c.why}};
  }
  const double ms = median(c.times);
  nlohmann::ordered_json row = {{"case", c.name}, {"ms", ms}, {"times_raw_read", ms / raw_ms}};
  std::printf("  %-30s %10.2f ms %11.2f x", c.name.c_str(), ms, ms / raw_ms);
  if (c.peak_mib > 0) {
    row["peak_mib"] = c.peak_mib;
    std::printf(" %9.0f MiB", c.peak_mib);
  }
  if (c.volume_mm3) {
    row["volume_off"] = *c.volume_mm3 / volume_mm3 - 1;
    std::printf(" %13.0e", *c.volume_mm3 / volume_mm3 - 1);
  }
  std::printf("\n");
  return row;
}

nlohmann::ordered_json measured(const std::string& shape, const TriangleMesh& mesh,
                                const fs::path& folder, bool large) {
  const std::string path = (folder / (shape + ".stl")).string();
  write_file(path, binary_stl_of(mesh));
  const bool is_tray = shape == "tray";
  auto cases = raw_reads(path, large ? 5 : 9);
  for (auto& whole : whole_cases(shape, path, large)) cases.push_back(std::move(whole));
  for (auto& part : part_cases(path, is_tray, large)) cases.push_back(std::move(part));
  for (auto& peer : peer_cases(path, large)) cases.push_back(std::move(peer));
  for (int round = 0; round < 9; ++round)
    for (auto& c : cases)
      if (round < c.rounds) c.times.push_back(milliseconds(c));
  double raw = median(cases.front().times);  // the fastest of the raw reads
  for (const auto& c : cases)
    if (c.is_raw_read) raw = std::min(raw, median(c.times));
  const double volume = mm3(enclosed_volume(welded_stl(path)));
  std::printf("\n%-28s %10s %13s %13s\n",
              (shape + ", " + std::to_string(mesh.triangles.size()) + " facets").c_str(), "median",
              "to raw read", "volume off by");
  nlohmann::ordered_json rows = nlohmann::ordered_json::array();
  for (const auto& c : cases) rows.push_back(reported(c, raw, volume));
  fs::remove(path);
  return {{"shape", shape}, {"facets", mesh.triangles.size()}, {"rows", rows}};
}

}  // namespace

int main(int argc, char** argv) try {
  bool is_large = false;
  std::string json_file;
  for (int i = 1; i < argc; ++i) {
    const std::string word = argv[i];
    if (word == "--large")
      is_large = true;
    else if (word == "--json" && i + 1 < argc)
      json_file = argv[++i];
    else
      return std::fprintf(stderr, "mesh_benchmarks [--large] [--json FILE]\n"), 1;
  }
  const ScratchFolder scratch("brimwright_meshes");
  const fs::path& folder = scratch.path();
  nlohmann::ordered_json all = nlohmann::ordered_json::array();
  std::vector<std::size_t> sizes = {10'000, 1'000'000};
  if (is_large) sizes.push_back(4'000'000);
  for (const std::size_t facets : sizes) {
    const bool large = facets > 2'000'000;
    all.push_back(measured("cup", cup(facets), folder, large));
    all.push_back(measured("loaf", loaf(facets), folder, large));
    all.push_back(measured("tray", tray(facets), folder, large));
  }
  if (!json_file.empty()) write_file(json_file, all.dump(2) + "\n");
} catch (const std::exception& error) {
  std::fprintf(stderr, "%s\n", error.what());
  return 1;
}
