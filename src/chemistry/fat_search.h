#pragma once

#include "chemistry/fats.h"

#include <string>
#include <string_view>
#include <vector>

namespace brimwright::chemistry {

/// The fats that `name` may stand for, in the order of `table`. One, where it is a fat's id or
/// name, or another name that this fat alone has ("wool wax", "Cera alba"); several, where a word
/// is used for more than one ("Palm", "coconut 92"); none, where nothing has that name. Whatever
/// its case and accents and whatever is added on how the oil was made ("organic virgin").
std::vector<const Fat*> fats_named(std::string_view name, const FatTable& table = shipped_table());

/// "virgin", "organic", "oil": a word of a fat's name that says how it was made or sold, but not
/// which it is. As `words_of` spells it.
bool tells_how_made(const std::string& word);

/// What to do where `name` is no id of a fat: the one that was meant, all that may have been meant,
/// with what each of them takes, or the nearest in spelling. Empty where nothing is near.
std::string which_fat(const std::string& name, const FatTable& table = shipped_table());

}  // namespace brimwright::chemistry
