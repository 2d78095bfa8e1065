#pragma once

#include "days/work.h"
#include "planning/plan.h"
#include "planning/run.h"

#include <cstdint>
#include <string>
#include <vector>

namespace brimwright::service {

/// The trays known so far, each with its file.
struct Trays {
  std::vector<days::Tray> all;
  std::vector<std::string> files;
};

/// What is cast for so many pieces of a run's plan, in fillings of its own.
void add_fills(days::Batch& to, const planning::Run& run, const planning::Plan& plan,
               std::int64_t pieces, Trays& trays);

}  // namespace brimwright::service
