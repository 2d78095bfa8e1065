#pragma once

#include "learning/batch_facts.h"
#include "records/notes.h"
#include "service/planned_scales.h"
#include "units/quantity.h"

#include <optional>
#include <vector>

namespace brimwright::service {

/// A batter that is noted to have been weighed otherwise than planned.
struct BatterOnScales {
  learning::OnScales on_scales;
  Mass more;  // than planned, or less: of all that is weighed for it
  /// More water than planned, or less; nothing where what was weighed otherwise may hold some.
  std::optional<Mass> more_water;
};

/// What was put on the scales for a batch, where its notes ("weighed.") have it otherwise than
/// planned.
struct BatchOnScales {
  std::optional<BatterOnScales> base = {};
  std::vector<std::optional<BatterOnScales>> whippings = {};  // one a group of them, as planned
  std::vector<std::optional<Mass>> melts = {};                // of what is cast ahead, in its order
};

/// Whether any weight is noted.
bool is_any_weighed(const records::NotedValues& notes);

BatchOnScales on_scales(const PlannedScales& batch, const records::NotedValues& notes);

}  // namespace brimwright::service
