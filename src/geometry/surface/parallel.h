#pragma once

#include <cstddef>
#include <functional>

namespace brimwright::geometry {

/// Does `work` for each part from 0 to `parts`, on as many processors as there are, and is back
/// when all is done: no thread outlives the call. Parts may be done in any order. What a part
/// throws is thrown again, and no further parts are begun.
void in_parallel(std::size_t parts, const std::function<void(std::size_t part)>& work);

}  // namespace brimwright::geometry
