#pragma once

#include "schemas/value_editing.h"

#include <nlohmann/json_fwd.hpp>

#include <cstddef>
#include <optional>
#include <string>

namespace brimwright::service {

/// A value's place in a file: the object by the keys that lead to it, and its key there. What was
/// taken of it stands under "learned" in the same object, by the same key.
struct Spot {
  std::string file;
  schemas::KeyPath object;
  std::string key;
};

/// What stands at `path`, or nothing.
const nlohmann::ordered_json* value_at(const nlohmann::ordered_json& document,
                                       const schemas::KeyPath& path);
/// What stands in the spot, and what is told there of its taking; or nothing.
const nlohmann::ordered_json* standing(const nlohmann::ordered_json& document, const Spot& spot);
const nlohmann::ordered_json* taking_of(const nlohmann::ordered_json& document, const Spot& spot);
/// Whether what stands there is what was taken, and not written anew since.
bool is_as_taken(const nlohmann::ordered_json& document, const Spot& spot);

/// `text` with a value taken from so many batches on a day. What was taken before, and stands
/// there still, is kept as a step to go back to.
std::string with_taken(const std::string& text, const Spot& spot,
                       const nlohmann::ordered_json& value, std::size_t batches,
                       const std::string& today);
/// `text` as it was before the last taking.
std::string without_last_taken(const std::string& text, const Spot& spot);

}  // namespace brimwright::service
