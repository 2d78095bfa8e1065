#include "learning/mass_balance.h"
#include "learning/told.h"

#include <utility>

namespace brimwright::learning {
namespace {

/// made = left over + lost + poured into each mould;  lost = pot + jugs + overpour + test piece.
struct BaseBalance {
  struct Lost {
    LossOf loss;
    Value planned;
    MassBalance::Index at;
    bool is_by_plan;  // nought, as planned, and not noted
  };

  MassBalance masses;
  MassBalance::Index lost_altogether = 0;
  std::vector<Lost> lost = {};
  std::vector<MassBalance::Index> poured = {};
};

BaseBalance balance_of(const BaseFacts& base) {
  BaseBalance balance;
  MassBalance& masses = balance.masses;
  const auto made = masses.add(base.made, MissingNote::mass_made);
  const auto left_over = masses.add(base.left_over, MissingNote::left_over);
  balance.lost_altogether = masses.add(base.lost_altogether, MissingNote::lost_altogether);
  const auto add = [&](LossOf loss, const std::optional<Mass>& noted, auto planned,
                       MissingNote note) {
    const bool is_by_plan = !noted && planned == decltype(planned){};
    balance.lost.push_back(
        {loss, planned, masses.add(is_by_plan ? Mass{} : noted, note), is_by_plan});
  };
  add(LossOf::pot, base.in_pot, base.pot_planned, MissingNote::in_pot);
  add(LossOf::jugs, base.in_jugs, base.jugs_planned, MissingNote::in_jugs);
  add(LossOf::overpour, base.overpoured, base.overpour_planned, MissingNote::overpoured);
  add(LossOf::test_piece, base.test_piece, base.test_piece_planned, MissingNote::test_piece);
  std::vector<MassBalance::Index> went = {left_over, balance.lost_altogether};
  for (const FilledMould& mould : base.moulds) {
    balance.poured.push_back(masses.add(mould.poured, MissingNote::poured_in_mould));
    went.push_back(balance.poured.back());
  }
  std::vector<MassBalance::Index> lost;
  for (const auto& place : balance.lost) lost.push_back(place.at);
  masses.holds(made, std::move(went));
  masses.holds(balance.lost_altogether, std::move(lost));
  masses.settle(notes_off_by * base.made.value_or(Mass{}));
  return balance;
}

FigureId volume_error_of(const FilledMould& mould) {
  return {Kind::volume_error, OfMould{mould.mould}};
}
FigureId density_of(const BaseFacts& base) { return {Kind::base_density, OfFormula{base.formula}}; }
FigureId loss_of(LossOf loss) { return {Kind::loss, OfLoss{loss, {}}}; }

std::vector<FigureId> losses_not_known(const BaseBalance& balance) {
  std::vector<FigureId> unknown;
  for (const auto& place : balance.lost)
    if (!balance.masses[place.at] && place.loss != LossOf::test_piece)
      unknown.push_back(loss_of(place.loss));
  return unknown;
}

/// The length that the plan's factor on the volume is worth at the planned line.
Length length_of_factor(const FilledMould& mould) {
  return (mould.factor_used - 1) * mould.volume_each / mould.surface;
}

void tell_volume(const BatchFacts& batch, const BaseBalance& balance, std::size_t which,
                 Told& told) {
  const BaseFacts& base = *batch.base;
  const FilledMould& mould = base.moulds[which];
  const auto& poured = balance.masses[balance.poured[which]];
  if (base.cup && poured && mould.casts && mould.line) {
    const Volume each = *poured / *base.cup / static_cast<double>(*mould.casts);
    const AtLine line = at_line(mould, *mould.line);
    return told.tells(batch, volume_error_of(mould), (each - line.volume_each) / line.surface,
                      length_of_factor(mould), &mould);
  }
  Told::Why why;
  if (!base.cup) {
    why.needed.push_back(MissingNote::cup_of_base);
    why.mixed_with.push_back(density_of(base));
  }
  if (!mould.line) why.needed.push_back(MissingNote::line_reached);
  if (!mould.casts) why.needed.push_back(MissingNote::casts);
  if (!poured) {
    why.any_one_of = balance.masses.any_one_of(balance.poured[which]);
    for (FigureId& loss : losses_not_known(balance)) why.mixed_with.push_back(std::move(loss));
  }
  told.cannot(batch, volume_error_of(mould), std::move(why));
}

void tell_loss(const BatchFacts& batch, const BaseBalance& balance, const BaseBalance::Lost& place,
               Told& told) {
  const auto& mass = balance.masses[place.at];
  if (place.loss == LossOf::test_piece || place.is_by_plan) return;
  if (!mass) {
    Told::Why why{.any_one_of = balance.masses.any_one_of(place.at)};
    for (FigureId& other : losses_not_known(balance))
      if (other != loss_of(place.loss)) why.mixed_with.push_back(std::move(other));
    return told.cannot(batch, loss_of(place.loss), std::move(why));
  }
  if (place.loss != LossOf::overpour)
    return told.tells(batch, loss_of(place.loss), *mass, place.planned);
  Mass in_pieces;
  for (const auto poured : balance.poured) {
    if (!balance.masses[poured])
      return told.cannot(batch, loss_of(place.loss),
                         {.any_one_of = balance.masses.any_one_of(poured)});
    in_pieces += *balance.masses[poured];
  }
  told.tells(batch, loss_of(place.loss), Share::of_one(*mass / in_pieces), place.planned);
}

}  // namespace

void tell_base(const BatchFacts& batch, Told& told) {
  if (!batch.base || batch.base->is_elsewhere) return;
  const BaseFacts& base = *batch.base;
  if (base.on_scales && !base.on_scales->is_in_shares)
    told.cannot(batch, density_of(base), {.needed = {MissingNote::weighed_as_planned}});
  else if (base.cup)
    told.tells(batch, density_of(base), *base.cup, base.density_planned);
  else
    told.cannot(batch, density_of(base), {.needed = {MissingNote::cup_of_base}});
  if (base.on_scales &&
      told.exceeds_scales(batch, Contradiction::In::base, base.made, base.on_scales->at_most))
    return;
  const BaseBalance balance = balance_of(base);
  if (const auto& off = balance.masses.contradiction())
    return told.contradicts(batch, Contradiction::In::base, *off);
  for (std::size_t which = 0; which < base.moulds.size(); ++which)
    tell_volume(batch, balance, which, told);
  for (const auto& place : balance.lost) tell_loss(batch, balance, place, told);
  if (const auto& lost = balance.masses[balance.lost_altogether])
    told.tells(batch, loss_of(LossOf::base_altogether), *lost, base.lost_planned);
}

}  // namespace brimwright::learning
