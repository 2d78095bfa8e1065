#include "records/blanks.h"

#include "units/printing.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <utility>

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

/// "250 g", "8.8 oz", as the scale shows it.
std::string planned_words(const Json& row, std::int64_t times) {
  if (times == 1) return row.at("shown").get<std::string>();
  return trimmed(row.at("g").get<double>() * static_cast<double>(times), 3) + " g";
}

Blank row_of(const Json& vessel, const Json& row) {
  constexpr double least = 0.75, most = 1.25;  // of what is planned; common practice, no source
  const std::int64_t times = vessel.value("times", std::int64_t{1});
  const double grams = row.at("g").get<double>() * static_cast<double>(times);
  std::string planned = planned_words(row, times);
  return {.key = std::string(weighed_prefix) + row.at("key").get<std::string>(),
          .of = vessel.value("title", std::string()),
          .words = row.at("name").get<std::string>(),
          .kind = "mass",
          .unit = planned.ends_with("oz") ? "oz" : "g",
          .planned = std::move(planned),
          .least = trimmed(least * grams, 3) + " g",
          .most = trimmed(most * grams, 3) + " g",
          .role = row.at("role").get<std::string>()};
}

/// What was mixed before, and so was weighed already.
bool is_mixed(const Json& row) {
  const std::string role = row.at("role").get<std::string>();
  return role == "batter" || role == "lye_solution";
}

}  // namespace

std::vector<Blank> rows_in(const std::string& plan, std::int64_t number) {
  std::vector<Blank> rows;
  const Json json = Json::parse(plan);
  for (const Json& batch : json.value("batches", Json::array())) {
    if (!is_of(batch, number) || !batch.contains("weigh_out")) continue;
    for (const Json& vessel : batch["weigh_out"])
      if (vessel.at("vessel") != "melt" || number == 1)
        for (const Json& row : vessel.at("rows"))
          if (!is_mixed(row)) rows.push_back(row_of(vessel, row));
  }
  return rows;
}

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
