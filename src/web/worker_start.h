#pragma once

namespace brimwright::web {

// What a server and the worker that it starts agree on.

/// The word by which the program is told to be a worker.
inline constexpr const char* worker_word = "serve-worker";

// Where a worker finds what it was given.
inline constexpr int worker_socket = 3;  // frames both ways
inline constexpr int worker_note = 4;    // a pipe for the last word of one that breaks down

}  // namespace brimwright::web
