#include "planning/topping.h"

#include "chemistry/proportions.h"
#include "planning/weighing_remarks.h"
#include "planning/whip.h"
#include "units/rounding.h"
#include "units/share_of.h"
#include "units/wording.h"

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
    throw UserError(run.place("/pipe/" + key),
                    "reads " + fixed_g_per_ml(cup.density(), 2) +
                        ", heavier than the unwhipped batter at " + fixed_g_per_ml(plain, 2),
                    "check the cup's volume and that its empty weight was taken off");
}

void require_whipped(const Run& run, Density plain) {
  const Pipe& pipe = *run.pipe;
  require_lighter_than_plain(run, pipe.whip, "whip", plain);
  if (pipe.whip_now) require_lighter_than_plain(run, *pipe.whip_now, "whip_now", plain);
  if (pipe.trials) require_lighter_than_plain(run, pipe.trials->cup, "trials/weigh_cup", plain);
}

// A bag that loses most of what it holds is never emptied into pieces.
void require_bags_that_empty(const Run& run) {
  const Pipe& pipe = *run.pipe;
  if (!pipe.bag_holds) return;
  if (pipe.losses.each_bag_change > 0.5 * *pipe.bag_holds * pipe.whip.density())
    throw UserError(run.place("/losses/pipe/each_bag_change"),
                    "is more than half of what a bag holds", "check it against \"bag_holds\"");
}

/// Mass that stays behind when a whipping is piped in so many bag loads.
Mass left_behind(const Pipe& pipe, const std::optional<std::int64_t>& loads) {
  const PipeLosses& losses = pipe.losses;
  return losses.bag + losses.tip + losses.bowl_and_whisk +
         static_cast<double>(loads.value_or(1) - 1) * losses.each_bag_change;
}

/// Weighs the batter and counts the bag loads that hold it: more loads leave more behind, so both
/// grow until they agree.
void weigh_and_load(PipeTally& tally, const Run& run) {
  const Pipe& pipe = *run.pipe;
  auto& batter = tally.batter;
  if (pipe.bag_holds) tally.loads = 1;
  while (true) {
    tally.left_behind = left_behind(pipe, tally.loads);
    batter.weighing = trial_weighing_of(pipe.formula, batter.per_fat,
                                        batter.in_pieces + tally.left_behind, run.scales);
    if (!pipe.bag_holds) return;
    const std::int64_t needed = whole_up(batter.weighing.batter / batter.density / *pipe.bag_holds);
    if (needed <= *tally.loads) return;
    tally.loads = needed;
  }
}

}  // namespace

VisibleTopping visible_topping(const Pipe& pipe) {
  VisibleTopping visible;
  if (pipe.beads) {
    const Beads& beads = *pipe.beads;
    visible.moves = geometry::laid_by(beads.moves, beads.tip.opening, beads.bead_to_opening);
    visible.correction_used = beads.tip.hand;
    const double hand = beads.tip.hand ? beads.tip.hand->correction : 1;
    visible.volume = hand * computed_volume(visible.moves);
    visible.by_beads = visible.volume;
  }
  if (pipe.envelope) {
    visible.by_envelope = pipe.envelope->soap_share * hull_of(*pipe.envelope);
    if (!visible.by_beads) visible.volume = *visible.by_envelope;
  }
  if (pipe.trials) {
    visible.by_trials = volume_of(*pipe.trials);
    visible.as_given = pipe.trials->volume_each;
    visible.volume = visible.as_given.value_or(*visible.by_trials);
    visible.trials_spread = spread_of(*pipe.trials);
    if (pipe.beads)
      visible.suggested_correction = {*visible.by_trials / computed_volume(visible.moves),
                                      static_cast<std::int64_t>(pipe.trials->weighed.size())};
  }
  if (pipe.envelope && (pipe.trials || pipe.beads))
    visible.soap_share_found = Share::of_one(visible.volume / hull_of(*pipe.envelope));
  return visible;
}

Topping topping_of(const Run& run, Volume headspace) {
  const Pipe& pipe = *run.pipe;
  Topping topping{.visible = {},
                  .in_headspace_each = pipe.fills_headspace * headspace,
                  .per_fat = chemistry::proportions(pipe.formula),
                  .plain = {}};
  topping.plain = chemistry::batter_density(pipe.formula, topping.per_fat);
  require_whipped(run, topping.plain.used);
  require_bags_that_empty(run);
  topping.visible = visible_topping(pipe);
  return topping;
}

PipeTally trial_whipping_of(const Run& run, const Topping& topping, std::int64_t casts) {
  const Pipe& pipe = *run.pipe;
  PipeTally tally;
  tally.visible = topping.visible;
  tally.visible_each = topping.visible.volume;
  tally.in_headspace_each = topping.in_headspace_each;
  auto& batter = tally.batter;
  batter.volume_each = tally.visible_each + tally.in_headspace_each;
  batter.density = pipe.whip.density();
  batter.density_computed = topping.plain.computed;
  batter.per_fat = topping.per_fat;
  batter.mass_each = batter.volume_each * batter.density;
  batter.in_pieces = static_cast<double>(casts) * batter.mass_each;
  weigh_and_load(tally, run);
  batter.lost = batter.weighing.batter - batter.in_pieces;
  tally.overrun = topping.plain.used / batter.density - 1;
  if (pipe.pace)
    tally.piping = casts * pipe.pace->time_per_piece +
                   (tally.loads.value_or(1) - 1) * pipe.pace->time_per_bag_change;
  return tally;
}

void tell_whipping(PipeTally& tally, const Run& run, const Topping& topping) {
  const Pipe& pipe = *run.pipe;
  auto& batter = tally.batter;
  remark_on(batter.weighing, pipe.formula, batter.per_fat, run.scales);
  auto& doubts = batter.weighing.doubts;
  doubts.insert(doubts.end(), topping.plain.remarks.begin(), topping.plain.remarks.end());
  const Mass usable = batter.weighing.batter - tally.left_behind;
  tally.readings = whip_table(usable, batter.volume_each, pipe.whip, topping.plain.used);
  if (pipe.whip_now) tally.casts_now = casts_from(usable, batter.volume_each, *pipe.whip_now);
  tally.lye = spooned_lye(pipe, batter.weighing);
}

}  // namespace brimwright::planning
