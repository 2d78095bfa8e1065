#include "chemistry/fats.h"

#include "units/fields.h"
#include "units/water.h"

#include <algorithm>

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

std::optional<Range> optional_range(const Fields& fat, std::string_view key) {
  const auto range = fat.optional_object(key);
  if (!range) return std::nullopt;
  return read_range(*range);
}

/// "Codex Alimentarius CXS 210-1999, ..., Table 2 (characteristics), adopted 1999".
std::string source_in_words(const Fields& sources, const std::string& id) {
  const Fields source = sources.object(id);
  std::string words = source.text("document");
  for (const auto* part : {"table", "edition"})
    if (const auto more = source.optional_text(part)) words += ", " + *more;
  return words;
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

SaponificationRange range_with_middle(Range mg_koh_per_g) {
  const auto [low, high] = mg_koh_per_g;
  return {SaponificationValue::mg_koh_per_g(low),
          SaponificationValue::mg_koh_per_g((low + high) / 2),
          SaponificationValue::mg_koh_per_g(high)};
}

Fat read_fat(const Fields& entry, const Fields& sources) {
  Fat fat;
  fat.id = entry.text("id");
  fat.name = entry.text("name");
  fat.kind = entry.text("kind");
  fat.inci = entry.text("inci");
  fat.inci_sodium_soap = entry.text("inci_sodium_soap");
  const Fields saponification = entry.object("saponification_value_mg_koh_per_g");
  fat.saponification = range_with_middle(read_range(saponification));
  fat.saponification_source = source_in_words(sources, saponification.text("source"));
  fat.saponification_read = saponification.truth("verified");
  fat.iodine_value = optional_range(entry, "iodine_value_g_i2_per_100g");
  fat.density = read_density(entry, sources);
  fat.melting_range_c = optional_range(entry, "melting_range_c");
  fat.note = entry.optional_text("note").value_or("");
  return fat;
}

std::vector<Fat> read_fats() {
  const Fields file = Fields::parse(embedded::fats_json(), "data/fats.json");
  const Fields sources = file.object("sources");
  std::vector<Fat> fats;
  for (const Fields& entry : file.objects("fats")) fats.push_back(read_fat(entry, sources));
  return fats;
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

const Fat* find_fat(std::string_view id) {
  const auto& fats = shipped_fats();
  const auto at = std::find_if(fats.begin(), fats.end(), [&](const Fat& f) { return f.id == id; });
  return at == fats.end() ? nullptr : &*at;
}

std::vector<std::string> fat_ids() {
  std::vector<std::string> ids;
  for (const Fat& fat : shipped_fats()) ids.push_back(fat.id);
  return ids;
}

}  // namespace brimwright::chemistry
