#pragma once

#include "web/desk.h"
#include "web/foreman.h"
#include "web/frames.h"

namespace brimwright::web {

// What goes between server and worker, as frames and back. What comes back is believed in its form
// only: std::runtime_error if that is not sound.

Frame frame_of(const WorkerSettings& settings);
WorkerSettings settings_of(const Frame& frame);

Frame frame_of(DeskRequest request);
DeskRequest request_of(Frame frame);

Frame begun_frame(std::uint64_t request, Patience patience);
Patience patience_of(const Frame& frame);

Frame frame_of(std::uint64_t request, DeskAnswer answer);
DeskAnswer answer_of(Frame frame);

}  // namespace brimwright::web
