#pragma once

#include "trade/fraction.h"
#include "units/money.h"

#include <vector>

namespace brimwright::trade {

/// `parts` in whole coins that add to `total` exactly, by the largest remainder: each is its exact
/// amount cut or filled to the next coin. `total` is the sum of `parts` rounded to the coin, and no
/// part is negative.
std::vector<Money> printed_parts(const std::vector<ExactMoney>& parts, const Money& total);

}  // namespace brimwright::trade
