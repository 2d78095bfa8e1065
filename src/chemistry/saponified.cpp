#include "chemistry/saponified.h"

#include "chemistry/alkali_data.h"
#include "chemistry/inci_data.h"
#include "chemistry/lye_need.h"
#include "units/share_of.h"

#include <algorithm>
#include <cassert>
#include <numeric>

namespace brimwright::chemistry {
namespace {

// Amounts of substance are in moles, masses over molar masses in grams.
double moles(Mass mass, double g_per_mol) { return mass / gram / g_per_mol; }
Mass mass_of(double mol, double g_per_mol) { return mol * g_per_mol * gram; }

double m_naoh() { return molar_mass_g_per_mol(Alkali::sodium_hydroxide); }
double m_koh() { return molar_mass_g_per_mol(Alkali::potassium_hydroxide); }

Mass sum_of(const std::vector<Mass>& masses) {
  return std::accumulate(masses.begin(), masses.end(), Mass());
}

struct Alkalis {
  double naoh_mol = 0, koh_mol = 0;
  Mass impurity;

  double mol() const { return naoh_mol + koh_mol; }
  double sodium() const { return naoh_mol / mol(); }
  /// Of an equivalent of these alkalis.
  Mass mass_of_sodium(double mol) const { return mass_of(mol * sodium(), m_naoh()); }
  Mass mass_of_potassium(double mol) const { return mass_of(mol * (1 - sodium()), m_koh()); }
};

Alkalis alkalis_in(const Formula& formula, const Charge& charge) {
  Alkalis all;
  for (std::size_t k = 0; k < formula.alkalis.size(); ++k) {
    const auto& alkali = formula.alkalis[k];
    const Mass pure = alkali.purity * charge.alkalis[k];
    all.impurity += charge.alkalis[k] - pure;
    if (alkali.alkali == Alkali::sodium_hydroxide)
      all.naoh_mol += moles(pure, m_naoh());
    else
      all.koh_mol += moles(pure, m_koh());
  }
  return all;
}

/// A fat as charged, and the alkali that all of it would take.
struct ChargedFat {
  Fat fat;
  Mass mass;
  double mol;
};

ChargedFat charged(const Fat& fat, SaponificationValue sv, Mass mass) {
  return {fat, mass, moles(alkali_for(Alkali::potassium_hydroxide, mass, sv), m_koh())};
}

std::vector<ChargedFat> fats_in(const Formula& formula, const Charge& charge) {
  std::vector<ChargedFat> fats;
  for (std::size_t j = 0; j < formula.fats.size(); ++j) {
    const auto& fat = formula.fats[j];
    fats.push_back(charged(fat.fat, fat.saponification.typical, charge.fats[j]));
  }
  for (std::size_t i = 0; i < formula.additives.size(); ++i) {
    const auto& additive = formula.additives[i];
    if (additive.dispersal && charge.extra_oils[i] > Mass()) {
      const Fat& oil = additive.dispersal->oil;
      fats.push_back(charged(oil, oil.saponification.typical, charge.extra_oils[i]));
    }
    if (const auto& part = additive.contains_fat)
      fats.push_back(
          charged(part->fat, part->fat.saponification.typical, part->share * charge.additives[i]));
  }
  return fats;
}

/// An acid as charged, and the alkali that all of it would take.
struct ChargedAcid {
  std::string name;
  Mass mass;
  double mol;
};

std::vector<ChargedAcid> acids_in(const Formula& formula, const Charge& charge) {
  std::vector<ChargedAcid> acids;
  for (std::size_t i = 0; i < formula.additives.size(); ++i)
    if (const auto& part = formula.additives[i].contains_acid; part && !part->name.empty()) {
      const Mass mass = part->share * charge.additives[i];
      acids.push_back({part->name, mass, moles(mass * part->koh_g_per_g, m_koh())});
    }
  return acids;
}

/// Alkali that acids without a name take up, for each additive: what they are stays unknown.
std::vector<double> taken_by_nameless(const Formula& formula, const Charge& charge) {
  std::vector<double> mol(formula.additives.size());
  for (std::size_t i = 0; i < mol.size(); ++i)
    if (const auto& part = formula.additives[i].contains_acid; part && part->name.empty())
      mol[i] = moles(charge.additives[i] * part->koh_g_per_g, m_koh());
  return mol;
}

template <class Item>
double moles_of(const std::vector<Item>& items) {
  double sum = 0;
  for (const Item& item : items) sum += item.mol;
  return sum;
}

/// What `mol` of saponifying sets free besides soap.
struct SetFree {
  Mass glycerol, water, wax_alcohols;
  Mass sum() const { return glycerol + water + wax_alcohols; }
};

SetFree set_free_by(const Fat& fat, Mass saponified, double mol) {
  if (fat.slow) return {};  // it stays listed as the wax, with the alkali that it took
  const Mass one_water = mass_of(mol, inci_data().water_g_per_mol);
  if (fat.kind == "free_fatty_acid") return {Mass(), one_water, Mass()};
  // Ester + water = acid + alcohol, the two halves of equal weight.
  if (fat.kind == "wax_ester") return {Mass(), Mass(), (saponified + one_water) / 2};
  return {mass_of(mol / 3, inci_data().glycerol_g_per_mol), Mass(), Mass()};
}

void saponify(const ChargedFat& fat, double share, const Alkalis& alkalis, Saponified& result) {
  const Mass reacted = fat.mass * share;
  const double mol = fat.mol * share;
  const SetFree free = set_free_by(fat.fat, reacted, mol);
  const Mass acyl = reacted - free.sum();  // what the soap has of the fat
  result.glycerol += free.glycerol;
  result.water += free.water;
  result.wax_alcohols += free.wax_alcohols;
  result.fats.push_back(
      {.fat = fat.fat,
       .charged = fat.mass,
       .sodium_soap = acyl * alkalis.sodium() + alkalis.mass_of_sodium(mol),
       .potassium_soap = acyl * (1 - alkalis.sodium()) + alkalis.mass_of_potassium(mol),
       .left = fat.mass - reacted});
}

void neutralise(const ChargedAcid& acid, double share, const Alkalis& alkalis, Saponified& result) {
  const Mass pure = acid.mass * inci_data().acid(acid.name).acid_share;
  const double mol = acid.mol * share;
  const Mass water_formed = mass_of(mol, inci_data().water_g_per_mol);
  const Mass anion = pure * share - water_formed;
  result.water += water_formed;
  result.acids.push_back(
      {.acid = acid.name,
       .charged = acid.mass,
       .water = acid.mass - pure,
       .sodium_salt = anion * alkalis.sodium() + alkalis.mass_of_sodium(mol),
       .potassium_salt = anion * (1 - alkalis.sodium()) + alkalis.mass_of_potassium(mol),
       .left = pure * (1 - share)});
}

/// What takes up alkali without a name stays listed as itself, with the alkali in it, less the
/// water that is formed.
void neutralise_nameless(const std::vector<double>& mol, double share, const Alkalis& alkalis,
                         Saponified& result) {
  for (std::size_t i = 0; i < mol.size(); ++i) {
    const Mass water_formed = mass_of(mol[i] * share, inci_data().water_g_per_mol);
    result.water += water_formed;
    result.rest[i] += alkalis.mass_of_sodium(mol[i] * share) +
                      alkalis.mass_of_potassium(mol[i] * share) - water_formed;
  }
}

/// Water and salt of the liquids, and what else the additives bring.
void add_unchanged(const Formula& formula, const Charge& charge, Saponified& result) {
  for (std::size_t i = 0; i < formula.additives.size(); ++i) {
    const Additive& additive = formula.additives[i];
    result.rest.push_back(rest_of(additive) * charge.additives[i]);
    if (!additive.liquid) continue;
    result.water += additive.liquid->water * charge.additives[i];
    result.salt += additive.liquid->salt * charge.additives[i];
  }
}

double share_done(double have, double need) { return need > 0 ? std::min(1.0, have / need) : 0; }

}  // namespace

Share rest_of(const Additive& additive) {
  Share named;
  if (additive.contains_fat) named = named + additive.contains_fat->share;
  if (const auto& acid = additive.contains_acid; acid && !acid->name.empty())
    named = named + acid->share;
  if (additive.liquid) named = named + additive.liquid->water + additive.liquid->salt;
  return std::max(Share(), whole - named);
}

Mass Charge::total() const {
  return sum_of(fats) + sum_of(extra_oils) + sum_of(alkalis) + sum_of(additives) + water;
}

Mass Saponified::total() const {
  Mass sum = glycerol + wax_alcohols + water + salt + naoh_left + koh_left + sum_of(rest);
  for (const auto& f : fats) sum += f.sodium_soap + f.potassium_soap + f.left;
  for (const auto& a : acids) sum += a.water + a.sodium_salt + a.potassium_salt + a.left;
  return sum;
}

Saponified saponified(const Formula& formula, const Charge& charge) {
  assert(charge.fats.size() == formula.fats.size());
  assert(charge.alkalis.size() == formula.alkalis.size());
  assert(charge.additives.size() == formula.additives.size());
  assert(charge.extra_oils.size() == formula.additives.size());
  const Alkalis alkalis = alkalis_in(formula, charge);
  const auto fats = fats_in(formula, charge);
  const auto acids = acids_in(formula, charge);

  // Acids are faster than fats: they take their alkali first.
  const auto nameless = taken_by_nameless(formula, charge);
  const double acids_mol = moles_of(acids) + std::accumulate(nameless.begin(), nameless.end(), 0.0);
  const double neutralised = share_done(alkalis.mol(), acids_mol);
  const double for_fats = alkalis.mol() - neutralised * acids_mol;
  const double saponified = share_done(for_fats, moles_of(fats));
  const double mol_left = for_fats - saponified * moles_of(fats);

  Saponified result;
  result.water = charge.water + alkalis.impurity;
  for (const auto& fat : fats) saponify(fat, saponified, alkalis, result);
  for (const auto& acid : acids) neutralise(acid, neutralised, alkalis, result);
  result.naoh_left = alkalis.mass_of_sodium(mol_left);
  result.koh_left = alkalis.mass_of_potassium(mol_left);
  add_unchanged(formula, charge, result);
  neutralise_nameless(nameless, neutralised, alkalis, result);
  result.saponified = Share::of_one(saponified);
  result.by_sodium = Share::of_one(alkalis.sodium());
  return result;
}

}  // namespace brimwright::chemistry
