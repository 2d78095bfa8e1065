#include "reports/batter_sheet.h"

#include "units/printing.h"
#include "units/weight_text.h"

namespace brimwright::reports {
namespace {

/// A delivery of its own: no jug of batter, no lye solution and none of its water has a lot.
bool has_lot(const WeighOutRow& row, const Vessel& vessel) {
  using Role = WeighOutRow::Role;
  if (row.role == Role::batter || row.role == Role::lye_solution) return false;
  return vessel.kind != Vessel::Kind::share || row.role != Role::water;
}

WeighList list_of(const Vessel& vessel) {
  WeighList list;
  for (const WeighOutRow& row : vessel.rows)
    list.rows.push_back(
        {row.name, row.note, row.shown, row.beside, row.running_shown, has_lot(row, vessel)});
  return list;
}

}  // namespace

void add_vessel(const Vessel& vessel, Sheet& sheet) {
  if (vessel.kind != Vessel::Kind::dust) sheet.blocks.push_back(SheetStep{vessel.title});
  sheet.blocks.push_back(list_of(vessel));
  for (const auto& [text, is_order] : vessel.words)
    sheet.blocks.push_back(SheetWords{text, is_order});
}

void add_superfat(const BatterOnSheet& batter, Sheet& sheet) {
  const auto& weighing = batter.tally.weighing;
  const auto& superfat = weighing.superfat;
  sheet.blocks.push_back(
      SheetWords{"All " + batter.name + " together " + on_scale(weighing.batter, batter.fine_step) +
                 " (" + beside_scale(weighing.batter, batter.fine_step) +
                 "). Superfat as weighed " + fixed(superfat.nominal.in_percent(), 1) +
                 " %, likely " + chemistry::lowest_in_words(superfat.likely_low) + " to " +
                 chemistry::highest_in_words(superfat.likely_high) + "."});
}

}  // namespace brimwright::reports
