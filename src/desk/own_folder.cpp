#include "desk/own_folder.h"

#include "units/user_error.h"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <charconv>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <thread>

namespace brimwright::desk {

namespace fs = std::filesystem;

namespace {

constexpr const char* own_name = ".brimwright";
constexpr const char* lock_name = "lock";

bool is_there(const fs::path& path) {
  struct stat facts {};
  return ::lstat(path.c_str(), &facts) == 0;
}

bool is_folder(const fs::path& path) {
  struct stat facts {};
  return ::lstat(path.c_str(), &facts) == 0 && S_ISDIR(facts.st_mode);
}

void make_folder(const fs::path& folder, const std::string& told) {
  if (is_folder(folder)) return;
  constexpr mode_t as_umask_allows = 0777;
  if (::mkdir(folder.c_str(), as_umask_allows) == 0)
    return flush_folder(folder.parent_path().string());
  if (errno == EEXIST && is_folder(folder)) return;
  throw UserError({told, ""}, "cannot be made, so nothing can be kept in this folder",
                  errno == ENOSPC || errno == EDQUOT ? "make room on the disk"
                                                     : "serve a folder that you may write to");
}

/// Some network file systems know no such locks: there, two programs are as alone as before.
bool knows_no_locks(int error) {
  return error == ENOLCK || error == ENOSYS || error == EOPNOTSUPP || error == EINVAL;
}

bool is_locked_in_time(int lock) {
  using namespace std::chrono;
  const auto end = steady_clock::now() + seconds(10);
  while (::flock(lock, LOCK_EX | LOCK_NB) != 0) {
    if (knows_no_locks(errno)) return true;
    if (errno != EWOULDBLOCK && errno != EINTR) return false;
    if (steady_clock::now() >= end) return false;
    std::this_thread::sleep_for(milliseconds(5));
  }
  return true;
}

using Digits = std::array<char, 24>;

std::uint64_t number_in(int file) {
  Digits digits{};
  const ssize_t got = ::pread(file, digits.data(), digits.size(), 0);
  std::uint64_t number = 0;
  if (got > 0) std::from_chars(digits.data(), digits.data() + got, number);
  return number;
}

}  // namespace

std::string OwnFolder::told(const std::string& part) { return std::string(own_name) + "/" + part; }

std::string OwnFolder::path(const std::string& part) const {
  fs::path way = fs::path(served_) / own_name;
  std::string told_way = own_name;
  for (const fs::path& next : fs::path(part)) {
    if (is_there(way) && !is_folder(way))
      throw UserError({told_way, ""}, "is not a folder, or is a link to one",
                      "move it away: brimwright keeps what it has to remember there");
    way /= next;
    told_way += "/" + next.string();
  }
  return way.string();
}

bool OwnFolder::has_folder(const std::string& part) const {
  const std::string folder = path(part);
  if (is_there(folder) && !is_folder(folder)) path(part + "/");  // says what is in the way
  return is_folder(folder);
}

std::string OwnFolder::made(const std::string& part) const {
  fs::path way = fs::path(served_) / own_name;
  make_folder(way, own_name);
  std::string told_way = own_name;
  for (const fs::path& next : fs::path(part)) {
    way /= next;
    told_way += "/" + next.string();
    make_folder(way, told_way);
  }
  return way.string();
}

std::string OwnFolder::changes() const {
  const fs::path file = fs::path(served_) / own_name / lock_name;
  const int open = ::open(file.c_str(), O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC);
  if (open < 0) return "0";
  const std::uint64_t number = number_in(open);
  ::close(open);
  return std::to_string(number);
}

AloneInFolder::AloneInFolder(const OwnFolder& folder) {
  const std::string file = folder.made("") + "/" + lock_name;
  constexpr mode_t as_umask_allows = 0666;
  lock_ =
      ::open(file.c_str(), O_RDWR | O_CREAT | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC, as_umask_allows);
  if (lock_ >= 0 && is_locked_in_time(lock_)) return;
  const bool is_open = lock_ >= 0;
  if (is_open) ::close(lock_);
  throw UserError({OwnFolder::told(lock_name), ""},
                  is_open ? "is held by another program for too long" : "cannot be written",
                  is_open ? "look whether another brimwright has stopped half-way, and end it"
                          : "check that it is a file you may write to");
}

AloneInFolder::~AloneInFolder() { ::close(lock_); }

void AloneInFolder::tell_change() const {
  const std::string next = std::to_string(number_in(lock_) + 1);
  // Not being heard of at once is no reason to call what is kept not kept.
  if (::pwrite(lock_, next.data(), next.size(), 0) < 0) return;
}

void flush_folder(const std::string& folder) {
  const int open = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (open < 0) return;
  ::fsync(open);  // where that cannot be done (some network file systems), nothing more can be
  ::close(open);
}

int move_file(const std::string& from, const std::string& to) {
  int failed = ::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE);
  if (failed != 0 && (errno == EINVAL || errno == ENOSYS)) {  // not known to this file system
    if (is_there(to)) return EEXIST;
    failed = ::rename(from.c_str(), to.c_str());
  }
  if (failed != 0) return errno;
  flush_folder(fs::path(to).parent_path().string());
  flush_folder(fs::path(from).parent_path().string());
  return 0;
}

}  // namespace brimwright::desk
