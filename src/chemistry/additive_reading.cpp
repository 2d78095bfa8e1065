#include "chemistry/additive_reading.h"

#include "chemistry/acid_names.h"
#include "chemistry/acid_reading.h"
#include "chemistry/alkali_names.h"
#include "chemistry/fat_density.h"
#include "chemistry/fat_names.h"
#include "chemistry/fat_reading.h"
#include "chemistry/salts.h"
#include "chemistry/suspicious_names.h"
#include "units/printing.h"
#include "units/reading.h"
#include "units/wording.h"
#include "units/written_number.h"

#include <utility>

namespace brimwright::chemistry {
namespace {

Share above_zero_share(const Fields& fields, std::string_view key) {
  const Share share = fields.share(key, Share(), whole, "4 %");
  if (!(share > Share()))
    throw UserError(fields.place(key), "is 0 %", "write \"none\" in place of the { }");
  return share;
}

}  // namespace

/// Powders are lighter than Fields::density allows: loose mica lies at 0.2 to 0.4 g/ml, zinc
/// oxide's crystals at 5.6 (data/densities.json).
std::optional<Density> optional_powder_density(const Fields& fields, std::string_view key) {
  if (!fields.has(key)) return std::nullopt;
  if (!fields.is_text(key)) (void)fields.density(key);  // words the complaint
  const Place where = fields.place(key);
  const Density density = read_density(fields.text(key), where);
  if (density < 0.05 * gram_per_millilitre || density > 6 * gram_per_millilitre)
    throw UserError(where, "is " + in_g_per_ml(density, 4),
                    "a powder or liquid lies between 0.05 and 6 g/ml; check the number and its "
                    "unit");
  return density;
}

namespace {

bool by_the_spoon(const Rate& rate) { return std::holds_alternative<SpecificVolume>(rate.amount); }

bool is_zero(const Rate& rate) {
  if (const auto* share = std::get_if<Share>(&rate.amount)) return !(*share > Share());
  return !(std::get<SpecificVolume>(rate.amount).base() > 0);
}

}  // namespace

namespace {

constexpr const char* how_to_weigh_a_spoon =
    "give \"bulk_density\", such as \"2.5 g/tsp\": weigh a level spoon or cup of it and divide by "
    "what that holds";

/// What a spoon of it weighs, with the air between the grains.
void refuse_unknown_spoon(const Fields& entry, std::string_view key, const Additive& additive) {
  if (additive.bulk_density) return;
  if (!additive.density)
    throw UserError(entry.place(key), "is by the spoon, which has no weight of its own",
                    how_to_weigh_a_spoon);
  throw UserError(
      entry.place(key),
      "is by the spoon, and \"density\" is that of the grains in the batter, without "
      "the air that a spoonful holds between them",
      std::string(how_to_weigh_a_spoon) + "; of a liquid the two are one: give the same figure");
}

}  // namespace

Rate read_positive_rate(const Fields& entry, std::string_view key, const Additive& additive) {
  Rate rate = entry.rate(key);
  if (is_zero(rate))
    throw UserError(entry.place(key), "is zero", "leave it out, or give a rate above zero");
  if (by_the_spoon(rate)) refuse_unknown_spoon(entry, key, additive);
  return rate;
}

namespace {

GoesInto read_goes_into(const Fields& entry, AdditiveKind kind) {
  if (kind != AdditiveKind::additive && !entry.has("goes_into")) return GoesInto::batter;
  const std::string where = entry.choice("goes_into", {"lye", "fats", "batter"});
  if (where == "lye") return GoesInto::lye;
  return where == "fats" ? GoesInto::fats : GoesInto::batter;
}

/// Acid is dissolved in the water: in strong lye it would heat up once more, all at once.
bool read_into_cooled_lye(const Fields& entry, const Additive& additive) {
  const std::string key = "stirred_in", cooled = "once the lye has cooled";
  if (!entry.has(key)) {
    const Substance* known = find_substance(additive.name);
    return additive.goes_into == GoesInto::lye && additive.kind == AdditiveKind::additive &&
           !additive.contains_acid && known != nullptr && known->into_cooled_lye;
  }
  const bool is_cooled = entry.choice(key, {"before the alkali", cooled}) == cooled;
  if (additive.goes_into != GoesInto::lye)
    throw UserError(entry.place(key), "is for what goes into the lye",
                    "leave it out, or say \"lye\" in \"goes_into\"");
  if (is_cooled && additive.contains_acid)
    throw UserError(entry.place(key),
                    "would put acid into strong lye, which heats it once more, all at once",
                    "leave it out: acid is dissolved in the water, before the alkali");
  return is_cooled;
}

/// True if the key holds the text "none"; any other text is refused.
bool says_none(const Fields& entry, std::string_view key) {
  return entry.is_text(key) && entry.choice(key, {"none"}) == "none";
}

std::optional<ContainedFat> read_contained_fat(const Fields& entry, const Additive& additive,
                                               const FatTable& table) {
  const std::string key = "contains_fat";
  if (!entry.has(key)) {
    if (additive.kind == AdditiveKind::additive && names_something_fatty(additive.name))
      throw UserError(entry.place(key),
                      "is missing, but \"" + additive.name + "\" sounds as if it held fat",
                      "give which fat and how much, as in { \"fat\": \"coconut\", \"share\": \"20 "
                      "%\" }, or \"none\"");
    return std::nullopt;
  }
  if (says_none(entry, key)) return std::nullopt;
  const Fields fields = entry.object(key);
  ContainedFat contained{read_fat_id(fields, "fat", table), above_zero_share(fields, "share")};
  refuse_too_much_fat(additive.name, contained.share, fields.place("share"));
  fields.refuse_unknown();
  return contained;
}

void refuse_fatty_acid(const std::string& name, const Place& where) {
  if (!names_a_fatty_acid(name)) return;
  throw UserError(where, "\"" + name + "\" is saponified as a fat is",
                  "list it under \"fats\", such as \"stearic_acid\", with its share of them");
}

/// Both measures by weight or, by these densities, from spoons; and how that came about.
struct Measured {
  double oil_per_powder;
  std::string how;
};
Measured weighed(const Stirred& stirred, const std::string& text, const Density& spoonful,
                 const DensityAt& oil) {
  const auto in_words = [](Volume volume, Density density, bool estimated) {
    return in_ml(volume, 2) + (estimated ? " × about " : " × ") +
           trimmed(density / gram_per_millilitre, 3) + " g/ml";
  };
  std::string how = "\"" + text + "\"";
  const auto mass_of = [&](const Measure& measure, Density density, bool estimated,
                           const std::string& what) {
    if (const Mass* mass = std::get_if<Mass>(&measure)) return *mass;
    const Volume volume = std::get<Volume>(measure);
    how += ", " + what + " " + in_words(volume, density, estimated);
    return volume * density;
  };
  const Mass powder = mass_of(stirred.what, spoonful, false, "colour");
  const Mass into = mass_of(stirred.into, oil.density, oil.estimated, "oil");
  return {into / powder, how};
}

/// "1 tsp in 1 tbsp" as grams of oil for a gram of colour. Oil is measured in a spoon at 20 °C:
/// common practice, no source; ten degrees are under 1 % of it (data/densities.json).
Measured read_measured_oil(const Fields& fields, const Additive& additive, const Fat& oil) {
  const std::string key = "oil_per_colour";
  const std::string text = plain(fields.text(key));
  const Stirred stirred = read_stirred(text, fields.place(key));
  if (std::holds_alternative<Volume>(stirred.what) && !additive.bulk_density)
    throw UserError(fields.place(key),
                    "\"" + text +
                        "\" measures the colour by the spoon, which has no weight of its "
                        "own",
                    std::string(how_to_weigh_a_spoon) + "; put it beside the colour's \"name\"");
  return weighed(stirred, text, additive.bulk_density.value_or(Density{}),
                 density_of(oil, Temperature::in_celsius(20)));
}

std::optional<Dispersal> read_dispersal(const Fields& entry, const Additive& additive,
                                        const FatTable& table) {
  const auto fields = entry.optional_object("dispersed_in");
  if (!fields) return std::nullopt;
  Dispersal dispersal;
  dispersal.oil = read_fat_id(*fields, "fat", table);
  if (fields->is_text("oil_per_colour")) {
    const Measured measured = read_measured_oil(*fields, additive, dispersal.oil);
    dispersal.oil_per_powder = measured.oil_per_powder;
    dispersal.measured = measured.how;
  } else {
    dispersal.oil_per_powder = fields->number("oil_per_colour");
  }
  // Pigments are stirred into one to five times their weight of oil: common practice, no source.
  if (!(dispersal.oil_per_powder > 0 && dispersal.oil_per_powder <= 20))
    throw UserError(fields->place("oil_per_colour"),
                    "is " + trimmed(dispersal.oil_per_powder, 4) +
                        (dispersal.measured.empty() ? "" : " (" + dispersal.measured + ")"),
                    "give grams of oil for a gram of colour, above 0 and up to 20, or as you "
                    "measure it: \"1 tsp in 1 tbsp\"");
  dispersal.from_the_formula =
      !fields->has("from") || fields->choice("from", {"formula", "extra"}) == "formula";
  fields->refuse_unknown();
  return dispersal;
}

/// Traces of alkali set the pH of many a bought thing; more than 1 % is the thing itself: common
/// practice, no source.
void refuse_alkali_by_inci(const Additive& additive, const Place& where) {
  for (const InciShare& part : additive.label.inci)
    if (part.share > 1 * percent) refuse_alkali(part.name, where);
}

/// "Citric acid" is no scent; "baking soda fragrance" is one.
void refuse_acid_as_fragrance(const std::string& name, const Place& where) {
  const auto hint = acid_hint(name);
  if (!hint || !hint->is_chemical || says_scent(name)) return;
  throw UserError(
      where, "\"" + name + "\" uses up alkali and is not a fragrance",
      "list it under \"additives\" with its acid; if it is a scent of that name, call it \"" +
          name + " fragrance\"");
}

}  // namespace

void share_density(Additive& additive) {
  if (!additive.bulk_density) additive.bulk_density = additive.density;
  if (!additive.density) additive.density = additive.bulk_density;
}

namespace {

Additive read_additive(const Fields& entry, AdditiveKind kind, const FatTable& table) {
  Additive additive;
  additive.kind = kind;
  additive.name = entry.name("name");
  refuse_alkali(additive.name, entry.place("name"));
  if (kind == AdditiveKind::additive) refuse_fatty_acid(additive.name, entry.place("name"));
  additive.bulk_density = optional_powder_density(entry, "bulk_density");
  additive.density = optional_powder_density(entry, "density");
  // A liquid has no air in the spoon; fragrances are liquids.
  if (kind == AdditiveKind::fragrance) share_density(additive);
  additive.rate = read_positive_rate(entry, "rate", additive);
  additive.limit_of_finished_soap = read_limit_of_finished_soap(entry);
  if (entry.has("limit") && !additive.limit_of_finished_soap)
    additive.limit = read_positive_rate(entry, "limit", additive);
  additive.label = read_label_data(entry);
  refuse_alkali_by_inci(additive, entry.place("inci"));
  additive.goes_into = read_goes_into(entry, kind);
  additive.contains_fat = read_contained_fat(entry, additive, table);
  if (kind == AdditiveKind::fragrance)
    refuse_acid_as_fragrance(additive.name, entry.place("name"));
  else
    read_acid_into(additive, entry);
  additive.into_cooled_lye = read_into_cooled_lye(entry, additive);
  if (kind == AdditiveKind::colour) additive.dispersal = read_dispersal(entry, additive, table);
  entry.refuse_unknown();
  return additive;
}

}  // namespace

std::vector<Additive> read_additives(const Fields& formula, const FatTable& table) {
  using enum AdditiveKind;
  std::vector<Additive> all;
  for (const auto& [key, kind] : {std::pair{"additives", additive},
                                  std::pair{"fragrances", fragrance}, std::pair{"colours", colour}})
    for (const Fields& entry : formula.objects(key))
      all.push_back(read_additive(entry, kind, table));
  return all;
}

}  // namespace brimwright::chemistry
