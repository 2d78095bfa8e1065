#include "reports/batter_sheet.h"

#include "reports/vessel_filling.h"
#include "units/printing.h"
#include "units/rounding.h"
#include "units/weight_text.h"

namespace brimwright::reports {
namespace {

/// A delivery of its own: no jug of batter, no lye solution and none of its water has a lot.
bool has_lot(const WeighOutRow& row, const Vessel& vessel) {
  using Role = WeighOutRow::Role;
  if (row.role == Role::batter || row.role == Role::lye_solution) return false;
  return vessel.kind != Vessel::Kind::share || row.role != Role::water;
}

bool is_lye(const Vessel& vessel) {
  using Kind = Vessel::Kind;
  return vessel.kind == Kind::lye || vessel.kind == Kind::lye_pot || vessel.kind == Kind::share;
}

std::vector<WeighRow> rows_of(const Vessel& vessel) {
  std::vector<WeighRow> rows;
  for (const WeighOutRow& row : vessel.rows) {
    // What goes into a layer stands with it.
    if (!row.adding.empty()) rows.back().keeps_next = true;
    const std::string into = row.adding.empty() ? "" : "into " + row.adding;
    rows.push_back({row.name, into + (into.empty() || row.note.empty() ? "" : "; ") + row.note,
                    row.shown, row.beside, row.running_shown, has_lot(row, vessel)});
  }
  return rows;
}

WeighList list_of(const Vessel& vessel, const planning::Scales& scales) {
  WeighList list{.rows = rows_of(vessel), .stays_whole = is_lye(vessel)};
  if (vessel.kind != Vessel::Kind::dust) list.title = vessel.title;  // its heading says it
  for (const auto& words : vessel.words)
    (words.comes_first ? list.before : list.after).push_back({words.text, words.is_order});
  if (is_lye(vessel) || vessel.kind == Vessel::Kind::fats)
    list.tare_unit = reads_ounces(scales.large.step) ? "oz" : "g";
  return list;
}

}  // namespace

void add_vessel(const Vessel& vessel, const planning::Run& run, Sheet& sheet) {
  sheet.blocks.push_back(list_of(vessel, run.scales));
}

void add_superfat(const BatterOnSheet& batter, Sheet& sheet) {
  const auto& weighing = batter.tally.weighing;
  const auto& superfat = weighing.superfat;
  sheet.blocks.push_back(
      SheetWords{"All " + batter.name + " together " + on_display(weighing.batter, batter.step) +
                 " (" + beside_scale(rounded_nearest(weighing.batter, batter.step), batter.step) +
                 "). Superfat as weighed " + fixed(superfat.nominal.in_percent(), 1) +
                 " %, likely " + chemistry::lowest_in_words(superfat.likely_low) + " to " +
                 chemistry::highest_in_words(superfat.likely_high) + "."});
}

}  // namespace brimwright::reports
