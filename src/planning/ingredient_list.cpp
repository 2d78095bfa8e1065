#include "planning/ingredient_list.h"

#include "chemistry/inci_data.h"
#include "planning/plan.h"
#include "planning/run.h"

#include <algorithm>

namespace brimwright::planning {
namespace {

using chemistry::AdditiveKind;
using chemistry::InciAmount;
using chemistry::InciConvention;

using Amounts = std::vector<InciAmount>;

/// A batter's weighed ingredients in the orders that chemistry wants.
chemistry::Charge charge_of(const chemistry::Formula& formula, const Weighing& weighing) {
  chemistry::Charge charge;
  charge.fats.resize(formula.fats.size());
  charge.extra_oils.resize(formula.additives.size());
  charge.alkalis.resize(formula.alkalis.size());
  charge.additives.resize(formula.additives.size());
  for (const auto& ingredient : weighing.ingredients) switch (ingredient.role) {
      case Role::fat:
        charge.fats[ingredient.index] = ingredient.weighed;
        break;
      case Role::extra_oil:
        charge.extra_oils[ingredient.index] = ingredient.weighed;
        break;
      case Role::alkali:
        charge.alkalis[ingredient.index] = ingredient.weighed;
        break;
      case Role::water:
        charge.water = ingredient.weighed;
        break;
      case Role::additive:
        charge.additives[ingredient.index] = ingredient.weighed;
        break;
    }
  return charge;
}

/// One part of the piece: a batter, of which `tally.mass_each` is in each.
struct Part {
  const chemistry::Formula& formula;
  const BatterTally& tally;

  double of_batter() const { return tally.mass_each / tally.weighing.batter; }
};

std::vector<Part> parts_of(const Run& run, const Plan& plan) {
  std::vector<Part> parts{{run.pour.formula, plan.pour.batter}};
  if (plan.pipe) parts.push_back({run.pipe->formula, plan.pipe->batter});
  return parts;
}

/// Something bought and put into or onto a piece beside the batters' own additives.
struct Bought {
  const chemistry::LabelData& label;
  std::string name;
  AdditiveKind kind;
  Mass mass;  // in one piece
};

std::vector<Bought> bought_besides(const Run& run, const Plan& plan) {
  std::vector<Bought> all;
  for (std::size_t i = 0; i < plan.pour.layers.size(); ++i) {
    const LayerTally& layer = plan.pour.layers[i];
    for (std::size_t k = 0; k < layer.colours.size(); ++k) {
      const LayerColour& colour = run.pour.layers[i].colours[k];
      all.push_back({colour.label, colour.name, AdditiveKind::colour,
                     layer.colours[k].weighed * (layer.mass_each / layer.mass)});
    }
  }
  for (std::size_t i = 0; i < plan.perch.size(); ++i)
    all.push_back({run.perch[i].label, run.perch[i].material, AdditiveKind::additive,
                   static_cast<double>(plan.perch[i].per_piece) * plan.perch[i].mass_each});
  for (std::size_t i = 0; i < plan.dust.size(); ++i)
    all.push_back({run.dust[i].label, run.dust[i].name, AdditiveKind::colour, plan.dust[i].each});
  return all;
}

/// Water that dries out of the parts of one piece; none unless it is known of each.
Mass dried_out(const Run& run, const Plan& plan) {
  Mass lost;
  for (const Part& part : parts_of(run, plan)) {
    if (!part.tally.cure) return Mass();
    lost += part.tally.mass_each - part.tally.cure->cured;
  }
  return lost;
}

Amounts amounts_of(const Run& run, const Plan& plan, InciConvention convention) {
  Amounts list;
  for (const Part& part : parts_of(run, plan))
    for (auto amount : chemistry::inci_amounts(
             part.formula, charge_of(part.formula, part.tally.weighing), convention)) {
      amount.mass = amount.mass * part.of_batter();
      chemistry::put(list, amount);
    }
  if (convention == InciConvention::as_saponified)
    for (auto& amount : list)
      if (amount.name == chemistry::inci_data().water && amount.is_inci)
        amount.mass = std::max(Mass(), amount.mass - dried_out(run, plan));
  for (const Bought& bought : bought_besides(run, plan))
    chemistry::put_bought(list, bought.label, bought.name, bought.kind, bought.mass);
  return list;
}

Mass sum_of(const Amounts& amounts) {
  Mass sum;
  for (const auto& amount : amounts) sum += amount.mass;
  return sum;
}

void add_allergens(std::vector<AllergenAmount>& all, const chemistry::LabelData& label, Mass mass) {
  for (const auto& allergen : label.allergens) {
    auto at = std::find_if(all.begin(), all.end(),
                           [&](const AllergenAmount& a) { return a.name == allergen.name; });
    if (at == all.end()) at = all.insert(all.end(), {allergen.name, {}, {}, false, {}});
    at->mass += allergen.share.of_one() * mass;
    auto& documents = at->documents;
    if (std::find(documents.begin(), documents.end(), label.document) == documents.end())
      documents.push_back(label.document);
  }
}

std::string in_words_of(Market market, const std::string& name) {
  const auto& names = chemistry::inci_data();
  if (market == Market::EU) return name;
  if (name == names.water) return names.water_in_english;
  return name == names.fragrance ? names.fragrance_in_english : name;
}

std::string listed_name(const ListedIngredient& ingredient) {
  return ingredient.is_inci ? ingredient.name
                            : "\"" + ingredient.name + "\" (INCI name not given: ask its supplier)";
}

}  // namespace

std::vector<AllergenAmount> allergens_of(const Run& run, const Plan& plan) {
  std::vector<AllergenAmount> all;
  for (const Part& part : parts_of(run, plan)) {
    const auto charge = charge_of(part.formula, part.tally.weighing);
    for (std::size_t i = 0; i < charge.additives.size(); ++i)
      add_allergens(all, part.formula.additives[i].label, charge.additives[i] * part.of_batter());
  }
  for (const Bought& bought : bought_besides(run, plan))
    add_allergens(all, bought.label, bought.mass);
  const Mass piece = sum_of(amounts_of(run, plan, InciConvention::as_saponified));
  for (auto& allergen : all) {
    allergen.share = Share::of_one(allergen.mass / piece);
    allergen.is_to_be_named = allergen.share > allergen_named_above_rinsed_off;
  }
  std::stable_sort(all.begin(), all.end(),
                   [](const auto& a, const auto& b) { return a.mass > b.mass; });
  return all;
}

IngredientList ingredient_list(const Run& run, const Plan& plan, InciConvention convention,
                               Market market) {
  const Amounts amounts = amounts_of(run, plan, convention);
  IngredientList list;
  list.total = sum_of(amounts);
  const auto share = [&](Mass mass) { return Share::of_one(mass / list.total); };
  for (const auto& a : amounts)
    list.ingredients.push_back(
        {in_words_of(market, a.name), a.mass, share(a.mass), a.is_inci, a.is_colour, false});
  for (const auto& a : allergens_of(run, plan))
    if (a.is_to_be_named)
      list.ingredients.push_back({a.name, a.mass, share(a.mass), true, false, true});
  std::stable_sort(list.ingredients.begin(), list.ingredients.end(),
                   [](const ListedIngredient& a, const ListedIngredient& b) {
                     return a.is_colour == b.is_colour ? a.mass > b.mass : b.is_colour;
                   });
  for (const auto& ingredient : list.ingredients)
    list.text += (list.text.empty() ? "" : ", ") + listed_name(ingredient);
  return list;
}

}  // namespace brimwright::planning
