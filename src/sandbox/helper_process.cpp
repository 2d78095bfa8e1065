#include "sandbox/helper_process.h"

#include "sandbox/helper_calls.h"

#include <fcntl.h>
#include <poll.h>
#include <signal.h>
#include <spawn.h>
#include <sys/socket.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <numeric>
#include <stdexcept>
#include <utility>
#include <vector>

namespace brimwright::sandbox {
namespace {

using Clock = std::chrono::steady_clock;
using Pieces = std::initializer_list<std::string_view>;

[[noreturn]] void refuse() { throw std::runtime_error("no helper program could be started"); }

/// A descriptor that no other child gets, closed at the end.
class Descriptor {
 public:
  Descriptor() = default;
  explicit Descriptor(int number) : number_(number) {}
  Descriptor(Descriptor&& other) noexcept : number_(std::exchange(other.number_, -1)) {}
  Descriptor& operator=(Descriptor&& other) noexcept {
    std::swap(number_, other.number_);
    return *this;
  }
  ~Descriptor() { close(); }

  int number() const { return number_; }
  bool is_open() const { return number_ >= 0; }
  void close() {
    if (number_ >= 0) ::close(number_);
    number_ = -1;
  }

 private:
  int number_ = -1;
};

/// Two ends, ours and theirs. Both lie above the helper's own numbers, so that putting one in its
/// place there never overwrites the other.
struct Ends {
  Descriptor ours, theirs;
};

Ends socket_ends() {
  std::array<int, 2> both{};
  if (::socketpair(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0, both.data()) != 0) refuse();
  const Descriptor first(both[0]), second(both[1]);
  Ends ends{Descriptor(::fcntl(both[0], F_DUPFD_CLOEXEC, work_output + 1)),
            Descriptor(::fcntl(both[1], F_DUPFD_CLOEXEC, work_output + 1))};
  if (!ends.ours.is_open() || !ends.theirs.is_open()) refuse();
  ::fcntl(ends.ours.number(), F_SETFL, O_NONBLOCK);
  return ends;
}

/// Ours, and large pages for large memory: Assimp makes and clears 16 MiB for the smallest OBJ,
/// which took 10 ms in small ones.
std::vector<std::string> environment() {
  const std::string malloc_settings = "GLIBC_TUNABLES=";
  std::vector<std::string> settings;
  for (char** setting = environ; *setting != nullptr; ++setting)
    if (!std::string_view(*setting).starts_with(malloc_settings)) settings.emplace_back(*setting);
  settings.push_back(malloc_settings + "glibc.malloc.hugetlb=1");
  return settings;
}

/// As the system takes words: their ends by zeros, the list's by a null pointer.
std::vector<char*> pointers(std::vector<std::string>& words) {
  std::vector<char*> pointers;
  for (std::string& word : words) pointers.push_back(word.data());
  pointers.push_back(nullptr);
  return pointers;
}

/// What the helper is like as it begins: no signals blocked, handled or ignored, and nothing of
/// ours but the two ends.
class Beginning {
 public:
  Beginning(int input, int output) {
    ::posix_spawn_file_actions_init(&files_);
    ::posix_spawnattr_init(&attributes_);
    sigset_t all, none;
    ::sigfillset(&all);
    ::sigemptyset(&none);
    ::posix_spawnattr_setsigdefault(&attributes_, &all);
    ::posix_spawnattr_setsigmask(&attributes_, &none);
    ::posix_spawnattr_setflags(&attributes_, POSIX_SPAWN_SETSIGDEF | POSIX_SPAWN_SETSIGMASK);
    int error = 0;
    const auto must = [&](int result) { error = error != 0 ? error : result; };
    must(::posix_spawn_file_actions_adddup2(&files_, input, work_input));
    for (const int printing : {STDOUT_FILENO, STDERR_FILENO})
      must(::posix_spawn_file_actions_addopen(&files_, printing, "/dev/null", O_WRONLY, 0));
    must(::posix_spawn_file_actions_adddup2(&files_, output, work_output));
    must(::posix_spawn_file_actions_addclosefrom_np(&files_, work_output + 1));
    if (error != 0) refuse();
  }
  ~Beginning() {
    ::posix_spawn_file_actions_destroy(&files_);
    ::posix_spawnattr_destroy(&attributes_);
  }
  Beginning(const Beginning&) = delete;
  Beginning& operator=(const Beginning&) = delete;

  pid_t start(std::vector<std::string> words) const {
    std::vector<std::string> settings = environment();
    const std::vector<char*> given = pointers(words), around = pointers(settings);
    pid_t process = -1;
    if (::posix_spawn(&process, given[0], &files_, &attributes_, given.data(), around.data()) != 0)
      refuse();
    return process;
  }

 private:
  posix_spawn_file_actions_t files_;
  posix_spawnattr_t attributes_;
};

std::size_t size_of(Pieces bytes) {
  return std::accumulate(
      bytes.begin(), bytes.end(), std::size_t{0},
      [](std::size_t sum, std::string_view piece) { return sum + piece.size(); });
}

/// The bytes on their way in and what comes out, both at once, so that neither waits for the other.
class Exchange {
 public:
  Exchange(Descriptor input, Descriptor output, Pieces bytes, std::size_t most)
      : input_(std::move(input)), output_(std::move(output)), left_(bytes), most_(most) {}

  /// False when time runs out first, or what comes out is more than the helper may hold.
  bool is_whole_by(Clock::time_point deadline) {
    while (true) {
      drop_what_is_sent();
      const auto left =
          std::chrono::ceil<std::chrono::milliseconds>(deadline - Clock::now()).count();
      if (left <= 0) return false;
      std::array<pollfd, 2> ends = {{{output_.number(), POLLIN, 0}, {input_.number(), POLLOUT, 0}}};
      const int ready =
          ::poll(ends.data(), ends.size(), static_cast<int>(std::min<long>(left, 60'000)));
      if (ready < 0 && errno != EINTR) return false;
      if (ready <= 0) continue;
      if (ends[1].revents != 0) send();
      if (ends[0].revents == 0) continue;
      const ssize_t got = ::read(output_.number(), chunk_.data(), chunk_.size());
      if (got == 0) return true;
      if (got < 0 && errno != EINTR && errno != EAGAIN) return false;
      if (got > 0) made_.append(chunk_.data(), static_cast<std::size_t>(got));
      if (made_.size() > most_) return false;
    }
  }

  std::string made() && { return std::move(made_); }

 private:
  void drop_what_is_sent() {
    while (!left_.empty() && left_.front().empty()) left_.erase(left_.begin());
    if (left_.empty()) input_.close();
  }

  void send() {
    std::string_view& next = left_.front();
    const ssize_t sent = ::send(input_.number(), next.data(), next.size(), MSG_NOSIGNAL);
    if (sent > 0) next.remove_prefix(static_cast<std::size_t>(sent));
    if (sent < 0 && errno != EINTR && errno != EAGAIN) left_.clear();  // it reads no more
  }

  Descriptor input_, output_;
  std::vector<std::string_view> left_;
  std::size_t most_;
  std::vector<char> chunk_ = std::vector<char>(std::size_t{1} << 18);
  std::string made_;
};

/// Waits for the helper's end, and ends it at the deadline. -1 if the program does not keep
/// statuses.
int status_of(pid_t helper, Clock::time_point deadline) {
  int status = 0;
  while (true) {
    const pid_t ended = ::waitpid(helper, &status, WNOHANG);
    if (ended == helper) return status;
    if (ended < 0 && errno != EINTR) return -1;
    if (Clock::now() >= deadline) ::kill(helper, SIGKILL);
    ::usleep(200);
  }
}

WorkEnd end_told_by(int status) {
  if (!WIFEXITED(status))
    return WIFSIGNALED(status) && WTERMSIG(status) == SIGXCPU ? WorkEnd::out_of_time
                                                              : WorkEnd::broke_down;
  switch (WEXITSTATUS(status)) {
    case work_done:
    case work_done_without_filter:
      return WorkEnd::finished;
    case work_given_up:
      return WorkEnd::gave_up;
    case work_out_of_memory:
      return WorkEnd::out_of_memory;
    case work_not_confined:
      return WorkEnd::not_confined;
    default:
      return WorkEnd::broke_down;
  }
}

}  // namespace

WorkReport worked_by(const std::string& path, std::string_view job, Pieces bytes,
                     const WorkLimits& limits) {
  Ends input = socket_ends(), output = socket_ends();
  const Clock::time_point deadline = Clock::now() + limits.time;
  const pid_t helper =
      Beginning(input.theirs.number(), output.theirs.number())
          .start({path, std::string(job), std::to_string(size_of(bytes)),
                  std::to_string(limits.memory_bytes), std::to_string(limits.time.count()),
                  std::to_string(::getpid())});
  input.theirs.close();
  output.theirs.close();
  Exchange exchange(std::move(input.ours), std::move(output.ours), bytes, limits.memory_bytes);
  const bool is_whole = exchange.is_whole_by(deadline);
  const bool is_late = Clock::now() >= deadline;
  if (!is_whole) ::kill(helper, SIGKILL);
  const int status = status_of(helper, deadline);
  if (!is_whole) return {is_late ? WorkEnd::out_of_time : WorkEnd::broke_down};
  const WorkEnd end = end_told_by(status);
  return {.end = end,
          .bytes = end == WorkEnd::finished ? std::move(exchange).made() : std::string(),
          .unfiltered = WIFEXITED(status) && WEXITSTATUS(status) == work_done_without_filter};
}

}  // namespace brimwright::sandbox
