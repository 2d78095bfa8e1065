#pragma once

#include "geometry/surface/triangle_mesh.h"

#include <cstddef>
#include <functional>
#include <list>
#include <mutex>
#include <optional>
#include <string>
#include <type_traits>
#include <utility>

namespace brimwright::planning {

/// All that a function is asked, as bytes: equal only for the very same argument.
class MemoKey {
 public:
  template <class Number>
  MemoKey& with(Number number) {
    static_assert(std::is_arithmetic_v<Number> || std::is_enum_v<Number>);
    return with_bytes(&number, sizeof number);
  }
  MemoKey& with(const geometry::TriangleMesh& mesh);

  const std::string& bytes() const { return bytes_; }

 private:
  MemoKey& with_bytes(const void* first, std::size_t count);

  std::string bytes_;
};

/// What a function of nothing but its argument answered, for a program that is asked the same again
/// and again. A key is kept whole and compared whole, so that no other's answer can be taken
/// for it. The least lately used go first when the keys have more than `most_bytes`.
///
/// May be used by several threads at once; two that ask the same at once both work it out.
template <class Answer>
class Memo {
 public:
  explicit Memo(std::size_t most_bytes) : most_bytes_(most_bytes) {}

  /// As `work_out` says, which is asked only if the answer is not known. What it throws is not
  /// kept.
  Answer operator()(const MemoKey& key, const std::function<Answer()>& work_out) {
    if (auto known = found(key.bytes())) return *std::move(known);
    Answer answer = work_out();
    keep(key.bytes(), answer);
    return answer;
  }

  std::size_t count() const {
    const std::scoped_lock alone(mutex_);
    return known_.size();
  }

 private:
  using Known = std::pair<std::string, Answer>;

  std::optional<Answer> found(const std::string& bytes) {
    const std::scoped_lock alone(mutex_);
    for (auto at = known_.begin(); at != known_.end(); ++at) {
      if (at->first != bytes) continue;
      known_.splice(known_.begin(), known_, at);
      return at->second;
    }
    return std::nullopt;
  }

  void keep(const std::string& bytes, const Answer& answer) {
    const std::scoped_lock alone(mutex_);
    known_.emplace_front(bytes, answer);
    std::size_t sum = 0;
    auto at = known_.begin();
    while (at != known_.end() && (sum += at->first.size()) <= most_bytes_) ++at;
    known_.erase(at, known_.end());
  }

  std::size_t most_bytes_;
  mutable std::mutex mutex_;
  std::list<Known> known_;  // the last used first
};

}  // namespace brimwright::planning
