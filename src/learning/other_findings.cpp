#include "learning/drying_fit.h"
#include "learning/mass_balance.h"
#include "learning/told.h"

#include <utility>

namespace brimwright::learning {
namespace {

/// melted = left over + in the jug + lost in the melt + in the casts.
void tell_decoration(const BatchFacts& batch, const DecorationFacts& decoration, Told& told) {
  MassBalance masses;
  const auto add = [&](std::optional<Mass> noted, bool is_planned, MissingNote note) {
    return masses.add(noted || is_planned ? noted : Mass{}, note);
  };
  const bool has_jug = decoration.left_in_jug_planned > Mass{};
  const bool has_melt = decoration.melt_loss_planned > Share{};
  std::optional<Mass> cast;
  if (decoration.casts && decoration.cast_each)
    cast = static_cast<double>(*decoration.casts) * *decoration.cast_each;
  const auto melted = masses.add(decoration.melted, MissingNote::melted);
  const auto jug = add(decoration.in_jug, has_jug, MissingNote::in_decoration_jug);
  const auto melt =
      masses.add(decoration.lost_in_melt || has_melt ? decoration.lost_in_melt : Mass{},
                 std::nullopt);  // steam is never weighed
  masses.holds(melted, {masses.add(decoration.left_over, MissingNote::left_over), jug, melt,
                        masses.add(cast, MissingNote::casts_weighed)});
  masses.settle(notes_off_by * decoration.melted.value_or(Mass{}));
  if (told.exceeds_scales(batch, Contradiction::In::decoration, decoration.melted,
                          decoration.on_scales))
    return;
  if (const auto& off = masses.contradiction())
    return told.contradicts(batch, Contradiction::In::decoration, *off);

  const auto loss = [&](LossOf of) {
    return FigureId{Kind::loss, OfLoss{of, decoration.decoration}};
  };
  const auto cannot = [&](LossOf of, MassBalance::Index mass) {
    Told::Why why{.any_one_of = masses.any_one_of(mass)};
    if (why.any_one_of.empty()) why.needed = masses.missing();
    told.cannot(batch, loss(of), std::move(why));
  };
  if (has_jug || decoration.in_jug) {
    if (!masses[jug])
      cannot(LossOf::decoration_jug, jug);
    else if (!decoration.tray_fills)
      told.cannot(batch, loss(LossOf::decoration_jug), {.needed = {MissingNote::tray_fills}});
    else
      told.tells(batch, loss(LossOf::decoration_jug),
                 *masses[jug] / static_cast<double>(*decoration.tray_fills),
                 decoration.left_in_jug_planned);
  }
  if (has_melt || decoration.lost_in_melt) {
    if (!masses[melt])
      cannot(LossOf::melt, melt);
    else if (!masses[melted])
      cannot(LossOf::melt, melted);
    else
      told.tells(batch, loss(LossOf::melt), Share::of_one(*masses[melt] / *masses[melted]),
                 decoration.melt_loss_planned);
  }
}

MissingNote lacking_for(NoCurve no_curve) {
  switch (no_curve) {
    case NoCurve::too_few:
      return MissingNote::three_weighings;
    case NoCurve::never_lighter:
      return MissingNote::weighings_that_fall;
    case NoCurve::straight:
      return MissingNote::weighings_for_longer;
    case NoCurve::all_at_once:
      break;
  }
  return MissingNote::weighings_sooner;
}

}  // namespace

void tell_decorations(const BatchFacts& batch, Told& told) {
  for (const DecorationFacts& decoration : batch.decorations)
    tell_decoration(batch, decoration, told);
}

void tell_times(const BatchFacts& batch, Told& told) {
  for (const TimeFacts& time : batch.times) {
    if (!time.taken) continue;
    std::optional<Value> planned;
    if (time.planned) planned = *time.planned;
    told.tells(batch, {Kind::time, OfTime{time.of}}, *time.taken, planned);
  }
}

void tell_cure(const BatchFacts& batch, Told& told) {
  if (!batch.cure) return;
  const CureFacts& cure = *batch.cure;
  const FigureId id{Kind::cure_loss, OfFormula{cure.formula}};
  if (!cure.is_one_batter)
    return told.cannot(batch, id, {.needed = {MissingNote::plain_piece_weighed}});
  if (!cure.water) return told.cannot(batch, id, {.needed = {MissingNote::weighed_as_planned}});
  const auto fitted = drying_curve(cure.weighings);
  if (const auto* no_curve = std::get_if<NoCurve>(&fitted))
    return told.cannot(batch, id, {.needed = {lacking_for(*no_curve)}});
  const auto& curve = std::get<planning::CureCurve>(fitted);
  const double lost = 1 - curve.on_day(cure.sold_on_day) / curve.fresh();
  std::optional<Value> planned;
  if (cure.lost_planned) planned = *cure.lost_planned;
  told.tells(batch, id, Share::of_one(lost / cure.water->of_one()), planned);
}

}  // namespace brimwright::learning
