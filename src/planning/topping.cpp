#include "planning/topping.h"

#include "planning/whip.h"
#include "units/printing.h"
#include "units/rounding.h"

#include <algorithm>

namespace brimwright::planning {
namespace {

Mass mean_of(const std::vector<Mass>& weighed) {
  Mass sum;
  for (const Mass mass : weighed) sum += mass;
  return sum / static_cast<double>(weighed.size());
}

Volume volume_of(const PipedTrials& trials) {
  return mean_of(trials.weighed) / trials.cup.density();
}

Share spread_of(const PipedTrials& trials) {
  const auto [least, most] = std::minmax_element(trials.weighed.begin(), trials.weighed.end());
  return Share::of_one((*most - *least) / mean_of(trials.weighed));
}

Volume hull_of(const Envelope& envelope) {
  const double form = envelope.form == EnvelopeForm::cone ? pi / 12 : pi / 6;
  return form * envelope.diameter * envelope.diameter * envelope.height;
}

Volume computed_volume(const std::vector<geometry::Laid>& moves) {
  Volume volume;
  for (const auto& move : moves) volume += move.volume;
  return volume;
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

void require_whipped(const Run& run, Density plain) {
  const Pipe& pipe = *run.pipe;
  require_lighter_than_plain(run, pipe.whip, "whip", plain);
  if (pipe.whip_now) require_lighter_than_plain(run, *pipe.whip_now, "whip_now", plain);
  if (pipe.trials) require_lighter_than_plain(run, pipe.trials->cup, "trials/weigh_cup", plain);
}

/// Each change of bag leaves some, which may itself need another load: tried until it holds.
std::int64_t loads_for(const Pipe& pipe, Mass without_changes, Density whipped) {
  std::int64_t loads = 1;
  for (int attempt = 0; attempt < 100; ++attempt) {
    const Mass all = without_changes + static_cast<double>(loads - 1) * pipe.losses.each_bag_change;
    const std::int64_t needed =
        std::max<std::int64_t>(1, whole_up(all / whipped / *pipe.bag_holds));
    if (needed <= loads) return loads;
    loads = needed;
  }
  return loads;
}

Mass lost_in_changes(const Run& run, const std::optional<std::int64_t>& loads) {
  const Pipe& pipe = *run.pipe;
  if (!loads) return {};
  // A bag that loses most of what it holds is never emptied into pieces.
  if (pipe.losses.each_bag_change > 0.5 * *pipe.bag_holds * pipe.whip.density())
    throw UserError({run.file, "/losses/pipe/each_bag_change",
                     "is more than half of what a bag holds", "check it against \"bag_holds\""});
  return static_cast<double>(*loads - 1) * pipe.losses.each_bag_change;
}

void add_limits(PipeTally& tally, const Run& run, const Pieces& pieces, Density plain) {
  const Pipe& pipe = *run.pipe;
  tally.limits = whip_limits(run, tally, pieces, plain);
  for (const auto& limit : tally.limits) {
    if (limit.is_least) tally.least_pieces = std::max(tally.least_pieces, limit.pieces);
    if (!limit.is_least && limit.pieces > 0)
      tally.whippings = std::max(tally.whippings, (pieces.make + limit.pieces - 1) / limit.pieces);
  }
  tally.piping = piping_time(pipe, tally, pieces);
  tally.lye = spooned_lye(pipe, tally.batter.weighing);
}

}  // namespace

VisibleTopping visible_topping(const Pipe& pipe) {
  VisibleTopping visible;
  if (pipe.beads) {
    const Beads& beads = *pipe.beads;
    visible.moves = geometry::laid_by(beads.moves, beads.tip.opening, beads.swell);
    visible.hand_used = beads.tip.hand;
    const double hand = beads.tip.hand ? beads.tip.hand->factor : 1;
    visible.volume = hand * computed_volume(visible.moves);
    visible.by_beads = visible.volume;
  }
  if (pipe.envelope) {
    visible.by_envelope = pipe.envelope->solidity.of_one() * hull_of(*pipe.envelope);
    if (!visible.by_beads) visible.volume = *visible.by_envelope;
  }
  if (pipe.trials) {
    visible.volume = volume_of(*pipe.trials);
    visible.by_trials = visible.volume;
    visible.trials_spread = spread_of(*pipe.trials);
    if (pipe.beads)
      visible.hand_suggested = {visible.volume / computed_volume(visible.moves),
                                static_cast<std::int64_t>(pipe.trials->weighed.size())};
  }
  if (pipe.envelope && (pipe.trials || pipe.beads))
    visible.solidity_found = Share::of_one(visible.volume / hull_of(*pipe.envelope));
  return visible;
}

PipeTally pipe_tally(const Run& run, const Pieces& pieces, Volume headspace) {
  const Pipe& pipe = *run.pipe;
  const auto per_fat = chemistry::proportions(pipe.formula);
  const auto plain = chemistry::batter_density(pipe.formula, per_fat);
  require_whipped(run, plain.used);

  PipeTally tally;
  tally.visible = visible_topping(pipe);
  tally.visible_each = tally.visible.volume;
  tally.in_headspace_each = pipe.fills_headspace.of_one() * headspace;
  auto& batter = tally.batter;
  batter.volume_each = tally.visible_each + tally.in_headspace_each;
  batter.density = pipe.whip.density();
  batter.density_computed = plain.computed;
  batter.mass_each = batter.volume_each * batter.density;
  batter.in_pieces = static_cast<double>(pieces.casts) * batter.mass_each;
  const Mass stays = pipe.losses.bag + pipe.losses.tip + pipe.losses.bowl_and_whisk;
  if (pipe.bag_holds) tally.loads = loads_for(pipe, batter.in_pieces + stays, batter.density);
  const Mass lost = stays + lost_in_changes(run, tally.loads);
  batter.weighing = weighing_of(pipe.formula, batter.in_pieces + lost, run.scales);
  batter.lost = batter.weighing.batter - batter.in_pieces;
  if (tally.loads)  // what the scale rounds up may not go into the last bag
    tally.loads =
        std::max(*tally.loads, whole_up(batter.weighing.batter / batter.density / *pipe.bag_holds));
  auto& remarks = batter.weighing.remarks;
  remarks.insert(remarks.end(), plain.remarks.begin(), plain.remarks.end());
  tally.overrun = plain.used / batter.density - 1;

  const Mass usable = batter.weighing.batter - lost;
  tally.readings = whip_table(usable, batter.volume_each, pipe.whip, plain.used);
  if (pipe.whip_now) tally.pieces_now = pieces_from(usable, batter.volume_each, *pipe.whip_now);
  add_limits(tally, run, pieces, plain.used);
  return tally;
}

}  // namespace brimwright::planning
