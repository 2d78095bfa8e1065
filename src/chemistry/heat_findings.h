#pragma once

#include "chemistry/cooling.h"
#include "chemistry/heat.h"
#include "units/fields.h"
#include "units/quantity.h"
#include "units/remark.h"
#include "units/share.h"
#include "units/temperature.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::chemistry {

/// What a maker says of the warmth on her bench. What she leaves out is not guessed, save a room
/// and water of 20 degC for the peak, and that is said.
struct HeatQuestion {
  std::optional<Temperature> room_at;       // of the room, and so of the dry alkali
  std::optional<Temperature> water_at;      // into which the alkali goes
  Share ice_share;                          // of the plain water that goes in as ice
  std::optional<Temperature> lye_used_at;   // when it meets the fats
  std::optional<Temperature> fats_at;       // then
  std::optional<Temperature> batter_below;  // the batter must stay below it: a topping that whips
  std::optional<Surroundings> cooled_in;    // absent: two places are told

  /// The lye is used colder than the room where it is made, so it stands and waits. A room of 20
  /// degC where she says none, as for the peak.
  bool is_lye_chilled() const;
};

/// Reads the object of those names; "cooled_in" is one of "ice bath", "cold water", "fridge",
/// "room". Refuses what cannot be: water that is ice or steam, "batter_below" without the two
/// temperatures that it needs, a lye to be used colder than where it is cooled.
HeatQuestion read_heat_question(const Fields& bench);

/// What a batter's lye and fats will do.
struct HeatFindings {
  PeakTemperature peak;
  bool is_peak_known = true;         // not where a KOH solution is diluted
  bool is_of_solution = false;       // all alkali stands ready dissolved, and is but diluted
  Temperature water_at, alkali_at;   // reckoned with
  bool assumed = false;              // one of them, as 20 degC
  std::vector<CoolingTime> cooling;  // to `lye_used_at`
  std::optional<Temperature> at_pour;
  std::vector<Remark> remarks;       // on the lye
  std::vector<Remark> pour_remarks;  // on where it meets the fats
};

/// `lye` with its plain water all liquid: the question's ice share is taken of `plain_water`.
/// Remarks begin with `name`.
HeatFindings heat_findings(const HeatQuestion& question, const std::string& name, LyeCharge lye,
                           Mass plain_water, const FatsCharge& fats);

}  // namespace brimwright::chemistry
