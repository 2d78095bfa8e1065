#include "planning/fragrance.h"

#include "planning/additive_limits.h"
#include "planning/batters.h"
#include "planning/scales.h"
#include "units/printing.h"
#include "units/rounding.h"
#include "units/share_of.h"
#include "units/weight_text.h"
#include "units/wording.h"

#include <algorithm>
#include <functional>

namespace brimwright::planning {
namespace {

using chemistry::Additive;
using chemistry::AdditiveKind;

/// One batter that is scented, by the name a maker knows it.
struct Part {
  std::string name;
  const chemistry::Formula& formula;
  const BatterTally& tally;

  /// Cured soap for each gram of batter, where the cure is known.
  std::optional<double> cured_of_batter() const {
    if (!tally.cure) return std::nullopt;
    return tally.cure->cured / tally.cure->fresh;
  }
};

/// `used` in the fewest digits, two at least, by which it is seen to be above `most`.
std::string shown_above(Share used, Share most) {
  for (int decimals = 2; decimals < 6; ++decimals)
    if (std::string text = trimmed(used.in_percent(), decimals);
        text != trimmed(most.in_percent(), decimals))
      return text + " %";
  return in_percent(used, 6);
}

/// Fats of each batter of that formula that is made by itself, each mass once, the largest first.
std::vector<Mass> fats_of_each(const Plan& plan, bool is_topping) {
  std::vector<Mass> fats;
  for (const Batch& batch : plan.batches) {
    if (!is_topping) fats.push_back(batch.pour.batter.weighing.fats);
    if (is_topping)
      for (const Whipping& whipping : batch.whippings)
        fats.push_back(whipping.pipe.batter.weighing.fats);
  }
  std::sort(fats.begin(), fats.end(), std::greater<>());
  fats.erase(std::unique(fats.begin(), fats.end()), fats.end());
  return fats;
}

/// "at most 41.2 g with 1404 g of fats (\"rate\": \"2.93 % of fats\")"
std::string most_in_words(const chemistry::Formula& formula, std::size_t additive,
                          const std::vector<Mass>& fats_of_each, const Scales& scales) {
  const auto rate = allowed_rate(formula, additive);
  if (!rate) return "leave it out";
  std::string text;
  for (const Mass fats : fats_of_each) {
    const Mass most = rate->per_fat * fats;
    const Mass step = on_fine_scale(scales, most).step;
    const Mass weighed = rounded_down(most, step);
    const std::string grams =
        weighed > Mass{} ? on_scale(weighed, step, Rounded::down)
                         : "less than the " + on_scale(step, step) + " that your scale shows";
    text += (text.empty() ? "at most " : ", ") + grams + " with " + trimmed(fats / gram, 1) +
            " g of fats";
  }
  return text + " (\"rate\": \"" + rate->text + "\")";
}

void caution_on_limit(const PlannedBatter& part, std::size_t i,
                      const std::vector<Mass>& fats_of_each, const Scales& scales,
                      std::vector<Remark>& cautions) {
  const Additive& additive = part.formula.additives[i];
  const std::string mass = limited_mass(additive);
  const auto used = used_of_limited(part.formula, part.tally.per_fat, i);
  if (!used) {
    cautions.push_back(
        {Severity::caution, part.name + ": the limit of " + additive.name +
                                " is on the finished soap, whose weight is not known; give "
                                "\"water_lost_in_cure\" or \"drying\" in the formula."});
    return;
  }
  const Share most = allowed_of_limited(additive);
  if (!is_above(*used, most)) return;
  cautions.push_back(
      {Severity::caution,
       part.name + ": " + additive.name + " makes up " + shown_above(*used, most) + " of the " +
           mass + "; its supplier allows at most " + trimmed(most.in_percent(), 4) +
           " % of it: " + most_in_words(part.formula, i, fats_of_each, scales) + "."});
}

bool has_limit(const Additive& additive) {
  return additive.limit || additive.limit_of_finished_soap;
}

/// A limit as a share of the part's batter, whatever mass the document names.
std::optional<Share> limit_on_batter(const Part& part, const Additive& additive) {
  if (!has_limit(additive)) return std::nullopt;
  const Share most = allowed_of_limited(additive);
  if (additive.limit_of_finished_soap) {
    const auto cured = part.cured_of_batter();
    return cured ? std::optional(*cured * most) : std::nullopt;
  }
  if (additive.limit->of == RateBasis::batter) return most;
  return part.tally.weighing.fats / part.tally.weighing.batter * most;
}

void caution_on_bottle(const Part& part, const Bottle& bottle, Mass step, Share of_batter,
                       std::vector<Remark>& remarks) {
  for (const Additive& additive : part.formula.additives) {
    if (additive.name != bottle.name) continue;
    const auto most = limit_on_batter(part, additive);
    if (!most || !is_above(of_batter, *most)) continue;
    const Mass grams = rounded_down(*most * part.tally.weighing.batter, step);
    remarks.push_back({Severity::caution, part.name + ": the bottle would make " + bottle.name +
                                              " " + shown_above(of_batter, *most) +
                                              " of the batter, above the " + in_percent(*most, 2) +
                                              " that its document allows here: use at most " +
                                              on_scale(grams, step, Rounded::down) + " of it."});
  }
}

[[noreturn]] void refuse_halves(const Bottle& bottle, const std::vector<PlannedBatter>& parts,
                                const Place& where) {
  std::string makes;
  for (const PlannedBatter& part : parts)
    makes += (makes.empty() ? "" : " and ") +
             in_percent(Share::of_one(bottle.holds / 2 / part.tally.weighing.batter), 2) +
             " of the " + (part.is_topping ? "topping" : "base");
  throw UserError(where, "half of " + bottle.name + " in each makes " + makes,
                  "write \"by rate\": both parts then smell alike, and a limit that one of them "
                  "breaks is reported");
}

/// One batter of a batch that is scented by itself.
struct Scented {
  Part part;
  std::int64_t count;  // of these in the batch
};

std::vector<Scented> scented_in(const Run& run, const Plan& plan, const Batch& batch) {
  std::vector<Scented> all{
      {{plan.pipe ? "Base" : "Batter", run.pour.formula, batch.pour.batter}, 1}};
  const std::int64_t whippings = run.batch.whippings;
  for (const Whipping& whipping : batch.whippings)
    all.push_back({{whippings == 1 ? "Topping"
                                   : "Topping, each whipping of " +
                                         std::to_string(whipping.casts * plan.pieces.per_cast),
                    run.pipe->formula, whipping.pipe.batter},
                   whipping.count});
  return all;
}

BottleTally bottle_in(const Batch& batch, const Run& run, const Plan& plan, const Bottle& bottle,
                      Mass all_batter) {
  BottleTally tally{bottle.name, bottle.holds, {}, {}};
  for (const auto& [part, count] : scented_in(run, plan, batch)) {
    const Mass batter = part.tally.weighing.batter;
    const Mass exact = batter / all_batter * bottle.holds;
    const Mass step = on_fine_scale(run.scales, exact).step;
    const Mass given = rounded_down(exact, step);
    const Share of_batter = Share::of_one(given / batter);
    tally.parts.push_back({part.name, given, step, of_batter, count});
    caution_on_bottle(part, bottle, step, of_batter, tally.remarks);
  }
  return tally;
}

/// Base and topping of the whole run.
BottleTally bottle_of_all(const Run& run, const Plan& plan, const Bottle& bottle) {
  BottleTally sum{bottle.name, bottle.holds, {}, {}};
  for (const PlannedBatter& part : batters_of(run, plan))
    sum.parts.push_back({part.name, {}, {}, {}, 1});
  for (const Batch& batch : plan.batches) {
    const BottleTally& one = batch.bottles.back();
    for (std::size_t i = 0; i < one.parts.size(); ++i) {
      auto& part = sum.parts[std::min<std::size_t>(i, 1)];
      part.gives += static_cast<double>(batch.count() * one.parts[i].count) * one.parts[i].gives;
      part.step = part.step == Mass{} ? one.parts[i].step : std::min(part.step, one.parts[i].step);
    }
    for (const auto& remark : one.remarks) {
      const auto is_same = [&](const Remark& other) { return other.text == remark.text; };
      if (std::none_of(sum.remarks.begin(), sum.remarks.end(), is_same))
        sum.remarks.push_back(remark);
    }
  }
  const auto parts = batters_of(run, plan);
  for (std::size_t i = 0; i < parts.size(); ++i)
    sum.parts[i].of_batter = Share::of_one(sum.parts[i].gives / parts[i].tally.weighing.batter);
  return sum;
}

/// The batters that the run's own limits are about.
std::vector<PlannedBatter> limited(const Run& run, const Plan& plan, BaseIs base) {
  std::vector<PlannedBatter> own;
  for (const PlannedBatter& part : batters_of(run, plan))
    if (part.is_topping || base == BaseIs::its_own) own.push_back(part);
  return own;
}

}  // namespace

void share_bottle(Plan& plan, const Run& run, const Bottle& bottle, const Place& where) {
  const auto parts = batters_of(run, plan);
  if (bottle.way == SharingWay::half_in_each && parts.size() > 1)
    refuse_halves(bottle, parts, where);
  Mass all_batter;
  for (const PlannedBatter& part : parts) all_batter += part.tally.weighing.batter;
  for (Batch& batch : plan.batches)
    batch.bottles.push_back(bottle_in(batch, run, plan, bottle, all_batter));
  plan.bottles.push_back(bottle_of_all(run, plan, bottle));
}

std::vector<Remark> limit_cautions(const Run& run, const Plan& plan, BaseIs base) {
  std::vector<Remark> cautions;
  for (const PlannedBatter& part : limited(run, plan, base))
    for (std::size_t i = 0; i < part.formula.additives.size(); ++i)
      if (has_limit(part.formula.additives[i]))
        caution_on_limit(part, i, fats_of_each(plan, part.is_topping), run.scales, cautions);
  return cautions;
}

std::vector<Remark> missing_limit_cautions(const Run& run, const Plan& plan, BaseIs base) {
  std::vector<Remark> cautions;
  for (const PlannedBatter& part : limited(run, plan, base))
    for (const Additive& additive : part.formula.additives)
      if (additive.kind == AdditiveKind::fragrance && !has_limit(additive))
        cautions.push_back({Severity::caution,
                            part.name + ": no limit is given for " + additive.name +
                                ". Take it from the supplier's IFRA certificate, category 9 (soap "
                                "is rinsed off), and put it in as \"limit\"."});
  return cautions;
}

}  // namespace brimwright::planning
