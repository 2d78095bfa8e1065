#include "desk/clock.h"
#include "desk/folder_files.h"
#include "desk/secret.h"
#include "desk/workspace.h"
#include "units/user_error.h"

#include <nlohmann/json.hpp>
#include <sys/stat.h>

#include <algorithm>
#include <cerrno>
#include <chrono>
#include <ctime>
#include <filesystem>
#include <vector>

namespace brimwright::desk {

using Json = nlohmann::ordered_json;
namespace fs = std::filesystem;

namespace {

const std::string removed_folder = "removed";
// Longer than from one Christmas market to the one after the next.
constexpr std::time_t kept_for_s = std::time_t{2} * 366 * 24 * 60 * 60;

/// The one file in a folder and those in it.
fs::path only_file_in(const fs::path& folder) {
  std::error_code none;
  for (const auto& entry : fs::recursive_directory_iterator(folder, none))
    if (entry.is_regular_file(none) && !entry.is_symlink(none)) return entry.path();
  return {};
}

/// When the file in that folder was put there; now, where nobody knows.
std::time_t moment_of(const fs::path& folder) {
  struct stat status {};
  return ::lstat(folder.c_str(), &status) == 0 ? status.st_mtim.tv_sec : std::time(nullptr);
}

bool is_token(const std::string& text) {
  return !text.empty() && text.size() <= 64 &&
         text.find_first_not_of("0123456789abcdef") == text.npos;
}

std::vector<fs::path> folders_in(const fs::path& folder) {
  std::vector<fs::path> folders;
  std::error_code none;
  for (const auto& entry : fs::directory_iterator(folder, none))
    if (is_token(entry.path().filename().string()) && !entry.is_symlink(none) &&
        entry.is_directory(none))
      folders.push_back(entry.path());
  return folders;
}

}  // namespace

/// UserError where nothing lies there under that name.
std::string Workspace::place_of_removed(const std::string& removed) const {
  std::string part = removed_folder + "/" + removed;
  if (is_token(removed) && own_.has_folder(part) && !only_file_in(own_.path(part)).empty())
    return part;
  throw UserError({"", "removed"}, "nothing was removed under that name, or it is restored",
                  "look whether the file is there");
}

Json Workspace::removed() const {
  struct Removed {
    std::time_t moment;
    Json told;
  };
  std::vector<Removed> all;
  if (!own_.has_folder(removed_folder)) return Json::array();
  for (const fs::path& folder : folders_in(own_.path(removed_folder))) {
    const fs::path file = only_file_in(folder);
    if (file.empty()) continue;
    const auto known = facts_.of(file.string());
    const std::time_t moment = moment_of(folder);
    all.push_back({moment,
                   {{"removed", folder.filename().string()},
                    {"file", file.lexically_relative(folder).string()},
                    {"kind", known->facts.kind},
                    {"name", known->facts.name},
                    {"removed_at", moment_in_words(moment)},
                    {"kept_until", moment_in_words(moment + kept_for_s)}}});
  }
  std::sort(all.begin(), all.end(),
            [](const Removed& a, const Removed& b) { return a.moment > b.moment; });
  Json json = Json::array();
  for (auto& one : all) json.push_back(std::move(one.told));
  return json;
}

void Workspace::forget(const std::string& removed) {
  const AloneInFolder alone(own_);
  const std::string part = place_of_removed(removed);
  std::error_code error;
  fs::remove_all(own_.path(part), error);
  if (error)
    throw UserError({"", "removed"}, "cannot be deleted", "check that you may write to its folder");
}

/// What cannot be deleted stays until the next time.
void Workspace::forget_long_removed() const {
  if (!own_.has_folder(removed_folder)) return;
  std::error_code none;
  for (const fs::path& folder : folders_in(own_.path(removed_folder)))
    if (moment_of(folder) + kept_for_s < std::time(nullptr)) fs::remove_all(folder, none);
}

std::string Workspace::remove(const std::string& name, bool even_so) {
  const AloneInFolder alone(own_);
  const std::scoped_lock no_saving(saving_);
  const std::string path = path_of_own(name);
  bool is_cut = false;
  const auto users = own_files(is_cut).users_of(path);
  if (!users.empty() && !even_so) throw StillNamed(name, users);
  forget_long_removed();
  std::string token = new_token();
  const fs::path place = fs::path(removed_folder) / token / name;
  own_.made(place.parent_path().string());
  if (move_file(path, own_.path(place.string())) != 0)
    throw UserError({name, ""}, "cannot be removed", "check that you may write to its folder");
  return token;
}

std::string Workspace::restore(const std::string& removed) {
  const AloneInFolder alone(own_);
  const std::scoped_lock no_saving(saving_);
  const std::string part = place_of_removed(removed);
  const fs::path file = only_file_in(own_.path(part));
  std::string name = file.lexically_relative(own_.path(part)).string();
  std::error_code none;
  fs::create_directories((fs::path(folder_) / name).parent_path(), none);
  const int error = move_file(file.string(), path_to_write(name));
  if (error == EEXIST) refuse_taken(name);
  if (error != 0)
    throw UserError({name, ""}, "cannot be restored", "check that you may write to its folder");
  fs::remove_all(own_.path(part), none);
  return name;
}

}  // namespace brimwright::desk
