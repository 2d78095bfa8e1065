#pragma once

#include <cstddef>
#include <vector>

namespace brimwright::geometry {

/// Asks the system for large pages where there are none yet: what a million facets take is then
/// given by some dozens of pages, not by tens of thousands, each of which costs the time of some
/// hundred sums. Without effect where the system has none.
void ask_for_large_pages(void* first, std::size_t bytes);

/// Makes room in a vector that holds nothing yet.
template <class Thing>
void reserve_large(std::vector<Thing>& things, std::size_t count) {
  things.reserve(count);
  ask_for_large_pages(things.data(), count * sizeof(Thing));
}

}  // namespace brimwright::geometry
