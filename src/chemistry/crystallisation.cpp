#include "chemistry/crystallisation.h"

#include "units/fields.h"
#include "units/printing.h"

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

const Curve& curve_of(Alkali alkali) {
  static const Fields data =
      Fields::parse(embedded::lye_json(), "data/lye.json").object("crystallisation");
  static const Curve naoh = read_curve(data, "NaOH"), koh = read_curve(data, "KOH");
  return alkali == Alkali::sodium_hydroxide ? naoh : koh;
}

constexpr double good_to_k = 3;  // as the sources differ at 50 %: 12 to 15 degC

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
  const auto begins = crystallises_at(alkali, strength);
  if (!begins || at.celsius() > begins->celsius() + good_to_k) return std::nullopt;
  return Remark{
      Severity::caution,
      "A lye of " + trimmed(strength.in_percent(), 1) + " % " + formula_of(alkali) +
          " may crystallise near " + in_both_scales(*begins) + ", and it is kept at " +
          in_both_scales(at) +
          ". What has settled is missing from what you pour: warm it and stir until it is "
          "clear before weighing."};
}

}  // namespace brimwright::chemistry
