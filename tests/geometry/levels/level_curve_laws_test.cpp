#include "geometry/levels/level_curve.h"
#include "geometry/surface/enclosed_volume.h"
#include "solids.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cmath>
#include <numbers>

namespace brimwright::geometry {
namespace {

double between(double low, double high) {
  constexpr int steps = 1'000'000;
  return low + (high - low) * *rc::gen::inRange(0, steps + 1) / steps;
}

/// A turned cup of three to six bands with bulges, or an obelisk, somewhere in space.
TriangleMesh any_solid() {
  TriangleMesh solid;
  if (*rc::gen::arbitrary<bool>()) {
    solid = test::obelisk(between(5, 100), between(5, 100), between(5, 100), between(5, 100),
                          between(5, 80));
  } else {
    std::vector<test::Turned> profile;
    double height = 0;
    for (int band = *rc::gen::inRange(3, 7); band-- > 0;) {
      profile.push_back({between(1, 50), height});
      height += between(0.01, 20);
    }
    solid = test::turned(profile, *rc::gen::inRange<std::uint32_t>(3, 40));
  }
  return test::moved(solid, {between(-200, 200), between(-200, 200), between(-200, 200)});
}

/// Equal but for rounding: sums of some hundred terms as large as the whole.
bool alike(double a, double b, double whole) { return std::abs(a - b) <= 1e-11 * whole; }

void require_same_curve(const TriangleMesh& a, const TriangleMesh& b) {
  const LevelCurve curve = LevelCurve::of_solid(a), other = LevelCurve::of_solid(b);
  for (int i = 0; i <= 10; ++i) {
    const Length depth = i / 10.0 * curve.height();
    RC_ASSERT(alike(curve.volume_below(depth) / cubic_millimetre,
                    other.volume_below(depth) / cubic_millimetre,
                    curve.brimful() / cubic_millimetre));
  }
}

TEST_CASE("the curve's brim is the volume enclosed", "[geometry][law]") {
  rc::prop("brimful is the volume by the divergence theorem", [] {
    const TriangleMesh solid = any_solid();
    const double enclosed = enclosed_volume(solid) / cubic_millimetre;
    RC_ASSERT(alike(LevelCurve::of_solid(solid).brimful() / cubic_millimetre, enclosed, enclosed));
  });
}

TEST_CASE("turning, shifting or refining a mesh changes no volume", "[geometry][law]") {
  rc::prop("about the upright axis", [] {
    const TriangleMesh solid = any_solid();
    require_same_curve(solid, test::turned_about_z(solid, between(0, 2 * std::numbers::pi)));
  });
  rc::prop("by any way", [] {
    const TriangleMesh solid = any_solid();
    require_same_curve(solid, test::moved(solid, {between(-90, 90), between(-90, 90), 64}));
  });
  rc::prop("into four times as many facets", [] {
    const TriangleMesh solid = any_solid();
    require_same_curve(solid, test::refined(test::refined(solid)));
  });
  rc::prop("on its side, for the whole", [] {
    const TriangleMesh solid = any_solid();
    const double upright = LevelCurve::of_solid(solid).brimful() / cubic_millimetre;
    const double lying =
        LevelCurve::of_solid(test::on_its_side(solid)).brimful() / cubic_millimetre;
    RC_ASSERT(alike(lying, upright, upright));
  });
}

TEST_CASE("twice the size holds eight times as much", "[geometry][law]") {
  rc::prop("at twice the depth", [] {
    const TriangleMesh solid = any_solid();
    const LevelCurve one = LevelCurve::of_solid(solid);
    const LevelCurve two = LevelCurve::of_solid(test::scaled(solid, 2));
    const Length depth = between(0, 1) * one.height();
    RC_ASSERT(alike(two.volume_below(2 * depth) / cubic_millimetre,
                    8 * one.volume_below(depth) / cubic_millimetre,
                    8 * one.brimful() / cubic_millimetre));
  });
}

TEST_CASE("pouring more never lowers the surface", "[geometry][law]") {
  rc::prop("volume grows with depth", [] {
    const LevelCurve curve = LevelCurve::of_solid(any_solid());
    const double low = between(0, 1), high = between(0, 1);
    const auto [less, more] = std::minmax(low, high);
    RC_ASSERT(curve.volume_below(less * curve.height()) <=
              curve.volume_below(more * curve.height()) + 1e-13 * curve.brimful());
  });
  rc::prop("depth grows with volume", [] {
    const LevelCurve curve = LevelCurve::of_solid(any_solid());
    const double low = between(0, 1), high = between(0, 1);
    const auto [less, more] = std::minmax(low, high);
    RC_ASSERT(curve.depth_at(less * curve.brimful()) <=
              curve.depth_at(more * curve.brimful()) + 1e-12 * curve.height());
  });
}

TEST_CASE("the depth of a volume leads back to it", "[geometry][law]") {
  rc::prop("depth to volume to depth", [] {
    const LevelCurve curve = LevelCurve::of_solid(any_solid());
    const Length depth = between(0, 1) * curve.height();
    // Sections here are at least 1e-3 of the widest, so depths lose three digits at most.
    RC_ASSERT(abs(curve.depth_at(curve.volume_below(depth)) - depth) <= 1e-9 * curve.height());
  });
  rc::prop("volume to depth to volume", [] {
    const LevelCurve curve = LevelCurve::of_solid(any_solid());
    const Volume volume = between(0, 1) * curve.brimful();
    RC_ASSERT(abs(curve.volume_below(curve.depth_at(volume)) - volume) <= 1e-12 * curve.brimful());
  });
}

TEST_CASE("the free surface is what one millimetre is worth", "[geometry][law]") {
  rc::prop("the slope of the volume, between its least and greatest nearby", [] {
    const LevelCurve curve = LevelCurve::of_solid(any_solid());
    const Length step = 1e-4 * curve.height();
    const Length depth = between(0.001, 0.998) * curve.height();
    const double slope =
        (curve.volume_below(depth + step) - curve.volume_below(depth)) / step / square_millimetre;
    // Within a step a section of these solids grows or falls smoothly but for one kink.
    const double here = curve.free_surface(depth) / square_millimetre;
    const double there = curve.free_surface(depth + step) / square_millimetre;
    const double slack = 0.02 * std::max(here, there) + std::abs(here - there);
    RC_ASSERT(slope >= std::min(here, there) - slack);
    RC_ASSERT(slope <= std::max(here, there) + slack);
  });
}

TEST_CASE("a mould that holds five per cent more does so at every depth", "[geometry][law]") {
  rc::prop("holding() multiplies volumes and surfaces and keeps depths", [] {
    const LevelCurve curve = LevelCurve::of_solid(any_solid());
    const double factor = between(0.5, 2);
    const LevelCurve other = curve.holding(factor).holding(1.05);
    const Length depth = between(0, 1) * curve.height();
    const double whole = other.brimful() / cubic_millimetre;
    RC_ASSERT(other.height() == curve.height());
    RC_ASSERT(alike(other.volume_below(depth) / cubic_millimetre,
                    1.05 * factor * curve.volume_below(depth) / cubic_millimetre, whole));
    RC_ASSERT(alike(other.free_surface(depth) / square_millimetre,
                    1.05 * factor * curve.free_surface(depth) / square_millimetre,
                    other.free_surface(depth) / square_millimetre));
    RC_ASSERT(abs(other.depth_at(other.volume_below(depth)) - depth) <= 1e-9 * curve.height());
  });
}

}  // namespace
}  // namespace brimwright::geometry
