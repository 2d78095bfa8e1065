#pragma once

#include "desk/file_facts.h"
#include "desk/folder_files.h"
#include "desk/own_folder.h"
#include "moulds/library.h"

#include <nlohmann/json_fwd.hpp>

#include <mutex>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace brimwright::desk {

/// The folder the page works in, and what else it may read.
///
/// Names come from the page and are never trusted: what is read lies, links followed, in this
/// folder, the shipped one or a library folder (moulds::Library); what is written lies in this
/// folder.
class Workspace {
 public:
  /// UserError if `folder` is not one.
  Workspace(const std::string& folder, moulds::Library library);

  const std::string& folder() const { return folder_; }

  struct Document {
    std::string text;
    std::string version;
    bool is_shipped = false;  // lies elsewhere, so it is saved as a copy
  };
  /// A JSON file that may be read. UserError for any other name, or more than 4 MiB.
  Document document(const std::string& name) const;
  /// The version of a file of this folder, or nothing while there is none.
  std::optional<std::string> version(const std::string& name) const;

  struct Saved {
    bool is_saved;
    std::optional<Document> present;  // what is in the file now
  };
  /// Writes `text` to a JSON file of this folder, whole or not at all, if the file still is the
  /// `expected` version (none: not there yet); done already if it holds that text. With `from`, the
  /// file it began as, the moulds, formulas and meshes it names are named so that they are found
  /// from here.
  ///
  /// Two savings through this object never cross; another program could still write between the
  /// look and the rename, some microseconds.
  Saved save(const std::string& name, const std::optional<std::string>& expected,
             const std::string& text, const std::optional<std::string>& from);

  // Of runs, formulas, moulds, fats and tips that lie in this folder (file_moves.cpp,
  // removed_files.cpp). Whatever changes several files looks at all that could refuse it first;
  // ended at any moment, it leaves every name leading to the file that it means.

  /// What a rename has done.
  struct Renamed {
    std::vector<std::string> renamed_in;  // the files that name it, by its new name now
    bool is_cut;                          // there are more files than are looked at
  };
  /// Overtaken where another file has the name already.
  Renamed rename(const std::string& name, const std::string& to);
  /// A file that may be read as a new one of this folder, a run's with an id of its own. Overtaken
  /// where another file has the name.
  Document copy(const std::string& name, const std::string& to);
  /// Puts a file away, until it is restored under the name that is given back. StillNamed where
  /// others name it, unless `even_so`. What was put away more than two years before is deleted.
  std::string remove(const std::string& name, bool even_so);
  /// What is put away, the last one first: [{"removed": what restores it, "file", "kind", "name",
  /// "removed_at", "kept_until"}].
  nlohmann::ordered_json removed() const;
  /// Deletes what is put away.
  void forget(const std::string& removed);
  /// What it is called again. Overtaken where another file has that name.
  std::string restore(const std::string& removed);

  /// Puts a mesh file's bytes into this folder; false if another file has the name.
  bool keep_mesh(const std::string& name, const std::string& source);

  /// Where a file to plan or gauge lies; `may_be_new` if its text comes with the request.
  std::string path_to_read(const std::string& name, bool may_be_new) const;

  /// Which files there are: {"folder", "open", "runs", "moulds", "formulas", "fats",
  /// "tips", "meshes", "cut"}, each file as {"file", "name", "shipped"} under the name it may be
  /// asked for by. Of a folder with very many, the first that the system gives are looked at; then
  /// "cut" has {"folder", "looked_at"} for it, and files of it may be missing.
  nlohmann::ordered_json files(const std::optional<std::string>& open) const;

 private:
  std::string path_to_write(const std::string& name) const;
  std::string path_of_own(const std::string& name) const;
  std::string place_of_removed(const std::string& removed) const;
  void forget_long_removed() const;
  std::string path_for_new(const std::string& name) const;
  FolderFiles own_files(bool& is_cut) const;
  void refuse_shadow(const FolderFiles& files, const std::string& path,
                     const std::string& name) const;

  std::string folder_;
  moulds::Library library_;
  OwnFolder own_;
  std::mutex saving_;
  mutable FileFactsMemory facts_;
};

/// A file that others name is not to be taken away unasked.
class StillNamed : public UserError {
 public:
  StillNamed(const std::string& file, std::vector<std::string> by);
  const std::vector<std::string>& by() const { return by_; }

 private:
  std::vector<std::string> by_;
};

/// Overtaken: another file has that name.
[[noreturn]] void refuse_taken(const std::string& name);

/// A name for a file's content: equal contents have equal names, and different ones, as good as
/// certainly, different names. No protection against contents made to collide.
std::string version_of(std::string_view text);

}  // namespace brimwright::desk
