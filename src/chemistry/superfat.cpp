#include "chemistry/superfat.h"

#include "units/printing.h"

#include <algorithm>
#include <cassert>
#include <functional>

namespace brimwright::chemistry {
namespace {

struct Weighed {
  std::vector<WeighedFat> fats;
  std::vector<WeighedAlkali> alkalis;
  std::vector<WeighedAcid> acids;
};

/// 1 - (alkali left after the acids) / (alkali the fats could take), in KOH equivalents.
Share superfat_of(const Weighed& weighed) {
  const double koh_molar_mass = molar_mass_g_per_mol(Alkali::potassium_hydroxide);
  Mass wanted, given;
  for (const auto& fat : weighed.fats)
    wanted += alkali_for(Alkali::potassium_hydroxide, fat.mass, fat.saponification.typical);
  for (const auto& alkali : weighed.alkalis)
    given += alkali.mass * alkali.purity.of_one() *
             (koh_molar_mass / molar_mass_g_per_mol(alkali.alkali));
  for (const auto& acid : weighed.acids) given -= acid.mass * acid.koh_g_per_g;
  assert(wanted > Mass());
  return Share::of_one(1 - given / wanted);
}

enum class End { low, high };  // of the superfat

/// One thing that may be off, and what moves it to the end that lowers or raises the superfat most.
struct Doubt {
  std::string cause, remedy;
  std::function<void(Weighed&, End)> move;
};

/// A mass as far off as rounding to the scale's step can put it. Half the mass is the most: a
/// weighing that is off by more is none.
Mass off_by_half_a_step(Mass mass, Mass step, bool upward) {
  const Mass off = std::min(step / 2, mass / 2);
  return upward ? mass + off : mass - off;
}

Doubt doubt_of_saponification(const WeighedFat& fat, std::size_t j) {
  const auto shown = [](SaponificationValue v) { return trimmed(v.mg_koh_per_g(), 1); };
  return {"the natural range of the saponification value of " + fat.name + " (" +
              shown(fat.saponification.low) + " to " + shown(fat.saponification.high) + " mg/g)",
          "ask the supplier for this lot's saponification value, or aim higher",
          [j](Weighed& w, End end) {
            auto& sv = w.fats[j].saponification;
            sv.typical = end == End::low ? sv.low : sv.high;
          }};
}

Doubt doubt_of_purity(const WeighedAlkali& alkali, std::size_t k) {
  return {"the purity of " + formula_of(alkali.alkali) + " (" +
              trimmed(alkali.purity_low.in_percent(), 2) + " to " +
              trimmed(alkali.purity_high.in_percent(), 2) + " %)",
          "ask the supplier for this lot's purity, or aim higher", [k](Weighed& w, End end) {
            auto& a = w.alkalis[k];
            a.purity = end == End::low ? a.purity_high : a.purity_low;
          }};
}

/// More fat and more acid raise the superfat, more alkali lowers it.
template <class Item>
Doubt doubt_of_step(std::vector<Item> Weighed::*list, std::size_t i, const Item& item,
                    const std::string& name, bool raises_superfat) {
  return {"the scale's step of " + trimmed(item.step / gram, 3) + " g for " + name,
          "weigh it on a finer scale, make a larger batch, or aim higher",
          [list, i, raises_superfat](Weighed& w, End end) {
            auto& moved = (w.*list)[i];
            moved.mass =
                off_by_half_a_step(moved.mass, moved.step, raises_superfat == (end == End::high));
          }};
}

std::vector<Doubt> doubts_of(const Weighed& weighed) {
  std::vector<Doubt> doubts;
  for (std::size_t j = 0; j < weighed.fats.size(); ++j) {
    const WeighedFat& fat = weighed.fats[j];
    doubts.push_back(doubt_of_saponification(fat, j));
    doubts.push_back(doubt_of_step(&Weighed::fats, j, fat, fat.name, true));
  }
  for (std::size_t k = 0; k < weighed.alkalis.size(); ++k) {
    const WeighedAlkali& alkali = weighed.alkalis[k];
    doubts.push_back(doubt_of_purity(alkali, k));
    doubts.push_back(doubt_of_step(&Weighed::alkalis, k, alkali, formula_of(alkali.alkali), false));
  }
  for (std::size_t i = 0; i < weighed.acids.size(); ++i) {
    const WeighedAcid& acid = weighed.acids[i];
    doubts.push_back(doubt_of_step(&Weighed::acids, i, acid, acid.name, true));
  }
  return doubts;
}

Share with_all_moved(Weighed weighed, const std::vector<Doubt>& doubts, End end) {
  for (const Doubt& doubt : doubts) doubt.move(weighed, end);
  return superfat_of(weighed);
}

}  // namespace

EffectiveSuperfat effective_superfat(const std::vector<WeighedFat>& fats,
                                     const std::vector<WeighedAlkali>& alkalis,
                                     const std::vector<WeighedAcid>& acids) {
  const Weighed weighed{fats, alkalis, acids};
  const auto doubts = doubts_of(weighed);
  EffectiveSuperfat result{.nominal = superfat_of(weighed),
                           .low = with_all_moved(weighed, doubts, End::low),
                           .high = with_all_moved(weighed, doubts, End::high),
                           .dominant_cause = "",
                           .remedy = ""};
  Share lowest = result.nominal;
  for (const Doubt& doubt : doubts) {
    const Share alone = with_all_moved(weighed, {doubt}, End::low);
    if (alone >= lowest) continue;
    lowest = alone;
    result.dominant_cause = doubt.cause;
    result.remedy = doubt.remedy;
  }
  return result;
}

}  // namespace brimwright::chemistry
