#include "learning/quantiles.h"

#include <boost/math/distributions/fisher_f.hpp>
#include <boost/math/distributions/normal.hpp>

namespace brimwright::learning {

double normal_quantile(double probability) {
  return boost::math::quantile(boost::math::normal_distribution<double>(), probability);
}

double f_quantile_of_one_and(double freedom, double probability) {
  return boost::math::quantile(boost::math::fisher_f_distribution<double>(1, freedom), probability);
}

}  // namespace brimwright::learning
