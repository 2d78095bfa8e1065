#pragma once

#include "geometry/surface/triangle_mesh.h"
#include "planning/cut.h"
#include "units/user_error.h"

#include <vector>

namespace brimwright::planning {

/// Cuts one loaf. `layers` are the closed, outward-facing solids of its layers, lowest first (one
/// for a plain pour), in the mould's frame with z up; `holding` times their volume is the real one.
///
/// Sizes are those of the box round the loaf, so that a bar from the end of a loaf with leaning
/// walls is smaller than the others; its volume is exact, by planes. A piece that holds less than
/// half of the fullest is no bar but an offcut, and a remark says so. UserError under `where`, the
/// place of the cut, for trims that leave nothing and bars that do not come out, with what would.
CutTally cut_of(const Cut& cut, const std::vector<geometry::TriangleMesh>& layers, double holding,
                const Place& where, const std::vector<Inclusion>& inclusions = {});

/// Where one more solid ends that stands in the same loaf and is cut with it: `holding` times its
/// volume. What is higher than the planed top is planed off.
Parted parted_by(const CutTally& cut, const geometry::TriangleMesh& solid, double holding);

}  // namespace brimwright::planning
