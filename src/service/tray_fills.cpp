#include "service/tray_fills.h"

#include "service/ordered.h"
#include "units/rounding.h"
#include "units/user_error.h"

#include <algorithm>
#include <chrono>
#include <variant>

namespace brimwright::service {
namespace {

using std::chrono::hours;
using std::chrono::seconds;

std::size_t tray_of(const planning::Decoration& decoration, Trays& trays, const Place& where) {
  const auto* cast = std::get_if<planning::InMould>(&decoration.made);
  const std::string file = cast ? one_name_of(cast->mould.file) : "rods of " + decoration.name;
  const auto known = std::find(trays.files.begin(), trays.files.end(), file);
  const auto at = static_cast<std::size_t>(known - trays.files.begin());
  if (known == trays.files.end()) {
    trays.files.push_back(file);
    trays.all.push_back(
        {.name = cast ? cast->mould.name : decoration.name, .is_counted = cast != nullptr});
  }
  const auto& time = decoration.time_per_tray_fill;
  if (time && *time > hours(24))
    throw UserError(where, "is more than a day, and a tray is filled at least once a day here",
                    "give the time until the tray can be filled again");
  auto& sets_in = trays.all[at].sets_in;
  if (time) sets_in = std::max(sets_in.value_or(seconds{}), *time);
  return at;
}

/// The share of the run's casts that a batch needs, in fillings of its own.
int fills_for(const planning::DecorationTally& tally, const planning::Decoration& decoration,
              std::int64_t pieces, std::int64_t of) {
  const double share = static_cast<double>(pieces) / static_cast<double>(of);
  const auto* cast = std::get_if<planning::InMould>(&decoration.made);
  if (!cast) return static_cast<int>(whole_up(share * static_cast<double>(tally.tray_fills)));
  const auto halves = tally.casts == 0 ? 1 : tally.cavity_fills / tally.casts;
  const std::int64_t casts = whole_up(share * static_cast<double>(tally.casts));
  const double in_trays = static_cast<double>(cast->mould.cavities) * cast->mould.owned;
  return static_cast<int>(whole_up(static_cast<double>(casts * halves) / in_trays));
}

std::int64_t pieces_of(const planning::Plan& plan) {
  std::int64_t all = 0;
  for (const auto& batch : plan.batches) all += batch.count() * batch.pieces;
  return all;
}

}  // namespace

void add_fills(days::Batch& to, const planning::Run& run, const planning::Plan& plan,
               std::int64_t pieces, Trays& trays) {
  for (std::size_t i = 0; i < run.decorations.size(); ++i) {
    const auto& decoration = run.decorations[i];
    if (std::holds_alternative<planning::Drizzle>(decoration.made)) continue;
    if (planning::is_bought(decoration)) continue;
    const Place where = run.place("/decorations/" + std::to_string(i) + "/time_per_tray_fill");
    const int count = fills_for(plan.decorations[i], decoration, pieces, pieces_of(plan));
    if (count > 0) to.fills.push_back({tray_of(decoration, trays, where), count});
  }
}

}  // namespace brimwright::service
