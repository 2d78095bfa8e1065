#include "learning/mass_balance.h"
#include "learning/told.h"

#include <utility>

namespace brimwright::learning {
namespace {

FigureId loss_of(LossOf loss) { return {Kind::loss, OfLoss{loss, {}}}; }

/// made = left over + lost + piped;  lost = bowl and whisk + bag + tip + at bag changes.
struct ToppingBalance {
  struct Lost {
    LossOf loss;
    Mass planned;
    MassBalance::Index at;
    bool is_by_plan;
  };

  MassBalance masses;
  MassBalance::Index lost_altogether = 0, piped = 0;
  std::vector<Lost> lost = {};
};

ToppingBalance balance_of(const ToppingFacts& topping) {
  ToppingBalance balance;
  MassBalance& masses = balance.masses;
  const auto made = masses.add(topping.made, MissingNote::mass_made);
  const auto left_over = masses.add(topping.left_over, MissingNote::left_over);
  balance.lost_altogether = masses.add(topping.lost_altogether, MissingNote::lost_altogether);
  const auto add = [&](LossOf loss, const std::optional<Mass>& noted, Mass planned,
                       MissingNote note) {
    const bool is_by_plan = !noted && planned == Mass{};
    balance.lost.push_back(
        {loss, planned, masses.add(is_by_plan ? Mass{} : noted, note), is_by_plan});
  };
  add(LossOf::bowl_and_whisk, topping.in_bowl_and_whisk, topping.bowl_and_whisk_planned,
      MissingNote::in_bowl_and_whisk);
  add(LossOf::bag, topping.in_bag, topping.bag_planned, MissingNote::in_bag);
  add(LossOf::tip, topping.in_tip, topping.tip_planned, MissingNote::in_tip);
  const bool is_never_changed = topping.bag_changes == 0;
  add(LossOf::bag_changes, topping.at_bag_changes,
      is_never_changed ? Mass{} : topping.each_bag_change_planned, MissingNote::at_bag_changes);
  balance.piped = masses.add(std::nullopt, std::nullopt);  // never weighed on its pieces
  std::vector<MassBalance::Index> lost;
  for (const auto& place : balance.lost) lost.push_back(place.at);
  masses.holds(made, {left_over, balance.lost_altogether, balance.piped});
  masses.holds(balance.lost_altogether, std::move(lost));
  masses.settle(notes_off_by * topping.made.value_or(Mass{}));
  return balance;
}

struct Piped {
  std::optional<Volume> visible;
  Told::Why why = {};  // where it is not known
};

/// poured mass / density / toppings, less what of it fills the headspace that the base left.
Piped visible_topping(const BatchFacts& batch, const ToppingFacts& topping,
                      const ToppingBalance& balance) {
  Piped piped;
  const auto& mass = balance.masses[balance.piped];
  const FilledMould* const mould = batch.base && topping.mould < batch.base->moulds.size()
                                       ? &batch.base->moulds[topping.mould]
                                       : nullptr;
  const bool asks_for_line = topping.fills_headspace > Share{};
  if (!topping.cup) {
    piped.why.needed.push_back(MissingNote::cup_of_topping);
    piped.why.mixed_with.push_back({Kind::whipped_density, OfFormula{topping.formula}});
  }
  if (!topping.piped) piped.why.needed.push_back(MissingNote::toppings_piped);
  if (asks_for_line && !(mould != nullptr && mould->line))
    piped.why.needed.push_back(MissingNote::line_reached);
  if (!mass) {
    piped.why.any_one_of = balance.masses.any_one_of(balance.piped);
    if (piped.why.any_one_of.empty())
      for (const MissingNote note : balance.masses.missing()) piped.why.needed.push_back(note);
    for (const auto& place : balance.lost)
      if (!balance.masses[place.at]) piped.why.mixed_with.push_back(loss_of(place.loss));
  }
  if (!topping.cup || !topping.piped || !mass || (asks_for_line && !(mould && mould->line)))
    return piped;
  const Volume each = *mass / *topping.cup / static_cast<double>(*topping.piped);
  Volume in_headspace = topping.in_headspace_planned;
  if (asks_for_line)
    in_headspace -= topping.fills_headspace.of_one() *
                    (at_line(*mould, *mould->line).volume_each - mould->volume_each);
  piped.visible = each - in_headspace;
  return piped;
}

void tell_losses(const BatchFacts& batch, const ToppingFacts& topping,
                 const ToppingBalance& balance, Told& told) {
  for (const auto& place : balance.lost) {
    if (place.is_by_plan) continue;
    const auto& mass = balance.masses[place.at];
    if (!mass) {
      told.cannot(batch, loss_of(place.loss), {.any_one_of = balance.masses.any_one_of(place.at)});
    } else if (place.loss != LossOf::bag_changes) {
      told.tells(batch, loss_of(place.loss), *mass, place.planned);
    } else if (!topping.bag_changes) {
      told.cannot(batch, loss_of(place.loss), {.needed = {MissingNote::bag_changes}});
    } else if (*topping.bag_changes > 0) {
      told.tells(batch, loss_of(place.loss), *mass / static_cast<double>(*topping.bag_changes),
                 topping.each_bag_change_planned);
    }
  }
  if (const auto& lost = balance.masses[balance.lost_altogether])
    told.tells(batch, loss_of(LossOf::topping_altogether), *lost, topping.lost_planned);
}

void tell_topping(const BatchFacts& batch, const ToppingFacts& topping, Told& told) {
  const FigureId density{Kind::whipped_density, OfFormula{topping.formula}};
  if (topping.on_scales && !topping.on_scales->is_in_shares)
    told.cannot(batch, density, {.needed = {MissingNote::weighed_as_planned}});
  else if (topping.cup)
    told.tells(batch, density, *topping.cup, topping.density_planned);
  else
    told.cannot(batch, density, {.needed = {MissingNote::cup_of_topping}});
  if (topping.on_scales && told.exceeds_scales(batch, Contradiction::In::topping, topping.made,
                                               topping.on_scales->at_most))
    return;
  const ToppingBalance balance = balance_of(topping);
  if (const auto& off = balance.masses.contradiction())
    return told.contradicts(batch, Contradiction::In::topping, *off);
  tell_losses(batch, topping, balance, told);
  const Piped piped = visible_topping(batch, topping, balance);
  const FigureId each{Kind::topping_each, OfTopping{topping.topping, topping.tip, topping.hand}};
  const FigureId hand{Kind::hand_correction, OfHand{topping.tip, topping.hand}};
  if (piped.visible) {
    told.tells(batch, each, *piped.visible, topping.visible_planned);
    if (topping.by_moves)
      told.tells(batch, hand, Factor{*piped.visible / *topping.by_moves},
                 Factor{topping.correction_used});
  } else {
    told.cannot(batch, each, piped.why);
    if (topping.by_moves) told.cannot(batch, hand, piped.why);
  }
}

}  // namespace

void tell_toppings(const BatchFacts& batch, Told& told) {
  for (const ToppingFacts& topping : batch.toppings) tell_topping(batch, topping, told);
}

}  // namespace brimwright::learning
