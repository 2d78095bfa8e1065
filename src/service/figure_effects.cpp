#include "service/figure_effects.h"

#include "moulds/poured_factor.h"
#include "planning/topping.h"
#include "service/run_planning.h"
#include "units/reading.h"
#include "units/user_error.h"

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <type_traits>
#include <utility>

namespace brimwright::service {
namespace {

using namespace learning;

/// As it stands in a file once it is written there, rounded as it is shown.
Value as_written(const Value& value) {
  const std::string words = reports::value_words(value);
  if (std::holds_alternative<Mass>(value)) return read_mass(words, {});
  if (std::holds_alternative<Volume>(value)) return read_volume(words, {});
  if (std::holds_alternative<Density>(value)) return read_density(words, {});
  if (std::holds_alternative<Share>(value)) return read_share(words, {});
  if (const auto* factor = std::get_if<Factor>(&value))
    return Factor{std::round(factor->factor * 1e4) / 1e4};
  return value;
}

void put_loss(planning::Run& run, LossOf loss, const Value& value) {
  auto& pour = run.pour.losses;
  if (loss == LossOf::overpour) pour.overpour = std::get<Share>(value);
  if (loss == LossOf::pot) pour.pot = std::get<Mass>(value);
  if (loss == LossOf::jugs) pour.jugs = std::get<Mass>(value);
  if (!run.pipe) return;
  auto& pipe = run.pipe->losses;
  if (loss == LossOf::bowl_and_whisk) pipe.bowl_and_whisk = std::get<Mass>(value);
  if (loss == LossOf::bag) pipe.bag = std::get<Mass>(value);
  if (loss == LossOf::tip) pipe.tip = std::get<Mass>(value);
  if (loss == LossOf::bag_changes) pipe.each_bag_change = std::get<Mass>(value);
}

void put_decoration(planning::Run& run, const DecorationLoss& loss, const Value& value) {
  for (auto& decoration : run.decorations) {
    if (decoration.name != loss.decoration) continue;
    if (loss.loss == LossOf::melt) decoration.melt_loss = std::get<Share>(value);
    if (loss.loss == LossOf::decoration_jug) decoration.left_in_jug = std::get<Mass>(value);
  }
}

/// Where figure_taking would write it.
bool put_topping(planning::Run& run, Volume each) {
  if (!run.pipe) return false;
  if (run.pipe->trials) {
    run.pipe->trials->volume_each = std::get<Volume>(as_written(each));
    return true;
  }
  if (run.pipe->beads || !run.pipe->envelope) return false;
  auto& share = run.pipe->envelope->soap_share;
  const Volume outline = planning::visible_topping(*run.pipe).volume / share.of_one();
  share = std::get<Share>(as_written(Share::of_one(each / outline)));
  return share <= 100 * percent;
}

/// What of a plan a figure changes. Losses, in the cure too, change nothing that is measured: but
/// for that at a bag change, which measuring holds against the bag.
enum class Changes : std::uint8_t { nothing, weights, measures };

Changes put(planning::Run& run, const Writing& writing, std::size_t batches) {
  const Value value = as_written(writing.value);
  return std::visit(
      [&](const auto& at) {
        using At = std::decay_t<decltype(at)>;
        if constexpr (std::is_same_v<At, StudioLoss>) {
          put_loss(run, at.loss, value);
          return at.loss == LossOf::bag_changes ? Changes::measures : Changes::weights;
        } else if constexpr (std::is_same_v<At, DecorationLoss>) {
          put_decoration(run, at, value);
          return Changes::weights;
        } else if constexpr (std::is_same_v<At, FormulaDensity>) {
          run.pour.formula.measured_density = std::get<Density>(value);
        } else if constexpr (std::is_same_v<At, FormulaCureLoss>) {
          run.pour.formula.water_lost_in_cure = std::get<Share>(value);
          return Changes::weights;
        } else if constexpr (std::is_same_v<At, MouldFactor>) {
          auto& mould = run.pour.mould;
          const double factor = std::get<Factor>(value).factor / moulds::poured_factor(mould);
          mould.curve = mould.curve.holding(factor);
        } else if constexpr (std::is_same_v<At, RunTopping>) {
          if (!put_topping(run, std::get<Volume>(writing.value))) return Changes::nothing;
        } else if constexpr (std::is_same_v<At, TipCorrection>) {
          if (!run.pipe || !run.pipe->beads) return Changes::nothing;
          run.pipe->beads->tip.hand =
              planning::HandCorrection{.correction = std::get<Factor>(value).factor,
                                       .trials = static_cast<std::int64_t>(batches)};
        } else {
          return Changes::nothing;
        }
        return Changes::measures;
      },
      writing.at);
}

/// Those that are shown alike are the same.
void compare(std::vector<reports::Effect>& effects, const std::string& of, const Value& now,
             const Value& then) {
  if (reports::value_words(now) != reports::value_words(then)) effects.push_back({of, now, then});
}

std::vector<reports::Effect> between(const planning::Plan& now, const planning::Plan& then) {
  std::vector<reports::Effect> effects;
  const auto& pour = now.pour.batter;
  const auto& pour_then = then.pour.batter;
  compare(effects, "base in each cavity", pour.volume_each, pour_then.volume_each);
  compare(effects, "base to mix", pour.weighing.batter, pour_then.weighing.batter);
  if (now.pipe && then.pipe) {
    compare(effects, "topping on each piece", now.pipe->batter.volume_each,
            then.pipe->batter.volume_each);
    compare(effects, "topping to mix", now.pipe->batter.weighing.batter,
            then.pipe->batter.weighing.batter);
  }
  for (std::size_t i = 0; i < now.decorations.size(); ++i)
    if (!now.decorations[i].is_bought)
      compare(effects, now.decorations[i].name + " to melt", now.decorations[i].make,
              then.decorations[i].make);
  if (now.piece.cured && then.piece.cured)
    compare(effects, "a cured piece", *now.piece.cured, *then.piece.cured);
  return effects;
}

}  // namespace

void tell_effects(reports::NamedFigure& named, const planning::Run& run,
                  const planning::Measured& measured, const planning::Plan& plan,
                  const Caller& caller) {
  if (!named.figure.writes) return;
  planning::Run with_it = run;
  const Changes changes = put(with_it, *named.figure.writes, named.figure.values.size());
  if (changes == Changes::nothing) return;
  try {
    named.effects = between(plan, changes == Changes::weights
                                      ? gated_plan(with_it, measured)
                                      : gated_plan(with_it, measured_run(with_it, caller)));
  } catch (const UserError& error) {
    named.no_plan = error.parts().problem;
  }
}

}  // namespace brimwright::service
