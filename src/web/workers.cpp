#include "web/workers.h"

#include <utility>

namespace brimwright::web {

Workers::Workers(int threads) {
  for (int i = 0; i < threads; ++i) threads_.emplace_back([this] { take_work(); });
}

Workers::~Workers() {
  {
    const std::scoped_lock alone(mutex_);
    is_over_ = true;
  }
  arrived_.notify_all();
  for (auto& thread : threads_) thread.join();
}

void Workers::add(std::function<void()> work) {
  {
    const std::scoped_lock alone(mutex_);
    waiting_.push_back(std::move(work));
  }
  arrived_.notify_one();
}

void Workers::take_work() {
  while (true) {
    std::function<void()> work;
    {
      std::unique_lock lock(mutex_);
      arrived_.wait(lock, [this] { return is_over_ || !waiting_.empty(); });
      if (is_over_) return;
      work = std::move(waiting_.front());
      waiting_.pop_front();
    }
    work();
  }
}

}  // namespace brimwright::web
