#include "planning/cost.h"

#include <algorithm>

namespace brimwright::planning {
namespace {

/// Adds to the line of that name, so that an oil in both batters is one line.
void use(std::vector<CostLine>& lines, const std::string& name, Mass mass) {
  const auto line =
      std::find_if(lines.begin(), lines.end(), [&](const CostLine& l) { return l.name == name; });
  if (line != lines.end())
    line->used += mass;
  else
    lines.push_back({name, mass, {}});
}

void use_all(std::vector<CostLine>& lines, const std::vector<Ingredient>& ingredients) {
  for (const auto& ingredient : ingredients) use(lines, ingredient.price_name, ingredient.weighed);
}

void use_base(std::vector<CostLine>& lines, const Plan& plan) {
  use_all(lines, plan.pour.batter.weighing.ingredients);
}

void use_others(std::vector<CostLine>& lines, const Plan& plan) {
  for (const auto& layer : plan.pour.layers) use_all(lines, layer.colours);
  if (plan.pipe) use_all(lines, plan.pipe->batter.weighing.ingredients);
  for (const auto& decoration : plan.decorations) use(lines, decoration.material, decoration.make);
  for (const auto& dust : plan.dust) use(lines, dust.name, dust.make);
}

}  // namespace

std::vector<CostLine> materials_used(const Plan& plan) {
  std::vector<CostLine> lines;
  use_base(lines, plan);
  use_others(lines, plan);
  return lines;
}

std::vector<CostLine> base_used(const Plan& plan) {
  std::vector<CostLine> lines;
  use_base(lines, plan);
  return lines;
}

std::vector<CostLine> used_beside_base(const Plan& plan) {
  std::vector<CostLine> lines;
  use_others(lines, plan);
  return lines;
}

Cost cost_of(const Plan& plan, const Purse& purse) {
  Cost cost;
  cost.lines = materials_used(plan);
  cost.total = {0, purse.currency};
  for (auto& line : cost.lines) {
    const auto price = purse.prices.find(line.name);
    if (price == purse.prices.end()) {
      cost.unpriced.push_back(line.name);
      continue;
    }
    line.cost = scaled(price->second.paid, line.used / price->second.pack);
    cost.total = cost.total + *line.cost;
  }
  cost.per_piece = scaled(cost.total, 1.0 / static_cast<double>(plan.pieces.sell));
  return cost;
}

bool is_any_priced(const Cost& cost) {
  return std::any_of(cost.lines.begin(), cost.lines.end(),
                     [](const CostLine& line) { return line.cost.has_value(); });
}

}  // namespace brimwright::planning
