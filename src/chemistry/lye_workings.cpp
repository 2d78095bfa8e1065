#include "chemistry/lye_workings.h"

#include "chemistry/alkali_data.h"
#include "units/printing.h"
#include "units/wording.h"

namespace brimwright::chemistry {
namespace {

std::string value_of(const SaponificationRange& range) {
  return trimmed(range.typical.mg_koh_per_g(), 2) + " mg KOH/g";
}

/// Alkali is never shown as more than it is.
std::string never_more(Mass alkali) { return in_figures(alkali, Rounded::down); }

std::string molar_mass(Alkali alkali) {
  return trimmed(molar_mass_g_per_mol(alkali), 3) + " g/mol";
}

const std::string& molar_mass_source() {
  static const std::string source =
      "molar masses: M(NaOH) " + molar_mass(Alkali::sodium_hydroxide) + ", M(KOH) " +
      molar_mass(Alkali::potassium_hydroxide) + ", from the IUPAC's abridged atomic weights";
  return source;
}

/// KOH that all fats could take, fat by fat.
std::vector<std::string> koh_of_fats(const Reactants& weighed) {
  std::vector<std::string> terms;
  for (const auto& fat : weighed.fats)
    terms.push_back(in_figures(fat.mass) + " × " +
                    trimmed(fat.saponification.typical.mg_koh_per_g(), 5) + " ÷ 1000");
  return terms;
}

std::vector<std::string> koh_of_acids(const Reactants& weighed) {
  std::vector<std::string> terms;
  for (const auto& acid : weighed.acids)
    terms.push_back(in_figures(acid.mass) + " × " + in_figures(acid.koh_g_per_g));
  return terms;
}

/// "99 % pure"; of a solution "50 % strong".
std::string how_pure(const WeighedAlkali& alkali) {
  return in_figures(alkali.purity) + (alkali.is_solution ? " strong" : " pure");
}

std::string name_of(const WeighedAlkali& alkali) {
  return formula_of(alkali.alkali) + (alkali.is_solution ? " solution" : "");
}

std::vector<std::string> pure_alkalis(const Reactants& weighed) {
  std::vector<std::string> terms;
  for (const auto& alkali : weighed.alkalis)
    terms.push_back(never_more(alkali.mass) + " × " + in_figures(alkali.purity));
  return terms;
}

std::vector<Given> fats_given(const Reactants& weighed) {
  std::vector<Given> given;
  for (const auto& fat : weighed.fats)
    given.push_back({fat.name, in_figures(fat.mass), value_of(fat.saponification)});
  for (const auto& acid : weighed.acids)
    given.push_back({acid.name, in_figures(acid.mass),
                     "takes " + in_figures(acid.koh_g_per_g) + " of its weight of KOH"});
  return given;
}

std::string range_of(const SaponificationRange& range) {
  if (range.low == range.high) return value_of(range);
  return trimmed(range.low.mg_koh_per_g(), 2) + " to " + trimmed(range.high.mg_koh_per_g(), 2) +
         " mg KOH/g";
}

/// In the formula's own way of stating it.
std::string water_sum(const Formula& formula, const Reactants& weighed, Mass all_fats) {
  const std::string pure = in_brackets(pure_alkalis(weighed));
  if (const auto* strength = std::get_if<LyeStrength>(&formula.water)) {
    const std::string c = in_figures(strength->alkali_in_lye);
    return pure + " × (1 − " + c + ") ÷ " + c;
  }
  if (const auto* ratio = std::get_if<WaterToAlkali>(&formula.water))
    return pure + " × " + in_figures(ratio->ratio);
  return in_figures(all_fats) + " × " + in_figures(std::get<WaterOfFats>(formula.water).share);
}

std::string water_formula(const WaterAmount& water) {
  if (std::holds_alternative<LyeStrength>(water))
    return "water = pure alkali × (1 − strength) ÷ strength";
  if (std::holds_alternative<WaterToAlkali>(water)) return "water = pure alkali × water to alkali";
  return "water = fats × water as a share of them";
}

Given water_asked(const Formula& formula) {
  if (const auto* strength = std::get_if<LyeStrength>(&formula.water))
    return {"lye strength", in_figures(strength->alkali_in_lye), formula.name};
  if (const auto* ratio = std::get_if<WaterToAlkali>(&formula.water))
    return {"water to alkali", in_figures(ratio->ratio) + " : 1", formula.name};
  return {"water as a share of the fats", in_figures(std::get<WaterOfFats>(formula.water).share),
          formula.name};
}

}  // namespace

std::vector<std::string> value_sources(const Formula& formula) {
  std::vector<std::string> sources;
  for (const auto& fat : formula.fats) {
    const std::string values = fat.fat.name + ": " + range_of(fat.saponification) + ", ";
    sources.push_back(values + (fat.from_supplier ? "your lot's" : fat.fat.saponification_source));
  }
  return sources;
}

Working alkali_working(const Formula& formula, std::size_t which, const Reactants& weighed) {
  const FormulaAlkali& alkali = formula.alkalis[which];
  const std::string m = molar_mass(alkali.alkali);
  const std::string m_koh = molar_mass(Alkali::potassium_hydroxide);
  Working working;
  working.formula =
      "alkali = (fats × saponification value (mg KOH/g) ÷ 1000 × (1 − superfat) + what acids take) "
      "× what it saponifies × M(alkali) ÷ M(KOH) ÷ " +
      std::string(alkali.solution ? "strength of the solution" : "purity");
  working.with = fats_given(weighed);
  working.with.push_back({"planned superfat", in_figures(formula.superfat), formula.name});
  working.with.push_back({"what it saponifies", in_figures(alkali.share), formula.name});
  if (alkali.solution)
    working.with.push_back(
        {"strength of the solution", in_figures(alkali.purity), alkali.solution->name});
  else
    working.with.push_back({"purity", in_figures(alkali.purity), formula.name});
  std::vector<std::string> koh = {in_brackets(koh_of_fats(weighed)) + " × (1 − " +
                                  in_figures(formula.superfat) + ")"};
  for (const std::string& acid : koh_of_acids(weighed)) koh.push_back(acid);
  working.sum = in_brackets(koh) + " × " + in_figures(alkali.share) + " × " + m + " ÷ " + m_koh +
                " ÷ " + in_figures(alkali.purity);
  working.sources = value_sources(formula);
  working.sources.push_back(molar_mass_source());
  return working;
}

Working water_working(const Formula& formula, const Reactants& weighed, Mass all_fats,
                      Mass in_liquids) {
  Working working;
  working.formula = water_formula(formula.water);
  working.with = {water_asked(formula)};
  for (const auto& alkali : weighed.alkalis)
    working.with.push_back({name_of(alkali), never_more(alkali.mass), how_pure(alkali)});
  working.sum = water_sum(formula, weighed, all_fats);
  if (in_liquids > Mass{}) {
    working.formula += " − water in liquids that stand in for it";
    working.with.push_back({"water in liquids", in_figures(in_liquids)});
    working.sum += " − " + in_figures(in_liquids);
  }
  for (const auto& alkali : weighed.alkalis) {
    if (!alkali.is_solution) continue;
    working.formula += " − water in the " + name_of(alkali);
    working.sum += " − " + never_more(alkali.mass) + " × (1 − " + in_figures(alkali.purity) + ")";
  }
  return working;
}

Working superfat_working(const Formula& formula, const Reactants& weighed,
                         const EffectiveSuperfat& superfat) {
  Working working;
  working.formula =
      "superfat as weighed = 1 − (alkali weighed × purity × M(KOH) ÷ M(alkali) − what acids take) "
      "÷ KOH that the weighed fats could take (fats × saponification value (mg KOH/g) ÷ 1000)";
  working.with = fats_given(weighed);
  std::vector<std::string> given;
  for (const auto& alkali : weighed.alkalis) {
    working.with.push_back({name_of(alkali), never_more(alkali.mass), how_pure(alkali)});
    given.push_back(never_more(alkali.mass) + " × " + in_figures(alkali.purity) + " × " +
                    molar_mass(Alkali::potassium_hydroxide) + " ÷ " + molar_mass(alkali.alkali));
  }
  std::string left = added(given);
  for (const std::string& acid : koh_of_acids(weighed)) left += " − " + acid;
  working.sum = "1 − (" + left + ") ÷ " + in_brackets(koh_of_fats(weighed));
  working.with.push_back({"planned superfat", in_figures(formula.superfat), formula.name});
  working.with.push_back(
      {"lowest", in_figures(superfat.low), "if every value is at the wrong end of its range"});
  working.with.push_back({"highest", in_figures(superfat.high)});
  working.with.push_back(
      {"likely", in_figures(superfat.likely_low) + " to " + in_figures(superfat.likely_high),
       likely_means()});
  constexpr std::size_t told = 3;  // the others are smaller still
  for (std::size_t i = 0; i < superfat.uncertainties.size() && i < told; ++i)
    working.with.push_back({"uncertain: " + superfat.uncertainties[i].cause,
                            in_percent(superfat.uncertainties[i].of_variance, 0),
                            "of the variance"});
  working.sources = value_sources(formula);
  working.sources.push_back(molar_mass_source());
  return working;
}

std::vector<Working> strength_workings(const Reactants& weighed, Mass all_water, Mass all_fats) {
  const std::string pure = in_brackets(pure_alkalis(weighed));
  std::vector<Given> with = {{"all water", in_figures(all_water), "that in liquids and acids too"}};
  for (const auto& alkali : weighed.alkalis)
    with.push_back({name_of(alkali), never_more(alkali.mass), how_pure(alkali)});
  Mass pure_mass;
  for (const auto& alkali : weighed.alkalis) pure_mass += alkali.mass * alkali.purity.of_one();
  std::vector<Given> with_fats = with;
  with_fats.push_back({"fats", in_figures(all_fats)});
  return {{.of = "lye_strength_percent",
           .formula = "lye strength = pure alkali ÷ (pure alkali + all water)",
           .with = with,
           .sum = pure + " ÷ (" + pure + " + " + in_figures(all_water) + ")",
           .comes_to = in_figures(Share::of_one(pure_mass / (pure_mass + all_water)))},
          {.of = "water_to_pure_alkali",
           .formula = "water to alkali = all water ÷ pure alkali",
           .with = with,
           .sum = in_figures(all_water) + " ÷ " + pure,
           .comes_to = in_figures(all_water / pure_mass)},
          {.of = "water_percent_of_fats",
           .formula = "water as a share of the fats = all water ÷ fats",
           .with = with_fats,
           .sum = in_figures(all_water) + " ÷ " + in_figures(all_fats),
           .comes_to = in_figures(Share::of_one(all_water / all_fats))}};
}

}  // namespace brimwright::chemistry
