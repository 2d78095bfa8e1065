#include "sandbox/limited_work.h"

#include "sandbox/helper_process.h"

#include <catch2/catch.hpp>
#include <fcntl.h>
#include <sys/mman.h>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <csignal>
#include <string>
#include <thread>
#include <vector>

namespace brimwright::sandbox {
namespace {

using namespace std::chrono_literals;

constexpr WorkLimits limits{.memory_bytes = std::size_t{1} << 30, .time = 20s};

WorkReport tried(std::string_view what, const WorkLimits& within = limits) {
  return worked_by(TRIAL_HELPER, "try", {what}, within);
}

TEST_CASE("a helper gets every byte and hands every byte back", "[sandbox]") {
  const std::string long_text(3'000'000, 'x'), end = "and its end";
  const WorkReport report =
      worked_by(TRIAL_HELPER, "try", {"echo", "", long_text, std::string_view(), end}, limits);
  CHECK(report.end == WorkEnd::finished);
  CHECK(report.bytes == "echo" + long_text + end);
}

TEST_CASE("a helper that crashes, hangs or eats memory ends alone", "[sandbox]") {
  const WorkLimits brief{.memory_bytes = limits.memory_bytes, .time = 300ms};
  CHECK(tried("give up").end == WorkEnd::gave_up);
  CHECK(tried("").end == WorkEnd::gave_up);
  CHECK(tried("throw").end == WorkEnd::gave_up);
  CHECK(tried("crash").end == WorkEnd::broke_down);
  CHECK(tried("abort").end == WorkEnd::broke_down);
  CHECK(tried("hang", brief).end == WorkEnd::out_of_time);
#ifndef __SANITIZE_ADDRESS__  // under which the memory limit is off
  CHECK(tried("eat").end == WorkEnd::out_of_memory);
#endif
}

TEST_CASE("a helper that is not asked, or talks for ever, is not listened to", "[sandbox]") {
  CHECK(tried("talk for ever", {.memory_bytes = 1 << 26, .time = 20s}).end == WorkEnd::broke_down);
  CHECK(worked_by(TRIAL_HELPER, "another job", {"echo"}, limits).end == WorkEnd::gave_up);
  // Reads nothing, so that most of what it is sent stays in the pipe.
  const std::string long_text(3'000'000, 'x');
  CHECK(worked_by("/bin/true", "try", {long_text}, limits).bytes.empty());
  CHECK(worked_by("/bin/false", "try", {long_text}, limits).end == WorkEnd::broke_down);
}

TEST_CASE("a helper of a large program has as much memory as one of a small", "[sandbox]") {
  constexpr std::size_t kept = std::size_t{3} << 30;  // above the helper's own limit
  void* const meshes =
      ::mmap(nullptr, kept, PROT_READ, MAP_PRIVATE | MAP_ANONYMOUS | MAP_NORESERVE, -1, 0);
  REQUIRE(meshes != MAP_FAILED);
  const WorkReport report = tried("eat some");
  ::munmap(meshes, kept);
  CHECK(report.end == WorkEnd::finished);
}

#ifndef __SANITIZE_ADDRESS__  // under which there is no filter
TEST_CASE("a helper that reaches for the world is ended at once", "[sandbox]") {
  const auto what = GENERATE(
      values<std::string>({"open", "open to write", "openat2", "read", "socket", "unlink", "rename",
                           "mkdir", "chmod", "kill", "execve", "fork", "ptrace", "a file's memory",
                           "memory to run", "another descriptor", "more rights"}));
  INFO(what);
  CHECK(tried(what).end == WorkEnd::broke_down);  // and did not give up, as for an unknown wish
}
#endif

TEST_CASE("a helper has the memory, the exceptions and the time that its work needs", "[sandbox]") {
  const WorkReport report = tried("work");
  CHECK(report.end == WorkEnd::finished);
  CHECK(report.bytes == std::string(40, 'x').append("99999"));
  CHECK_FALSE(report.unfiltered);
}

TEST_CASE("helpers of several threads keep their bytes apart", "[sandbox]") {
  const auto text_of = [](std::size_t i) {
    return std::string("echo").append(300'000, static_cast<char>('a' + i));
  };
  std::vector<std::string> made(4);
  std::vector<std::thread> threads;
  for (std::size_t i = 0; i < made.size(); ++i)
    threads.emplace_back([&made, text_of, i] {
      for (int round = 0; round < 10; ++round) made[i] = tried(text_of(i)).bytes;
    });
  for (std::thread& thread : threads) thread.join();
  for (std::size_t i = 0; i < made.size(); ++i) CHECK(made[i] == text_of(i));
}

TEST_CASE("a helper works where the standard descriptors are closed", "[sandbox]") {
  const pid_t child = ::fork();
  if (child == 0) {
    for (int standard = 0; standard < 3; ++standard) ::close(standard);
    ::_exit(tried("echo").bytes == "echo" ? 0 : 1);
  }
  int status = 0;
  REQUIRE(::waitpid(child, &status, 0) == child);
  CHECK((WIFEXITED(status) && WEXITSTATUS(status) == 0));
}

TEST_CASE("a helper does not outlive its program", "[sandbox]") {
  REQUIRE(::prctl(PR_SET_CHILD_SUBREAPER, 1) == 0);  // orphans come to this process
  const pid_t parent = ::fork();
  if (parent == 0) {
    tried("hang", {.memory_bytes = limits.memory_bytes, .time = 60s});
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
}  // namespace brimwright::sandbox
