#pragma once

#include "units/share.h"
#include "units/user_error.h"

#include <optional>
#include <string>
#include <string_view>

namespace brimwright::chemistry {

/// The most fat that a thing called so holds (data/fat_names.json).
struct FatBound {
  std::string kind;  // "milk"
  Share most;        // of what is weighed
};
/// Nothing where the name tells nothing, or may mean a whole fat ("shea butter", "coconut milk
/// oil").
std::optional<FatBound> fat_bound(std::string_view name);

/// Refuses milk, cream or yolk said to hold more fat than such a thing has: lye would be weighed
/// for fat that is not there. UserError at `where`.
void refuse_too_much_fat(const std::string& name, Share said, const Place& where);

}  // namespace brimwright::chemistry
