#include "any_shape.h"
#include "geometry/surface/enclosed_volume.h"
#include "moulds/shape.h"
#include "moulds/shape_curve.h"
#include "moulds/shape_solid.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cmath>

namespace brimwright::moulds {
namespace {

double level(int least, int most) { return *rc::gen::inRange(least, most + 1) / 1000.0; }

bool is_close(Volume a, Volume b, double tolerance) {
  return abs(a - b) <= tolerance * std::max(abs(a), abs(b));
}

}  // namespace

TEST_CASE("a deeper fill of any shape never holds less", "[moulds][law]") {
  rc::prop("volume is monotone in depth", [] {
    const auto curve = level_curve(*any_shape());
    const double a = level(0, 1000), b = level(0, 1000);
    RC_ASSERT(curve.volume_below(std::min(a, b) * curve.height()) <=
              curve.volume_below(std::max(a, b) * curve.height()));
  });
}

TEST_CASE("the depth found for a volume holds that volume", "[moulds][law]") {
  rc::prop("depth_at is the inverse of volume_below", [] {
    const auto curve = level_curve(*any_shape());
    const Volume wanted = level(1, 999) * curve.brimful();
    // Header of LevelCurve: 1e-12 of the height or of the volume; the wider of the two, seen as
    // volume, is the free surface's share of 1e-12 of the height.
    const Length depth = curve.depth_at(wanted);
    const Volume slack =
        1e-12 * curve.brimful() + 2e-12 * curve.height() * curve.free_surface(depth);
    RC_ASSERT(abs(curve.volume_below(depth) - wanted) <= slack);
  });
}

TEST_CASE("any mould of twice the size holds eight times as much", "[moulds][law]") {
  rc::prop("volume goes with the cube of the size", [] {
    const Shape shape = *any_shape();
    const double times = *rc::gen::element(0.5, 2.0, 3.0);
    const auto small = level_curve(shape), large = level_curve(enlarged(shape, times));
    const double up = level(1, 1000);
    RC_ASSERT(is_close(large.volume_below(up * large.height()),
                       times * times * times * small.volume_below(up * small.height()), 1e-11));
  });
}

TEST_CASE("the surface of a fill is what one more millimetre is worth", "[moulds][law]") {
  rc::prop("free surface is the slope of the volume", [] {
    const auto curve = level_curve(*any_shape());
    // A thin slab's volume lies between its thickness times the least and the greatest surface
    // found in it; 21 looks may miss an extreme by a fiftieth of what lies between, rounding by
    // 1e-9.
    const Length low = level(20, 980) * curve.height(), high = low + 0.01 * curve.height();
    const Volume slab = curve.volume_below(high) - curve.volume_below(low);
    Area least = curve.free_surface(low), greatest = least;
    for (int i = 1; i <= 20; ++i) {
      const Area here = curve.free_surface(low + i / 20.0 * (high - low));
      least = std::min(least, here);
      greatest = std::max(greatest, here);
    }
    const Volume slack = 1e-9 * curve.brimful() + 0.02 * (greatest - least) * (high - low);
    RC_ASSERT(slab >= least * (high - low) - slack);
    RC_ASSERT(slab <= greatest * (high - low) + slack);
  });
}

TEST_CASE("without draft a wall is a prism", "[moulds][law]") {
  rc::prop("volume is floor area times depth", [] {
    Shape shape = *any_shape();
    const bool drafted = std::visit(
        [](auto& kind) {
          if constexpr (requires { kind.draft; }) {
            kind.draft = Angle{};
            return true;
          } else {
            return false;
          }
        },
        shape);
    RC_PRE(drafted);
    const auto curve = level_curve(shape);
    const Length depth = level(1, 1000) * curve.height();
    RC_ASSERT(is_close(curve.volume_below(depth), depth * curve.free_surface(Length{}), 1e-12));
  });
}

TEST_CASE("the solid of any shape holds what its formula says, to the facets' chords",
          "[moulds][law]") {
  rc::prop("closed form and mesh agree at every level", [] {
    const Shape shape = *any_shape();
    const int facets = *rc::gen::element(32, 64, 128);
    const auto formula = level_curve(shape);
    const auto mesh = geometry::LevelCurve::of_solid(solid_of(shape, facets));
    RC_ASSERT(std::abs(mesh.height() / formula.height() - 1) < 1e-12);
    // A polygon of n chords misses (2 pi / n)^2 / 6 of its circle; a ball of such polygons misses
    // about as much again for its upright arcs. A flute gets 8 chords at least, which miss up to a
    // tenth of the cup where flutes are deepest. A heart's cleft, rounded inward, may add instead.
    const double chord = std::pow(2 * pi / facets, 2) / 6;
    const double bound = std::holds_alternative<FlutedCup>(shape) ? 0.12 : 2.5 * chord;
    const Length depth = level(0, 1000) * formula.height();
    const Volume apart = mesh.volume_below(depth) - formula.volume_below(depth);
    RC_ASSERT(abs(apart) <= bound * formula.brimful());
    RC_ASSERT(is_close(geometry::enclosed_volume(solid_of(shape, facets)), mesh.brimful(), 1e-10));
  });
}

}  // namespace brimwright::moulds
