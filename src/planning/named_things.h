#pragma once

#include "planning/run.h"
#include "units/remark.h"

#include <vector>

namespace brimwright::planning {

/// What the names and INCI names of all that goes into a run's pieces tell
/// (data/named_things.json), each said once, whatever it is true of:
///
/// - a note on the food that people are allergic to, for buyers and learners. Of a fragrance only
/// the
///   INCI names count: what it smells of is not in it;
/// - a caution on glitter and microbeads that are plastic, or may be, as nothing says what they are
///   made of.
std::vector<Remark> named_thing_remarks(const Run& run);

}  // namespace brimwright::planning
