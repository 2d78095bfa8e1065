#pragma once

#include <condition_variable>
#include <deque>
#include <functional>
#include <mutex>
#include <thread>
#include <vector>

namespace brimwright::web {

/// Threads that take work in the order it comes. What is not begun by the end is dropped; what is
/// begun is waited for.
class Workers {
 public:
  explicit Workers(int threads);
  ~Workers();
  Workers(const Workers&) = delete;
  Workers& operator=(const Workers&) = delete;

  /// The work must not throw.
  void add(std::function<void()> work);

 private:
  void take_work();

  std::mutex mutex_;
  std::condition_variable arrived_;
  std::deque<std::function<void()>> waiting_;
  bool is_over_ = false;
  std::vector<std::thread> threads_;
};

}  // namespace brimwright::web
