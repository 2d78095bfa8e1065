#pragma once

#include "units/question.h"

namespace brimwright::cli {

/// What is said on the command line: `--role cavity`; of `list`, the words `list fats`.
UserTerms option_terms();

}  // namespace brimwright::cli
