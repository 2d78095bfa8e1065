#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace brimwright {

/// What a program asked of the disk, in order.
struct DiskAct {
  enum class What { write, truncate, sync, remove };
  What what;
  std::string file;        // its name, without its folder
  std::int64_t at = 0;     // of a write its offset, of a truncation the new length
  std::string bytes = {};  // of a write
};

/// A VFS of SQLite's (sqlite.org/vfs.html) that does all that is asked of it by the usual one and
/// remembers what changed the disk. One at a time.
class RememberingDisk {
 public:
  enum class Under { those_who_name_it, all };  // all: who names no VFS gets this one
  explicit RememberingDisk(Under whom = Under::those_who_name_it);
  ~RememberingDisk();
  RememberingDisk(const RememberingDisk&) = delete;
  RememberingDisk& operator=(const RememberingDisk&) = delete;

  static constexpr auto name = "remembering";
  const std::vector<DiskAct>& acts() const;
};

/// The files of a folder by their names, and what is in them.
using FilesOnDisk = std::map<std::string, std::string>;
FilesOnDisk files_in(const std::filesystem::path& folder);

/// What of the acts since a file's last sync a power cut left on the disk.
enum class Left {
  all,           // as when the program alone ends
  none,          // only what was synced
  records_only,  // of the records all, of the journal what was synced
  journal_only,  // the other way round
  half_of_last,  // all, but of the last write only its first half
};

/// What a power cut after the first `count` of `acts` leaves of `files`, written into `to`.
void cut_off(const std::vector<DiskAct>& acts, std::size_t count, Left left, FilesOnDisk files,
             const std::filesystem::path& to);

}  // namespace brimwright
