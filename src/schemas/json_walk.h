#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace brimwright::schemas {

/// A stretch of a text, and what is to stand there instead.
struct Edit {
  std::size_t begin;
  std::size_t end;
  std::string replacement;
};
/// `text` with all of them, which follow each other.
std::string edited(std::string_view text, const std::vector<Edit>& edits);

/// One member of an object, by the offsets of its key and of its value.
struct Member {
  std::size_t key_begin = 0;
  std::size_t key_end = 0;
  std::size_t value_begin = 0;
  std::size_t value_end = 0;
  std::string key = {};
};

/// Walks over a text that is known to be JSON, and finds where its keys and values stand, which the
/// library does not tell.
class Walk {
 public:
  explicit Walk(std::string_view text) : text_(text) {}

  std::size_t skip_blanks(std::size_t at) const;
  /// One past the value that begins at `at`.
  std::size_t end_of_value(std::size_t at) const;
  /// The members of the object that begins at `at`.
  std::vector<Member> members(std::size_t at) const;
  /// Where the elements of the list that begins at `at` begin.
  std::vector<std::size_t> elements(std::size_t at) const;
  std::string_view between(std::size_t begin, std::size_t end) const;

 private:
  std::size_t end_of_string(std::size_t at) const;
  std::size_t after_comma(std::size_t at) const;

  std::string_view text_;
};

/// Without member `i`, and the comma that goes with it.
Edit left_out(const std::vector<Member>& members, std::size_t i);

}  // namespace brimwright::schemas
