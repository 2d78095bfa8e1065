#pragma once

#include "units/quantity.h"

#include <nlohmann/json_fwd.hpp>

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::reports {

/// What a cavity holds by one way of finding out.
struct WayFinding {
  std::string by;  // "water", "batches"
  Volume brimful;
  std::optional<Volume> at_line = {};
  std::optional<Volume> low = {}, high = {};  // at the line, or where there is none to the brim
  std::string rests_on = {};                  // in words
  bool is_used = false;                       // by the plan
};

/// All ways side by side.
struct WaysFinding {
  std::optional<Length> below_brim = {};  // the pour line
  std::string line_of = {};               // whose line it is, in words
  std::vector<WayFinding> ways = {};
  std::string used_because = {};
  std::vector<std::string> remarks = {};
};

/// How far a way differs from the one that is used, as a share of that: at the line, if there is
/// one.
double difference(const WayFinding& way, const WaysFinding& all);

std::string ways_text(const WaysFinding& finding);
nlohmann::ordered_json ways_json(const WaysFinding& finding);

}  // namespace brimwright::reports
