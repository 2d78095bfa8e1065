#include "chemistry/supplied_values.h"

#include "chemistry/alkali_data.h"
#include "chemistry/fats.h"
#include "chemistry/known_ranges.h"
#include "chemistry/proportions.h"
#include "chemistry/superfat.h"
#include "chemistry/theoretical_value.h"
#include "units/complaint_facts.h"
#include "units/printing.h"
#include "units/wording.h"

#include <algorithm>
#include <cmath>

namespace brimwright::chemistry {
namespace {

/// All of one fat that comes into the formula at one place: among its fats, in an additive, or as
/// oil to disperse a colour.
struct Part {
  const Fat* fat = nullptr;
  SaponificationRange reckoned;  // widened already where it is contradicted
  double grams = 0;              // for a gram of the formula's fats
  bool is_stated = false;        // by the maker or the supplier, not by the shipped table
  bool confirmed = false;
  Place where{};
  std::vector<KnownRange> known{};  // of stated ones
  std::optional<KnownRange> below{};

  SaponificationValue typical() const { return reckoned.typical; }
  /// The alkali that it takes, in mg of KOH.
  double need() const { return grams * typical().mg_koh_per_g(); }
  double need_as_known() const { return below ? grams * below->high.mg_koh_per_g() : need(); }
};

void hold(Part& part, std::vector<KnownRange> known) {
  part.known = std::move(known);
  part.below = known_below(part.typical(), part.known);
}

/// With the value that the fat has in its table.
Part part_of(const Fat& fat, double grams) {
  Part part{.fat = &fat, .reckoned = fat.saponification, .grams = grams};
  if (!fat.is_users_own) return part;
  part.is_stated = true;
  part.confirmed = fat.confirmed;
  part.where = fat.saponification_at;
  hold(part, known_ranges(fat));
  return part;
}

Part part_of(const FormulaFat& fat, double grams) {
  Part part = part_of(fat.fat, grams);
  if (!fat.from_supplier) return part;
  part.reckoned = fat.saponification;
  part.is_stated = true;
  part.confirmed = fat.confirmed;
  part.where = fat.stated_at;
  hold(part, known_ranges_of_lot(fat.fat));
  return part;
}

std::vector<Part> parts_of(const Formula& formula) {
  const Proportions per_fat = proportions(formula);
  std::vector<Part> parts;
  const auto add = [&](const Fat& fat, double grams) {
    if (grams > 0) parts.push_back(part_of(fat, grams));
  };
  for (std::size_t j = 0; j < formula.fats.size(); ++j)
    parts.push_back(part_of(formula.fats[j], per_fat.fats[j]));
  for (std::size_t i = 0; i < formula.additives.size(); ++i) {
    const Additive& additive = formula.additives[i];
    if (additive.dispersal) add(additive.dispersal->oil, per_fat.extra_oil[i]);
    if (const auto& inside = additive.contains_fat)
      add(inside->fat, per_fat.additives[i] * inside->share.of_one());
  }
  return parts;
}

/// The formula's superfat with its own lye if the parts that `doubted` picks take no more alkali
/// than is known of them.
template <class Doubted>
Share superfat_as_known(const Formula& formula, const std::vector<Part>& parts,
                        const Doubted& doubted) {
  double planned = 0, as_known = 0;
  for (const Part& part : parts) {
    planned += part.need();
    as_known += doubted(part) ? part.need_as_known() : part.need();
  }
  return Share::of_one(1 - (1 - formula.superfat.of_one()) * planned / as_known);
}

bool is_unconfirmed(const Part& part) { return part.below && !part.confirmed; }
bool is_above_all_known(const Part& part) { return part.below.has_value(); }

std::string in_mg_per_g(SaponificationValue value) {
  return trimmed(value.mg_koh_per_g(), 1) + " mg KOH/g";
}

std::optional<Remark> caution_on(const Part& part) {
  if (!part.is_stated) return std::nullopt;
  for (const KnownRange& range : part.known) {
    if (range.by_make_up || !range.contradicts(part.typical())) continue;
    const bool above = part.typical() > range.high;
    return Remark{Severity::caution, part.fat->name + ": the saponification value of " +
                                         in_mg_per_g(part.typical()) + " lies " +
                                         (above ? "above" : "below") + " the " + range.in_words() +
                                         ". The range shown for the superfat covers both. Check it "
                                         "in the supplier's document before weighing alkali."};
  }
  return profile_disagreement(*part.fat, {part.typical(), part.typical(), part.typical()});
}

Remark danger_of(const Part& part, const Formula& formula, Share superfat) {
  return {Severity::danger,
          "LYE-HEAVY IS POSSIBLE in " + formula.name + ": the saponification value of " +
              in_mg_per_g(part.typical()) + " for " + part.fat->name +
              " was confirmed, but lies above the " + part.below->in_words() +
              ". If it is a slip, the superfat is " + lowest_in_words(superfat) +
              " or less and the soap burns. Read the supplier's document again before weighing "
              "alkali."};
}

std::string joined(const std::vector<std::string>& items) {
  std::string all;
  for (const std::string& item : items) all += (all.empty() ? "" : ", ") + item;
  return all;
}

/// Saponification values and purities that stand in the formula without a range.
std::vector<std::string> exact_ones(const Formula& formula) {
  std::vector<std::string> exact;
  for (const FormulaFat& fat : formula.fats)
    if (fat.from_supplier ? fat.taken_as_exact : fat.fat.taken_as_exact)
      exact.push_back("the saponification value of " + fat.fat.name + " (" +
                      in_mg_per_g(fat.saponification.typical) + ")");
  for (const FormulaAlkali& alkali : formula.alkalis)
    if (alkali.taken_as_exact)
      exact.push_back((alkali.solution ? "the strength of " + alkali.solution->name
                                       : "the purity of " + formula_of(alkali.alkali)) +
                      " (" + in_percent(alkali.purity, 2) + ")");
  return exact;
}

}  // namespace

void refuse_lye_heavy_values(const Formula& formula) {
  const auto parts = parts_of(formula);
  const Share superfat = superfat_as_known(formula, parts, is_unconfirmed);
  if (superfat >= Share()) return;
  const auto too_much = [](const Part& part) {
    return is_unconfirmed(part) ? part.need() - part.need_as_known() : 0;
  };
  const Part& worst =
      *std::max_element(parts.begin(), parts.end(),
                        [&](const Part& a, const Part& b) { return too_much(a) < too_much(b); });
  // With no aim of superfat at all, a hair of binary fractions is none.
  if (!(too_much(worst) > 0)) return;
  throw UserErrorWithFacts(
      worst.where,
      in_mg_per_g(worst.typical()) + " for " + worst.fat->name + " lies above the " +
          worst.below->in_words() + ": even at " + in_mg_per_g(worst.below->high) +
          " the superfat would be " + lowest_in_words(superfat),
      "read the supplier's document again (another fat's line, another unit?); if the "
      "value is right, put \"confirmed\": true beside it",
      {.is_lye_heavy = true});
}

std::vector<Remark> supplied_value_cautions(const Formula& formula) {
  const auto parts = parts_of(formula);
  const Share superfat = superfat_as_known(formula, parts, is_above_all_known);
  std::vector<Remark> dangers, cautions;
  for (const Part& part : parts) {
    if (part.below && part.confirmed && superfat < Share()) {
      dangers.push_back(danger_of(part, formula, superfat));
    } else if (const auto caution = caution_on(part)) {
      cautions.push_back({caution->severity, formula.name + ": " + caution->text});
    }
  }
  dangers.insert(dangers.end(), cautions.begin(), cautions.end());
  return dangers;
}

std::vector<Remark> own_in_place_notes(const Formula& formula) {
  std::vector<Remark> notes;
  std::vector<std::string> told;
  for (const Part& part : parts_of(formula)) {
    const Fat* built_in = part.fat->is_users_own ? find_fat(part.fat->id) : nullptr;
    if (built_in == nullptr || std::count(told.begin(), told.end(), part.fat->id) > 0) continue;
    told.push_back(part.fat->id);
    notes.push_back({Severity::note, formula.name + ": \"" + part.fat->id + "\" is your own " +
                                         part.fat->name + ", not the built-in one: " +
                                         in_mg_per_g(part.typical()) + ", where that has " +
                                         in_mg_per_g(built_in->saponification.typical) + "."});
  }
  return notes;
}

std::vector<Remark> taken_as_exact_notes(const Formula& formula) {
  std::vector<Remark> notes;
  const auto note = [&](const std::string& text) {
    notes.push_back({Severity::note, formula.name + ": " + text});
  };
  const auto exact = exact_ones(formula);
  if (!exact.empty())
    note("taken as exact, as no range is given: " + joined(exact) +
         ". If they are off, the range shown for the superfat is too narrow; ask the supplier for "
         "the range.");
  for (const FormulaAlkali& alkali : formula.alkalis)
    if (alkali.range_assumed)
      note("no purity range is given for " + formula_of(alkali.alkali) +
           "; used: " + trimmed(alkali.purity_low.in_percent(), 2) + " to " +
           in_percent(alkali.purity_high, 2) + " (" + data_of(alkali.alkali).assumed_purity->why +
           "). Purer than stated, it makes the soap lye-heavy: ask the supplier for the range.");
  for (const FormulaFat& fat : formula.fats)
    if (fat.fat.is_users_own && known_ranges(fat.fat).empty())
      note("nothing here can check the saponification value of " + fat.fat.name +
           "; give its fatty acids in your file of fats to have it checked.");
  return notes;
}

}  // namespace brimwright::chemistry
