#pragma once

#include "units/fields.h"
#include "units/read_once.h"
#include "units/user_error.h"

#include <memory>
#include <string>
#include <vector>

namespace brimwright::moulds {

class MeshMemory;

/// The folders from which a file may name other files: its own, the shipped catalogue, and those
/// the person gave.
struct Library {
  std::string shipped;               // the folder that holds `moulds` and `meshes`; may be empty
  std::vector<std::string> folders;  // given by the person
  std::string studio = {};           // the studio's file, where it is not the one beside a run
  /// Meshes measured before, for a program that answers many requests; without it, each is measured
  /// anew.
  std::shared_ptr<MeshMemory> memory = {};
  /// With a memory: a mesh that is not in it is not measured, but told by NotYetMeasured.
  bool only_remembered = false;
  /// Where `resolve` puts down each file it names, for who has to know what a request read.
  std::shared_ptr<std::vector<std::string>> named = {};

  /// What was read for the answer that is being worked out; without it, each file is read anew.
  std::shared_ptr<ReadOnce> read_once = {};

  /// What `read()` makes of `file`, once for an answer.
  template <class Thing, class Read>
  std::shared_ptr<const Thing> once(const std::string& file, const Read& read) const {
    return read_once ? read_once->of<Thing>(file, read) : std::make_shared<const Thing>(read());
  }
  /// The document in `file`, of which nothing was asked yet.
  Fields document(const std::string& file) const;

  /// The file that `name`, written at `where` in a file, means: a path relative to that file's
  /// folder, or else to the shipped folder ("moulds/low_bowl.json"), or else to a library folder.
  /// Canonical; links are followed first. Refuses, with UserError at `where`, a file outside these
  /// folders, saying that it is there and how to allow it ("library"), and a name that is no
  /// regular file, saying where it looked.
  std::string resolve(const std::string& name, const Place& where) const;
};

}  // namespace brimwright::moulds
