#include "planning/cost.h"

#include <algorithm>

namespace brimwright::planning {
namespace {

/// Adds to the line of that name, so that an oil in both batters is one line.
void use(std::vector<CostLine>& lines, const std::string& name, Mass mass,
         const std::vector<MadeOf>& made_of = {}) {
  const auto line = std::find_if(lines.begin(), lines.end(), [&](const CostLine& l) {
    return l.name == name && l.pieces == 0;
  });
  if (line != lines.end())
    line->used += mass;
  else
    lines.push_back({name, mass, {}, made_of});
}

/// The same of what is counted.
void count(std::vector<CostLine>& lines, const std::string& name, std::int64_t pieces) {
  const auto line = std::find_if(lines.begin(), lines.end(),
                                 [&](const CostLine& l) { return l.name == name && l.pieces > 0; });
  if (line != lines.end())
    line->pieces += pieces;
  else
    lines.push_back({name, {}, {}, {}, pieces});
}

/// What so much of it costs, where it has a price of its own kind.
std::optional<Money> cost_of(const CostLine& line, const Purse& purse) {
  if (line.is_from_tap) return Money{0, purse.currency};
  const auto price = purse.prices.find(line.name);
  if (price == purse.prices.end() || (price->second.pieces > 0) != (line.pieces > 0))
    return std::nullopt;
  const double packs =
      line.pieces > 0 ? static_cast<double>(line.pieces) / static_cast<double>(price->second.pieces)
                      : line.used / price->second.pack;
  return scaled(price->second.paid, packs);
}

void use_all(std::vector<CostLine>& lines, const std::vector<Ingredient>& ingredients) {
  for (const auto& ingredient : ingredients)
    use(lines, ingredient.price_name, ingredient.weighed, ingredient.made_of);
}

void use_base(std::vector<CostLine>& lines, const Plan& plan) {
  use_all(lines, plan.pour.batter.weighing.ingredients);
}

void use_others(std::vector<CostLine>& lines, const Plan& plan) {
  for (const auto& layer : plan.pour.layers) use_all(lines, layer.colours);
  if (plan.pipe) use_all(lines, plan.pipe->batter.weighing.ingredients);
  for (const auto& decoration : plan.decorations)
    if (decoration.is_bought)
      count(lines, decoration.material, decoration.casts);
    else
      use(lines, decoration.material, decoration.make);
  for (const auto& dust : plan.dust) use(lines, dust.name, dust.make);
}

}  // namespace

bool may_be_from_tap(const std::string& material) { return material == "water"; }

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

std::vector<CostLine> in_parts(const std::vector<CostLine>& lines,
                               const std::function<bool(const std::string&)>& stays) {
  std::vector<CostLine> parts;
  for (const CostLine& line : lines) {
    if (line.pieces > 0) {
      count(parts, line.name, line.pieces);
      continue;
    }
    if (line.made_of.empty() || stays(line.name)) {
      use(parts, line.name, line.used, line.made_of);
      continue;
    }
    for (const MadeOf& part : line.made_of) use(parts, part.price_name, part.in_a_gram * line.used);
  }
  return parts;
}

Cost cost_of(const Plan& plan, const Purse& purse) {
  Cost cost;
  cost.lines = in_parts(materials_used(plan),
                        [&](const std::string& name) { return purse.prices.contains(name); });
  cost.total = {0, purse.currency};
  for (auto& line : cost.lines) {
    line.is_from_tap = may_be_from_tap(line.name) && !purse.prices.contains(line.name);
    line.cost = cost_of(line, purse);
    if (!line.cost) {
      cost.unpriced.push_back(line.name);
      continue;
    }
    cost.total = cost.total + *line.cost;
  }
  cost.per_piece = scaled(cost.total, 1.0 / static_cast<double>(plan.pieces.sell));
  return cost;
}

bool is_any_priced(const Cost& cost) {
  return std::any_of(cost.lines.begin(), cost.lines.end(),
                     [](const CostLine& line) { return line.cost && !line.is_from_tap; });
}

}  // namespace brimwright::planning
