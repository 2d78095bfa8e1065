#pragma once

#include "planning/run.h"
#include "planning/tally.h"

#include <optional>
#include <string>

namespace brimwright::reports {

/// A batter of a batch with its formula and what is known of its warmth.
struct BatterOnSheet {
  std::string name;  // "base", "topping"
  const planning::BatterTally& tally;
  const chemistry::Formula& formula;
  const std::optional<chemistry::HeatQuestion>& temperatures;
  Mass step;  // of the scale that holds it

  /// Used colder than the room where it is made: it stands overnight.
  bool is_lye_chilled() const;
};
BatterOnSheet base_of(const planning::Run& run, const planning::Batch& batch);
/// The whippings of one size that a batch's topping is made in.
BatterOnSheet topping_of(const planning::Run& run, const planning::Whipping& whipping);

}  // namespace brimwright::reports
