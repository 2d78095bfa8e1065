#include "desk/uploads.h"

#include "units/user_error.h"

#include <fcntl.h>
#include <stdlib.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <ctime>
#include <filesystem>
#include <stdexcept>

namespace brimwright::desk {

namespace fs = std::filesystem;

namespace {

constexpr std::size_t longest_name = 80;
const std::string folder_prefix = "brimwright-serve-", upload_prefix = "upload:";

/// The folder of a server has this lock for as long as the server lives, however it ends.
int locked(const std::string& folder) {
  const int lock = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_NOFOLLOW | O_CLOEXEC);
  if (lock >= 0 && ::flock(lock, LOCK_EX | LOCK_NB) == 0) return lock;
  if (lock >= 0) ::close(lock);
  return -1;
}

/// Ours, and made so long ago that its server would have locked it.
bool is_old_folder_of_mine(const std::string& folder) {
  struct stat facts {};
  constexpr std::time_t long_enough = 60;
  return ::lstat(folder.c_str(), &facts) == 0 && S_ISDIR(facts.st_mode) &&
         facts.st_uid == ::geteuid() && facts.st_mtime < std::time(nullptr) - long_enough;
}

/// A server that was killed could not remove its own.
void remove_what_dead_servers_left(const fs::path& base) {
  std::error_code none;
  for (const auto& entry : fs::directory_iterator(base, none)) {
    const std::string folder = entry.path().string();
    const bool is_a_server_s = entry.path().filename().string().starts_with(folder_prefix);
    if (!is_a_server_s || !is_old_folder_of_mine(folder)) continue;
    const int lock = locked(folder);
    if (lock < 0) continue;
    fs::remove_all(folder, none);
    ::close(lock);
  }
}

fs::path temporary_place() {
  std::error_code error;
  const fs::path place = fs::temp_directory_path(error);
  return error ? fs::path("/tmp") : place;
}

std::string private_folder() {
  const fs::path base = temporary_place();
  remove_what_dead_servers_left(base);
  std::string name = (base / (folder_prefix + "XXXXXX")).string();
  if (::mkdtemp(name.data()) == nullptr)  // with mode 0700
    throw UserError({.file = base.string(),
                     .field = "",
                     .problem = "cannot hold a temporary folder for files sent by the page",
                     .remedy = "make room there, or set TMPDIR to a folder you may write to"});
  return name;
}

}  // namespace

class Uploads::Slot : public IncomingFile {
 public:
  Slot(const std::string& folder, const std::string& name, std::uint64_t number)
      : folder_(folder + "/arriving-" + std::to_string(number)),
        arrived_(folder + "/" + std::to_string(number)),
        name_(name),
        path_(folder_ + "/" + name),
        id_(upload_prefix + std::to_string(number)) {
    if (!fs::create_directory(folder_)) throw std::runtime_error(folder_ + " is already there");
  }
  ~Slot() override {
    std::error_code none;
    fs::remove_all(folder_, none);
  }
  Slot(const Slot&) = delete;
  Slot& operator=(const Slot&) = delete;

  const std::string& path() const override { return path_; }
  const std::string& id() const { return id_; }
  /// From now on it is found by its number: nobody is given half a file.
  void arrive() {
    fs::rename(folder_, arrived_);
    folder_ = arrived_;
    path_ = folder_ + "/" + name_;
  }
  std::uint64_t size() const {
    std::error_code none;
    const auto size = fs::file_size(path_, none);
    return none ? 0 : size;
  }

 private:
  std::string folder_, arrived_, name_, path_, id_;
};

std::string plain_file_name(const std::string& name) {
  const std::size_t slash = name.find_last_of("/\\");
  std::string plain;
  for (const char c : slash == name.npos ? name : name.substr(slash + 1)) {
    const bool is_plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
                          (c >= '0' && c <= '9') || c == '.' || c == '-' || c == '_';
    plain += is_plain ? c : '_';
  }
  if (plain.size() > longest_name) plain.erase(0, plain.size() - longest_name);
  // Neither a hidden file nor an option.
  plain.erase(0, std::min(plain.find_first_not_of(".-"), plain.size()));
  return plain;
}

bool is_mesh_name(const std::string& name) {
  std::string ending = fs::path(name).extension().string();
  std::transform(ending.begin(), ending.end(), ending.begin(), [](char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  });
  static constexpr std::array<std::string_view, 7> meshes = {".stl", ".obj",  ".ply", ".off",
                                                             ".3mf", ".gltf", ".glb"};
  return std::find(meshes.begin(), meshes.end(), ending) != meshes.end();
}

Uploads::Uploads(std::uint64_t most_bytes)
    : folder_(private_folder()), lock_(locked(folder_)), most_bytes_(most_bytes) {}

Uploads::~Uploads() {
  kept_.clear();
  remove_all();
  if (lock_ >= 0) ::close(lock_);
}

void Uploads::remove_all() {
  std::error_code none;
  fs::remove_all(folder_, none);
}

std::shared_ptr<IncomingFile> Uploads::incoming(const std::string& name) {
  const std::string plain = plain_file_name(name);
  if (!is_mesh_name(plain) || fs::path(plain).stem().empty())
    throw UserError({"", "name"}, "\"" + name + "\" is not a mesh file",
                    "give an STL, OBJ, PLY, OFF, 3MF, glTF or GLB file");
  const std::scoped_lock alone(mutex_);
  return std::make_shared<Slot>(folder_, plain, ++last_);
}

std::string Uploads::keep(const std::shared_ptr<IncomingFile>& file) {
  const auto slot = std::dynamic_pointer_cast<Slot>(file);
  if (!slot) throw std::logic_error("this file was not sent by the page");
  slot->arrive();
  const std::scoped_lock alone(mutex_);
  kept_.push_back(slot);
  std::uint64_t bytes = 0;
  for (const auto& each : kept_) bytes += each->size();
  while (bytes > most_bytes_ && kept_.size() > 1) {
    bytes -= kept_.front()->size();
    kept_.pop_front();
  }
  return slot->id();
}

std::string UploadFolder::path_of(const std::string& name) const {
  const std::string number = name.substr(std::min(upload_prefix.size(), name.size()));
  const bool is_number = !number.empty() && std::all_of(number.begin(), number.end(), [](char c) {
    return c >= '0' && c <= '9';
  });
  std::error_code none;
  if (is_upload(name) && is_number)
    for (const auto& entry : fs::directory_iterator(folder_ + "/" + number, none))
      return entry.path().string();
  throw UserError({"", "file"}, "\"" + name + "\" is not here any more",
                  "drop the mesh file again");
}

std::string UploadFolder::without_folder(std::string text) const {
  for (std::size_t at = text.find(folder_); at != text.npos; at = text.find(folder_, at)) {
    std::size_t end = at + folder_.size() + 1;
    while (end < text.size() && text[end] >= '0' && text[end] <= '9') ++end;
    text.erase(at, std::min(end + 1, text.size()) - at);
  }
  return text;
}

}  // namespace brimwright::desk
