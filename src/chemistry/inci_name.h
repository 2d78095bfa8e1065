#pragma once

#include <string>
#include <string_view>

namespace brimwright::chemistry {

/// What two ways of writing one INCI name have in common: small letters, Greek ones by their names,
/// without blanks, hyphens and what stands in brackets. "Elaeis Guineensis (Palm) Oil" and "ELAEIS
/// GUINEENSIS OIL" are one, and so are "CI77891" and "CI 77891", "α-Pinene" and "alpha pinene".
std::string inci_key(std::string_view name);

}  // namespace brimwright::chemistry
