#include "units/guarded_json.h"

#include "units/user_error.h"
#include "units/written_number.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <utility>
#include <vector>

namespace brimwright {

using Json = nlohmann::ordered_json;

namespace {

constexpr std::size_t deepest_level = 64;
constexpr std::size_t most_values = 200'000;

/// "line 3, column 7" of the byte at `offset`.
std::string line_and_column(std::string_view text, std::size_t offset) {
  const auto before = text.substr(0, std::min(offset, text.size()));
  const auto line = 1 + std::count(before.begin(), before.end(), '\n');
  const auto last_break = before.rfind('\n');
  const auto start = last_break == std::string_view::npos ? 0 : last_break + 1;
  return "line " + std::to_string(line) + ", column " + std::to_string(before.size() - start + 1);
}

/// Puts the parser's findings together. The library's own way of doing so compares each key with
/// all before it in its object, and looks through a whole list after each object in it.
class Builder : public nlohmann::json_sax<Json> {
 public:
  Builder(std::string_view text, std::string file, JsonWork& work)
      : text_(text), file_(std::move(file)), work_(work) {}

  Json take() { return std::move(document_); }

  bool null() override { return put(nullptr); }
  bool boolean(bool value) override { return put(value); }
  bool number_integer(number_integer_t value) override { return put(value); }
  bool number_unsigned(number_unsigned_t value) override { return put(value); }
  bool number_float(number_float_t value, const string_t& /*text*/) override { return put(value); }
  bool string(string_t& value) override { return put(std::move(value)); }
  bool binary(binary_t& value) override { return put(std::move(value)); }

  bool start_object(std::size_t /*size*/) override { return open(Json::object()); }
  bool start_array(std::size_t /*size*/) override { return open(Json::array()); }
  bool key(string_t& name) override {
    // A vector underneath; its own way in would look for the key among all before it.
    Members& members = open_.back()->get_ref<Json::object_t&>();
    members.emplace_back(std::move(name), nullptr);
    return true;
  }
  bool end_object() override {
    refuse_repeated_keys(open_.back()->get_ref<const Json::object_t&>());
    open_.pop_back();
    return true;
  }
  bool end_array() override {
    open_.pop_back();
    return true;
  }

  bool parse_error(std::size_t position, const std::string& /*token*/,
                   const nlohmann::detail::exception& error) override {
    if (dynamic_cast<const Json::out_of_range*>(&error) != nullptr)
      throw UserError({file_, line_and_column(text_, position > 0 ? position - 1 : 0),
                       "holds a number that is too large, which ends here", "check that number"});
    if (work_.values == 0)  // nothing of it could be read: another kind of file
      throw UserError({file_, ""}, "is not a JSON file: it does not begin with {",
                      "name a run, formula, mould, tips, fats or studio file; what a mesh holds is "
                      "measured by brimwright gauge");
    throw UserError({file_, line_and_column(text_, position > 0 ? position - 1 : 0),
                     "is not JSON from here on",
                     "look for a missing comma, quote or bracket at or just before this place"});
  }

 private:
  using Members = std::vector<Json::object_t::value_type>;

  /// Where the next value belongs: the last key's, the list's end, or the document itself.
  Json& place() {
    if (open_.empty()) return document_;
    Json& holder = *open_.back();
    if (holder.is_object()) return holder.get_ref<Json::object_t&>().back().second;
    return holder.get_ref<Json::array_t&>().emplace_back();
  }

  bool put(Json value) {
    if (++work_.values > most_values)
      throw UserError(
          {file_, "", "holds more than 200,000 values", "no file of this program does"});
    place() = std::move(value);
    return true;
  }

  bool open(Json empty) {
    if (open_.size() == deepest_level)
      throw UserError({file_, "", "is nested deeper than 64 levels", "no file of this program is"});
    put(std::move(empty));
    open_.push_back(last_put());
    return true;
  }

  /// Nothing is added to a holder while what stands last in it is open, so this stays its place.
  Json* last_put() {
    if (open_.empty()) return &document_;
    Json& holder = *open_.back();
    return holder.is_object() ? &holder.get_ref<Json::object_t&>().back().second
                              : &holder.get_ref<Json::array_t&>().back();
  }

  void refuse_repeated_keys(const Json::object_t& members) {
    std::vector<std::string_view> names;
    names.reserve(members.size());
    for (const auto& member : members) names.push_back(member.first);
    std::sort(names.begin(), names.end(), [this](std::string_view one, std::string_view other) {
      ++work_.comparisons;
      return one < other;
    });
    const auto repeated = std::adjacent_find(names.begin(), names.end());
    if (repeated != names.end())
      throw UserError({file_, "", "the key " + quoted(*repeated) + " appears twice in one object",
                       "keep one of the two"});
  }

  std::string_view text_;
  std::string file_;
  JsonWork& work_;
  Json document_;
  std::vector<Json*> open_;
};

}  // namespace

Json parsed_json(std::string_view text, const std::string& file, JsonWork* work) {
  JsonWork taken;
  Builder builder(text, file, taken);
  Json::sax_parse(text, &builder);
  if (work != nullptr) {
    work->values += taken.values;
    work->comparisons += taken.comparisons;
  }
  return builder.take();
}

}  // namespace brimwright
