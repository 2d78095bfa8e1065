#include "geometry/sections/plane_section.h"

namespace brimwright::geometry {

std::vector<ClosedLine> plane_section(const TriangleMesh& solid, const Plane& plane) {
  const PlaneCut cut = plane_cut(solid, plane);
  std::vector<ClosedLine> lines;
  for (const auto& outline : cut.outlines) {
    ClosedLine line;
    for (const std::uint32_t vertex : outline) line.push_back(cut.vertices_mm[vertex]);
    lines.push_back(std::move(line));
  }
  return lines;
}

}  // namespace brimwright::geometry
