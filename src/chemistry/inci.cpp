#include "chemistry/inci.h"

#include "chemistry/inci_data.h"
#include "chemistry/lye_need.h"
#include "units/share_of.h"

#include <algorithm>

namespace brimwright::chemistry {
namespace {

using Amounts = std::vector<InciAmount>;

/// Under its INCI name, or, where a maker's own fat has none, under the maker's name for it.
void put_fat(Amounts& list, const std::string& inci, const std::string& otherwise, Mass mass) {
  put(list, {inci.empty() ? otherwise : inci, mass, !inci.empty()});
}

void put_fats_as_soap(Amounts& list, const Saponified& soap) {
  const double sodium = soap.by_sodium.of_one();
  for (const auto& f : soap.fats) {
    put_fat(list, f.fat.inci_sodium_soap, f.fat.name + ", saponified by NaOH",
            f.sodium_soap + f.left * sodium);
    put_fat(list, f.fat.inci_potassium_soap, f.fat.name + ", saponified by KOH",
            f.potassium_soap + f.left * (1 - sodium));
  }
}

void put_acids_as_salts(Amounts& list, const Saponified& soap) {
  for (const auto& a : soap.acids) {
    const AcidNames& names = inci_data().acid(a.acid);
    put(list, {names.sodium_salt, a.sodium_salt});
    put(list, {names.potassium_salt, a.potassium_salt});
    put(list, {names.inci, a.left});
    put(list, {inci_data().water, a.water});
  }
}

/// A liquid's composition less its water, which is counted apart.
LabelData dry_part(LabelData label) {
  std::erase_if(label.inci, [](const InciShare& part) {
    return inci_data().usual(part.name) == inci_data().water;
  });
  return label;
}

void put_rest(Amounts& list, const Additive& additive, Mass rest) {
  const LabelData label = additive.liquid ? dry_part(additive.label) : additive.label;
  put_bought(list, label, additive.name, additive.kind, rest);
}

Amounts as_saponified(const Formula& formula, const Saponified& soap) {
  const InciData& names = inci_data();
  Amounts list;
  put_fats_as_soap(list, soap);
  put(list, {names.water, soap.water});
  put(list, {names.glycerol, soap.glycerol});
  put(list, {names.wax_alcohols, soap.wax_alcohols});
  put(list, {names.sodium_hydroxide, soap.naoh_left});
  put(list, {names.potassium_hydroxide, soap.koh_left});
  put_acids_as_salts(list, soap);
  put(list, {names.salt, soap.salt});
  for (std::size_t i = 0; i < formula.additives.size(); ++i)
    put_rest(list, formula.additives[i], soap.rest[i]);
  return list;
}

void put_acid(Amounts& list, const ContainedAcid& acid, Mass additive) {
  const AcidNames& names = inci_data().acid(acid.name);
  const Mass mass = acid.share * additive;
  put(list, {names.inci, mass * names.acid_share});
  put(list, {inci_data().water, mass * (1 - names.acid_share)});
}

void put_additive(Amounts& list, const Additive& additive, Mass mass) {
  if (additive.liquid && additive.label.says_composition()) {
    put_bought(list, additive.label, additive.name, additive.kind, mass);
    return;
  }
  if (const auto& part = additive.contains_fat)
    put_fat(list, part->fat.inci, part->fat.name, part->share * mass);
  if (additive.contains_acid && !additive.contains_acid->name.empty())
    put_acid(list, *additive.contains_acid, mass);
  if (additive.liquid) {
    put(list, {inci_data().water, additive.liquid->water * mass});
    put(list, {inci_data().salt, additive.liquid->salt * mass});
  }
  put_rest(list, additive, rest_of(additive) * mass);
}

Amounts as_charged(const Formula& formula, const Charge& charge) {
  const InciData& names = inci_data();
  Amounts list;
  for (std::size_t j = 0; j < formula.fats.size(); ++j)
    put_fat(list, formula.fats[j].fat.inci, formula.fats[j].fat.name, charge.fats[j]);
  put(list, {names.water, charge.water});
  put(list, {names.water, water_in_solutions(formula, charge.alkalis)});
  for (std::size_t k = 0; k < formula.alkalis.size(); ++k) {
    const FormulaAlkali& alkali = formula.alkalis[k];
    put(list, {alkali.alkali == Alkali::sodium_hydroxide ? names.sodium_hydroxide
                                                         : names.potassium_hydroxide,
               alkali.solution ? alkali.purity * charge.alkalis[k] : charge.alkalis[k]});
  }
  for (std::size_t i = 0; i < formula.additives.size(); ++i) {
    const Additive& additive = formula.additives[i];
    if (additive.dispersal)
      put_fat(list, additive.dispersal->oil.inci, additive.dispersal->oil.name,
              charge.extra_oils[i]);
    put_additive(list, additive, charge.additives[i]);
  }
  return list;
}

}  // namespace

void put(Amounts& list, const InciAmount& given) {
  if (!(given.mass > Mass())) return;
  InciAmount more = given;
  if (more.is_inci) more.name = inci_data().usual(more.name);
  more.key = more.is_inci ? inci_key(more.name) : more.name;
  const auto same = [&](const InciAmount& a) {
    return a.key == more.key && a.is_inci == more.is_inci;
  };
  const auto at = std::find_if(list.begin(), list.end(), same);
  if (at == list.end()) {
    list.push_back(more);
    return;
  }
  at->mass += more.mass;
  // What is in the piece for another reason too is no mere colour.
  at->is_colour = at->is_colour && more.is_colour;
}

void put_bought(Amounts& list, const LabelData& label, const std::string& name, AdditiveKind kind,
                Mass mass) {
  const bool is_colour = kind == AdditiveKind::colour;
  if (!label.says_composition()) {
    const bool is_fragrance = kind == AdditiveKind::fragrance;
    put(list, {is_fragrance ? inci_data().fragrance : name, mass, is_fragrance, is_colour});
    return;
  }
  double sum = 0;
  for (const auto& part : label.inci) sum += part.share.of_one();
  for (const auto& part : label.inci)
    put(list, {part.name, mass * (part.share.of_one() / sum), true, is_colour});
}

Amounts inci_amounts(const Formula& formula, const Charge& charge, InciConvention convention) {
  return convention == InciConvention::as_saponified
             ? as_saponified(formula, saponified(formula, charge))
             : as_charged(formula, charge);
}

}  // namespace brimwright::chemistry
