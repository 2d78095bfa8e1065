#pragma once

#include "chemistry/formula.h"
#include "units/quantity.h"
#include "units/share.h"

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::learning {

// What one made batch tells: what the plan that was frozen for it said, and what was noted. A note
// that is missing is nothing, never 0: what cannot be told without it is then not told at all.
// Names (mould, formula, tip, ...) are keys that the caller makes: what bears the same is learned
// of together, so a formula or a mould that was changed in earnest needs another.

using Minutes = std::chrono::duration<double, std::ratio<60>>;

/// What stays behind, and where. The last two are all of a batter's together.
enum class LossOf : std::uint8_t {
  pot,
  jugs,
  overpour,
  test_piece,
  bowl_and_whisk,
  bag,
  tip,
  bag_changes,
  decoration_jug,
  melt,
  base_altogether,
  topping_altogether,
};

/// The line that the base reached, on average over the cavities.
struct LineReached {
  Length above_planned;  // negative: below it
  /// By the mould's own measures at that line, as FilledMould's at the planned one; without them
  /// the planned ones and the surface there are taken, which is exact where walls are upright.
  std::optional<Volume> volume_each = {};
  std::optional<Area> surface = {};
};

/// One mould that a base was poured into. Planned figures are by the mould's own measures (shape,
/// mesh, water), before anything that was learned of it, so that batches planned before and after
/// a factor was taken tell the same.
struct FilledMould {
  std::string mould;
  Volume volume_each;      // batter in one cavity to the planned line; what embeds displace is off
  Area surface;            // free surface at that line: what one millimetre is worth
  double factor_used = 1;  // learned factor on the volume that the plan was made with
  std::optional<Volume> brimful = {};      // as measured
  std::optional<Length> below_brim = {};   // the planned line
  std::optional<std::int64_t> casts = {};  // cavities that were filled
  std::optional<LineReached> line = {};
  std::optional<Mass> poured = {};  // weighed: the filled moulds less the empty ones
};

/// What was put on the scales for a batter, where that is not what was planned. How much of it came
/// into the pot only weighing what was made can tell: the rest was spilt, or went up as steam.
struct OnScales {
  Mass at_most;              // the batter that there could be
  bool is_in_shares = true;  // of the formula, near enough: its density is the formula's
};

/// A base: what was made, where it went. What is "planned" at nought and not noted counts as
/// nought: so much is said by the plan.
struct BaseFacts {
  std::string formula;
  Density density_planned;
  Share overpour_planned;  // of what is in the pieces
  Mass pot_planned, jugs_planned, test_piece_planned;
  Mass lost_planned;  // all of these together
  std::optional<OnScales> on_scales = {};
  std::optional<Mass> made = {}, left_over = {};
  std::optional<Mass> in_pot = {}, in_jugs = {}, overpoured = {}, test_piece = {};
  /// All that was neither left over nor in the pieces, weighed together ("left on tools").
  std::optional<Mass> lost_altogether = {};
  std::optional<Density> cup = {};  // of the plain base, as it was poured
  std::vector<FilledMould> moulds = {};
  bool is_elsewhere = false;  // mixed for several batches at once: told of by itself, not here
};

/// One whipping of a topping.
struct ToppingFacts {
  std::string formula, topping;  // `topping`: which shape of it, the run's own
  std::string tip, hand;         // empty where it is piped without known moves; where there is one
  Density density_planned;       // whipped
  Volume visible_planned;        // above its foot, of one
  Volume in_headspace_planned;   // and in the headspace, of one, at the planned pour line
  Share fills_headspace;         // of the headspace between the line and the brim
  std::size_t mould = 0;         // of the base's, on which it is piped
  /// What tip and moves lay down by geometry alone, before any correction for the hand.
  std::optional<Volume> by_moves = {};
  double correction_used = 1;
  Mass bowl_and_whisk_planned, bag_planned, tip_planned, each_bag_change_planned;
  std::optional<std::int64_t> bag_changes = {};  // planned or counted
  Mass lost_planned;
  std::optional<OnScales> on_scales = {};
  std::optional<Mass> made = {}, left_over = {};
  std::optional<Mass> in_bowl_and_whisk = {}, in_bag = {}, in_tip = {}, at_bag_changes = {};
  std::optional<Mass> lost_altogether = {};
  std::optional<Density> cup = {};         // after the second whip
  std::optional<std::int64_t> piped = {};  // toppings, of which rejects are some
};

/// A decoration cast for the batch.
struct DecorationFacts {
  std::string decoration;
  std::size_t place = 0;               // among the run's
  Share melt_loss_planned;             // of what is melted
  Mass left_in_jug_planned;            // at each filling of the trays
  std::optional<Mass> on_scales = {};  // to be melted, where that is not what was planned
  std::optional<std::int64_t> tray_fills = {}, casts = {};
  std::optional<Mass> cast_each = {};  // weighed, the mean of some
  std::optional<Mass> melted = {}, left_over = {};
  std::optional<Mass> in_jug = {};        // of all fillings together
  std::optional<Mass> lost_in_melt = {};  // film, skin, steam
};

/// Which of the studio's times.
enum class TimeOf : std::uint8_t { batch, piece_made, tray_fill, piece_packed };

/// A time as planned and as it was; each piece's and filling's own, not their sum.
struct TimeFacts {
  TimeOf of;
  std::optional<Minutes> planned = {}, taken = {};
};

/// One piece of the batch, or the mean of several, weighed while it cures.
struct CureFacts {
  std::string formula;
  bool is_one_batter = true;  // no topping or decoration on it, which dry in their own ways
  std::vector<chemistry::CureWeighing> weighings = {};  // in the order of their days from the pour
  double sold_on_day = 0;
  /// Of the fresh weight: by the plan, or as it was weighed; nothing where that cannot be told.
  std::optional<Share> water = {};
  std::optional<Share> lost_planned = {};  // of that water, by the day of sale
};

struct BatchFacts {
  std::string code;
  std::chrono::year_month_day date;  // made on
  std::string run;
  std::optional<std::int64_t> pieces_planned = {}, pieces_made = {}, rejects = {};
  std::optional<BaseFacts> base = {};
  std::vector<ToppingFacts> toppings = {};  // one a whipping
  std::vector<DecorationFacts> decorations = {};
  std::vector<TimeFacts> times = {};
  std::optional<CureFacts> cure = {};
};

}  // namespace brimwright::learning
