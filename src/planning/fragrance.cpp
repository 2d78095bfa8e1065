#include "planning/fragrance.h"

#include "planning/scales.h"
#include "units/printing.h"
#include "units/rounding.h"

#include <algorithm>

namespace brimwright::planning {
namespace {

using chemistry::Additive;
using chemistry::AdditiveKind;

/// One batter of the run, by the name a maker knows it.
struct Part {
  std::string name;
  const chemistry::Formula& formula;
  const BatterTally& tally;

  /// Cured soap for each gram of batter, where the cure is known.
  std::optional<double> cured_of_batter() const {
    if (!tally.cure) return std::nullopt;
    return tally.cure->cured / tally.mass_each;
  }
};

std::vector<Part> parts_of(const Run& run, const Plan& plan) {
  std::vector<Part> parts{{plan.pipe ? "Base" : "Batter", run.pour.formula, plan.pour.batter}};
  if (plan.pipe) parts.push_back({"Topping", run.pipe->formula, plan.pipe->batter});
  return parts;
}

std::string in_percent(Share share) { return trimmed(share.in_percent(), 2) + " %"; }

/// Of what is weighed for the part, the additive's share.
Share share_of_batter(const Part& part, std::size_t additive) {
  const auto& weighing = part.tally.weighing;
  for (const auto& ingredient : weighing.ingredients)
    if (ingredient.role == Role::additive && ingredient.index == additive)
      return Share::of_one(ingredient.weighed / weighing.batter);
  return {};
}

void caution_on_soap_limit(const Part& part, const Additive& additive, Share of_batter,
                           std::vector<Remark>& cautions) {
  if (!additive.limit_of_finished_soap) return;
  const Share most = *additive.limit_of_finished_soap;
  const auto cured = part.cured_of_batter();
  if (!cured) {
    cautions.push_back(
        {Severity::caution, part.name + ": the limit of " + additive.name +
                                " is on the finished soap, whose weight is not known; give "
                                "\"water_lost_in_cure\" or \"drying\" in the formula."});
    return;
  }
  const Share used = Share::of_one(of_batter.of_one() / *cured);
  if (used.of_one() <= most.of_one() * (1 + 1e-9)) return;
  cautions.push_back({Severity::caution, part.name + ": " + additive.name + " makes up " +
                                             in_percent(used) +
                                             " of the finished soap; its supplier allows at most " +
                                             in_percent(most) + " of it."});
}

bool has_limit(const Additive& additive) {
  return additive.limit || additive.limit_of_finished_soap;
}

/// A limit as a share of the part's batter, whatever mass the document names; spoons by the bulk
/// density, which read_formula requires.
std::optional<Share> limit_on_batter(const Part& part, const Additive& additive) {
  if (const auto& most = additive.limit_of_finished_soap) {
    const auto cured = part.cured_of_batter();
    return cured ? std::optional(*cured * *most) : std::nullopt;
  }
  if (!additive.limit) return std::nullopt;
  const auto& amount = additive.limit->amount;
  const auto* share = std::get_if<Share>(&amount);
  const Share most =
      share ? *share
            : Share::of_one((std::get<SpecificVolume>(amount) * *additive.bulk_density).base());
  if (additive.limit->of == RateBasis::batter) return most;
  return part.tally.weighing.fats / part.tally.weighing.batter * most;
}

void caution_on_bottle(const Part& part, const Bottle& bottle, Share of_batter,
                       std::vector<Remark>& remarks) {
  for (const Additive& additive : part.formula.additives) {
    if (additive.name != bottle.name) continue;
    const auto most = limit_on_batter(part, additive);
    if (!most || of_batter.of_one() <= most->of_one() * (1 + 1e-9)) continue;
    remarks.push_back({Severity::caution, part.name + ": the bottle would make " + bottle.name +
                                              " " + in_percent(of_batter) +
                                              " of the batter, above the " + in_percent(*most) +
                                              " that its document allows here. Use less of it."});
  }
}

[[noreturn]] void refuse_halves(const Bottle& bottle, const std::vector<Part>& parts,
                                const Place& where) {
  std::string makes;
  for (const Part& part : parts)
    makes += (makes.empty() ? "" : " and ") +
             in_percent(Share::of_one(bottle.holds / 2 / part.tally.weighing.batter)) + " of the " +
             (part.name == "Base" ? "base" : "topping");
  throw UserError(where, "half of " + bottle.name + " in each makes " + makes,
                  "say \"by rate\": both parts then smell alike, and a limit that one of them "
                  "breaks is told");
}

}  // namespace

namespace {

/// One batter of a batch that is scented by itself.
struct Scented {
  Part part;
  std::int64_t count;  // of these in the batch
};

std::vector<Scented> scented_in(const Run& run, const Plan& plan, const Batch& batch) {
  std::vector<Scented> all{{{plan.pipe ? "Base" : "Batter", run.pour.formula, batch.pour.batter}, 1}};
  const std::int64_t goes = run.batch.whippings;
  for (const Whipping& whipping : batch.whippings)
    all.push_back({{goes == 1 ? "Topping"
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
    caution_on_bottle(part, bottle, of_batter, tally.remarks);
  }
  return tally;
}

/// Base and topping of the whole run.
BottleTally bottle_of_all(const Run& run, const Plan& plan, const Bottle& bottle) {
  BottleTally sum{bottle.name, bottle.holds, {}, {}};
  for (const Part& part : parts_of(run, plan)) sum.parts.push_back({part.name, {}, {}, {}, 1});
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
  const auto parts = parts_of(run, plan);
  for (std::size_t i = 0; i < parts.size(); ++i)
    sum.parts[i].of_batter =
        Share::of_one(sum.parts[i].gives / parts[i].tally.weighing.batter);
  return sum;
}

}  // namespace

void share_bottle(Plan& plan, const Run& run, const Bottle& bottle, const Place& where) {
  const auto parts = parts_of(run, plan);
  if (bottle.way == SharingWay::half_in_each && parts.size() > 1)
    refuse_halves(bottle, parts, where);
  Mass all_batter;
  for (const Part& part : parts) all_batter += part.tally.weighing.batter;
  for (Batch& batch : plan.batches)
    batch.bottles.push_back(bottle_in(batch, run, plan, bottle, all_batter));
  plan.bottles.push_back(bottle_of_all(run, plan, bottle));
}

std::vector<Remark> limit_cautions(const Run& run, const Plan& plan) {
  std::vector<Remark> cautions;
  for (const Part& part : parts_of(run, plan))
    for (std::size_t i = 0; i < part.formula.additives.size(); ++i) {
      const Additive& additive = part.formula.additives[i];
      caution_on_soap_limit(part, additive, share_of_batter(part, i), cautions);
      if (additive.kind == AdditiveKind::fragrance && !has_limit(additive))
        cautions.push_back({Severity::caution,
                            part.name + ": no limit is given for " + additive.name +
                                ". Take it from the supplier's IFRA certificate, category 9 (soap "
                                "is rinsed off), and put it in as \"limit\"."});
    }
  return cautions;
}

}  // namespace brimwright::planning
