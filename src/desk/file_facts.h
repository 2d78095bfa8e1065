#pragma once

#include <sys/types.h>

#include <cstdint>
#include <ctime>
#include <map>
#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::desk {

/// What a list of files tells of one, and of others by it.
struct FileFacts {
  std::string kind = {};  // "run", as in its schema; empty: no file of this program
  std::string name = {}, note = {};
  std::optional<std::string> due = {};  // of a run or an order
  // Of a run.
  std::optional<std::string> made_on = {};
  std::optional<std::int64_t> sell = {};  // of an order, of all its lines
  std::string mould = {};                 // the file of its base's mould, as the run names it
  std::vector<std::string> names = {};    // all files that it names, as it names them
  std::vector<std::string> holds = {};    // what fats or tips stand in it, by their names
};

/// The facts of files, read again only where a file is another than before by what the system knows
/// of it. May be used by several threads at once.
class FileFactsMemory {
 public:
  struct Known {
    FileFacts facts;
    std::time_t changed;  // when, by the file system
  };
  /// Without a kind for what is no regular file, is too long to be looked into or no JSON.
  std::shared_ptr<const Known> of(const std::string& path);

 private:
  struct Stamp {
    ino_t file;
    off_t size;
    std::int64_t modified_ns, changed_ns;
    bool operator==(const Stamp&) const = default;
  };
  std::mutex mutex_;
  std::map<std::string, std::pair<Stamp, std::shared_ptr<const Known>>> known_;
};

}  // namespace brimwright::desk
