#include "units/unfinished_files.h"

#include <unistd.h>

#include <array>
#include <atomic>
#include <cerrno>
#include <climits>
#include <cstddef>
#include <cstdio>
#include <cstring>
#include <utility>

namespace brimwright {
namespace {

enum State : int { is_free, is_being_filled, is_known };

/// Never taken away, so that a handler finds it whole whenever it comes.
struct Slot {
  std::atomic<int> state = is_free;
  char path[PATH_MAX] = {};
};
static_assert(std::atomic<int>::is_always_lock_free, "a handler may read nothing else");

std::array<Slot, 8> slots;

int slot_with(const std::string& path) {
  if (path.size() >= PATH_MAX) return -1;
  for (std::size_t i = 0; i < slots.size(); ++i) {
    int expected = is_free;
    if (!slots[i].state.compare_exchange_strong(expected, is_being_filled)) continue;
    std::memcpy(slots[i].path, path.c_str(), path.size() + 1);
    slots[i].state = is_known;
    return static_cast<int>(i);
  }
  return -1;
}

void forget(int slot) {
  if (slot >= 0) slots[static_cast<std::size_t>(slot)].state = is_free;
}

}  // namespace

UnfinishedFile::UnfinishedFile(std::string path)
    : path_(std::move(path)), slot_(slot_with(path_)) {}

UnfinishedFile::~UnfinishedFile() {
  if (!is_in_place_) ::unlink(path_.c_str());
  forget(slot_);
}

int UnfinishedFile::rename_to(const std::string& target) {
  if (std::rename(path_.c_str(), target.c_str()) != 0) return errno;
  is_in_place_ = true;
  return 0;
}

void remove_unfinished_files() noexcept {
  for (const Slot& slot : slots)
    if (slot.state == is_known) ::unlink(slot.path);
}

}  // namespace brimwright
