#include "desk/answers.h"
#include "web/listener_state.h"
#include "web/request_head.h"

#include <boost/asio/post.hpp>
#include <boost/asio/write.hpp>
#include <boost/beast/core.hpp>
#include <boost/beast/http.hpp>

#include <algorithm>
#include <limits>
#include <optional>

namespace brimwright::web {

namespace asio = boost::asio;
namespace beast = boost::beast;
namespace http = beast::http;
using beast::error_code;
using Clock = std::chrono::steady_clock;
using Head = http::request<http::empty_body>;

namespace {

std::string text_of(beast::string_view view) { return {view.data(), view.size()}; }

std::size_t count(const Head& head, http::field name) {
  const auto [first, last] = head.equal_range(name);
  return static_cast<std::size_t>(std::distance(first, last));
}

/// Nothing if the field is missing; the first if it stands more than once.
std::optional<std::string> field(const Head& head, beast::string_view name) {
  const auto at = head.find(name);
  if (at == head.end()) return std::nullopt;
  return text_of(at->value());
}

desk::HttpAnswer out_of_form(const std::string& problem) {
  return desk::refusal(400, "", problem, "use the page that brimwright serves");
}

/// Beast lets through what two parsers could read in two ways (RFC 9112, 6.1 and 6.3).
std::optional<desk::HttpAnswer> flaw_of_framing(const Head& head) {
  const auto length = head[http::field::content_length];
  const auto is_digit = [](char c) { return c >= '0' && c <= '9'; };
  if (count(head, http::field::content_length) > 1 ||
      !std::all_of(length.begin(), length.end(), is_digit))
    return out_of_form("duplicate or invalid Content-Length");
  const std::size_t codings = count(head, http::field::transfer_encoding);
  if (codings > 1 ||
      (codings == 1 && (head.version() != 11 || head[http::field::transfer_encoding] != "chunked")))
    return out_of_form("unknown Transfer-Encoding");
  return std::nullopt;
}

std::optional<desk::HttpAnswer> flaw_of(const Head& head, const ListenerState& shared) {
  if (head.version() != 10 && head.version() != 11)
    return desk::refusal(505, "", "is neither HTTP/1.0 nor HTTP/1.1", "use a current browser");
  if (auto flaw = flaw_of_framing(head)) return flaw;
  if (count(head, http::field::host) != 1 || !shared.is_own_host(text_of(head[http::field::host])))
    return desk::refusal(421, "Host", "the request is for another host",
                         "open the address as printed");
  for (const auto name : {"X-Bench-Key", "Origin", "Sec-Fetch-Site"})
    if (head.count(name) > 1) return out_of_form(std::string(name) + " appears twice");
  const auto expected = head[http::field::expect];
  if (!expected.empty() && !beast::iequals(expected, "100-continue"))
    return desk::refusal(417, "Expect", "unsupported Expect header", "leave it out");
  return std::nullopt;
}

std::optional<desk::HttpHead> head_of(const Head& head) {
  auto target = target_of({head.target().data(), head.target().size()});
  if (!target) return std::nullopt;
  return desk::HttpHead{.method = text_of(head.method_string()),
                        .path = std::move(target->path),
                        .query = std::move(target->query),
                        .key = field(head, "X-Bench-Key"),
                        .origin = field(head, "Origin"),
                        .fetch_site = field(head, "Sec-Fetch-Site"),
                        .host = text_of(head[http::field::host])};
}

/// On every answer: the page may run what comes from here and nothing else, may not be framed or
/// read by another site, and nothing of it is kept on disk.
void add_guards(http::response<http::string_body>& response) {
  response.set("Content-Security-Policy",
               "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: "
               "blob:; connect-src 'self'; form-action 'none'; base-uri 'none'; "
               "frame-ancestors 'none'");
  response.set("X-Content-Type-Options", "nosniff");
  response.set("Cache-Control", "no-store");
  response.set("Referrer-Policy", "no-referrer");
  response.set("Cross-Origin-Opener-Policy", "same-origin");
  response.set("Cross-Origin-Embedder-Policy", "require-corp");
  response.set("Cross-Origin-Resource-Policy", "same-origin");
}

http::response<http::string_body> response_of(desk::HttpAnswer answer, unsigned version,
                                              bool keep) {
  http::response<http::string_body> response(static_cast<http::status>(answer.status), version);
  response.set(http::field::content_type, answer.type);
  add_guards(response);
  for (const auto& [name, value] : answer.more) response.set(name, value);
  response.body() = std::move(answer.body);
  response.keep_alive(keep);
  response.prepare_payload();
  return response;
}

}  // namespace

class Connection : public std::enable_shared_from_this<Connection> {
 public:
  Connection(ListenerState& shared, asio::ip::tcp::socket socket)
      : shared_(shared), stream_(std::move(socket)) {}
  ~Connection() {
    if (is_turned_away_) --shared_.turned_away;
    shared_.gone(this);
  }
  Connection(const Connection&) = delete;
  Connection& operator=(const Connection&) = delete;

  void start() {
    stream_.expires_after(shared_.limits.header);
    read_head();
  }
  void turn_away() {
    is_turned_away_ = true;
    ++shared_.turned_away;
    refuse(desk::refusal(503, "", "all connections to this program are in use",
                         "close other tabs of this page, wait a moment and try again"));
  }
  void close_unless_answering() {
    if (!is_answering_) stream_.close();
  }

 private:
  using Text = http::request_parser<http::string_body>;
  using File = http::request_parser<http::file_body>;

  void wait_for_next() {
    head_.reset();
    text_.reset();
    file_.reset();
    request_ = {};
    if (shared_.is_stopping) return stream_.close();
    if (buffer_.size() > 0) {  // a pipelined request
      stream_.expires_after(shared_.limits.header);
      return read_head();
    }
    stream_.expires_after(shared_.limits.idle);
    stream_.async_read_some(buffer_.prepare(1),
                            [self = shared_from_this()](const error_code& error, std::size_t read) {
                              if (error) return;
                              self->buffer_.commit(read);
                              self->stream_.expires_after(self->shared_.limits.header);
                              self->read_head();
                            });
  }

  void read_head() {
    head_.emplace();
    head_->header_limit(static_cast<std::uint32_t>(shared_.limits.header_bytes));
    // The gate decides; Boost 1.74 takes "no limit" for one of zero.
    head_->body_limit(std::numeric_limits<std::uint64_t>::max());
    http::async_read_header(
        stream_, buffer_, *head_,
        [self = shared_from_this()](const error_code& error, std::size_t) { self->judge(error); });
  }

  void judge(const error_code& error) {
    if (error == http::error::header_limit || error == http::error::buffer_overflow)
      return refuse(
          desk::refusal(431, "", "the request's header is too long", "shorten the names in it"));
    if (error && error.category() == http::make_error_code(http::error::bad_method).category() &&
        error != http::error::end_of_stream && error != http::error::partial_message)
      return refuse(out_of_form("the request is not HTTP"));
    if (error) return;  // the client has gone, or was too slow and is cut off
    const Head& head = head_->get();
    if (auto flaw = flaw_of(head, shared_)) return refuse(std::move(*flaw));
    auto known = head_of(head);
    if (!known) return refuse(out_of_form("the request's address is malformed"));
    auto verdict = shared_.gate(*known);
    if (auto* no = std::get_if<desk::HttpAnswer>(&verdict)) return refuse(std::move(*no));
    request_.head = std::move(*known);
    expect_body(std::get<desk::BodyPlan>(std::move(verdict)));
  }

  void expect_body(desk::BodyPlan plan) {
    if (head_->content_length() && *head_->content_length() > plan.most_bytes)
      return refuse(too_long());
    deadline_ = Clock::now() + shared_.limits.body;
    keeps_ = head_->get().keep_alive();
    version_ = head_->get().version();
    const bool is_awaited = !head_->is_done() && !head_->get()[http::field::expect].empty();
    if (plan.file) {
      error_code error;
      file_.emplace(std::move(*head_));
      file_->body_limit(plan.most_bytes);
      file_->get().body().open(plan.file->path().c_str(), beast::file_mode::write_new, error);
      if (error) return refuse(no_room(error));
      request_.file = std::move(plan.file);
    } else {
      text_.emplace(std::move(*head_));
      text_->body_limit(plan.most_bytes);
    }
    if (is_awaited) return ask_for_body();
    read_body();
  }

  void ask_for_body() {
    static constexpr std::string_view go_on = "HTTP/1.1 100 Continue\r\n\r\n";
    stream_.expires_after(shared_.limits.write);
    asio::async_write(stream_, asio::buffer(go_on.data(), go_on.size()),
                      [self = shared_from_this()](const error_code& error, std::size_t) {
                        if (!error) self->read_body();
                      });
  }

  void read_body() {
    if (file_)
      read_body(*file_);
    else
      read_body(*text_);
  }

  template <class Parser>
  void read_body(Parser& parser) {
    if (parser.is_done()) return hand_over();
    stream_.expires_at(std::min(Clock::now() + shared_.limits.body_pause, deadline_));
    http::async_read_some(
        stream_, buffer_, parser,
        [self = shared_from_this(), &parser](const error_code& error, std::size_t) {
          if (error == http::error::body_limit) return self->refuse(too_long());
          if (error && error.category() == boost::system::system_category() &&
              (error.value() == ENOSPC || error.value() == EDQUOT || error.value() == EFBIG))
            return self->refuse(no_room(error));
          if (error == http::error::bad_chunk || error == http::error::bad_chunk_extension)
            return self->refuse(out_of_form("the request's chunks are malformed"));
          if (!error) self->read_body(parser);
        });
  }

  void hand_over() {
    if (file_) file_->get().body().close();
    if (text_) request_.body = std::move(text_->get().body());
    is_answering_ = true;
    stream_.expires_never();
    shared_.handler(
        std::move(request_), [self = shared_from_this()](desk::HttpAnswer answer) mutable {
          auto& executor = self->shared_.context;
          asio::post(executor, [self = std::move(self), answer = std::move(answer)]() mutable {
            self->write(std::move(answer), self->keeps_ && !self->shared_.is_stopping);
          });
        });
  }

  void write(desk::HttpAnswer answer, bool keep) {
    is_answering_ = true;
    response_ = response_of(std::move(answer), version_, keep);
    stream_.expires_after(shared_.limits.write);
    http::async_write(stream_, response_,
                      [self = shared_from_this(), keep](const error_code& error, std::size_t) {
                        self->is_answering_ = false;
                        self->response_ = {};
                        if (error) return;
                        if (keep) return self->wait_for_next();
                        self->hang_up();
                      });
  }

  void refuse(desk::HttpAnswer answer) {
    keeps_ = false;
    request_ = {};
    write(std::move(answer), false);
  }

  /// Closing with unread bytes would make the system drop the answer on its way to the client.
  void hang_up() {
    error_code none;
    stream_.socket().shutdown(asio::ip::tcp::socket::shutdown_send, none);
    stream_.expires_after(std::chrono::seconds(1));
    to_discard_ = std::size_t{1} << 20;
    discard();
  }

  void discard() {
    buffer_.clear();
    stream_.async_read_some(buffer_.prepare(std::size_t{16} << 10),
                            [self = shared_from_this()](const error_code& error, std::size_t read) {
                              if (error || read > self->to_discard_) return;
                              self->to_discard_ -= read;
                              self->discard();
                            });
  }

  static desk::HttpAnswer too_long() {
    return desk::refusal(413, "", "what was sent is too large",
                         "a document may have 4 MiB, a mesh file 200 MiB");
  }
  static desk::HttpAnswer no_room(const error_code& error) {
    return desk::refusal(507, "", "what was sent could not be kept (" + error.message() + ")",
                         "make room on the disk");
  }

  ListenerState& shared_;
  beast::tcp_stream stream_;
  beast::flat_buffer buffer_{std::size_t{64} << 10};
  std::optional<http::request_parser<http::empty_body>> head_;
  std::optional<Text> text_;  // one of these two, once the head is judged
  std::optional<File> file_;
  desk::HttpRequest request_;
  http::response<http::string_body> response_;
  Clock::time_point deadline_;
  std::size_t to_discard_ = 0;
  unsigned version_ = 11;
  bool keeps_ = false, is_answering_ = false, is_turned_away_ = false;
};

void serve_connection(ListenerState& shared, asio::ip::tcp::socket socket) {
  const auto connection = std::make_shared<Connection>(shared, std::move(socket));
  shared.connections.emplace(connection.get(), connection);
  connection->start();
}

void turn_away(ListenerState& shared, asio::ip::tcp::socket socket) {
  std::make_shared<Connection>(shared, std::move(socket))->turn_away();
}

void close_unless_answering(Connection& connection) { connection.close_unless_answering(); }

}  // namespace brimwright::web
