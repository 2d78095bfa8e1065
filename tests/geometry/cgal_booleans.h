#pragma once

#include "as_cgal.h"

#include <vector>

namespace brimwright::geometry::test {

// CGAL's booleans, which take the better part of a minute to compile: once for all tests.

/// What of the mesh lies below the plane, closed.
CgalMesh clipped(const TriangleMesh& mesh, const Kernel::Plane_3& plane);
/// `whole` less `part`, by what hangs together.
std::vector<CgalMesh> difference(CgalMesh whole, CgalMesh part);
CgalMesh united(const std::vector<TriangleMesh>& parts);

double volume(const CgalMesh& mesh);
double area(const CgalMesh& mesh, CgalMesh::Face_index face);

}  // namespace brimwright::geometry::test
