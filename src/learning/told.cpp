#include "learning/told.h"

#include "learning/mass_balance.h"

#include <cmath>
#include <iterator>
#include <type_traits>
#include <utility>

namespace brimwright::learning {
namespace {

bool is_sound(const Value& value) {
  return std::visit(
      [](const auto& v) {
        using V = std::decay_t<decltype(v)>;
        if constexpr (std::is_same_v<V, Share>)
          return std::isfinite(v.of_one());
        else if constexpr (std::is_same_v<V, Factor>)
          return std::isfinite(v.factor);
        else if constexpr (std::is_same_v<V, Minutes>)
          return std::isfinite(v.count());
        else
          return is_finite(v);
      },
      value);
}

}  // namespace

void Told::tells(const BatchFacts& batch, FigureId id, Value value,
                 const std::optional<Value>& used, const FilledMould* mould) {
  if (!is_sound(value)) return;
  Of& of = told[std::move(id)];
  of.values.push_back({batch.code, batch.date, value, used});
  of.used = used;
  of.mould = mould;
}

void Told::cannot(const BatchFacts& batch, FigureId id, Why why) {
  Untold& last = untold[id];
  last.id = std::move(id);
  ++last.batches;
  last.code = batch.code;
  last.needed = std::move(why.needed);
  last.any_one_of = std::move(why.any_one_of);
  last.mixed_with = std::move(why.mixed_with);
}

void Told::contradicts(const BatchFacts& batch, Contradiction::In in, Mass unaccounted) {
  contradictions.push_back({batch.code, in, unaccounted});
}

bool Told::exceeds_scales(const BatchFacts& batch, Contradiction::In in,
                          const std::optional<Mass>& made, const std::optional<Mass>& weighed) {
  if (!made || !weighed || *made <= (1 + notes_off_by) * *weighed) return false;
  contradictions.push_back({batch.code, in, *made - *weighed, Contradiction::Against::scales});
  return true;
}

void Told::add(Told&& later) {
  for (auto& [id, of] : later.told) {
    Of& all = told[id];
    all.values.insert(all.values.end(), std::make_move_iterator(of.values.begin()),
                      std::make_move_iterator(of.values.end()));
    all.used = of.used;
    all.mould = of.mould;
  }
  for (auto& [id, last] : later.untold) {
    Untold& all = untold[id];
    last.batches += all.batches;
    all = std::move(last);
  }
  contradictions.insert(contradictions.end(), later.contradictions.begin(),
                        later.contradictions.end());
}

AtLine at_line(const FilledMould& mould, const LineReached& line) {
  return {line.volume_each.value_or(mould.volume_each + line.above_planned * mould.surface),
          line.surface.value_or(mould.surface)};
}

}  // namespace brimwright::learning
