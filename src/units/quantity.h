#pragma once

#include <cmath>
#include <numbers>

namespace brimwright {

/// A physical quantity told apart by its powers of length and mass.
///
/// Inside it holds one `double` in millimetres and grams; it is made by multiplying a number with a
/// unit and read back by dividing by a unit. Products and quotients get their own dimension, so the
/// compiler refuses to add a volume to a mass.
template <int LengthPower, int MassPower>
class Quantity {
 public:
  constexpr Quantity() = default;

  /// The value in powers of millimetre and gram. For units and for a library's door only.
  static constexpr Quantity from_base(double value) {
    Quantity q;
    q.value_ = value;
    return q;
  }
  constexpr double base() const { return value_; }

  constexpr auto operator<=>(const Quantity&) const = default;

  constexpr Quantity& operator+=(Quantity other) {
    value_ += other.value_;
    return *this;
  }
  constexpr Quantity& operator-=(Quantity other) {
    value_ -= other.value_;
    return *this;
  }
  constexpr Quantity& operator*=(double factor) {
    value_ *= factor;
    return *this;
  }

 private:
  double value_ = 0;
};

using Length = Quantity<1, 0>;
using Area = Quantity<2, 0>;
using Volume = Quantity<3, 0>;
using Mass = Quantity<0, 1>;
using Density = Quantity<-3, 1>;
using AreaDensity = Quantity<-2, 1>;  // a powder's mass on a surface

template <int L, int M>
constexpr Quantity<L, M> operator+(Quantity<L, M> a, Quantity<L, M> b) {
  return a += b;
}
template <int L, int M>
constexpr Quantity<L, M> operator-(Quantity<L, M> a, Quantity<L, M> b) {
  return a -= b;
}
template <int L, int M>
constexpr Quantity<L, M> operator-(Quantity<L, M> a) {
  return Quantity<L, M>::from_base(-a.base());
}
template <int L, int M>
constexpr Quantity<L, M> operator*(Quantity<L, M> a, double factor) {
  return a *= factor;
}
template <int L, int M>
constexpr Quantity<L, M> operator*(double factor, Quantity<L, M> a) {
  return a *= factor;
}
template <int L, int M>
constexpr Quantity<L, M> operator/(Quantity<L, M> a, double divisor) {
  return Quantity<L, M>::from_base(a.base() / divisor);
}
template <int L, int M>
constexpr double operator/(Quantity<L, M> a, Quantity<L, M> b) {
  return a.base() / b.base();
}
template <int L1, int M1, int L2, int M2>
constexpr Quantity<L1 + L2, M1 + M2> operator*(Quantity<L1, M1> a, Quantity<L2, M2> b) {
  return Quantity<L1 + L2, M1 + M2>::from_base(a.base() * b.base());
}
template <int L1, int M1, int L2, int M2>
constexpr Quantity<L1 - L2, M1 - M2> operator/(Quantity<L1, M1> a, Quantity<L2, M2> b) {
  return Quantity<L1 - L2, M1 - M2>::from_base(a.base() / b.base());
}

template <int L, int M>
Quantity<L, M> abs(Quantity<L, M> a) {
  return Quantity<L, M>::from_base(std::abs(a.base()));
}
template <int L, int M>
bool is_finite(Quantity<L, M> a) {
  return std::isfinite(a.base());
}
template <int L>
Quantity<L / 2, 0> sqrt(Quantity<L, 0> a) {
  static_assert(L % 2 == 0);
  return Quantity<L / 2, 0>::from_base(std::sqrt(a.base()));
}
inline Length cbrt(Volume a) { return Length::from_base(std::cbrt(a.base())); }

// Units. SI multiples are exact; the others are exact by definition, as in NIST SP 811 (2008),
// appendix B.8, except where a line says otherwise.
inline constexpr Length millimetre = Length::from_base(1);
inline constexpr Length centimetre = 10 * millimetre;
inline constexpr Length metre = 1000 * millimetre;
inline constexpr Length inch = 25.4 * millimetre;

inline constexpr Area square_millimetre = millimetre * millimetre;
inline constexpr Area square_centimetre = centimetre * centimetre;
inline constexpr Area square_metre = metre * metre;
inline constexpr Area square_inch = inch * inch;

inline constexpr Volume cubic_millimetre = square_millimetre * millimetre;
inline constexpr Volume millilitre = square_centimetre * centimetre;
inline constexpr Volume litre = 1000 * millilitre;
inline constexpr Volume cubic_inch = inch * inch * inch;
inline constexpr Volume us_gallon = 231 * cubic_inch;
inline constexpr Volume us_fluid_ounce = us_gallon / 128;
inline constexpr Volume us_cup = 8 * us_fluid_ounce;
inline constexpr Volume us_tablespoon = us_fluid_ounce / 2;
inline constexpr Volume us_teaspoon = us_fluid_ounce / 6;
inline constexpr Volume imperial_fluid_ounce = 4.54609 / 160 * litre;  // gallon 4.54609 L

inline constexpr Mass gram = Mass::from_base(1);
inline constexpr Mass milligram = gram / 1000;
inline constexpr Mass kilogram = 1000 * gram;
inline constexpr Mass pound = 453.59237 * gram;  // international avoirdupois pound
inline constexpr Mass ounce = pound / 16;

inline constexpr Density gram_per_millilitre = gram / millilitre;
inline constexpr Density kilogram_per_cubic_metre = gram_per_millilitre / 1000;

inline constexpr double pi = std::numbers::pi;

}  // namespace brimwright
