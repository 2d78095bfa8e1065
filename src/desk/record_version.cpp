#include "desk/record_version.h"

#include "records/records.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>

namespace brimwright::desk {

/// Bytes 24 to 27 of an SQLite database are its file change counter
/// (https://www.sqlite.org/fileformat.html, 1.3.6).
std::string record_version(const std::string& folder) {
  const std::string path = folder + "/" + records::file_name;
  const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK);
  if (file < 0) return "none";
  std::array<unsigned char, 4> counter{};
  struct stat facts {};
  const bool is_read =
      ::fstat(file, &facts) == 0 && S_ISREG(facts.st_mode) &&
      ::pread(file, counter.data(), counter.size(), 24) == static_cast<ssize_t>(counter.size());
  ::close(file);
  if (!is_read) return "none";
  std::string version = std::to_string(facts.st_ino);
  for (const unsigned char byte : counter) version += "-" + std::to_string(byte);
  return version;
}

}  // namespace brimwright::desk
