#pragma once

#include "desk/desk.h"
#include "web/frames.h"
#include "web/worker_settings.h"

namespace brimwright::web {

// What goes between server and worker, as frames and back. What comes back is believed in its form
// only: std::runtime_error if that is not sound.

Frame frame_of(const WorkerSettings& settings);
WorkerSettings settings_of(const Frame& frame);

Frame frame_of(desk::DeskRequest request);
desk::DeskRequest request_of(Frame frame);

Frame begun_frame(std::uint64_t request, desk::Budget budget);
desk::Budget budget_of(const Frame& frame);

Frame frame_of(std::uint64_t request, desk::DeskAnswer answer);
desk::DeskAnswer answer_of(Frame frame);

}  // namespace brimwright::web
