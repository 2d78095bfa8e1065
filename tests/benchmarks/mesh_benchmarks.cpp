// Times what geometry does with large binary STL files beside a raw read() of the same file and
// beside other libraries, all cases in one interleaved run. mesh_benchmarks [--large] [--json FILE]
//
// The file is in memory each time, as after it was written or copied, but not in the processor's
// caches: another case ran before, and to be fair to all, some memory is swept before each.
#include "geometry/files/mesh_file.h"
#include "geometry/files/mesh_writing.h"
#include "geometry/files/stl_weld.h"
#include "geometry/levels/level_table.h"
#include "geometry/levels/stl_scan.h"
#include "geometry/pockets/pockets.h"
#include "geometry/repair/mesh_checks.h"
#include "geometry/repair/mesh_inspection.h"
#include "geometry/surface/enclosed_volume.h"
#include "peers.h"

#include <fcntl.h>
#include <nlohmann/json.hpp>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <functional>
#include <memory>
#include <optional>
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

/// The bytes into one buffer again and again.
void raw_read(const std::string& path, std::size_t buffer_size) {
  static std::vector<char> buffer(1 << 20);
  const int file = open(path.c_str(), O_RDONLY);
  while (read(file, buffer.data(), buffer_size) > 0) {
  }
  close(file);
}

/// The bytes into memory of their own, as a reader needs that keeps them.
void raw_read_whole(const std::string& path) {
  const auto size = static_cast<std::size_t>(fs::file_size(path));
  const auto bytes = std::make_unique_for_overwrite<char[]>(size);
  const int file = open(path.c_str(), O_RDONLY);
  if (read(file, bytes.get(), size) != ssize_t(size)) std::abort();
  close(file);
}

/// Peak memory of this process in MiB, as the kernel keeps it for the running program alone.
double own_peak_mib() {
  std::ifstream status("/proc/self/status");
  for (std::string line; std::getline(status, line);)
    if (line.starts_with("VmHWM:")) return std::stod(line.substr(6)) / 1024;
  return 0;
}

/// The same of finding a file's pockets, in a process that does nothing else.
double pockets_peak_mib(const std::string& program, const std::string& path) {
  std::FILE* child = popen(("'" + program + "' --pockets-of '" + path + "'").c_str(), "r");
  double mib = 0;
  if (std::fscanf(child, "%lf", &mib) != 1) mib = 0;
  pclose(child);
  return mib;
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
};

void sweep_caches() {
  static std::vector<char> memory(std::size_t{96} << 20);  // three times a large third cache
  for (std::size_t at = 0; at < memory.size(); at += 64) ++memory[at];
}

double milliseconds(Case& c) {
  sweep_caches();
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

std::vector<Case> our_cases(const std::string& path, bool is_tray, bool large) {
  const int rounds = large ? 5 : 9, slow = large ? 1 : 3;
  std::vector<Case> cases = {
      {"volume, area, box", [=] { return mm3(scanned_stl(path, {.closedness = false}).volume); },
       rounds},
      {"the same with closedness", [=] { return mm3(scanned_stl(path).volume); }, rounds},
      {"1000-level curve",
       [=] {
         return mm3(
             level_table_of_stl(path, even_depths(1000), {.closedness = false}).rows.back().volume);
       },
       rounds},
      {"the same with closedness",
       [=] { return mm3(level_table_of_stl(path, even_depths(1000)).rows.back().volume); }, rounds},
      {"defect list",
       without_volume([=] { inspected_welded(welded_stl(path), InspectFor::defects, path); }),
       rounds},
      {"read and prove sound",
       [=] {
         MeshReading reading;
         reading.unit = LengthUnit::millimetre;
         return mm3(enclosed_volume(checked_solid(read_mesh(path, reading).mesh, path).solid));
       },
       slow}};
  if (is_tray) {
    cases.push_back({"pockets", without_volume([=] { pockets_of_body(welded_stl(path)); }), slow});
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
  if (!c.work) {
    std::printf("  %-26s %s\n", c.name.c_str(), c.why.c_str());
    return {{"case", c.name}, {"not_measured", c.why}};
  }
  const double ms = median(c.times);
  nlohmann::ordered_json row = {{"case", c.name}, {"ms", ms}, {"times_raw_read", ms / raw_ms}};
  std::printf("  %-26s %10.2f ms %11.2f x", c.name.c_str(), ms, ms / raw_ms);
  if (c.volume_mm3) {
    row["volume_off"] = *c.volume_mm3 / volume_mm3 - 1;
    std::printf(" %13.0e", *c.volume_mm3 / volume_mm3 - 1);
  }
  std::printf("\n");
  return row;
}

nlohmann::ordered_json measured(const std::string& shape, const TriangleMesh& mesh,
                                const fs::path& folder, const std::string& program, bool large) {
  const std::string path = (folder / (shape + ".stl")).string();
  std::ofstream(path, std::ios::binary) << binary_stl_of(mesh);
  const bool is_tray = shape == "tray";
  auto cases = raw_reads(path, large ? 5 : 9);
  for (auto& own : our_cases(path, is_tray, large)) cases.push_back(std::move(own));
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
  nlohmann::ordered_json json = {
      {"shape", shape}, {"facets", mesh.triangles.size()}, {"rows", rows}};
  if (is_tray) {
    const double mib = pockets_peak_mib(program, path);
    std::printf("  pockets, peak memory %.0f MiB\n", mib);
    json["pockets_peak_mib"] = mib;
  }
  fs::remove(path);
  return json;
}

}  // namespace

int main(int argc, char** argv) {
  if (argc == 3 && std::string(argv[1]) == "--pockets-of") {
    pockets_of_body(welded_stl(argv[2]));
    std::printf("%f\n", own_peak_mib());
    return 0;
  }
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
  const fs::path folder =
      fs::temp_directory_path() / ("brimwright_meshes_" + std::to_string(getpid()));
  fs::create_directories(folder);
  nlohmann::ordered_json all = nlohmann::ordered_json::array();
  std::vector<std::size_t> sizes = {10'000, 1'000'000};
  if (is_large) sizes.push_back(4'000'000);
  for (const std::size_t facets : sizes) {
    const bool large = facets > 2'000'000;
    all.push_back(measured("cup", cup(facets), folder, argv[0], large));
    all.push_back(measured("loaf", loaf(facets), folder, argv[0], large));
    all.push_back(measured("tray", tray(facets), folder, argv[0], large));
  }
  fs::remove_all(folder);
  if (!json_file.empty()) std::ofstream(json_file) << all.dump(2) << "\n";
}
