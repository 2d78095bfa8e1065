#include "learning/rate_fit.h"

#include <boost/math/tools/minima.hpp>

#include <algorithm>
#include <cmath>

namespace brimwright::learning {

double worn(double rate, double day) { return rate > 0 ? -std::expm1(-rate * day) / rate : day; }

bool can_be_fitted(std::span<const chemistry::CureWeighing> weighings) {
  const auto is_no_later = [](const auto& a, const auto& b) { return a.day >= b.day; };
  return weighings.size() >= 3 &&
         std::adjacent_find(weighings.begin(), weighings.end(), is_no_later) == weighings.end();
}

RateFit fit_of_rate(std::span<const chemistry::CureWeighing> weighings, double rate) {
  // Sums about the first weighing, so that little is lost when the squares of means are taken off.
  const auto count = static_cast<double>(weighings.size());
  const double first = weighings.front().mass / gram;
  double z_sum = 0, m_sum = 0, zz = 0, zm = 0, mm = 0;
  for (const auto& weighing : weighings) {
    const double z = worn(rate, weighing.day), m = weighing.mass / gram - first;
    z_sum += z, m_sum += m;
    zz += z * z, zm += z * m, mm += m * m;
  }
  RateFit fit{.rate = rate, .z_mean = z_sum / count, .m_mean = first + m_sum / count};
  fit.zz = zz - z_sum * z_sum / count;
  const double covariance = zm - z_sum * m_sum / count;
  fit.slope = std::max(0.0, -covariance / fit.zz);
  fit.squares = std::max(0.0, mm - m_sum * m_sum / count + fit.slope * covariance);
  return fit;
}

double least_between(double a, double b, const std::function<double(double)>& f) {
  constexpr int bits = 20;
  return boost::math::tools::brent_find_minima(f, a, b, bits).first;
}

}  // namespace brimwright::learning
