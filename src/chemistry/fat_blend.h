#pragma once

#include "chemistry/formula.h"
#include "units/fields.h"
#include "units/remark.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::chemistry {

/// A blend of fats that stands ready, as the studio tells of it.
struct StandingBlend {
  struct Part {
    std::string fat;  // as it is called there
    Share share;
    Place where;
  };
  std::string name;
  std::vector<Part> parts;  // sum to one
};

/// Reads what stands under the blend's `name`: its fats with their shares.
StandingBlend read_fat_blend(const Fields& fields, const std::string& name);

/// Has `formula` weigh `standing` in place of what it holds of the formula's fats: `share` of all
/// fats, or as much as their shares have room for. UserError at `where`, which names it, where it
/// holds a fat that the formula does not, where `share` is more than there is room for, and where
/// the oil that colours are dispersed in would be in the blend.
void take_blend(Formula& formula, const StandingBlend& standing, std::optional<Share> share,
                const Place& where);

/// What is weighed of the formula's `fat`, by its index, beside the blend; all of it where there is
/// none. A share of all fats.
Share outside_blend(const Formula& formula, std::size_t fat);

/// A note where the values that a supplier states of a lot must hold for a blend made before.
std::vector<Remark> blend_notes(const Formula& formula);

}  // namespace brimwright::chemistry
