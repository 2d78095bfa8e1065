#pragma once

#include "planning/run.h"
#include "units/remark.h"

#include <string>
#include <vector>

namespace brimwright::planning {

/// What a caution is about, so that a sheet can put it beside the work it belongs to.
enum class Topic { plan, lye, heat, aluminium, look_alike, small_parts, dust, allergens, test };
std::string name_of(Topic topic);  // "look-alike", "small parts"

struct Caution : Remark {
  Topic topic = Topic::plan;
};

/// Cautions of the work and of the piece that apply to `run`, from one table, in the order of the
/// hands: lye, heat, aluminium, dust, allergens, then the piece, then the test before sale.
std::vector<Caution> bench_cautions(const Run& run);

}  // namespace brimwright::planning
