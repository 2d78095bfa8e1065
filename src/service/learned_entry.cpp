#include "service/learned_entry.h"

#include <nlohmann/json.hpp>

#include <string>
#include <utility>

namespace brimwright::service {

using Json = nlohmann::ordered_json;
using schemas::KeyPath;

namespace {

KeyPath further(KeyPath path, const std::string& key) {
  path.push_back(key);
  return path;
}

KeyPath path_of(const Spot& spot) { return further(spot.object, spot.key); }
KeyPath learned_in(const Spot& spot) { return further(spot.object, "learned"); }
KeyPath path_of_taking(const Spot& spot) { return further(learned_in(spot), spot.key); }

/// Those to go back to, the oldest first, once another value is taken.
Json steps_of(const Json& document, const Spot& spot) {
  if (!is_as_taken(document, spot)) return Json::array();
  Json last = *taking_of(document, spot);
  Json steps = last.value("earlier", Json::array());
  last.erase("earlier");
  steps.push_back(std::move(last));
  return steps;
}

}  // namespace

const Json* value_at(const Json& document, const KeyPath& path) {
  const Json* at = &document;
  for (const std::string& key : path) {
    if (at->is_array())
      at = &at->at(std::stoul(key));
    else if (at->is_object() && at->contains(key))
      at = &at->at(key);
    else
      return nullptr;
  }
  return at;
}

const Json* standing(const Json& document, const Spot& spot) {
  return value_at(document, path_of(spot));
}

const Json* taking_of(const Json& document, const Spot& spot) {
  return value_at(document, path_of_taking(spot));
}

bool is_as_taken(const Json& document, const Spot& spot) {
  const Json *const stands = standing(document, spot), *const taking = taking_of(document, spot);
  return stands != nullptr && taking != nullptr && *stands == taking->value("value", Json(nullptr));
}

std::string with_taken(const std::string& text, const Spot& spot, const Json& value,
                       std::size_t batches, const std::string& today) {
  const Json document = Json::parse(text);
  const Json* const before = standing(document, spot);
  Json taking = {{"value", value},
                 {"batches", batches},
                 {"on", today},
                 {"before", before == nullptr ? Json(nullptr) : *before}};
  if (Json steps = steps_of(document, spot); !steps.empty()) taking["earlier"] = std::move(steps);
  const std::string with_value = schemas::with_value(text, path_of(spot), value.dump());
  return schemas::with_value(with_value, path_of_taking(spot), taking.dump());
}

std::string without_last_taken(const std::string& text, const Spot& spot) {
  const Json document = Json::parse(text);
  const Json& taking = *taking_of(document, spot);
  const Json before = taking.value("before", Json(nullptr));
  Json steps = taking.value("earlier", Json::array());
  std::string without;
  if (steps.empty()) {
    const bool is_last = value_at(document, learned_in(spot))->size() == 1;
    without = schemas::without_value(text, is_last ? learned_in(spot) : path_of_taking(spot));
  } else {
    Json last = std::move(steps.back());
    steps.erase(steps.size() - 1);
    if (!steps.empty()) last["earlier"] = std::move(steps);
    without = schemas::with_value(text, path_of_taking(spot), last.dump());
  }
  return before.is_null() ? schemas::without_value(without, path_of(spot))
                          : schemas::with_value(without, path_of(spot), before.dump());
}

}  // namespace brimwright::service
