#include "desk/answers.h"
#include "desk/file_names.h"
#include "desk/folder_files.h"
#include "desk/plain_reading.h"
#include "desk/renaming.h"
#include "desk/secret.h"
#include "desk/workspace.h"
#include "schemas/tidying.h"
#include "units/file_writing.h"
#include "units/unfinished_files.h"
#include "units/user_error.h"

#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <deque>
#include <filesystem>
#include <utility>

namespace brimwright::desk {

namespace fs = std::filesystem;

namespace {

constexpr std::size_t longest_document = 4u << 20;

std::string quoted(const std::string& name) { return "\"" + name + "\""; }

/// A file with what is to stand in it.
struct Rewrite {
  std::string path, before, after;
};

/// All of them or none: each is written beside its file, and only when all are on the disk do they
/// take their places.
class RewrittenTogether {
 public:
  explicit RewrittenTogether(const std::vector<Rewrite>& rewrites) : rewrites_(rewrites) {
    for (const Rewrite& rewrite : rewrites_) {
      const fs::path path(rewrite.path);
      const std::string beside =
          (path.parent_path() / (".brimwright-" + new_token() + ".tmp")).string();
      waiting_.emplace_back(beside);
      write_file(beside, rewrite.after);
      std::error_code none;
      fs::permissions(beside, fs::status(path, none).permissions(), none);
    }
  }

  void take_their_places() {
    for (std::size_t done = 0; done < waiting_.size(); ++done) {
      if (waiting_[done].rename_to(rewrites_[done].path) == 0) continue;
      for (std::size_t back = 0; back < done; ++back)
        write_file(rewrites_[back].path, rewrites_[back].before);
      throw UserError({rewrites_[done].path, ""}, "cannot be written, so nothing was renamed",
                      "check that you may write to it");
    }
  }

 private:
  const std::vector<Rewrite>& rewrites_;
  std::deque<UnfinishedFile> waiting_;
};

/// The same file under a second name: the first goes when nothing needs it any more.
void give_second_name(const std::string& from, const std::string& to, const std::string& text,
                      const std::string& text_there) {
  if (text == text_there && ::link(from.c_str(), to.c_str()) == 0) return;
  if (text == text_there && errno == EEXIST) refuse_taken(fs::path(to).filename().string());
  // In another folder it names its files otherwise, and some file systems know no second names.
  write_file(to, text_there);
}

/// The name by which the file `to` is found from the file `user`.
std::string name_from(const std::string& user, const std::string& to,
                      const moulds::Library& library) {
  std::vector<fs::path> roots = {fs::path(user).parent_path()};
  for (const std::string& folder : library.folders) roots.emplace_back(folder);
  for (const fs::path& root : roots) {
    std::error_code error;
    const fs::path there = fs::canonical(root, error);
    if (error) continue;
    const fs::path name = fs::path(to).lexically_relative(there);
    const bool is_below = !name.empty() && *name.begin() != "..";
    // What lies beside the file itself comes before a library's.
    const bool is_first = &root == &roots.front() || !fs::exists(roots.front() / name, error);
    if (is_below && is_first) return name.string();
  }
  throw UserError({"", "to"}, "would not be found from " + quoted(fs::path(user).filename()),
                  "leave it in a folder beside that file, or below");
}

std::string listed(const std::vector<std::string>& names) {
  constexpr std::size_t most = 5;
  std::string list;
  for (std::size_t i = 0; i < std::min(names.size(), most); ++i)
    list += (list.empty() ? "" : ", ") + quoted(names[i]);
  return names.size() > most ? list + " and " + std::to_string(names.size() - most) + " more"
                             : list;
}

}  // namespace

void refuse_taken(const std::string& name) {
  throw Overtaken({"", "to"}, "there is another file called " + quoted(name), "give another name");
}

StillNamed::StillNamed(const std::string& file, std::vector<std::string> by)
    : UserError({"", "file"}, quoted(file) + " is used by " + listed(by),
                "choose another there first, or remove it even so"),
      by_(std::move(by)) {}

/// Of a file of hers that may be moved about: no link, and of a kind that is chosen by its name.
std::string Workspace::path_of_own(const std::string& name) const {
  std::string path = path_to_write(name);
  struct stat status {};
  if (::lstat(path.c_str(), &status) != 0)
    throw UserError({"", "file"}, quoted(name) + " is not in this folder",
                    "choose one of the files listed");
  const std::string kind = facts_.of(path)->facts.kind;
  if (path != fs::path(folder_) / name || kind.empty() || kind == "studio")
    throw UserError({"", "file"},
                    quoted(name) + " is no run, formula, mould, fats or tips file of this folder",
                    "choose another file");
  return path;
}

std::string Workspace::path_for_new(const std::string& name) const {
  std::string path = path_to_write(name);
  if (fs::path(name).extension() != ".json")
    throw UserError({"", "to"}, quoted(name) + " does not end in .json", "give a name that does");
  if (fs::path(name).filename() == "studio.json")
    throw UserError({"", "to"}, "is the name of what holds for every run of a folder",
                    "give another name");
  struct stat status {};
  if (::lstat(path.c_str(), &status) == 0) refuse_taken(name);
  return path;
}

FolderFiles Workspace::own_files(bool& is_cut) const {
  const FilesFound found = files_in(folder_);
  is_cut = found.is_cut;
  return {folder_, found, library_, facts_};
}

/// A new file must not come before one that a run means by that name today.
void Workspace::refuse_shadow(const FolderFiles& files, const std::string& path,
                              const std::string& name) const {
  for (const auto& document : files.documents())
    for (const std::string& named : document.known->facts.names) {
      const fs::path beside = fs::path(document.path).parent_path() / named;
      if (beside.lexically_normal() == path && !files.meant(named, document.path).empty())
        throw UserError({"", "to"},
                        quoted(document.name) + " means another file by " + quoted(named),
                        "give another name than " + quoted(name));
    }
}

Workspace::Renamed Workspace::rename(const std::string& name, const std::string& to) {
  const AloneInFolder alone(own_);
  const std::scoped_lock no_saving(saving_);
  const std::string from_path = path_of_own(name), to_path = path_for_new(to);
  Renamed renamed{};
  const FolderFiles files = own_files(renamed.is_cut);
  refuse_shadow(files, to_path, to);
  renamed.renamed_in = files.users_of(from_path);

  std::vector<Rewrite> rewrites;
  for (const std::string& user : renamed.renamed_in) {
    const std::string path = path_to_write(user);
    Rewrite rewrite{path, plain_file(path, longest_document), {}};
    const std::string name_there = name_from(path, to_path, library_);
    rewrite.after = with_files_renamed(rewrite.before, user, [&](const std::string& named) {
      return files.meant(named, path) == from_path ? name_there : named;
    });
    rewrites.push_back(std::move(rewrite));
  }
  const std::string text = plain_file(from_path, longest_document);
  const bool stays_in_folder = fs::path(from_path).parent_path() == fs::path(to_path).parent_path();
  const std::string text_there = stays_in_folder ? text : moved(text, from_path, to_path, library_);

  RewrittenTogether together(rewrites);
  give_second_name(from_path, to_path, text, text_there);
  try {
    together.take_their_places();
  } catch (...) {
    ::unlink(to_path.c_str());
    throw;
  }
  if (::unlink(from_path.c_str()) != 0)
    throw UserError({name, ""}, "cannot be removed; it is there under both names now",
                    "check that you may write to its folder");
  flush_folder(fs::path(to_path).parent_path().string());
  flush_folder(fs::path(from_path).parent_path().string());
  return renamed;
}

Workspace::Document Workspace::copy(const std::string& name, const std::string& to) {
  const Document original = document(name);
  const std::string today = schemas::tidied(original.text, name).text;
  {
    bool is_cut = false;
    refuse_shadow(own_files(is_cut), path_for_new(to), to);
  }
  const Saved saved = save(to, std::nullopt, today, name);
  if (!saved.is_saved) refuse_taken(to);
  return *saved.present;
}

}  // namespace brimwright::desk
