#include "web/worker_messages.h"

#include <algorithm>
#include <charconv>
#include <stdexcept>
#include <utility>

namespace brimwright::web {
namespace {

constexpr const char* slow_word = "slow";

std::uint64_t number_in(const std::string& text) {
  std::uint64_t number = 0;
  const char* const end = text.data() + text.size();
  const auto [stop, error] = std::from_chars(text.data(), end, number);
  if (error != std::errc() || stop != end) throw std::runtime_error("no number in a frame");
  return number;
}

void must_have(const Frame& frame, Frame::Kind kind, std::size_t least) {
  if (frame.kind != kind || frame.parts.size() < least)
    throw std::runtime_error("a frame is not the one awaited");
}

}  // namespace

// folder, whether a run is open and which, uploads, memory, shipped, library folders
Frame frame_of(const WorkerSettings& settings) {
  Frame frame{.kind = Frame::Kind::settings};
  frame.parts = {settings.folder,
                 settings.open ? "open" : "",
                 settings.open.value_or(""),
                 settings.uploads,
                 std::to_string(settings.limits.memory_bytes),
                 settings.library.shipped};
  const auto& folders = settings.library.folders;
  frame.parts.insert(frame.parts.end(), folders.begin(), folders.end());
  return frame;
}

WorkerSettings settings_of(const Frame& frame) {
  constexpr std::size_t fixed = 6;
  must_have(frame, Frame::Kind::settings, fixed);
  const auto& parts = frame.parts;
  WorkerSettings settings{.folder = parts[0],
                          .open = {},
                          .library = {.shipped = parts[5], .folders = {}},
                          .uploads = parts[3]};
  if (!parts[1].empty()) settings.open = parts[2];
  settings.limits.memory_bytes = number_in(parts[4]);
  settings.library.folders.assign(parts.begin() + fixed, parts.end());
  return settings;
}

// method, path, body, names and values of the query in turn
Frame frame_of(desk::DeskRequest request) {
  Frame frame{.kind = Frame::Kind::request, .request = request.number};
  frame.parts = {std::move(request.method), std::move(request.path), std::move(request.body)};
  for (const auto& [name, value] : request.query)
    frame.parts.insert(frame.parts.end(), {name, value});
  return frame;
}

desk::DeskRequest request_of(Frame frame) {
  constexpr std::size_t fixed = 3;
  must_have(frame, Frame::Kind::request, fixed);
  auto& parts = frame.parts;
  desk::DeskRequest request{.number = frame.request,
                            .method = std::move(parts[0]),
                            .path = std::move(parts[1]),
                            .query = {},
                            .body = std::move(parts[2])};
  for (std::size_t i = fixed; i + 1 < parts.size(); i += 2)
    request.query.emplace(std::move(parts[i]), std::move(parts[i + 1]));
  return request;
}

Frame begun_frame(std::uint64_t request, desk::Budget budget) {
  return {.kind = Frame::Kind::begun,
          .request = request,
          .parts = {budget == desk::Budget::quick ? "" : slow_word}};
}

desk::Budget budget_of(const Frame& frame) {
  must_have(frame, Frame::Kind::begun, 1);
  return frame.parts[0] == slow_word ? desk::Budget::slow : desk::Budget::quick;
}

// status, type, body, the name it is shared by
Frame frame_of(std::uint64_t request, desk::DeskAnswer answer) {
  return {.kind = Frame::Kind::answer,
          .request = request,
          .parts = {std::to_string(answer.answer.status), std::move(answer.answer.type),
                    std::move(answer.answer.body), std::move(answer.shared_as)}};
}

desk::DeskAnswer answer_of(Frame frame) {
  must_have(frame, Frame::Kind::answer, 4);
  auto& parts = frame.parts;
  const auto status = number_in(parts[0]);
  if (status < 200 || status > 599) throw std::runtime_error("no status of HTTP");
  // It goes into the head of the answer, where a line's end would begin another field.
  if (std::any_of(parts[1].begin(), parts[1].end(), [](char c) { return c < ' '; }))
    throw std::runtime_error("no media type");
  return {.answer = {.status = static_cast<int>(status),
                     .type = std::move(parts[1]),
                     .body = std::move(parts[2])},
          .shared_as = std::move(parts[3])};
}

}  // namespace brimwright::web
