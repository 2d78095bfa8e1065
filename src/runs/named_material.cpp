#include "runs/named_material.h"

#include "chemistry/alkali_form.h"
#include "chemistry/alkali_names.h"
#include "chemistry/fat_search.h"
#include "chemistry/water_names.h"
#include "units/written_number.h"

#include <algorithm>

namespace brimwright::runs {
namespace {

bool is_one_of(const std::vector<std::string>& names, const std::string& name) {
  return std::find(names.begin(), names.end(), name) != names.end();
}

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

std::string needed_by_name(const std::string& name, const Meaning& meaning,
                           const std::vector<std::string>& needed, const Place& where) {
  if (is_one_of(needed, name)) return name;
  std::vector<std::string> meant;
  for (const std::string& fat : meaning.fats)
    if (is_one_of(needed, fat)) meant.push_back(fat);
  if (meant.size() > 1)
    throw UserError(where, quoted(name) + " may be " + quoted(meant[0]) + " or " + quoted(meant[1]),
                    "name the one it is");
  if (meant.size() == 1) {
    if (meaning.fats.size() == 1) return meant.front();
    throw UserError(where, quoted(name) + " is a word for several fats",
                    "say " + quoted(meant.front()) + " if it is that");
  }
  if (meaning.is_water && is_one_of(needed, "water")) return "water";
  if (!meaning.problem.empty()) throw UserError(where, meaning.problem, meaning.remedy);
  return is_one_of(needed, meaning.dry) ? meaning.dry : name;
}

std::string key_of(const std::string& name, const Meaning& meaning) {
  if (meaning.fats.size() == 1) return meaning.fats.front();
  if (meaning.is_water) return "water";
  return meaning.dry.empty() ? name : meaning.dry;
}

}  // namespace brimwright::runs
