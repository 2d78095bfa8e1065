#include "chemistry/formula_file.h"

#include "chemistry/additive_reading.h"
#include "chemistry/alkali_data.h"
#include "chemistry/fat_cautions.h"
#include "chemistry/fat_reading.h"
#include "chemistry/liquid_reading.h"
#include "chemistry/liquids.h"
#include "chemistry/lye.h"
#include "chemistry/proportions.h"
#include "chemistry/share_sum.h"
#include "chemistry/supplied_values.h"
#include "chemistry/user_fats.h"
#include "schemas/kinds.h"
#include "units/printing.h"
#include "units/reading.h"
#include "units/wording.h"
#include "units/written_number.h"

#include <algorithm>
#include <cmath>

namespace brimwright::chemistry {
namespace {

/// The objects of a list that must hold at least one.
std::vector<Fields> needed_objects(const Fields& fields, std::string_view key,
                                   const std::string& remedy) {
  std::vector<Fields> entries = fields.objects(key);
  if (entries.empty())
    throw UserError(fields.place(key), fields.has(key) ? "is empty" : "is missing", remedy);
  return entries;
}

std::vector<FormulaFat> read_fats(const Fields& fields, const FatTable& table) {
  std::vector<FormulaFat> fats;
  Share sum;
  for (const Fields& entry : needed_objects(fields, "fats", "list the fats with their shares")) {
    FormulaFat fat = read_formula_fat(entry, table);
    const bool twice = std::any_of(fats.begin(), fats.end(),
                                   [&](const auto& other) { return other.fat.id == fat.fat.id; });
    if (twice)
      throw UserError(entry.place("fat"), "\"" + fat.fat.id + "\" appears twice among the fats",
                      "add its shares together in one entry");
    sum = sum + fat.share;
    fats.push_back(std::move(fat));
  }
  refuse_wrong_sum(sum, "the fats", fields.place("fats"));
  return fats;
}

/// Where the supplier gives none.
void assume_purity_range(FormulaAlkali& alkali) {
  alkali.purity_low = alkali.purity_high = alkali.purity;
  const auto& assumed = data_of(alkali.alkali).assumed_purity;
  alkali.range_assumed = assumed.has_value();
  alkali.taken_as_exact = !assumed;
  if (!assumed) return;
  alkali.purity_low = assumed->low(alkali.purity);
  alkali.purity_high = assumed->high(alkali.purity);
}

/// The supplier's range around the stated purity.
void read_purity_range(const Fields& entry, FormulaAlkali& alkali) {
  if (!entry.has("purity_range")) return assume_purity_range(alkali);
  const Place where = entry.place("purity_range");
  const auto ends = entry.texts("purity_range");
  if (ends.size() != 2)
    throw UserError(where, "has " + std::to_string(ends.size()) + " values",
                    "give the lowest and the highest, such as [\"98 %\", \"100 %\"]");
  alkali.purity_low = read_share(ends[0], {where.file, where.field + "/0"}, "98 %");
  alkali.purity_high = read_share(ends[1], {where.file, where.field + "/1"}, "100 %");
  if (alkali.purity_low > alkali.purity || alkali.purity > alkali.purity_high)
    throw UserError(where, "does not include the purity of " + in_percent(alkali.purity, 3),
                    "give the lowest first, with the purity between the two");
  if (alkali.purity_low < 80 * percent || alkali.purity_high > whole)
    throw UserError(where, "is " + ends[0] + " to " + ends[1], "keep it within 80 to 100 %");
}

/// 0.98 and 98 both mean 98 %; as neither says so, which it is must be written.
void refuse_bare_purity(const Fields& entry) {
  const std::string key = "purity";
  if (!entry.has(key)) return;
  double bare = 0;
  if (!entry.is_text(key)) {
    bare = entry.number(key);
  } else if (entry.text(key).find_first_not_of("0123456789.,") == std::string::npos) {
    bare = read_number(entry.text(key), entry.place(key));
  } else {
    return;
  }
  const double in_percent = bare <= 1.5 ? bare * 100 : bare;
  throw UserError(entry.place(key), "is " + trimmed(bare, 4) + " without a unit",
                  "write it in per cent: \"" + trimmed(in_percent, 2) + " %\", if that is meant");
}

FormulaAlkali read_alkali(const Fields& entry) {
  FormulaAlkali alkali{};
  alkali.alkali = entry.choice("alkali", {"NaOH", "KOH"}) == "NaOH" ? Alkali::sodium_hydroxide
                                                                    : Alkali::potassium_hydroxide;
  alkali.share = entry.share("share", Share(), whole, "100 %");
  if (!(alkali.share > Share()))
    throw UserError(entry.place("share"), "is 0 %", "leave out an alkali that does nothing");
  // KOH is sold from 85 % on (USP, data/lye.json); below 80 % it must be a ready-made solution,
  // whose water would go uncounted.
  refuse_bare_purity(entry);
  alkali.purity = entry.share("purity", 80 * percent, whole, "99 %");
  read_purity_range(entry, alkali);
  entry.refuse_unknown();
  return alkali;
}

std::vector<FormulaAlkali> read_alkalis(const Fields& fields) {
  std::vector<FormulaAlkali> alkalis;
  Share sum;
  for (const Fields& entry : needed_objects(fields, "alkali", "give NaOH, KOH or both")) {
    const FormulaAlkali alkali = read_alkali(entry);
    for (const auto& other : alkalis)
      if (other.alkali == alkali.alkali)
        throw UserError(entry.place("alkali"), formula_of(alkali.alkali) + " appears twice",
                        "add its shares together in one entry");
    sum = sum + alkali.share;
    alkalis.push_back(alkali);
  }
  refuse_wrong_sum(sum, "the shares that the alkalis saponify", fields.place("alkali"));
  return alkalis;
}

WaterAmount read_water(const Fields& fields) {
  if (fields.is_text("water") && plain(fields.text("water")).ends_with('%'))
    throw UserError(fields.place("water"),
                    quoted(fields.text("water")) + " does not say what it is a share of",
                    "give it as { \"lye_strength\": \"33 %\" }, alkali in the lye solution, or { "
                    "\"share_of_fats\": \"33 %\" }, or as { \"water_to_alkali\": 2 }");
  const Fields water = fields.object("water");
  const auto ways = water.keys();
  if (ways.size() != 1)
    throw UserError(water.place(), "gives water in " + std::to_string(ways.size()) + " ways",
                    "give it in one: \"lye_strength\", \"water_to_alkali\" or \"share_of_fats\"");
  const std::string& way = ways.front();
  // What is outside 15 to 50 % of strength is refused once the alkali is known, however it is
  // stated.
  if (way == "lye_strength") return LyeStrength{water.share(way, 0.1 * percent, whole)};
  if (way == "share_of_fats") return WaterOfFats{water.share(way, 0.1 * percent, 10 * whole)};
  if (way != "water_to_alkali")
    throw UserError(water.place(way), "not known",
                    "give water as \"lye_strength\", \"water_to_alkali\" or \"share_of_fats\"");
  const double ratio = water.number(way);
  if (!(ratio > 0))
    throw UserError(water.place(way), "is " + exact(ratio),
                    "give parts of water for one part of pure alkali, such as 2");
  return WaterToAlkali{ratio};
}

Temperature read_pour_temperature(const Fields& fields) {
  const Temperature at = fields.temperature("pour_temperature");
  // The lye densities are measured from 4 degC on (data/lye.json); water boils at 100.
  if (at.celsius() < 4 || at.celsius() > 100)
    throw UserError(fields.place("pour_temperature"),
                    "is " + trimmed(at.celsius(), 1) + " °C, where no batter is poured",
                    "give the batter's temperature when it is poured, 4 to 100 °C");
  return at;
}

Share read_superfat(const Fields& fields) {
  if (!fields.has("superfat"))
    throw UserError(fields.place("superfat"), "is missing",
                    "give the share of the fats left unsaponified, such as \"5 %\"; without it no "
                    "alkali is worked out");
  // Above 30 % the batter is no longer soap that sets: common practice, no source.
  return fields.share("superfat", Share(), 30 * percent);
}

/// The lowest solubility among the formula's alkalis, with its name.
std::string solubility_in_words(const Formula& formula) {
  const auto least = std::min_element(
      formula.alkalis.begin(), formula.alkalis.end(), [](const auto& a, const auto& b) {
        return solubility_at_20_celsius(a.alkali) < solubility_at_20_celsius(b.alkali);
      });
  return formula_of(least->alkali) + " stays dissolved up to " +
         in_percent(solubility_at_20_celsius(least->alkali), 3) + " at 20 °C";
}

/// The alkali must dissolve in what the formula calls its water; what acids bring of water may not
/// drown it.
void refuse_undissolved_or_drowned(const Formula& formula, const Proportions& per_fat,
                                   const Place& where) {
  const auto makes = [](Share strength) {
    return "makes a lye strength of " + in_percent(strength);
  };
  if (per_fat.stated_strength.of_one() > 0.50 + 1e-9)
    throw UserError(where, makes(per_fat.stated_strength) + ", which does not dissolve",
                    solubility_in_words(formula) + "; keep the strength at 50 % or below");
  const bool by_acids = per_fat.water_in_acids > 1e-3;
  if (per_fat.lye_strength.of_one() < 0.15 - 1e-9)
    throw UserError(
        where,
        makes(per_fat.lye_strength) +
            (by_acids ? " with the water that the acids among the additives bring" : "") +
            ", which is far too weak",
        by_acids ? "list what brings it under \"liquids\", where it stands in for water, "
                   "or give less of it"
                 : "give more alkali or less water; makers use 25 to 40 % (common "
                   "practice)");
}

/// Colours may not ask for more of an oil than the formula holds.
void refuse_oil_not_there(const Formula& formula, const Proportions& per_fat, const Place& where) {
  for (const Additive& additive : formula.additives) {
    if (!additive.dispersal || !additive.dispersal->from_the_formula) continue;
    const auto is_its_oil = [&](const FormulaFat& f) {
      return f.fat.id == additive.dispersal->oil.id;
    };
    if (std::none_of(formula.fats.begin(), formula.fats.end(), is_its_oil))
      throw UserError(where,
                      "\"" + additive.name + "\" takes its oil from the formula, which has no \"" +
                          additive.dispersal->oil.id + "\"",
                      "name an oil of the formula, or write \"from\": \"extra\"");
  }
  for (std::size_t j = 0; j < formula.fats.size(); ++j)
    if (per_fat.set_aside[j] > per_fat.fats[j] * (1 + 1e-9))
      throw UserError(where,
                      "the colours take " + in_percent(Share::of_one(per_fat.set_aside[j]), 3) +
                          " of the fats as \"" + formula.fats[j].fat.id +
                          "\", of which the formula has " + in_percent(formula.fats[j].share, 3),
                      "disperse them in less oil, or write \"from\": \"extra\"");
}

void read_hours(Formula& formula, const Fields& fields) {
  const auto hours = [&](const char* key, const char* example) {
    const auto time = fields.duration(key, example);
    if (time.count() == 0)
      throw UserError(fields.place(key), "is zero",
                      "give it from the pour on, such as \"" + std::string(example) + "\"");
    return time;
  };
  if (fields.has("unmould_after")) formula.unmould_after = hours("unmould_after", "18 h");
  if (fields.has("cut_within")) formula.cut_within = hours("cut_within", "48 h");
  if (formula.unmould_after && formula.cut_within && *formula.cut_within < *formula.unmould_after)
    throw UserError(fields.place("cut_within"),
                    "is over before the soap is out of its mould (\"unmould_after\")",
                    "give a longer time, or unmould earlier");
}

}  // namespace

Formula read_formula(const Fields& fields, const FatTable& table) {
  fields.of(schemas::formula());
  fields.may_hold({"$schema",
                   "schema",
                   "name",
                   "note",
                   "own_fats",
                   "fats",
                   "superfat",
                   "alkali",
                   "water",
                   "pour_temperature",
                   "additives",
                   "fragrances",
                   "colours",
                   "liquids",
                   "measured_density",
                   "cure",
                   "water_lost_in_cure",
                   "drying",
                   "unmould_after",
                   "cut_within",
                   "learned"});
  (void)fields.optional_text("$schema");
  Formula formula;
  formula.file = fields.file();
  formula.spelling = fields.spelling();
  formula.name = fields.name("name");
  formula.note = fields.optional_text("note").value_or("");
  (void)fats_file_named_in(fields);
  formula.fats = read_fats(fields, table);
  formula.superfat = read_superfat(fields);
  formula.alkalis = read_alkalis(fields);
  formula.water = read_water(fields);
  formula.pour_temperature = read_pour_temperature(fields);
  formula.additives = read_additives(fields, table);
  for (Additive& liquid : read_liquids(fields, table))
    formula.additives.push_back(std::move(liquid));
  if (fields.has("measured_density")) formula.measured_density = fields.density("measured_density");
  if (fields.has("cure")) formula.cure = fields.duration("cure", "35 days");
  read_hours(formula, fields);
  if (fields.has("water_lost_in_cure"))
    formula.water_lost_in_cure = fields.share("water_lost_in_cure", Share(), whole, "85 %");
  formula.drying = read_drying(fields);
  (void)fields.optional_object("learned");
  fields.refuse_unknown();

  refuse_counted_twice(formula);
  settle_liquids(formula);
  const Proportions per_fat = proportions(formula);
  refuse_undissolved_or_drowned(formula, per_fat, fields.place("water"));
  refuse_starved_lye(per_fat, fields.place("liquids"));
  refuse_oil_not_there(formula, per_fat, fields.place("colours"));
  refuse_wax_for_fat(formula, per_fat, fields.place("fats"));
  refuse_lye_heavy_values(formula);
  return formula;
}

}  // namespace brimwright::chemistry
