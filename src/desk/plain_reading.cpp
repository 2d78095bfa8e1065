#include "desk/plain_reading.h"

#include "units/user_error.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>

namespace brimwright::desk {
namespace {

/// Of an open file.
class Descriptor {
 public:
  explicit Descriptor(const std::string& path)
      // A path checked for links may become one; a pipe would hold us for ever.
      : number_(::open(path.c_str(), O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC | O_NOCTTY)) {}
  ~Descriptor() {
    if (number_ >= 0) ::close(number_);
  }
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;

  int number() const { return number_; }

 private:
  int number_;
};

}  // namespace

std::string plain_file(const std::string& path, std::size_t most) {
  const Descriptor file(path);
  struct stat facts {};
  if (file.number() < 0 || ::fstat(file.number(), &facts) != 0 || !S_ISREG(facts.st_mode))
    throw UserError({path, ""}, "cannot be read", "check that it is a file you may read");
  std::string bytes;
  bytes.reserve(std::min(static_cast<std::size_t>(facts.st_size), most));
  std::string part(std::size_t{64} << 10, '\0');
  while (true) {
    const ssize_t got = ::read(file.number(), part.data(), part.size());
    if (got < 0 && errno == EINTR) continue;
    if (got < 0) throw UserError({path, ""}, "cannot be read", "check the disk");
    if (got == 0) return bytes;
    bytes.append(part, 0, static_cast<std::size_t>(got));
    if (bytes.size() > most)
      throw UserError({path, ""}, "is longer than " + std::to_string(most >> 20) + " MiB",
                      "no file of this program is that long");
  }
}

}  // namespace brimwright::desk
