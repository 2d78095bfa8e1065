#pragma once

#include "sandbox/child_start.h"

#include <sys/types.h>

#include <cstdint>
#include <optional>
#include <string>

namespace brimwright::web {

/// This program started once more, to answer for a server. Killed with this object if it still
/// runs.
///
/// It also dies with the thread that made this object: the kernel takes that for the death of its
/// parent (PR_SET_PDEATHSIG).
class WorkerProcess {
 public:
  /// std::system_error if it cannot be started.
  explicit WorkerProcess(const std::string& program);
  ~WorkerProcess();
  WorkerProcess(const WorkerProcess&) = delete;
  WorkerProcess& operator=(const WorkerProcess&) = delete;

  int socket() const { return socket_.number(); }  ///< never blocks

  struct End {
    int status;  // as of waitpid
    std::optional<std::uint64_t>
        request;  // worked on by the thread that broke down, if it could say
  };
  /// Kills it if it still runs.
  End end();

 private:
  pid_t process_ = -1;
  sandbox::Descriptor socket_, note_;
};

/// "signal 11, Segmentation fault" or "exit status 3".
std::string words_for_status(int status);

}  // namespace brimwright::web
