#pragma once

namespace brimwright::learning {

/// The value that a standard normal number stays below with `probability`, in (0, 1).
double normal_quantile(double probability);

/// That of Fisher's F with 1 and `freedom` degrees of freedom, which is above 0.
double f_quantile_of_one_and(double freedom, double probability);

}  // namespace brimwright::learning
