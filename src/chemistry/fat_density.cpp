#include "chemistry/fat_density.h"

#include "units/fields.h"
#include "units/water.h"

namespace brimwright::embedded {
std::string_view densities_json();
}

namespace brimwright::chemistry {
namespace {

/// How fats' densities follow temperature and chemistry (data/densities.json).
struct FatDensityRules {
  DensitySlope slope;
  // Lund: relative density at `lund_at`, on water of the same temperature.
  double lund_constant, lund_per_saponification_value, lund_per_iodine_value;
  Temperature lund_at;
};

FatDensityRules read_rules() {
  const Fields file = Fields::parse(embedded::densities_json(), "data/densities.json");
  const Fields fats = file.object("fats_temperature");
  const Fields lund = fats.object("lund_relation");
  const Fields slope = fats.object("slope_g_per_ml_per_k");
  return {.slope = {slope.number("value") * gram_per_millilitre,
                    {slope.text("source"), slope.truth("verified"), ""}},
          .lund_constant = lund.number("constant"),
          .lund_per_saponification_value = lund.number("per_saponification_value"),
          .lund_per_iodine_value = lund.number("per_iodine_value"),
          .lund_at = Temperature::in_celsius(lund.number("temperature_c"))};
}

const FatDensityRules& rules() {
  static const FatDensityRules read = read_rules();
  return read;
}

Density along(const DensitySlope& slope, Density known, Temperature known_at, Temperature at) {
  return known + slope.per_kelvin * (at - known_at).kelvin();
}

Density by_lund(const Fat& fat) {
  // Every shipped fat without a published density has an iodine value; a fat without either is
  // taken as saturated, which makes it 3 % too light at worst.
  const auto [low, high] = fat.iodine_value.value_or(std::pair{0.0, 0.0});
  const double relative =
      rules().lund_constant +
      rules().lund_per_saponification_value * fat.saponification.typical.mg_koh_per_g() +
      rules().lund_per_iodine_value * (low + high) / 2;
  return relative * water_density(rules().lund_at);
}

}  // namespace

DensitySlope density_slope_of(const Fat& fat) {
  return fat.density && fat.density->slope ? *fat.density->slope : rules().slope;
}

DensityAt density_of(const Fat& fat, Temperature at) {
  const DensitySlope slope = density_slope_of(fat);
  if (!fat.density) return {along(slope, by_lund(fat), rules().lund_at, at), true};
  const Density middle = (fat.density->low + fat.density->high) / 2;
  return {along(slope, middle, fat.density->at, at), false};
}

}  // namespace brimwright::chemistry
