#include "schemas/value_editing.h"

#include "schemas/json_walk.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cassert>
#include <string>

namespace brimwright::schemas {
namespace {

/// The object that is reached by as many keys of a path as there are objects for.
struct Reached {
  std::size_t at;               // where the object begins
  std::size_t keys = 0;         // that led to it
  std::vector<Member> members;  // of it
  std::size_t member = 0;       // that the next key names; past the last one where none is there
};

Reached reached(const Walk& walk, const KeyPath& path) {
  assert(!path.empty());
  Reached found{.at = walk.skip_blanks(0), .members = {}};
  while (true) {
    found.members = walk.members(found.at);
    const auto named =
        std::find_if(found.members.begin(), found.members.end(),
                     [&](const Member& member) { return member.key == path[found.keys]; });
    found.member = static_cast<std::size_t>(named - found.members.begin());
    if (named == found.members.end() || found.keys + 1 == path.size()) return found;
    found.at = named->value_begin;
    ++found.keys;
    if (walk.between(found.at, found.at + 1) != "[") continue;
    found.at = walk.elements(found.at).at(std::stoul(path[found.keys]));
    ++found.keys;
    assert(found.keys < path.size());
  }
}

/// The keys from `first` on, down to the value: "pot": "25 g".
std::string member_text(const KeyPath& path, std::size_t first, const std::string& json) {
  std::string text = nlohmann::json(path[first]).dump() + ": ";
  if (first + 1 == path.size()) return text + json;
  return text + "{ " + member_text(path, first + 1, json) + " }";
}

}  // namespace

std::string with_value(const std::string& text, const KeyPath& path, const std::string& json) {
  const Walk walk(text);
  const Reached found = reached(walk, path);
  if (found.member < found.members.size()) {
    const Member& member = found.members[found.member];
    return edited(text, {{member.value_begin, member.value_end, json}});
  }
  const std::string added = member_text(path, found.keys, json);
  if (found.members.empty())
    return edited(text, {{found.at, walk.end_of_value(found.at), "{ " + added + " }"}});
  const std::string_view before = walk.between(found.at + 1, found.members.front().key_begin);
  const std::size_t end = found.members.back().value_end;
  return edited(text, {{end, end, "," + (before.empty() ? " " : std::string(before)) + added}});
}

std::string without_value(const std::string& text, const KeyPath& path) {
  const Reached found = reached(Walk(text), path);
  if (found.keys + 1 != path.size() || found.member == found.members.size()) return text;
  return edited(text, {left_out(found.members, found.member)});
}

}  // namespace brimwright::schemas
