#pragma once

// The room's table of contents: from a mesh file to a level curve.

#include "geometry/enclosed_volume.h"
#include "geometry/level_curve.h"
#include "geometry/mesh_checks.h"
#include "geometry/mesh_file.h"
#include "geometry/mesh_inspection.h"
#include "geometry/mesh_mending.h"
#include "geometry/triangle_mesh.h"
