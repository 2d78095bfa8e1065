#pragma once

#include "geometry/files/mapped_file.h"

#include <cstddef>
#include <memory>
#include <span>
#include <string>

namespace brimwright::geometry {

/// A regular file of at most 1 GiB, open for reading. UserError for one that is missing, may not be
/// read, is empty or too long, and for folders, pipes and devices, which it does not wait for.
class InputFile {
 public:
  explicit InputFile(const std::string& path);
  ~InputFile();
  InputFile(const InputFile&) = delete;
  InputFile& operator=(const InputFile&) = delete;

  std::size_t size() const { return size_; }
  /// Fills `buffer` with what stands `at` bytes from the start; UserError if the file ends before.
  void read(std::size_t at, std::span<char> buffer) const;
  /// All bytes without reading them, where that is safe; not to outlive the file.
  std::unique_ptr<const MappedFile> mapped() const { return MappedFile::of(descriptor_, size_); }

 private:
  std::string path_;
  int descriptor_;
  std::size_t size_ = 0;
};

std::string bytes_of(const InputFile& file);

}  // namespace brimwright::geometry
