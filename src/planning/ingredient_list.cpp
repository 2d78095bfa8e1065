#include "planning/ingredient_list.h"

#include "chemistry/fragrance_allergens.h"
#include "chemistry/inci_data.h"
#include "planning/batters.h"
#include "planning/piece_tally.h"
#include "planning/run.h"
#include "planning/tally.h"
#include "units/share_of.h"

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
  charge.fats = fat_masses(formula, weighing.ingredients);
  charge.extra_oils.resize(formula.additives.size());
  charge.alkalis.resize(formula.alkalis.size());
  charge.additives.resize(formula.additives.size());
  for (const auto& ingredient : weighing.ingredients) switch (ingredient.role) {
      case Role::fat:
      case Role::blend:
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

/// What of all that is weighed of a batter is in one piece.
double in_a_piece(const PlannedBatter& batter) {
  return batter.of_cast * batter.tally.mass_each / batter.tally.weighing.batter;
}

/// Something bought and put into or onto a piece beside the batters' own additives.
struct Beside {
  const chemistry::LabelData& label;
  std::string name;
  AdditiveKind kind;
  Mass mass;  // in one piece
};

std::vector<Beside> what_is_beside(const Run& run, const Plan& plan) {
  std::vector<Beside> all;
  for (std::size_t i = 0; i < plan.pour.layers.size(); ++i) {
    const LayerTally& layer = plan.pour.layers[i];
    for (std::size_t k = 0; k < layer.colours.size(); ++k) {
      const LayerColour& colour = run.pour.layers[i].colours[k];
      all.push_back({colour.label, colour.name, AdditiveKind::colour,
                     layer_in_a_piece(plan.cut, i) * colour_in_a_cast(layer, layer.colours[k])});
    }
  }
  for (std::size_t i = 0; i < plan.decorations.size(); ++i)
    all.push_back({run.decorations[i].label, run.decorations[i].material, AdditiveKind::additive,
                   decoration_in_a_piece(plan, i)});
  for (std::size_t i = 0; i < plan.dust.size(); ++i)
    all.push_back({run.dust[i].label, run.dust[i].name, AdditiveKind::colour, plan.dust[i].each});
  return all;
}

/// Water that dries out of the parts of one piece; none unless it is known of each.
Mass dried_out(const Run& run, const Plan& plan) {
  Mass lost;
  for (const PlannedBatter& part : batters_of(run, plan)) {
    if (!part.tally.cure) return Mass();
    lost += part.tally.cure->fresh - part.tally.cure->cured;
  }
  return lost;
}

Amounts amounts_of(const Run& run, const Plan& plan, InciConvention convention) {
  Amounts list;
  for (const PlannedBatter& part : batters_of(run, plan))
    for (auto amount : chemistry::inci_amounts(
             part.formula, charge_of(part.formula, part.tally.weighing), convention)) {
      amount.mass = amount.mass * in_a_piece(part);
      chemistry::put(list, amount);
    }
  if (convention == InciConvention::as_saponified)
    for (auto& amount : list)
      if (amount.name == chemistry::inci_data().water && amount.is_inci)
        amount.mass = std::max(Mass(), amount.mass - dried_out(run, plan));
  for (const Beside& bought : what_is_beside(run, plan))
    chemistry::put_bought(list, bought.label, bought.name, bought.kind, bought.mass);
  return list;
}

Mass sum_of(const Amounts& amounts) {
  Mass sum;
  for (const auto& amount : amounts) sum += amount.mass;
  return sum;
}

AllergenAmount& allergen_called(std::vector<AllergenAmount>& all, const std::string& name) {
  const auto at =
      std::find_if(all.begin(), all.end(), [&](const AllergenAmount& a) { return a.name == name; });
  if (at != all.end()) return *at;
  AllergenAmount allergen;
  allergen.name = name;
  return all.emplace_back(allergen);
}

void add_allergens(std::vector<AllergenAmount>& all, const chemistry::LabelData& label, Mass mass) {
  for (const auto& allergen : label.allergens) {
    if (allergen.is_other) continue;
    AllergenAmount& amount = allergen_called(all, allergen.name);
    amount.mass += allergen.share * mass;
    amount.is_unknown = !chemistry::listed_allergen(allergen.name);
    auto& documents = amount.documents;
    if (std::find(documents.begin(), documents.end(), label.document) == documents.end())
      documents.push_back(label.document);
  }
}

/// What is on the list of allergens and goes in by its own INCI name: lavender oil, menthol.
void add_listed_ingredients(std::vector<AllergenAmount>& all, const Amounts& ingredients) {
  for (const auto& ingredient : ingredients) {
    const auto* listed = ingredient.is_inci ? chemistry::listed_allergen(ingredient.name) : nullptr;
    if (!listed) continue;
    AllergenAmount& amount = allergen_called(all, listed->name);
    amount.mass += ingredient.mass;
    amount.is_ingredient = true;
  }
}

/// In the EU what an entry of the list of allergens covers goes by that entry's name.
Amounts grouped(const Amounts& amounts, Market market) {
  if (market != Market::EU) return amounts;
  Amounts under_their_entries;
  for (InciAmount amount : amounts) {
    const auto* listed = amount.is_inci ? chemistry::listed_allergen(amount.name) : nullptr;
    if (listed) amount.name = listed->name;
    chemistry::put(under_their_entries, amount);
  }
  return under_their_entries;
}

std::string in_words_of(Market market, const std::string& name) {
  return market == Market::EU ? name : chemistry::inci_data().in_english(name);
}

bool is_listed_in(const Amounts& amounts, const std::string& name) {
  const std::string key = chemistry::inci_key(name);
  return std::any_of(amounts.begin(), amounts.end(),
                     [&](const InciAmount& a) { return a.is_inci && a.key == key; });
}

std::string listed_name(const ListedIngredient& ingredient) {
  return ingredient.is_inci ? ingredient.name
                            : "\"" + ingredient.name + "\" (INCI name not given: ask its supplier)";
}

}  // namespace

std::vector<AllergenAmount> allergens_of(const Run& run, const Plan& plan, Market market) {
  std::vector<AllergenAmount> all;
  for (const PlannedBatter& part : batters_of(run, plan)) {
    const auto charge = charge_of(part.formula, part.tally.weighing);
    for (std::size_t i = 0; i < charge.additives.size(); ++i)
      add_allergens(all, part.formula.additives[i].label, charge.additives[i] * in_a_piece(part));
  }
  for (const Beside& bought : what_is_beside(run, plan))
    add_allergens(all, bought.label, bought.mass);
  const Amounts ingredients = amounts_of(run, plan, InciConvention::as_saponified);
  if (market == Market::EU) add_listed_ingredients(all, ingredients);
  const Mass piece = sum_of(ingredients);
  for (auto& allergen : all) {
    allergen.share = Share::of_one(allergen.mass / piece);
    allergen.is_to_be_named =
        allergen.share > chemistry::fragrance_allergens().named_above_rinsed_off;
  }
  std::stable_sort(all.begin(), all.end(),
                   [](const auto& a, const auto& b) { return a.mass > b.mass; });
  return all;
}

std::vector<UnnamedExtract> unnamed_extracts(const Run& run, const Plan& plan) {
  const Mass piece = sum_of(amounts_of(run, plan, InciConvention::as_saponified));
  const Share above = chemistry::fragrance_allergens().named_above_rinsed_off;
  std::vector<UnnamedExtract> all;
  for (const PlannedBatter& part : batters_of(run, plan)) {
    const auto charge = charge_of(part.formula, part.tally.weighing);
    for (std::size_t i = 0; i < charge.additives.size(); ++i) {
      const auto& additive = part.formula.additives[i];
      if (additive.kind != AdditiveKind::fragrance || additive.label.says_composition()) continue;
      const auto* listed = chemistry::listed_extract_called(additive.name);
      const auto& allergens = additive.label.allergens;
      const bool is_named =
          listed && std::any_of(allergens.begin(), allergens.end(),
                                [&](const auto& a) { return a.name == listed->name; });
      if (!listed || is_named) continue;
      if (charge.additives[i] * in_a_piece(part) > above * piece)
        all.push_back({additive.name, listed->name});
    }
  }
  return all;
}

IngredientList ingredient_list(const Run& run, const Plan& plan, InciConvention convention,
                               Market market) {
  const Amounts amounts = grouped(amounts_of(run, plan, convention), market);
  IngredientList list;
  list.total = sum_of(amounts);
  const auto share = [&](Mass mass) { return Share::of_one(mass / list.total); };
  for (const auto& a : amounts)
    list.ingredients.push_back(
        {in_words_of(market, a.name), a.mass, share(a.mass), a.is_inci, a.is_colour, false});
  for (const auto& a : allergens_of(run, plan, market))
    if (a.is_to_be_named && !is_listed_in(amounts, a.name))
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
