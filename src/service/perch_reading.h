#pragma once

#include "moulds/library.h"
#include "planning/run.h"
#include "units/fields.h"

#include <cstddef>

namespace brimwright::service {

/// "below_brim" or "depth", exactly one of them, under `key`.
planning::FillLevel read_fill_level(const Fields& section, std::string_view key);

/// The mould file that stands at "mould", and how many of it she owns where "moulds_owned" says so.
moulds::Mould read_mould_named_in(const Fields& section, const moulds::Library& library);

/// One entry of a run's section "perch"; `is_cut` says that a cast is cut into several pieces.
planning::Decoration read_decoration(const Fields& fields, bool is_cut,
                                     const moulds::Library& library);

/// Asks for the mass of the decoration at `index` of `run`, which was read from `fields`, where it
/// is far from usual. UserError for a fill outside its mould.
void ask_for_decoration(const Fields& fields, const planning::Run& run, std::size_t index);

/// One entry of a run's section "dust".
planning::Dusting read_dusting(const Fields& fields);

}  // namespace brimwright::service
