#pragma once

#include "records/lot_use.h"
#include "trade/fraction.h"

#include <string>
#include <vector>

namespace brimwright::records {

class Records;

/// What something did cost, by what was paid for the lots it was taken from: exact, to be rounded
/// where it is printed. What has no price is named and is in no sum.
struct PaidCost {
  std::vector<trade::ExactMoney> sums = {};  // one a currency, by its code
  std::vector<std::string> unpriced = {};    // to people: "Olive oil (lot CO-117)"

  void add(const PaidCost& other);
  PaidCost times(const trade::Fraction& part) const;
};

/// So much of a lot. A lot that she made of others costs what was taken of those for it.
PaidCost cost_of(const Records& records, const Lot& lot, trade::Amount taken);
/// All that a batch weighed. Plain water that is of no lot costs nothing.
PaidCost cost_of(const Records& records, const std::vector<RowUse>& rows);

}  // namespace brimwright::records
