#pragma once

#include "geometry/beads/bead.h"
#include "units/fields.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace brimwright::planning {

/// How much more than the reckoned bead a maker's hand lays down with one tip: weighed / computed,
/// the mean of her trials.
struct HandCorrection {
  double correction = 1;
  std::int64_t trials = 0;  // it rests on; 0 where not said
};

/// A piping tip.
struct Tip {
  std::string name;
  geometry::Opening opening;
  std::optional<HandCorrection> hand = {};
  std::string note = {};
};

/// Tips in generic sizes (data/tips.json), in the file's order.
const std::vector<Tip>& shipped_tips();

/// A tip as files write it: "name", one of "round", "star", "outline", and what is known of the
/// hand that uses it. UserError for an opening that is none.
Tip read_tip(const Fields& fields);

/// What is known of a hand: its correction, and the trials it rests on. UserError for one that is
/// far from 1.
HandCorrection read_correction(const Fields& hand);

/// All tips of a file of them (schema brimwright.tips/2, or 1). UserError for a name given twice.
std::vector<Tip> read_tips(const Fields& file);

}  // namespace brimwright::planning
