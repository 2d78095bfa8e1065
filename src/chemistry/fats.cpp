#include "chemistry/fats.h"

#include "chemistry/theoretical_value.h"
#include "units/fields.h"
#include "units/printing.h"
#include "units/water.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace brimwright::embedded {
std::string_view fats_json();
}

namespace brimwright::chemistry {
namespace {

using Range = std::pair<double, double>;

/// {"min": 23, "max": 26}, or one of the two, or {"value": 69.3}.
Range read_range(const Fields& range) {
  if (range.has("value")) return {range.number("value"), range.number("value")};
  if (!range.has("min")) return {range.number("max"), range.number("max")};
  return {range.number("min"), range.number("max")};
}

/// "Codex Alimentarius CXS 210-1999, ..., Table 2 (characteristics), adopted 1999".
std::string source_in_words(const Fields& sources, const std::string& id) {
  const Fields source = sources.object(id);
  std::string words = source.text("document");
  for (const auto* part : {"table", "edition"})
    if (const auto more = source.optional_text(part)) words += ", " + *more;
  return words;
}

Citation citation_of(const Fields& figure, const Fields& sources) {
  return {source_in_words(sources, figure.text("source")), figure.truth("verified"),
          figure.optional_text("also").value_or("")};
}

std::optional<Range> optional_range(const Fields& fat, std::string_view key, const Fields& sources,
                                    Citation& from) {
  const auto range = fat.optional_object(key);
  if (!range) return std::nullopt;
  from = citation_of(*range, sources);
  return read_range(*range);
}

/// What a published relative density of 1 weighs; nothing where its basis is not stated.
std::optional<Density> basis_of(const std::string& reference) {
  if (reference.starts_with("density, g/mL")) return gram_per_millilitre;
  if (reference.starts_with("water at 15.5 °C"))
    return water_density(Temperature::in_celsius(15.5));
  if (reference.starts_with("water at 20 °C")) return water_density(Temperature::in_celsius(20));
  if (reference.starts_with("water at 25 °C")) return water_density(Temperature::in_celsius(25));
  return std::nullopt;
}

/// The molten fat's density; a figure without its temperature or its basis is no figure.
std::optional<FatDensity> read_density(const Fields& fat, const Fields& sources) {
  const auto published = fat.has("molten_density") ? fat.object("molten_density")
                                                   : fat.optional_object("relative_density");
  if (!published || published->is_null("temperature_c")) return std::nullopt;
  const auto basis = basis_of(published->text("reference"));
  if (!basis) return std::nullopt;
  const auto [low, high] = read_range(*published);
  FatDensity density{.low = low * *basis,
                     .high = high * *basis,
                     .at = Temperature::in_celsius(published->number("temperature_c")),
                     .source = source_in_words(sources, published->text("source")),
                     .read = published->truth("verified")};
  if (const auto slope = fat.optional_object("density_slope_g_per_ml_per_k"))
    density.slope =
        DensitySlope{slope->number("value") * gram_per_millilitre, citation_of(*slope, sources)};
  return density;
}

/// "verified" is of every range; where it is false, "verified_only_for" names those read.
std::optional<FattyAcidProfile> read_profile(const Fields& fat, const Fields& sources) {
  const auto acids = fat.optional_object("fatty_acids");
  if (!acids) return std::nullopt;
  FattyAcidProfile profile;
  profile.source = source_in_words(sources, acids->text("source"));
  const bool all_read = acids->truth("verified");
  const auto read_ones = acids->texts("verified_only_for");
  const Fields ranges = acids->object("ranges");
  for (const std::string& name : ranges.keys()) {
    const auto acid = fatty_acid_called(name);
    const auto ends = ranges.numbers(name);
    if (!acid || ends.size() != 2) throw std::logic_error("data/fats.json: fatty acid " + name);
    const bool read = all_read || std::count(read_ones.begin(), read_ones.end(), name) > 0;
    profile.acids.push_back({*acid, ends[0] * percent, ends[1] * percent, read});
  }
  return profile;
}

std::vector<SaponificationReading> read_readings(const Fields& entry, const Fields& sources) {
  std::vector<SaponificationReading> readings;
  const Fields published = entry.object("saponification_value_mg_koh_per_g");
  for (const Fields& one : published.objects("readings")) {
    SaponificationReading reading;
    reading.from = citation_of(one, sources);
    if (one.has("value")) reading.low = reading.high = one.number("value");
    if (one.has("min")) reading.low = one.number("min");
    if (one.has("max")) reading.high = one.number("max");
    reading.from.also = one.optional_text("note").value_or("");
    readings.push_back(std::move(reading));
  }
  if (readings.empty() || !readings.front().low || !readings.front().high)
    throw std::logic_error("data/fats.json: no whole range comes first for " + entry.text("id"));
  return readings;
}

/// "USP almond oil limits ...: 190 to 200 mg/g (read)".
std::string in_words(const SaponificationReading& reading) {
  std::string values;
  if (!reading.high)
    values = trimmed(*reading.low, 2) + " or more";
  else if (!reading.low)
    values = trimmed(*reading.high, 2) + " or less";
  else
    values = trimmed(*reading.low, 2) +
             (*reading.low == *reading.high ? "" : " to " + trimmed(*reading.high, 2));
  return values + " (" + reading.from.source +
         (reading.from.also.empty() ? "" : ", " + reading.from.also) +
         (reading.from.read ? "; checked)" : "; unchecked)");
}

/// The document that governs, with all others in words, and one that was read where it was not.
void cite_readings(Fat& fat) {
  const auto& readings = fat.saponification_readings;
  fat.saponification_source = readings.front().from.source;
  for (std::size_t i = 1; i < readings.size(); ++i) {
    const auto& other = readings[i];
    fat.saponification_also += (i > 1 ? "; " : "") + in_words(other);
    if (readings.front().from.read || fat.saponification_read_elsewhere) continue;
    if (!other.from.read || !other.low || !other.high) continue;
    fat.saponification_read_elsewhere = {*other.low, *other.high};
    fat.saponification_read_elsewhere_in = {other.from.source, true, ""};
  }
}

// Ends that theory gives are kept to a tenth, outward: no titration tells more.
double tenth_below(double value) { return std::floor(value * 10) / 10; }
double tenth_above(double value) { return std::ceil(value * 10) / 10; }

/// From the least to the most of all readings.
Range ends_of(const std::vector<SaponificationReading>& readings) {
  Range ends{*readings.front().low, *readings.front().high};
  for (const auto& reading : readings) {
    if (reading.low) ends.first = std::min(ends.first, *reading.low);
    if (reading.high) ends.second = std::max(ends.second, *reading.high);
  }
  return ends;
}

/// Whether whoever states an end of the range, or its governing document, was only remembered.
bool is_remembered(const std::vector<SaponificationReading>& readings) {
  const auto [low, high] = ends_of(readings);
  const auto read_end = [&](double end) {
    return std::any_of(readings.begin(), readings.end(), [&](const auto& reading) {
      return reading.from.read && (reading.low == end || reading.high == end);
    });
  };
  return !readings.front().from.read || !read_end(low) || !read_end(high);
}

struct Chosen {
  double value;
  std::string how;
};

/// A range wider than a tenth of its middle (shea, avocado, wheat germ) covers origins or grades
/// that differ: its middle may be none of them.
Chosen middle_of(Range range, const std::string& which) {
  const double middle = (range.first + range.second) / 2;
  const double width = range.second - range.first;
  const std::string words = "the middle of " + which;
  if (width <= 0.1 * middle) return {middle, words};
  return {middle, words + ", a weak choice: the range is " + trimmed(width, 1) +
                      " mg KOH/g wide; ask for the lot's own value"};
}

/// The least of what may be reckoned with, as too little alkali leaves oil and too much burns: a
/// wide reading of one seller's moves the value down, never up.
Chosen typical_of(const Fat& fat, Range published, Range all,
                  const std::optional<TheoreticalValue>& theory) {
  if (fat.kind == "free_fatty_acid") return {published.first, "of the pure acid, from its formula"};
  const Chosen governing = middle_of(published, "the published range");
  if (fat.slow)
    return {std::min(governing.value, (all.first + all.second) / 2),
            "halfway from what its free acids alone take to the most that all of it takes, as "
            "nobody knows how much reacts in a pot"};
  const Chosen whole_range =
      middle_of(all, "all that was checked and that its fatty acids call for");
  Chosen chosen = whole_range.value < governing.value ? whole_range : governing;
  if (!theory) return chosen;
  const double most = tenth_below(theory->pure.high.mg_koh_per_g());
  if (chosen.value <= most) return chosen;
  return {most, std::string("the most that its ") +
                    (fat.kind == "wax_ester" ? "mean molar mass calls" : "fatty acids call") +
                    " for, which lies below the middle of the published range"};
}

/// The rest of `fat.slow`, which is read already, follows from the readings.
std::optional<SlowToSaponify> read_slow(const Fields& entry, const Fields& sources) {
  const auto slow = entry.optional_object("saponifies_slowly");
  if (!slow) return std::nullopt;
  const Fields acids = slow->object("acid_value_mg_koh_per_g");
  return SlowToSaponify{.sure = SaponificationValue::mg_koh_per_g(acids.number("min")),
                        .titrated = {},
                        .acids_from = citation_of(acids, sources),
                        .how = slow->text("how"),
                        .how_from = citation_of(*slow, sources)};
}

/// Expects the make-up of `fat`, and whether it is slow, to be read already.
void read_saponification(const Fields& entry, const Fields& sources, Fat& fat) {
  fat.saponification_readings = read_readings(entry, sources);
  const auto& governing = fat.saponification_readings.front();
  const auto theory = theoretical_value(fat);
  Range all = ends_of(fat.saponification_readings);
  if (fat.slow) {
    fat.slow->titrated = SaponificationValue::mg_koh_per_g(all.first);
    all.first = std::min(all.first, fat.slow->sure.mg_koh_per_g());
  }
  if (theory && fat.kind == "triglyceride") {
    all.first = std::min(all.first, tenth_below(theory->pure.low.mg_koh_per_g()));
    all.second = std::max(all.second, tenth_above(theory->pure.high.mg_koh_per_g()));
  }
  const Chosen typical = typical_of(fat, {*governing.low, *governing.high}, all, theory);
  fat.saponification = {SaponificationValue::mg_koh_per_g(all.first),
                        SaponificationValue::mg_koh_per_g(typical.value),
                        SaponificationValue::mg_koh_per_g(all.second)};
  fat.typical_chosen = typical.how;
  fat.saponification_read = !is_remembered(fat.saponification_readings);
  cite_readings(fat);
}

void read_names(const Fields& entry, Fat& fat) {
  fat.id = entry.text("id");
  fat.name = entry.text("name");
  fat.kind = entry.text("kind");
  fat.inci = entry.text("inci");
  fat.inci_read = entry.truth("inci_verified");
  fat.note = entry.optional_text("note").value_or("");
  fat.also_called = entry.texts("also_called");
}

/// A slow wax has no soap worth a name.
void read_soap_names(const Fields& entry, Fat& fat) {
  if (fat.slow) {
    fat.inci_sodium_soap = fat.inci_potassium_soap = fat.inci;
    fat.inci_sodium_soap_confidence = fat.inci_potassium_soap_confidence =
        "none: hardly any of it becomes soap, so that a label lists the wax itself";
    return;
  }
  fat.inci_sodium_soap = entry.text("inci_sodium_soap");
  fat.inci_sodium_soap_confidence = entry.text("inci_sodium_soap_confidence");
  fat.inci_potassium_soap = entry.text("inci_potassium_soap");
  fat.inci_potassium_soap_confidence = entry.text("inci_potassium_soap_confidence");
}

Fat read_fat(const Fields& entry, const Fields& sources) {
  Fat fat;
  read_names(entry, fat);
  fat.slow = read_slow(entry, sources);
  read_soap_names(entry, fat);
  fat.iodine_value =
      optional_range(entry, "iodine_value_g_i2_per_100g", sources, fat.iodine_value_from);
  fat.density = read_density(entry, sources);
  fat.melting_range_c = optional_range(entry, "melting_range_c", sources, fat.melting_range_from);
  if (const auto rest = entry.optional_object("unsaponifiable")) {
    fat.unsaponifiable_most = Share::of_one(rest->number("max_g_per_kg") / 1000);
    fat.unsaponifiable_from = citation_of(*rest, sources);
  }
  fat.fatty_acids = read_profile(entry, sources);
  if (const auto mass =
          optional_range(entry, "mean_molar_mass_g_mol", sources, fat.mean_molar_mass_from))
    fat.mean_molar_mass_g_per_mol = mass->first;
  read_saponification(entry, sources, fat);
  return fat;
}

std::vector<Fat> read_fats() {
  const Fields file = Fields::parse(embedded::fats_json(), "data/fats.json");
  const Fields sources = file.object("sources");
  std::vector<Fat> fats;
  for (const Fields& entry : file.objects("fats")) fats.push_back(read_fat(entry, sources));
  return fats;
}

const Fat* fat_called(std::string_view id, const std::vector<Fat>& fats) {
  const auto at = std::find_if(fats.begin(), fats.end(), [&](const Fat& f) { return f.id == id; });
  return at == fats.end() ? nullptr : &*at;
}

std::vector<std::string> ids_of(const std::vector<Fat>& fats) {
  std::vector<std::string> ids;
  for (const Fat& fat : fats) ids.push_back(fat.id);
  return ids;
}

}  // namespace

const std::vector<Fat>& shipped_fats() {
  static const std::vector<Fat> fats = read_fats();
  return fats;
}

const Fat* find_fat(std::string_view id) { return fat_called(id, shipped_fats()); }

std::vector<std::string> fat_ids() { return ids_of(shipped_fats()); }

FatTable::FatTable(const std::vector<Fat>& users_own) : FatTable() {
  std::erase_if(fats_, [&](const Fat& fat) { return fat_called(fat.id, users_own) != nullptr; });
  fats_.insert(fats_.end(), users_own.begin(), users_own.end());
}

const Fat* FatTable::find(std::string_view id) const { return fat_called(id, fats_); }

std::vector<std::string> FatTable::ids() const { return ids_of(fats_); }

const FatTable& shipped_table() {
  static const FatTable table;
  return table;
}

}  // namespace brimwright::chemistry
