#pragma once

#include "desk/request.h"

#include <cstdint>
#include <list>
#include <memory>
#include <mutex>
#include <string>
#include <utility>

namespace brimwright::desk {

/// The private folder of what the page has sent, as the worker sees it: an upload lies alone in a
/// folder called by its number.
class UploadFolder {
 public:
  explicit UploadFolder(std::string folder) : folder_(std::move(folder)) {}

  const std::string& path() const { return folder_; }
  static bool is_upload(const std::string& name) { return name.starts_with("upload:"); }
  /// The path of an upload. UserError if there is none of that name (any more).
  std::string path_of(const std::string& name) const;
  /// `text` without this folder's own name wherever that stands: the maker knows the file alone.
  std::string without_folder(std::string text) const;

 private:
  std::string folder_;
};

/// Mesh files sent by the page, in a private folder that goes with this object; if the process is
/// killed, the next of the same user removes it.
///
/// An upload is called "upload:1" and so on; the least lately sent go when all together are larger
/// than `most_bytes`.
class Uploads {
 public:
  explicit Uploads(std::uint64_t most_bytes = std::uint64_t{800} << 20);
  ~Uploads();
  Uploads(const Uploads&) = delete;
  Uploads& operator=(const Uploads&) = delete;

  /// A place for a file of that name, cleaned. UserError unless it ends as a mesh file does.
  /// Removed again unless it is kept.
  std::shared_ptr<IncomingFile> incoming(const std::string& name);
  /// What an arrived file is called from now on. Its path changes.
  std::string keep(const std::shared_ptr<IncomingFile>& file);

  const std::string& folder() const { return folder_; }
  /// Removes the folder at once, for an end that cannot wait for destructors.
  void remove_all();

 private:
  class Slot;

  std::string folder_;
  int lock_;
  std::uint64_t most_bytes_;
  std::mutex mutex_;
  std::uint64_t last_ = 0;
  std::list<std::shared_ptr<Slot>> kept_;  // the oldest first
};

/// The last part of a path as a browser gives it, with nothing in it that a file system, a terminal
/// or a document could take amiss; at most 80 characters.
std::string plain_file_name(const std::string& name);

/// Whether the name ends as one of the mesh files that can be read.
bool is_mesh_name(const std::string& name);

}  // namespace brimwright::desk
