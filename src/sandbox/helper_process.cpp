#include "sandbox/helper_process.h"

#include "sandbox/child_start.h"
#include "sandbox/helper_calls.h"

#include <poll.h>
#include <signal.h>
#include <sys/socket.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <numeric>
#include <utility>
#include <vector>

namespace brimwright::sandbox {
namespace {

using Clock = std::chrono::steady_clock;
using Pieces = std::initializer_list<std::string_view>;

constexpr auto refusal = "no helper program could be started";

/// Ours, and large pages for large memory: Assimp makes and clears 16 MiB for the smallest OBJ,
/// which took 10 ms in small ones.
std::vector<std::string> with_large_pages() {
  const std::string malloc_settings = "GLIBC_TUNABLES=";
  std::vector<std::string> settings = environment();
  std::erase_if(settings,
                [&](const auto& setting) { return setting.starts_with(malloc_settings); });
  settings.push_back(malloc_settings + "glibc.malloc.hugetlb=1");
  return settings;
}

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
  Ends input = socket_ends(work_output, refusal), output = socket_ends(work_output, refusal);
  const Clock::time_point deadline = Clock::now() + limits.time;
  const pid_t helper = ChildStart()
                           .give(input.theirs.number(), work_input)
                           .give_nothing(STDOUT_FILENO)
                           .give_nothing(STDERR_FILENO)
                           .give(output.theirs.number(), work_output)
                           .no_more_than(work_output)
                           .start(path,
                                  {path, std::string(job), std::to_string(size_of(bytes)),
                                   std::to_string(limits.memory_bytes),
                                   std::to_string(limits.time.count()), std::to_string(::getpid())},
                                  with_large_pages(), refusal);
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
