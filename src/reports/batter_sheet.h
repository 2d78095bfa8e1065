#pragma once

#include "planning/run.h"
#include "planning/tally.h"
#include "reports/sheet_blocks.h"

#include <cstdint>
#include <string>

namespace brimwright::reports {

// What the bench sheet says of one batter; bench_sheet.h puts it in order.

/// A batter of a batch with its formula and what is known of its warmth.
struct BatterOnSheet {
  std::string name;  // "base", "topping"
  const planning::BatterTally& tally;
  const chemistry::Formula& formula;
  const std::optional<chemistry::HeatQuestion>& temperatures;
  Mass fine_step;  // of the scale for alkali and powders

  /// Used colder than the room where it is made: it stands overnight.
  bool is_lye_chilled() const;
};
BatterOnSheet base_of(const planning::Run& run, const planning::Batch& batch);
/// The whippings of one size that a batch's topping is made in.
BatterOnSheet topping_of(const planning::Run& run, const planning::Whipping& whipping);

/// What goes into "fats", "lye" or "batter", with the running total of its vessel; what goes into
/// the batter is weighed in cups of its own, and so is oil set aside for colours, to the step of
/// its scale.
WeighList weigh_list(const planning::Weighing& weighing, const std::string& goes_into,
                     Mass set_aside_step);

/// Alkali and water, the order in which they meet, and how warm it becomes.
void add_lye(const BatterOnSheet& batter, Sheet& sheet);
/// The lye that stands ready: its mass, or its share of the batch's pot.
void add_ready_lye(const BatterOnSheet& batter, const planning::Batch& batch, Sheet& sheet);
/// One pot of lye for all batters.
void add_lye_pot(const planning::LyePot& pot, const chemistry::HeatFindings& heat, Sheet& sheet);
void add_fats(const BatterOnSheet& batter, Sheet& sheet);
/// Additives, and what superfat it all comes out at.
void add_additives(const BatterOnSheet& batter, Sheet& sheet);

}  // namespace brimwright::reports
