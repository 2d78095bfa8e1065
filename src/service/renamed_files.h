#pragma once

#include "records/batches.h"
#include "records/records.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace brimwright::service {

/// Which of today's files is one that a batch was made from under another name.
///
/// It is, where no file has the old name any more, and the batch keeps the text that today's file
/// has, but for its name, its note and what was learned: a copy beside the old one is another.
class RenamedFiles {
 public:
  /// `today` are the files, by their paths, that may have been called otherwise.
  RenamedFiles(const records::Records& records, std::string folder,
               const std::vector<std::string>& today);

  /// What the file called `name`, without its folder, is called today, where it was renamed.
  /// `sources` is the hash of what the batch was made from.
  std::optional<std::string> called_now(const std::string& sources, const std::string& name);

 private:
  using Names = std::map<std::string, std::string>;
  const Names& names_of(const std::string& sources);

  const records::Records& records_;
  std::string folder_;
  Names today_;  // by what the files say
  std::set<std::string> names_today_;
  std::map<std::string, Names> found_;  // by the hash of a batch's sources
};

}  // namespace brimwright::service
