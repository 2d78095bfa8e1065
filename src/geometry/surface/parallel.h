#pragma once

#include <algorithm>
#include <cstddef>
#include <functional>

namespace brimwright::geometry {

/// Does `work` for each part from 0 to `parts`, on as many processors as there are, and is back
/// when all is done: no thread outlives the call. Parts may be done in any order. What a part
/// throws is thrown again, and no further parts are begun.
void in_parallel(std::size_t parts, const std::function<void(std::size_t part)>& work);

/// Does `work` likewise for each of many small things, from 0 to `things`: a stretch of them at a
/// time, so that the call of a thing may be inlined.
template <class Work>
void in_stretches(std::size_t things, Work work) {
  constexpr std::size_t stretch = std::size_t{1} << 14;  // some tenths of a millisecond's worth
  in_parallel((things + stretch - 1) / stretch, [&](std::size_t part) {
    const std::size_t end = std::min(things, (part + 1) * stretch);
    for (std::size_t thing = part * stretch; thing < end; ++thing) work(thing);
  });
}

}  // namespace brimwright::geometry
