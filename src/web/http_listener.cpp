#include "web/http_listener.h"

#include "web/listener_state.h"

#include <boost/asio/post.hpp>
#include <fcntl.h>

#include <csignal>

namespace brimwright::web {

namespace asio = boost::asio;
using asio::ip::tcp;
using boost::system::error_code;

namespace {

/// Asio opens its sockets so that a browser started by us would inherit them.
void keep_from_children(int descriptor) { ::fcntl(descriptor, F_SETFD, FD_CLOEXEC); }

[[noreturn]] void refuse_port(const ListenAt& at, const error_code& error) {
  const bool is_taken = error == asio::error::address_in_use;
  throw UserError(
      at.said_at,
      std::to_string(at.port) + (is_taken ? " is in use by another program"
                                          : " cannot be used (" + error.message() + ")"),
      "give another, or leave it out and a free one is used");
}

error_code open(tcp::acceptor& acceptor, std::uint16_t port) {
  const tcp::endpoint here(asio::ip::address_v4::loopback(), port);
  error_code error;
  acceptor.open(here.protocol(), error);
  // Else a port stays taken for a minute after the last stop.
  if (!error) acceptor.set_option(tcp::acceptor::reuse_address(true), error);
  if (!error) acceptor.bind(here, error);
  if (!error) acceptor.listen(asio::socket_base::max_listen_connections, error);
  if (error) {
    error_code none;
    acceptor.close(none);
  } else {
    keep_from_children(acceptor.native_handle());
  }
  return error;
}

}  // namespace

bool ListenerState::is_own_host(std::string_view host) const {
  const std::string at_port = ":" + std::to_string(port);
  return host == "127.0.0.1" + at_port || host == "localhost" + at_port;
}

void ListenerState::accept() {
  acceptor.async_accept([self = this](const error_code& error, tcp::socket socket) {
    if (self->is_stopping) return;
    if (error) {  // out of descriptors, most likely; trying again at once would spin
      self->pause.expires_after(std::chrono::milliseconds(100));
      self->pause.async_wait([self](const error_code& stopped) {
        if (!stopped && !self->is_stopping) self->accept();
      });
      return;
    }
    keep_from_children(socket.native_handle());
    if (self->connections.size() < self->limits.connections)
      serve_connection(*self, std::move(socket));
    else if (self->turned_away < self->limits.turned_away)
      turn_away(*self, std::move(socket));
    self->accept();
  });
}

void ListenerState::stop() {
  if (is_stopping.exchange(true)) return;
  error_code none;
  acceptor.close(none);
  signals.cancel(none);
  pause.cancel();
  const auto present = connections;
  for (const auto& [pointer, connection] : present)
    if (const auto still_there = connection.lock()) close_unless_answering(*still_there);
  last_call.expires_after(limits.grace);
  last_call.async_wait([self = this](const error_code& cancelled) {
    if (!cancelled) self->context.stop();
  });
  end_when_all_are_gone();
}

void ListenerState::gone(Connection* connection) {
  connections.erase(connection);
  end_when_all_are_gone();
}

void ListenerState::end_when_all_are_gone() {
  if (is_stopping && !is_over && connections.empty()) context.stop();
}

HttpListener::HttpListener(const ListenAt& at, const Limits& limits, Gate gate, Handler handler)
    : state_(std::make_unique<ListenerState>(limits, std::move(gate), std::move(handler))) {
  const bool has_favoured =
      at.port == 0 && at.favoured != 0 && !open(state_->acceptor, at.favoured);
  if (!has_favoured)
    if (const error_code error = open(state_->acceptor, at.port)) refuse_port(at, error);
  state_->port = state_->acceptor.local_endpoint().port();
}

HttpListener::~HttpListener() = default;

std::uint16_t HttpListener::port() const { return state_->port; }

void HttpListener::run() {
  const auto work = asio::make_work_guard(state_->context);
  asio::post(state_->context, [self = state_.get()] {
    if (!self->is_stopping) self->accept();
  });
  state_->context.run();
}

void HttpListener::stop() {
  asio::post(state_->context, [self = state_.get()] { self->stop(); });
}

void HttpListener::stop_at_signals() {
  for (const int signal : {SIGINT, SIGTERM, SIGHUP}) state_->signals.add(signal);
  state_->signals.async_wait([self = state_.get()](const error_code& cancelled, int) {
    if (!cancelled) self->stop();
  });
}

void HttpListener::later(std::chrono::milliseconds pause, std::function<void()> what) {
  auto timer = std::make_shared<asio::steady_timer>(state_->context, pause);
  timer->async_wait([timer, what = std::move(what)](const error_code& cancelled) {
    if (!cancelled) what();
  });
}

bool HttpListener::is_stopping() const { return state_->is_stopping; }

}  // namespace brimwright::web
