#pragma once

#include <spawn.h>
#include <sys/types.h>

#include <string>
#include <utility>
#include <vector>

namespace brimwright::sandbox {

/// A descriptor that no child gets unasked, closed at the end.
class Descriptor {
 public:
  Descriptor() = default;
  explicit Descriptor(int number) : number_(number) {}
  Descriptor(Descriptor&& other) noexcept : number_(std::exchange(other.number_, -1)) {}
  Descriptor& operator=(Descriptor&& other) noexcept {
    std::swap(number_, other.number_);
    return *this;
  }
  ~Descriptor() { close(); }

  int number() const { return number_; }
  bool is_open() const { return number_ >= 0; }
  void close();

 private:
  int number_ = -1;
};

/// Two ends, ours and a child's. Ours does not block.
struct Ends {
  Descriptor ours, theirs;
};

/// Ends of a socket or of a pipe (ours reads). They lie above `last`, the highest of the child's
/// own numbers, so that putting one in its place there never overwrites another.
/// std::system_error, as `refusal` has it.
Ends socket_ends(int last, const std::string& refusal);
Ends pipe_ends(int last, const std::string& refusal);

/// What a child process is like as it begins: no signal blocked, handled or ignored, and nothing of
/// ours but what it is given. All that fails is told by `start`.
class ChildStart {
 public:
  ChildStart();
  ~ChildStart();
  ChildStart(const ChildStart&) = delete;
  ChildStart& operator=(const ChildStart&) = delete;

  /// The child has `ours` under its own `number`.
  ChildStart& give(int ours, int number);
  /// What it reads there is empty, what it writes there leads nowhere.
  ChildStart& give_nothing(int number);
  /// It has nothing above `last` but what the lines above say.
  ChildStart& no_more_than(int last);

  /// Starts `program`, called by the first of `words`. std::system_error, as `refusal` has it.
  pid_t start(const std::string& program, std::vector<std::string> words,
              std::vector<std::string> environment, const std::string& refusal) const;

 private:
  void note(int result) { error_ = error_ != 0 ? error_ : result; }

  posix_spawn_file_actions_t files_;
  posix_spawnattr_t attributes_;
  int error_ = 0;
};

/// Of this process, for a child.
std::vector<std::string> environment();

}  // namespace brimwright::sandbox
