#pragma once

#include <cstddef>
#include <functional>
#include <string_view>
#include <vector>

namespace brimwright::service {

/// Parts of a text that is JSON, without reading what lies in them: of a long answer of which
/// little is needed. The text is gone through once, and has to outlive what is told of it.
///
/// A key is given as it is written, which is itself for letters, digits and . _ - alone. What is no
/// JSON is noticed late or never, but nothing past the text is looked at: then there is a
/// std::runtime_error.
class JsonParts {
 public:
  struct Part {
    std::string_view text;
    std::size_t bracket = 0;  // which of the text's brackets it begins with, where it does
  };

  explicit JsonParts(std::string_view text);

  Part whole() const;
  void each_member(const Part& object,
                   const std::function<void(std::string_view key, const Part&)>& see) const;
  void each_element(const Part& list, const std::function<void(const Part&)>& see) const;

 private:
  class Walk;

  /// A bracket that opens, in the order of the text.
  struct Bracket {
    std::size_t begin;
    std::size_t end = 0;   // one past the one that closes
    std::size_t next = 0;  // the first bracket that opens after that
  };

  std::string_view text_;
  std::vector<Bracket> brackets_;
};

}  // namespace brimwright::service
