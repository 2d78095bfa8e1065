#pragma once

#include "moulds/library.h"
#include "web/desk.h"

#include <chrono>
#include <cstddef>
#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace brimwright::web {

/// Three quarters of this machine's memory, 8 GiB at most: room for the meshes a worker keeps
/// (MeshMemory: some 2 GiB) beside the largest being measured, and none for a request to take the
/// machine. Common practice, no source.
std::size_t usual_memory_limit();

/// What a worker process may take. One that takes longer is killed.
struct WorkerLimits {
  std::size_t memory_bytes = usual_memory_limit();  // of addresses (RLIMIT_AS)
  // Answers without patience take milliseconds; mending a large mesh has limits of its own, two
  // minutes each.
  std::chrono::milliseconds quick = std::chrono::minutes(1);
  std::chrono::milliseconds patient = std::chrono::minutes(10);
};

/// What a worker has to know before its first request.
struct WorkerSettings {
  std::string folder;               // worked in
  std::optional<std::string> open;  // the run to open
  moulds::Library library;          // the worker has a memory of its own
  std::string uploads;              // the folder of uploads
  WorkerLimits limits = {};
};

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
  using Answer = std::function<void(DeskAnswer)>;

  /// `program` is started as a worker. `tell` hears of each death in a line; it may be empty.
  /// `drop` hears of each request that was broken off, so that what lies about of it can go.
  Foreman(WorkerSettings settings, std::string program,
          std::function<void(const std::string&)> tell, std::function<void(std::uint64_t)> drop);
  ~Foreman();
  Foreman(const Foreman&) = delete;
  Foreman& operator=(const Foreman&) = delete;

  /// From any thread.
  void give(DeskRequest request, Answer answer);
  /// Kills the worker; what is unanswered stays so. From any thread, more than once.
  void stop();

 private:
  struct Parts;
  std::unique_ptr<Parts> parts_;
};

}  // namespace brimwright::web
