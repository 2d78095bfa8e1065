#pragma once

#include <string>

namespace brimwright {

/// A file that has a name but is not yet what it is to be; the name goes with the scope unless the
/// file was given its final one. Meanwhile the name is known to remove_unfinished_files(), unless
/// it is uncommonly long or many are being written.
class UnfinishedFile {
 public:
  explicit UnfinishedFile(std::string path);
  ~UnfinishedFile();
  UnfinishedFile(const UnfinishedFile&) = delete;
  UnfinishedFile& operator=(const UnfinishedFile&) = delete;

  const std::string& path() const { return path_; }
  /// 0, or the error.
  int rename_to(const std::string& target);

 private:
  std::string path_;
  int slot_;
  bool is_in_place_ = false;
};

/// For the handler of a signal that ends the program: may be called there at any moment.
void remove_unfinished_files() noexcept;

}  // namespace brimwright
