#include "schemas/tidying.h"

#include "schemas/json_walk.h"
#include "schemas/kinds.h"
#include "units/guarded_json.h"
#include "units/user_error.h"
#include "units/written_number.h"

#include <boost/uuid/random_generator.hpp>
#include <boost/uuid/uuid_io.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstddef>
#include <optional>
#include <vector>

namespace brimwright::schemas {
namespace {

using Json = nlohmann::ordered_json;

/// Finds what a file of the earlier version of `schema` writes otherwise than today's.
class Rewriting {
 public:
  Rewriting(std::string_view text, const Schema& schema, std::string file)
      : walk_(text), schema_(schema), file_(std::move(file)) {
    value(walk_.skip_blanks(0), "", "");
  }

  const std::vector<Edit>& edits() const { return edits_; }
  int renamed() const { return renamed_; }

 private:
  void value(std::size_t at, const std::string& pattern, const std::string& pointer) {
    const char first = walk_.between(at, at + 1).front();
    if (first == '{') object(walk_.members(at), pattern, pointer);
    if (first != '[') return;
    std::size_t index = 0;
    for (const std::size_t element : walk_.elements(at))
      value(element, pattern + "/*", pointer + "/" + std::to_string(index++));
  }

  void object(const std::vector<Member>& members, const std::string& pattern,
              const std::string& pointer) {
    for (std::size_t i = 0; i < members.size(); ++i) {
      const Member& member = members[i];
      const std::string where = pointer + "/" + member.key;
      if (const EarlierKey* rule = schema_.earlier_key(pattern, member.key)) {
        if (rule->is.empty()) {
          refuse_other_than(*rule, member, where);
          edits_.push_back(left_out(members, i));
          continue;
        }
        edits_.push_back({member.key_begin, member.key_end, "\"" + std::string(rule->is) + "\""});
        ++renamed_;
      }
      value(member.value_begin, further_in(pattern, member.key), where);
    }
  }

  void refuse_other_than(const EarlierKey& rule, const Member& member,
                         const std::string& where) const {
    const auto said = Json::parse(walk_.between(member.value_begin, member.value_end));
    if (said == Json::parse(rule.only)) return;
    throw UserError({file_, where}, "is " + said.dump(), std::string(rule.otherwise));
  }

  Walk walk_;
  const Schema& schema_;
  std::string file_;
  std::vector<Edit> edits_;
  int renamed_ = 0;
};

/// Finds the texts of a document for which others are to stand there.
class Retelling {
 public:
  Retelling(std::string_view text, const std::function<std::string(const TextPlace&)>& other)
      : walk_(text), other_(other) {
    value(walk_.skip_blanks(0), "");
  }

  const std::vector<Edit>& edits() const { return edits_; }

 private:
  void value(std::size_t at, const std::string& under) {
    const char first = walk_.between(at, at + 1).front();
    if (first == '"') string(at, walk_.end_of_value(at), under, false);
    if (first == '[')
      for (const std::size_t element : walk_.elements(at)) value(element, "");
    if (first != '{') return;
    for (const Member& member : walk_.members(at)) {
      string(member.key_begin, member.key_end, under, true);
      value(member.value_begin, member.key);
    }
  }

  void string(std::size_t begin, std::size_t end, const std::string& under, bool is_key) {
    auto text = Json::parse(walk_.between(begin, end)).get<std::string>();
    std::string told = other_({under, is_key, text});
    if (told != text) edits_.push_back({begin, end, Json(std::move(told)).dump()});
  }

  Walk walk_;
  const std::function<std::string(const TextPlace&)>& other_;
  std::vector<Edit> edits_;
};

/// Where the document's "schema" stands.
Member schema_of(std::string_view text) {
  const Walk walk(text);
  const auto members = walk.members(walk.skip_blanks(0));
  return *std::find_if(members.begin(), members.end(),
                       [](const Member& member) { return member.key == "schema"; });
}

/// The kind of file that `text` says it is.
const Schema& kind_of(const Json& document, const std::string& file) {
  const bool says =
      document.is_object() && document.contains("schema") && document["schema"].is_string();
  const std::string said = says ? document["schema"].get<std::string>() : "";
  if (const Schema* kind = kind_called(said)) return *kind;
  throw UserError(
      {file, "/schema"}, says ? "is " + brimwright::quoted(said) : "is missing",
      "tidy rewrites files of this program: \"brimwright.run/1\", \"brimwright.formula/1\", "
      "\"brimwright.mould/1\" and \"brimwright.tips/1\"");
}

}  // namespace

Tidied tidied(std::string_view text, const std::string& file) {
  const Json document = parsed_json(text, file);
  const Schema& kind = kind_of(document, file);
  Tidied result{.text = std::string(text), .from_version = kind.version, .version = kind.version};
  if (document["schema"] == kind.today()) return result;
  const Rewriting rewriting(text, kind, file);
  const Member schema = schema_of(text);
  std::vector<Edit> edits = rewriting.edits();
  edits.push_back({schema.value_begin, schema.value_end, "\"" + kind.today() + "\""});
  std::sort(edits.begin(), edits.end(),
            [](const Edit& one, const Edit& other) { return one.begin < other.begin; });
  result.text = edited(text, edits);
  result.from_version = kind.version - 1;
  result.keys_renamed = rewriting.renamed();
  result.is_as_before = false;
  return result;
}

std::string with_texts(const std::string& text, const std::string& file,
                       const std::function<std::string(const TextPlace&)>& other) {
  parsed_json(text, file);
  return edited(text, Retelling(text, other).edits());
}

std::string new_id() { return to_string(boost::uuids::random_generator()()); }

std::string with_id(const std::string& text, const std::string& id, const std::string& file) {
  if (parsed_json(text, file).contains("id")) return text;
  const Walk walk(text);
  const Member schema = schema_of(text);
  const auto members = walk.members(walk.skip_blanks(0));
  // As the file sets its members apart: on lines of their own, or in one.
  const std::string_view before = walk.between(walk.skip_blanks(0) + 1, members.front().key_begin);
  return edited(text,
                {{schema.value_end, schema.value_end,
                  "," + (before.empty() ? " " : std::string(before)) + "\"id\": \"" + id + "\""}});
}

}  // namespace brimwright::schemas
