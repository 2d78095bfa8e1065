#include "planning/batch_parting.h"

#include <algorithm>
#include <cstdint>
#include <string>
#include <utility>

namespace brimwright::planning {

std::size_t split_off(Plan& plan, std::optional<std::int64_t> told, const Place& where) {
  if (!told && plan.batches.size() > 1)
    throw UserError(where, "is missing, and the run's batches differ",
                    "give its number, 1 to " + std::to_string(plan.pieces.batches));
  const std::int64_t number = told.value_or(1);
  for (std::size_t i = 0; i < plan.batches.size(); ++i) {
    auto& numbers = plan.batches[i].numbers;
    const auto found = std::find(numbers.begin(), numbers.end(), number);
    if (found == numbers.end()) continue;
    if (numbers.size() == 1) return i;
    numbers.erase(found);
    Batch alone = plan.batches[i];
    alone.numbers = {number};
    plan.batches.insert(plan.batches.begin() + static_cast<std::ptrdiff_t>(i) + 1,
                        std::move(alone));
    return i + 1;
  }
  throw UserError(where, "there is no batch " + std::to_string(number),
                  "give a number from 1 to " + std::to_string(plan.pieces.batches));
}

std::size_t split_off(std::vector<Whipping>& whippings, std::int64_t number, const Place& where) {
  std::int64_t all = 0;
  for (const Whipping& whipping : whippings) all += whipping.count;
  if (number == 0 && whippings.size() > 1)
    throw UserError(where, "does not say which whipping of the topping, and they differ",
                    "write \"topping 1\" to \"topping " + std::to_string(all) + "\"");
  std::int64_t left = std::max<std::int64_t>(1, number);
  for (std::size_t i = 0; i < whippings.size(); ++i) {
    if (left > whippings[i].count) {
      left -= whippings[i].count;
      continue;
    }
    // Those before and after it stay alike; each keeps its place in the order.
    const std::int64_t before = left - 1, after = whippings[i].count - left;
    const auto alike = [&](std::int64_t count) {
      Whipping some = whippings[i];
      some.count = count;
      return some;
    };
    const auto at = [&](std::size_t k) {
      return whippings.begin() + static_cast<std::ptrdiff_t>(k);
    };
    if (after > 0) whippings.insert(at(i + 1), alike(after));
    if (before > 0) whippings.insert(at(i), alike(before));
    const std::size_t alone = before > 0 ? i + 1 : i;
    whippings[alone].count = 1;
    return alone;
  }
  throw UserError(where, "there is no whipping " + std::to_string(number),
                  "the topping of a batch has " + std::to_string(all));
}

}  // namespace brimwright::planning
