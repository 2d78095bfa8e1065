#include "units/field_node.h"
#include "units/written_number.h"

#include <nlohmann/json.hpp>

#include <algorithm>

// What a file says it has checked: "confirmed" beside a value.

namespace brimwright {

using Json = Fields::Node::Json;

namespace {

/// A text as it is compared with another: blanks and copied signs do not matter.
Json comparable(const Json& value) {
  return value.is_string() ? Json(plain(value.get_ref<const std::string&>())) : value;
}

/// Whether `confirmed` names `value`, alone or in a list.
bool names(const Json& confirmed, const Json& value) {
  if (comparable(confirmed) == comparable(value)) return true;
  return confirmed.is_array() &&
         std::any_of(confirmed.begin(), confirmed.end(),
                     [&](const Json& one) { return comparable(one) == comparable(value); });
}

/// "confirmed" of `node`, if it stands there and says anything but `false`.
const Json* confirmed_in(const Fields::Node& node) {
  const Json* confirmed = found(node, "confirmed");
  if (confirmed == nullptr || (confirmed->is_boolean() && !confirmed->get<bool>())) return nullptr;
  if (confirmed->is_null())
    throw UserError(place_in(node, "confirmed"), "is null",
                    "write what it confirms, as it stands beside it");
  return confirmed;
}

}  // namespace

bool Fields::confirms(std::string_view figure) const {
  const Json* confirmed = confirmed_in(*node_);
  return confirmed != nullptr && (confirmed->is_boolean() || names(*confirmed, Json(figure)));
}

bool Fields::confirms_value_of(std::string_view key) const {
  // What confirms a value stands beside it.
  const Held holder = asked_for(*node_, key);
  const Json* confirmed = confirmed_in(*holder.by);
  const Json* value = holder.value;
  if (confirmed == nullptr || value == nullptr) return false;
  if (confirmed->is_boolean() || names(*confirmed, *value)) return true;
  throw UserError(place("confirmed"),
                  "is " + kind_of(*confirmed) + ", but \"" + std::string(node_->spelt(key)) +
                      "\" is " + kind_of(*value),
                  "write the very value that was checked, or true; or take it out");
}

bool Fields::confirms_all() const {
  const Json* confirmed = confirmed_in(*node_);
  return confirmed != nullptr && confirmed->is_boolean();
}

}  // namespace brimwright
