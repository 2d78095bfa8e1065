#include "web/browser.h"

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cerrno>
#include <csignal>
#include <cstdlib>

namespace brimwright::web {
namespace {

/// In a child between fork and exec: only what may be called there while other threads are not.
[[noreturn]] void become(const char* program, const char* address) {
  ::setsid();  // Ctrl+C in our terminal is not for it
  for (int signal = 1; signal < 32; ++signal) ::signal(signal, SIG_DFL);  // what we ignore, too
  const int nowhere = ::open("/dev/null", O_RDWR);
  for (int standard = 0; standard < 3; ++standard) ::dup2(nowhere, standard);
  ::close_range(3, ~0U, 0);
  ::execlp(program, program, address, static_cast<char*>(nullptr));
  ::_exit(127);
}

}  // namespace

void open_in_browser(const std::string& address) {
  const char* named = std::getenv("BROWSER");
  const char* const program = named != nullptr && *named != '\0' ? named : "xdg-open";
  const pid_t child = ::fork();
  if (child < 0) return;
  if (child == 0) {
    // Forked twice, so that init and not we are told when the browser ends.
    const pid_t grandchild = ::fork();
    if (grandchild == 0) become(program, address.c_str());
    ::_exit(0);
  }
  while (::waitpid(child, nullptr, 0) < 0 && errno == EINTR) {
  }
}

}  // namespace brimwright::web
