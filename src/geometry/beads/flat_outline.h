#pragma once

#include "geometry/surface/vectors.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace brimwright::geometry {

/// A closed line in the plane, its last point joined to its first.
using FlatOutline = std::vector<FlatPoint>;

/// By the shoelace formula; negative for an outline that runs clockwise.
double signed_area_mm2(const FlatOutline& outline);
/// The centre of the area enclosed, which must not be 0.
FlatPoint centre_of_area(const FlatOutline& outline);

/// Two sides, each by the number of its first point, that cross, touch or lie on each other, other
/// than neighbours at their common end. Sides closer than 1e-6 mm touch. Time grows with the square
/// of the points.
std::optional<std::array<std::size_t, 2>> meeting_sides(const FlatOutline& outline);

/// Fills an anticlockwise outline whose sides do not meet with triangles of its own corners,
/// anticlockwise too.
std::vector<std::array<std::uint32_t, 3>> triangulated(const FlatOutline& outline);

}  // namespace brimwright::geometry
