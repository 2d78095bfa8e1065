#pragma once

#include "units/user_error.h"
#include "web/http_exchange.h"

#include <chrono>
#include <cstdint>
#include <functional>
#include <memory>

namespace brimwright::web {

struct ListenerState;

/// Where to listen.
struct ListenAt {
  std::uint16_t port = 0;  // 0: one that is free, `favoured` if that is
  std::uint16_t favoured = 0;
  Place said_at = {};  // where the port was said, for complaints
};

/// HTTP/1.1 on 127.0.0.1, and nothing of what is answered.
///
/// All reading and writing is done on the thread that calls run(). An answer must come before the
/// listener's own end. Refused before any of the body is
/// read, with the connection closed: a head too long, too late or out of form, more than one or a
/// strange Content-Length or Transfer-Encoding, a Host other than 127.0.0.1 or localhost with this
/// port, a body longer than its plan (a chunked one as soon as it grows too long).
class HttpListener {
 public:
  /// UserError if the port cannot be had.
  HttpListener(const ListenAt& at, const Limits& limits, Gate gate, Handler handler);
  ~HttpListener();
  HttpListener(const HttpListener&) = delete;
  HttpListener& operator=(const HttpListener&) = delete;

  std::uint16_t port() const;
  /// Serves until stop(), and then as long as the grace for answers that have begun.
  void run();
  /// From any thread: takes no more requests, lets running answers finish.
  void stop();
  /// Has stop() called on SIGINT, SIGTERM or SIGHUP from now on.
  void stop_at_signals();
  /// Calls `what` on the thread of run(), after a while.
  void later(std::chrono::milliseconds pause, std::function<void()> what);
  bool is_stopping() const;

 private:
  std::unique_ptr<ListenerState> state_;
};

}  // namespace brimwright::web
