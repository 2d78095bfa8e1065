#pragma once

#include "chemistry/fat.h"
#include "units/quantity.h"
#include "units/temperature.h"

namespace brimwright::chemistry {

/// Density of a fat at a temperature: the middle of its published range, moved along the published
/// slope (data/densities.json). Without a published density: Lund's relation from the
/// saponification and iodine values, with `estimated` set.
struct DensityAt {
  Density density;
  bool estimated = false;
};
DensityAt density_of(const Fat& fat, Temperature at);

/// How `fat`'s density follows its temperature: its own slope, or that of fats.
DensitySlope density_slope_of(const Fat& fat);

}  // namespace brimwright::chemistry
