#pragma once

#include "geometry/surface/enclosed_volume.h"

namespace brimwright::geometry::test {

inline double mm3(const TriangleMesh& mesh) { return enclosed_volume(mesh) / cubic_millimetre; }

}  // namespace brimwright::geometry::test
