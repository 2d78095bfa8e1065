#pragma once

#include <chrono>
#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

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

struct HttpAnswer {
  int status = 200;
  std::string type = "application/json";
  std::string body = {};
  std::vector<std::pair<std::string, std::string>> more = {};  // further header fields
};

/// What is known of a request before its body is read. The path is as sent, never decoded: it is
/// compared with the known ones and goes nowhere else.
struct HttpHead {
  std::string method;
  std::string path;
  std::map<std::string, std::string> query;  // decoded
  std::optional<std::string> key;            // X-Bench-Key
  std::optional<std::string> origin;
  std::optional<std::string> fetch_site;  // Sec-Fetch-Site
  std::string host;                       // one of the listener's own
};

/// A file that a body goes into; removed at the end of its life unless somebody kept it.
class IncomingFile {
 public:
  virtual ~IncomingFile() = default;
  virtual const std::string& path() const = 0;
};

/// Where a body goes and how long it may be.
struct BodyPlan {
  std::uint64_t most_bytes = 0;
  std::shared_ptr<IncomingFile> file = {};  // into memory if none
};

struct HttpRequest {
  HttpHead head;
  std::string body;
  std::shared_ptr<IncomingFile> file;
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
  using Answer = std::function<void(HttpAnswer)>;
  /// Decides from the head alone: a refusal, or what body may come.
  using Gate = std::function<std::variant<HttpAnswer, BodyPlan>(const HttpHead&)>;
  /// Calls the given function once, now or later, on any thread.
  using Handler = std::function<void(HttpRequest, Answer)>;

  /// Port 0: one that is free, `favoured` if that is. UserError if the port cannot be had.
  HttpListener(std::uint16_t port, std::uint16_t favoured, const Limits& limits, Gate gate,
               Handler handler);
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

  struct Shared;  // implementation

 private:
  std::unique_ptr<Shared> shared_;
};

}  // namespace brimwright::web
