#include "records/batch_cost.h"

#include "records/records.h"

#include <algorithm>

namespace brimwright::records {
namespace {

using trade::Amount;
using trade::ExactMoney;
using trade::Fraction;

void add_sum(std::vector<ExactMoney>& sums, const ExactMoney& sum) {
  const auto at = std::lower_bound(
      sums.begin(), sums.end(), sum,
      [](const ExactMoney& a, const ExactMoney& b) { return a.currency.code < b.currency.code; });
  if (at != sums.end() && at->currency == sum.currency)
    at->coins += sum.coins;
  else
    sums.insert(at, sum);
}

void add_name(std::vector<std::string>& names, const std::string& name) {
  if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
}

Fraction share(std::int64_t taken, const Amount& of) {
  return Fraction(taken) / Fraction(of.whole());
}

Amount taken_by(const LotChange& change, const Lot& lot) {
  return lot.holds.is_pieces() ? Amount::pieces(-change.whole) : Amount::micrograms(-change.whole);
}

}  // namespace

void PaidCost::add(const PaidCost& other) {
  for (const ExactMoney& sum : other.sums) add_sum(sums, sum);
  for (const std::string& name : other.unpriced) add_name(unpriced, name);
}

PaidCost PaidCost::times(const Fraction& part) const {
  PaidCost cost = *this;
  for (ExactMoney& sum : cost.sums) sum.coins *= part;
  return cost;
}

PaidCost cost_of(const Records& records, const Lot& lot, Amount taken) {
  PaidCost cost;
  if (lot.paid) {
    cost.sums.push_back(share(taken.whole(), lot.holds) * trade::exact(*lot.paid));
    return cost;
  }
  const auto sources = sources_of_lot(records, lot.id);
  if (sources.empty()) {
    cost.unpriced.push_back((lot.make.empty() ? lot.material : lot.make) + " (lot " + lot.code +
                            ")");
    return cost;
  }
  for (const LotChange& source : sources)
    if (const auto of = lot_of_id(records, source.lot)) {
      cost.add(cost_of(records, of->lot, taken_by(source, of->lot))
                   .times(share(taken.whole(), lot.holds)));
    }
  return cost;
}

PaidCost cost_of(const Records& records, const std::vector<RowUse>& rows) {
  PaidCost cost;
  for (const RowUse& row : rows) {
    for (const LotChange& take : row.takes)
      if (const auto lot = lot_of_id(records, take.lot))
        cost.add(cost_of(records, lot->lot, taken_by(take, lot->lot)));
    if (row.unknown() > 0 && row.weighed.material != "water")
      add_name(cost.unpriced, row.weighed.shown + " (lot unknown)");
  }
  return cost;
}

}  // namespace brimwright::records
