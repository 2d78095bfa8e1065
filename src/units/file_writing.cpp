#include "units/file_writing.h"

#include "units/unfinished_files.h"
#include "units/user_error.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <atomic>
#include <cerrno>
#include <filesystem>
#include <system_error>

namespace brimwright {
namespace {

namespace fs = std::filesystem;

[[noreturn]] void refuse(const std::string& path, const std::string& problem,
                         const std::string& remedy) {
  throw UserError({.file = path, .field = "", .problem = problem, .remedy = remedy});
}

[[noreturn]] void refuse(const std::string& path, int error) {
  switch (error) {
    case ENOENT:
    case ENOTDIR:
      refuse(path, "cannot be written, because its folder is not there",
             "make the folder, or give another place");
    case EACCES:
    case EPERM:
    case EROFS:
      refuse(path, "may not be written", "give a place where you may write");
    case ENOSPC:
    case EDQUOT:
    case EFBIG:
      refuse(path, "does not fit on the disk any more", "make room, or give another place");
    case ENAMETOOLONG:
      refuse(path, "has a name that is too long", "give a shorter name");
    default:
      refuse(path, "cannot be written (" + std::generic_category().message(error) + ")",
             "give another place");
  }
}

/// Of an open file; closed at the end if not before.
class Descriptor {
 public:
  explicit Descriptor(int number) : number_(number) {}
  ~Descriptor() { close(); }
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;

  int number() const { return number_; }
  /// 0, or the error: some file systems tell only now that the bytes did not get there.
  int close() {
    if (number_ < 0) return 0;
    const int closed = ::close(number_);
    number_ = -1;
    return closed == 0 || errno == EINTR ? 0 : errno;
  }

 private:
  int number_;
};

/// Short, so that a name as long as the system allows still has room for it beside the target.
std::string temporary_beside(const fs::path& target) {
  static std::atomic<unsigned> number = 0;
  const std::string name =
      ".brimwright-" + std::to_string(::getpid()) + "-" + std::to_string(++number) + ".tmp";
  return (target.parent_path() / name).string();
}

/// The file that `path` means, links followed.
fs::path target_of(const std::string& path) {
  std::error_code error;
  if (!fs::is_symlink(path, error)) return path;
  fs::path target = fs::canonical(path, error);
  if (error) refuse(path, "is a link to nothing", "remove it, or give another name");
  return target;
}

void refuse_no_file(const std::string& path, const fs::path& target) {
  std::error_code error;
  if (path.empty()) refuse("the file to write", "has no name", "give one");
  if (path.ends_with('/') || fs::is_directory(target, error))
    refuse(path, "is a folder", "give the name of a file in it");
  if (fs::exists(target, error) && !fs::is_regular_file(target, error))
    refuse(path, "is not a file", "give the name of a file");
}

int write_all(int file, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t written = ::write(file, bytes.data(), bytes.size());
    if (written < 0 && errno == EINTR) continue;
    if (written < 0) return errno;
    bytes.remove_prefix(static_cast<std::size_t>(written));
  }
  return 0;
}

/// The new file gets the old one's permissions, as far as the system lets us.
void keep_permissions(const fs::path& old, int file) {
  struct stat status {};
  if (::stat(old.c_str(), &status) != 0) return;
  constexpr mode_t permissions = 0777;
  if (::fchmod(file, status.st_mode & permissions) != 0) return;
}

/// So that the new name outlives a power cut. The file is already in place; a folder that cannot be
/// opened or flushed (some network and FUSE file systems) is no reason to call it not written.
void flush_folder(const fs::path& target) {
  const std::string folder = target.has_parent_path() ? target.parent_path().string() : ".";
  const Descriptor open(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (open.number() >= 0) ::fsync(open.number());
}

constexpr mode_t as_umask_allows = 0666;

void fill(const Descriptor& file, const std::string& path, const fs::path& target,
          std::string_view bytes) {
  if (const int error = write_all(file.number(), bytes)) refuse(path, error);
  keep_permissions(target, file.number());
  if (::fsync(file.number()) != 0 && errno != EINVAL) refuse(path, errno);
}

/// 0, or the error: gives a file that has no name yet this one, if nothing has it.
int give_name(const Descriptor& file, const std::string& name) {
  const std::string open_file = "/proc/self/fd/" + std::to_string(file.number());
  const int given =
      ::linkat(AT_FDCWD, open_file.c_str(), AT_FDCWD, name.c_str(), AT_SYMLINK_FOLLOW);
  return given == 0 ? 0 : errno;
}

/// In a file without a name until it is whole, so that whatever ends the program in between, be it
/// SIGKILL, leaves nothing behind. False where the file system or the system knows no such files.
bool write_unnamed(const std::string& path, const fs::path& target, std::string_view bytes) {
  const std::string folder = target.has_parent_path() ? target.parent_path().string() : ".";
  Descriptor file(::open(folder.c_str(), O_TMPFILE | O_WRONLY | O_CLOEXEC, as_umask_allows));
  if (file.number() < 0) return false;
  fill(file, path, target, bytes);
  const int error = give_name(file, target.string());
  if (error == 0) return true;
  if (error != EEXIST) return false;
  // Only a rename puts a file in another's place, and it wants a name to rename.
  UnfinishedFile temporary(temporary_beside(target));
  if (give_name(file, temporary.path()) != 0) return false;
  if (const int failed = temporary.rename_to(target.string())) refuse(path, failed);
  return true;
}

void write_named(const std::string& path, const fs::path& target, std::string_view bytes) {
  const std::string name = temporary_beside(target);
  Descriptor file(
      ::open(name.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC | O_NOFOLLOW, as_umask_allows));
  if (file.number() < 0) refuse(path, errno);
  UnfinishedFile temporary(name);
  fill(file, path, target, bytes);
  if (const int error = file.close()) refuse(path, error);
  if (const int error = temporary.rename_to(target.string())) refuse(path, error);
}

}  // namespace

void write_file(const std::string& path, std::string_view bytes) {
  const fs::path target = target_of(path);
  refuse_no_file(path, target);
  if (!write_unnamed(path, target, bytes)) write_named(path, target, bytes);
  flush_folder(target);
}

}  // namespace brimwright
