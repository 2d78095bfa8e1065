#include "units/spelling.h"

#include <algorithm>

namespace brimwright {
namespace {

/// Takes the first "/name" off `pointer`.
std::string_view next_name(std::string_view& pointer) {
  pointer.remove_prefix(1);
  const std::string_view name = pointer.substr(0, pointer.find('/'));
  pointer.remove_prefix(name.size());
  return name;
}

/// Whether the object at `pattern` is one that `rule` means.
bool matches(std::string_view rule, std::string_view pattern) {
  while (!rule.empty() && !pattern.empty()) {
    const std::string_view wanted = next_name(rule);
    const std::string_view name = next_name(pattern);
    if (wanted != "*" && wanted != name) return false;
  }
  return rule.empty() && pattern.empty();
}

bool is_place_in_a_list(std::string_view name) {
  return !name.empty() &&
         std::all_of(name.begin(), name.end(), [](char c) { return c >= '0' && c <= '9'; });
}

}  // namespace

std::string Schema::today() const { return std::string(name) + "/" + std::to_string(version); }

std::string Schema::previous() const {
  return version == 1 ? "" : std::string(name) + "/" + std::to_string(version - 1);
}

const EarlierKey* Schema::earlier_key(std::string_view pattern, std::string_view key) const {
  const auto rule = std::find_if(earlier.begin(), earlier.end(), [&](const EarlierKey& one) {
    return one.was == key && matches(one.object, pattern);
  });
  return rule == earlier.end() ? nullptr : &*rule;
}

std::string further_in(std::string_view pattern, std::string_view key) {
  return std::string(pattern) + "/" + (is_place_in_a_list(key) ? "*" : std::string(key));
}

std::string_view Spelling::own(std::string_view pattern, std::string_view key) const {
  if (!is_earlier_) return key;
  for (const EarlierKey& one : renamed_)
    if (one.is == key && matches(one.object, pattern)) return one.was;
  return key;
}

std::string_view Spelling::earlier(std::string_view pattern, std::string_view own_key) const {
  if (is_earlier_) return own_key;
  for (const EarlierKey& one : renamed_)
    if (!one.is.empty() && one.is == own_key && matches(one.object, pattern)) return one.was;
  return own_key;
}

std::string_view Spelling::meant(std::string_view pattern, std::string_view own_key) const {
  for (const EarlierKey& one : renamed_) {
    if (one.is.empty() || !matches(one.object, pattern)) continue;
    if (is_earlier_ && one.is == own_key) return one.was;
    if (!is_earlier_ && one.was == own_key) return one.is;
  }
  return {};
}

std::string Spelling::pointer(std::string_view pointer) const {
  std::string own_pointer;
  std::string pattern;
  while (!pointer.empty()) {
    const std::string_view name = own(pattern, next_name(pointer));
    own_pointer.append("/").append(name);
    pattern = further_in(pattern, name);
  }
  return own_pointer;
}

std::string Spelling::quoted(std::string_view pointer) const {
  const std::string own_pointer = this->pointer(pointer);
  return "\"" + own_pointer.substr(own_pointer.rfind('/') + 1) + "\"";
}

}  // namespace brimwright
