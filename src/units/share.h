#pragma once

#include <compare>

namespace brimwright {

/// A fraction of a whole: 0 to 1 inside, per cent on show. May leave that range in a difference.
class Share {
 public:
  constexpr Share() = default;
  static constexpr Share of_one(double fraction) {
    Share s;
    s.fraction_ = fraction;
    return s;
  }
  constexpr double of_one() const { return fraction_; }
  constexpr double in_percent() const { return fraction_ * 100; }
  constexpr auto operator<=>(const Share&) const = default;

 private:
  double fraction_ = 0;
};

inline constexpr Share percent = Share::of_one(0.01);
inline constexpr Share whole = Share::of_one(1);

constexpr Share operator*(double factor, Share s) { return Share::of_one(factor * s.of_one()); }
constexpr Share operator+(Share a, Share b) { return Share::of_one(a.of_one() + b.of_one()); }
constexpr Share operator-(Share a, Share b) { return Share::of_one(a.of_one() - b.of_one()); }

}  // namespace brimwright
