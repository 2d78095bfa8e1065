#include "reports/json_document.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstddef>
#include <stdexcept>
#include <string_view>

namespace brimwright::reports {
namespace {

constexpr int indent = 2;

std::string text_of(const nlohmann::ordered_json& json) {
  return json.dump(indent, ' ', false, nlohmann::ordered_json::error_handler_t::replace);
}

std::string text_of(const nlohmann::ordered_json& json, const std::vector<LongList>& lists) {
  std::string text = text_of(json);
  for (const LongList& list : lists) {
    const std::string before = "\n  \"" + list.key() + "\": ", none = "null";
    const auto at = text.find(before + none);
    if (at == std::string::npos) throw std::logic_error("no place for the list " + list.key());
    text.replace(at + before.size(), none.size(), list.text());
  }
  return text;
}

}  // namespace

std::string json_document(const nlohmann::ordered_json& json) { return text_of(json) + "\n"; }

/// No line break stands within JSON's own texts.
void LongList::put(const nlohmann::ordered_json& entry, const std::vector<LongList>& lists) {
  constexpr std::string_view before = "    ";
  const std::string text = text_of(entry, lists);
  entries_ += entries_.empty() ? "\n" : ",\n";
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find('\n', at), text.size() - 1) + 1;
    entries_.append(before).append(text, at, end - at);
    at = end;
  }
}

std::string LongList::text() const { return entries_.empty() ? "[]" : "[" + entries_ + "\n  ]"; }

std::string json_document(const nlohmann::ordered_json& json, const std::vector<LongList>& lists) {
  return text_of(json, lists) + "\n";
}

}  // namespace brimwright::reports
