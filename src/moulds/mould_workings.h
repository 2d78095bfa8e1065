#pragma once

#include "moulds/mould.h"
#include "units/working.h"

#include <string>
#include <vector>

namespace brimwright::moulds {

/// How the brimful volume of one cavity was found.
Working brimful_working(const Mould& mould);

/// The ways a mould was measured, each with what it says, and what they rest on.
std::vector<std::string> measured_by(const Mould& mould);

}  // namespace brimwright::moulds
