#include "sandbox/child_start.h"

#include <fcntl.h>
#include <signal.h>
#include <sys/socket.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <system_error>

namespace brimwright::sandbox {
namespace {

[[noreturn]] void refuse(int error, const std::string& refusal) {
  throw std::system_error(error, std::generic_category(), refusal);
}

Ends raised(std::array<int, 2> both, int last, const std::string& refusal) {
  const Descriptor first(both[0]), second(both[1]);
  Ends ends{Descriptor(::fcntl(both[0], F_DUPFD_CLOEXEC, last + 1)),
            Descriptor(::fcntl(both[1], F_DUPFD_CLOEXEC, last + 1))};
  if (!ends.ours.is_open() || !ends.theirs.is_open()) refuse(errno, refusal);
  ::fcntl(ends.ours.number(), F_SETFL, O_NONBLOCK);
  return ends;
}

/// As the system takes words: their ends by zeros, the list's by a null pointer.
std::vector<char*> pointers(std::vector<std::string>& words) {
  std::vector<char*> pointers;
  for (std::string& word : words) pointers.push_back(word.data());
  pointers.push_back(nullptr);
  return pointers;
}

}  // namespace

void Descriptor::close() {
  if (number_ >= 0) ::close(number_);
  number_ = -1;
}

Ends socket_ends(int last, const std::string& refusal) {
  std::array<int, 2> both{};
  if (::socketpair(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0, both.data()) != 0)
    refuse(errno, refusal);
  return raised(both, last, refusal);
}

Ends pipe_ends(int last, const std::string& refusal) {
  std::array<int, 2> both{};
  if (::pipe2(both.data(), O_CLOEXEC) != 0) refuse(errno, refusal);
  return raised(both, last, refusal);
}

ChildStart::ChildStart() {
  ::posix_spawn_file_actions_init(&files_);
  ::posix_spawnattr_init(&attributes_);
  sigset_t all, none;
  ::sigfillset(&all);
  ::sigemptyset(&none);
  ::posix_spawnattr_setsigdefault(&attributes_, &all);
  ::posix_spawnattr_setsigmask(&attributes_, &none);
  ::posix_spawnattr_setflags(&attributes_, POSIX_SPAWN_SETSIGDEF | POSIX_SPAWN_SETSIGMASK);
}

ChildStart::~ChildStart() {
  ::posix_spawn_file_actions_destroy(&files_);
  ::posix_spawnattr_destroy(&attributes_);
}

ChildStart& ChildStart::give(int ours, int number) {
  note(::posix_spawn_file_actions_adddup2(&files_, ours, number));
  return *this;
}

ChildStart& ChildStart::give_nothing(int number) {
  note(::posix_spawn_file_actions_addopen(&files_, number, "/dev/null", O_RDWR, 0));
  return *this;
}

ChildStart& ChildStart::no_more_than(int last) {
  note(::posix_spawn_file_actions_addclosefrom_np(&files_, last + 1));
  return *this;
}

pid_t ChildStart::start(const std::string& program, std::vector<std::string> words,
                        std::vector<std::string> environment, const std::string& refusal) const {
  if (error_ != 0) refuse(error_, refusal);
  const std::vector<char*> given = pointers(words), around = pointers(environment);
  pid_t process = -1;
  const int error =
      ::posix_spawn(&process, program.c_str(), &files_, &attributes_, given.data(), around.data());
  if (error != 0) refuse(error, refusal);
  return process;
}

std::vector<std::string> environment() {
  std::vector<std::string> settings;
  for (char** setting = environ; *setting != nullptr; ++setting) settings.emplace_back(*setting);
  return settings;
}

}  // namespace brimwright::sandbox
