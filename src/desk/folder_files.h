#pragma once

#include "desk/file_facts.h"
#include "moulds/library.h"

#include <cstddef>
#include <filesystem>
#include <map>
#include <memory>
#include <string>
#include <utility>
#include <vector>

namespace brimwright::desk {

/// Of a folder, at most so many files and folders are looked at: more than a studio keeps in one,
/// and a start in "/" must not read the whole disk.
inline constexpr std::size_t most_entries = 2000;

struct FilesFound {
  std::vector<std::filesystem::path> files;
  bool is_cut = false;  // there were more entries than are looked at
};
/// The files of a folder and of its subfolders, in the order of their names, hidden ones left out.
FilesFound files_in(const std::filesystem::path& folder);

/// Documents in a folder, and how they name each other.
class FolderFiles {
 public:
  struct Document {
    std::string path, name;  // the name counts from the folder
    std::shared_ptr<const FileFactsMemory::Known> known;
  };

  FolderFiles(const std::string& folder, const FilesFound& found, const moulds::Library& library,
              FileFactsMemory& memory);

  const std::vector<Document>& documents() const { return documents_; }
  /// The path of the file that `name` in the document at `path` means; empty if there is none.
  const std::string& meant(const std::string& name, const std::string& path) const;
  /// The names of those documents that name the file at `path`.
  std::vector<std::string> users_of(const std::string& path) const;

 private:
  std::string looked_up(const std::string& name, const std::string& path) const;

  const moulds::Library& library_;
  std::vector<Document> documents_;
  std::map<std::string, std::vector<std::string>> users_;  // of the files in this folder
  // Of a name in the documents of one folder: many name the same few files.
  mutable std::map<std::pair<std::string, std::string>, std::string> meant_;
};

}  // namespace brimwright::desk
