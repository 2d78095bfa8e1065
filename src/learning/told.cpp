#include "learning/told.h"

#include "geometry/surface/parallel.h"
#include "learning/mass_balance.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
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

void join(Told::Of& all, const std::vector<Told::Of*>& stretches) {
  std::size_t count = 0;
  for (const Told::Of* of : stretches) count += of->values.size();
  all.values.reserve(count);
  for (Told::Of* of : stretches)
    std::move(of->values.begin(), of->values.end(), std::back_inserter(all.values));
  all.used = stretches.back()->used;
  all.mould = stretches.back()->mould;
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

Told joined(std::vector<Told>&& stretches) {
  Told all;
  std::map<FigureId, std::vector<Told::Of*>> found;
  for (Told& stretch : stretches) {
    for (auto& [id, of] : stretch.told) found[id].push_back(&of);
    for (auto& [id, last] : stretch.untold) {
      Untold& untold = all.untold[id];
      last.batches += untold.batches;
      untold = std::move(last);
    }
    all.contradictions.insert(all.contradictions.end(), stretch.contradictions.begin(),
                              stretch.contradictions.end());
  }
  std::vector<std::pair<Told::Of*, const std::vector<Told::Of*>*>> each;
  for (const auto& [id, of] : found) each.emplace_back(&all.told[id], &of);
  geometry::in_parallel(each.size(), [&](std::size_t i) { join(*each[i].first, *each[i].second); });
  return all;
}

AtLine at_line(const FilledMould& mould, const LineReached& line) {
  return {line.volume_each.value_or(mould.volume_each + line.above_planned * mould.surface),
          line.surface.value_or(mould.surface)};
}

}  // namespace brimwright::learning
