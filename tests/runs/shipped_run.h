#pragma once

#include "runs/run_file.h"

#include <nlohmann/json.hpp>

#include <fstream>
#include <optional>
#include <string>

// The shipped run with everything in it, to be spoilt in one place.

namespace brimwright::runs::test {

using Json = nlohmann::ordered_json;

inline const std::string root = BRIMWRIGHT_SOURCE_DIR;
inline const std::string file = root + "/examples/spring_cups.run.json";

inline Json shipped_run() { return Json::parse(std::ifstream(file)); }

inline planning::Run read(const Json& run, std::optional<std::int64_t> sell = {}) {
  return read_run(Fields::parse(run.dump(), file), {.shipped = root, .folders = {}}, sell);
}

/// The shipped run with `value`, as JSON, at the pointer `at`; without what is there if it is
/// empty.
inline Json with(const std::string& at, const std::string& value) {
  Json run = shipped_run();
  const Json::json_pointer pointer(at);
  if (value.empty())
    run[pointer.parent_pointer()].erase(pointer.back());
  else
    run[pointer] = Json::parse(value);
  return run;
}

/// What is put where, the field that is complained of and what is said of it.
struct Slip {
  std::string at, value, field, says;
};

/// The complaint about the run with that slip; its parts are empty if it was read.
inline UserError::Parts complaint_of(const Slip& slip) {
  try {
    read(with(slip.at, slip.value));
  } catch (const UserError& error) {
    return error.parts();
  }
  return {};
}

}  // namespace brimwright::runs::test
