#include "planning/fit_remarks.h"

#include "planning/embed_fit.h"
#include "units/advice_text.h"
#include "units/printing.h"
#include "units/wording.h"

#include <algorithm>
#include <cmath>

namespace brimwright::planning {
namespace {

void remark_on_the_bowl(std::vector<Remark>& remarks, const Plan& plan) {
  const Whipping& largest = plan.batches.front().whippings.front();
  const auto& now = largest.pipe.casts_now;
  if (!now || *now >= largest.casts) return;
  remarks.push_back(
      {Severity::caution,
       "At today's whipped density the bowl is enough for " + std::to_string(*now) + " of " +
           std::to_string(largest.casts) + (plan.pieces.per_cast > 1 ? " loaves" : " pieces") +
           ", " + std::to_string(largest.casts - *now) + " short. Whip it lighter, or make more."});
}

void remark_on_the_hand(std::vector<Remark>& remarks, const PipeTally& pipe) {
  const auto& visible = pipe.visible;
  if (visible.as_given)
    remarks.push_back(
        {Severity::note, "The topping is planned at " + in_ml(*visible.as_given) +
                             " each above its foot, as the run gives it, not at the " +
                             in_ml(*visible.by_trials) + " that its trials weighed."});
  else if (visible.by_trials && visible.trials_spread > 15 * percent)
    remarks.push_back(
        {Severity::caution, "The weighed trials differ by " +
                                trimmed(visible.trials_spread.in_percent(), 0) +
                                " % of their mean: pipe a few more before you trust it."});
  if (visible.by_beads && !visible.by_trials && !visible.correction_used)
    remarks.push_back({Severity::caution,
                       "The topping's size is calculated from tip and moves alone, without a "
                       "correction for your hand: pipe three on paper and weigh them."});
}

void remark_on_sitting(std::vector<Remark>& remarks, const Decoration& decoration,
                       const DecorationFit& fit) {
  const std::string& name = decoration.name;
  if (*fit.contact < 0.5 * millimetre) {
    remarks.push_back(
        {Severity::caution, name + " stands on a point and will roll: press it in a little."});
    return;
  }
  if (!fit.peak_flat) {
    remarks.push_back({Severity::note, name + " meets the topping in a circle " +
                                           least_text(*fit.contact) +
                                           " across: make the peak flat over at least that."});
    return;
  }
  if (*fit.contact > *fit.peak_flat)
    remarks.push_back(
        {Severity::caution, name + " meets the topping in a circle " + least_text(*fit.contact) +
                                " across, but the peak is flat over " + most_text(*fit.peak_flat) +
                                " only: end the topping wider, or press it in less."});
}

void remark_on_cover(std::vector<Remark>& remarks, const Decoration& decoration,
                     const DecorationFit& fit) {
  const auto& buried = std::get<Buried>(decoration.where);
  Length floor = fit.embeds.front().floor_cover, wall = fit.embeds.front().wall_cover,
         line = fit.embeds.front().line_cover;
  std::optional<Length> apart;
  for (const auto& embed : fit.embeds) {
    floor = std::min(floor, embed.floor_cover);
    wall = std::min(wall, embed.wall_cover);
    line = std::min(line, embed.line_cover);
    if (embed.apart) apart = std::min(apart.value_or(*embed.apart), *embed.apart);
  }
  const auto complain = [&](Length cover, const std::string& where) {
    // Places that were asked for with just this cover keep it to the last bit or so.
    if (cover >= buried.cover - 1e-6 * millimetre) return;
    remarks.push_back({Severity::caution, decoration.name + " has " + in_mm(cover) + " " + where +
                                              " where you want " + in_mm(buried.cover) + "."});
  };
  complain(floor, "to the floor");
  complain(wall, "to the wall");
  if (line < Length{})
    remarks.push_back(
        {Severity::note, decoration.name + " stands " + in_mm(-line) + " out of the base."});
  else
    complain(line, "to the pour line");
  if (apart) complain(*apart, "between each other");
}

/// Such as a dollop of melt somewhere on a loaf: nobody knows which bars get it.
void remark_on_no_place(std::vector<Remark>& remarks, const Decoration& decoration,
                        const DecorationFit& fit) {
  if (decoration.per_piece > 0 || !fit.embeds.empty()) return;
  if (std::holds_alternative<Drizzle>(decoration.made)) return;
  remarks.push_back(
      {Severity::note,
       decoration.name +
           " is set on the loaf before it is cut, so a bar may have none of it: the lightest bar "
           "is calculated without it. If each bar gets its own, count it by \"per_piece\"."});
}

void remark_on_floating(std::vector<Remark>& remarks, const Decoration& decoration,
                        Density batter) {
  // Densities are good to a per cent or two; closer than that neither sinks nor floats for sure.
  const double ratio = decoration.density / batter;
  if (std::abs(ratio - 1) < 0.02) return;
  remarks.push_back(
      {Severity::note, decoration.name + " (" + in_g_per_ml(decoration.density, 3) + ") " +
                           (ratio > 1 ? "sinks" : "floats up") + " in the base (" +
                           in_g_per_ml(batter, 3) +
                           ") until the batter is thick: hold it down, or wait for a firm trace."});
}

}  // namespace

std::vector<Remark> whip_remarks(const Plan& plan) {
  std::vector<Remark> remarks;
  if (!plan.pipe) return remarks;
  remark_on_the_bowl(remarks, plan);
  return remarks;
}

std::vector<Remark> hand_remarks(const Plan& plan) {
  std::vector<Remark> remarks;
  if (plan.pipe) remark_on_the_hand(remarks, *plan.pipe);
  return remarks;
}

namespace {

/// What decorations pressed into the top of a cup that is not piped on push aside.
Volume pushed_up(const Run& run, const Plan& plan) {
  Volume volume;
  for (std::size_t i = 0; i < run.decorations.size(); ++i)
    if (plan.decorations[i].fit.contact && run.decorations[i].per_piece == 0)
      volume += static_cast<double>(run.decorations[i].per_cast) * plan.decorations[i].fit.sunk;
  return volume;
}

void remark_on_spilling(std::vector<Remark>& remarks, const Run& run, const Plan& plan) {
  if (run.pipe) return;  // a topping stands over the brim and keeps what is pressed into it
  const Volume pushed = pushed_up(run, plan), spills = pushed - plan.pour.headspace_volume;
  if (!(spills > 1e-9 * plan.pour.brimful)) return;
  std::vector<DecorationFit> fits;
  for (const auto& decoration : plan.decorations) fits.push_back(decoration.fit);
  const FreeCurve room(run.pour.mould.curve, submerged(bodies_of(run), fits));
  const Length brim = run.pour.mould.curve.height();
  const Volume left = room.volume_below(brim) - pushed;
  const std::string said = "What is pressed into the top pushes up " + least_text(pushed) +
                           ", and " + least_text(spills) +
                           " of batter spill over the brim of each cavity: ";
  remarks.push_back({Severity::caution,
                     said + (left > Volume{} ? "pour to " + least_text(brim - room.depth_at(left)) +
                                                   " below the brim or lower."
                                             : "press it in less.")});
}

}  // namespace

std::vector<Remark> decoration_remarks(const Run& run, const Plan& plan) {
  std::vector<Remark> remarks;
  for (std::size_t i = 0; i < run.decorations.size(); ++i) {
    const auto& fit = plan.decorations[i].fit;
    if (fit.contact) remark_on_sitting(remarks, run.decorations[i], fit);
    if (run.cut) remark_on_no_place(remarks, run.decorations[i], fit);
    if (fit.embeds.empty()) continue;
    remark_on_cover(remarks, run.decorations[i], fit);
    remark_on_floating(remarks, run.decorations[i], plan.pour.batter.density);
  }
  remark_on_spilling(remarks, run, plan);
  if (plan.pour.poured_to < plan.pour.line - 0.05 * millimetre)
    remarks.push_back({Severity::note, "Pour to " + in_mm(plan.pour.poured_to) +
                                           " deep only: what is pressed in raises it by " +
                                           in_mm(plan.pour.line - plan.pour.poured_to) +
                                           " to the pour line."});
  return remarks;
}

}  // namespace brimwright::planning
