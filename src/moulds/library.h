#pragma once

#include "units/user_error.h"

#include <string>
#include <vector>

namespace brimwright::moulds {

/// The folders from which a file may name other files: its own, the shipped catalogue, and those
/// the person gave on the command line.
struct Library {
  std::string shipped;               // the folder that holds `moulds` and `meshes`; may be empty
  std::vector<std::string> folders;  // given by the person

  /// The file that `name`, written at `where` in a file, means: a path relative to that file's
  /// folder, or else to the shipped folder ("moulds/low_bowl.json"), or else to a library folder.
  /// Canonical; links are followed first. Refuses, with UserError at `where`, an absolute path
  /// outside these folders, a path that leaves them, and a name that is no regular file, saying
  /// where it looked.
  std::string resolve(const std::string& name, const Place& where) const;
};

}  // namespace brimwright::moulds
