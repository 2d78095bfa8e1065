#include "units/field_node.h"

#include "units/written_number.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <utility>

namespace brimwright {

using Json = Fields::Node::Json;
using Member = Fields::Node::Member;

Fields::Node::Node(std::shared_ptr<Document> its_document, const Json& its_object,
                   std::string its_pointer, std::string its_pattern)
    : document(std::move(its_document)),
      object(&its_object),
      pointer(std::move(its_pointer)),
      pattern(std::move(its_pattern)) {
  for (const Member& member : object->get_ref<const Json::object_t&>()) by_name.push_back(&member);
  std::sort(by_name.begin(), by_name.end(),
            [](const Member* one, const Member* other) { return one->first < other->first; });
}

namespace {

std::string escaped(std::string_view key) {  // RFC 6901
  std::string out;
  for (const char c : key) out += c == '~' ? "~0" : c == '/' ? "~1" : std::string(1, c);
  return out;
}

}  // namespace

Place Held::place() const { return {by->document->file, by->pointer + "/" + escaped(key)}; }

Held held(const Fields::Node& node, std::string_view todays_key) {
  Held own{&node, std::string(node.spelt(todays_key))};
  const auto at = std::lower_bound(
      node.by_name.begin(), node.by_name.end(), own.key,
      [](const Member* member, std::string_view name) { return member->first < name; });
  if (at != node.by_name.end() && (*at)->first == own.key) {
    own.value = &(*at)->second;
    return own;
  }
  for (const auto& other : node.substitutes) {
    const auto there = other.keys.find(todays_key);
    if (!other.keys.empty() && there == other.keys.end()) continue;
    const Held taken = held(*other.node, other.keys.empty() ? todays_key : there->second);
    if (taken.value != nullptr) return taken;
  }
  return own;
}

Held asked_for(const Fields::Node& node, std::string_view key) {
  node.asked.emplace(node.spelt(key));
  Held result = held(node, key);
  if (result.by == &node) return result;
  result.by->asked.emplace(result.key);
  node.document->taken.insert(result.place().field);
  return result;
}

const Json* found(const Fields::Node& node, std::string_view key) {
  return asked_for(node, key).value;
}

Place place_in(const Fields::Node& node, std::string_view key) { return held(node, key).place(); }

std::string pattern_of(const Fields::Node& node, std::string_view own_key) {
  return further_in(node.pattern, escaped(node.document->spelling.earlier(node.pattern, own_key)));
}

void complete(const Fields::Node& of, const Fields::Node& holder, std::string_view key) {
  for (const auto& other : holder.substitutes) {
    const auto there = other.keys.find(key);
    if (!other.keys.empty() && there == other.keys.end()) continue;
    const Held inner = held(*other.node, other.keys.empty() ? key : there->second);
    if (inner.value == nullptr || !inner.value->is_object()) continue;
    inner.by->asked.emplace(inner.key);
    of.substitutes.push_back(
        {std::make_shared<Fields::Node>(inner.by->document, *inner.value, inner.place().field,
                                        pattern_of(*inner.by, inner.key)),
         {}});
  }
}

std::optional<std::string> meant_by(const Fields::Node& node, const std::string& unknown,
                                    const std::vector<std::string>& known) {
  const std::string_view renamed = node.document->spelling.meant(node.pattern, unknown);
  return renamed.empty() ? nearest_name(unknown, known) : std::string(renamed);
}

std::vector<std::string> unknown_beside(const Fields::Node& node, std::string_view missing) {
  std::vector<std::string> unknown;
  for (const Member* member : node.by_name) {
    const std::string& name = member->first;
    if (node.asked.contains(name) || node.may_hold.contains(name)) continue;
    if (!node.may_hold.empty() || meant_by(node, name, {std::string(node.spelt(missing))}))
      unknown.push_back(name);
  }
  return unknown;
}

std::string unknown_in_words(const Fields::Node& node, const std::vector<std::string>& unknown,
                             std::size_t from) {
  std::vector<std::string> known(node.asked.begin(), node.asked.end());
  known.insert(known.end(), node.may_hold.begin(), node.may_hold.end());
  std::string words;
  for (std::size_t i = from; i < unknown.size(); ++i) {
    if (i == from + 10) return words + ", and more";
    const auto near = meant_by(node, unknown[i], known);
    words += (words.empty() ? "" : ", ") + brimwright::quoted(unknown[i]) + " is not known" +
             (near ? " (\"" + *near + "\"?)" : "");
  }
  return words;
}

std::string kind_of(const Json& value) {
  if (value.is_null()) return "null";
  if (value.is_boolean()) return value.get<bool>() ? "true" : "false";
  if (value.is_number()) return "the bare number " + value.dump();
  if (value.is_string())
    return "the text " + brimwright::quoted(value.get_ref<const std::string&>());
  return value.is_array() ? "a list" : "an object";
}

}  // namespace brimwright
