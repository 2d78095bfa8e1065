#include "records/blanks.h"

#include "units/printing.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <iterator>
#include <utility>

namespace brimwright::records {
namespace {

using Json = nlohmann::json;

constexpr auto lye_solution = "lye_solution";
constexpr std::string_view used = ".used";

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

/// Something weighed that is called `key`, so many grams of it in all.
Blank weighed_blank(const std::string& key, const Json& vessel, const std::string& words,
                    double grams, std::string planned, const std::string& role) {
  constexpr double least = 0.75, most = 1.25;  // of what is planned; common practice, no source
  return {.key = std::string(weighed_prefix) + key,
          .of = vessel.value("title", std::string()),
          .words = words,
          .kind = "mass",
          .unit = planned.ends_with("oz") ? "oz" : "g",
          .planned = std::move(planned),
          .least = trimmed(least * grams, 3) + " g",
          .most = trimmed(most * grams, 3) + " g",
          .role = role};
}

Blank row_of(const Json& vessel, const Json& row) {
  const std::int64_t times = vessel.value("times", std::int64_t{1});
  return weighed_blank(row.at("key").get<std::string>(), vessel, row.at("name").get<std::string>(),
                       row.at("g").get<double>() * static_cast<double>(times),
                       planned_words(row, times), row.at("role").get<std::string>());
}

/// What was mixed before, and so was weighed already.
bool is_mixed(const Json& row) { return row.at("role").get<std::string>() == "batter"; }

Blank topped_up(const Json& vessel, const Json& pot) {
  const auto text = [&](const char* key) { return pot.at(key).get<std::string>(); };
  const bool is_in_ounces = text("lye_reads") == "oz";
  return weighed_blank(std::string(topped_up_row), vessel, "Topped up to, without its pot",
                       pot.at("lye_g").get<double>(),
                       is_in_ounces ? text("lye_oz_text") + " oz" : text("lye_g_text") + " g",
                       lye_solution);
}

/// Instead of alkali and water: what is put into the lye beside them goes into the share.
Blank out_of_day_pot(const Json& vessel) {
  double grams = 0;
  for (const Json& row : vessel.at("rows")) {
    const std::string role = row.at("role").get<std::string>();
    if (role == "alkali" || role == "water" || role == "ice") grams += row.at("g").get<double>();
  }
  grams *= static_cast<double>(vessel.value("times", std::int64_t{1}));
  std::string key = vessel.at("key").get<std::string>();
  key.resize(key.rfind('.'));
  return weighed_blank(key + std::string(day_pot_row), vessel,
                       "Lye solution, where it is out of a day's pot", grams,
                       trimmed(grams, 3) + " g", lye_solution);
}

std::string counted_key(std::size_t decoration) {
  return "decoration-" + std::to_string(decoration + 1) + std::string(used);
}

/// Plans were frozen with their counts before there were blanks for what of them was used; what is
/// frozen says all that a blank takes (planning/blanks.h makes it).
Blank used_of(std::size_t decoration, const Json& tally, bool is_one_batch) {
  const auto planned = tally.at("casts").get<std::int64_t>();
  return {.key = counted_key(decoration),
          .words = tally.at("name").get<std::string>() + ": used up" +
                   (is_one_batch ? "" : ", whole run"),
          .kind = "count",
          .when = "afterwards",
          .planned = std::to_string(planned),
          .most = std::to_string(2 * planned)};
}

void add_counts(std::vector<Blank>& blanks, const Json& plan) {
  const Json all = plan.value("decorations", Json::array());
  auto before = std::find_if(blanks.begin(), blanks.end(),
                             [](const Blank& blank) { return blank.key == "pieces.made"; });
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (!all[i].value("bought", false) || all[i].at("casts") == 0 ||
        find_blank(blanks, counted_key(i)) != nullptr)
      continue;
    const bool is_one_batch = plan.at("pieces").at("batches") == 1;
    before = std::next(blanks.insert(before, used_of(i, all[i], is_one_batch)));
  }
}

bool may_be_of_a_day(const Json& plan) {
  const auto lye = plan.find("lye_of_day");
  return lye != plan.end() && lye->value("may_be_shared", false);
}

}  // namespace

std::vector<Blank> rows_in(const std::string& plan, std::int64_t number) {
  std::vector<Blank> rows;
  const Json json = Json::parse(plan);
  const bool is_of_a_day = may_be_of_a_day(json);
  for (const Json& batch : json.value("batches", Json::array())) {
    if (!is_of(batch, number) || !batch.contains("weigh_out")) continue;
    for (const Json& vessel : batch["weigh_out"]) {
      const std::string kind = vessel.at("vessel").get<std::string>();
      if (kind == "melt" && number != 1) continue;
      for (const Json& row : vessel.at("rows"))
        if (!is_mixed(row)) rows.push_back(row_of(vessel, row));
      if (kind == "lye_pot") rows.push_back(topped_up(vessel, batch.at("lye_pot")));
      if (kind == "lye" && is_of_a_day) rows.push_back(out_of_day_pot(vessel));
    }
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
  if (number == 1 && !blanks.empty()) add_counts(blanks, json);
  return blanks;
}

std::string counted_row(std::string_view key) {
  constexpr std::string_view decoration = "decoration-", bought = ".bought";
  if (!key.starts_with(decoration) || !key.ends_with(used)) return "";
  return std::string(key.substr(0, key.size() - used.size())).append(bought);
}

const Blank* find_blank(const std::vector<Blank>& blanks, const std::string& key) {
  const auto at = std::find_if(blanks.begin(), blanks.end(),
                               [&](const Blank& blank) { return blank.key == key; });
  return at == blanks.end() ? nullptr : &*at;
}

}  // namespace brimwright::records
