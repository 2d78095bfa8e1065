#pragma once

#include <optional>
#include <string>

namespace brimwright::reports {

/// Of a run whose studio mixes one lye for several batches of a day.
struct LyeOfDay {
  std::string own_because = {};  // why each of its batches has one of its own all the same
};

/// What is told where its lye is mixed, as long as nobody knows of what day a batch is.
std::string words_of(const LyeOfDay& lye);
/// The same above a brief plan: one line, or nothing where there is nothing to mind.
std::string lye_of_day_brief(const std::optional<LyeOfDay>& lye);

}  // namespace brimwright::reports
