#pragma once

#include "chemistry/alkali_form.h"
#include "planning/run.h"
#include "units/user_error.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace brimwright::runs {

/// What a name of a material may stand for, whatever is needed.
struct Meaning {
  std::vector<std::string> fats = {};  // the ids of those that have it
  bool is_water = false;
  std::string dry = {};  // "NaOH" or "KOH", where it is one of them, dry
  std::optional<chemistry::StatedPurity> purity = {};  // of that, where the name states it
  std::string problem = {}, remedy = {};               // of an alkali that may be no dry one
};
Meaning meaning_of(const std::string& name);

/// How pure a formula takes the dry alkali to be that it is weighed with.
struct PlannedPurity {
  std::string dry;  // "NaOH" or "KOH"
  Share purity, low, high;
  std::string formula;
};

/// What is needed, by the names that weighings call it, and how pure its alkalis are planned to be;
/// where that is not told, they may be of any purity.
struct Needed {
  Needed(std::vector<std::string> its_names, std::vector<PlannedPurity> its_purities = {})
      : names(std::move(its_names)), purities(std::move(its_purities)) {}

  bool has(const std::string& name) const;

  std::vector<std::string> names;
  std::vector<PlannedPurity> purities;
};
std::vector<PlannedPurity> purities_planned(const std::vector<const planning::Run*>& runs);
std::vector<PlannedPurity> purities_planned(const chemistry::Formula& formula);

/// The first of `needed` that what `meaning` is of could not be weighed for: the plan takes that
/// alkali to be of another purity than the name states. Nothing where it could.
const PlannedPurity* planned_otherwise(const Meaning& meaning, const Needed& needed);

/// The one of `needed` that `name`, which means `meaning`, stands for: that name itself, or the id
/// of the one fat, or "NaOH", "KOH" or "water", that has it ("caustic soda"); `name` as it is where
/// it is none of them, or an alkali of another purity than is planned. UserError at `where` for a
/// word that several of `needed` have, and for an alkali that may be a solution ("NaOH 50 %",
/// "lye").
std::string needed_by_name(const std::string& name, const Meaning& meaning, const Needed& needed,
                           const Place& where);

/// What two names of one material have in common.
std::string key_of(const std::string& name, const Meaning& meaning);

}  // namespace brimwright::runs
