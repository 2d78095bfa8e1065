#include "service/json_parts.h"

#include <algorithm>
#include <array>
#include <stdexcept>

namespace brimwright::service {
namespace {

constexpr std::string_view blanks = " \t\r\n";

/// Whether a byte is a mark that parts lie between; most are none.
constexpr auto is_mark = [] {
  std::array<bool, 256> is{};
  for (const char mark : {'"', '{', '[', '}', ']'}) is[static_cast<unsigned char>(mark)] = true;
  return is;
}();

[[noreturn]] void refuse() { throw std::runtime_error("a kept answer is no JSON"); }

/// One past the text that begins at `i`.
std::size_t end_of_string(std::string_view text, std::size_t i) {
  while (true) {
    i = text.find('"', i + 1);
    if (i == std::string_view::npos) refuse();
    std::size_t slashes = 0;
    while (text[i - 1 - slashes] == '\\') ++slashes;  // the first mark of the text ends this
    if (slashes % 2 == 0) return i + 1;
  }
}

}  // namespace

JsonParts::JsonParts(std::string_view text) : text_(text) {
  std::vector<std::size_t> open;
  for (std::size_t i = 0; i < text.size();) {
    const char c = text[i];
    if (!is_mark[static_cast<unsigned char>(c)]) {
      ++i;
      continue;
    }
    if (c == '"') {
      i = end_of_string(text, i);
      continue;
    }
    if (c == '{' || c == '[') {
      open.push_back(brackets_.size());
      brackets_.push_back({i});
    }
    if (c == '}' || c == ']') {
      if (open.empty()) refuse();
      Bracket& bracket = brackets_[open.back()];
      open.pop_back();
      bracket.end = i + 1;
      bracket.next = brackets_.size();
    }
    ++i;
  }
  if (!open.empty()) refuse();
}

/// From thing to thing in a list or an object.
class JsonParts::Walk {
 public:
  Walk(const JsonParts& parts, const Part& within, char bracket)
      : parts_(parts), text_(parts.text_), next_(within.bracket + 1) {
    if (within.text.empty() || within.text.front() != bracket) refuse();
    const Bracket& whole = parts.brackets_.at(within.bracket);
    at_ = whole.begin + 1;
    end_ = whole.end - 1;
    skip_blanks();
  }

  bool is_done() const { return at_ >= end_; }

  std::string_view key() {
    if (text_[at_] != '"') refuse();
    const std::size_t begin = at_ + 1;
    at_ = end_of_string(text_, at_);
    const std::string_view key = text_.substr(begin, at_ - 1 - begin);
    skip_blanks();
    skip(':');
    if (is_done()) refuse();
    return key;
  }

  Part value() {
    const std::size_t begin = at_;
    Part part{{}, next_};
    const char c = text_[at_];
    if (c == '{' || c == '[') {
      const Bracket& bracket = parts_.brackets_.at(next_);
      at_ = bracket.end;
      next_ = bracket.next;
    } else {
      at_ = c == '"' ? end_of_string(text_, at_)
                     : std::min(text_.find_first_of(",]} \t\r\n", at_), end_);
    }
    part.text = text_.substr(begin, at_ - begin);
    skip_blanks();
    if (!is_done()) skip(',');
    return part;
  }

 private:
  void skip_blanks() {
    while (at_ < end_ && blanks.find(text_[at_]) != std::string_view::npos) ++at_;
  }
  void skip(char mark) {
    if (is_done() || text_[at_] != mark) refuse();
    ++at_;
    skip_blanks();
  }

  const JsonParts& parts_;
  std::string_view text_;
  std::size_t next_;  // the next bracket that opens
  std::size_t at_ = 0, end_ = 0;
};

JsonParts::Part JsonParts::whole() const {
  const std::size_t begin = text_.find_first_not_of(blanks);
  if (begin == std::string_view::npos) refuse();
  return {text_.substr(begin), 0};
}

void JsonParts::each_member(const Part& object,
                            const std::function<void(std::string_view, const Part&)>& see) const {
  for (Walk walk(*this, object, '{'); !walk.is_done();) {
    const std::string_view key = walk.key();
    see(key, walk.value());
  }
}

void JsonParts::each_element(const Part& list, const std::function<void(const Part&)>& see) const {
  for (Walk walk(*this, list, '['); !walk.is_done();) see(walk.value());
}

}  // namespace brimwright::service
