#pragma once

#include <algorithm>
#include <bit>
#include <cstddef>
#include <functional>
#include <utility>
#include <vector>

namespace brimwright::geometry {

/// How many things are done at the same time.
std::size_t things_at_once();

/// From now on this process does everything one thing after the other: for helper programs, which
/// may start no threads.
void start_no_threads();

/// Does `work` for each part from 0 to `parts`, on as many processors as there are, and is back
/// when all is done: no thread outlives the call. Parts may be done in any order. What a part
/// throws is thrown again, and no further parts are begun.
void in_parallel(std::size_t parts, const std::function<void(std::size_t part)>& work);

/// How many small things are some tenths of a millisecond's worth.
inline constexpr std::size_t usual_stretch = std::size_t{1} << 14;

/// Does `work` likewise for each of many small things, from 0 to `things`: a stretch of them at a
/// time, so that the call of a thing may be inlined.
template <class Work>
void in_stretches(std::size_t things, Work work, std::size_t stretch = usual_stretch) {
  in_parallel((things + stretch - 1) / stretch, [&](std::size_t part) {
    const std::size_t end = std::min(things, (part + 1) * stretch);
    for (std::size_t thing = part * stretch; thing < end; ++thing) work(thing);
  });
}

/// Sorts like std::sort, a part by each thread, which are then merged.
template <class Thing>
void sort_in_parallel(std::vector<Thing>& things) {
  constexpr std::size_t few = std::size_t{1} << 15;  // not worth other threads' while
  const std::size_t parts =
      std::bit_floor(std::min(things_at_once(), std::max<std::size_t>(things.size() / few, 1)));
  const auto from = [&](std::size_t part) {
    return things.begin() + static_cast<std::ptrdiff_t>(things.size() * part / parts);
  };
  in_parallel(parts, [&](std::size_t part) { std::sort(from(part), from(part + 1)); });
  for (std::size_t merged = 1; merged < parts; merged *= 2)
    in_parallel(parts / (2 * merged), [&](std::size_t pair) {
      const std::size_t first = 2 * merged * pair;
      std::inplace_merge(from(first), from(first + merged), from(first + 2 * merged));
    });
}

/// Parts of things from 0 to `things`, each made by `see(thing, part)` of a stretch of them, in
/// their order. What is summed up so does not depend on how many threads there are.
template <class Part, class See>
std::vector<Part> in_parts(std::size_t things, See see, std::size_t stretch = usual_stretch) {
  std::vector<Part> parts((things + stretch - 1) / stretch);
  in_parallel(parts.size(), [&](std::size_t number) {
    Part part{};
    const std::size_t end = std::min(things, (number + 1) * stretch);
    for (std::size_t thing = number * stretch; thing < end; ++thing) see(thing, part);
    parts[number] = std::move(part);
  });
  return parts;
}

/// Lists of the parts, one after the other.
template <class Thing>
std::vector<Thing> joined(const std::vector<std::vector<Thing>>& parts) {
  std::vector<Thing> all;
  for (const auto& part : parts) all.insert(all.end(), part.begin(), part.end());
  return all;
}

}  // namespace brimwright::geometry
