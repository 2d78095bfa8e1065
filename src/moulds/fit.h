#pragma once

#include "geometry/surface/triangle_mesh.h"
#include "moulds/mould.h"
#include "units/quantity.h"
#include "units/user_error.h"

namespace brimwright::moulds {

/// Which measures of a cavity may change so that it holds another volume.
enum class Stretch { every_way, depth_only };

/// What a cavity is to hold. For a piece of mass m from a batter of density rho, `pour` is m / rho.
struct FitWish {
  Volume pour;
  Length headspace = {};  // kept free below the brim, whatever the cavity's new size
  Stretch stretch = Stretch::every_way;
};

/// How a cavity is scaled to fit a wish, and what becomes of it.
struct Fit {
  double across = 1;                            // factor on length and width
  double depth = 1;                             // factor on the depth
  Length length = {}, width = {}, height = {};  // new inside size, over all
  Volume brimful = {};  // new, by the mould's own curve, its detail factor included
};

/// The one scaling that fits: by the cube root when every measure may change, so that the piece
/// keeps its looks, or in depth only, so that it keeps its outline (and its walls' lean does not).
/// With a headspace the factor is sought until the pour is right to 1e-14. UserError at `where` for
/// a pour or a headspace that is none.
Fit fit_for(const Mould& mould, const FitWish& wish, const Place& where);

/// The solid with its measures times the fit's factors, about the origin.
geometry::TriangleMesh scaled(geometry::TriangleMesh solid, const Fit& fit);

}  // namespace brimwright::moulds
