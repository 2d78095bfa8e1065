#include "cli/outputs.h"

#include "units/file_writing.h"
#include "units/letters.h"
#include "units/stream_writing.h"
#include "units/user_error.h"
#include "units/written_number.h"

#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <filesystem>
#include <map>
#include <optional>
#include <system_error>

namespace brimwright::cli {
namespace {

namespace fs = std::filesystem;

Place place_of(const Output& output) { return {"command line", output.option}; }

/// What makes two names one file: the system's own number for a file that is there; for one that is
/// not, its path without links and dots.
struct Identity {
  dev_t device = 0;
  ino_t number = 0;
  std::string path;

  auto operator<=>(const Identity&) const = default;
};

std::optional<Identity> identity_of_file(const std::string& path) {
  struct stat facts {};
  if (::stat(path.c_str(), &facts) != 0) return std::nullopt;
  return Identity{facts.st_dev, facts.st_ino, ""};
}

Identity identity_of(const std::string& path) {
  if (const auto there = identity_of_file(path)) return *there;
  std::error_code error;
  const fs::path whole = fs::weakly_canonical(fs::absolute(path, error), error);
  return {0, 0, error ? path : whole.string()};
}

/// The files of the catalogue: all in its folders of moulds and meshes, and the runs to learn from.
std::vector<std::string> shipped_files(const moulds::Library& library) {
  std::vector<std::string> files;
  if (library.shipped.empty()) return files;
  for (const char* folder : {"/moulds", "/meshes", "/examples"}) {
    std::error_code none;
    for (const auto& entry : fs::directory_iterator(library.shipped + folder, none)) {
      const bool is_made_there = std::string_view(folder) == "/examples" &&
                                 entry.path().extension() != ".json";  // a sheet, a picture
      if (!is_made_there && entry.is_regular_file(none)) files.push_back(entry.path().string());
    }
  }
  return files;
}

/// What to call each file that must not be replaced.
std::map<Identity, std::string> kept_files(const std::vector<std::string>& read,
                                           const moulds::Library& library) {
  std::map<Identity, std::string> kept;
  for (const auto& file : read)
    if (const auto there = identity_of_file(file))
      kept.emplace(*there, brimwright::quoted(file) + ", which this command reads");
  for (const auto& file : shipped_files(library))
    if (const auto there = identity_of_file(file))
      kept.emplace(*there, brimwright::quoted(file) + ", a built-in file");
  return kept;
}

void refuse(const Output& output, const std::string& problem, const std::string& remedy) {
  throw UserError(place_of(output), brimwright::quoted(output.path) + " " + problem, remedy);
}

/// What writing it would complain of, told while nothing is written yet.
void refuse_unwritable(const Output& output) {
  if (is_stream(output.path)) return;
  if (output.path.ends_with('/')) refuse(output, "is a folder", "give the name of a file in it");
  struct stat facts {};
  const bool is_there = ::lstat(output.path.c_str(), &facts) == 0;
  if (!is_there && errno == ENAMETOOLONG)
    refuse(output, "is a name that is too long", "give a shorter one");
  if (is_there && S_ISLNK(facts.st_mode) && ::stat(output.path.c_str(), &facts) != 0)
    refuse(output, "is a link to nothing", "remove it, or give another name");
  if (is_there && S_ISDIR(facts.st_mode))
    refuse(output, "is a folder", "give the name of a file in it");
  if (is_there && !S_ISREG(facts.st_mode)) refuse(output, "is not a file", "name a file");
  std::error_code error;
  // A link is followed: the new file is made beside the one it leads to.
  const fs::path target = is_there ? fs::canonical(output.path, error) : fs::path(output.path);
  const std::string folder = target.has_parent_path() ? target.parent_path().string() : ".";
  if (!fs::is_directory(folder, error))
    refuse(output, "cannot be written, because its folder is not there",
           "make the folder, or give another place");
  if (::access(folder.c_str(), W_OK | X_OK) != 0)
    refuse(output, "may not be written", "give a place where you may write");
}

std::string listed(const std::vector<std::string>& endings) {
  std::string list;
  for (const auto& ending : endings) list += (list.empty() ? "" : " or ") + ending;
  return list;
}

/// In small letters, with its dot; empty if it has none.
std::string ending_of(const std::string& path) {
  return in_small_letters(fs::path(path).extension().string());
}

/// "a drawing" goes to ".svg".
void check_ending(const Output& output, const std::string& what,
                  const std::vector<std::string>& endings) {
  if (output.path == standard_output || is_stream(output.path)) return;
  if (std::find(endings.begin(), endings.end(), ending_of(output.path)) != endings.end()) return;
  refuse(output, "does not end in " + listed(endings),
         output.option + " writes " + what + "; give a name that ends so");
}

Output piece_output(const std::string& path) {
  for (const auto& [ending, kind] : {std::pair{".svg", service::FileKind::piece_picture},
                                     {".glb", service::FileKind::glb},
                                     {".stl", service::FileKind::stl}})
    if (ending_of(path) == ending) return {"--piece", path, kind};
  throw UserError({"command line", "--piece"},
                  brimwright::quoted(path) + " does not say what to write",
                  "end it in .svg (a drawing), .glb (a coloured model) or .stl");
}

}  // namespace

std::vector<Output> outputs_of(const OutputWords& words) {
  std::vector<Output> outputs;
  for (const auto& path : words.piece) outputs.push_back(piece_output(path));
  const auto add = [&](const char* option, const std::optional<std::string>& path,
                       service::FileKind kind, const char* what,
                       const std::vector<std::string>& endings) {
    if (!path) return;
    outputs.push_back({option, *path, kind});
    check_ending(outputs.back(), what, endings);
  };
  using enum service::FileKind;
  add("--write", words.write, stl, "a binary STL", {".stl"});
  add("--glb", words.glb, glb, "a model", {".glb"});
  add("--picture", words.picture, picture, "a drawing", {".svg"});
  add("--label", words.label, label, "plain text", {".txt"});
  add("--html", words.html, html, "a page", {".html", ".htm"});
  add("--pdf", words.pdf, pdf, "a PDF", {".pdf"});
  add("--csv", words.csv, csv, "a table", {".csv"});
  add("--ics", words.ics, calendar, "a calendar", {".ics"});
  add("--export", words.records, records, "everything as JSON", {".json"});
  add("--svg", words.svg, picture, "a drawing", {".svg"});
  const bool is_paper = words.offer && ending_of(*words.offer) == ".pdf";
  add("--offer", words.offer, is_paper ? offer_pdf : offer, "a page or a PDF",
      {".html", ".htm", ".pdf"});
  return outputs;
}

bool is_to_standard_output(const std::vector<Output>& outputs) {
  return std::any_of(outputs.begin(), outputs.end(),
                     [](const Output& output) { return output.path == standard_output; });
}

std::vector<service::WantedFile> wanted(const std::vector<Output>& outputs) {
  std::vector<service::WantedFile> files;
  for (const auto& output : outputs) files.push_back({output.kind, output.path});
  return files;
}

void check_targets(const std::vector<Output>& outputs, const std::vector<std::string>& read,
                   const moulds::Library& library) {
  if (outputs.empty()) return;
  const auto kept = kept_files(read, library);
  std::map<Identity, std::string> taken;
  for (const Output& output : outputs) {
    if (output.path == standard_output) {
      if (const auto [at, is_first] = taken.emplace(Identity{0, 0, standard_output}, output.option);
          !is_first)
        refuse(output, "is written by " + at->second + " already", "send one file there at a time");
      continue;
    }
    if (is_stream(output.path)) continue;
    const Identity target = identity_of(output.path);
    if (const auto at = kept.find(target); at != kept.end())
      refuse(output, "is the same file as " + at->second, "give another name to write to");
    if (const auto [at, is_first] = taken.emplace(target, output.option); !is_first)
      refuse(output, "is written by " + at->second + " already", "give each its own name");
    refuse_unwritable(output);
  }
}

void write(const std::vector<service::MadeFile>& files, std::ostream& out) {
  for (const auto& [name, bytes] : files) {
    if (name == standard_output)
      out << bytes;
    else
      is_stream(name) ? write_stream(name, bytes) : write_file(name, bytes);
  }
}

}  // namespace brimwright::cli
