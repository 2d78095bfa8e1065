#pragma once

#include "units/quantity.h"
#include "units/share.h"

#include <chrono>
#include <cstdint>
#include <string>

namespace brimwright {

// Amounts in a sentence, with their unit; by fixed() and trimmed() of units/printing.h. Not for
// weights on a scale (weight_text), bounds to keep to (bounded_text) or advice (advice_text).

// At most so many decimals: "2.5 mm", "3 mm". Below 1 ml three figures at least: "0.042 ml".
std::string in_mm(Length length, int decimals = 1);
std::string in_ml(Volume volume, int decimals = 1);
std::string in_grams(Mass mass, int decimals = 1);
std::string in_percent(Share share, int decimals = 1);
std::string in_g_per_ml(Density density, int decimals);
std::string in_minutes(std::chrono::seconds time, int decimals = 1);  // "12.5 min"
std::string in_hours(std::chrono::minutes time, int decimals = 1);

// Exactly so many: "3.0 mm".
std::string fixed_mm(Length length, int decimals = 1);
std::string fixed_ml(Volume volume, int decimals = 1);
std::string fixed_grams(Mass mass, int decimals = 1);
std::string fixed_percent(Share share, int decimals = 1);
std::string fixed_g_per_ml(Density density, int decimals);

/// "1.25 ml", "12.5 ml", "1250 ml": the more, the fewer decimals.
std::string short_ml(Volume volume);

/// "1 piece", "3 pieces".
std::string counted(std::int64_t number, const std::string& one);
/// "1 loaf", "2 loaves".
std::string counted(std::int64_t number, const std::string& one, const std::string& many);

}  // namespace brimwright
