#include "reports/made_lye_report.h"

#include "reports/json_numbers.h"
#include "reports/text_table.h"
#include "reports/weight_json.h"
#include "units/printing.h"
#include "units/weight_text.h"

#include <nlohmann/json.hpp>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;
using planning::MadeLye;
using planning::Mend;
using Side = TextTable::Side;

/// Alkali never reads more than is meant, fats never less.
Rounded towards(const planning::Ingredient& i) {
  return i.role == planning::Role::alkali ? Rounded::down : Rounded::up;
}

std::string row_weight(const planning::Ingredient& i) {
  return on_scale(i.weighed, i.step, towards(i));
}

std::string mend_text(const std::string& heading, const Mend& mend) {
  TextTable table({Side::left, Side::right, Side::right});
  for (const auto& i : mend.to_add)
    table.row({i.name, row_weight(i), beside_scale(i.weighed, i.step, towards(i))});
  const auto& superfat = mend.after.superfat;
  return wrapped(heading, " ", " ") + table.text() +
         wrapped("Then the superfat is " + chemistry::lowest_in_words(superfat.nominal) +
                     ", in 19 batches of 20 between " +
                     chemistry::lowest_in_words(superfat.likely_low) + " and " +
                     chemistry::highest_in_words(superfat.likely_high) + "; the batter weighs " +
                     trimmed(mend.after.batter / gram, 1) + " g.",
                 " ", " ");
}

std::string as_it_is(const MadeLye& made) {
  TextTable table({Side::left, Side::right, Side::right});
  table.row({"", "planned", "as it is"});
  for (std::size_t k = 0; k < made.as_it_is.ingredients.size(); ++k) {
    const auto& now = made.as_it_is.ingredients[k];
    const auto& planned = made.as_planned.ingredients[k];
    if (now.role != planning::Role::alkali && now.weighed == planned.weighed) continue;
    table.row({now.name, row_weight(planned), row_weight(now)});
  }
  const auto& superfat = made.as_it_is.superfat;
  table.row({"Superfat", chemistry::lowest_in_words(made.as_planned.superfat.nominal),
             chemistry::lowest_in_words(superfat.nominal)});
  table.row({"19 in 20 from", chemistry::lowest_in_words(made.as_planned.superfat.likely_low),
             chemistry::lowest_in_words(superfat.likely_low)});
  table.row({"to", chemistry::highest_in_words(made.as_planned.superfat.likely_high),
             chemistry::highest_in_words(superfat.likely_high)});
  return table.text();
}

std::string text_of(const MadeLye& made) {
  const bool is_danger = made.said.severity == Severity::danger;
  std::string text = wrapped(made.said.text, is_danger ? "!! " : " - ", "   ");
  text += made.batter + " of batch " + std::to_string(made.batch) + "\n" + as_it_is(made);
  if (made.mends.to_aim)
    text += mend_text("Fats to add, of the formula's own, for the planned superfat of " +
                          chemistry::lowest_in_words(made.as_it_is.aim) + ":",
                      *made.mends.to_aim);
  if (made.mends.to_zero)
    text +=
        mend_text("The least to add that keeps 19 batches in 20 above zero:", *made.mends.to_zero);
  if (made.mends.missing)
    text +=
        mend_text("Alkali that may still go in, dissolved in " +
                      trimmed(*made.mends.water / gram, 1) + " g of water of its own and cooled:",
                  *made.mends.missing);
  return text + "\n";
}

Json mend_json(const std::optional<Mend>& mend, const planning::MadeLye& made) {
  if (!mend) return nullptr;
  Json add = Json::array();
  for (const auto& i : mend->to_add) {
    Json one = {{"name", i.name}};
    if (i.role == planning::Role::fat) one["fat"] = made.formula.fats[i.index].fat.id;
    add.push_back(with_weight(one, "", i.weighed, i.step, towards(i)));
  }
  return {{"add", add},
          {"make_g", to_decimals(mend->after.batter / gram, 2)},
          {"superfat_percent", superfat_json(mend->after.superfat)}};
}

}  // namespace

std::string made_lye_text(const std::vector<MadeLye>& made) {
  if (made.empty()) return "";
  std::string text = "ALKALI ALREADY WEIGHED\n";
  for (const MadeLye& one : made) text += text_of(one);
  return text;
}

Json made_lye_json(const std::vector<MadeLye>& made) {
  Json all = Json::array();
  for (const MadeLye& one : made) {
    Json json = {{"batch", one.batch},
                 {"batter", one.batter},
                 {"severity", name_of(one.said.severity)},
                 {"text", one.said.text}};
    json["alkali"] = Json::array();
    for (const auto& i : one.as_it_is.ingredients)
      if (i.role == planning::Role::alkali)
        json["alkali"].push_back(
            with_weight({{"name", i.name}}, "", i.weighed, i.step, Rounded::down));
    json["aim_percent"] = one.as_it_is.aim.in_percent();
    json["superfat_percent"] = superfat_json(one.as_it_is.superfat);
    json["to_aim"] = mend_json(one.mends.to_aim, one);
    json["to_zero"] = mend_json(one.mends.to_zero, one);
    json["missing"] = mend_json(one.mends.missing, one);
    if (one.mends.water) json["missing"]["water_g"] = to_decimals(*one.mends.water / gram, 2);
    all.push_back(std::move(json));
  }
  return all;
}

}  // namespace brimwright::reports
