#pragma once

#include "chemistry/formula.h"

#include <functional>
#include <span>

namespace brimwright::learning {

/// The best curve of one rate, which is one over the time constant:
///
///   m(t) = fresh - slope z(t),   z(t) = (1 - exp(-rate t)) / rate
///
/// so that the straight line, of rate 0, is one of them and nothing cancels near it. Where the best
/// would rise it is level, of slope 0. Grams, days.
struct RateFit {
  double rate = 0, slope = 0, z_mean = 0, m_mean = 0, zz = 0;
  double squares = 0;  // g2, about the curve

  double mass_at(double z) const { return m_mean - slope * (z - z_mean); }
};

/// z on a day.
double worn(double rate, double day);

/// Whether there are three weighings at least, each on a later day than the one before.
bool can_be_fitted(std::span<const chemistry::CureWeighing> weighings);

/// The best curve of `rate` through them, by least squares.
RateFit fit_of_rate(std::span<const chemistry::CureWeighing> weighings, double rate);

/// Where `f` is least between `a` and `b`, to six digits of the way between them (Brent's method).
double least_between(double a, double b, const std::function<double(double)>& f);

}  // namespace brimwright::learning
