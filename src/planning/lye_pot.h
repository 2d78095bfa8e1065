#pragma once

#include "chemistry/formula.h"
#include "planning/run.h"
#include "planning/weighing.h"
#include "units/quantity.h"
#include "units/remark.h"
#include "units/share.h"
#include "units/user_error.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::planning {

/// A batter that takes its lye from the pot.
struct PotBatter {
  const chemistry::Formula& formula;
  const Weighing& weighing;
  std::string called = {};  // instead of the formula's name, where that is not enough
};

struct PotAlkali {
  std::string name;  // "NaOH, 99 % pure"
  Mass weighed;      // for all the batters together
  Mass step;
  std::int64_t weighings = 1;  // goes on the scale
};

/// What one batter takes.
struct PotShare {
  std::string batter;  // what it is called
  Mass lye;            // weighed out of the pot, a multiple of the pot's `share_step`
  Mass top_up;         // plain water then stirred into it, for a weaker batter
  Mass top_up_step;    // of the scale it is weighed on
  Mass alkali;         // that its weighing asks for, as weighed
  Mass alkali_taken;   // that is in its share, as weighed
  chemistry::EffectiveSuperfat superfat;  // as it comes out of the share
  std::vector<Remark> alarms;             // of that superfat: before all other remarks
};

/// One lye for several batters, made as strong as the strongest takes it.
struct LyePot {
  std::vector<PotAlkali> alkalis;
  Mass water;  // plain, a multiple of `water_step`
  Mass water_step;
  Mass lye;         // what it is made up to with plain water before it is shared, a multiple of
                    // `lye_step`: alkalis and water together, or the next step up
  Mass lye_step;    // of the scale that holds all of it, its pot too where the tare is known
  Mass share_step;  // in which the shares are weighed
  Mass left;        // over when all have their share, less than a step for each
  Share strength;   // pure alkali / (pure alkali + water)
  std::optional<Mass> full_pot;  // what pot and lye weigh, where the tare is known
  std::vector<PotShare> shares;  // in the batters' order; with `left` they sum to `lye`
  std::vector<Remark> remarks;
};

/// Shares one lye by mass: each batter takes the lye that holds its alkali, never a half or a third
/// of the pot; batters with weaker lye get plain water into their share. Shares are rounded down,
/// as alkali is; each has its own superfat, with the doubt that the scale's step leaves in the
/// share and in the weight that the lye is made up to. Water that has steamed off is put back by
/// weight before sharing.
///
/// UserError when the batters' alkalis differ in kind, purity or proportion, when the pot would be
/// above 50 % (their water being in milk and the like), or when a share leaves a batter lye-heavy.
LyePot lye_pot(const std::vector<PotBatter>& batters, const Scales& scales,
               const PotQuestion& question);

}  // namespace brimwright::planning
