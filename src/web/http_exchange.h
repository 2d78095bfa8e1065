#pragma once

#include "desk/request.h"

#include <chrono>
#include <cstddef>
#include <functional>
#include <variant>

namespace brimwright::web {

/// How long and how much the listener puts up with.
struct Limits {
  std::size_t header_bytes = 16 << 10;
  std::size_t connections = 64;
  std::size_t turned_away = 64;  // told at the same time that these are taken; more are just closed
  std::chrono::milliseconds header = std::chrono::seconds(10);  // from its first byte to its end
  std::chrono::milliseconds idle = std::chrono::seconds(75);    // between two requests
  std::chrono::milliseconds body_pause = std::chrono::seconds(30);
  std::chrono::milliseconds body = std::chrono::minutes(15);  // a whole mesh over a slow tunnel
  std::chrono::milliseconds write = std::chrono::seconds(60);
  std::chrono::milliseconds grace = std::chrono::seconds(2);  // for running answers, at the stop
};

/// Decides from the head alone: a refusal, or what body may come.
using Gate = std::function<std::variant<desk::HttpAnswer, desk::BodyPlan>(const desk::HttpHead&)>;
/// Has the given function called once, now or later, on any thread.
using Handler = std::function<void(desk::HttpRequest, desk::Answering)>;

}  // namespace brimwright::web
