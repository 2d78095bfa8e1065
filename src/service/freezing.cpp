#include "service/freezing.h"

#include "moulds/mesh_memory.h"
#include "records/content_hash.h"
#include "reports/plan_report.h"
#include "runs/studio_file.h"
#include "service/day_lyes.h"
#include "service/run_planning.h"
#include "units/fields.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <memory>
#include <utility>

namespace brimwright::service {

namespace fs = std::filesystem;

namespace {

fs::path whole_path(const fs::path& path) {
  std::error_code error;
  fs::path found = fs::weakly_canonical(fs::absolute(path, error), error);
  return error ? path : found;
}

/// What lies in her folder is called from there, what came with the program from its own folder;
/// so the same files are called the same wherever they lie.
std::string called(const fs::path& path, const fs::path& folder, const fs::path& shipped) {
  const auto inside = [&](const fs::path& of) {
    const fs::path rest = path.lexically_relative(of);
    return of.empty() || rest.empty() || *rest.begin() == ".." ? fs::path() : rest;
  };
  if (const fs::path own = inside(folder); !own.empty()) return own.string();
  if (const fs::path built_in = inside(shipped); !built_in.empty())
    return "built-in: " + built_in.string();
  return path.string();
}

records::Source source_of(const fs::path& path, const std::string& name) {
  if (path.extension() == ".json") return {.path = name, .text = text_of_file(path.string())};
  std::ifstream file(path, std::ios::binary);
  const std::string bytes{std::istreambuf_iterator<char>(file), {}};
  if (!file) throw UserError({path.string(), ""}, "cannot be read", "check its rights");
  return {.path = name, .sha256 = records::content_hash(bytes)};
}

[[noreturn]] void refuse_changed(const std::string& file) {
  throw UserError({file, ""}, "was changed while it was planned, or a file that it names was",
                  "do it again");
}

}  // namespace

const planning::Batch& FrozenPlan::batch(std::int64_t number) const {
  return batch_numbered(plan, number);
}

PlanSources sources_of_plan(const std::string& file, const std::vector<std::string>& read,
                            const moulds::Library& library) {
  const fs::path folder = whole_path(file).parent_path();
  const fs::path shipped = library.shipped.empty() ? fs::path() : whole_path(library.shipped);
  std::map<fs::path, const std::string*> texts;  // nullptr: not read as a document
  for (const std::string& one : read) {
    const std::string* const text = library.read_once ? library.read_once->text(one) : nullptr;
    const std::string*& known = texts[whole_path(one)];
    if (known != nullptr && text != nullptr && *known != *text) refuse_changed(file);
    if (text != nullptr) known = text;
  }
  PlanSources all;
  for (const auto& [path, text] : texts) {
    const std::string name = called(path, folder, shipped);
    all.are_as_planned &= text != nullptr;
    all.sources.push_back(text != nullptr ? records::Source{.path = name, .text = *text}
                                          : source_of(path, name));
  }
  std::sort(all.sources.begin(), all.sources.end(),
            [](const auto& a, const auto& b) { return a.path < b.path; });
  return all;
}

/// Planned once more where a mesh was read, say, all files anew and what was measured remembered:
/// where both plans are the same, what was read between them is what they were made from.
FrozenPlan frozen_plan(const std::string& file, const moulds::Library& given,
                       const Caller& caller) {
  moulds::Library library = given;
  if (!library.memory) library.memory = std::make_shared<moulds::MeshMemory>();
  library.named = std::make_shared<std::vector<std::string>>();
  library.read_once = std::make_shared<ReadOnce>();
  MeasureMemory measured;
  Caller patient = caller;
  if (patient.memory == nullptr) patient.memory = &measured;
  const auto answer_of = [&](const planning::Run& of, const planning::Plan& its) {
    return reports::plan_json(of, its, {}, {},
                              lye_of_day(of, its, runs::studio_for(file, library)));
  };
  auto [run, pieces, plan] = planned_run(file, {}, library, patient);
  std::string answer = answer_of(run, plan);
  library.named->push_back(file);
  auto sources = sources_of_plan(file, *library.named, library);
  if (!sources.are_as_planned) {
    library.read_once.reset();
    const auto again = planned_run(file, {}, library, patient);
    if (answer_of(again.run, again.plan) != answer) refuse_changed(file);
  }
  return {std::move(run), std::move(plan), std::move(answer), std::move(sources.sources)};
}

}  // namespace brimwright::service
