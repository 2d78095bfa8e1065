#include "sandbox/helper_program.h"

#include "sandbox/helper_calls.h"
#include "sandbox/work_filter.h"

#include <fcntl.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <charconv>
#include <csignal>
#include <cstdint>
#include <memory>
#include <new>
#include <string>

namespace brimwright::sandbox {
namespace {

[[noreturn]] void give_up() { ::_exit(work_given_up); }

std::uint64_t number_in(const char* word) {
  const std::string_view text(word);
  std::uint64_t number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (error != std::errc() || end != text.data() + text.size()) give_up();
  return number;
}

/// What it is told as it is started; see helper_calls.h.
struct Call {
  std::uint64_t bytes, memory_bytes, milliseconds, starter;
};

Call read_call(int argc, char** argv, std::string_view job) {
  if (argc != 6 || argv[1] != job) give_up();
  return {number_in(argv[2]), number_in(argv[3]), number_in(argv[4]), number_in(argv[5])};
}

void end_with_starter(std::uint64_t starter) {
  ::prctl(PR_SET_PDEATHSIG, SIGKILL);
  // It had ended before that could be told.
  if (static_cast<std::uint64_t>(::getppid()) != starter) give_up();
}

/// Nothing of it is looked at.
std::string_view read_input(std::size_t size) {
  if (size == 0) return {};
  char* const bytes = new char[size];  // until the process ends
  for (std::size_t at = 0; at < size;) {
    const ssize_t got = ::read(work_input, bytes + at, size - at);
    if (got < 0 && errno == EINTR) continue;
    if (got <= 0) give_up();
    at += static_cast<std::size_t>(got);
  }
  return {bytes, size};
}

void lower_limit(__rlimit_resource resource, rlim_t most) {
  rlimit limit{};
  if (::getrlimit(resource, &limit) != 0) give_up();
  limit.rlim_max = std::min(limit.rlim_max, most);
  limit.rlim_cur = std::min(limit.rlim_cur, limit.rlim_max);
  if (::setrlimit(resource, &limit) != 0) give_up();
}

/// The program itself, its libraries and what it was given.
std::size_t bytes_so_far() {
  std::array<char, 64> text{};
  const int file = ::open("/proc/self/statm", O_RDONLY | O_CLOEXEC);
  const ssize_t read = ::read(file, text.data(), text.size());
  ::close(file);
  std::size_t pages = 0;
  if (read > 0) std::from_chars(text.data(), text.data() + read, pages);
  return pages * static_cast<std::size_t>(::sysconf(_SC_PAGESIZE));
}

void set_limits(const Call& call, Reach reach) {
  if (::prctl(PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0) != 0) give_up();
#ifndef __SANITIZE_ADDRESS__  // which sets aside terabytes of addresses for itself
  lower_limit(RLIMIT_AS, bytes_so_far() + call.memory_bytes);
#endif
  lower_limit(RLIMIT_CPU, (call.milliseconds + 999) / 1000 + 1);
  lower_limit(RLIMIT_CORE, 0);
  if (reach == Reach::files) return;
  lower_limit(RLIMIT_FSIZE, 0);
#ifndef __SANITIZE_ADDRESS__  // whose checks open pipes to see what may be read
  lower_limit(RLIMIT_NOFILE, work_output + 1);
#endif
}

void shut_input() {
  const int nowhere = ::open("/dev/null", O_RDONLY);
  if (nowhere < 0 || ::dup2(nowhere, work_input) < 0) give_up();
  ::close(nowhere);
}

/// Collects small pieces, as each call of the system takes longer than they.
class Output {
 public:
  void send(const void* data, std::size_t size) {
    if (kept_.size() + size > most_kept) flush();
    if (size > most_kept) return write_all(static_cast<const char*>(data), size);
    kept_.append(static_cast<const char*>(data), size);
  }
  void flush() {
    write_all(kept_.data(), kept_.size());
    kept_.clear();
  }

 private:
  static constexpr std::size_t most_kept = std::size_t{1} << 16;

  static void write_all(const char* next, std::size_t size) {
    while (size > 0) {
      const ssize_t sent = ::write(work_output, next, size);
      if (sent < 0 && errno == EINTR) continue;
      if (sent <= 0) give_up();  // nobody listens
      next += sent;
      size -= static_cast<std::size_t>(sent);
    }
  }

  std::string kept_;
};

bool succeeds(const HelperJob& job, std::string_view bytes) try {
  Output output;
  if (!job.work(bytes, [&](const void* data, std::size_t size) { output.send(data, size); }))
    return false;
  output.flush();
  return true;
} catch (...) {
  return false;
}

}  // namespace

void be_a_helper(int argc, char** argv, const HelperJob& job) {
  const Call call = read_call(argc, argv, job.name);
  end_with_starter(call.starter);
  std::set_new_handler([] { ::_exit(work_out_of_memory); });
  const std::string_view bytes = read_input(call.bytes);
  shut_input();
  set_limits(call, job.reach);
  const Confinement confinement =
      job.reach == Reach::files ? Confinement::confined : confine_this_process();
  if (confinement == Confinement::refused) ::_exit(work_not_confined);
  const int well = confinement == Confinement::not_known ? work_done_without_filter : work_done;
  ::_exit(succeeds(job, bytes) ? well : work_given_up);
}

}  // namespace brimwright::sandbox
