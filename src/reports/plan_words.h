#pragma once

#include "planning/run.h"

#include <chrono>
#include <optional>
#include <string>

namespace brimwright::reports {

// How the plan's text says what stands in many of its parts.

/// A heading over the width of the page.
std::string title(const std::string& left, const std::string& right);
/// A sentence below it, set in.
std::string line(const std::string& text);

/// What is shown of a material that the prices call `price_name`: of a fat its name, not its id.
std::string material_name(const std::string& price_name, const planning::Run& run);

/// "2026-12-04" (ISO 8601).
std::string iso_date(const std::chrono::year_month_day& date);

/// "for the December market, due 2026-12-04", as far as it is said.
std::string whom_and_when(const std::string& whom_for,
                          const std::optional<std::chrono::year_month_day>& due);

/// "losses, scales (soap/studio.json)": what a run takes of its studio.
std::string studio_words(const planning::FromStudio& from);

}  // namespace brimwright::reports
