#include "geometry/sandbox/child_process.h"

#include "geometry/sandbox/child_filter.h"

#include <fcntl.h>
#include <locale.h>
#include <poll.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <charconv>
#include <csignal>
#include <locale>
#include <new>
#include <stdexcept>

namespace brimwright::geometry {
namespace {

using Clock = std::chrono::steady_clock;

// Exit statuses of the child.
constexpr int done = 0;
constexpr int gave_up = 3;
constexpr int out_of_memory = 4;
constexpr int not_confined = 5;
constexpr int done_without_filter = 6;

constexpr int result_pipe = 3;  // the child's only descriptor above the standard three

void lower_limit(__rlimit_resource resource, rlim_t most) {
  rlimit limit{};
  if (::getrlimit(resource, &limit) != 0) ::_exit(gave_up);
  limit.rlim_max = std::min(limit.rlim_max, most);
  limit.rlim_cur = limit.rlim_max;
  if (::setrlimit(resource, &limit) != 0) ::_exit(gave_up);
}

/// What the child has from its parent, which may be a server that keeps large meshes: no memory of
/// the child's own.
std::size_t inherited_bytes() {
  std::array<char, 64> text{};
  const int file = ::open("/proc/self/statm", O_RDONLY | O_CLOEXEC);
  const ssize_t read = ::read(file, text.data(), text.size());
  ::close(file);
  std::size_t pages = 0;
  if (read > 0) std::from_chars(text.data(), text.data() + read, pages);
  return pages * static_cast<std::size_t>(::sysconf(_SC_PAGESIZE));
}

void set_limits(const ChildLimits& limits) {
  const auto seconds = std::chrono::ceil<std::chrono::seconds>(limits.time).count();
#ifndef __SANITIZE_ADDRESS__  // which sets aside terabytes of addresses for itself
  lower_limit(RLIMIT_AS, inherited_bytes() + limits.memory_bytes);
#endif
  lower_limit(RLIMIT_CPU, static_cast<rlim_t>(seconds + 1));
  lower_limit(RLIMIT_FSIZE, 0);
  lower_limit(RLIMIT_CORE, 0);
  lower_limit(RLIMIT_NOFILE, result_pipe + 1);
}

/// Leaves the child nothing of its parent's: no files or sockets, no handlers, nowhere to print.
void shut_off(int pipe_end, pid_t parent) {
  ::prctl(PR_SET_PDEATHSIG, SIGKILL);
  if (::getppid() != parent) ::_exit(gave_up);  // it had ended before that could be told
  for (int signal = 1; signal < 32; ++signal) ::signal(signal, SIG_DFL);
  const int nowhere = ::open("/dev/null", O_RDWR);
  const int aside = ::fcntl(pipe_end, F_DUPFD, result_pipe + 1);
  if (nowhere < 0 || aside < 0) ::_exit(gave_up);
  for (int standard = 0; standard < 3; ++standard) ::dup2(nowhere, standard);
  ::dup2(aside, result_pipe);
  if (::close_range(result_pipe + 1, ~0U, 0) != 0) ::_exit(gave_up);
  // Assimp reads some numbers by the locale's rules. Only the child's are set; the program's stay.
  std::locale::global(std::locale::classic());
  ::uselocale(::newlocale(LC_ALL_MASK, "C", nullptr));
}

bool send_all(const void* data, std::size_t size) {
  const char* next = static_cast<const char*>(data);
  while (size > 0) {
    const ssize_t sent = ::write(result_pipe, next, size);
    if (sent < 0 && errno == EINTR) continue;
    if (sent <= 0) return false;
    next += sent;
    size -= static_cast<std::size_t>(sent);
  }
  return true;
}

[[noreturn]] void be_the_child(int pipe_end, pid_t parent, const ChildLimits& limits,
                               const std::function<bool(const Send&)>& work) {
  shut_off(pipe_end, parent);
  set_limits(limits);
  std::set_new_handler([] { ::_exit(out_of_memory); });
  const Confinement confinement = confine_this_process();
  if (confinement == Confinement::refused) ::_exit(not_confined);
  bool succeeded = false;
  try {
    succeeded = work(send_all);
  } catch (...) {
    succeeded = false;
  }
  const int well = confinement == Confinement::not_known ? done_without_filter : done;
  ::_exit(succeeded ? well : gave_up);  // no destructors, no atexit: they are the parent's
}

/// Reads until the child closes its end; false when time or memory runs out first.
bool read_to_end(int pipe_end, Clock::time_point deadline, std::size_t most, std::string& bytes) {
  std::array<char, 1 << 16> chunk;
  while (true) {
    const auto left = std::chrono::ceil<std::chrono::milliseconds>(deadline - Clock::now()).count();
    if (left <= 0) return false;
    pollfd wait{pipe_end, POLLIN, 0};
    const int ready = ::poll(&wait, 1, static_cast<int>(std::min<long>(left, 60'000)));
    if (ready < 0 && errno != EINTR) return false;
    if (ready <= 0) continue;
    const ssize_t got = ::read(pipe_end, chunk.data(), chunk.size());
    if (got < 0 && errno == EINTR) continue;
    if (got <= 0) return got == 0;
    bytes.append(chunk.data(), static_cast<std::size_t>(got));
    if (bytes.size() > most) return false;
  }
}

/// Waits for the child's end, and ends it at the deadline. -1 if the program does not keep
/// statuses.
int status_of(pid_t child, Clock::time_point deadline) {
  int status = 0;
  while (true) {
    const pid_t ended = ::waitpid(child, &status, WNOHANG);
    if (ended == child) return status;
    if (ended < 0 && errno != EINTR) return -1;
    if (Clock::now() >= deadline) ::kill(child, SIGKILL);
    ::usleep(200);
  }
}

ChildEnd end_told_by(int status) {
  if (!WIFEXITED(status)) {
    return WIFSIGNALED(status) && WTERMSIG(status) == SIGXCPU ? ChildEnd::out_of_time
                                                              : ChildEnd::broke_down;
  }
  switch (WEXITSTATUS(status)) {
    case done:
    case done_without_filter:
      return ChildEnd::finished;
    case gave_up:
      return ChildEnd::gave_up;
    case out_of_memory:
      return ChildEnd::out_of_memory;
    case not_confined:
      return ChildEnd::not_confined;
    default:
      return ChildEnd::broke_down;
  }
}

bool was_without_filter(int status) {
  return WIFEXITED(status) && WEXITSTATUS(status) == done_without_filter;
}

}  // namespace

ChildReport run_in_child(const ChildLimits& limits, const std::function<bool(const Send&)>& work) {
  std::array<int, 2> ends{};
  if (::pipe2(ends.data(), O_CLOEXEC) != 0) throw std::runtime_error("no pipe could be made");
  const pid_t parent = ::getpid();
  const pid_t child = ::fork();
  if (child < 0) {
    ::close(ends[0]);
    ::close(ends[1]);
    throw std::runtime_error("no child process could be started");
  }
  if (child == 0) be_the_child(ends[1], parent, limits, work);
  ::close(ends[1]);
  const Clock::time_point deadline = Clock::now() + limits.time;
  std::string bytes;
  const bool whole = read_to_end(ends[0], deadline, limits.memory_bytes, bytes);
  const bool late = Clock::now() >= deadline;
  if (!whole) ::kill(child, SIGKILL);
  ::close(ends[0]);
  const int status = status_of(child, deadline);
  if (!whole) return {late ? ChildEnd::out_of_time : ChildEnd::broke_down};
  const ChildEnd end = end_told_by(status);
  return {.end = end,
          .bytes = end == ChildEnd::finished ? std::move(bytes) : std::string(),
          .unfiltered = was_without_filter(status)};
}

}  // namespace brimwright::geometry
