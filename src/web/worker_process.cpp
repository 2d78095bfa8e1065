#include "web/worker_process.h"

#include "web/worker_start.h"

#include <fcntl.h>
#include <signal.h>
#include <spawn.h>
#include <string.h>
#include <sys/socket.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <system_error>
#include <utility>

namespace brimwright::web {
namespace {

[[noreturn]] void refuse(int error) {
  throw std::system_error(error, std::generic_category(), "no worker can be started");
}

void close(int& descriptor) {
  if (descriptor >= 0) ::close(descriptor);
  descriptor = -1;
}

/// Two ends that no other child gets, ours first. Both lie above the worker's own numbers, so that
/// putting one in its place there never overwrites the other.
struct Ends {
  explicit Ends(int made, std::array<int, 2> both) {
    if (made != 0) refuse(errno);
    for (int end = 0; end < 2; ++end) {
      raised[end] = ::fcntl(both[end], F_DUPFD_CLOEXEC, worker_note + 1);
      ::close(both[end]);
    }
    if (raised[0] < 0 || raised[1] < 0) {
      const int error = errno;
      close_all();
      refuse(error);
    }
  }
  ~Ends() { close_all(); }
  Ends(const Ends&) = delete;
  Ends& operator=(const Ends&) = delete;

  int ours() { return std::exchange(raised[0], -1); }
  int theirs() const { return raised[1]; }

 private:
  void close_all() {
    for (int& end : raised) close(end);
  }
  std::array<int, 2> raised = {-1, -1};
};

Ends socket_ends() {
  std::array<int, 2> both = {-1, -1};
  const int made = ::socketpair(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0, both.data());
  return Ends(made, both);
}

Ends pipe_ends() {
  std::array<int, 2> both = {-1, -1};
  const int made = ::pipe2(both.data(), O_CLOEXEC);
  return Ends(made, both);
}

/// What the child is like before it is the worker: no signals blocked or ignored, our two ends, and
/// nothing else of ours but the standard three.
class Beginning {
 public:
  Beginning(int socket, int note) {
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
    must(::posix_spawn_file_actions_addopen(&files_, 0, "/dev/null", O_RDONLY, 0));
    must(::posix_spawn_file_actions_adddup2(&files_, socket, worker_socket));
    must(::posix_spawn_file_actions_adddup2(&files_, note, worker_note));
    must(::posix_spawn_file_actions_addclosefrom_np(&files_, worker_note + 1));
    if (error != 0) refuse(error);
  }
  ~Beginning() {
    ::posix_spawn_file_actions_destroy(&files_);
    ::posix_spawnattr_destroy(&attributes_);
  }
  Beginning(const Beginning&) = delete;
  Beginning& operator=(const Beginning&) = delete;

  pid_t start(const std::string& program) const {
    std::string name = "brimwright", word = worker_word;
    std::array<char*, 3> words = {name.data(), word.data(), nullptr};
    pid_t process = -1;
    const int error =
        ::posix_spawn(&process, program.c_str(), &files_, &attributes_, words.data(), environ);
    if (error != 0) refuse(error);
    return process;
  }

 private:
  posix_spawn_file_actions_t files_;
  posix_spawnattr_t attributes_;
};

}  // namespace

WorkerProcess::WorkerProcess(const std::string& program) {
  Ends socket = socket_ends(), note = pipe_ends();
  process_ = Beginning(socket.theirs(), note.theirs()).start(program);
  socket_ = socket.ours();
  note_ = note.ours();
  for (const int end : {socket_, note_}) ::fcntl(end, F_SETFL, O_NONBLOCK);
}

WorkerProcess::~WorkerProcess() {
  end();
  close(socket_);
  close(note_);
}

WorkerProcess::End WorkerProcess::end() {
  End found{.status = 0, .request = std::nullopt};
  if (process_ < 0) return found;
  ::kill(process_, SIGKILL);  // does nothing to one that is dead already
  while (::waitpid(process_, &found.status, 0) < 0 && errno == EINTR) {
  }
  process_ = -1;
  std::uint64_t request = 0;
  if (::read(note_, &request, sizeof request) == sizeof request && request != 0)
    found.request = request;
  return found;
}

std::string words_for_status(int status) {
  if (WIFSIGNALED(status)) {
    const char* const name = ::sigdescr_np(WTERMSIG(status));
    return "signal " + std::to_string(WTERMSIG(status)) + (name ? std::string(", ") + name : "");
  }
  return "exit status " + std::to_string(WEXITSTATUS(status));
}

}  // namespace brimwright::web
