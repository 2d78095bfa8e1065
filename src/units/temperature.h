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
/// It remembers the scale that it was given in, for saying it back; comparing does not look at it.
class Temperature {
 public:
  static constexpr Temperature in_celsius(double c) {
    Temperature t;
    t.celsius_ = c;
    return t;
  }
  /// 1.8 degF = 1 degC, 32 degF = 0 degC, exact (NIST SP 811, appendix B.8).
  static constexpr Temperature in_fahrenheit(double f) {
    Temperature t = in_celsius((f - 32) / 1.8);
    t.given_in_fahrenheit_ = true;
    return t;
  }
  constexpr double celsius() const { return celsius_; }
  constexpr double fahrenheit() const { return celsius_ * 1.8 + 32; }
  constexpr bool given_in_fahrenheit() const { return given_in_fahrenheit_; }
  constexpr auto operator<=>(const Temperature& other) const { return celsius_ <=> other.celsius_; }
  constexpr bool operator==(const Temperature& other) const { return celsius_ == other.celsius_; }

 private:
  double celsius_ = 0;
  bool given_in_fahrenheit_ = false;
};

constexpr TemperatureDifference operator-(Temperature a, Temperature b) {
  return TemperatureDifference::in_kelvin(a.celsius() - b.celsius());
}
constexpr Temperature operator+(Temperature a, TemperatureDifference d) {
  return Temperature::in_celsius(a.celsius() + d.kelvin());
}

}  // namespace brimwright
