#include "geometry/sandbox/child_process.h"

#include <catch2/catch.hpp>
#include <fcntl.h>
#include <sys/mman.h>
#include <sys/prctl.h>
#include <sys/ptrace.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <csignal>
#include <cstdio>
#include <cstring>
#include <functional>
#include <stdexcept>
#include <string>
#include <vector>

namespace brimwright::geometry {
namespace {

using namespace std::chrono_literals;

constexpr ChildLimits limits{.memory_bytes = std::size_t{1} << 30, .time = 2s};

TEST_CASE("a child hands back what it made", "[geometry][child]") {
  const std::string long_text(3'000'000, 'x');
  const ChildReport report = run_in_child(
      limits, [&](const Send& send) { return send(long_text.data(), long_text.size()); });
  CHECK(report.end == ChildEnd::finished);
  CHECK(report.bytes == long_text);
}

TEST_CASE("a child that crashes, hangs or eats memory ends alone", "[geometry][child]") {
  const ChildLimits brief{.memory_bytes = limits.memory_bytes, .time = 300ms};
  CHECK(run_in_child(limits, [](const Send&) { return false; }).end == ChildEnd::gave_up);
  CHECK(run_in_child(limits, [](const Send&) -> bool { throw 7; }).end == ChildEnd::gave_up);
  CHECK(run_in_child(limits, [](const Send&) { return std::raise(SIGSEGV) == 0; }).end ==
        ChildEnd::broke_down);
  CHECK(run_in_child(limits, [](const Send&) -> bool { std::abort(); }).end ==
        ChildEnd::broke_down);
  CHECK(run_in_child(brief, [](const Send&) {
          for (volatile bool waiting = true; waiting;) {
          }
          return true;
        }).end == ChildEnd::out_of_time);
#ifndef __SANITIZE_ADDRESS__  // under which the memory limit is off
  CHECK(run_in_child(limits, [](const Send& send) {
          const std::vector<char> much(std::size_t{3} << 30);
          return send(much.data(), 1);
        }).end == ChildEnd::out_of_memory);
#endif
}

TEST_CASE("a child of a large program has as much memory as one of a small", "[geometry][child]") {
  constexpr std::size_t kept = std::size_t{3} << 30;  // above the child's own limit
  void* const meshes =
      ::mmap(nullptr, kept, PROT_READ, MAP_PRIVATE | MAP_ANONYMOUS | MAP_NORESERVE, -1, 0);
  REQUIRE(meshes != MAP_FAILED);
  const ChildReport report = run_in_child(limits, [](const Send& send) {
    const std::vector<char> some(std::size_t{200} << 20);
    return send(some.data(), 1);
  });
  ::munmap(meshes, kept);
  CHECK(report.end == ChildEnd::finished);
}

#ifndef __SANITIZE_ADDRESS__  // under which there is no filter
TEST_CASE("a child that reaches for the world is ended at once", "[geometry][child]") {
  struct Attempt {
    const char* what;
    std::function<long()> make;
  };
  static char program[] = "/bin/true";
  static char* const words[] = {program, nullptr};
  const pid_t test = ::getpid();
  const auto attempt = GENERATE_COPY(values<Attempt>({
      {"open", [] { return ::open("/dev/null", O_RDONLY); }},
      {"open to write", [] { return ::open("/tmp/brimwright-child", O_CREAT | O_WRONLY, 0600); }},
      {"openat2", [] { return ::syscall(SYS_openat2, AT_FDCWD, "/tmp", nullptr, 0); }},
      {"read", [] { return ::read(0, nullptr, 0); }},
      {"socket", [] { return ::socket(AF_UNIX, SOCK_STREAM, 0); }},
      {"unlink", [] { return ::unlink("/tmp/brimwright-child"); }},
      {"rename", [] { return ::rename("/tmp/brimwright-child", "/tmp/brimwright-other"); }},
      {"mkdir", [] { return ::mkdir("/tmp/brimwright-child", 0700); }},
      {"chmod", [] { return ::chmod("/tmp/brimwright-child", 0700); }},
      {"kill", [test] { return ::kill(test, 0); }},
      {"execve", [] { return ::execve(program, words, nullptr); }},
      {"fork", [] { return ::fork(); }},
      {"ptrace", [test] { return ::ptrace(PTRACE_ATTACH, test, nullptr, nullptr); }},
      {"a file's memory",
       [] { return ::syscall(SYS_mmap, 0, 4096, PROT_READ, MAP_PRIVATE, 0, 0); }},
      {"memory to run",
       [] {
         return ::syscall(SYS_mmap, 0, 4096, PROT_READ | PROT_EXEC, MAP_PRIVATE | MAP_ANONYMOUS, -1,
                          0);
       }},
      {"another descriptor", [] { return ::dup2(0, 9); }},
      {"more rights", [] { return ::setuid(0); }},
  }));
  INFO(attempt.what);
  const ChildReport report = run_in_child(limits, [&](const Send& send) {
    const long answer = attempt.make();
    return send(&answer, sizeof answer);  // never comes to this
  });
  CHECK(report.end == ChildEnd::broke_down);
}
#endif

TEST_CASE("a child has the memory, the exceptions and the time that its work needs",
          "[geometry][child]") {
  const ChildReport report = run_in_child(limits, [](const Send& send) {
    std::vector<std::string> texts;
    for (int i = 0; i < 200'000; ++i) texts.push_back(std::string(40, 'x') + std::to_string(i));
    std::stable_sort(texts.begin(), texts.end());
    std::vector<char> large(std::size_t{300} << 20, 'y');
    large = {};
    std::string caught;
    try {
      throw std::runtime_error(texts.back());
    } catch (const std::exception& told) {
      caught = told.what();
    }
    const bool is_past = std::chrono::steady_clock::now().time_since_epoch().count() > 0;
    std::fputs("to nowhere", stderr);
    std::fflush(stderr);
    return is_past && send(caught.data(), caught.size());
  });
  CHECK(report.end == ChildEnd::finished);
  CHECK(report.bytes == std::string(40, 'x') + "99999");
  CHECK_FALSE(report.unfiltered);
}

TEST_CASE("a child does not outlive its parent", "[geometry][child]") {
  REQUIRE(::prctl(PR_SET_CHILD_SUBREAPER, 1) == 0);  // orphans come to this process
  const pid_t parent = ::fork();
  if (parent == 0) {
    run_in_child({.memory_bytes = limits.memory_bytes, .time = 60s}, [](const Send&) {
      for (volatile bool waiting = true; waiting;) {
      }
      return true;
    });
    ::_exit(0);
  }
  ::usleep(200'000);
  REQUIRE(::kill(parent, SIGKILL) == 0);
  int status = 0;
  REQUIRE(::waitpid(parent, &status, 0) == parent);
  pid_t orphan = 0;
  for (int tries = 0; tries < 100 && orphan == 0; ++tries) {
    ::usleep(20'000);
    orphan = ::waitpid(-1, &status, WNOHANG);
  }
  CHECK(orphan > 0);  // it has ended, as what has ended can be waited for
  CHECK((WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL));
  ::prctl(PR_SET_CHILD_SUBREAPER, 0);
}

}  // namespace
}  // namespace brimwright::geometry
