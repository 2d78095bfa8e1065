#include "chemistry/acid_reading.h"

#include "chemistry/acid_names.h"
#include "chemistry/acids.h"
#include "chemistry/inci_data.h"
#include "chemistry/suspicious_names.h"
#include "units/complaint_facts.h"
#include "units/printing.h"
#include "units/reading.h"
#include "units/wording.h"

#include <algorithm>

namespace brimwright::chemistry {
namespace {

std::string in_mg(double mg_koh_per_g) { return trimmed(mg_koh_per_g, 1) + " mg KOH/g"; }

[[noreturn]] void refuse_unknown_acid(const std::string& name, const Place& where) {
  std::string alike, all;
  const auto hint = acid_hint(name);
  for (const Acid& acid : shipped_acids()) {
    all += (all.empty() ? "\"" : ", \"") + acid.name + "\"";
    if (acid.name.find(name) == std::string::npos && !(hint && hint->acid == acid.name)) continue;
    alike += (alike.empty() ? "\"" : " or \"") + acid.name + "\"";
  }
  throw UserError(where, "\"" + name + "\" is not an acid known here",
                  alike.empty() ? "give what a gram of it takes up, as in { \"takes_up\": \"10 mg "
                                  "KOH/g\" } by its supplier's document, or name one of " +
                                      all
                                : "give " + alike);
}

void refuse_missing(const Additive& additive, const Place& where) {
  const bool is_asked = additive.kind == AdditiveKind::additive && names_an_acid(additive.name);
  const auto hint = acid_hint(additive.name);
  // "Carminic acid" is a colour, citric acid is none.
  const bool is_no_colour = additive.kind == AdditiveKind::colour && hint && hint->is_chemical;
  if (!is_asked && !is_no_colour) return;
  throw UserError(
      where, "is missing, but \"" + additive.name + "\" sounds like an acid, which uses up alkali",
      acid_hint_in_words(additive.name));
}

/// KOH that the pure acid of the hint takes, whatever its water: of citric acid the anhydrous
/// one's.
double most_of_its_kind(const AcidHint& hint) {
  const std::string& inci = inci_data().acid(hint.acid).inci;
  double most = 0;
  for (const Acid& acid : shipped_acids())
    if (inci_data().acid(acid.name).inci == inci) most = std::max(most, acid.koh_g_per_g * 1000);
  return most;
}

/// What the formula counts: of pure acid, if it names one, and in KOH.
struct Counted {
  std::optional<Share> pure;
  double mg_koh_per_g;
  Place where;
  std::string in_words() const {
    return pure ? in_percent(*pure, 2) + " of pure acid" : in_mg(mg_koh_per_g);
  }
};

void refuse_more_than_its_name_says(const Additive& additive, const Counted& counted) {
  const auto hint = acid_hint(additive.name);
  if (!hint) return;
  const double most = most_of_its_kind(*hint);
  // 1e-4: a typed value is rounded.
  if (counted.mg_koh_per_g > most * (1 + 1e-4))
    throw UserError(counted.where,
                    "counts " + in_mg(counted.mg_koh_per_g) + " for \"" + additive.name +
                        "\", which pure takes " + in_mg(most),
                    acid_hint_in_words(additive.name));
  if (!hint->by_figure) return;
  // 2 %: "99.5 %" on a bag is no other strength than pure.
  const double figure = hint->by_figure->of_one() * 1.02;
  const bool over =
      counted.pure ? counted.pure->of_one() > figure : counted.mg_koh_per_g > most * figure;
  if (over)
    throw UserError(counted.where,
                    "counts " + counted.in_words() + ", but the name \"" + additive.name +
                        "\" says " + in_percent(*hint->by_figure, 2),
                    acid_hint_in_words(additive.name));
}

bool is_over(const AcidBound& bound, const Counted& counted) {
  if (!counted.pure) return counted.mg_koh_per_g > bound.most_koh_mg_per_g * (1 + 1e-9);
  const double acetic = find_acid("acetic acid (100 %)")->koh_g_per_g * 1000;
  // Oxalic and phosphoric acid take more than any acid that such a thing has.
  return counted.pure->of_one() > bound.most.of_one() + 1e-9 ||
         counted.mg_koh_per_g > bound.most.of_one() * acetic * (1 + 1e-9);
}

/// True if a juice, vinegar, wine or sour milk counts more than such a thing has and the formula
/// confirms it.
bool is_confirmed_beyond(const Additive& additive, const Fields& fields, const Counted& counted) {
  const bool confirmed = fields.confirms_value_of(fields.has("takes_up") ? "takes_up" : "share");
  const auto bound = acid_bound(additive.name);
  if (!bound && confirmed)
    throw UserError(fields.place("confirmed"), "confirms nothing",
                    "leave it out: only a juice, vinegar, wine or sour milk has a strength that "
                    "may want confirming");
  if (!bound || !is_over(*bound, counted)) return false;
  const bool is_concentrate = says_concentrated(additive.name);
  if (is_concentrate && confirmed) return true;
  throw UserErrorWithFacts(
      counted.where,
      "counts " + counted.in_words() + " in \"" + additive.name + "\", where a " + bound->kind +
          " holds at most " +
          (counted.pure ? in_percent(bound->most, 2) : in_mg(bound->most_koh_mg_per_g)) +
          " (common practice, no source); too much here makes the soap lye-heavy",
      is_concentrate
          ? "read the bottle again; if it truly is so strong, put \"confirmed\": true beside it"
          : "give the pure acid in it as the bottle states it; only an essence or a concentrate "
            "holds more: then its name says so and \"confirmed\": true stands beside the share",
      {.is_lye_heavy = true});
}

/// Sold salts may hold a little acid beyond what is neutral: 20 mg KOH/g is 3 % of lactic acid;
/// common practice, no source.
void refuse_acid_of_salt(const Additive& additive, const Counted& counted) {
  if (counted.mg_koh_per_g <= 20 || !names_a_neutral_salt(additive.name)) return;
  throw UserErrorWithFacts(
      counted.where,
      "counts " + counted.in_words() + " in \"" + additive.name +
          "\", a salt whose acid has taken its alkali already; too much here makes "
          "the soap lye-heavy",
      "leave this out; if an acid is in it too, let the name say so", {.is_lye_heavy = true});
}

bool check_strength(const Additive& additive, const Fields& fields, const Counted& counted) {
  refuse_acid_of_salt(additive, counted);
  const bool confirmed = is_confirmed_beyond(additive, fields, counted);
  refuse_more_than_its_name_says(additive, counted);
  return confirmed;
}

Share read_acid_share(const Fields& fields) {
  const Share share = fields.share("share", Share(), whole);
  if (!(share > Share()))
    throw UserError(fields.place("share"), "is 0 %", "write \"none\" in place of the { }");
  return share;
}

/// In a liquid, whose own water is said apart, a solution counts by its pure acid.
ContainedAcid without_its_water(const ContainedAcid& acid, const Acid& solution) {
  const Acid& pure = *find_acid(solution.solution_of);
  ContainedAcid counted{pure.name, acid.pure_share * acid.share, pure.koh_g_per_g, pure.pure_share};
  counted.confirmed = acid.confirmed;
  return counted;
}

ContainedAcid read_named_acid(const Fields& fields, const Additive& additive) {
  const std::string name = fields.text("acid");
  if (names_a_fatty_acid(name))
    throw UserError(fields.place("acid"), "\"" + name + "\" is saponified as a fat is",
                    "list it under \"fats\", such as \"stearic_acid\", with its share of them");
  const Acid* acid = find_acid(name);
  if (acid == nullptr) refuse_unknown_acid(name, fields.place("acid"));
  ContainedAcid contained{name, read_acid_share(fields), acid->koh_g_per_g, acid->pure_share};
  contained.confirmed =
      check_strength(additive, fields,
                     {acid->pure_share * contained.share,
                      contained.share.of_one() * acid->koh_g_per_g * 1000, fields.place("share")});
  if (additive.liquid)
    return acid->solution_of.empty() ? contained : without_its_water(contained, *acid);
  const double fat = additive.contains_fat ? additive.contains_fat->share.of_one() : 0;
  if (!says_dry(additive.name))
    contained.water_beside = Share::of_one(std::max(0.0, 1 - contained.share.of_one() - fat));
  return contained;
}

double read_mg_koh_per_g(const Fields& fields) {
  const std::string key = "takes_up", unit = "mg KOH/g";
  const std::string text = fields.text(key);
  const Place where = fields.place(key);
  if (!text.ends_with(unit))
    throw UserError(where, "\"" + text + "\" does not end in \"" + unit + "\"",
                    "give milligrams of KOH for a gram of it, such as \"560 mg KOH/g\"");
  const double value = read_number(text.substr(0, text.size() - unit.size()), where);
  if (!(value > 0 && value <= most_koh_mg_per_g))
    throw UserError(where, "is " + in_mg(value),
                    "give a value above 0 and up to 1250; pure citric acid takes 876");
  return value;
}

ContainedAcid read_typed_need(const Fields& fields, const Additive& additive) {
  if (fields.has("acid") || fields.has("share"))
    throw UserError(fields.place("takes_up"), "stands beside \"acid\" or \"share\"",
                    "give either which acid and its share, or what a gram takes up");
  const double mg = read_mg_koh_per_g(fields);
  ContainedAcid contained{"", whole, mg / 1000};
  contained.confirmed =
      check_strength(additive, fields, {std::nullopt, mg, fields.place("takes_up")});
  const auto bound = acid_bound(additive.name);
  const bool is_wet = bound && !says_dry(additive.name) && !says_concentrated(additive.name);
  if (is_wet && !additive.liquid) contained.water_beside = whole - bound->most;
  return contained;
}

}  // namespace

std::string acid_hint_in_words(std::string_view name) {
  const auto hint = acid_hint(name);
  const auto bound = acid_bound(name);
  if (!hint || (bound && says_dry(name)))
    return "give from its supplier's document what a gram of it takes up, as in { \"takes_up\": "
           "\"10 mg KOH/g\" }, or \"none\", which leaves more fat than is shown and never lye";
  return "give which acid and how much, as in { \"acid\": \"" + hint->acid + "\", \"share\": \"" +
         in_percent(hint->share, 2) + "\"" + (hint->confirmed ? ", \"confirmed\": true" : "") +
         " } (" +
         (hint->by_figure ? "as its name says"
                          : "what such a thing holds at least: common practice, no source") +
         (hint->note.empty() ? "" : "; " + hint->note) + "), or \"none\"";
}

void read_acid_into(Additive& additive, const Fields& entry) {
  const std::string key = "contains_acid";
  if (!entry.has(key)) {
    refuse_missing(additive, entry.place(key));
    return;
  }
  if (entry.is_text(key) && entry.choice(key, {"none"}) == "none") {
    additive.denies_acid = names_an_acid(additive.name);
    return;
  }
  const Fields fields = entry.object(key);
  additive.contains_acid = fields.has("takes_up") ? read_typed_need(fields, additive)
                                                  : read_named_acid(fields, additive);
  (void)fields.has("confirmed");
  fields.refuse_unknown();
}

}  // namespace brimwright::chemistry
