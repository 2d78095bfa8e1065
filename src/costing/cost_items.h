#pragma once

#include "costing/selling.h"
#include "planning/tally.h"
#include "trade/fraction.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::costing {

/// What of a piece money goes into.
enum class CostPart { base, topping, decorations, dust, packaging, work, overhead };

/// One line of what a run costs.
struct CostItem {
  CostPart part;
  std::string name;    // as people call it: "Olive oil"
  std::string amount;  // "1264 g", "46 pieces", "3 h 20 min"
  /// Without tax that she gets back; nothing where the material has no price.
  std::optional<trade::ExactMoney> cost;
  std::string how = {};      // as a sum: "1264 g × 34.90 ÷ 5000 g"
  bool is_from_tap = false;  // water without a price: its cost is nothing
};

/// Everything that making `plan` costs, part by part: what is weighed out of each material, its
/// waste on top, price / pack × used; packaging for each piece sold; work and overhead. The run's
/// own `purse` of prices is in `selling` already.
std::vector<CostItem> cost_items(const planning::Plan& plan, const Selling& selling);

/// What a run takes of a base that is mixed for several.
struct PartOfBase {
  const planning::Plan& base;
  std::vector<trade::Fraction> of_batch;  // of each of its batches, 0 to 1
};
/// The same where the base is shared: its materials, and what each of its batches costs in work and
/// overhead, in proportion to what the run takes of that batch. Over all runs they are the whole.
std::vector<CostItem> cost_items(const planning::Plan& plan, const Selling& selling,
                                 const PartOfBase& part);

/// The sum of what has a price.
trade::ExactMoney sum_of(const std::vector<CostItem>& items, const Currency& currency);
/// The names of what has none, each once.
std::vector<std::string> unpriced(const std::vector<CostItem>& items);

}  // namespace brimwright::costing
