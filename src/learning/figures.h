#pragma once

#include "learning/batch_facts.h"

#include <chrono>
#include <compare>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace brimwright::learning {

/// What is learned, each apart from the others.
enum class Kind : std::uint8_t {
  volume_error,     // Length, of a mould
  base_density,     // Density, of a formula
  whipped_density,  // Density, of a formula
  loss,             // Mass of a batch (a bag change, a tray filling), or Share
  topping_each,     // Volume above the foot, of a topping by tip and hand
  hand_correction,  // Factor, of tip and hand
  cure_loss,        // Share of the batter's water gone by the day of sale, of a formula
  time,             // Minutes
};

// What a figure belongs to.
struct OfMould {
  std::string mould;
  auto operator<=>(const OfMould&) const = default;
};
struct OfFormula {
  std::string formula;
  auto operator<=>(const OfFormula&) const = default;
};
struct OfLoss {
  LossOf loss;
  std::string decoration = {};  // of its jug and melt
  auto operator<=>(const OfLoss&) const = default;
};
struct OfTopping {
  std::string topping, tip, hand;
  auto operator<=>(const OfTopping&) const = default;
};
struct OfHand {
  std::string tip, hand;
  auto operator<=>(const OfHand&) const = default;
};
struct OfTime {
  TimeOf time;
  auto operator<=>(const OfTime&) const = default;
};
using BelongsTo = std::variant<OfMould, OfFormula, OfLoss, OfTopping, OfHand, OfTime>;

struct FigureId {
  Kind kind;
  BelongsTo of;
  auto operator<=>(const FigureId&) const = default;
};

struct Factor {
  double factor;
  auto operator<=>(const Factor&) const = default;
};
/// A number in the unit of its figure: all of one figure are of one kind.
using Value = std::variant<Length, Volume, Mass, Density, Share, Factor, Minutes>;

/// What one batch says.
struct BatchValue {
  std::string code;
  std::chrono::year_month_day date;
  Value value;
  std::optional<Value> planned = {};  // by this batch's own plan
};

/// Between which values, and how surely.
struct WholeRange {};  // the least and the greatest, below six
struct Interval {
  double level;  // how often such an interval holds the true one, at least 0.95
};
struct Spread {
  Value low, high;
  std::variant<WholeRange, Interval> is = WholeRange{};
};

// Where a figure stands once it is taken.
struct StudioLoss {
  LossOf loss;
};
struct DecorationLoss {
  LossOf loss;  // decoration_jug or melt
  std::string decoration;
};
struct FormulaDensity {
  std::string formula;
};
struct MouldFactor {
  std::string mould;
};
struct TipCorrection {
  std::string tip, hand;
};
struct FormulaCureLoss {
  std::string formula;
};
struct StudioWork {
  TimeOf time;
};
struct RunTopping {
  std::string topping;
};
using WrittenAt = std::variant<StudioLoss, DecorationLoss, FormulaDensity, MouldFactor,
                               TipCorrection, FormulaCureLoss, StudioWork, RunTopping>;
struct Writing {
  WrittenAt at;
  Value value;  // of a mould its factor on the volume, otherwise the figure's own value
};

/// What may be done with a figure.
enum class Standing : std::uint8_t {
  nowhere,     // it tells something, but stands in no file
  too_few,     // fewer than `fewest_to_suggest` values
  as_planned,  // the interval holds what the plan uses: the batches give no reason to change it
  suggested,
};

/// Shown from so many batches on.
inline constexpr std::size_t fewest_to_show = 3;
/// Suggested from as many as first make an interval of 95 % (centre.h): below, that the plan's own
/// value lies outside of all values happens by chance once in 16 times or more often.
inline constexpr std::size_t fewest_to_suggest = 6;

/// A learned figure: the Hodges-Lehmann estimate of what single batches say.
///
/// The volume error is how much higher the planned pour line would have to stand in the mould as
/// measured to hold what one cavity really took to it: above 0 the cavity takes more than planned.
/// Of each batch it is (v - V) / A with v the poured volume of one cast by the weighed mass and the
/// weigh-cup, and V and A the measured volume to the line that was reached and the surface there.
struct Figure {
  FigureId id;
  Value value;
  Spread spread;
  std::vector<BatchValue> values;      // in the order of the batches
  std::optional<Value> used_now = {};  // by the plan
  Standing standing = Standing::nowhere;
  std::optional<Writing> writes = {};  // where there is a place for it
};

/// A note that a batch has not.
enum class MissingNote : std::uint8_t {
  mass_made,
  left_over,
  lost_altogether,
  in_pot,
  in_jugs,
  overpoured,
  test_piece,
  in_bowl_and_whisk,
  in_bag,
  in_tip,
  at_bag_changes,
  bag_changes,
  poured_in_mould,
  casts,
  line_reached,
  cup_of_base,
  cup_of_topping,
  toppings_piped,
  melted,
  tray_fills,
  casts_weighed,
  in_decoration_jug,
  lost_in_melt,
  three_weighings,
  weighings_for_longer,
  weighings_sooner,
  weighings_that_fall,
  plain_piece_weighed,
  weighed_as_planned,
};

/// What these notes cannot tell, and why: as the last batch stands that could not.
struct Untold {
  FigureId id;
  std::size_t batches = 0;              // that could not tell
  std::string code;                     // of the last of them
  std::vector<MissingNote> needed;      // each of these
  std::vector<MissingNote> any_one_of;  // and one of these
  std::vector<FigureId> mixed_with;     // what it cannot be told apart from
};

/// Notes of one batch that contradict each other: what came out is more, or less, than went in.
struct Contradiction {
  enum class In : std::uint8_t { base, topping, decoration };
  /// What went elsewhere is more, or less, than what was made; or more was made than was weighed.
  enum class Against : std::uint8_t { where_it_went, scales };
  std::string code;
  In in;
  Mass unaccounted;  // made less all that was noted of where it went, or less what was weighed
  Against against = Against::where_it_went;
};

}  // namespace brimwright::learning
