#pragma once

#include "units/quantity.h"

#include <compare>
#include <cstdint>

namespace brimwright::trade {

/// How much of a material: a mass in whole micrograms, or a count of whole pieces. Sums of either
/// are exact; the two are never added or compared.
class Amount {
 public:
  /// What must be there: the mass to the next microgram above. A thousandth of a microgram counts
  /// as noise of the arithmetic, so that two packs of 8 oz are 16 oz.
  static Amount at_least(Mass mass);
  /// What is there: the mass to the next microgram below, with the same noise.
  static Amount at_most(Mass mass);
  static Amount micrograms(std::int64_t count);
  static Amount pieces(std::int64_t count);

  bool is_pieces() const { return is_pieces_; }
  /// Micrograms or pieces.
  std::int64_t whole() const { return whole_; }
  /// Of an amount by mass.
  Mass mass() const;
  bool is_alike(const Amount& other) const { return is_pieces_ == other.is_pieces_; }

  /// Both of one kind.
  Amount operator+(const Amount& other) const;
  /// What remains when `other` is taken off; nothing where that is more. Both of one kind.
  Amount less(const Amount& other) const;
  /// `count` times as much. UserError for more than a thousand times `most`.
  Amount times(std::int64_t count) const;
  bool operator==(const Amount&) const = default;

  /// A thousand tonnes, or as many pieces as those have micrograms: beyond any studio, and sums of
  /// thousands of it are still exact. UserError above.
  static constexpr std::int64_t most = 1'000'000'000'000'000;

 private:
  Amount(std::int64_t whole, bool is_pieces);

  std::int64_t whole_ = 0;
  bool is_pieces_ = false;
};

}  // namespace brimwright::trade
