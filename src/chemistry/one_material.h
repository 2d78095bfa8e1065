#pragma once

#include <optional>
#include <string>

namespace brimwright::chemistry {

/// What speaks against goods called `make` in place of `material`, as far as names tell: that they
/// are another fat, alkali, acid, liquid or salt, another strength, or a fat that was changed
/// ("fractionated"). A brand or a way of pressing speaks against nothing, and of a name that tells
/// nothing nothing is said: then it is the maker's word.
std::optional<std::string> other_material(const std::string& make, const std::string& material);

}  // namespace brimwright::chemistry
