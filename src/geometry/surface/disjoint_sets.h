#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <numeric>
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

}  // namespace brimwright::geometry
