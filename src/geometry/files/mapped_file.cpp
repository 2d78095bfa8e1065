#include "geometry/files/mapped_file.h"

#include <fcntl.h>
#include <sys/mman.h>
#include <sys/stat.h>
#include <unistd.h>

#include <csignal>
#include <utility>

namespace brimwright::geometry {

#if defined(F_SETLEASE) && defined(MADV_POPULATE_READ)

namespace {

bool has_size(int descriptor, std::size_t size) {
  struct stat facts {};
  return ::fstat(descriptor, &facts) == 0 && static_cast<std::size_t>(facts.st_size) == size;
}

}  // namespace

std::unique_ptr<const MappedFile> MappedFile::of(int descriptor, std::size_t size) {
  // Whoever waits for the lease makes the kernel send us a signal; SIGURG does nothing by itself,
  // while the usual SIGIO would end the program.
  if (::fcntl(descriptor, F_SETSIG, SIGURG) != 0) return nullptr;
  if (::fcntl(descriptor, F_SETLEASE, F_RDLCK) != 0) return nullptr;
  void* const start = has_size(descriptor, size)
                          ? ::mmap(nullptr, size, PROT_READ, MAP_SHARED, descriptor, 0)
                          : MAP_FAILED;
  if (start == MAP_FAILED) {
    ::fcntl(descriptor, F_SETLEASE, F_UNLCK);
    return nullptr;
  }
  std::unique_ptr<const MappedFile> file(
      new MappedFile(descriptor, static_cast<const char*>(start), size));
  // Unlike a touch, this only fails where a page cannot be read.
  return ::madvise(start, size, MADV_POPULATE_READ) == 0 ? std::move(file) : nullptr;
}

MappedFile::~MappedFile() {
  ::munmap(const_cast<char*>(start_), size_);
  ::fcntl(descriptor_, F_SETLEASE, F_UNLCK);
}

#else

std::unique_ptr<const MappedFile> MappedFile::of(int, std::size_t) { return nullptr; }
MappedFile::~MappedFile() = default;

#endif

}  // namespace brimwright::geometry
