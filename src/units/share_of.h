#pragma once

#include "units/quantity.h"
#include "units/share.h"

namespace brimwright {

/// That share of a quantity.
template <int L, int M>
constexpr Quantity<L, M> operator*(Share share, Quantity<L, M> quantity) {
  return share.of_one() * quantity;
}

}  // namespace brimwright
