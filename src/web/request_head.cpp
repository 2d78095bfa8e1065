#include "web/request_head.h"

#include <algorithm>

namespace brimwright::web {
namespace {

int digit(char c) {
  if (c >= '0' && c <= '9') return c - '0';
  if (c >= 'a' && c <= 'f') return c - 'a' + 10;
  if (c >= 'A' && c <= 'F') return c - 'A' + 10;
  return -1;
}

/// RFC 3986, 2.1; a plus is a plus, not a blank.
std::optional<std::string> decoded(std::string_view text) {
  std::string plain;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text[i] != '%') {
      plain += text[i];
      continue;
    }
    if (i + 2 >= text.size()) return std::nullopt;
    const int high = digit(text[i + 1]), low = digit(text[i + 2]);
    if (high < 0 || low < 0 || (high == 0 && low == 0)) return std::nullopt;
    plain += static_cast<char>(high * 16 + low);
    i += 2;
  }
  return plain;
}

bool is_visible_ascii(std::string_view text) {
  return std::all_of(text.begin(), text.end(), [](char c) { return c > 0x20 && c < 0x7f; });
}

}  // namespace

std::optional<Target> target_of(std::string_view text) {
  if (!text.starts_with('/') || !is_visible_ascii(text) || text.find('#') != text.npos)
    return std::nullopt;
  const std::size_t mark = text.find('?');
  Target target{std::string(text.substr(0, mark)), {}};
  if (mark == text.npos) return target;
  std::string_view rest = text.substr(mark + 1);
  while (!rest.empty()) {
    const std::string_view pair = rest.substr(0, rest.find('&'));
    rest.remove_prefix(std::min(rest.size(), pair.size() + 1));
    const std::size_t equals = std::min(pair.find('='), pair.size());
    const auto name = decoded(pair.substr(0, equals));
    const auto value = decoded(pair.substr(std::min(equals + 1, pair.size())));
    if (!name || !value || !target.query.emplace(*name, *value).second) return std::nullopt;
  }
  return target;
}

}  // namespace brimwright::web
