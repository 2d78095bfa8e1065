#include "service/json_parts.h"

#include <algorithm>
#include <cstddef>
#include <stdexcept>

namespace brimwright::service {
namespace {

class Scan {
 public:
  explicit Scan(std::string_view text) : text_(text) {}

  char at(std::size_t i) const {
    if (i >= text_.size()) throw std::runtime_error("a kept answer is no JSON");
    return text_[i];
  }
  std::size_t skip_blanks(std::size_t i) const {
    return std::min(text_.find_first_not_of(" \t\r\n", i), text_.size());
  }
  /// One past the text that begins at `i`.
  std::size_t end_of_string(std::size_t i) const {
    if (at(i) != '"') throw std::runtime_error("a kept answer is no JSON");
    while (true) {
      i = std::min(text_.find('"', i + 1), text_.size());
      std::size_t slashes = 0;
      while (text_[i - 1 - slashes] == '\\') ++slashes;  // the first mark of the text ends this
      if (at(i) == '"' && slashes % 2 == 0) return i + 1;
    }
  }
  /// One past the value that begins at `i`.
  std::size_t end_of_value(std::size_t i) const {
    if (at(i) == '"') return end_of_string(i);
    if (at(i) != '{' && at(i) != '[')
      return std::min(text_.find_first_of(",]} \t\r\n", i), text_.size());
    std::size_t depth = 0;
    do {
      const char c = at(i);
      if (c == '"') {
        i = end_of_string(i);
        continue;
      }
      if (c == '{' || c == '[') ++depth;
      if (c == '}' || c == ']') --depth;
      ++i;
    } while (depth > 0);
    return i;
  }
  std::size_t after_comma(std::size_t i) const {
    i = skip_blanks(i);
    return at(i) == ',' ? skip_blanks(i + 1) : i;
  }

 private:
  std::string_view text_;
};

/// Where the first thing in a list or an object begins.
std::size_t begin_in(const Scan& scan, char bracket) {
  const std::size_t at = scan.skip_blanks(0);
  if (scan.at(at) != bracket) throw std::runtime_error("a kept answer is not as it was written");
  return scan.skip_blanks(at + 1);
}

}  // namespace

void each_member(std::string_view object,
                 const std::function<void(std::string_view, std::string_view)>& see) {
  const Scan scan(object);
  for (std::size_t at = begin_in(scan, '{'); scan.at(at) != '}';) {
    const std::size_t key_end = scan.end_of_string(at);
    const std::size_t value = scan.skip_blanks(scan.skip_blanks(key_end) + 1);
    const std::size_t value_end = scan.end_of_value(value);
    see(object.substr(at + 1, key_end - at - 2), object.substr(value, value_end - value));
    at = scan.after_comma(value_end);
  }
}

void each_element(std::string_view list, const std::function<void(std::string_view)>& see) {
  const Scan scan(list);
  for (std::size_t at = begin_in(scan, '['); scan.at(at) != ']';) {
    const std::size_t end = scan.end_of_value(at);
    see(list.substr(at, end - at));
    at = scan.after_comma(end);
  }
}

}  // namespace brimwright::service
