#include "cli/run.h"
#include "units/unfinished_files.h"

#include <malloc.h>
#include <poll.h>
#include <unistd.h>

#include <cmath>
#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <limits>
#include <string_view>

namespace {

/// The catalogue beside the installed program, or in the tree it was built from.
std::string shipped_folder() {
  namespace fs = std::filesystem;
  std::error_code none;
  const fs::path program = fs::read_symlink("/proc/self/exe", none);
  const fs::path installed = program.parent_path().parent_path() / BRIMWRIGHT_DATADIR;
  if (fs::is_directory(installed / "moulds", none)) return installed.string();
  const fs::path tree = BRIMWRIGHT_SOURCE_DIR;
  return fs::is_directory(tree / "moulds", none) ? tree.string() : "";
}

/// A signal that ends the program takes along what is half-written, and ends it as before. One that
/// is ignored (nohup) stays so.
void leave_nothing_half_written() {
  struct sigaction end {
  }, before{};
  end.sa_handler = [](int signal) {
    brimwright::remove_unfinished_files();
    ::raise(signal);  // set for one signal: this time it does what it always does
  };
  end.sa_flags = static_cast<int>(SA_RESETHAND) | SA_NODEFER;
  for (const int signal : {SIGINT, SIGTERM, SIGHUP})
    if (::sigaction(signal, nullptr, &before) == 0 && before.sa_handler != SIG_IGN)
      ::sigaction(signal, &end, nullptr);
}

/// A disk's or a user's limit that is reached, or a pipe that nobody reads, is an error of writing,
/// to be told like any other, and no reason to die without a word.
void be_told_by_errors() {
  for (const int signal : {SIGXFSZ, SIGPIPE}) ::signal(signal, SIG_IGN);
}

/// Who reads through a pipe may have seen enough (`brimwright list | head`): that is no error to
/// tell of.
bool reader_has_left() {
  pollfd out{STDOUT_FILENO, POLLOUT, 0};
  return ::poll(&out, 1, 0) == 1 && (out.revents & POLLERR) != 0;
}

/// A word to whoever waits at a terminal, once a second is over: a large mesh takes a while.
void promise_patience() {
  if (::isatty(STDERR_FILENO) == 0) return;
  struct sigaction word {};
  word.sa_handler = [](int) {
    constexpr char text[] = "Working; a large mesh takes a while ...\n";
    if (::write(STDERR_FILENO, text, sizeof text - 1) < 0) return;
  };
  word.sa_flags = SA_RESTART;
  ::sigaction(SIGALRM, &word, nullptr);
  ::alarm(1);
}

/// Memory that one step over a large mesh gave back is the next one's: fresh from the system, it
/// would have to be cleared again. For a program that soon ends.
void keep_memory() {
#ifdef __GLIBC__
  ::mallopt(M_MMAP_MAX, 0);
  ::mallopt(M_TRIM_THRESHOLD, std::numeric_limits<int>::max());
#endif
}

/// A terminal that knows colours, of somebody who wants them (NO_COLOR, no-color.org).
bool shows_colours() {
  const char* unwanted = std::getenv("NO_COLOR");
  const char* terminal = std::getenv("TERM");
  return ::isatty(STDOUT_FILENO) != 0 && (unwanted == nullptr || *unwanted == '\0') &&
         terminal != nullptr && std::string_view(terminal) != "dumb";
}

/// How far a search for embeds' places is, on a line of its own that is wiped at the end.
void show_progress(double share) {
  if (::isatty(STDERR_FILENO) == 0) return;
  ::alarm(0);  // this says more than the promise
  std::cerr << (share < 1
                    ? "\rLooking for places: " + std::to_string(std::lround(100 * share)) + " % "
                    : std::string("\r") + std::string(40, ' ') + "\r")
            << std::flush;
}

}  // namespace

int main(int argc, char** argv) {
  leave_nothing_half_written();
  be_told_by_errors();
  const std::vector<std::string> arguments(argv + 1, argv + argc);
  if (arguments.empty() || !arguments.front().starts_with("serve")) {
    promise_patience();
    keep_memory();
  }
  const int status = brimwright::cli::run(arguments,
                                          {.shipped = shipped_folder(),
                                           .in = &std::cin,
                                           .colours = shows_colours(),
                                           .progress = show_progress},
                                          std::cout, std::cerr);
  std::cout.flush();
  if (status == 0 && !std::cout) {
    if (!reader_has_left())
      std::cerr << "standard output: could not be written; check the disk or the pipe\n";
    return 1;
  }
  return status;
}
