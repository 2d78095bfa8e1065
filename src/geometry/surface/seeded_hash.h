#pragma once

#include <array>
#include <bit>
#include <cstdint>

namespace brimwright::geometry {

/// Hashes for tables over what a file says. Whoever writes a file cannot know which of its corners
/// will come to lie in one slot: the keys are drawn anew in each process, and two corners meet by a
/// chance of 2^-32, whatever they are (multilinear hashing: D. Lemire, O. Kaser, The Computer
/// Journal 2014, 57, 1624). What such a table gives back may not depend on the keys: look up in it,
/// never go through it.
class HashKeys {
 public:
  /// Those of this process.
  static const HashKeys& of_process();
  /// For tests: other keys must give the same.
  explicit HashKeys(std::array<std::uint64_t, 8> keys) : keys_(keys) {}

  std::uint64_t hash_of(float x, float y, float z) const {
    return spread(keys_[0] + keys_[1] * word(x) + keys_[2] * word(y) + keys_[3] * word(z));
  }
  std::uint64_t hash_of(double x, double y, double z) const {
    return spread(keys_[0] + keys_[1] * low(x) + keys_[2] * high(x) + keys_[3] * low(y) +
                  keys_[4] * high(y) + keys_[5] * low(z) + keys_[6] * high(z));
  }
  std::uint64_t hash_of(std::uint32_t a, std::uint32_t b) const {
    return spread(keys_[0] + keys_[1] * a + keys_[2] * b);
  }

 private:
  static std::uint64_t word(float x) { return std::bit_cast<std::uint32_t>(x); }
  static std::uint64_t low(double x) {
    return static_cast<std::uint32_t>(std::bit_cast<std::uint64_t>(x));
  }
  static std::uint64_t high(double x) { return std::bit_cast<std::uint64_t>(x) >> 32; }
  /// The upper half of a sum is what holds by the theory; evenly spaced corners would still lie
  /// evenly in it, so it is stirred (the constant is 2^64 / golden ratio: Knuth, TAOCP 3, 6.4).
  static std::uint64_t spread(std::uint64_t sum) {
    const std::uint64_t stirred = (sum >> 32) * 0x9e3779b97f4a7c15;
    return stirred ^ stirred >> 32;
  }

  std::array<std::uint64_t, 8> keys_;
};

}  // namespace brimwright::geometry
