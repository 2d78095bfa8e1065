#include "learning/learned.h"

#include "geometry/surface/parallel.h"
#include "learning/centre.h"
#include "learning/told.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>
#include <type_traits>
#include <utility>
#include <vector>

namespace brimwright::learning {
namespace {

// A value's number in a unit of its own, and back.
double number_in(const Value& value) {
  return std::visit(
      [](const auto& v) {
        using V = std::decay_t<decltype(v)>;
        if constexpr (std::is_same_v<V, Share>)
          return v.of_one();
        else if constexpr (std::is_same_v<V, Factor>)
          return v.factor;
        else if constexpr (std::is_same_v<V, Minutes>)
          return v.count();
        else
          return v.base();
      },
      value);
}

Value like(const Value& kind, double number) {
  return std::visit(
      [&](const auto& v) -> Value {
        using V = std::decay_t<decltype(v)>;
        if constexpr (std::is_same_v<V, Share>)
          return Share::of_one(number);
        else if constexpr (std::is_same_v<V, Factor>)
          return Factor{number};
        else if constexpr (std::is_same_v<V, Minutes>)
          return Minutes(number);
        else
          return V::from_base(number);
      },
      kind);
}

std::optional<WrittenAt> place_of_loss(const OfLoss& of) {
  switch (of.loss) {
    case LossOf::pot:
    case LossOf::jugs:
    case LossOf::overpour:
    case LossOf::bowl_and_whisk:
    case LossOf::bag:
    case LossOf::tip:
    case LossOf::bag_changes:
      return StudioLoss{of.loss};
    case LossOf::decoration_jug:
    case LossOf::melt:
      return DecorationLoss{of.loss, of.decoration};
    case LossOf::test_piece:
    case LossOf::base_altogether:
    case LossOf::topping_altogether:
      break;
  }
  return std::nullopt;
}

std::optional<WrittenAt> place_of(const FigureId& id) {
  switch (id.kind) {
    case Kind::volume_error:
      return MouldFactor{std::get<OfMould>(id.of).mould};
    case Kind::base_density:
      return FormulaDensity{std::get<OfFormula>(id.of).formula};
    case Kind::loss:
      return place_of_loss(std::get<OfLoss>(id.of));
    case Kind::hand_correction: {
      const auto& of = std::get<OfHand>(id.of);
      return TipCorrection{of.tip, of.hand};
    }
    case Kind::cure_loss:
      return FormulaCureLoss{std::get<OfFormula>(id.of).formula};
    case Kind::time:
      return StudioWork{std::get<OfTime>(id.of).time};
    case Kind::topping_each:
      return RunTopping{std::get<OfTopping>(id.of).topping};
    case Kind::whipped_density:
      break;
  }
  return std::nullopt;
}

Factor factor_of(Length error, const FilledMould& mould) {
  return {1 + error * mould.surface / mould.volume_each};
}

std::optional<Writing> writing_of(const Figure& figure, const FilledMould* mould) {
  auto at = place_of(figure.id);
  if (!at) return std::nullopt;
  const auto* error = std::get_if<Length>(&figure.value);
  return Writing{*std::move(at), error ? Value{factor_of(*error, *mould)} : figure.value};
}

Standing standing_of(const Figure& figure) {
  if (!figure.writes) return Standing::nowhere;
  if (figure.values.size() < fewest_to_suggest) return Standing::too_few;
  if (!figure.used_now) return Standing::suggested;
  const double used = number_in(*figure.used_now);
  const double alike = 1e-9 * std::abs(used);  // what arithmetic alone sets apart
  const bool is_within =
      number_in(figure.spread.low) - alike <= used && used <= number_in(figure.spread.high) + alike;
  return is_within ? Standing::as_planned : Standing::suggested;
}

Figure figure_of(const FigureId& id, Told::Of&& told, const std::optional<Value>& used) {
  std::vector<double> numbers;
  numbers.reserve(told.values.size());
  for (const BatchValue& value : told.values) numbers.push_back(number_in(value.value));
  const Centre centre = centre_of(std::move(numbers));
  const Value kind = told.values.front().value;
  Figure figure{.id = id,
                .value = like(kind, centre.value),
                .spread = {like(kind, centre.low), like(kind, centre.high)},
                .values = std::move(told.values),
                .used_now = used};
  if (centre.level) figure.spread.is = Interval{*centre.level};
  figure.writes = writing_of(figure, told.mould);
  figure.standing = standing_of(figure);
  return figure;
}

/// A stretch of them by each thread, added up in their order.
Told told_by(std::span<const BatchFacts> batches) {
  constexpr std::size_t stretch = 1024;
  return joined(geometry::in_parts<Told>(
      batches.size(),
      [&](std::size_t i, Told& part) {
        const BatchFacts& batch = batches[i];
        tell_base(batch, part);
        tell_toppings(batch, part);
        tell_decorations(batch, part);
        tell_times(batch, part);
        tell_cure(batch, part);
      },
      stretch));
}

}  // namespace

std::vector<BatchByBatch> batch_by_batch(std::span<const BatchFacts> batches) {
  Told told = told_by(batches);
  std::vector<BatchByBatch> all;
  for (auto& [id, of] : told.told) all.push_back({id, std::move(of.values)});
  return all;
}

Learned learned_from(std::span<const BatchFacts> batches,
                     const std::map<FigureId, Value>& used_now) {
  Told told = told_by(batches);
  std::erase_if(told.told,
                [](const auto& one) { return one.second.values.size() < fewest_to_show; });
  std::vector<std::pair<const FigureId, Told::Of>*> shown;
  for (auto& one : told.told) shown.push_back(&one);
  std::vector<std::optional<Figure>> figures(shown.size());
  geometry::in_parallel(shown.size(), [&](std::size_t i) {
    auto& [id, of] = *shown[i];
    const auto used = used_now.find(id);
    const std::optional<Value> now = used == used_now.end() ? of.used : used->second;
    figures[i] = figure_of(id, std::move(of), now);
  });
  Learned learned;
  for (auto& figure : figures) learned.figures.push_back(*std::move(figure));
  for (auto& [id, untold] : told.untold) learned.untold.push_back(std::move(untold));
  learned.contradictions = std::move(told.contradictions);
  return learned;
}

}  // namespace brimwright::learning
