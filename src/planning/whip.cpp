#include "planning/whip.h"

#include "units/printing.h"
#include "units/rounding.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace brimwright::planning {
namespace {

using std::chrono::seconds;

/// What is piped on: a piece, or a loaf that is cut into several.
std::string counted(std::int64_t n, const Pieces& pieces) {
  const bool is_cut = pieces.per_cast > 1;
  return std::to_string(n) +
         (n == 1 ? (is_cut ? " loaf" : " piece") : (is_cut ? " loaves" : " pieces"));
}

std::string litres(Volume volume) { return trimmed(volume / litre, 2) + " l"; }

std::string minutes(seconds time) {
  return trimmed(static_cast<double>(time.count()) / 60, 1) + " min";
}

/// Mass that stays in bag, tip, bowl and whisk, whatever the run's size.
Mass stays(const Pipe& pipe) {
  return pipe.losses.bag + pipe.losses.tip + pipe.losses.bowl_and_whisk;
}

WhipLimit whisk_limit(const Pipe& pipe, const PipeTally& tally, const Pieces& pieces,
                      Density plain) {
  const Volume least = *pipe.bowl->whisk_catches;
  const Mass needed = least * plain - stays(pipe);
  WhipLimit limit{.what = "whisk", .is_least = true};
  limit.pieces = std::max<std::int64_t>(1, whole_up(needed / tally.batter.mass_each));
  limit.binds = tally.batter.weighing.batter / plain < least * (1 - 1e-9);
  limit.text = "The whisk catches " + trimmed(least / millilitre, 0) +
               " ml of plain batter or more, which is " + counted(limit.pieces, pieces) +
               (limit.binds ? "; this run has " +
                                  trimmed(tally.batter.weighing.batter / plain / millilitre, 0) +
                                  " ml for " + counted(pieces.casts, pieces) + "."
                            : ".");
  return limit;
}

WhipLimit bowl_limit(const Pipe& pipe, const PipeTally& tally, const Pieces& pieces) {
  const Volume room = fullest_bowl.of_one() * pipe.bowl->holds;
  const Volume whipped = tally.batter.weighing.batter / tally.batter.density;
  WhipLimit limit{.what = "bowl"};
  limit.pieces = std::max<std::int64_t>(
      0, whole_down((room * tally.batter.density - stays(pipe)) / tally.batter.mass_each));
  limit.binds = whipped > room * (1 + 1e-9);
  limit.text =
      "A bowl of " + litres(pipe.bowl->holds) + ", " + trimmed(fullest_bowl.in_percent(), 0) +
      " % full when whipped, makes " + counted(limit.pieces, pieces) + " at most" +
      (limit.binds ? "; " + counted(pieces.casts, pieces) + " come to " + litres(whipped) + "."
                   : ".");
  return limit;
}

/// Time to pipe `n` pieces, with a change of bag after each load but the last.
seconds time_for(const Pipe& pipe, const PipeTally& tally, std::int64_t n) {
  seconds time = n * pipe.pace->each;
  if (!pipe.bag_holds) return time;
  const std::int64_t loads =
      whole_up(static_cast<double>(n) * tally.batter.volume_each / *pipe.bag_holds);
  return time + std::max<std::int64_t>(0, loads - 1) * pipe.pace->bag_change;
}

/// The most pieces piped within the open time: time grows with pieces, so by halving.
std::int64_t most_in_open_time(const Pipe& pipe, const PipeTally& tally) {
  std::int64_t fits = 0, too_many = pipe.pace->stays_open / pipe.pace->each + 1;
  while (too_many - fits > 1) {
    const std::int64_t middle = fits + (too_many - fits) / 2;
    (time_for(pipe, tally, middle) <= pipe.pace->stays_open ? fits : too_many) = middle;
  }
  return fits;
}

WhipLimit open_time_limit(const Pipe& pipe, const PipeTally& tally, const Pieces& pieces) {
  WhipLimit limit{.what = "open time", .pieces = most_in_open_time(pipe, tally)};
  const seconds needed = time_for(pipe, tally, pieces.casts);
  limit.binds = needed > pipe.pace->stays_open;
  limit.text =
      "The whipped batter stays open " + minutes(pipe.pace->stays_open) + ", which pipes " +
      counted(limit.pieces, pieces) + " at most" +
      (limit.binds ? "; " + counted(pieces.casts, pieces) + " take " + minutes(needed) + "." : ".");
  return limit;
}

}  // namespace

std::int64_t pieces_from(Mass usable, Volume each, const WeighCup& cup) {
  return std::max<std::int64_t>(0, whole_down(usable / (each * cup.density())));
}

std::vector<WhipReading> whip_table(Mass usable, Volume each, const WeighCup& planned,
                                    Density plain) {
  std::vector<WhipReading> table;
  for (const double off : {-0.15, -0.10, -0.05, 0.0, 0.05, 0.10, 0.15}) {
    WeighCup cup = planned;
    if (off != 0) cup.net = rounded_nearest((1 + off) * planned.net, 1 * gram);
    const bool is_new = table.empty() || cup.net > table.back().net;
    // A cup heavier than the plain batter holds no whip.
    if (!is_new || !(cup.net > Mass{}) || cup.density() > plain) continue;
    table.push_back({.net = cup.net,
                     .density = cup.density(),
                     .overrun = plain / cup.density() - 1,
                     .pieces = pieces_from(usable, each, cup),
                     .is_planned = off == 0});
  }
  return table;
}

std::vector<WhipLimit> whip_limits(const Run& run, const PipeTally& tally, const Pieces& pieces,
                                   Density plain) {
  const Pipe& pipe = *run.pipe;
  std::vector<WhipLimit> limits;
  if (pipe.bowl && pipe.bowl->whisk_catches)
    limits.push_back(whisk_limit(pipe, tally, pieces, plain));
  if (pipe.bowl) limits.push_back(bowl_limit(pipe, tally, pieces));
  if (pipe.pace) limits.push_back(open_time_limit(pipe, tally, pieces));
  return limits;
}

std::optional<seconds> piping_time(const Pipe& pipe, const PipeTally& tally, const Pieces& pieces) {
  if (!pipe.pace) return std::nullopt;
  return time_for(pipe, tally, pieces.casts);
}

std::optional<SpoonedLye> spooned_lye(const Pipe& pipe, const Weighing& weighing) {
  if (!pipe.lye_spoon) return std::nullopt;
  std::vector<Mass> alkalis;
  for (const auto& ingredient : weighing.ingredients)
    if (ingredient.role == Role::alkali) alkalis.push_back(ingredient.weighed);
  const Volume lye = chemistry::lye_volume(pipe.formula, alkalis, weighing.water);
  SpoonedLye spooned;
  spooned.spoonfuls = whole_up(lye / pipe.lye_spoon->holds);
  spooned.each = pipe.lye_spoon->each;
  spooned.altogether = spooned.spoonfuls * spooned.each;
  return spooned;
}

}  // namespace brimwright::planning
