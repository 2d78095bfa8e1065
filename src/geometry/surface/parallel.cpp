#include "geometry/surface/parallel.h"

#include <algorithm>
#include <atomic>
#include <exception>
#include <mutex>
#include <system_error>
#include <thread>
#include <vector>

namespace brimwright::geometry {
namespace {

constexpr std::size_t most_threads = 8;  // our own bound: beyond it, memory is what is waited for

std::atomic<bool> is_alone = false;

/// Parts that several threads take one after the other.
class Parts {
 public:
  Parts(std::size_t parts, const std::function<void(std::size_t)>& work)
      : parts_(parts), work_(work) {}

  void take_all() {
    for (std::size_t part = next_++; part < parts_; part = next_++) {
      try {
        work_(part);
      } catch (...) {
        const std::scoped_lock alone(mutex_);
        if (!thrown_) thrown_ = std::current_exception();
        next_ = parts_;
      }
    }
  }

  void rethrow() const {
    if (thrown_) std::rethrow_exception(thrown_);
  }

 private:
  const std::size_t parts_;
  const std::function<void(std::size_t)>& work_;
  std::atomic<std::size_t> next_ = 0;
  std::mutex mutex_;
  std::exception_ptr thrown_;
};

}  // namespace

void start_no_threads() { is_alone = true; }

std::size_t things_at_once() {
  if (is_alone) return 1;
  return std::clamp<std::size_t>(std::thread::hardware_concurrency(), 1, most_threads);
}

void in_parallel(std::size_t parts, const std::function<void(std::size_t)>& work) {
  Parts all(parts, work);
  const std::size_t threads = std::min(parts, things_at_once());
  {
    std::vector<std::jthread> others;
    try {
      while (others.size() + 1 < threads) others.emplace_back([&] { all.take_all(); });
    } catch (const std::system_error&) {
      // No further thread is to be had: those that run do it all.
    }
    all.take_all();
  }
  all.rethrow();
}

}  // namespace brimwright::geometry
