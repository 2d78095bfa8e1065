#pragma once

#include "geometry/packing/packing_energy.h"
#include "geometry/packing/packing_model.h"

#include <cstddef>
#include <functional>
#include <vector>

namespace brimwright::geometry {

/// What an arrangement falls short of, and the slope of that.
using ShortfallOf = std::function<Shortfall(const Arrangement&, std::vector<double>& slope)>;

struct Relaxed {
  Arrangement arrangement;
  double worst_mm;  // the shortfall left
};

/// Bodies pushed until nothing is short any more, or no push helps: a local minimum by L-BFGS
/// (Nocedal 1980), in at most so many rounds.
Relaxed relaxed(const ShortfallOf& shortfall, Arrangement arrangement, double reach_mm,
                std::size_t rounds);

}  // namespace brimwright::geometry
