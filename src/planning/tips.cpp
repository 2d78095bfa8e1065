#include "planning/tips.h"

#include "planning/usual_bench.h"
#include "schemas/kinds.h"
#include "units/learned_values.h"

#include <algorithm>
#include <set>

namespace brimwright::embedded {
std::string_view tips_json();
}

namespace brimwright::planning {
namespace {

constexpr std::size_t most_tips = 500;
constexpr std::size_t most_corners = 1'000;  // as the nozzle's own check says

geometry::StarOpening read_star(const Fields& star) {
  const geometry::StarOpening opening{static_cast<int>(star.whole_number("points", 3, 60)),
                                      star.positive_length("outer_radius"),
                                      star.positive_length("inner_radius")};
  usual_bench().ask(star, "outer_radius", "tip", opening.outer_radius);
  star.refuse_unknown();
  return opening;
}

geometry::RoundOpening read_round(const Fields& round) {
  const geometry::RoundOpening opening{round.positive_length("radius")};
  usual_bench().ask(round, "radius", "tip", opening.radius);
  round.refuse_unknown();
  return opening;
}

geometry::OutlineOpening read_outline(const Fields& fields) {
  geometry::OutlineOpening opening;
  for (const auto& point : fields.objects("outline", most_corners)) {
    opening.points_mm.push_back(
        {point.signed_length("x") / millimetre, point.signed_length("y") / millimetre});
    point.refuse_unknown();
  }
  return opening;
}

geometry::Opening read_opening(const Fields& fields) {
  const int ways = int{fields.has("round")} + int{fields.has("star")} + int{fields.has("outline")};
  if (ways != 1)
    throw UserError(fields.place(), ways == 0 ? "has no opening" : "has more than one opening",
                    "give one of \"round\", \"star\" or \"outline\"");
  if (fields.has("round")) return read_round(fields.object("round"));
  if (fields.has("star")) return read_star(fields.object("star"));
  return read_outline(fields);
}

}  // namespace

/// A hand that lays down less than half or more than double of the bead has another tip in it.
HandCorrection read_correction(const Fields& hand) {
  HandCorrection result;
  result.correction = hand.number("correction");
  if (!(result.correction >= 0.3 && result.correction <= 3))
    throw UserError(
        hand.place("correction"), "is not between 0.3 and 3",
        "it is weighed topping ÷ calculated topping, which is near 1; check the tip and the moves");
  if (hand.has("trials")) result.trials = hand.whole_number("trials", 1, 1'000'000);
  tell_learned(hand);
  hand.refuse_unknown();
  return result;
}

Tip read_tip(const Fields& fields) {
  Tip tip{.name = fields.name("name"), .opening = read_opening(fields)};
  geometry::check(tip.opening, fields.place());
  if (const auto hand = fields.optional_object("hand")) tip.hand = read_correction(*hand);
  tip.note = fields.optional_text("note").value_or("");
  fields.refuse_unknown();
  return tip;
}

std::vector<Tip> read_tips(const Fields& file) {
  file.optional_text("$schema");
  file.of(schemas::tips());
  file.optional_text("title");
  file.optional_text("source");
  std::vector<Tip> tips;
  std::set<std::string> names;
  for (const auto& entry : file.objects("tips", most_tips)) {
    tips.push_back(read_tip(entry));
    if (!names.insert(tips.back().name).second)
      throw UserError(entry.place("name"), "\"" + tips.back().name + "\" appears twice",
                      "give each tip a name of its own");
  }
  if (tips.empty()) throw UserError(file.place("tips"), "holds no tip", "give at least one");
  file.refuse_unknown();
  return tips;
}

const std::vector<Tip>& shipped_tips() {
  static const std::vector<Tip> tips = read_tips(Fields::parse(embedded::tips_json(), "tips.json"));
  return tips;
}

}  // namespace brimwright::planning
