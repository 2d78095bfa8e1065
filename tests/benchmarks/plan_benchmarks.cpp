// Times an answer to "plan this" inside one process, as the server gives it after each key: asked
// again, with another number of pieces, another pour line and another topping. Prints medians of
// the thread's processor time, which a busy machine changes less than the clock's. Words: how often
// each is asked, and a part of the runs' names, to ask only those. Then, for each run, 300 other
// numbers of pieces planned from one measuring, all together; and a quote of 8 numbers with its
// steps. At last what to buy for 40 runs with 60 materials of 4 packs each.
#include "many_runs.h"
#include "moulds/mesh_memory.h"
#include "planning/plan.h"
#include "runs/run_file.h"
#include "service/service.h"
#include "units/user_error.h"

#include <nlohmann/json.hpp>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <functional>
#include <memory>
#include <string>
#include <utility>
#include <vector>

namespace {

namespace fs = std::filesystem;
using namespace brimwright;
using Json = nlohmann::ordered_json;

const fs::path source = BRIMWRIGHT_SOURCE_DIR;

std::string bytes_of(const fs::path& path) {
  std::ifstream file(path, std::ios::binary);
  return std::string((std::istreambuf_iterator<char>(file)), {});
}

// A binary STL: 80 bytes of head, the number of facets, 50 bytes each.
using Corner = std::array<float, 3>;
using Facet = std::array<Corner, 3>;
std::vector<Facet> read_stl(const fs::path& path) {
  const std::string bytes = bytes_of(path);
  std::vector<Facet> facets((bytes.size() - 84) / 50);
  for (std::size_t i = 0; i < facets.size(); ++i)
    std::memcpy(facets[i].data(), bytes.data() + 84 + 50 * i + 12, sizeof(Facet));
  return facets;
}
void write_stl(const std::vector<Facet>& facets, const fs::path& path) {
  std::ofstream out(path, std::ios::binary);
  const auto count = static_cast<std::uint32_t>(facets.size());
  out << std::string(80, ' ');
  out.write(reinterpret_cast<const char*>(&count), 4);
  for (const Facet& facet : facets) {
    out << std::string(12, '\0');
    out.write(reinterpret_cast<const char*>(facet.data()), sizeof(Facet));
    out << std::string(2, '\0');
  }
}

/// Each facet in four, by the middles of its edges, until there are `least`.
std::vector<Facet> split(std::vector<Facet> facets, std::size_t least) {
  const auto middle = [](const Corner& a, const Corner& b) {
    return Corner{(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2};
  };
  while (facets.size() < least) {
    std::vector<Facet> finer;
    for (const auto& [a, b, c] : facets) {
      const Corner ab = middle(a, b), bc = middle(b, c), ca = middle(c, a);
      finer.insert(finer.end(), {{a, ab, ca}, {ab, b, bc}, {ca, bc, c}, {ab, bc, ca}});
    }
    facets = std::move(finer);
  }
  return facets;
}

/// The shipped order, poured into its own mould with `least` facets or more.
fs::path order_with_fine_mould(const fs::path& folder, std::size_t least) {
  const auto facets = split(read_stl(source / "meshes/twisted_cup.stl"), least);
  std::printf("fine mould: %zu facets\n", facets.size());
  write_stl(facets, folder / "fine_cup.stl");
  Json mould = Json::parse(bytes_of(source / "moulds/twisted_cup.json"));
  mould["mesh"]["file"] = "fine_cup.stl";
  std::ofstream(folder / "fine_cup.json") << mould;
  Json run = Json::parse(bytes_of(source / "examples/spring_cups.run.json"));
  run["pour"]["mould"] = "fine_cup.json";
  std::ofstream(folder / "fine_order.run.json") << run;
  for (const char* formula : {"meadow_base.formula.json", "cloud_topping.formula.json"})
    fs::copy_file(source / "examples" / formula, folder / formula);
  return folder / "fine_order.run.json";
}

double spent_milliseconds() {
  timespec spent{};
  ::clock_gettime(CLOCK_THREAD_CPUTIME_ID, &spent);
  return 1e3 * static_cast<double>(spent.tv_sec) + 1e-6 * static_cast<double>(spent.tv_nsec);
}

/// Milliseconds of work until the plan is there; stops the benchmark where there is none.
double milliseconds_of(const fs::path& file, const Json& run, const moulds::Library& library) {
  service::PlanRequest request{.file = file.string(), .text = run.dump(), .sell = {}};
  const double start = spent_milliseconds();
  const auto reply = service::answer({request, service::Form::json}, library);
  const double took = spent_milliseconds() - start;
  if (reply.status != service::Status::done) {
    std::fprintf(stderr, "%s\n", reply.complaint.c_str());
    std::exit(1);
  }
  return took;
}

/// Milliseconds in which `numbers` other numbers of pieces are planned, and how many of them can be
/// made; the run is read and measured before.
std::pair<double, int> other_numbers(const fs::path& file, const moulds::Library& library,
                                     std::int64_t numbers) {
  const auto run = runs::read_run(file.string(), library, {});
  const auto measured = planning::measured(run);
  planning::BatchTrials trials(run, measured);
  int made = 0;
  const double start = spent_milliseconds();
  for (std::int64_t sell = run.sell + 1; sell <= run.sell + numbers; ++sell) try {
      made += planning::plan_for(sell, run, measured, trials).pieces.sell == sell ? 1 : 0;
    } catch (const UserError&) {
      continue;  // no batches of that number are within their limits
    }
  return {spent_milliseconds() - start, made};
}

/// Milliseconds until 8 numbers of pieces are quoted, and the steps up to twice the largest;
/// nothing where the run has no prices.
std::vector<double> quoted_milliseconds(const fs::path& file, const moulds::Library& library,
                                        int turns) {
  service::QuoteRequest request;
  request.file = file.string();
  request.sell = "12,24,36,48,60,72,84,96";
  request.margin = "40 %";
  std::vector<double> times;
  for (int turn = 0; turn < turns; ++turn) {
    const double start = spent_milliseconds();
    const auto reply = service::answer({request, service::Form::json}, library);
    if (reply.status != service::Status::done) return {};
    times.push_back(spent_milliseconds() - start);
  }
  return times;
}

/// Milliseconds until it is known what to buy for `files`, asked `turns` times; stops the benchmark
/// where that is not.
std::vector<double> bought_milliseconds(const std::vector<std::string>& files,
                                        const moulds::Library& library, int turns) {
  service::BuyRequest request;
  request.files = files;
  std::vector<double> times;
  for (int turn = 0; turn < turns; ++turn) {
    const double start = spent_milliseconds();
    const auto reply = service::answer({request, service::Form::json}, library);
    times.push_back(spent_milliseconds() - start);
    const bool is_whole = reply.status == service::Status::done &&
                          Json::parse(reply.document)["materials"].size() == 60;
    if (is_whole) continue;
    std::fprintf(stderr, "%s\n", reply.complaint.c_str());
    std::exit(1);
  }
  return times;
}

/// A change such as a key makes, never the same twice; nothing where the run has no such thing.
using Change = std::function<bool(Json& run, int turn)>;

bool other_number(Json& run, int turn) {
  run["sell"] = 10 + turn;
  return true;
}
bool other_line(Json& run, int turn) {
  const Json line = {{"below_brim", std::to_string(4 + 0.01 * turn) + " mm"}};
  run["pour"]["line"] = line;
  return true;
}
bool other_topping(Json& run, int turn) {
  if (!run.contains("pipe") || !run["pipe"].contains("beads")) return false;
  run["pipe"]["beads"]["bead_to_opening"] = 1 + 0.002 * turn;
  return true;
}
bool no_change(Json&, int) { return true; }

double median(std::vector<double> times) {
  std::sort(times.begin(), times.end());
  return times[times.size() / 2];
}

std::vector<fs::path> shipped_runs() {
  std::vector<fs::path> runs;
  for (const auto& entry : fs::directory_iterator(source / "examples"))
    if (entry.path().string().ends_with(".run.json")) runs.push_back(entry.path());
  std::sort(runs.begin(), runs.end());
  return runs;
}

}  // namespace

int main(int count, char** words) {
  const int turns = count > 1 ? std::atoi(words[1]) : 15;
  const std::string only = count > 2 ? words[2] : "";  // a part of the runs' names
  const fs::path folder =
      fs::temp_directory_path() / ("brimwright_plans_" + std::to_string(getpid()));
  fs::create_directories(folder);
  auto runs = shipped_runs();
  runs.push_back(order_with_fine_mould(folder, 100'000));
  const moulds::Library library{.shipped = source.string(),
                                .folders = {folder.string()},
                                .memory = std::make_shared<moulds::MeshMemory>()};
  const std::vector<std::pair<const char*, Change>> changes = {{"again", no_change},
                                                               {"sell", other_number},
                                                               {"line", other_line},
                                                               {"topping", other_topping}};
  std::printf("%-28s %9s", "ms, median", "first");
  for (const auto& change : changes) std::printf(" %9s", change.first);
  std::printf("\n");
  for (const auto& file : runs) {
    if (file.filename().string().find(only) == std::string::npos) continue;
    const Json shipped = Json::parse(bytes_of(file));
    std::printf("%-28s %9.1f", file.filename().c_str(), milliseconds_of(file, shipped, library));
    for (const auto& [name, change] : changes) {
      std::vector<double> times;
      for (int turn = 1; turn <= turns; ++turn) {
        Json run = shipped;
        if (!change(run, turn)) break;
        times.push_back(milliseconds_of(file, run, library));
      }
      if (times.empty())
        std::printf(" %9s", "-");
      else
        std::printf(" %9.1f", median(times));
      std::fflush(stdout);
    }
    std::printf("\n");
  }
  constexpr std::int64_t numbers = 300;
  std::printf("\n%-28s %9s %9s\n", "300 other numbers, ms", "together", "can be");
  for (const auto& file : runs) {
    if (file.filename().string().find(only) == std::string::npos) continue;
    const auto [took, made] = other_numbers(file, library, numbers);
    std::printf("%-28s %9.1f %9d\n", file.filename().c_str(), took, made);
  }
  std::printf("\n%-28s %9s\n", "quote of 8 numbers, ms", "median");
  for (const auto& file : runs) {
    if (file.filename().string().find(only) == std::string::npos) continue;
    const auto times = quoted_milliseconds(file, library, turns);
    if (!times.empty()) std::printf("%-28s %9.1f\n", file.filename().c_str(), median(times));
  }
  const auto files = write_many_runs(source, folder / "many", 40);
  const auto times = bought_milliseconds(files, library, turns);
  std::printf("\n%-28s %9s %9s\n", "buy for 40 runs, ms", "first", "median");
  std::printf("%-28s %9.1f %9.1f\n", "60 materials, 240 packs", times.front(), median(times));
  fs::remove_all(folder);
}
