#pragma once

#include "chemistry/alkali.h"
#include "chemistry/crystallisation.h"
#include "chemistry/fat.h"
#include "chemistry/formula.h"
#include "chemistry/heat_findings.h"
#include "chemistry/lye.h"
#include "chemistry/lye_enthalpy.h"
#include "chemistry/salts.h"
#include "chemistry/superfat.h"

#include <string>
#include <vector>

// Formulas for the tests: a sound one as text, to be spoilt in one place, and any sound one at
// random.

namespace brimwright::chemistry::test {

/// A sound formula that uses every key.
std::string sound_formula();
/// `text` with its one `from` turned into `to`; a test whose `from` is not there fails.
std::string with(const std::string& text, const std::string& from, const std::string& to);
/// The sound formula with `entry` as its only one of `list` ("additives", "liquids", "fragrances",
/// "colours").
std::string with_only(const std::string& list, const std::string& entry);
Formula read(const std::string& text);

/// Olive alone at 190 mg/g, NaOH of 100 %, water 2 : 1, no superfat, nothing added, poured at 40
/// degC.
Formula plain_olive();
/// A random formula with everything in it: supplier's values, both alkalis, the three ways of
/// water, additives by each kind of rate with fat, acid and dispersing oil. For use inside
/// rc::prop.
Formula any_formula();

/// All that takes part in the saponification, weighed on scales of one step.
struct Weighing {
  std::vector<WeighedFat> fats;
  std::vector<WeighedAlkali> alkalis;
  std::vector<WeighedAcid> acids;
  EffectiveSuperfat superfat() const { return effective_superfat(fats, alkalis, acids); }
};
/// `formula` made from `all_fats` of fats, nothing rounded.
Weighing weighing_of(const Formula& formula, Mass all_fats, Mass step);

}  // namespace brimwright::chemistry::test
