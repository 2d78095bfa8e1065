#include "runs/named_material.h"

#include "chemistry/alkali_form.h"
#include "chemistry/alkali_names.h"
#include "chemistry/fat_search.h"
#include "chemistry/water_names.h"
#include "units/written_number.h"

#include <algorithm>

namespace brimwright::runs {
namespace {

/// A solution weighs twice as much for the same alkali, so nothing that may be one is taken for
/// dry.
void tell_alkali(Meaning& meaning, const std::string& name) {
  const auto alkali = chemistry::names_an_alkali(name);
  const bool is_naoh = alkali && alkali->is == "sodium hydroxide";
  const bool is_koh = alkali && alkali->is == "potassium hydroxide";
  if (!is_naoh && !is_koh) {
    if (!alkali || !chemistry::is_any_alkali(name)) return;
    meaning.problem = quoted(name) + " does not tell which alkali it is, nor whether it is dry";
    meaning.remedy =
        "call what is dry \"NaOH\" or \"KOH\"; enter a solution by its name under "
        "\"lye_solutions\" in the studio's file";
    return;
  }
  const std::string dry = is_naoh ? "NaOH" : "KOH";
  const auto form = chemistry::form_of_alkali(name);
  if (form == chemistry::AlkaliForm::dry) {
    meaning.dry = dry;
    meaning.purity = chemistry::stated_purity(name);
    return;
  }
  meaning.problem = quoted(name) +
                    (form == chemistry::AlkaliForm::solution
                         ? " tells of a solution, which is not weighed as dry "
                         : " may be a solution, or dry ") +
                    dry;
  meaning.remedy =
      "enter a solution by its name under \"lye_solutions\" in the studio's file; call what is "
      "dry \"" +
      dry + "\", or by its purity, \"" + dry + (is_naoh ? " 99 %\"" : " 90 %\"");
}

}  // namespace

Meaning meaning_of(const std::string& name) {
  Meaning meaning{.is_water = chemistry::names_water(name)};
  for (const auto* fat : chemistry::fats_named(name)) meaning.fats.push_back(fat->id);
  tell_alkali(meaning, name);
  return meaning;
}

bool Needed::has(const std::string& name) const {
  return std::find(names.begin(), names.end(), name) != names.end();
}

namespace {

void add_purities(std::vector<PlannedPurity>& all, const chemistry::Formula& formula) {
  for (const auto& alkali : formula.alkalis) {
    const std::string dry = chemistry::formula_of(alkali.alkali);
    if (!alkali.solution) {
      all.push_back({dry, alkali.purity, std::min(alkali.purity, alkali.purity_low),
                     std::max(alkali.purity, alkali.purity_high), formula.name});
    } else if (const auto& of = alkali.solution->dissolved_of) {
      all.push_back({dry, *of, *of, *of, alkali.solution->name});
    }
  }
}

}  // namespace

std::vector<PlannedPurity> purities_planned(const std::vector<const planning::Run*>& runs) {
  std::vector<PlannedPurity> all;
  for (const auto* run : runs) {
    add_purities(all, run->pour.formula);
    if (run->pipe) add_purities(all, run->pipe->formula);
  }
  return all;
}

std::vector<PlannedPurity> purities_planned(const chemistry::Formula& formula) {
  std::vector<PlannedPurity> all;
  add_purities(all, formula);
  return all;
}

const PlannedPurity* planned_otherwise(const Meaning& meaning, const Needed& needed) {
  if (!meaning.purity) return nullptr;
  constexpr Share hair = Share::of_one(1e-9);  // of binary fractions
  for (const PlannedPurity& one : needed.purities)
    if (one.dry == meaning.dry &&
        (meaning.purity->high < one.low - hair || meaning.purity->low > one.high + hair))
      return &one;
  return nullptr;
}

std::string needed_by_name(const std::string& name, const Meaning& meaning, const Needed& needed,
                           const Place& where) {
  if (needed.has(name)) return name;
  std::vector<std::string> meant;
  for (const std::string& fat : meaning.fats)
    if (needed.has(fat)) meant.push_back(fat);
  if (meant.size() > 1)
    throw UserError(where, quoted(name) + " may be " + quoted(meant[0]) + " or " + quoted(meant[1]),
                    "name the one it is");
  if (meant.size() == 1) {
    if (meaning.fats.size() == 1) return meant.front();
    throw UserError(where, quoted(name) + " is a word for several fats",
                    "say " + quoted(meant.front()) + " if it is that");
  }
  if (meaning.is_water && needed.has("water")) return "water";
  if (!meaning.problem.empty()) throw UserError(where, meaning.problem, meaning.remedy);
  const bool is_it = needed.has(meaning.dry) && planned_otherwise(meaning, needed) == nullptr;
  return is_it ? meaning.dry : name;
}

std::string key_of(const std::string& name, const Meaning& meaning) {
  if (meaning.fats.size() == 1) return meaning.fats.front();
  if (meaning.is_water) return "water";
  return meaning.dry.empty() ? name : meaning.dry;
}

}  // namespace brimwright::runs
