#pragma once

#include "web/server.h"

#include <sys/types.h>

#include <chrono>
#include <cstdint>
#include <map>
#include <string>
#include <thread>
#include <vector>

namespace brimwright::web::test {

struct Response {
  int status = 0;                             // 0: the server closed without an answer
  std::map<std::string, std::string> fields;  // names in small letters
  std::string body;
};

/// A connection that sends whatever bytes it is told, and reads answers by RFC 9112 on its own.
class Client {
 public:
  explicit Client(std::uint16_t port);
  ~Client();
  Client(const Client&) = delete;
  Client& operator=(const Client&) = delete;

  /// False if the server no longer takes them.
  bool send(const std::string& bytes);
  Response receive();
  /// Whether the server ends the connection within `patience`, sending nothing more.
  bool is_closed_within(std::chrono::milliseconds patience);

 private:
  bool fill(std::chrono::milliseconds patience);

  int socket_;
  std::string buffer_;
};

/// A server on a free port, in a thread of its own, stopped with this.
class RunningServer {
 public:
  explicit RunningServer(ServerSettings settings);
  ~RunningServer();
  RunningServer(const RunningServer&) = delete;
  RunningServer& operator=(const RunningServer&) = delete;

  Server& operator*() { return server_; }
  std::uint16_t port() const { return server_.port(); }
  std::string host() const { return "127.0.0.1:" + std::to_string(port()); }
  /// The head of a sound request, up to and with its last field; a blank line is to follow.
  std::string head(const std::string& method, const std::string& target) const;
  /// One whole request with a body, on a connection of its own.
  Response ask(const std::string& method, const std::string& target, const std::string& body = "");

 private:
  Server server_;
  std::thread thread_;
};

/// The processes that were started by this one and run: a server's worker.
std::vector<pid_t> children();
/// The bytes that a process has in memory.
std::size_t resident_bytes(pid_t process);

/// A closed body that takes long to measure: a tray's facets many times over, side by side.
std::string large_mesh(int copies);

/// Works in `folder` with the shipped catalogue; waits as briefly as tests need.
ServerSettings settings_in(const std::string& folder);

}  // namespace brimwright::web::test
