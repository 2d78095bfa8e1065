#pragma once

#include <cstddef>
#include <memory>
#include <span>

namespace brimwright::geometry {

/// The bytes of an open file, in memory without a copy.
class MappedFile {
 public:
  /// Maps the first `size` bytes, all there at once; null where that cannot be had safely. Touching
  /// a page that is no longer there would end the program, so others are kept from cutting the file
  /// short meanwhile, by a lease (fcntl(2)): it is granted for one's own files while nobody writes
  /// to them, and whoever would write waits.
  static std::unique_ptr<const MappedFile> of(int descriptor, std::size_t size);

  ~MappedFile();
  MappedFile(const MappedFile&) = delete;
  MappedFile& operator=(const MappedFile&) = delete;

  std::span<const char> bytes() const { return {start_, size_}; }

 private:
  MappedFile(int descriptor, const char* start, std::size_t size)
      : descriptor_(descriptor), start_(start), size_(size) {}

  int descriptor_;
  const char* start_;
  std::size_t size_;
};

}  // namespace brimwright::geometry
