#pragma once

#include "moulds/library.h"

#include <chrono>
#include <cstddef>
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
  // Quick answers take milliseconds; mending a large mesh has limits of its own, two
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

}  // namespace brimwright::web
