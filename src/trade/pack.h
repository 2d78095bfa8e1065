#pragma once

#include "trade/amount.h"
#include "units/money.h"

#include <chrono>
#include <optional>
#include <string>

namespace brimwright::trade {

/// A pack on sale, bought whole or not at all.
struct Pack {
  std::string material;
  Amount holds;
  Money paid;
  std::string seller = {};  ///< empty: none is named, and nothing is known of postage
  std::optional<std::chrono::year_month_day> as_of = {};  ///< the day of the price
  std::string make = {};  ///< of goods that serve as the material: what they are called themselves
};

/// Who sells packs. What is not known of him is absent, never nothing.
struct Seller {
  std::string name;
  std::optional<Money> postage = {};            ///< of one order, however large
  std::optional<Money> postage_free_from = {};  ///< the sum of goods from which it falls away
  std::optional<int> lead_days = {};            ///< from ordering to having it
};

}  // namespace brimwright::trade
