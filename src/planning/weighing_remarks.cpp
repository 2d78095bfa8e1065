#include "planning/weighing_remarks.h"

#include "chemistry/fat_blend.h"
#include "chemistry/least_batch.h"
#include "chemistry/lye_solution.h"
#include "chemistry/rate_cautions.h"
#include "chemistry/salts.h"
#include "planning/scales.h"
#include "units/printing.h"
#include "units/weight_text.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace brimwright::planning {
namespace {

using chemistry::Formula;
using chemistry::Proportions;

/// More than a point off the aim is a different soap: common practice, no source.
void warn_of_coarse_scales(Weighing& weighing) {
  const Share off = weighing.superfat.nominal - weighing.aim;
  if (off > 1 * percent)
    weighing.remarks.push_back(
        {Severity::caution, "The scale's step makes the superfat " +
                                fixed(weighing.superfat.nominal.in_percent(), 1) +
                                " % instead of " + fixed(weighing.aim.in_percent(), 1) +
                                " %: the batch is small for this scale. Use a finer one for the "
                                "alkali, or make a larger batch."});
}

/// Two points are more than a maker changes a lye by without meaning to: common practice, no
/// source.
void warn_of_coarse_water(Weighing& weighing, Share planned) {
  if (std::abs((weighing.lye_strength - planned).in_percent()) <= 2) return;
  weighing.remarks.push_back(
      {Severity::caution, "The scale's step makes the lye solution " +
                              fixed(weighing.lye_strength.in_percent(), 1) +
                              " % strong instead of " + fixed(planned.in_percent(), 1) +
                              " %: weigh the water on a finer scale, or make a larger batch."});
}

/// Whether the scales keep a batch of `fats` within `wanted`, weighed as any batch is.
bool is_certain(const Formula& formula, const Proportions& per_fat, Mass fats, const Scales& scales,
                Share wanted) try {
  return weighed_once(formula, per_fat, fats * per_fat.batter, scales).superfat.likely_by_scales <=
         wanted;
} catch (const UserError&) {
  return false;  // it cannot be weighed at all
}

/// The least number of grams of fats that is certain, from about `grams` on; nothing where it is
/// not near, as where a larger batch moves to a coarser scale.
std::optional<double> least_grams(const Formula& formula, const Proportions& per_fat, double grams,
                                  const Scales& scales, Share wanted) {
  const auto passes = [&](double g) {
    return is_certain(formula, per_fat, g * gram, scales, wanted);
  };
  const double farthest = std::max(20.0, 0.05 * grams);
  const double low = grams - farthest, high = grams + farthest;
  while (grams > 1 && grams > low && passes(grams - 1)) --grams;
  while (grams < high && !passes(grams)) ++grams;
  return passes(grams) ? std::optional(grams) : std::nullopt;
}

/// Half a point either way is what a maker can tell in a soap: common practice, no source.
void tell_least_batch(Weighing& weighing, const Formula& formula, const Proportions& per_fat,
                      const Scales& scales) {
  const Share wanted = 0.5 * percent;
  const Share now = weighing.superfat.likely_by_scales;
  if (now <= wanted) return;
  const Reacting r = reacting(formula, weighing.ingredients);
  const auto least =
      chemistry::least_batch_for(wanted, chemistry::CertaintyOf::scales_alone, weighing.fats,
                                 r.fats, r.alkalis, r.acids, r.blends);
  std::string words = least.words;
  if (least.fats && *least.fats > Mass{}) {
    const auto grams = least_grams(formula, per_fat, *least.fats / gram, scales, wanted);
    words = grams ? chemistry::least_batch_in_words(*grams * gram, wanted,
                                                    chemistry::CertaintyOf::scales_alone)
                  : "Weigh on finer scales.";
  }
  weighing.doubts.push_back(
      {Severity::caution, formula.name + ": the scales' steps alone can move the superfat by ±" +
                              fixed(now.in_percent(), 1) + " points. " + words});
}

}  // namespace

void remark_on(Weighing& weighing, const Formula& formula, const Proportions& per_fat,
               const Scales& scales) {
  weighing.alarms = superfat_alarms(weighing.superfat, formula.name);
  warn_of_coarse_scales(weighing);
  warn_of_coarse_water(weighing, per_fat.lye_strength);
  tell_least_batch(weighing, formula, per_fat, scales);
  for (const auto& ingredient : weighing.ingredients)
    if (ingredient.weighings > 1)
      weighing.remarks.push_back(
          {Severity::note, ingredient.name + ": " +
                               on_scale(ingredient.weighed, ingredient.step, ingredient.shown) +
                               " is too much for the scale: weigh it in " +
                               std::to_string(ingredient.weighings) + " portions."});
  std::string remembered;
  for (const auto& fat : formula.fats)
    if (!fat.from_supplier && !fat.fat.saponification_read)
      remembered += (remembered.empty() ? "" : "; ") + fat.fat.name;
  if (!remembered.empty())
    weighing.doubts.push_back(
        {Severity::note, "The saponification ranges of " + remembered +
                             " have not been checked at their source; your supplier's value "
                             "for the lot is better."});
  const auto add = [](std::vector<Remark>& all, const std::vector<Remark>& more) {
    all.insert(all.end(), more.begin(), more.end());
  };
  add(weighing.remarks, chemistry::standing_solution_cautions(formula));
  add(weighing.remarks, chemistry::rate_cautions(formula, per_fat));
  add(weighing.remarks, chemistry::substance_remarks(formula, per_fat));
  add(weighing.doubts, chemistry::data_doubts(formula, per_fat));
  add(weighing.doubts, chemistry::blend_notes(formula));
}

std::vector<Remark> superfat_alarms(const chemistry::EffectiveSuperfat& superfat,
                                    const std::string& batter) {
  using chemistry::highest_in_words, chemistry::lowest_in_words;
  const std::string why =
      " Mostly because of " + superfat.dominant_cause + ". To fix it: " + superfat.remedy + ".";
  if (superfat.likely_low < Share{})
    return {{Severity::danger,
             "LYE-HEAVY SOAP MAY COME OUT of " + batter + ": 19 of 20 batches come out between " +
                 lowest_in_words(superfat.likely_low) + " and " +
                 highest_in_words(superfat.likely_high) + " superfat, at worst " +
                 lowest_in_words(superfat.low) + "; below zero lye is left over and burns." + why}};
  if (superfat.low < Share{})
    return {{Severity::caution, "Lye-heavy only if everything is off at once, in " + batter +
                                    ": the superfat likely comes out between " +
                                    lowest_in_words(superfat.likely_low) + " and " +
                                    highest_in_words(superfat.likely_high) + ", at worst " +
                                    lowest_in_words(superfat.low) + ", below zero." + why}};
  return {};
}

}  // namespace brimwright::planning
