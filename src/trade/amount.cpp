#include "trade/amount.h"

#include "units/user_error.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <string>

namespace brimwright::trade {
namespace {

constexpr Mass microgram = gram / 1e6;
constexpr double noise = 1e-3;  // of a microgram; a double holds a tonne to a tenth of that

double in_micrograms(Mass mass) {
  const double count = mass / microgram;
  if (!(count >= 0 && count <= static_cast<double>(Amount::most)))
    throw UserError(Place{}, "more than a thousand tonnes of one material are asked for",
                    "look for a number of pieces, or a unit, that is a slip");
  return count;
}

}  // namespace

Amount::Amount(std::int64_t whole, bool is_pieces) : whole_(whole), is_pieces_(is_pieces) {}

Amount Amount::at_least(Mass mass) {
  return {static_cast<std::int64_t>(std::ceil(in_micrograms(mass) - noise)), false};
}

Amount Amount::at_most(Mass mass) {
  return {static_cast<std::int64_t>(std::floor(in_micrograms(mass) + noise)), false};
}

Amount Amount::micrograms(std::int64_t count) {
  if (count < 0 || count > most)
    throw UserError(Place{}, "more than a thousand tonnes of one material are asked for",
                    "look for a number of pieces, or a unit, that is a slip");
  return {count, false};
}

Amount Amount::pieces(std::int64_t count) {
  if (count < 0 || count > most)
    throw UserError(Place{}, std::to_string(count) + " pieces of one material are asked for",
                    "look for a number that is a slip");
  return {count, true};
}

Mass Amount::mass() const {
  assert(!is_pieces_);
  return static_cast<double>(whole_) * microgram;
}

Amount Amount::operator+(const Amount& other) const {
  assert(is_alike(other));
  return {whole_ + other.whole_, is_pieces_};
}

Amount Amount::less(const Amount& other) const {
  assert(is_alike(other));
  return {std::max<std::int64_t>(whole_ - other.whole_, 0), is_pieces_};
}

Amount Amount::times(std::int64_t count) const {
  std::int64_t product = 0;
  if (__builtin_mul_overflow(whole_, count, &product) || product > 1000 * most)
    throw UserError(Place{}, "packs hold more than a million tonnes, or as many pieces",
                    "look for a pack whose size is a slip");
  return {product, is_pieces_};
}

}  // namespace brimwright::trade
