#pragma once

// For the listener and its connections only: whoever includes this pays for Asio.

#include "web/http_exchange.h"

#include <boost/asio/io_context.hpp>
#include <boost/asio/ip/tcp.hpp>
#include <boost/asio/signal_set.hpp>
#include <boost/asio/steady_timer.hpp>

#include <atomic>
#include <cstdint>
#include <map>
#include <memory>
#include <string_view>
#include <utility>

namespace brimwright::web {

class Connection;

/// Touched by the thread of run() alone, but for `context` and `is_stopping`.
struct ListenerState {
  ListenerState(const Limits& l, Gate g, Handler h)
      : limits(l), gate(std::move(g)), handler(std::move(h)) {}
  ListenerState(const ListenerState&) = delete;
  ListenerState& operator=(const ListenerState&) = delete;
  ~ListenerState() { is_over = true; }

  Limits limits;
  Gate gate;
  Handler handler;
  std::uint16_t port = 0;
  std::map<Connection*, std::weak_ptr<Connection>> connections;
  std::size_t turned_away = 0;  // that are being told so
  std::atomic<bool> is_stopping = false;
  bool is_over = false;
  // After all that its last handlers touch when they are dropped with it.
  boost::asio::io_context context{1};
  boost::asio::ip::tcp::acceptor acceptor{context};
  boost::asio::steady_timer pause{context};  // after an accept that failed
  boost::asio::steady_timer last_call{context};
  boost::asio::signal_set signals{context};

  bool is_own_host(std::string_view host) const;
  void accept();
  void stop();
  void gone(Connection* connection);
  void end_when_all_are_gone();
};

/// Serves a socket just accepted until either side is done with it.
void serve_connection(ListenerState& shared, boost::asio::ip::tcp::socket socket);
/// Tells one too many so, whatever it asks, and ends it.
void turn_away(ListenerState& shared, boost::asio::ip::tcp::socket socket);
/// Ends one that waits for its client or reads a request; lets one finish that has an answer
/// coming.
void close_unless_answering(Connection& connection);

}  // namespace brimwright::web
