#include "geometry/files/input_file.h"

#include "units/user_error.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstddef>
#include <cstdint>

namespace brimwright::geometry {
namespace {

constexpr std::int64_t longest = std::int64_t{1} << 30;  // our own bound: 21 million facets of STL

[[noreturn]] void refuse(const std::string& path, std::string problem, std::string remedy) {
  throw UserError(
      {.file = path, .field = "", .problem = std::move(problem), .remedy = std::move(remedy)});
}

[[noreturn]] void refuse_unopened(const std::string& path, int error) {
  if (error == ENOENT || error == ENOTDIR)
    refuse(path, "is not there", "check the name and the folder");
  if (error == EACCES || error == EPERM)
    refuse(path, "may not be read", "change its permissions so that you may read it");
  refuse(path, "cannot be opened", "check that it is an ordinary file");
}

std::size_t checked_size(const std::string& path, int descriptor) {
  struct stat facts {};
  if (::fstat(descriptor, &facts) != 0) refuse_unopened(path, errno);
  if (S_ISDIR(facts.st_mode)) refuse(path, "is a folder", "name the mesh file in it");
  if (!S_ISREG(facts.st_mode))
    refuse(path, "is not an ordinary file", "save the mesh to a file and name that");
  if (facts.st_size == 0) refuse(path, "is empty", "export it again");
  if (facts.st_size > longest) refuse(path, "is longer than 1 GiB", "export it with fewer facets");
  return static_cast<std::size_t>(facts.st_size);
}

}  // namespace

InputFile::InputFile(const std::string& path)
    // A pipe without a writer would hold an opening read for ever.
    : path_(path), descriptor_(::open(path.c_str(), O_RDONLY | O_NONBLOCK | O_CLOEXEC | O_NOCTTY)) {
  if (descriptor_ < 0) refuse_unopened(path, errno);
  try {
    size_ = checked_size(path, descriptor_);
  } catch (...) {
    ::close(descriptor_);
    throw;
  }
}

InputFile::~InputFile() { ::close(descriptor_); }

void InputFile::read(std::size_t at, std::span<char> buffer) const {
  while (!buffer.empty()) {
    const ssize_t got = ::pread(descriptor_, buffer.data(), buffer.size(), static_cast<off_t>(at));
    if (got < 0 && errno == EINTR) continue;
    if (got <= 0) refuse(path_, "could not be read to its end", "try again");
    at += static_cast<std::size_t>(got);
    buffer = buffer.subspan(static_cast<std::size_t>(got));
  }
}

std::string bytes_of(const InputFile& file) {
  std::string bytes(file.size(), '\0');
  file.read(0, bytes);
  return bytes;
}

}  // namespace brimwright::geometry
