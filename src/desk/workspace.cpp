#include "desk/workspace.h"

#include "desk/plain_reading.h"
#include "desk/renaming.h"
#include "desk/uploads.h"
#include "units/fields.h"
#include "units/file_writing.h"
#include "units/user_error.h"

#include <algorithm>
#include <cstdint>
#include <filesystem>
#include <utility>

namespace brimwright::desk {

namespace fs = std::filesystem;

namespace {

constexpr std::size_t longest_document = 4u << 20;
constexpr std::size_t longest_mesh = 200u << 20;

[[noreturn]] void refuse(const std::string& name, const std::string& problem,
                         const std::string& remedy) {
  throw UserError({"", "file"}, "\"" + name + "\" " + problem, remedy);
}

bool lies_in(const fs::path& file, const fs::path& folder) {
  return !folder.empty() &&
         std::mismatch(folder.begin(), folder.end(), file.begin(), file.end()).first ==
             folder.end();
}

/// Relative, downward, and neither hidden nor with anything in it that is no part of a name.
bool is_plain_path(const std::string& name) {
  constexpr std::size_t longest_path = 1000, longest_part = 255;  // bytes; NAME_MAX of Linux
  if (name.empty() || name.size() > longest_path || name.front() == '/' || name.back() == '/')
    return false;
  const bool has_control = std::any_of(name.begin(), name.end(), [](char c) {
    return static_cast<unsigned char>(c) < 0x20 || c == 0x7f || c == '\\';
  });
  const fs::path path(name);
  return !has_control && std::none_of(path.begin(), path.end(), [](const fs::path& part) {
    return part.empty() || part.native().front() == '.' || part.native().size() > longest_part;
  });
}

std::string canonical_folder(const std::string& folder) {
  std::error_code error;
  const fs::path there = fs::canonical(folder, error);
  if (error || !fs::is_directory(there))
    throw UserError({folder, ""}, "is not a folder", "name a run file, or start in its folder");
  return there.string();
}

bool ends_as_json(const std::string& name) { return fs::path(name).extension() == ".json"; }

}  // namespace

std::string version_of(std::string_view text) {
  std::uint64_t hash = 0xcbf29ce484222325;  // FNV-1a, 64 bits: draft-eastlake-fnv, section 5
  for (const char c : text) hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001b3;
  std::string name;
  for (int shift = 60; shift >= 0; shift -= 4) name += "0123456789abcdef"[(hash >> shift) & 15];
  return name + "-" + std::to_string(text.size());
}

Workspace::Workspace(const std::string& folder, moulds::Library library)
    : folder_(canonical_folder(folder)), library_(std::move(library)), own_(folder_) {
  library_.memory = nullptr;  // for names only
}

std::string Workspace::path_to_read(const std::string& name, bool may_be_new) const {
  // As though written in a file of this folder.
  const Place here{folder_ + "/run.json", "file"};
  try {
    return library_.resolve(name, here);
  } catch (const UserError& error) {
    if (may_be_new && is_plain_path(name)) return path_to_write(name);
    throw UserError({"", "file"}, error.parts().problem, "choose one of the files listed");
  }
}

std::string Workspace::path_to_write(const std::string& name) const {
  if (!is_plain_path(name))
    refuse(name, "cannot be the name of a file here",
           "give a plain name, such as \"may.run.json\"");
  std::error_code error;
  const fs::path path = fs::path(folder_) / name;
  const fs::path parent = fs::canonical(path.parent_path(), error);
  if (error || !lies_in(parent, folder_))
    refuse(name, "names a folder that is not here", "give a name without a folder");
  if (!fs::exists(fs::symlink_status(path, error))) return (parent / path.filename()).string();
  const fs::path file = fs::canonical(path, error);
  if (error || !lies_in(file, folder_) || !fs::is_regular_file(file))
    refuse(name, "is not a file in this folder", "give another name");
  return file.string();
}

Workspace::Document Workspace::document(const std::string& name) const {
  if (!ends_as_json(name)) refuse(name, "is not a JSON file", "choose one of the files listed");
  const std::string path = path_to_read(name, false);
  Document document{.text = plain_file(path, longest_document), .version = {}, .is_shipped = false};
  document.version = version_of(document.text);
  // In any folder but this one it is saved as a copy, whoever it belongs to.
  document.is_shipped = !lies_in(path, folder_);
  return document;
}

std::optional<std::string> Workspace::version(const std::string& name) const {
  const std::string path = path_to_read(name, true);
  std::error_code error;
  if (!fs::exists(path, error)) return std::nullopt;
  return version_of(plain_file(path, longest_document));
}

Workspace::Saved Workspace::save(const std::string& name,
                                 const std::optional<std::string>& expected,
                                 const std::string& text, const std::optional<std::string>& from) {
  if (!ends_as_json(name)) refuse(name, "does not end in .json", "give a name that does");
  const std::string path = path_to_write(name);
  std::string wanted = text;
  if (from)
    wanted = named_from(text, path_to_read(*from, false), path, library_);
  else
    Fields::parse(text, name);  // no file of ours is anything but an object
  if (wanted.size() > longest_document) refuse(name, "would be larger than 4 MiB", "shorten it");

  const std::scoped_lock alone(saving_);
  std::error_code error;
  std::optional<Document> present;
  if (fs::exists(path, error)) {
    present = Document{.text = plain_file(path, longest_document), .version = {}};
    present->version = version_of(present->text);
  }
  const auto version = present ? std::optional(present->version) : std::nullopt;
  if (present && present->text == wanted) return {true, present};  // asked for a second time
  if (version != expected) return {false, present};
  write_file(path, wanted);
  return {true, Document{.text = wanted, .version = version_of(wanted)}};
}

bool Workspace::keep_mesh(const std::string& name, const std::string& source) {
  if (!is_mesh_name(name)) refuse(name, "is not a mesh file", "end the name as the file sent ends");
  const std::string path = path_to_write(name);
  const std::string bytes = plain_file(source, longest_mesh);
  const std::scoped_lock alone(saving_);
  std::error_code error;
  if (fs::exists(path, error))
    return fs::file_size(path, error) == bytes.size() && plain_file(path, longest_mesh) == bytes;
  write_file(path, bytes);
  return true;
}

}  // namespace brimwright::desk
