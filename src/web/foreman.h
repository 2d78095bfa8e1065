#pragma once

#include "desk/desk.h"
#include "web/worker_settings.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <string>

namespace brimwright::web {

/// Keeps a worker at work: a process that answers what is given to it, and a new one when it dies.
///
/// The request that a worker died of, or that took too long, is answered with status 500 and not
/// tried again. Which it was, a dying worker tells by the thread that broke down; if it could not
/// (SIGKILL), all that were being worked on are answered so. What only happened to be worked on
/// beside it is tried once more, what had not been begun simply waits for the next worker. A worker
/// that neither works nor begins what it is asked is killed after the quick limit. One that dies
/// without having begun anything is started again after a pause that grows to five seconds; at the
/// fourth such death in a row, what waits is answered with status 500.
class Foreman {
 public:
  /// Called once, on a thread of the foreman's; must not throw. Not called after the end.
  using Answer = std::function<void(desk::DeskAnswer)>;

  /// `program` is started as a worker. `tell` hears of each death in a line; it may be empty.
  Foreman(WorkerSettings settings, std::string program,
          std::function<void(const std::string&)> tell);
  ~Foreman();
  Foreman(const Foreman&) = delete;
  Foreman& operator=(const Foreman&) = delete;

  /// From any thread.
  void give(desk::DeskRequest request, Answer answer);
  /// Kills the worker; what is unanswered stays so. From any thread, more than once.
  void stop();

 private:
  struct Parts;
  std::unique_ptr<Parts> parts_;
};

}  // namespace brimwright::web
