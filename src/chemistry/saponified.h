#pragma once

#include "chemistry/formula.h"
#include "units/quantity.h"
#include "units/share.h"

#include <string>
#include <vector>

namespace brimwright::chemistry {

/// A batter as it is put together, by weight. Orders as in `Formula`; `extra_oils` and `additives`
/// have one entry for each additive.
struct Charge {
  std::vector<Mass> fats, extra_oils, alkalis, additives;
  Mass water;

  Mass total() const;
};

/// What became of one fat, wherever it came in.
struct FatOutcome {
  Fat fat;
  Mass charged;
  Mass sodium_soap, potassium_soap;
  Mass left;  // unsaponified: the superfat
};

/// What is in an additive beside its named fat and acid, and beside a liquid's water and salt.
Share rest_of(const Additive& additive);

/// What became of one acid. `water` is what was in the acid as bought.
struct AcidOutcome {
  std::string acid;  // as in data/neutralisation.json
  Mass charged, water;
  Mass sodium_salt, potassium_salt;
  Mass left;
};

/// A batter after its reactions are done, before any water has dried out.
struct Saponified {
  std::vector<FatOutcome> fats;
  std::vector<AcidOutcome> acids;
  Mass glycerol;
  Mass wax_alcohols;
  Mass water;  // of the lye and of liquids, formed, and what is impure in the alkali
  Mass salt;   // of liquids
  Mass naoh_left, koh_left;
  /// Of each additive: what is neither its named fat nor its acid, nor a liquid's water and salt.
  std::vector<Mass> rest;
  Share saponified;  // of all fat
  Share by_sodium;   // of what the alkalis do, by equivalents

  Mass total() const;
};

/// Fats + alkali -> soap + glycerol (triglycerides), + water (free fatty acids) or + alcohols (wax
/// esters); acids + alkali -> salt + water; what is left of the alkali saponifies every fat to the
/// same share, NaOH and KOH alike. Mass is kept: total() is charge.total().
///
/// By the typical saponification values, each fat taken as all ester or all acid. Wax: acid and
/// alcohol taken to weigh the same (jojoba's are nearly alike, from memory); a slow wax and what it
/// took of the alkali stay together as its "soap", as nobody knows how much became one. What is
/// impure in an alkali is counted as water, which it mostly is in KOH (from memory). Expects a
/// charge of `formula`, in its orders.
Saponified saponified(const Formula& formula, const Charge& charge);

}  // namespace brimwright::chemistry
