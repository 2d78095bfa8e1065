#pragma once

#include "chemistry/fat.h"
#include "units/fields.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::chemistry {

/// The maker's own fats (schema brimwright.fats/1), as their suppliers' documents describe them.
///
/// One may have the id of a shipped fat, in whose place it then stands. UserError, with file and
/// field, where it is another fat by its name, for an id that stands twice, no source, and values
/// outside physical sense: a saponification value outside 120 to 600 mg/g (40 to 200 for a wax
/// ester), one that looks like a NaOH value or like grams for a gram, or that the fatty acids, or
/// the shipped fat whose name it has, call a NaOH value; an iodine value outside 0 to 250; fatty
/// acids that cannot add to a whole.
///
/// A value that what is known of the fat contradicts (`known_ranges`) makes its range reach over
/// both; whether it can be used at all, the formula that names the fat decides.
std::vector<Fat> read_user_fats(const Fields& file);

/// The file of own fats that a formula names ("own_fats"), as written there: a path relative to
/// the formula, which the caller resolves.
std::optional<std::string> fats_file_named_in(const Fields& formula);

}  // namespace brimwright::chemistry
