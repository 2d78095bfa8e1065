#include "moulds/fit.h"

#include "geometry/surface/enclosed_volume.h"
#include "moulds/mould_solid.h"

#include <cmath>
#include <utility>

namespace brimwright::moulds {
namespace {

/// What the cavity holds below the headspace when its measures are `factor` times as large.
Volume pour_when_scaled(const geometry::LevelCurve& curve, double factor, const FitWish& wish) {
  const double holds = wish.stretch == Stretch::every_way ? factor * factor * factor : factor;
  return holds * curve.volume_below(curve.height() - wish.headspace / factor);
}

double factor_without_headspace(const geometry::LevelCurve& curve, const FitWish& wish) {
  const double ratio = wish.pour / curve.brimful();
  return wish.stretch == Stretch::every_way ? std::cbrt(ratio) : ratio;
}

/// The pour grows with the factor, from nothing where the headspace is all of the depth.
double factor_with_headspace(const geometry::LevelCurve& curve, const FitWish& wish) {
  double low = wish.headspace / curve.height();
  double high = low + factor_without_headspace(curve, wish);
  while (pour_when_scaled(curve, high, wish) < wish.pour) high *= 2;
  for (double middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2)
    (pour_when_scaled(curve, middle, wish) < wish.pour ? low : high) = middle;
  return high;
}

}  // namespace

Fit fit_for(const Mould& mould, const FitWish& wish, const Place& where) {
  if (!is_finite(wish.pour))
    throw UserError(where, "is more than any cavity holds", "give what the cavity is to hold");
  if (!(wish.pour > Volume()))
    throw UserError(where, "is zero", "give what the cavity is to hold, above zero");
  if (!is_finite(wish.headspace))
    throw UserError(where, "has a headspace deeper than any cavity", "give 0 mm or more");
  if (!(wish.headspace >= Length()))
    throw UserError(where, "has a headspace below zero", "give 0 mm or more");
  const double factor = wish.headspace > Length() ? factor_with_headspace(mould.curve, wish)
                                                  : factor_without_headspace(mould.curve, wish);
  const geometry::Box box = geometry::bounding_box(solid_of(mould));
  Fit fit{.across = wish.stretch == Stretch::every_way ? factor : 1, .depth = factor};
  fit.length = fit.across * (box.high_mm[0] - box.low_mm[0]) * millimetre;
  fit.width = fit.across * (box.high_mm[1] - box.low_mm[1]) * millimetre;
  fit.height = fit.depth * mould.curve.height();
  fit.brimful = fit.across * fit.across * fit.depth * mould.curve.brimful();
  return fit;
}

geometry::TriangleMesh scaled(geometry::TriangleMesh solid, const Fit& fit) {
  for (auto& [x, y, z] : solid.vertices_mm) {
    x *= fit.across;
    y *= fit.across;
    z *= fit.depth;
  }
  return solid;
}

}  // namespace brimwright::moulds
