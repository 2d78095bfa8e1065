#pragma once

#include "chemistry/formula.h"
#include "chemistry/proportions.h"
#include "units/quantity.h"
#include "units/remark.h"
#include "units/share.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::chemistry {

/// What data/salts.json knows of an additive by its name.
struct Substance {
  std::vector<std::string> names;  // in lower case; the first is its own
  Density density;                 // what it fills in the batter
  std::string source;
  bool read = false;             // in its source, not remembered
  std::string remark;            // what it does; begins with a verb; may be empty
  bool into_cooled_lye = false;  // where it goes into the lye and the formula does not say when
  Share usual;                   // the most that is usual, of the fats; zero: not usual at all
};

const std::vector<Substance>& known_substances();
/// The substance with the longest name that stands in `name` by whole words ("pink sea salt"), or
/// nullptr.
const Substance* find_substance(const std::string& name);

/// The density an additive is reckoned with where the formula gives none: of the substance that its
/// name tells, unless it is a fragrance.
std::optional<Density> known_density(const Additive& additive);

/// What each known additive does, and which of them go beyond what is usual.
std::vector<Remark> substance_remarks(const Formula& formula, const Proportions& per_fat);

}  // namespace brimwright::chemistry
