#include "chemistry/lye_solution.h"

#include "chemistry/crystallisation.h"
#include "chemistry/liquid_water.h"
#include "chemistry/liquids.h"
#include "chemistry/lye.h"
#include "chemistry/proportions.h"
#include "units/printing.h"
#include "units/reading.h"
#include "units/share_of.h"
#include "units/wording.h"
#include "units/written_number.h"

#include <algorithm>
#include <optional>

namespace brimwright::chemistry {
namespace {

// Below what any lye of a formula may be (refuse_undissolved_or_drowned) there is nothing to
// dilute.
constexpr Share weakest = 15 * percent;
// As weighed, no lye is stronger: alkali needs its own weight of water.
constexpr Share strongest = 50 * percent;
// A jug known no better than so many points is of no use: common practice, no source.
constexpr Share widest = 10 * percent;

bool is_figure(const std::string& text) {
  return !text.empty() && text.find_first_not_of("0123456789.,/ ") == std::string::npos;
}

/// "1:1", "1 : 2".
std::optional<std::pair<double, double>> ratio_in(const std::string& text, const Place& where) {
  const auto colon = text.find(':');
  if (colon == std::string::npos) return std::nullopt;
  const std::string one = text.substr(0, colon), other = text.substr(colon + 1);
  if (!is_figure(one) || !is_figure(other)) return std::nullopt;
  return std::pair{read_number(one, where), read_number(other, where)};
}

[[noreturn]] void refuse_ratio(const std::string& text, std::pair<double, double> parts,
                               const Place& where) {
  const auto strength = [](double alkali, double water) {
    return in_percent(Share::of_one(alkali / (alkali + water)), 2);
  };
  const auto [one, other] = parts;
  throw UserError(where, quoted(text) + " is a ratio, which may be read both ways",
                  one == other ? "write the pure alkali as a share of the solution: \"50 %\""
                               : "write the pure alkali as a share of the solution: \"" +
                                     strength(one, other) + "\" for " + trimmed(one, 3) +
                                     " of alkali in " + trimmed(other, 3) + " of water, \"" +
                                     strength(other, one) + "\" for the other way round");
}

/// 0.5 and 50 both mean 50 %; which it is must be written.
void refuse_unsaid(const std::string& text, const Place& where) {
  if (const auto parts = ratio_in(text, where)) refuse_ratio(text, *parts, where);
  if (!is_figure(text)) return;
  const double bare = read_number(text, where);
  throw UserError(where, "is " + text + " without a unit",
                  "write the pure alkali as a share of the solution: \"" +
                      trimmed(bare <= 1 ? bare * 100 : bare, 2) + " %\", if that is meant");
}

Share read_part(const std::string& text, const Place& where, std::string_view example) {
  refuse_unsaid(text, where);
  return read_share(text, where, example);
}

Share read_strength(const Fields& fields, Alkali alkali) {
  const Place where = fields.place("strength");
  if (fields.has("strength") && !fields.is_text("strength"))
    refuse_unsaid(trimmed(fields.number("strength"), 4), where);
  const Share strength = read_part(fields.text("strength"), where, "50 %");
  if (strength > strongest)
    throw UserError(where, "is " + in_percent(strength, 2) + ", stronger than lye is weighed",
                    formula_of(alkali) + " stays dissolved up to " +
                        in_percent(solubility_at_20_celsius(alkali), 1) +
                        " at 20 °C; dilute it to 50 % or less, or weigh the alkali dry");
  if (strength < weakest)
    throw UserError(where, "is " + in_percent(strength, 2) + ", weaker than the lye of any batter",
                    "give the pure alkali as a share of the solution, such as \"50 %\"");
  return strength;
}

/// Fills in `low` and `high` around the strength.
void read_range(const Fields& fields, StandingSolution& standing) {
  const Place where = fields.place("strength_range");
  if (!fields.has("strength_range"))
    throw UserError(where, "is missing, and no solution keeps to its strength",
                    "give the weakest and the strongest it may be by now, such as [\"49 %\", \"51 "
                    "%\"]: an open jug grows stronger as water evaporates");
  const auto ends = fields.texts("strength_range");
  if (ends.size() != 2)
    throw UserError(where, "has " + std::to_string(ends.size()) + " values",
                    "give the weakest and the strongest, such as [\"49 %\", \"51 %\"]");
  standing.low = read_part(ends[0], {where.file, where.field + "/0"}, "49 %");
  standing.high = read_part(ends[1], {where.file, where.field + "/1"}, "51 %");
  if (standing.low > standing.high)
    throw UserError(where, "has the strongest first, " + ends[0] + " to " + ends[1],
                    "give the weakest first");
  if (standing.low > standing.strength || standing.strength > standing.high)
    throw UserError(where, "does not include the strength of " + in_percent(standing.strength, 3),
                    "give the weakest first, with the strength between the two");
  const Share most = solubility_at_20_celsius(standing.alkali);
  if (standing.high > most)
    throw UserError(
        where,
        "reaches " + ends[1] + ", more than stays dissolved: " + in_percent(most, 1) + " at 20 °C",
        "warm and stir the solution clear, dilute it and state it anew");
  if (standing.high - standing.low > widest)
    throw UserError(where, "is " + ends[0] + " to " + ends[1] + ", too wide to weigh alkali by",
                    "have it titrated, or make it anew: at most 10 points from end to end");
}

/// Of a purity that is typed as a dry alkali's in a formula.
std::optional<Share> read_dissolved_of(const Fields& fields) {
  const auto made = fields.optional_object("made_from");
  if (!made) return std::nullopt;
  const Share purity = made->share("purity", 80 * percent, whole, "99 %");
  made->refuse_unknown();
  return purity;
}

Temperature read_kept_at(const Fields& fields) {
  const Temperature at = fields.temperature("kept_at");
  if (at.celsius() < -20 || at.celsius() > 60)
    throw UserError(fields.place("kept_at"), "is " + in_both_scales(at),
                    "give the coldest it stands, -20 to 60 °C");
  return at;
}

}  // namespace

StandingSolution read_lye_solution(const Fields& fields, const std::string& name) {
  StandingSolution standing{};
  standing.alkali = fields.choice("alkali", {"NaOH", "KOH"}) == "NaOH"
                        ? Alkali::sodium_hydroxide
                        : Alkali::potassium_hydroxide;
  standing.strength = read_strength(fields, standing.alkali);
  read_range(fields, standing);
  standing.solution = {name, read_kept_at(fields), read_dissolved_of(fields)};
  if (standing.solution.dissolved_of && standing.strength > *standing.solution.dissolved_of)
    throw UserError(fields.place("made_from"), "is less pure than the solution is strong",
                    "give the purity of the dry alkali that it is made of");
  if (fields.has("made_on")) (void)fields.date("made_on");
  (void)fields.optional_name("from");
  (void)fields.optional_text("note");
  fields.refuse_unknown();
  return standing;
}

void take_solution(Formula& formula, const StandingSolution& standing, const Place& where) {
  const std::string what = formula_of(standing.alkali);
  const auto alkali =
      std::find_if(formula.alkalis.begin(), formula.alkalis.end(),
                   [&](const FormulaAlkali& one) { return one.alkali == standing.alkali; });
  if (alkali == formula.alkalis.end())
    throw UserError(where,
                    quoted(standing.solution.name) + " is a solution of " + what + ", and " +
                        quoted(formula.name) + " takes " +
                        formula_of(formula.alkalis.front().alkali),
                    "name a solution of the formula's own alkali, or leave it out and weigh dry");
  if (alkali->solution)
    throw UserError(where,
                    quoted(standing.solution.name) + " and " + quoted(alkali->solution->name) +
                        " are both solutions of " + what,
                    "name the one that is weighed");
  alkali->solution = standing.solution;
  alkali->purity = standing.strength;
  alkali->purity_low = standing.low;
  alkali->purity_high = standing.high;
  alkali->taken_as_exact = standing.low == standing.high;
  alkali->range_assumed = false;
  settle_liquids(
      formula);  // the batter has lost the dry alkali's impurities, and rates may be of it
}

void refuse_flooded_lye(const Formula& formula, const Place& where) {
  const Proportions per_fat = proportions(formula);
  double dry = 0;
  for (std::size_t k = 0; k < formula.alkalis.size(); ++k) {
    const FormulaAlkali& alkali = formula.alkalis[k];
    if (!alkali.solution) dry += alkali.purity.of_one() * per_fat.alkalis[k];
  }
  const double all = per_fat.water + per_fat.water_in_liquids + per_fat.water_in_solutions;
  const bool with_liquids = per_fat.water_in_liquids > 1e-12;
  if (per_fat.water < -1e-9)
    throw UserError(
        where,
        with_liquids ? "brings, with the liquids of " + quoted(formula.name) + ", " +
                           in_percent(Share::of_one((all - per_fat.water) / all)) +
                           " of the water of its lye, more than all of it"
                     : "brings more water than " + quoted(formula.name) + " has in its lye of " +
                           in_percent(per_fat.stated_strength),
        with_liquids
            ? "let the liquids replace less, take a stronger solution, or weigh dry alkali"
            : "take a stronger solution, weigh dry alkali, or give the formula more water");
  std::vector<Mass> additives;
  for (const double one : per_fat.additives) additives.push_back(one * gram);
  const double for_dry = per_fat.water + water_in_lye_liquids(formula, additives) / gram;
  if (dry > for_dry + 1e-9)
    throw UserError(where,
                    "leaves too little water for the alkali that " + quoted(formula.name) +
                        " takes dry beside it: " + trimmed(for_dry / dry, 2) +
                        " of its weight, where it needs its own weight to dissolve",
                    "give the formula more water, or weigh both alkalis dry");
}

std::string name_of(const FormulaAlkali& alkali) {
  const std::string formula = formula_of(alkali.alkali);
  const std::string per_cent = trimmed(alkali.purity.in_percent(), 2);
  if (!alkali.solution) return formula + ", " + per_cent + " % pure";
  return formula + " solution, " + per_cent + " % strong (" + alkali.solution->name + ")";
}

std::vector<Remark> standing_solution_cautions(const Formula& formula) {
  std::vector<Remark> cautions;
  for (const FormulaAlkali& alkali : formula.alkalis) {
    if (!alkali.solution) continue;
    auto remark = crystallisation(alkali.alkali, alkali.purity, alkali.solution->kept_at);
    if (!remark) continue;
    remark->text = alkali.solution->name + ": " + remark->text;
    cautions.push_back(std::move(*remark));
  }
  return cautions;
}

}  // namespace brimwright::chemistry
