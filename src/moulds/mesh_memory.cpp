#include "moulds/mesh_memory.h"

#include "units/printing.h"

#include <sys/stat.h>

#include <algorithm>
#include <ctime>
#include <iterator>
#include <utility>

namespace brimwright::moulds {
namespace {

constexpr std::int64_t nanoseconds = 1'000'000'000;

std::int64_t since_epoch(const timespec& time) { return time.tv_sec * nanoseconds + time.tv_nsec; }

/// What tells a file's content from what it was before; empty for what cannot be told.
///
/// The kernel's clock for files ticks every few milliseconds, so a file may change twice in one
/// tick: one that changed just now is not told.
std::string stamp_of(const std::string& path) {
  struct stat facts {};
  if (::stat(path.c_str(), &facts) != 0) return {};
  timespec now{};
  ::clock_gettime(CLOCK_REALTIME_COARSE, &now);
  constexpr std::int64_t tick = nanoseconds / 50;  // twice the slowest tick, 10 ms (HZ=100)
  if (since_epoch(now) - since_epoch(facts.st_ctim) < tick) return {};
  return std::to_string(facts.st_dev) + "/" + std::to_string(facts.st_ino) + "/" +
         std::to_string(facts.st_size) + "/" + std::to_string(since_epoch(facts.st_mtim)) + "/" +
         std::to_string(since_epoch(facts.st_ctim));
}

std::string text_of(const SurveyWishes& wishes) {
  const auto number = [](const auto& wish) {
    return wish ? std::to_string(static_cast<int>(*wish)) + "/" : std::string("-/");
  };
  std::string text = number(wishes.reading.unit) + number(wishes.reading.up) + number(wishes.role) +
                     (wishes.on_board ? "board/" : "-/");
  if (wishes.reading.straight_up)
    for (const double part : *wishes.reading.straight_up) text += exact(part) + "/";
  return text;
}

using Finding = std::variant<MeshCavities, Question, UserError>;

std::size_t facets_of(const Finding& finding) {
  const auto* cavities = std::get_if<MeshCavities>(&finding);
  if (cavities == nullptr) return 1;
  std::size_t facets = cavities->survey.mesh.triangles.size();
  for (const auto& hollow : cavities->survey.hollows) facets += hollow.wall.triangles.size();
  return facets;
}

/// A mesh that is refused may have taken as long to look at as one that is not.
Finding finding_of(const std::string& path, const SurveyWishes& wishes) {
  try {
    return measured_mesh(path, wishes);
  } catch (const Question& question) {
    return question;
  } catch (const UserError& error) {
    return error;
  }
}

MeshCavities cavities_in(Finding finding) {
  if (const auto* question = std::get_if<Question>(&finding)) throw *question;
  if (const auto* error = std::get_if<UserError>(&finding)) throw *error;
  return std::get<MeshCavities>(std::move(finding));
}

}  // namespace

NotYetMeasured::NotYetMeasured(const std::string& path)
    : std::runtime_error(path + " has not been measured yet") {}

MeshCavities MeshMemory::measured(const std::string& path, const SurveyWishes& wishes,
                                  bool only_remembered) {
  const auto key_now = [&] {
    const std::string stamp = stamp_of(path);
    // Its path too: complaints and descriptions name it.
    return stamp.empty() ? stamp : stamp + "\n" + path + "\n" + text_of(wishes);
  };
  const auto remembered = [&](const std::string& key) -> std::optional<Finding> {
    const std::scoped_lock alone(memory_);
    const Finding* finding = key.empty() ? nullptr : found(key);
    return finding ? std::optional(*finding) : std::nullopt;
  };
  if (auto known = remembered(key_now())) return cavities_in(std::move(*known));
  if (only_remembered) throw NotYetMeasured(path);
  const std::scoped_lock one_at_a_time(measuring_);
  const std::string before = key_now();
  if (auto known = remembered(before))  // by who held the lock
    return cavities_in(std::move(*known));
  Finding finding = finding_of(path, wishes);
  if (!before.empty() && key_now() == before) keep(before, finding);
  return cavities_in(std::move(finding));
}

std::size_t MeshMemory::count() const {
  const std::scoped_lock alone(memory_);
  return known_.size();
}

const MeshMemory::Finding* MeshMemory::found(const std::string& key) {
  const auto at =
      std::find_if(known_.begin(), known_.end(), [&](const Known& k) { return k.key == key; });
  if (at == known_.end()) return nullptr;
  known_.splice(known_.begin(), known_, at);
  return &known_.front().finding;
}

void MeshMemory::keep(const std::string& key, const Finding& finding) {
  const std::scoped_lock alone(memory_);
  known_.push_front({key, finding});
  std::size_t facets = facets_of(finding);
  // The one just measured stays, however large: it is about to be asked for again.
  const auto first_too_many = std::find_if(
      std::next(known_.begin()), known_.end(),
      [&](const Known& known) { return (facets += facets_of(known.finding)) > most_facets_; });
  known_.erase(first_too_many, known_.end());
}

MeshCavities measured_mesh(const std::string& path, const SurveyWishes& wishes,
                           const Library& library) {
  if (!library.memory) return measured_mesh(path, wishes);
  return library.memory->measured(path, wishes, library.only_remembered);
}

}  // namespace brimwright::moulds
