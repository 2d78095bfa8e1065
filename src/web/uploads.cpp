#include "web/uploads.h"

#include "units/user_error.h"

#include <stdlib.h>

#include <algorithm>
#include <array>
#include <filesystem>
#include <stdexcept>

namespace brimwright::web {

namespace fs = std::filesystem;

namespace {

constexpr std::size_t longest_name = 80;

std::string private_folder() {
  std::error_code error;
  fs::path base = fs::temp_directory_path(error);
  if (error) base = "/tmp";
  std::string name = (base / "brimwright-XXXXXX").string();
  if (::mkdtemp(name.data()) == nullptr)  // with mode 0700
    throw UserError({.file = base.string(),
                     .field = "",
                     .problem = "takes no folder for files sent by the page",
                     .remedy = "make room there, or set TMPDIR to a folder you may write to"});
  return name;
}

}  // namespace

class Uploads::Slot : public IncomingFile {
 public:
  Slot(std::string folder, const std::string& name, std::string id)
      : folder_(std::move(folder)), path_(folder_ + "/" + name), id_(std::move(id)) {
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
  std::uint64_t size() const {
    std::error_code none;
    const auto size = fs::file_size(path_, none);
    return none ? 0 : size;
  }

 private:
  std::string folder_, path_, id_;
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

Uploads::Uploads(std::uint64_t most_bytes) : folder_(private_folder()), most_bytes_(most_bytes) {}

Uploads::~Uploads() {
  kept_.clear();
  remove_all();
}

void Uploads::remove_all() {
  std::error_code none;
  fs::remove_all(folder_, none);
}

std::shared_ptr<IncomingFile> Uploads::incoming(const std::string& name) {
  const std::string plain = plain_file_name(name);
  if (!is_mesh_name(plain) || fs::path(plain).stem().empty())
    throw UserError({"", "name"}, "\"" + name + "\" is no mesh file",
                    "give an STL, OBJ, PLY, OFF, 3MF, glTF or GLB file");
  const std::scoped_lock alone(mutex_);
  const std::string number = std::to_string(++last_);
  return std::make_shared<Slot>(folder_ + "/" + number, plain, "upload:" + number);
}

std::string Uploads::keep(const std::shared_ptr<IncomingFile>& file) {
  const auto slot = std::dynamic_pointer_cast<Slot>(file);
  if (!slot) throw std::logic_error("this file did not come by an upload");
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

std::string Uploads::path_of(const std::string& name) const {
  const std::scoped_lock alone(mutex_);
  for (const auto& slot : kept_)
    if (slot->id() == name) return slot->path();
  throw UserError({"", "file"}, "\"" + name + "\" is not here any more",
                  "drop the mesh file again");
}

std::string Uploads::scratch(const std::string& ending) {
  const std::scoped_lock alone(mutex_);
  return folder_ + "/out-" + std::to_string(++last_) + ending;
}

std::string Uploads::without_folder(std::string text) const {
  for (std::size_t at = text.find(folder_); at != text.npos; at = text.find(folder_, at)) {
    std::size_t end = at + folder_.size() + 1;
    while (end < text.size() && text[end] >= '0' && text[end] <= '9') ++end;
    text.erase(at, std::min(end + 1, text.size()) - at);
  }
  return text;
}

}  // namespace brimwright::web
