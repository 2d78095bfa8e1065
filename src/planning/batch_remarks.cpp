#include "planning/batch_remarks.h"

#include "units/wording.h"

#include <algorithm>
#include <functional>
#include <string>

namespace brimwright::planning {
namespace {

using Remarks = std::vector<Remark>;
using OfBatch = std::function<void(const Batch&, Remarks&)>;

void append(Remarks& all, const Remarks& more) { all.insert(all.end(), more.begin(), more.end()); }

template <class OneRemark>
bool has(const std::vector<OneRemark>& remarks, const std::string& text) {
  return std::any_of(remarks.begin(), remarks.end(),
                     [&](const OneRemark& remark) { return remark.text == text; });
}

const Remarks& said_of(const Weighing& weighing, Saying saying) {
  if (saying == Saying::alarms) return weighing.alarms;
  return saying == Saying::doubts ? weighing.doubts : weighing.remarks;
}

/// Each text once, with the batches it is about where it is not about all of them.
std::vector<BatchRemark> told_once(const Plan& plan, const OfBatch& of_batch) {
  std::vector<Remarks> of_each;
  for (const Batch& batch : plan.batches) {
    of_each.emplace_back();
    of_batch(batch, of_each.back());
  }
  std::vector<BatchRemark> told;
  for (std::size_t i = 0; i < of_each.size(); ++i)
    for (const Remark& remark : of_each[i]) {
      const bool is_about_all = std::all_of(of_each.begin(), of_each.end(),
                                            [&](const Remarks& r) { return has(r, remark.text); });
      BatchRemark one{remark};
      if (!is_about_all) {
        one.pieces = plan.batches[i].pieces;
        one.text = "Batches of " + counted(*one.pieces, "piece") + ": " + remark.text;
      }
      if (!has(told, one.text)) told.push_back(one);
    }
  return told;
}

}  // namespace

std::vector<BatchRemark> of_batter(const Plan& plan, BatterRole batter, Saying saying) {
  return told_once(plan, [&](const Batch& batch, Remarks& all) {
    if (batter == BatterRole::base) return append(all, said_of(batch.pour.batter.weighing, saying));
    for (const Whipping& whipping : batch.whippings)
      append(all, said_of(whipping.pipe.batter.weighing, saying));
  });
}

std::vector<BatchRemark> of_lye_pots(const Plan& plan) {
  return told_once(plan, [](const Batch& batch, Remarks& all) {
    if (batch.lye_pot) append(all, batch.lye_pot->remarks);
  });
}

std::vector<BatchRemark> of_pot_shares(const Plan& plan, BatterRole batter) {
  return told_once(plan, [&](const Batch& batch, Remarks& all) {
    if (!batch.lye_pot) return;
    const auto& shares = batch.lye_pot->shares;  // the base's, then those of the whippings
    if (batter == BatterRole::base) return append(all, shares.front().alarms);
    for (std::size_t i = 1; i < shares.size(); ++i) append(all, shares[i].alarms);
  });
}

std::vector<BatchRemark> of_heat(const Plan& plan) {
  return told_once(plan, [](const Batch& batch, Remarks& all) {
    const auto& base = batch.pour.batter.heat;
    append(all, batch.pot_heat ? batch.pot_heat->remarks : base.remarks);
    append(all, base.pour_remarks);
    for (const Whipping& whipping : batch.whippings) {
      const auto& topping = whipping.pipe.batter.heat;
      if (!batch.pot_heat) append(all, topping.remarks);
      append(all, topping.pour_remarks);
    }
  });
}

Remarks of_counts(const Plan& plan) {
  Remarks remarks;
  const Pieces& pieces = plan.pieces;
  if (pieces.make == pieces.sell && pieces.to_stock == 0)
    remarks.push_back({Severity::note,
                       "No piece is planned to spare: one that spoils is one short. \"spoilage\" "
                       "allows for some."});
  const bool is_saving = !plan.around.empty() && plan.around.front().fillings < pieces.fillings &&
                         plan.around.front().sell < pieces.sell;
  if (is_saving) remarks.push_back({Severity::note, plan.around.front().text});
  return remarks;
}

}  // namespace brimwright::planning
