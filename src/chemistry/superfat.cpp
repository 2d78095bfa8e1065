#include "chemistry/superfat.h"

#include "chemistry/alkali_data.h"
#include "chemistry/lye_need.h"
#include "units/printing.h"
#include "units/rounded_text.h"
#include "units/share_of.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <functional>

namespace brimwright::chemistry {
namespace {

struct Weighed {
  std::vector<WeighedFat> fats;
  std::vector<WeighedAlkali> alkalis;
  std::vector<WeighedAcid> acids;
  std::vector<WeighedBlend> blends;
};

/// 1 - (alkali left after the acids) / (alkali the fats could take), in KOH equivalents.
Share superfat_of(const Weighed& weighed) {
  const double koh_molar_mass = molar_mass_g_per_mol(Alkali::potassium_hydroxide);
  Mass wanted, given;
  for (const auto& fat : weighed.fats)
    wanted += alkali_for(Alkali::potassium_hydroxide, fat.mass, fat.saponification.typical);
  for (const auto& alkali : weighed.alkalis)
    given += alkali.purity * alkali.mass * (koh_molar_mass / molar_mass_g_per_mol(alkali.alkali));
  for (const auto& acid : weighed.acids) given -= acid.mass * acid.koh_g_per_g;
  assert(wanted > Mass());
  return Share::of_one(1 - given / wanted);
}

/// One thing that may be off, in its own units of doubt: `move` puts it anywhere from the end that
/// lowers the superfat most (-1) to the one that raises it most (+1).
struct Uncertainty {
  std::string cause, remedy;
  bool of_a_scale;
  double standard_uncertainty;  // in those units
  std::function<void(Weighed&, double)> move;
};

/// Of a rectangular distribution from -1 to 1 (JCGM 100:2008, 4.3.7).
const double rectangular = 1 / std::sqrt(3.0);
/// Of a normal distribution, 95 % lie within so many standard deviations.
constexpr double coverage = 1.96;

/// Exact at both ends: std::lerp promises it.
double between(double at_minus_one, double at_plus_one, double where) {
  return std::lerp(at_minus_one, at_plus_one, (where + 1) / 2);
}

Uncertainty saponification_uncertainty(const WeighedFat& fat, std::size_t j) {
  const auto shown = [](SaponificationValue v) { return trimmed(v.mg_koh_per_g(), 1); };
  return {"the range of the saponification value of " + fat.name + " (" +
              shown(fat.saponification.low) + " to " + shown(fat.saponification.high) +
              " mg KOH/g)",
          fat.is_slow_wax
              ? "take less of that wax, or plan a higher superfat"
              : "ask the supplier for this lot's saponification value, or plan a higher superfat",
          false, rectangular, [j](Weighed& w, double where) {
            auto& sv = w.fats[j].saponification;
            sv.typical = SaponificationValue::mg_koh_per_g(
                between(sv.low.mg_koh_per_g(), sv.high.mg_koh_per_g(), where));
          }};
}

/// "NaOH", or "the NaOH solution".
std::string called(const WeighedAlkali& alkali) {
  const std::string formula = formula_of(alkali.alkali);
  return alkali.is_solution ? "the " + formula + " solution" : formula;
}

Uncertainty purity_uncertainty(const WeighedAlkali& alkali, std::size_t k) {
  return {(alkali.is_solution ? "the strength of " : "the purity of ") + called(alkali) + " (" +
              trimmed(alkali.purity_low.in_percent(), 2) + " to " +
              trimmed(alkali.purity_high.in_percent(), 2) + " %)",
          alkali.is_solution
              ? "find the solution's strength more closely (titrate it), keep it closed, or plan a "
                "higher superfat"
              : "ask the supplier for this lot's purity, or plan a higher superfat",
          false, rectangular, [k](Weighed& w, double where) {
            auto& a = w.alkalis[k];
            a.purity = Share::of_one(between(a.purity_high.of_one(), a.purity_low.of_one(), where));
          }};
}

std::string cause_of_step(Mass step, const std::string& name) {
  return "the scale's step of " + trimmed(step / gram, 3) + " g for " + name;
}
constexpr auto remedy_of_step =
    "weigh it on a finer scale, make a larger batch, or plan a higher superfat";

/// More fat and more acid raise the superfat, more alkali lowers it. Half the mass is the most that
/// a weighing can be off: beyond that it is none. Several goes add up at worst, but as the root of
/// their number where each is off on its own.
template <class Item>
Uncertainty step_uncertainty(std::vector<Item> Weighed::*list, std::size_t i, const Item& item,
                             const std::string& name, bool raises_superfat) {
  return {cause_of_step(item.step, name), remedy_of_step, true,
          rectangular / std::sqrt(item.weighings),
          [list, i, raises_superfat](Weighed& w, double where) {
            auto& moved = (w.*list)[i];
            const Mass off = std::min(moved.weighings * moved.step / 2, moved.mass / 2);
            moved.mass += (raises_superfat ? where : -where) * off;
          }};
}

/// All the fats of a blend at once, as it is put on the scale once.
Uncertainty blend_uncertainty(const WeighedBlend& blend) {
  const Mass off = std::min(blend.weighings * blend.step / 2, blend.mass / 2);
  return {cause_of_step(blend.step, blend.name), remedy_of_step, true,
          rectangular / std::sqrt(blend.weighings),
          [parts = blend.parts, off](Weighed& w, double where) {
            for (std::size_t j = 0; j < parts.size(); ++j) w.fats[j].mass += where * parts[j] * off;
          }};
}

/// More lye lowers the superfat; less than none there cannot be.
Uncertainty lye_uncertainty(const LyeUncertainty& lye) {
  return {lye.cause,
          "weigh the shares on a finer scale, make a larger batch, or plan a higher superfat", true,
          rectangular, [off = std::min(lye.of_alkali.of_one(), 1.0)](Weighed& w, double where) {
            for (WeighedAlkali& alkali : w.alkalis) alkali.mass = alkali.mass * (1 - where * off);
          }};
}

std::vector<Uncertainty> uncertainties_of(const Weighed& weighed,
                                          const std::vector<LyeUncertainty>& lye) {
  std::vector<Uncertainty> uncertainties;
  for (std::size_t j = 0; j < weighed.fats.size(); ++j) {
    const WeighedFat& fat = weighed.fats[j];
    uncertainties.push_back(saponification_uncertainty(fat, j));
    uncertainties.push_back(step_uncertainty(&Weighed::fats, j, fat, fat.name, true));
  }
  for (std::size_t k = 0; k < weighed.alkalis.size(); ++k) {
    const WeighedAlkali& alkali = weighed.alkalis[k];
    uncertainties.push_back(purity_uncertainty(alkali, k));
    uncertainties.push_back(step_uncertainty(&Weighed::alkalis, k, alkali, called(alkali), false));
  }
  for (std::size_t i = 0; i < weighed.acids.size(); ++i) {
    const WeighedAcid& acid = weighed.acids[i];
    uncertainties.push_back(step_uncertainty(&Weighed::acids, i, acid, acid.name, true));
  }
  for (const WeighedBlend& blend : weighed.blends)
    uncertainties.push_back(blend_uncertainty(blend));
  for (const LyeUncertainty& share : lye) uncertainties.push_back(lye_uncertainty(share));
  return uncertainties;
}

Share with_all_moved(Weighed weighed, const std::vector<Uncertainty>& uncertainties, double where) {
  for (const Uncertainty& uncertainty : uncertainties) uncertainty.move(weighed, where);
  return superfat_of(weighed);
}

/// The superfat's standard uncertainty from this doubt alone (JCGM 100:2008, 5.1.3, note 2).
double uncertainty_from(const Uncertainty& uncertainty, const Weighed& weighed) {
  const double u = uncertainty.standard_uncertainty;
  const Share less = with_all_moved(weighed, {uncertainty}, -u);
  const Share more = with_all_moved(weighed, {uncertainty}, u);
  return (more.of_one() - less.of_one()) / 2;
}

void find_dominant_cause(EffectiveSuperfat& result, const Weighed& weighed,
                         const std::vector<Uncertainty>& uncertainties) {
  Share lowest = result.nominal;
  for (const Uncertainty& uncertainty : uncertainties) {
    const Share alone = with_all_moved(weighed, {uncertainty}, -1);
    if (alone >= lowest) continue;
    lowest = alone;
    result.dominant_cause = uncertainty.cause;
    result.remedy = uncertainty.remedy;
  }
}

/// Fills in all that rests on variances.
void find_likely_band(EffectiveSuperfat& result, const Weighed& weighed,
                      const std::vector<Uncertainty>& uncertainties) {
  double by_scales = 0, by_ranges = 0;
  for (const Uncertainty& uncertainty : uncertainties) {
    const double variance = std::pow(uncertainty_from(uncertainty, weighed), 2);
    (uncertainty.of_a_scale ? by_scales : by_ranges) += variance;
    if (variance > 0)
      result.uncertainties.push_back(
          {uncertainty.cause, uncertainty.remedy, uncertainty.of_a_scale, Share::of_one(variance)});
  }
  const double variance = by_scales + by_ranges;
  for (SuperfatUncertainty& uncertainty : result.uncertainties) {
    uncertainty.of_variance = Share::of_one(uncertainty.of_variance.of_one() / variance);
    if (uncertainty.cause == result.dominant_cause)
      result.dominant_of_variance = uncertainty.of_variance;
  }
  std::stable_sort(result.uncertainties.begin(), result.uncertainties.end(),
                   [](const auto& a, const auto& b) { return a.of_variance > b.of_variance; });
  result.likely_by_scales = Share::of_one(coverage * std::sqrt(by_scales));
  result.likely_by_ranges = Share::of_one(coverage * std::sqrt(by_ranges));
  const Share half_width = Share::of_one(coverage * std::sqrt(variance));
  const Share centre = with_all_moved(weighed, uncertainties, 0);
  result.likely_low = std::min(result.nominal, std::max(result.low, centre - half_width));
  result.likely_high = std::max(result.nominal, std::min(result.high, centre + half_width));
}

}  // namespace

EffectiveSuperfat effective_superfat(const std::vector<WeighedFat>& fats,
                                     const std::vector<WeighedAlkali>& alkalis,
                                     const std::vector<WeighedAcid>& acids,
                                     const std::vector<WeighedBlend>& blends,
                                     const std::vector<LyeUncertainty>& lye) {
  const Weighed weighed{fats, alkalis, acids, blends};
  const auto uncertainties = uncertainties_of(weighed, lye);
  EffectiveSuperfat result;
  result.nominal = superfat_of(weighed);
  result.low = with_all_moved(weighed, uncertainties, -1);
  result.high = with_all_moved(weighed, uncertainties, 1);
  find_dominant_cause(result, weighed, uncertainties);
  find_likely_band(result, weighed, uncertainties);
  return result;
}

std::string lowest_in_words(Share superfat) {
  return rounded_text(superfat.in_percent(), 1, Rounded::down) + " %";
}

std::string highest_in_words(Share superfat) {
  return rounded_text(superfat.in_percent(), 1, Rounded::up) + " %";
}

std::string likely_means() {
  return "19 batches in 20 (95 %), if every value is equally likely anywhere in its range and "
         "every "
         "weighing is off by up to half the scale's step, each on its own: root of the sum of "
         "squares as in JCGM 100:2008, within the worst case";
}

}  // namespace brimwright::chemistry
