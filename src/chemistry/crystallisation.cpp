#include "chemistry/crystallisation.h"

#include "units/fields.h"
#include "units/printing.h"

#include <cmath>
#include <string>
#include <vector>

namespace brimwright::embedded {
std::string_view lye_json();
}

namespace brimwright::chemistry {
namespace {

struct Point {
  double strength, t_c;
};
using Curve = std::vector<Point>;

Curve read_curve(const Fields& crystallisation, const std::string& alkali) {
  Curve curve;
  for (const Fields& point : crystallisation.objects(alkali))
    curve.push_back({point.number("percent") / 100, point.number("t_c")});
  return curve;
}

const Fields& data() {
  static const Fields section =
      Fields::parse(embedded::lye_json(), "data/lye.json").object("crystallisation");
  return section;
}

const Curve& curve_of(Alkali alkali) {
  static const Curve naoh = read_curve(data(), "NaOH"), koh = read_curve(data(), "KOH");
  return alkali == Alkali::sodium_hydroxide ? naoh : koh;
}

bool crystallises(Alkali alkali, Share strength, Temperature at) {
  static const auto good_to =
      TemperatureDifference::in_kelvin(data().object("good_to_k").number("value"));
  const auto begins = crystallises_at(alkali, strength);
  return begins && at <= *begins + good_to;
}

/// Whole degrees Celsius, and high enough that the whole degrees Fahrenheit beside them are clear
/// too.
Temperature least_clear(Alkali alkali, Share strength, Temperature at) {
  const auto is_clear = [&](double celsius) {
    const auto in_fahrenheit =
        Temperature::in_fahrenheit(std::round(Temperature::in_celsius(celsius).fahrenheit()));
    return !crystallises(alkali, strength, Temperature::in_celsius(celsius)) &&
           !crystallises(alkali, strength, in_fahrenheit);
  };
  double celsius = std::ceil(at.celsius());
  while (!is_clear(celsius)) ++celsius;
  return Temperature::in_celsius(celsius);
}

/// The next weaker lye, in halves of a per cent, that stays clear at `at`; none under 25 %, which
/// makes a very wet batter (common practice, no source).
std::optional<Share> weaker_and_clear(Alkali alkali, Share strength, Temperature at) {
  // What the scale's step adds to the strength that was typed: a fifth of a point, as of 50 g of
  // water on a 1 g scale.
  const Share by_scale = 0.2 * percent;
  for (double s = std::floor(2 * strength.in_percent()) / 2; s >= 25; s -= 0.5)
    if (!crystallises(alkali, s * percent, at) && !crystallises(alkali, s * percent + by_scale, at))
      return s * percent;
  return std::nullopt;
}

}  // namespace

std::optional<Temperature> crystallises_at(Alkali alkali, Share strength) {
  const Curve& curve = curve_of(alkali);
  const double w = strength.of_one();
  for (std::size_t i = 1; i < curve.size(); ++i) {
    const Point &low = curve[i - 1], &high = curve[i];
    if (w < low.strength || w > high.strength) continue;
    const double along = (w - low.strength) / (high.strength - low.strength);
    return Temperature::in_celsius(low.t_c + along * (high.t_c - low.t_c));
  }
  return std::nullopt;
}

std::optional<Remark> crystallisation(Alkali alkali, Share strength, Temperature at) {
  if (!crystallises(alkali, strength, at)) return std::nullopt;
  const auto weaker = weaker_and_clear(alkali, strength, at);
  return Remark{Severity::caution,
                "A lye solution of " + trimmed(strength.in_percent(), 1) + " % " +
                    formula_of(alkali) + " may crystallise near " +
                    in_both_scales(*crystallises_at(alkali, strength)) + " and is kept at " +
                    in_both_scales(at) +
                    ": what settles is missing from what you pour. Keep and use it at " +
                    in_both_scales(least_clear(alkali, strength, at)) + " or warmer" +
                    (weaker ? ", or make it " + trimmed(weaker->in_percent(), 1) +
                                  " % strong or weaker in its pot"
                            : "") +
                    ". If cloudy: warm and stir it clear."};
}

}  // namespace brimwright::chemistry
