#include "chemistry/liquid_compositions.h"

#include "chemistry/fat_density.h"
#include "chemistry/fats.h"
#include "units/fields.h"
#include "units/water.h"

#include <algorithm>

namespace brimwright::embedded {
std::string_view liquids_json();
}

namespace brimwright::chemistry {
namespace {

struct LiquidData {
  std::vector<LiquidComposition> compositions;
  Fat milk_fat;
  Density sugar, salt, rest;
  Share saturated_brine;
};

Fat read_milk_fat(const Fields& entry) {
  Fat fat;
  fat.id = entry.text("id");
  fat.name = entry.text("name");
  fat.kind = "triglyceride";
  fat.inci = entry.text("inci");
  fat.inci_sodium_soap = entry.text("inci_sodium_soap");
  fat.inci_potassium_soap = entry.text("inci_potassium_soap");
  fat.inci_sodium_soap_confidence = fat.inci_potassium_soap_confidence =
      "unchecked: check the INCI dictionary";
  const Fields sv = entry.object("saponification_value_mg_koh_per_g");
  const double low = sv.number("min"), high = sv.number("max");
  fat.saponification = {SaponificationValue::mg_koh_per_g(low),
                        SaponificationValue::mg_koh_per_g((low + high) / 2),
                        SaponificationValue::mg_koh_per_g(high)};
  fat.saponification_source = entry.text("source");
  fat.saponification_read = entry.truth("verified");
  const Fields iv = entry.object("iodine_value_g_i2_per_100g");
  fat.iodine_value = {iv.number("min"), iv.number("max")};
  fat.note = entry.text("note");
  return fat;
}

std::string source_in_words(const Fields& entry, const Fields& sources) {
  const std::string words = sources.object(entry.text("source")).text("document");
  const auto number = entry.optional_text("number");
  return words + (number ? ", food " + *number : "") +
         (entry.truth("verified") ? "" : " (not checked at the source)");
}

LiquidComposition read_composition(const Fields& entry, const Fields& sources,
                                   const Fat& milk_fat) {
  LiquidComposition composition;
  composition.name = entry.text("name");
  composition.liquid.water = entry.number("water") * percent;
  composition.liquid.sugar = entry.number("sugar") * percent;
  composition.liquid.salt = entry.number("salt") * percent;
  composition.liquid.source = source_in_words(entry, sources);
  const std::string fat = entry.text("fat");
  if (fat == "none") return composition;
  composition.fat = {fat == milk_fat.id ? milk_fat : *find_fat(fat),
                     entry.number("fat_percent") * percent};
  return composition;
}

LiquidData read_data() {
  const Fields file = Fields::parse(embedded::liquids_json(), "data/liquids.json");
  const Fields densities = file.object("apparent_densities_g_per_ml");
  const auto density = [&](std::string_view key) {
    return densities.object(key).number("value") * gram_per_millilitre;
  };
  LiquidData data;
  data.milk_fat = read_milk_fat(file.object("milk_fat"));
  data.sugar = density("sugar");
  data.salt = density("salt");
  data.rest = density("rest");
  data.saturated_brine = file.object("saturated_brine_20c_mass_percent").number("value") * percent;
  for (const Fields& entry : file.objects("compositions"))
    data.compositions.push_back(read_composition(entry, file.object("sources"), data.milk_fat));
  return data;
}

const LiquidData& data() {
  static const LiquidData read = read_data();
  return read;
}

}  // namespace

const std::vector<LiquidComposition>& liquid_compositions() { return data().compositions; }

const LiquidComposition* find_liquid_composition(std::string_view name) {
  const auto& all = liquid_compositions();
  const auto at =
      std::find_if(all.begin(), all.end(), [&](const auto& c) { return c.name == name; });
  return at == all.end() ? nullptr : &*at;
}

const Fat& milk_fat() { return data().milk_fat; }

Share saturated_brine() { return data().saturated_brine; }

Density density_from_contents(const Liquid& liquid, const std::optional<ContainedFat>& fat) {
  const auto at = Temperature::in_celsius(20);
  const double fatty = fat ? fat->share.of_one() : 0;
  const double rest = std::max(
      0.0, 1 - liquid.water.of_one() - liquid.sugar.of_one() - liquid.salt.of_one() - fatty);
  double volume_per_gram = liquid.water.of_one() / water_density(at).base() +
                           liquid.sugar.of_one() / data().sugar.base() +
                           liquid.salt.of_one() / data().salt.base() + rest / data().rest.base();
  if (fat) volume_per_gram += fatty / density_of(fat->fat, at).density.base();
  return Density::from_base(1 / volume_per_gram);
}

}  // namespace brimwright::chemistry
