#pragma once

#include "desk/bench_batch.h"
#include "desk/own_folder.h"
#include "units/user_error.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::desk {

/// A run as its batches are found again: by its id, whatever its file is called; one without an
/// id, or that does not lie in the folder, by its file.
struct BenchRun {
  std::string file;  // by the name that the page asks for
  std::optional<std::string> id = {};
  bool is_built_in = false;
};

/// Another with every change to what is kept of any run in that folder. Never throws.
std::string bench_version(const OwnFolder& own);

/// The batches at the bench, each in a file of its own in the program's folder. A file that is
/// damaged, or none of ours, is complained of by name and never written over. May be used by
/// several threads and programs at once: whatever changes something is alone with the folder
/// meanwhile, and what it gives back is on the disk.
class BenchKeeping {
 public:
  /// `id_of` is the id of the run in a file that the page may ask for; none where there is none.
  using IdOf = std::function<std::optional<std::string>(const std::string& file)>;
  BenchKeeping(OwnFolder own, IdOf id_of) : own_(std::move(own)), id_of_(std::move(id_of)) {}

  struct Listed {
    std::string version;
    std::vector<BenchBatch> batches = {};  // by number
    std::vector<UserError> complaints = {};
  };
  /// What is kept of a run.
  Listed listed(const BenchRun& run) const;

  using Change = std::function<void(BenchBatch&)>;
  /// A batch after `change`, kept; nothing if it was not begun. What `change` throws leaves it as
  /// it was.
  std::optional<BenchBatch> change(const BenchRun& run, std::int64_t number,
                                   const Change& change) const;
  /// The same of one that begins as `fresh`, unless it has begun meanwhile.
  BenchBatch begin(const BenchRun& run, BenchBatch fresh, const Change& change) const;
  /// Puts a batch, damaged or not, into a folder where it is kept but no longer looked at. Done
  /// already if there is none.
  void put_away(const BenchRun& run, std::int64_t number) const;
  /// What is kept of a run without an id is found by the new name of its file from now on.
  void rename(const std::string& file, const std::string& to) const;
  /// What is kept of a built-in run goes on as that of the copy that it became when it was changed.
  /// What cannot be kept so stays where it is.
  void go_on_as(const BenchRun& run, const BenchRun& copy) const;

 private:
  struct Kept;
  std::optional<Kept> kept(const BenchRun& run, std::int64_t number) const;
  Kept read(const std::string& name) const;
  Kept read_of(const BenchRun& run, const std::string& name) const;
  void write(const BenchRun& run, BenchBatch& batch, const std::string& before,
             const AloneInFolder& alone) const;
  void refuse_one_too_many(const BenchRun& run) const;

  OwnFolder own_;
  IdOf id_of_;
};

}  // namespace brimwright::desk
