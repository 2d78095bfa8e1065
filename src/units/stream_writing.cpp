#include "units/stream_writing.h"

#include "units/user_error.h"

#include <fcntl.h>
#include <poll.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <charconv>
#include <filesystem>
#include <optional>
#include <system_error>

namespace brimwright {
namespace {

namespace fs = std::filesystem;

/// The number of this program's own open file that `path` stands for. Opened anew by its name it
/// would be written from its beginning, and replaced it would be lost to who opened it.
std::optional<int> own_descriptor(fs::path path) {
  constexpr int longest_chain = 40;  // as the system's own limit on links
  std::error_code error;
  const fs::path held_open = fs::canonical("/proc/self/fd", error);
  for (int i = 0; !error && i < longest_chain; ++i) {
    const fs::path folder = fs::canonical(fs::absolute(path, error).parent_path(), error);
    if (error) return std::nullopt;
    const std::string name = path.filename().string();
    if (folder == held_open) {
      int number = -1;
      const auto end = std::from_chars(name.data(), name.data() + name.size(), number);
      if (end.ec != std::errc() || end.ptr != name.data() + name.size()) return std::nullopt;
      return number;
    }
    if (!fs::is_symlink(folder / name, error)) return std::nullopt;
    path = folder / fs::read_symlink(folder / name, error);  // an absolute one replaces the folder
  }
  return std::nullopt;
}

[[noreturn]] void refuse(const std::string& path, int error) {
  throw UserError(
      {.file = path,
       .field = "",
       .problem = "cannot be written to (" + std::generic_category().message(error) + ")",
       .remedy = "give another place"});
}

/// 0, or the error.
int write_all(int file, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t written = ::write(file, bytes.data(), bytes.size());
    if (written < 0 && errno == EAGAIN) {  // a pipe that its owner made not to wait
      pollfd room{.fd = file, .events = POLLOUT, .revents = 0};
      constexpr int for_ever = -1;
      ::poll(&room, 1, for_ever);
      continue;
    }
    if (written < 0 && errno == EINTR) continue;
    if (written < 0) return errno;
    bytes.remove_prefix(static_cast<std::size_t>(written));
  }
  return 0;
}

}  // namespace

bool is_stream(const std::string& path) {
  if (own_descriptor(path)) return true;
  struct stat facts {};
  return ::stat(path.c_str(), &facts) == 0 && (S_ISCHR(facts.st_mode) || S_ISFIFO(facts.st_mode));
}

void write_stream(const std::string& path, std::string_view bytes) {
  const auto own = own_descriptor(path);
  const int file = own ? *own : ::open(path.c_str(), O_WRONLY | O_CLOEXEC | O_NOCTTY);
  if (file < 0) refuse(path, errno);
  const int error = write_all(file, bytes);
  const int closed = own ? 0 : ::close(file);
  if (error != 0) refuse(path, error);
  if (closed != 0 && errno != EINTR) refuse(path, errno);
}

}  // namespace brimwright
