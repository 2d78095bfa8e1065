#pragma once

#include "geometry/surface/triangle_mesh.h"
#include "moulds/mould.h"

namespace brimwright::moulds {

/// One cavity as a closed, outward-facing solid, its lowest point at z = 0 and its brim up: the
/// mould's mesh where it has one, otherwise its shape with about `round_facets` facets round a
/// circle. Without the mould's detail factor, which no solid can show.
geometry::TriangleMesh solid_of(const Mould& mould, int round_facets = 96);

/// How many times what `solid`, the mould's own, holds the mould really holds. It makes up for flat
/// facets on round walls (for 96 of them 1.0007, and 1 + (2 pi / n)^2 / 6 for n) and for what water
/// found beyond the dimensions. Volumes measured on the solid times this are the mould's.
double holding_of(const Mould& mould, const geometry::TriangleMesh& solid);

}  // namespace brimwright::moulds
