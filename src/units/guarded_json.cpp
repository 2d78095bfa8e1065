#include "units/guarded_json.h"

#include "units/user_error.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <set>
#include <utility>
#include <vector>

namespace brimwright {

using Json = nlohmann::ordered_json;

namespace {

constexpr std::size_t deepest_level = 64;

/// "line 3, column 7" of the byte at `offset`.
std::string line_and_column(std::string_view text, std::size_t offset) {
  const auto before = text.substr(0, std::min(offset, text.size()));
  const auto line = 1 + std::count(before.begin(), before.end(), '\n');
  const auto last_break = before.rfind('\n');
  const auto start = last_break == std::string_view::npos ? 0 : last_break + 1;
  return "line " + std::to_string(line) + ", column " + std::to_string(before.size() - start + 1);
}

/// Refuses what the library would let through: repeated keys and endless nesting.
class Guard {
 public:
  explicit Guard(std::string file) : file_(std::move(file)) {}

  bool operator()(int /*depth*/, Json::parse_event_t event, const Json& parsed) {
    using Event = Json::parse_event_t;
    if (event == Event::object_start || event == Event::array_start) {
      seen_.emplace_back();
      if (seen_.size() > deepest_level)
        throw UserError(
            {file_, "", "is nested deeper than 64 levels", "no file of this program is"});
    } else if (event == Event::object_end || event == Event::array_end) {
      seen_.pop_back();
    } else if (event == Event::key) {
      const auto& name = parsed.get_ref<const std::string&>();
      if (!seen_.back().insert(name).second)
        throw UserError({file_, "", "the key \"" + name + "\" stands twice in one object",
                         "keep one of the two"});
    }
    return true;
  }

 private:
  std::string file_;
  std::vector<std::set<std::string>> seen_;
};

}  // namespace

Json parsed_json(std::string_view text, const std::string& file) {
  try {
    return Json::parse(text, Guard(file));
  } catch (const Json::parse_error& error) {
    throw UserError({file, line_and_column(text, error.byte > 0 ? error.byte - 1 : 0),
                     "is not JSON from here on",
                     "look for a missing comma, quote or bracket at or just before this place"});
  } catch (const Json::out_of_range&) {
    throw UserError({file, "", "holds a number that is too large", "check its numbers"});
  }
}

}  // namespace brimwright
