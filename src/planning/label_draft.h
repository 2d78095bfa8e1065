#pragma once

#include "planning/label.h"
#include "planning/run.h"
#include "planning/tally.h"

namespace brimwright::planning {

/// Drafts the label that `run` asks for. UserError at /label when its spread says nothing or too
/// much, or when the piece is too light or heavy for a statement. Expects run.label.
LabelDraft label_draft(const Run& run, const Plan& plan);

}  // namespace brimwright::planning
