#include "desk/bench_keeping.h"

#include "desk/plain_reading.h"
#include "desk/workspace.h"
#include "schemas/tidying.h"
#include "units/file_writing.h"

#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <charconv>
#include <filesystem>
#include <map>
#include <utility>

namespace brimwright::desk {

namespace fs = std::filesystem;

namespace {

constexpr std::size_t longest_file = 4u << 20;
constexpr std::size_t most_entries = 20'000;  // of a folder that only this program writes into
constexpr std::size_t most_under_way = 50;    // of one run; more than any bench has room for
const std::string bench = "bench", put_away_folder = "bench/put_away", ending = ".json";

/// How the files of a run's batches begin: those that know its id, then those that were kept before
/// its file had one.
std::vector<std::string> beginnings(const BenchRun& run) {
  std::vector<std::string> all;
  if (run.id) all.push_back(*run.id + ".");
  all.push_back((run.is_built_in ? "built-in-" : "file-") + version_of(run.file) + ".");
  return all;
}

std::string name_of(const std::string& beginning, std::int64_t number) {
  return beginning + std::to_string(number) + ending;
}

/// Where one of them stands in her own folder.
std::string place_of(const std::string& name) { return fs::path(bench) / name; }

/// Whether a file is called as this program calls its own: something, a number, the ending.
bool is_a_name_of_ours(const std::string& name) {
  if (!name.ends_with(ending)) return false;
  const std::string stem = name.substr(0, name.size() - ending.size());
  const std::size_t dot = stem.find('.');
  if (dot == 0 || dot == stem.npos || dot + 1 == stem.size() || stem[dot + 1] == '0') return false;
  return stem.find_first_not_of("0123456789", dot + 1) == stem.npos;
}

std::vector<std::string> names_in(const std::string& folder) {
  std::vector<std::string> names;
  std::error_code none;
  fs::directory_iterator at(folder, none);
  for (; !none && at != fs::directory_iterator() && names.size() < most_entries; at.increment(none))
    names.push_back(at->path().filename().string());
  std::sort(names.begin(), names.end());
  return names;
}

bool is_there(const std::string& path) {
  struct stat facts {};
  return ::lstat(path.c_str(), &facts) == 0;
}

UserError damaged(const std::string& name, const std::string& problem) {
  return UserError({OwnFolder::told(place_of(name)), ""},
                   "cannot be read as a batch at the bench: " + problem,
                   "put a sound copy in its place or move it out of there; until then, nothing is "
                   "written over it");
}

std::string problem_in(const UserError& error) {
  const auto& [file, field, problem, remedy] = error.parts();
  return (field.empty() || field == "/" ? "" : field + " ") + problem;
}

}  // namespace

struct BenchKeeping::Kept {
  std::string name;
  BenchBatch batch;
};

std::string bench_version(const OwnFolder& own) try {
  struct stat facts {};
  if (::lstat(own.path(bench).c_str(), &facts) != 0) return "none";
  return version_of(std::to_string(facts.st_ino) + " " + std::to_string(facts.st_mtim.tv_sec) +
                    " " + std::to_string(facts.st_mtim.tv_nsec)) +
         "-" + own.changes();
} catch (const UserError&) {
  return "none";
}

BenchKeeping::Kept BenchKeeping::read(const std::string& name) const try {
  const std::string text = plain_file(own_.path(place_of(name)), longest_file);
  return {name, read_bench_batch(text, name)};
} catch (const UserError& error) {
  throw damaged(name, problem_in(error));
}

/// The same, of that run and no other that came by its id.
BenchKeeping::Kept BenchKeeping::read_of(const BenchRun& run, const std::string& name) const {
  Kept kept = read(name);
  const BenchBatch& batch = kept.batch;
  const auto all = beginnings(run);
  const bool is_named_so = std::any_of(all.begin(), all.end(), [&](const std::string& beginning) {
    return name == name_of(beginning, batch.number);
  });
  if (!is_named_so || (batch.run_id && batch.run_id != run.id))
    throw damaged(name, "it is of another batch than its name says");
  if (batch.run != run.file && batch.run_id && id_of_(batch.run) == batch.run_id)
    throw UserError({run.file, "/id"},
                    "is the id of \"" + batch.run + "\" too, which has a batch at the bench",
                    "give one of the two files another id: take \"id\" out of the copy, and "
                    "brimwright tidy gives it a new one");
  return kept;
}

std::optional<BenchKeeping::Kept> BenchKeeping::kept(const BenchRun& run,
                                                     std::int64_t number) const {
  if (!own_.has_folder(bench)) return std::nullopt;
  for (const std::string& beginning : beginnings(run)) {
    const std::string name = name_of(beginning, number);
    if (is_there(own_.path(place_of(name)))) return read_of(run, name);
  }
  return std::nullopt;
}

BenchKeeping::Listed BenchKeeping::listed(const BenchRun& run) const {
  Listed listed{.version = bench_version(own_)};  // before what it is the version of
  if (!own_.has_folder(bench)) return listed;
  const auto all = beginnings(run);
  std::map<std::int64_t, BenchBatch> found;
  for (const std::string& name : names_in(own_.path(bench))) try {
      if (name.starts_with(".") || name == fs::path(put_away_folder).filename()) continue;
      if (!is_a_name_of_ours(name))
        throw UserError({OwnFolder::told(place_of(name)), ""},
                        "is no file that brimwright keeps there", "move it out of there");
      const bool is_of_run = std::any_of(all.begin(), all.end(), [&](const std::string& beginning) {
        return name.starts_with(beginning);
      });
      if (!is_of_run) continue;
      BenchBatch batch = read_of(run, name).batch;
      batch.run = run.file;
      if (batch.run_id || !found.contains(batch.number))
        found.insert_or_assign(batch.number, std::move(batch));
    } catch (const UserError& error) {
      listed.complaints.push_back(error);
    }
  for (auto& [number, batch] : found) listed.batches.push_back(std::move(batch));
  return listed;
}

void BenchKeeping::write(const BenchRun& run, BenchBatch& batch, const std::string& before,
                         const AloneInFolder& alone) const {
  batch.run = run.file;
  batch.run_id = run.id;
  const std::string text = kept_text(batch);
  if (text.size() > longest_file)
    throw UserError({run.file, ""}, "has a plan that is too long to be kept at the bench",
                    "make fewer kinds of batches of it");
  const std::string name = name_of(beginnings(run).front(), batch.number);
  write_file(own_.made(bench) + "/" + name, text);
  if (!before.empty() && before != name) ::unlink(own_.path(place_of(before)).c_str());
  alone.tell_change();
}

std::optional<BenchBatch> BenchKeeping::change(const BenchRun& run, std::int64_t number,
                                               const Change& change) const {
  if (!own_.has_folder(bench)) return std::nullopt;
  const AloneInFolder alone(own_);
  auto kept = this->kept(run, number);
  if (!kept) return std::nullopt;
  const std::string before = kept_text(kept->batch);
  change(kept->batch);
  if (kept_text(kept->batch) != before) write(run, kept->batch, kept->name, alone);
  kept->batch.run = run.file;
  return std::move(kept->batch);
}

void BenchKeeping::refuse_one_too_many(const BenchRun& run) const {
  const Listed now = listed(run);
  const auto under_way = std::count_if(now.batches.begin(), now.batches.end(),
                                       [](const BenchBatch& one) { return !one.finished_at; });
  if (static_cast<std::size_t>(under_way) >= most_under_way)
    throw UserError({"", "batch"},
                    std::to_string(under_way) + " batches of this run are under way already",
                    "finish one of them, or put one away, before another is begun");
}

BenchBatch BenchKeeping::begin(const BenchRun& run, BenchBatch fresh, const Change& change) const {
  own_.made(bench);
  const AloneInFolder alone(own_);
  auto kept = this->kept(run, fresh.number);
  BenchBatch& batch = kept ? kept->batch : fresh;
  if (!kept) refuse_one_too_many(run);
  change(batch);
  write(run, batch, kept ? kept->name : "", alone);
  return std::move(batch);
}

void BenchKeeping::put_away(const BenchRun& run, std::int64_t number) const {
  if (!own_.has_folder(bench)) return;
  const AloneInFolder alone(own_);
  bool is_any = false;
  for (const std::string& beginning : beginnings(run)) {
    const std::string name = name_of(beginning, number);
    const std::string from = own_.path(place_of(name));
    if (!is_there(from)) continue;
    // Under a name that none put away before has: a batch may be begun anew several times.
    const std::string to = own_.made(put_away_folder) + "/" +
                           name.substr(0, name.size() - ending.size()) + "." + schemas::new_id() +
                           ending;
    if (move_file(from, to) != 0)
      throw UserError({OwnFolder::told(place_of(name)), ""}, "cannot be moved away",
                      "check that you may write to its folder");
    is_any = true;
  }
  if (is_any) alone.tell_change();
}

void BenchKeeping::rename(const std::string& file, const std::string& to) const {
  if (!own_.has_folder(bench)) return;
  const BenchRun before{.file = file}, after{.file = to};
  const AloneInFolder alone(own_);
  for (BenchBatch& batch : listed(before).batches)
    write(after, batch, name_of(beginnings(before).front(), batch.number), alone);
}

void BenchKeeping::go_on_as(const BenchRun& run, const BenchRun& copy) const try {
  if (!run.is_built_in || !own_.has_folder(bench)) return;
  const AloneInFolder alone(own_);
  for (BenchBatch& batch : listed(run).batches)
    if (!kept(copy, batch.number))
      write(copy, batch, name_of(beginnings(run).front(), batch.number), alone);
} catch (const UserError&) {
  return;  // the copy is written all the same
}

}  // namespace brimwright::desk
