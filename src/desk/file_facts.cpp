#include "desk/file_facts.h"

#include "desk/file_names.h"
#include "desk/plain_reading.h"
#include "units/guarded_json.h"
#include "units/user_error.h"

#include <nlohmann/json.hpp>
#include <sys/stat.h>

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

namespace brimwright::desk {

using Json = nlohmann::ordered_json;

namespace {

constexpr std::size_t longest_document = 256u << 10;  // larger ones are not looked into
constexpr std::size_t most_remembered = 20'000;

std::string text_at(const Json& json, const char* key) {
  if (!json.is_object()) return {};
  const auto at = json.find(key);
  return at != json.end() && at->is_string() ? at->get<std::string>() : std::string();
}

std::optional<std::string> optional_text_at(const Json& json, const char* key) {
  std::string text = text_at(json, key);
  return text.empty() ? std::nullopt : std::optional(std::move(text));
}

/// "run" of "brimwright.run/2"; empty for anything else.
std::string kind_in(const std::string& schema) {
  constexpr std::string_view ours = "brimwright.";
  static constexpr std::array<std::string_view, 7> kinds = {"run",  "mould",  "formula", "fats",
                                                            "tips", "studio", "order"};
  const std::size_t slash = schema.find('/');
  if (!schema.starts_with(ours) || slash == schema.npos) return {};
  const std::string kind = schema.substr(ours.size(), slash - ours.size());
  return std::find(kinds.begin(), kinds.end(), kind) != kinds.end() ? kind : std::string();
}

/// Of the things that a file lists.
std::vector<std::string> names_in(const Json& json, const std::string& list) {
  constexpr std::size_t most = 200;
  std::vector<std::string> names;
  if (!json.contains(list) || !json[list].is_array()) return names;
  for (const Json& one : json[list]) {
    if (names.size() == most) break;
    if (std::string name = text_at(one, "name"); !name.empty()) names.push_back(std::move(name));
  }
  return names;
}

/// Nothing where a line does not say it.
std::optional<std::int64_t> pieces_in(const Json& lines) {
  constexpr std::int64_t most_in_a_line = 1'000'000;
  std::int64_t sum = 0;
  if (!lines.is_array()) return {};
  for (const Json& line : lines) {
    const auto pieces = line.is_object() ? line.find("pieces") : line.end();
    if (pieces == line.end() || !pieces->is_number_unsigned() || *pieces > most_in_a_line)
      return {};
    sum += pieces->get<std::int64_t>();
  }
  return sum;
}

FileFacts facts_of(const std::string& path) try {
  const Json json = parsed_json(plain_file(path, longest_document), path);
  FileFacts facts{.kind = kind_in(text_at(json, "schema"))};
  if (facts.kind.empty()) return facts;
  facts.name = text_at(json, facts.kind == "order"  ? "for"
                             : facts.kind == "tips" ? "title"
                                                    : "name");
  facts.note = text_at(json, "note");
  facts.names = file_names_in(json);
  if (facts.kind == "fats" || facts.kind == "tips") facts.holds = names_in(json, facts.kind);
  if (facts.kind == "run" || facts.kind == "order") facts.due = optional_text_at(json, "due");
  if (facts.kind == "order" && json.contains("lines")) facts.sell = pieces_in(json["lines"]);
  if (facts.kind != "run") return facts;
  facts.made_on = optional_text_at(json, "made_on");
  if (json.contains("sell") && json["sell"].is_number_integer()) facts.sell = json["sell"];
  if (json.contains("pour")) facts.mould = text_at(json["pour"], "mould");
  return facts;
} catch (const UserError&) {
  return {};  // none of ours, or half-written by somebody: nothing to choose
}

std::int64_t nanoseconds(const timespec& time) {
  return std::int64_t{time.tv_sec} * 1'000'000'000 + time.tv_nsec;
}

}  // namespace

std::shared_ptr<const FileFactsMemory::Known> FileFactsMemory::of(const std::string& path) {
  struct stat status {};
  if (::stat(path.c_str(), &status) != 0 || !S_ISREG(status.st_mode))
    return std::make_shared<const Known>();
  const Stamp stamp{status.st_ino, status.st_size, nanoseconds(status.st_mtim),
                    nanoseconds(status.st_ctim)};
  {
    const std::scoped_lock alone(mutex_);
    const auto at = known_.find(path);
    if (at != known_.end() && at->second.first == stamp) return at->second.second;
  }
  auto known = std::make_shared<const Known>(Known{facts_of(path), status.st_mtim.tv_sec});
  const std::scoped_lock alone(mutex_);
  if (known_.size() >= most_remembered) known_.clear();
  known_.insert_or_assign(path, std::pair(stamp, known));
  return known;
}

}  // namespace brimwright::desk
