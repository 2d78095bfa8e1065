#include "chemistry/user_fats.h"

#include "chemistry/acid_names.h"
#include "chemistry/alkali_data.h"
#include "chemistry/alkali_names.h"
#include "chemistry/fat_search.h"
#include "chemistry/fats.h"
#include "chemistry/known_ranges.h"
#include "chemistry/theoretical_value.h"
#include "schemas/kinds.h"
#include "units/printing.h"
#include "units/reading.h"
#include "units/wording.h"

#include <algorithm>

namespace brimwright::chemistry {
namespace {

std::string read_id(const Fields& entry) {
  std::string id = entry.name("id");
  const auto fits = [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_';
  };
  if (!std::all_of(id.begin(), id.end(), fits))
    throw UserError(entry.place("id"), "\"" + id + "\" cannot be an id",
                    "use small letters, digits and \"_\", such as \"argan_studio\"");
  return id;
}

/// Under a built-in fat's id a maker may have her own lot of it, but no other fat.
void refuse_id_of_another(const Fields& entry, const Fat& fat) {
  const Fat* built_in = find_fat(fat.id);
  const auto called_so = fats_named(fat.name);
  if (built_in == nullptr || called_so.empty() ||
      std::any_of(called_so.begin(), called_so.end(),
                  [&](const Fat* one) { return one->id == built_in->id; }))
    return;
  throw UserError(entry.place("id"),
                  "\"" + fat.id + "\" is the built-in " + built_in->name + ", and \"" + fat.name +
                      "\" is another fat",
                  "choose another id, such as \"" + called_so.front()->id + "_studio\"");
}

[[noreturn]] void refuse_naoh_value(double value, const Place& where) {
  throw UserError(where, exact(value) + " looks like a NaOH value, not a KOH value",
                  "give milligrams of KOH for a gram of fat (ISO 3657): that value would be " +
                      trimmed(value / per_koh(Alkali::sodium_hydroxide), 1));
}

SaponificationValue checked(double value, const std::string& kind, const Place& where) {
  if (value >= 0.03 && value <= 0.6)
    throw UserError(
        where, exact(value) + " looks like grams of alkali for a gram of fat",
        "give milligrams of KOH for a gram of fat (ISO 3657): " + trimmed(value * 1000, 1) +
            " if it is of KOH, " + trimmed(value * 1000 / per_koh(Alkali::sodium_hydroxide), 1) +
            " if it is of NaOH");
  const bool is_wax = kind == "wax_ester";
  // Triglycerides' own begin at 160 (trierucin, by molar masses); 0.713 of theirs lie from 114 on.
  if (!is_wax && value >= 100 && value <= 150) refuse_naoh_value(value, where);
  // Tributyrin, the lightest in fats, has 557, butyric acid 637; waxes have 43 (candelilla) to 120
  // (wool wax): molar masses, and from memory.
  const double least = is_wax ? 40 : 120;
  const double most = is_wax ? 200 : 600;
  if (!(value >= least && value <= most))
    throw UserError(where, exact(value) + " lies where no such fat's saponification value does",
                    "give milligrams of KOH for a gram of fat, " + trimmed(least, 0) + " to " +
                        trimmed(most, 0) + ", as the supplier's analysis states it");
  return SaponificationValue::mg_koh_per_g(value);
}

void read_saponification(const Fields& entry, Fat& fat) {
  const std::string key = "saponification_value";
  const auto value = [&](const Fields& from, std::string_view name) {
    return checked(from.number(name), fat.kind, from.place(name));
  };
  fat.saponification_read = true;
  if (!entry.is_object(key)) {
    const auto only = value(entry, key);
    fat.saponification = {only, only, only};
    fat.typical_chosen = "the supplier's one value, taken as exact";
    return;
  }
  const Fields range = entry.object(key);
  const auto low = value(range, "low");
  const auto high = value(range, "high");
  const bool states_typical = range.has("typical");
  const auto middle =
      SaponificationValue::mg_koh_per_g((low.mg_koh_per_g() + high.mg_koh_per_g()) / 2);
  const auto typical = states_typical ? value(range, "typical") : middle;
  range.refuse_unknown();
  if (low > typical || typical > high)
    throw UserError(range.place(), "its low, typical and high are out of order",
                    "give them in ascending order");
  fat.saponification = {low, typical, high};
  fat.typical_chosen =
      states_typical ? "the supplier's typical value" : "the middle of the supplier's range";
}

/// Below the range of the shipped fat that it is called, but on it once divided by 0.713.
bool is_naoh_value_by_name(const Fat& fat) {
  const double stated = fat.saponification.typical.mg_koh_per_g();
  const double as_naoh = stated / per_koh(Alkali::sodium_hydroxide);
  const auto known = known_ranges(fat);
  return std::any_of(known.begin(), known.end(), [&](const KnownRange& range) {
    const double low = range.low.mg_koh_per_g(), high = range.high.mg_koh_per_g();
    return !range.by_make_up && stated < low * 0.9 && as_naoh >= low * 0.95 &&
           as_naoh <= high * 1.05;
  });
}

void refuse_descending(bool ascending, const Place& where) {
  if (!ascending)
    throw UserError(where, "its low lies above its high", "give the lower figure as \"low\"");
}

/// A number, or {"low": 80, "high": 90}.
std::optional<std::pair<double, double>> read_iodine_value(const Fields& entry) {
  const std::string key = "iodine_value";
  if (!entry.has(key)) return std::nullopt;
  const auto value = [](const Fields& from, std::string_view name) {
    const double iodine = from.number(name);
    // Perilla and flaxseed oils, the highest, reach 210 g/100 g: from memory.
    if (!(iodine >= 0 && iodine <= 250))
      throw UserError(from.place(name), exact(iodine) + " lies where no fat's iodine value does",
                      "give grams of iodine for 100 g of fat, 0 to 250");
    return iodine;
  };
  if (!entry.is_object(key)) return std::pair{value(entry, key), value(entry, key)};
  const Fields range = entry.object(key);
  const std::pair ends{value(range, "low"), value(range, "high")};
  range.refuse_unknown();
  refuse_descending(ends.first <= ends.second, range.place());
  return ends;
}

/// {"at": "25 °C", "low": "0.91 g/ml", "high": "0.92 g/ml"}.
std::optional<FatDensity> read_fat_density(const Fields& entry, const std::string& source) {
  const auto given = entry.optional_object("density");
  if (!given) return std::nullopt;
  const auto value = [&](std::string_view name) {
    const Density density = given->density(name);
    // Molten fats and liquid waxes from 0.82 (100 °C) to 0.97 (castor, 15 °C): common practice.
    if (density < 0.75 * gram_per_millilitre || density > 1.05 * gram_per_millilitre)
      throw UserError(given->place(name), "is " + in_g_per_ml(density, 4),
                      "a molten fat lies between 0.75 and 1.05 g/ml");
    return density;
  };
  FatDensity density{value("low"), value("high"), given->temperature("at"), source, true};
  given->refuse_unknown();
  refuse_descending(density.low <= density.high, given->place());
  if (density.at.celsius() < -20 || density.at.celsius() > 150)
    throw UserError(given->place("at"), "is " + trimmed(density.at.celsius(), 1) + " °C",
                    "give the temperature at which the density was measured, -20 to 150 °C");
  return density;
}

std::optional<std::pair<double, double>> read_melting_range(const Fields& entry) {
  const auto given = entry.optional_object("melting_range");
  if (!given) return std::nullopt;
  const std::pair ends{given->temperature("low").celsius(), given->temperature("high").celsius()};
  given->refuse_unknown();
  refuse_descending(ends.first <= ends.second, given->place());
  return ends;
}

/// "12 %", or ["8 %", "20 %"].
std::pair<Share, Share> read_acid_share(const Fields& acids, const std::string& name) {
  if (acids.is_text(name)) {
    const Share only = acids.share(name, Share(), whole, "12 %");
    return {only, only};
  }
  const Place where = acids.place(name);
  const auto ends = acids.texts(name);
  if (ends.size() != 2)
    throw UserError(where, "has " + std::to_string(ends.size()) + " values",
                    "give one share, or the lowest and the highest");
  const std::pair range{read_share(ends[0], where, "8 %"), read_share(ends[1], where, "20 %")};
  refuse_descending(range.first <= range.second, where);
  if (range.second > whole) throw UserError(where, "is above 100 %", "give shares up to 100 %");
  return range;
}

/// Analyses are rounded, so that single values may add to a little more than a whole.
void refuse_impossible_sum(const FattyAcidProfile& profile, const Place& where) {
  Share least, most;
  for (const auto& acid : profile.acids) {
    least = least + acid.low;
    most = most + acid.high;
  }
  if (least > 101 * percent)
    throw UserError(where, "add to " + trimmed(least.in_percent(), 1) + " % at least",
                    "check the shares against the supplier's analysis; they cannot pass 100 %");
  if (most < 90 * percent)
    throw UserError(where, "add to " + trimmed(most.in_percent(), 1) + " % at most",
                    "list the other acids too; 90 % of them must be known");
}

std::optional<FattyAcidProfile> read_profile(const Fields& entry, const std::string& source) {
  const auto given = entry.optional_object("fatty_acids");
  if (!given) return std::nullopt;
  FattyAcidProfile profile;
  profile.source = source;
  for (const std::string& name : given->keys()) {
    const auto acid = fatty_acid_called(name);
    if (!acid)
      throw UserError(given->place(name), "\"" + name + "\" is not a fatty acid known here",
                      "name acids by their chain, such as \"C18:1\", or as \"oleic\"");
    const auto [low, high] = read_acid_share(*given, name);
    profile.acids.push_back({*acid, low, high, true});
  }
  refuse_impossible_sum(profile, given->place());
  return profile;
}

void refuse_what_is_no_fat(const Fields& entry, std::string_view key, const std::string& name) {
  refuse_alkali(name, entry.place(key));
  if (const auto acid = acid_hint(name); acid && acid->is_chemical)
    throw UserError(entry.place(key), "\"" + name + "\" is an acid, not a fat",
                    "list it under a formula's \"additives\" with its \"contains_acid\"");
}

void read_names(const Fields& entry, Fat& fat) {
  const std::string sodium = "Sodium ", potassium = "Potassium ";
  fat.id = read_id(entry);
  fat.name = entry.name("name");
  refuse_what_is_no_fat(entry, "id", fat.id);
  refuse_what_is_no_fat(entry, "name", fat.name);
  refuse_id_of_another(entry, fat);
  fat.kind = entry.choice("kind", {"triglyceride", "wax_ester", "free_fatty_acid"});
  fat.inci = entry.name("inci");
  refuse_what_is_no_fat(entry, "inci", fat.inci);
  fat.inci_sodium_soap = entry.name("inci_sodium_soap");
  if (!fat.inci_sodium_soap.starts_with(sodium))
    throw UserError(entry.place("inci_sodium_soap"), "does not begin with \"Sodium \"",
                    "give the name of its sodium soap, such as \"Sodium Olivate\"");
  fat.inci_sodium_soap_confidence = fat.inci_potassium_soap_confidence =
      "as your own file gives it";
  const auto stated = entry.optional_name("inci_potassium_soap");
  if (!stated) fat.inci_potassium_soap_confidence = "formed from the sodium soap's name";
  fat.inci_potassium_soap = stated.value_or(potassium + fat.inci_sodium_soap.substr(sodium.size()));
  if (!fat.inci_potassium_soap.starts_with(potassium))
    throw UserError(entry.place("inci_potassium_soap"), "does not begin with \"Potassium \"",
                    "give the name of its potassium soap, such as \"Potassium Olivate\"");
}

std::optional<double> read_mean_molar_mass(const Fields& entry) {
  const std::string key = "mean_molar_mass_g_per_mol";
  if (!entry.has(key)) return std::nullopt;
  const double mass = entry.number(key);
  // One KOH each: 40 to 200 mg/g are 1400 to 280 g/mol.
  if (!(mass >= 280 && mass <= 1400))
    throw UserError(entry.place(key), exact(mass) + " lies where no wax ester's molar mass does",
                    "give the mean molar mass in g/mol, 280 to 1400");
  return mass;
}

/// However much an analyst finds in it, in the pot only its free acids are sure to react.
void take_as_slow(Fat& fat, SlowToSaponify slow) {
  slow.titrated = fat.saponification.low;
  fat.saponification.low = std::min(fat.saponification.low, slow.sure);
  fat.slow = std::move(slow);
}

Fat read_fat(const Fields& entry) {
  Fat fat;
  read_names(entry, fat);
  fat.is_users_own = true;
  const std::string source = entry.text("source");
  const Citation from{source, true, ""};
  fat.saponification_source = source;
  read_saponification(entry, fat);
  fat.iodine_value = read_iodine_value(entry);
  fat.density = read_fat_density(entry, source);
  fat.melting_range_c = read_melting_range(entry);
  if (entry.has("unsaponifiable"))
    fat.unsaponifiable_most = entry.share("unsaponifiable", Share(), 60 * percent, "1.5 %");
  fat.fatty_acids = read_profile(entry, source);
  fat.mean_molar_mass_g_per_mol = read_mean_molar_mass(entry);
  fat.iodine_value_from = fat.melting_range_from = fat.unsaponifiable_from =
      fat.mean_molar_mass_from = from;
  fat.lot = entry.optional_name("lot").value_or("");
  fat.note = entry.optional_text("note").value_or("");
  fat.confirmed = entry.confirms_value_of("saponification_value");
  fat.saponification_at = entry.place("saponification_value");
  entry.refuse_unknown();
  if (is_naoh_value_by_profile(fat, fat.saponification) || is_naoh_value_by_name(fat))
    refuse_naoh_value(fat.saponification.typical.mg_koh_per_g(), fat.saponification_at);
  fat.saponification = spanning(fat.saponification, known_ranges(fat));
  fat.taken_as_exact = fat.saponification.low == fat.saponification.high;
  if (const Fat* wax = shipped_slow_wax(fat); wax != nullptr && fat.kind == wax->kind)
    take_as_slow(fat, *wax->slow);
  return fat;
}

}  // namespace

std::vector<Fat> read_user_fats(const Fields& file) {
  (void)file.optional_text("$schema");
  file.of(schemas::fats());
  (void)file.optional_text("note");
  std::vector<Fat> fats;
  for (const Fields& entry : file.objects("fats")) {
    fats.push_back(read_fat(entry));
    const auto twice = std::count_if(fats.begin(), fats.end(),
                                     [&](const Fat& other) { return other.id == fats.back().id; });
    if (twice > 1)
      throw UserError(entry.place("id"), "\"" + fats.back().id + "\" appears twice",
                      "give each fat, and each lot of it, an id of its own");
  }
  file.refuse_unknown();
  if (fats.empty())
    throw UserError(file.place("fats"), file.has("fats") ? "is empty" : "is missing",
                    "list at least one fat");
  return fats;
}

std::optional<std::string> fats_file_named_in(const Fields& formula) {
  formula.of(schemas::formula());
  return formula.optional_text("own_fats");
}

}  // namespace brimwright::chemistry
