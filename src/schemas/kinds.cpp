#include "schemas/kinds.h"

#include <array>

namespace brimwright::schemas {
namespace {

constexpr auto run_keys = std::to_array<EarlierKey>({
    {"", "perch", "decorations"},
    {"/pour", "warmth", "temperatures"},
    {"/pour/warmth", "lye_made_at", "room_at"},
    {"/pour/warmth", "batter_limit", "batter_below"},
    {"/pour/layers/*", "propped", "tilted"},
    {"/pipe", "warmth", "temperatures"},
    {"/pipe/warmth", "lye_made_at", "room_at"},
    {"/pipe/warmth", "batter_limit", "batter_below"},
    {"/pipe/beads/tip/hand", "factor", "correction"},
    {"/pipe/beads", "tips_from", "own_tips"},
    {"/pipe/beads", "swell", "bead_to_opening"},
    {"/pipe/envelope", "solidity", "soap_share"},
    {"/pipe/bowl", "whisk_catches", "whisk_needs"},
    {"/pipe/pace", "stays_open", "open_time"},
    {"/pipe/pace", "each", "time_per_piece"},
    {"/pipe/pace", "bag_change", "time_per_bag_change"},
    {"/pipe/lye_spoon", "each", "time_between"},
    {"/perch/*", "made_of", "cast_as"},
    {"/perch/*", "jug_film", "left_in_jug"},
    {"/perch/*", "each_fill", "time_per_tray_fill"},
    {"/perch/*/on_top", "sinks", "pressed_in"},
    {"/perch/*/buried", "set", "placed"},
    {"/perch/*/buried", "find", "arrange"},
    {"/dust/*", "on_surface", "on_covered_surface"},
    {"/dust/*", "covered", "coverage"},
    {"/dust/*", "lands", "share_that_sticks"},
    {"/scales/*", "reads", "step"},
    {"/scales/*", "holds", "most"},
    {"/label", "pour_line", "pour_line_off_by"},
    {"/label", "spread", "weight_spread"},
    {"/label", "states", "printed_weight"},
    {"/label", "weighed", "weighed_pieces"},
    {"/bottles/*", "shared", "", "\"by rate\"",
     "a bottle is shared by rate, every batter at the same percentage: take \"shared\" out if that "
     "is what you want"},
    {"/lye_pot", "shared", "", "true", "no pot is shared then: take \"lye_pot\" out"},
});

constexpr auto formula_keys = std::to_array<EarlierKey>({
    {"", "fats_from", "own_fats"},
    {"/alkali/*", "saponifies", "share"},
    {"/additives/*", "acid", "contains_acid"},
    {"/liquids/*", "acid", "contains_acid"},
    {"/colours/*", "acid", "contains_acid"},
    {"/drying", "finally_lost", "water_lost_in_the_end"},
    {"/drying", "time_constant", "time_to_63_percent"},
});

constexpr auto mould_keys = std::to_array<EarlierKey>({
    {"/mesh", "leaning_up", "straight_up"},
    {"/mesh", "group", "cavity_size_number"},
    {"/water", "to", "filled_to"},
    {"/water", "of", "weighed_in"},
});

constexpr auto tip_keys = std::to_array<EarlierKey>({
    {"/tips/*/hand", "factor", "correction"},
});

constexpr Schema run_schema{"brimwright.run", 2, run_keys};
constexpr Schema formula_schema{"brimwright.formula", 2, formula_keys};
constexpr Schema mould_schema{"brimwright.mould", 2, mould_keys};
constexpr Schema tips_schema{"brimwright.tips", 2, tip_keys};
constexpr Schema fats_schema{"brimwright.fats", 1};
constexpr Schema studio_schema{"brimwright.studio", 1};
constexpr Schema order_schema{"brimwright.order", 1};
constexpr Schema bench_schema{"brimwright.bench", 1};
constexpr Schema notes_schema{"brimwright.notes", 1};

}  // namespace

const Schema& run() { return run_schema; }
const Schema& formula() { return formula_schema; }
const Schema& mould() { return mould_schema; }
const Schema& tips() { return tips_schema; }
const Schema& fats() { return fats_schema; }
const Schema& studio() { return studio_schema; }
const Schema& order() { return order_schema; }
const Schema& bench() { return bench_schema; }
const Schema& notes() { return notes_schema; }

const Schema* kind_called(std::string_view version) {
  for (const Schema* kind : {&run_schema, &formula_schema, &mould_schema, &tips_schema,
                             &fats_schema, &studio_schema, &order_schema})
    if (version == kind->today() || (kind->version > 1 && version == kind->previous())) return kind;
  return nullptr;
}

}  // namespace brimwright::schemas
