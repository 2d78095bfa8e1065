#include "planning/topping.h"

#include "units/printing.h"
#include "units/rounding.h"

namespace brimwright::planning {
namespace {

Volume volume_of(const PipedTrials& trials) {
  Mass sum;
  for (const Mass mass : trials.weighed) sum += mass;
  return sum / static_cast<double>(trials.weighed.size()) / trials.cup.density();
}

Volume volume_of(const Envelope& envelope) {
  const double form = envelope.form == EnvelopeForm::cone ? pi / 12 : pi / 6;
  const Volume hull = form * envelope.diameter * envelope.diameter * envelope.height;
  return envelope.solidity.of_one() * hull;
}

/// Whipping puts air in; a reading heavier than the plain batter is a slip of cup, tare or scale.
void require_lighter_than_plain(const Run& run, const WeighCup& cup, const std::string& key,
                                Density plain) {
  // Volumes are additive to 1-2 % only, so a barely whipped batter may read that much over.
  if (cup.density() > 1.02 * plain)
    throw UserError({run.file, "/pipe/" + key,
                     "reads " + fixed(cup.density() / gram_per_millilitre, 2) +
                         " g/ml, heavier than the unwhipped batter at " +
                         fixed(plain / gram_per_millilitre, 2) + " g/ml",
                     "check the cup's volume and that its empty weight was taken off"});
}

}  // namespace

Volume visible_volume(const Pipe& pipe) {
  return std::visit([](const auto& way) { return volume_of(way); }, pipe.visible);
}

PipeTally pipe_tally(const Run& run, const Pieces& pieces, Volume headspace) {
  const Pipe& pipe = *run.pipe;
  const auto per_fat = chemistry::proportions(pipe.formula);
  const auto plain = chemistry::batter_density(pipe.formula, per_fat);
  require_lighter_than_plain(run, pipe.whip, "whip", plain.used);
  if (pipe.whip_now) require_lighter_than_plain(run, *pipe.whip_now, "whip_now", plain.used);

  PipeTally tally;
  tally.visible_each = visible_volume(pipe);
  tally.in_headspace_each = pipe.fills_headspace.of_one() * headspace;
  auto& batter = tally.batter;
  batter.volume_each = tally.visible_each + tally.in_headspace_each;
  batter.density = pipe.whip.density();
  batter.density_computed = plain.computed;
  batter.mass_each = batter.volume_each * batter.density;
  batter.in_pieces = static_cast<double>(pieces.make) * batter.mass_each;
  const Mass stays = pipe.losses.bag + pipe.losses.bowl_and_whisk;
  batter.weighing = weighing_of(pipe.formula, batter.in_pieces + stays, run.scales);
  batter.lost = batter.weighing.batter - batter.in_pieces;
  auto& remarks = batter.weighing.remarks;
  remarks.insert(remarks.end(), plain.remarks.begin(), plain.remarks.end());
  tally.overrun = plain.used / batter.density - 1;
  if (pipe.bag_holds)
    tally.loads = whole_up(batter.weighing.batter / batter.density / *pipe.bag_holds);
  if (pipe.whip_now)
    tally.pieces_now = whole_down((batter.weighing.batter - stays) /
                                  (batter.volume_each * pipe.whip_now->density()));
  return tally;
}

}  // namespace brimwright::planning
