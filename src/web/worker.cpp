#include "web/worker.h"

#include "desk/answers.h"
#include "desk/desk.h"
#include "moulds/mesh_memory.h"
#include "service/service.h"
#include "web/last_word.h"
#include "web/worker_messages.h"
#include "web/workers.h"

#include <signal.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/socket.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstdlib>
#include <memory>
#include <mutex>
#include <utility>

namespace brimwright::web {
namespace {

/// No destructors: threads may be at work on what they would take away.
[[noreturn]] void leave() { ::_exit(0); }

bool is_started_by_a_server() {
  ucred other{};
  socklen_t size = sizeof other;
  return ::getsockopt(worker_socket, SOL_SOCKET, SO_PEERCRED, &other, &size) == 0 &&
         other.pid == ::getppid();
}

/// It lives as long as its server and no longer. Ctrl+C and the end of a terminal reach every
/// process there: what is being answered then, the server still waits for.
void live_with_the_server() {
  ::prctl(PR_SET_PDEATHSIG, SIGKILL);
  for (const int signal : {SIGINT, SIGTERM, SIGHUP}) ::signal(signal, SIG_IGN);
}

/// The soft limit alone: helper programs set their own.
void limit_memory([[maybe_unused]] std::size_t bytes) {
#ifndef __SANITIZE_ADDRESS__  // which sets aside terabytes of addresses for itself
  rlimit limit{};
  if (::getrlimit(RLIMIT_AS, &limit) != 0) return;
  if (limit.rlim_max != RLIM_INFINITY && limit.rlim_max < bytes) return;
  limit.rlim_cur = bytes;
  ::setrlimit(RLIMIT_AS, &limit);
#endif
}

/// The server's end of the socket. Whoever finds it closed leaves.
class ServerEnd {
 public:
  Frame next() {
    std::array<char, std::size_t{64} << 10> part;
    while (true) {
      if (auto frame = reader_.next()) return *std::move(frame);
      const ssize_t got = ::recv(worker_socket, part.data(), part.size(), 0);
      if (got < 0 && errno == EINTR) continue;
      if (got <= 0) leave();
      reader_.add({part.data(), static_cast<std::size_t>(got)});
    }
  }

  void tell(const Frame& frame) {
    const std::string bytes = encoded(frame);
    const std::scoped_lock alone(telling_);
    for (std::size_t at = 0; at < bytes.size();) {
      const ssize_t sent =
          ::send(worker_socket, bytes.data() + at, bytes.size() - at, MSG_NOSIGNAL);
      if (sent < 0 && errno == EINTR) continue;
      if (sent <= 0) leave();
      at += static_cast<std::size_t>(sent);
    }
  }

 private:
  FrameReader reader_;
  std::mutex telling_;
};

moulds::Library with_memory(moulds::Library library) {
  library.memory = std::make_shared<moulds::MeshMemory>();
  return library;
}

/// Two threads plan and gauge from what is known; one alone measures meshes and makes files, so
/// that only it starts child processes and a long measurement holds nobody up who does not wait for
/// one.
class Bench {
 public:
  Bench(ServerEnd& server, const WorkerSettings& settings)
      : server_(server),
        library_(with_memory(settings.library)),
        workspace_(settings.folder, library_),
        desk_(library_, measured_, workspace_, desk::UploadFolder(settings.uploads),
              settings.open) {
    // What is read once for all (fats, tables, the shipped meshes) is read before anybody asks, and
    // before the one thread that starts child processes can start one: a child is a copy in which
    // no other thread goes on, so nothing may be half-way through its first use then.
    slow_.add([this] { service::answer({service::ListRequest{}, service::Form::json}, library_); });
  }

  void take(desk::DeskRequest request) {
    bool has_path = false;
    const desk::Desk::Route* route = desk::Desk::route(request.method, request.path, has_path);
    if (route == nullptr) return;  // the server asks for none that is not there
    work(*route, std::make_shared<const desk::DeskRequest>(std::move(request)),
         route->from_the_start);
  }

 private:
  void work(const desk::Desk::Route& route, std::shared_ptr<const desk::DeskRequest> request,
            desk::Budget budget) {
    Workers& workers = budget == desk::Budget::quick ? quick_ : slow_;
    workers.add([this, &route, request = std::move(request), budget] {
      const LastWord last_word(request->number);
      server_.tell(begun_frame(request->number, budget));
      if (auto answer = desk_.answer(route, *request, budget))
        return server_.tell(fitting(frame_of(request->number, *std::move(answer))));
      server_.tell({.kind = Frame::Kind::put_off, .request = request->number});
      work(route, request, desk::Budget::slow);
    });
  }

  static Frame fitting(Frame frame) {
    if (fits(frame)) return frame;
    return frame_of(frame.request, {.answer = desk::fault("the answer would be too long to show")});
  }

  ServerEnd& server_;
  moulds::Library library_;
  service::MeasureMemory measured_;
  desk::Workspace workspace_;
  desk::Desk desk_;
  Workers slow_{1}, quick_{2};
};

}  // namespace

bool be_worker() {
  if (!is_started_by_a_server()) return false;
  live_with_the_server();
  ServerEnd server;
  const WorkerSettings settings = settings_of(server.next());
  limit_memory(settings.limits.memory_bytes);
  tell_of_breakdowns(worker_note);
  Bench bench(server, settings);
  while (true) bench.take(request_of(server.next()));
}

}  // namespace brimwright::web
