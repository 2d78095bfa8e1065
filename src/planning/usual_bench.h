#pragma once

#include "planning/run.h"
#include "units/fields.h"
#include "units/usual_measures.h"

#include <optional>
#include <string>

namespace brimwright::planning {

/// What is usual on a bench (data/usual_bench.json): what is far outside is asked for once.
const UsualMeasures& usual_bench();

/// What a price is paid for.
enum class Priced { water, alkali, fat, other, piece };

/// A price that is far from usual for a kilogram or a piece, and how that is shown.
struct FarPrice {
  Usual usual;
  std::string shown;  // "5500 EUR/kg"
};
/// Nothing for a usual one, or in a currency whose worth is not known here.
std::optional<FarPrice> far_price(const Price& price, Priced kind);

/// Asks for a price, which stands in `fields`, that is far from usual for a kilogram, or for a
/// piece of what is counted. Prices in a currency whose worth is not known here are not asked for.
void ask_for_price(const Fields& fields, const Price& price, Priced kind);

}  // namespace brimwright::planning
