#pragma once

#include "geometry/surface/large_pages.h"
#include "geometry/surface/seeded_hash.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <utility>
#include <vector>

namespace brimwright::geometry {

/// Counts nothing: what a table's look-ups cost is asked by tests alone.
struct Uncounted {
  void operator++() {}
};

/// Places numbered as they come, the same place by the same number: an open hash table that grows,
/// never more than half full. Coordinates are compared bit by bit but for -0, which is to be made 0
/// before, and are all finite. Numbers do not depend on the hash's keys.
template <class Number, class Looks = Uncounted>
class PlaceTable {
 public:
  using Place = std::array<Number, 3>;
  static constexpr std::uint32_t none = std::numeric_limits<std::uint32_t>::max();

  explicit PlaceTable(const HashKeys& keys = HashKeys::of_process(), Looks looks = {})
      : keys_(keys), looks_(looks), slots_(std::size_t{1} << 10), mask_(slots_.size() - 1) {}

  /// Makes room for `more` places yet.
  void reserve(std::size_t more) {
    const std::size_t needed = std::bit_ceil(2 * (known_.size() + more));
    // By fours where it grows again and again, so that each place is moved few times.
    if (needed > slots_.size())
      grow_to(known_.empty() ? needed : std::max(needed, 4 * slots_.size()));
  }
  std::uint64_t hash_of(const Place& place) const {
    return keys_.hash_of(place[0], place[1], place[2]);
  }
  /// Asks for the memory of a look-up ahead: one after the other, they would each wait for it.
  void prefetch_slot(std::uint64_t hash) const { __builtin_prefetch(&slots_[hash & mask_]); }
  void prefetch_place(std::uint64_t hash) const {
    const std::uint32_t near = slots_[hash & mask_].number;
    if (near != none) __builtin_prefetch(&known_[near]);
  }

  /// The number of `place`, a new one if it is new. There must be room for it.
  std::uint32_t number_of(const Place& place, std::uint64_t hash) {
    const auto tag = static_cast<std::uint32_t>(hash >> 32);
    std::size_t at = hash & mask_;
    ++looks_;
    while (slots_[at].number != none &&
           (slots_[at].tag != tag || known_[slots_[at].number] != place)) {
      at = (at + 1) & mask_;
      ++looks_;
    }
    if (slots_[at].number == none) {
      slots_[at] = {static_cast<std::uint32_t>(known_.size()), tag};
      known_.push_back(place);
    }
    return slots_[at].number;
  }

  /// The number of `place`, or `none` where it has none.
  std::uint32_t known_number_of(const Place& place, std::uint64_t hash) const {
    const auto tag = static_cast<std::uint32_t>(hash >> 32);
    std::size_t at = hash & mask_;
    while (slots_[at].number != none &&
           (slots_[at].tag != tag || known_[slots_[at].number] != place))
      at = (at + 1) & mask_;
    return slots_[at].number;
  }

  const std::vector<Place>& known() const { return known_; }
  std::vector<Place> taken() && { return std::move(known_); }

 private:
  struct Slot {
    std::uint32_t number = none;
    std::uint32_t tag = 0;  // the hash's upper half, which tells most others apart
  };

  void grow_to(std::size_t slots) {
    slots_ = {};
    reserve_large(slots_, slots);
    slots_.assign(slots, Slot{});
    mask_ = slots_.size() - 1;
    known_.reserve(slots / 2);
    for (std::uint32_t number = 0; number < known_.size(); ++number) {
      const std::uint64_t hash = hash_of(known_[number]);
      std::size_t at = hash & mask_;
      for (++looks_; slots_[at].number != none; ++looks_) at = (at + 1) & mask_;
      slots_[at] = {number, static_cast<std::uint32_t>(hash >> 32)};
    }
  }

  const HashKeys& keys_;
  Looks looks_;
  std::vector<Slot> slots_;
  std::size_t mask_;
  std::vector<Place> known_;
};

}  // namespace brimwright::geometry
