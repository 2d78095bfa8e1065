#include "client.h"

#include <arpa/inet.h>
#include <netinet/in.h>
#include <poll.h>
#include <sys/socket.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <sstream>
#include <stdexcept>

namespace brimwright::web::test {

Client::Client(std::uint16_t port) : socket_(::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0)) {
  sockaddr_in there{};
  there.sin_family = AF_INET;
  there.sin_port = htons(port);
  there.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
  if (::connect(socket_, reinterpret_cast<sockaddr*>(&there), sizeof there) != 0)
    throw std::runtime_error("nothing listens on port " + std::to_string(port));
}

Client::~Client() { ::close(socket_); }

bool Client::send(const std::string& bytes) {
  std::size_t at = 0;
  while (at < bytes.size()) {
    const ssize_t sent = ::send(socket_, bytes.data() + at, bytes.size() - at, MSG_NOSIGNAL);
    if (sent <= 0) return false;
    at += static_cast<std::size_t>(sent);
  }
  return true;
}

bool Client::fill(std::chrono::milliseconds patience) {
  pollfd wait{socket_, POLLIN, 0};
  if (::poll(&wait, 1, static_cast<int>(patience.count())) <= 0)
    throw std::runtime_error("the server neither answered nor closed");
  std::array<char, 1 << 16> part{};
  const ssize_t got = ::recv(socket_, part.data(), part.size(), 0);
  if (got <= 0) return false;
  buffer_.append(part.data(), static_cast<std::size_t>(got));
  return true;
}

Response Client::receive() {
  constexpr std::chrono::seconds patience(30);
  std::size_t end;
  while ((end = buffer_.find("\r\n\r\n")) == buffer_.npos)
    if (!fill(patience)) return {};
  Response response;
  response.status = std::stoi(buffer_.substr(9, 3));
  for (std::size_t at = buffer_.find("\r\n") + 2; at < end + 2;) {
    const std::size_t next = buffer_.find("\r\n", at), colon = buffer_.find(": ", at);
    std::string name = buffer_.substr(at, colon - at);
    std::transform(name.begin(), name.end(), name.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    response.fields[name] = buffer_.substr(colon + 2, next - colon - 2);
    at = next + 2;
  }
  buffer_.erase(0, end + 4);
  const auto length = response.fields.find("content-length");
  if (length == response.fields.end()) return response;
  const std::size_t size = std::stoul(length->second);
  while (buffer_.size() < size)
    if (!fill(patience)) throw std::runtime_error("the answer broke off");
  response.body = buffer_.substr(0, size);
  buffer_.erase(0, size);
  return response;
}

bool Client::is_closed_within(std::chrono::milliseconds patience) {
  pollfd wait{socket_, POLLIN, 0};
  if (::poll(&wait, 1, static_cast<int>(patience.count())) <= 0) return false;
  return !fill(patience) && buffer_.empty();
}

RunningServer::RunningServer(ServerSettings settings)
    : server_(settings), thread_([this] { server_.run(); }) {}

RunningServer::~RunningServer() {
  server_.stop();
  thread_.join();
}

std::string RunningServer::head(const std::string& method, const std::string& target) const {
  return method + " " + target + " HTTP/1.1\r\nHost: " + host() +
         "\r\nX-Bench-Key: " + server_.token() + "\r\n";
}

Response RunningServer::ask(const std::string& method, const std::string& target,
                            const std::string& body) {
  const std::string request =
      head(method, target) + "Content-Length: " + std::to_string(body.size()) + "\r\n\r\n" + body;
  Client client(port());  // only now, since a connection that says nothing is given up
  client.send(request);
  return client.receive();
}

std::vector<pid_t> children() {
  std::vector<pid_t> found;
  for (const auto& entry : std::filesystem::directory_iterator("/proc")) {
    const std::string name = entry.path().filename().string();
    if (name.find_first_not_of("0123456789") != name.npos) continue;
    std::string facts;
    std::getline(std::ifstream(entry.path() / "stat"), facts);
    const std::size_t name_end = facts.rfind(')');  // pid (name) state parent ...: proc(5)
    char state = 'X';
    pid_t parent = 0;
    if (name_end == facts.npos) continue;
    std::istringstream(facts.substr(name_end + 1)) >> state >> parent;
    if (parent == ::getpid() && state != 'Z' && state != 'X') found.push_back(std::stoi(name));
  }
  return found;
}

std::size_t resident_bytes(pid_t process) {
  std::size_t pages = 0;
  std::ifstream("/proc/" + std::to_string(process) + "/statm").ignore(64, ' ') >> pages;
  return pages * static_cast<std::size_t>(::sysconf(_SC_PAGESIZE));
}

std::string large_mesh(int copies) {
  std::ifstream file(std::string(BRIMWRIGHT_SOURCE_DIR) + "/meshes/six_pocket_tray.stl",
                     std::ios::binary);
  const std::string tray((std::istreambuf_iterator<char>(file)), {});
  std::string mesh = tray.substr(0, 80);
  const auto facets = static_cast<std::uint32_t>((tray.size() - 84) / 50);
  const std::uint32_t all = facets * static_cast<std::uint32_t>(copies);
  mesh.append(reinterpret_cast<const char*>(&all), 4);
  for (int copy = 0; copy < copies; ++copy)
    for (std::uint32_t facet = 0; facet < facets; ++facet) {
      std::string record = tray.substr(84 + 50 * std::size_t{facet}, 50);
      for (int corner = 0; corner < 3; ++corner) {
        float x;
        const std::size_t at = 12 + 12 * static_cast<std::size_t>(corner);
        record.copy(reinterpret_cast<char*>(&x), 4, at);
        x += 200 * static_cast<float>(copy);
        record.replace(at, 4, reinterpret_cast<const char*>(&x), 4);
      }
      mesh += record;
    }
  return mesh;
}

ServerSettings settings_in(const std::string& folder) {
  ServerSettings settings{.library = {BRIMWRIGHT_SOURCE_DIR, {}}, .run = {}, .folder = folder};
  settings.program = BRIMWRIGHT_PROGRAM;  // this test itself is no worker
  settings.limits.header = std::chrono::milliseconds(500);
  settings.limits.idle = std::chrono::milliseconds(1500);
  settings.limits.body_pause = std::chrono::milliseconds(500);
  settings.limits.body = std::chrono::milliseconds(2000);
  return settings;
}

}  // namespace brimwright::web::test
