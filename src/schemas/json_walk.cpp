#include "schemas/json_walk.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <utility>

namespace brimwright::schemas {

std::string edited(std::string_view text, const std::vector<Edit>& edits) {
  std::string result;
  std::size_t at = 0;
  for (const Edit& edit : edits) {
    result += text.substr(at, edit.begin - at);
    result += edit.replacement;
    at = edit.end;
  }
  return result += text.substr(at);
}

std::size_t Walk::skip_blanks(std::size_t at) const {
  return std::min(text_.find_first_not_of(" \t\r\n", at), text_.size());
}

std::size_t Walk::end_of_value(std::size_t at) const {
  if (text_[at] == '"') return end_of_string(at);
  if (text_[at] != '{' && text_[at] != '[')
    return std::min(text_.find_first_of(",]} \t\r\n", at), text_.size());
  std::size_t depth = 0;
  do {
    if (text_[at] == '"') {
      at = end_of_string(at);
      continue;
    }
    if (text_[at] == '{' || text_[at] == '[') ++depth;
    if (text_[at] == '}' || text_[at] == ']') --depth;
    ++at;
  } while (depth > 0);
  return at;
}

std::vector<Member> Walk::members(std::size_t at) const {
  std::vector<Member> all;
  at = skip_blanks(at + 1);
  while (text_[at] != '}') {
    Member member;
    member.key_begin = at;
    member.key_end = end_of_string(at);
    member.key = nlohmann::json::parse(between(at, member.key_end)).get<std::string>();
    member.value_begin = skip_blanks(skip_blanks(member.key_end) + 1);
    member.value_end = end_of_value(member.value_begin);
    at = after_comma(member.value_end);
    all.push_back(std::move(member));
  }
  return all;
}

std::vector<std::size_t> Walk::elements(std::size_t at) const {
  std::vector<std::size_t> all;
  at = skip_blanks(at + 1);
  while (text_[at] != ']') {
    all.push_back(at);
    at = after_comma(end_of_value(at));
  }
  return all;
}

std::string_view Walk::between(std::size_t begin, std::size_t end) const {
  return text_.substr(begin, end - begin);
}

std::size_t Walk::end_of_string(std::size_t at) const {
  for (++at; text_[at] != '"'; ++at)
    if (text_[at] == '\\') ++at;
  return at + 1;
}

std::size_t Walk::after_comma(std::size_t at) const {
  at = skip_blanks(at);
  return text_[at] == ',' ? skip_blanks(at + 1) : at;
}

Edit left_out(const std::vector<Member>& members, std::size_t i) {
  if (i + 1 < members.size()) return {members[i].key_begin, members[i + 1].key_begin, ""};
  return {i > 0 ? members[i - 1].value_end : members[i].key_begin, members[i].value_end, ""};
}

}  // namespace brimwright::schemas
