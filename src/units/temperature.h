#pragma once

#include <compare>

namespace brimwright {

/// A difference of two temperatures, in kelvin.
class TemperatureDifference {
 public:
  static constexpr TemperatureDifference in_kelvin(double k) {
    TemperatureDifference d;
    d.kelvin_ = k;
    return d;
  }
  constexpr double kelvin() const { return kelvin_; }
  constexpr auto operator<=>(const TemperatureDifference&) const = default;

 private:
  double kelvin_ = 0;
};

/// A point on the temperature scale. Two temperatures do not add; their difference is its own type.
class Temperature {
 public:
  static constexpr Temperature in_celsius(double c) {
    Temperature t;
    t.celsius_ = c;
    return t;
  }
  /// 1.8 degF = 1 degC, 32 degF = 0 degC, exact (NIST SP 811, appendix B.8).
  static constexpr Temperature in_fahrenheit(double f) { return in_celsius((f - 32) / 1.8); }
  constexpr double celsius() const { return celsius_; }
  constexpr double fahrenheit() const { return celsius_ * 1.8 + 32; }
  constexpr auto operator<=>(const Temperature&) const = default;

 private:
  double celsius_ = 0;
};

constexpr TemperatureDifference operator-(Temperature a, Temperature b) {
  return TemperatureDifference::in_kelvin(a.celsius() - b.celsius());
}
constexpr Temperature operator+(Temperature a, TemperatureDifference d) {
  return Temperature::in_celsius(a.celsius() + d.kelvin());
}

}  // namespace brimwright
