#pragma once

#include "records/weighing.h"
#include "units/quantity.h"
#include "units/user_error.h"

#include <cstdint>
#include <optional>
#include <string>

namespace brimwright::records {

// Values of notes that units/reading.h does not read.

/// The day of a key "cured.2026-12-29"; nothing for any other key.
std::optional<std::string> weighing_day(const std::string& key);
/// "12 pieces, 1040 g".
Weighing read_weighing(const std::string& value, const std::string& day, const Place& where);

std::int64_t read_count(const std::string& value, const Place& where);
Length read_signed_length(const std::string& value, const Place& where);

}  // namespace brimwright::records
