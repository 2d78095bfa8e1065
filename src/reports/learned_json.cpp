#include "geometry/surface/parallel.h"
#include "reports/json_document.h"
#include "reports/json_numbers.h"
#include "reports/learned_report.h"

#include <nlohmann/json.hpp>

#include <cstddef>
#include <optional>
#include <type_traits>
#include <utility>
#include <vector>

namespace brimwright::reports {
namespace {

using namespace learning;
using Json = nlohmann::ordered_json;

struct Number {
  double number;
  const char* unit;
};
Number number_of(const Value& value) {
  if (const auto* length = std::get_if<Length>(&value))
    return {to_decimals(*length / millimetre, 3), "mm"};
  if (const auto* volume = std::get_if<Volume>(&value))
    return {to_decimals(*volume / millilitre, 3), "ml"};
  if (const auto* mass = std::get_if<Mass>(&value)) return {to_decimals(*mass / gram, 3), "g"};
  if (const auto* density = std::get_if<Density>(&value))
    return {to_decimals(*density / gram_per_millilitre, 5), "g/ml"};
  if (const auto* share = std::get_if<Share>(&value))
    return {to_decimals(share->in_percent(), 4), "%"};
  if (const auto* factor = std::get_if<Factor>(&value))
    return {to_decimals(factor->factor, 5), "factor"};
  return {to_decimals(std::get<Minutes>(value).count(), 6), "min"};
}

const char* name_of(Standing standing) {
  switch (standing) {
    case Standing::nowhere:
      return "stands nowhere";
    case Standing::too_few:
      return "too few";
    case Standing::as_planned:
      return "as planned";
    case Standing::suggested:
      break;
  }
  return "suggested";
}

std::string day_text(const std::chrono::year_month_day& date) {
  const auto two = [](unsigned number) {
    return (number < 10 ? "0" : "") + std::to_string(number);
  };
  return std::to_string(static_cast<int>(date.year())) + "-" +
         two(static_cast<unsigned>(date.month())) + "-" + two(static_cast<unsigned>(date.day()));
}

Json text_or_null(const std::optional<std::string>& text) {
  return text ? Json(*text) : Json(nullptr);
}

Json taking_json(const Taking& taking) {
  return {{"batches", taking.batches},
          {"on", taking.on},
          {"before", text_or_null(taking.before)},
          {"steps", taking.steps}};
}

/// Null where it stands in no file.
Json place_json(const StandsIn& in) {
  if (in.file.empty()) return nullptr;
  Json json = {{"file", in.file},
               {"says", text_or_null(in.says)},
               {"would_say", in.would_say},
               {"is_taken", in.is_taken},
               {"taken", in.taken ? taking_json(*in.taken) : Json(nullptr)}};
  if (in.refused)
    json["refused"] = {{"problem", in.refused->problem}, {"remedy", in.refused->remedy}};
  return json;
}

Json effect_json(const Effect& effect) {
  return {{"of", effect.of},
          {"unit", number_of(effect.now).unit},
          {"now", number_of(effect.now).number},
          {"then", number_of(effect.then).number}};
}

/// A line for each batch, of which there may be tens of thousands.
LongList values_of(const Figure& figure) {
  LongList values("values");
  Json entry = {{"batch", ""}, {"date", ""}, {"value", 0}};
  Json &batch = entry["batch"], &date = entry["date"], &number = entry["value"];
  for (const BatchValue& value : figure.values) {
    batch = value.code;
    date = day_text(value.date);
    number = number_of(value.value).number;
    values.put(entry);
  }
  return values;
}

/// Its values are a list of their own.
Json figure_json(const NamedFigure& named) {
  const Figure& figure = named.figure;
  const auto* interval = std::get_if<Interval>(&figure.spread.is);
  Json effects = Json::array();
  for (const Effect& effect : named.effects) effects.push_back(effect_json(effect));
  Json json = {
      {"name", named.name},
      {"words", figure_words(figure.id)},
      {"unit", number_of(figure.value).unit},
      {"value", number_of(figure.value).number},
      {"low", number_of(figure.spread.low).number},
      {"high", number_of(figure.spread.high).number},
      {"level_percent", interval ? Json(to_decimals(100 * interval->level, 2)) : Json(nullptr)},
      {"used_now", figure.used_now ? Json(number_of(*figure.used_now).number) : Json(nullptr)},
      {"standing", name_of(figure.standing)},
      {"in_file", place_json(named.in)},
      {"with_it", effects},
      {"values", nullptr}};
  if (!named.no_plan.empty()) json["no_plan_with_it"] = named.no_plan;
  return json;
}

LongList figures_of(const LearnedReport& report) {
  std::vector<std::optional<LongList>> values(report.figures.size());
  geometry::in_parallel(values.size(),
                        [&](std::size_t i) { values[i] = values_of(report.figures[i].figure); });
  LongList figures("figures");
  for (std::size_t i = 0; i < values.size(); ++i)
    figures.put(figure_json(report.figures[i]), {*std::move(values[i])});
  return figures;
}

}  // namespace

std::string learned_json(const LearnedReport& report) {
  Json untold = Json::array(), contradictions = Json::array();
  for (const Untold& one : report.untold)
    untold.push_back({{"name", figure_name(one.id)},
                      {"words", figure_words(one.id)},
                      {"batches", one.batches},
                      {"text", untold_text(one)}});
  for (const Contradiction& one : report.contradictions)
    contradictions.push_back({{"batch", one.code},
                              {"unaccounted_g", to_decimals(one.unaccounted / gram, 1)},
                              {"text", contradiction_text(one)}});
  return json_document({{"schema", "brimwright.learned/1"},
                        {"source", report.source},
                        {"batches", report.batches},
                        {"left_out", report.earlier},
                        {"years", report.years},
                        {"figures", nullptr},
                        {"untold", untold},
                        {"contradictions", contradictions}},
                       {figures_of(report)});
}

}  // namespace brimwright::reports
