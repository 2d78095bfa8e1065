#pragma once

#include "chemistry/formula.h"
#include "planning/run.h"
#include "planning/weighing.h"
#include "units/quantity.h"
#include "units/remark.h"
#include "units/share.h"
#include "units/user_error.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::planning {

/// A batter that takes its lye from the pot.
struct PotBatter {
  const chemistry::Formula& formula;
  const Weighing& weighing;
};

struct PotAlkali {
  std::string name;  // "NaOH, 99 % pure"
  Mass weighed;      // for all the batters together
  Mass step;
};

/// What one batter takes.
struct PotShare {
  std::string batter;  // its formula's name
  Mass lye;            // weighed out of the pot, a multiple of the pot's `share_step`
  Mass top_up;         // plain water then stirred into it, for a weaker batter
  Mass alkali;         // that its weighing asks for, as weighed
  Mass alkali_taken;   // that is in its share
  Share superfat;      // as it comes out of the share
};

/// One lye for several batters, made as strong as the strongest takes it.
struct LyePot {
  std::vector<PotAlkali> alkalis;
  Mass water;  // plain, a multiple of `water_step`
  Mass water_step;
  Mass lye;  // alkalis and water together, to the step in which shares are weighed
  Mass share_step;
  Share strength;                // pure alkali / (pure alkali + water)
  std::optional<Mass> full_pot;  // what pot and lye weigh, where the tare is known
  std::vector<PotShare> shares;  // in the batters' order; their lye sums to `lye`
  std::vector<Remark> remarks;
};

/// Shares one lye by mass: each batter takes the lye that holds its alkali, never a half or a third
/// of the pot; batters with weaker lye get plain water into their share. Shares are rounded so that
/// together they are the pot; what rounding does to each superfat is told. Water that has steamed
/// off is put back by weight before sharing.
///
/// UserError when the batters' alkalis differ in kind, purity or proportion, when the pot would be
/// above 50 % (their water being in milk and the like), or when a share leaves a batter lye-heavy.
LyePot lye_pot(const std::vector<PotBatter>& batters, const Scales& scales,
               const PotQuestion& question);

}  // namespace brimwright::planning
