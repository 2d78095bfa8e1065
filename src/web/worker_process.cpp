#include "web/worker_process.h"

#include "sandbox/child_start.h"
#include "web/worker_start.h"

#include <signal.h>
#include <string.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cerrno>
#include <utility>

namespace brimwright::web {
namespace {

constexpr auto refusal = "no worker can be started";

}  // namespace

WorkerProcess::WorkerProcess(const std::string& program) {
  auto socket = sandbox::socket_ends(worker_note, refusal);
  auto note = sandbox::pipe_ends(worker_note, refusal);
  process_ = sandbox::ChildStart()
                 .give_nothing(STDIN_FILENO)
                 .give(socket.theirs.number(), worker_socket)
                 .give(note.theirs.number(), worker_note)
                 .no_more_than(worker_note)
                 .start(program, {"brimwright", worker_word}, sandbox::environment(), refusal);
  socket_ = std::move(socket.ours);
  note_ = std::move(note.ours);
}

WorkerProcess::~WorkerProcess() { end(); }

WorkerProcess::End WorkerProcess::end() {
  End found{.status = 0, .request = std::nullopt};
  if (process_ < 0) return found;
  ::kill(process_, SIGKILL);  // does nothing to one that is dead already
  while (::waitpid(process_, &found.status, 0) < 0 && errno == EINTR) {
  }
  process_ = -1;
  std::uint64_t request = 0;
  if (::read(note_.number(), &request, sizeof request) == sizeof request && request != 0)
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
