#include "chemistry/fats.h"

#include "units/fields.h"
#include "units/printing.h"
#include "units/water.h"

#include <algorithm>
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
  return FatDensity{.low = low * *basis,
                    .high = high * *basis,
                    .at = Temperature::in_celsius(published->number("temperature_c")),
                    .source = source_in_words(sources, published->text("source")),
                    .read = published->truth("verified")};
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

SaponificationRange range_with_middle(Range mg_koh_per_g) {
  const auto [low, high] = mg_koh_per_g;
  return {SaponificationValue::mg_koh_per_g(low),
          SaponificationValue::mg_koh_per_g((low + high) / 2),
          SaponificationValue::mg_koh_per_g(high)};
}

/// A range wider than a tenth of its middle (shea, avocado, wheat germ) covers origins or grades
/// that differ: its middle may be none of them.
std::string middle_in_words(const SaponificationRange& range) {
  const double width = range.high.mg_koh_per_g() - range.low.mg_koh_per_g();
  const std::string words = "the middle of the published range";
  if (width <= 0.1 * range.typical.mg_koh_per_g()) return words;
  return words + ", a weak choice: the range is " + trimmed(width, 1) +
         " mg/g wide; ask for the lot's own value";
}

void read_saponification(const Fields& entry, const Fields& sources, Fat& fat) {
  const Fields published = entry.object("saponification_value_mg_koh_per_g");
  const Citation from = citation_of(published, sources);
  fat.saponification = range_with_middle(read_range(published));
  fat.typical_chosen = middle_in_words(fat.saponification);
  fat.saponification_source = from.source;
  fat.saponification_read = from.read;
  fat.saponification_also = from.also;
  fat.saponification_read_elsewhere =
      optional_range(published, "read_alternative", sources, fat.saponification_read_elsewhere_in);
  if (entry.text("kind") != "free_fatty_acid") return;
  fat.typical_chosen = "of the pure acid, from its formula";
  // What is sold under the acid's name holds others too: its own range, the pure acid's value.
  Citation grade;
  if (const auto sold = optional_range(entry, "commercial_acid_value", sources, grade)) {
    fat.saponification.low = SaponificationValue::mg_koh_per_g(sold->first);
    fat.saponification.high = SaponificationValue::mg_koh_per_g(sold->second);
    fat.saponification_also = "the range is that of the purified grade (" + grade.source + ")";
  }
}

void read_names(const Fields& entry, Fat& fat) {
  fat.id = entry.text("id");
  fat.name = entry.text("name");
  fat.kind = entry.text("kind");
  fat.inci = entry.text("inci");
  fat.inci_read = entry.truth("inci_verified");
  fat.inci_sodium_soap = entry.text("inci_sodium_soap");
  fat.inci_sodium_soap_confidence = entry.text("inci_sodium_soap_confidence");
  fat.inci_potassium_soap = entry.text("inci_potassium_soap");
  fat.inci_potassium_soap_confidence = entry.text("inci_potassium_soap_confidence");
  fat.note = entry.optional_text("note").value_or("");
}

Fat read_fat(const Fields& entry, const Fields& sources) {
  Fat fat;
  read_names(entry, fat);
  read_saponification(entry, sources, fat);
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

bool Fat::liquid_at_room_temperature() const {
  // 20 degC for a cool workroom: common practice, no source.
  if (melting_range_c) return melting_range_c->second < 20;
  return name.find(" oil") != std::string::npos;
}

const std::vector<Fat>& shipped_fats() {
  static const std::vector<Fat> fats = read_fats();
  return fats;
}

const Fat* find_fat(std::string_view id) { return fat_called(id, shipped_fats()); }

std::vector<std::string> fat_ids() { return ids_of(shipped_fats()); }

FatTable::FatTable(const std::vector<Fat>& users_own) : FatTable() {
  fats_.insert(fats_.end(), users_own.begin(), users_own.end());
}

const Fat* FatTable::find(std::string_view id) const { return fat_called(id, fats_); }

std::vector<std::string> FatTable::ids() const { return ids_of(fats_); }

const FatTable& shipped_table() {
  static const FatTable table;
  return table;
}

}  // namespace brimwright::chemistry
