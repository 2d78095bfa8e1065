#pragma once

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <cstdint>
#include <numeric>
#include <utility>
#include <vector>

namespace brimwright::geometry {

/// Things numbered from 0, gathered into sets: a forest whose roots stand for a set each (R. E.
/// Tarjan, J. ACM 1975, 22, 215, with paths halved).
class DisjointSets {
 public:
  explicit DisjointSets(std::size_t things = 0) { grow_to(things); }

  std::size_t size() const { return parent_.size(); }
  /// Further things, each a set of its own.
  void grow_to(std::size_t things) {
    const std::size_t before = parent_.size();
    if (things <= before) return;
    parent_.resize(things);
    std::iota(parent_.begin() + static_cast<std::ptrdiff_t>(before), parent_.end(),
              static_cast<std::uint32_t>(before));
  }

  /// What stands for its set: the least of it, where none was hung under another.
  std::uint32_t root(std::uint32_t thing) {
    while (parent_[thing] != thing) {
      parent_[thing] = parent_[parent_[thing]];
      thing = parent_[thing];
    }
    return thing;
  }
  void unite(std::uint32_t a, std::uint32_t b) {
    a = root(a);
    b = root(b);
    parent_[std::max(a, b)] = std::min(a, b);
  }
  /// Puts the set of one thing under that of another, whose root stands for both.
  void hang(std::uint32_t thing, std::uint32_t under) { parent_[root(thing)] = root(under); }
  /// Takes a thing out of its set, with all that was hung under it.
  void separate(std::uint32_t thing) { parent_[thing] = thing; }

 private:
  std::vector<std::uint32_t> parent_;
};

/// Sets that several threads unite at once, without waiting for each other (R. J. Anderson, H.
/// Woll, STOC 1991, 370). The least of a set stands for it, in whatever order they come.
class SharedSets {
 public:
  explicit SharedSets(std::size_t things) : parent_(things) {
    std::iota(parent_.begin(), parent_.end(), std::uint32_t{0});
  }

  std::size_t size() const { return parent_.size(); }
  std::uint32_t root(std::uint32_t thing) const {
    for (std::uint32_t above = parent(thing); above != thing;) {
      const std::uint32_t next = parent(above);
      if (next != above) shared(thing).store(next, std::memory_order_relaxed);
      thing = above;
      above = next;
    }
    return thing;
  }
  void unite(std::uint32_t a, std::uint32_t b) {
    for (a = root(a), b = root(b); a != b; a = root(a), b = root(b)) {
      if (a < b) std::swap(a, b);
      std::uint32_t still_root = a;
      if (shared(a).compare_exchange_strong(still_root, b, std::memory_order_relaxed)) return;
    }
  }

 private:
  std::atomic_ref<std::uint32_t> shared(std::uint32_t thing) const {
    return std::atomic_ref<std::uint32_t>(parent_.data()[thing]);
  }
  std::uint32_t parent(std::uint32_t thing) const {
    return shared(thing).load(std::memory_order_relaxed);
  }

  mutable std::vector<std::uint32_t> parent_;  // paths become shorter where they are gone
};

}  // namespace brimwright::geometry
