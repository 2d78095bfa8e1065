#include "web/last_word.h"

#include <signal.h>
#include <unistd.h>

#include <cstddef>
#include <vector>

namespace brimwright::web {
namespace {

int told = -1;
thread_local std::uint64_t worked_on = 0;

/// Where a handler runs when the thread's own stack is full, which may be what it broke down of.
class SpareStack {
 public:
  SpareStack() : room_(std::size_t{64} << 10) {
    stack_t stack{};
    stack.ss_sp = room_.data();
    stack.ss_size = room_.size();
    ::sigaltstack(&stack, nullptr);
  }
  ~SpareStack() {
    stack_t none{};
    none.ss_flags = SS_DISABLE;
    ::sigaltstack(&none, nullptr);
  }
  SpareStack(const SpareStack&) = delete;
  SpareStack& operator=(const SpareStack&) = delete;

 private:
  std::vector<char> room_;
};

/// Only what may be called in a handler. It is set for one signal, and raising that again ends the
/// process in the way that its parent is told of.
void say_last_word(int signal) {
  if (worked_on != 0 && ::write(told, &worked_on, sizeof worked_on) < 0) ::_exit(1);
  ::raise(signal);
}

}  // namespace

void tell_of_breakdowns([[maybe_unused]] int descriptor) {
  told = descriptor;
#ifndef __SANITIZE_ADDRESS__  // which has handlers of its own, with more to say
  struct sigaction word {};
  word.sa_handler = say_last_word;
  word.sa_flags = SA_ONSTACK | static_cast<int>(SA_RESETHAND) | SA_NODEFER;
  for (const int signal : {SIGSEGV, SIGBUS, SIGFPE, SIGILL, SIGABRT})
    ::sigaction(signal, &word, nullptr);
#endif
}

LastWord::LastWord(std::uint64_t request) {
  thread_local const SpareStack stack;
  worked_on = request;
}

LastWord::~LastWord() { worked_on = 0; }

}  // namespace brimwright::web
