// A helper program that does whatever a helper should not, and what it must be able to do. What it
// is given says which.

#include "sandbox/helper_program.h"

#include <fcntl.h>
#include <sys/mman.h>
#include <sys/ptrace.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <map>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace {

using brimwright::sandbox::Send;

char program[] = "/bin/true";
char* const words[] = {program, nullptr};

/// What asks the system for something; the answer is sent back, if it ever comes.
const std::map<std::string_view, long (*)()> attempts = {
    {"open", [] { return long{::open("/dev/null", O_RDONLY)}; }},
    {"open to write",
     [] { return long{::open("/tmp/brimwright-child", O_CREAT | O_WRONLY, 0600)}; }},
    {"openat2", [] { return ::syscall(SYS_openat2, AT_FDCWD, "/tmp", nullptr, 0); }},
    {"read", [] { return long{::read(0, nullptr, 0)}; }},
    {"socket", [] { return long{::socket(AF_UNIX, SOCK_STREAM, 0)}; }},
    {"unlink", [] { return long{::unlink("/tmp/brimwright-child")}; }},
    {"rename", [] { return long{::rename("/tmp/brimwright-child", "/tmp/brimwright-other")}; }},
    {"mkdir", [] { return long{::mkdir("/tmp/brimwright-child", 0700)}; }},
    {"chmod", [] { return long{::chmod("/tmp/brimwright-child", 0700)}; }},
    {"kill", [] { return long{::kill(::getppid(), 0)}; }},
    {"execve", [] { return long{::execve(program, words, nullptr)}; }},
    {"fork", [] { return long{::fork()}; }},
    {"ptrace", [] { return ::ptrace(PTRACE_ATTACH, ::getppid(), nullptr, nullptr); }},
    {"a file's memory", [] { return ::syscall(SYS_mmap, 0, 4096, PROT_READ, MAP_PRIVATE, 0, 0); }},
    {"memory to run",
     [] {
       return ::syscall(SYS_mmap, 0, 4096, PROT_READ | PROT_EXEC, MAP_PRIVATE | MAP_ANONYMOUS, -1,
                        0);
     }},
    {"another descriptor", [] { return long{::dup2(0, 9)}; }},
    {"more rights", [] { return long{::setuid(0)}; }},
};

bool work_as_usual(const Send& send) {
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
  send(caught.data(), caught.size());
  return is_past;
}

bool eat(std::size_t bytes, const Send& send) {
  const std::vector<char> much(bytes);
  send(much.data(), 1);
  return true;
}

bool work(std::string_view wish, const Send& send) {
  if (wish.starts_with("echo")) {
    send(wish.data(), wish.size());
    return true;
  }
  if (wish == "give up") return false;
  if (wish == "throw") throw 7;
  if (wish == "crash") return std::raise(SIGSEGV) == 0;
  if (wish == "abort") std::abort();
  for (volatile bool waits = wish == "hang"; waits;) {
  }
  if (wish == "eat") return eat(std::size_t{3} << 30, send);
  if (wish == "eat some") return eat(std::size_t{200} << 20, send);
  if (wish == "work") return work_as_usual(send);
  if (wish == "talk for ever")
    for (const std::string much(1 << 20, 'x');;) send(much.data(), much.size());
  const auto attempt = attempts.find(wish);
  if (attempt == attempts.end()) return false;
  const long answer = attempt->second();
  send(&answer, sizeof answer);  // never comes to this
  return true;
}

}  // namespace

int main(int argc, char** argv) {
  brimwright::sandbox::be_a_helper(argc, argv, {"try", brimwright::sandbox::Reach::none, work});
}
