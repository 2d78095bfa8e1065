#include "planning/batching.h"

#include "planning/hours_in_mould.h"
#include "units/rounding.h"
#include "units/user_error.h"
#include "units/wording.h"

#include <algorithm>
#include <functional>
#include <queue>
#include <string_view>
#include <tuple>

namespace brimwright::planning {
namespace {

// Years of any small studio's making.
constexpr std::int64_t most_batches = 1000;

std::int64_t parts_up(std::int64_t whole, std::int64_t part) { return (whole + part - 1) / part; }

/// What so many batches, spread evenly over the fillings, can hold.
std::int64_t held_by(std::int64_t batches, const Pieces& pieces, std::int64_t most) {
  const std::int64_t fewer = batches / pieces.fillings, with_one_more = batches % pieces.fillings;
  const auto holds = [&](std::int64_t n) { return std::min(pieces.cavities, n * most); };
  return with_one_more * holds(fewer + 1) + (pieces.fillings - with_one_more) * holds(fewer);
}

std::int64_t fewest_batches(const Pieces& pieces, std::int64_t most) {
  std::int64_t low = pieces.fillings - 1;  // too few
  std::int64_t high = pieces.fillings * parts_up(pieces.cavities, most);
  while (high - low > 1) {
    const std::int64_t middle = low + (high - low) / 2;
    (held_by(middle, pieces, most) >= pieces.casts ? high : low) = middle;
  }
  return high;
}

std::int64_t smallest(const std::vector<std::vector<std::int64_t>>& fillings) {
  std::int64_t least = fillings.front().front();
  for (const auto& filling : fillings)
    for (const std::int64_t casts : filling) least = std::min(least, casts);
  return least;
}

bool can_be_made(const Run& run, std::int64_t sell, std::int64_t per_cast,
                 const BatchLimits& limits) {
  const Pieces pieces = pieces_of(run, sell, per_cast);
  return fewest_batches(pieces, limits.most) <= most_batches &&
         smallest(dealt(pieces, limits.most)) >= limits.least;
}

/// The nearest numbers to sell, below and above, that can be made.
std::string what_can_be_sold(const Run& run, const Pieces& pieces, const BatchLimits& limits) {
  constexpr std::int64_t far = 5000;
  std::string numbers;
  for (std::int64_t sell = pieces.sell - 1; sell > std::max<std::int64_t>(0, pieces.sell - far);
       --sell)
    if (can_be_made(run, sell, pieces.per_cast, limits)) {
      numbers = std::to_string(sell);
      break;
    }
  for (std::int64_t sell = pieces.sell + 1; sell < pieces.sell + far; ++sell)
    if (can_be_made(run, sell, pieces.per_cast, limits))
      return "plan " + (numbers.empty() ? "" : numbers + " or ") + std::to_string(sell) +
             " pieces to sell";
  return numbers.empty() ? "change what limits a batch" : "plan " + numbers + " pieces to sell";
}

/// Pieces to sell that a thousand batches hold for certain.
std::int64_t most_to_sell(const Run& run, const Pieces& pieces, std::int64_t most) {
  const std::int64_t fillings = most_batches / parts_up(pieces.cavities, most);
  const std::int64_t casts = fillings > 0 ? fillings * pieces.cavities : most_batches * most;
  return whole_down(static_cast<double>(casts * pieces.per_cast) * (1 - run.spoilage.of_one()));
}

std::string sizes_in_words(const std::vector<std::vector<std::int64_t>>& fillings,
                           std::int64_t per_cast) {
  std::vector<std::int64_t> sizes;
  for (const auto& filling : fillings)
    for (const std::int64_t casts : filling) sizes.push_back(casts * per_cast);
  std::sort(sizes.begin(), sizes.end(), std::greater<>());
  sizes.erase(std::unique(sizes.begin(), sizes.end()), sizes.end());
  std::string words;
  for (const std::int64_t size : sizes)
    words += (words.empty() ? "" : " and ") + std::to_string(size);
  return words;
}

std::string locked(const Run& run) {
  const auto after = hours_in_mould(run);
  return after ? ", " + in_hours(*after) : "";
}

std::string ordinal(std::int64_t n) {
  constexpr const char* small[] = {"",      "first",   "second", "third", "fourth", "fifth",
                                   "sixth", "seventh", "eighth", "ninth", "tenth"};
  return n <= 10 ? small[n] : "filling number " + std::to_string(n);
}

std::string more_or_fewer(const char* what, std::int64_t now, std::int64_t then) {
  if (now == then) return "";
  const std::int64_t off = std::abs(then - now);
  return counted(off, what, std::string(what) + (std::string_view(what) == "batch" ? "es" : "s")) +
         (then > now ? " more" : " fewer");
}

std::string change_in_words(const Run& run, const Pieces& now, const Around& then) {
  const std::string fillings = more_or_fewer("filling", now.fillings, then.fillings);
  const std::string batches = more_or_fewer("batch", now.batches, then.batches);
  std::string text = std::to_string(then.sell) + " to sell: ";
  if (!fillings.empty()) text += fillings + locked(run);
  if (!batches.empty()) text += (fillings.empty() ? "" : "; ") + batches;
  return text + (fillings.empty() && batches.empty() ? "as many fillings and batches." : ".");
}

std::optional<Around> with(const Run& run, std::int64_t sell, const Pieces& now,
                           const BatchLimits& limits) {
  if (sell < 1 || !can_be_made(run, sell, now.per_cast, limits)) return std::nullopt;
  const Pieces pieces = pieces_of(run, sell, now.per_cast);
  Around around{sell, pieces.fillings, fewest_batches(pieces, limits.most), ""};
  around.text = change_in_words(run, now, around);
  return around;
}

/// The most pieces to sell that save a filling, within a tenth of the run.
std::optional<Around> saving_a_filling(const Run& run, const Pieces& now,
                                       const BatchLimits& limits) {
  if (now.fillings == 1) return std::nullopt;
  for (std::int64_t sell = now.sell - 1;
       sell >= now.sell - std::max<std::int64_t>(1, now.sell / 10); --sell) {
    if (sell < 1) return std::nullopt;
    if (pieces_of(run, sell, now.per_cast).fillings == now.fillings) continue;
    auto around = with(run, sell, now, limits);
    if (around)
      around->text = std::to_string(now.sell) + " to sell needs " +
                     counted(now.casts, "cavity", "cavities") + ": a " + ordinal(now.fillings) +
                     (now.fillings <= 10 ? " filling" : "") + locked(run) + "; " +
                     std::to_string(sell) + " saves it.";
    return around;
  }
  return std::nullopt;
}

}  // namespace

Pieces pieces_of(const Run& run, std::int64_t sell, std::int64_t per_cast) {
  Pieces pieces;
  pieces.sell = sell;
  pieces.make = whole_up(static_cast<double>(sell) / (1 - run.spoilage.of_one()));
  pieces.per_cast = per_cast;
  pieces.casts = parts_up(pieces.make, per_cast);
  pieces.cavities = std::int64_t{run.pour.mould.cavities} * run.pour.mould.owned;
  pieces.fillings = parts_up(pieces.casts, pieces.cavities);
  if (run.batch.fills_moulds) pieces.casts = pieces.fillings * pieces.cavities;
  pieces.to_stock = pieces.casts * per_cast - pieces.make;
  if (run.batch.fills_moulds) pieces.make = pieces.casts * per_cast;
  return pieces;
}

std::vector<std::vector<std::int64_t>> dealt(const Pieces& pieces, std::int64_t most) {
  const std::int64_t batches = fewest_batches(pieces, most);
  std::vector<std::vector<std::int64_t>> fillings(static_cast<std::size_t>(pieces.fillings));
  std::vector<std::int64_t> room(fillings.size(), pieces.cavities);
  // By size, then in the order of making.
  using Next = std::tuple<std::int64_t, std::size_t, std::size_t>;
  std::priority_queue<Next, std::vector<Next>, std::greater<>> smallest_first;
  for (std::int64_t i = 0; i < batches; ++i) {
    const auto filling = static_cast<std::size_t>(i % pieces.fillings);
    smallest_first.emplace(0, filling, fillings[filling].size());
    fillings[filling].push_back(0);
  }
  for (std::int64_t left = pieces.casts; left > 0;) {
    const auto [casts, filling, batch] = smallest_first.top();
    smallest_first.pop();
    if (casts == most || room[filling] == 0) continue;  // full for good
    --room[filling];
    --left;
    smallest_first.emplace(++fillings[filling][batch], filling, batch);
  }
  for (auto& filling : fillings) std::sort(filling.begin(), filling.end(), std::greater<>());
  return fillings;
}

std::vector<std::vector<std::int64_t>> dealt_within(const Run& run, const Pieces& pieces,
                                                    const BatchLimits& limits) {
  const std::int64_t batches = fewest_batches(pieces, limits.most);
  if (batches > most_batches)
    throw UserError(run.place("/sell"),
                    "takes " + std::to_string(batches) + " batches of at most " +
                        std::to_string(limits.most * pieces.per_cast) + " pieces",
                    "plan at most " + std::to_string(most_to_sell(run, pieces, limits.most)) +
                        " pieces to sell in one run, or own more moulds");
  auto fillings = dealt(pieces, limits.most);
  if (smallest(fillings) < limits.least)
    throw UserError(run.place("/sell"),
                    std::to_string(pieces.make) + " pieces are made in batches of " +
                        sizes_in_words(fillings, pieces.per_cast) + ", and a batch is at least " +
                        std::to_string(limits.least * pieces.per_cast) + ": " +
                        limits.least_because,
                    what_can_be_sold(run, pieces, limits));
  return fillings;
}

std::vector<Around> around(const Run& run, const Pieces& pieces, const BatchLimits& limits) {
  std::vector<Around> all;
  const auto add = [&](const std::optional<Around>& one) {
    const auto is_known = [&](const Around& other) { return other.sell == one->sell; };
    if (one && std::none_of(all.begin(), all.end(), is_known)) all.push_back(*one);
  };
  add(saving_a_filling(run, pieces, limits));
  add(with(run, pieces.sell - 1, pieces, limits));
  add(with(run, pieces.sell + 1, pieces, limits));
  return all;
}

}  // namespace brimwright::planning
