#pragma once

#include "units/fields.h"

#include <string>

namespace brimwright {

/// Reads what "learned" says of the values in `fields`, each by its key: { "pot": { "value":
/// "25.3 g", "batches": 7, "on": "2026-12-01", "before": "20 g" } }, where "earlier" may list such
/// takings before it, the oldest first; and says of each that still stands as it was taken that it
/// is learned, of what it is where `of` names that. One that was written anew since is hers, and so
/// is one that stands in another file. UserError for what is no such entry.
void tell_learned(const Fields& fields, const std::string& of = {});

}  // namespace brimwright
