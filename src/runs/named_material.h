#pragma once

#include "units/user_error.h"

#include <string>
#include <vector>

namespace brimwright::runs {

/// What a name of a material may stand for, whatever is needed.
struct Meaning {
  std::vector<std::string> fats = {};  // the ids of those that have it
  bool is_water = false;
  std::string dry = {};                   // "NaOH" or "KOH", where it is one of them, dry
  std::string problem = {}, remedy = {};  // of an alkali that may be no dry one
};
Meaning meaning_of(const std::string& name);

/// The one of `needed` that `name`, which means `meaning`, stands for: that name itself, or the id
/// of the one fat, or "NaOH", "KOH" or "water", that has it ("caustic soda"); `name` as it is where
/// it is none of them. UserError at `where` for a word that several of `needed` have, and for an
/// alkali that may be a solution ("NaOH 50 %", "lye").
std::string needed_by_name(const std::string& name, const Meaning& meaning,
                           const std::vector<std::string>& needed, const Place& where);

/// What two names of one material have in common.
std::string key_of(const std::string& name, const Meaning& meaning);

}  // namespace brimwright::runs
