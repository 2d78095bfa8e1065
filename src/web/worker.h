#pragma once

#include <iosfwd>

namespace brimwright::web {

/// The word by which the program is told to be a worker.
inline constexpr const char* worker_word = "serve-worker";

/// The process behind the page: answers what its server sends by the socket it was given, until
/// that closes; never returns then. Started by anybody else, it says so on `err` and gives 1.
int be_worker(std::ostream& err);

}  // namespace brimwright::web
