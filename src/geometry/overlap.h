#pragma once

#include "geometry/surface_tree.h"
#include "units/quantity.h"

#include <string>

namespace brimwright::geometry {

/// How one solid stands to another.
enum class Standing { inside, around, apart, crossing };

/// Of `first` to `second`: decided by the gap between the surfaces and, where there is one, by
/// which contains the other's points. Touching counts as crossing.
Standing standing_of(const SurfaceTree& first, const SurfaceTree& second);

/// Volume that both solids hold. Inside: the inner one's; apart: none; only where they cross is it
/// a boolean intersection (CGAL's corefinement, in a child process of limited time and memory;
/// UserError naming `file` where that cannot be done soundly, as with a surface that crosses
/// itself). Where it fails for how exactly the two touch, `second` is moved by a billionth of the
/// largest coordinate and the result is as much the less exact.
Volume common_volume(const SurfaceTree& first, const SurfaceTree& second, const std::string& file);

}  // namespace brimwright::geometry
