#include "records/blanks.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace brimwright::records {
namespace {

using Json = nlohmann::json;

Blank blank_of(const Json& json) {
  const auto text = [&](const char* key) { return json.value(key, std::string()); };
  Blank blank{.key = text("key"),
              .of = text("of"),
              .words = text("words"),
              .kind = text("kind"),
              .when = text("when"),
              .unit = text("unit"),
              .planned = text("planned"),
              .least = text("least"),
              .most = text("most"),
              .not_above = text("not_above"),
              .cup_holds = text("cup_holds"),
              .cup_holds_key = text("cup_holds_key")};
  if (json.contains("choices")) blank.choices = json["choices"].get<std::vector<std::string>>();
  return blank;
}

bool is_of(const Json& batch, std::int64_t number) {
  const auto numbers = batch.at("numbers").get<std::vector<std::int64_t>>();
  return std::find(numbers.begin(), numbers.end(), number) != numbers.end();
}

}  // namespace

std::vector<Blank> blanks_in(const std::string& plan, std::int64_t number) {
  std::vector<Blank> blanks;
  const Json json = Json::parse(plan);
  for (const Json& batch : json.value("batches", Json::array())) {
    if (!is_of(batch, number) || !batch.contains("blanks")) continue;
    for (const Json& blank : batch["blanks"])
      if (blank.value("batch", number) == number) blanks.push_back(blank_of(blank));
  }
  return blanks;
}

const Blank* find_blank(const std::vector<Blank>& blanks, const std::string& key) {
  const auto at = std::find_if(blanks.begin(), blanks.end(),
                               [&](const Blank& blank) { return blank.key == key; });
  return at == blanks.end() ? nullptr : &*at;
}

}  // namespace brimwright::records
