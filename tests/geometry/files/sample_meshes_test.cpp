#include "geometry/files/mesh_file.h"
#include "geometry/levels/level_curve.h"
#include "geometry/repair/mesh_checks.h"
#include "geometry/repair/mesh_inspection.h"
#include "geometry/repair/mesh_mending.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/triangle_mesh.h"
#include "units/user_error.h"

#include <catch2/catch.hpp>

#include <string>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::Contains;
using Catch::Matchers::WithinRel;

std::string sample(const std::string& name) {
  return std::string(BRIMWRIGHT_SOURCE_DIR) + "/tests/data/meshes/" + name;
}

CheckedSolid read_and_checked(const std::string& name) {
  const std::string path = sample(name);
  return checked_solid(read_mesh(path, {.unit = LengthUnit::millimetre, .up = {}}).mesh, path);
}

TEST_CASE("the fluted cup fills as its table says", "[geometry][samples]") {
  // tests/data/meshes/truth.json: sections are polygons linear in z, so area is a quadratic of z
  // and the volume its integral; printed to nine digits, corners stored in single precision (6e-8).
  const LevelCurve cup = LevelCurve::of_solid(read_and_checked("fluted_cup_cavity.stl").solid);
  CHECK_THAT(cup.brimful() / millilitre, WithinRel(43.0280863, 2e-7));
  const auto [z, volume_ml, area_mm2] =
      GENERATE(table<double, double, double>({{5, 5.50194893, 1185.41641},
                                              {10, 11.8755276, 1366.15139},
                                              {14, 17.6450326, 1519.9684},
                                              {20, 27.4939357, 1766.07562},
                                              {25, 36.866946, 1985.26485},
                                              {28, 43.0280863, 2122.93108}}));
  CHECK_THAT(cup.volume_below(z * millimetre) / millilitre, WithinRel(volume_ml, 2e-7));
  CHECK_THAT(cup.free_surface(z * millimetre) / square_millimetre, WithinRel(area_mm2, 2e-7));
  CHECK_THAT(cup.depth_at(volume_ml * millilitre) / millimetre, WithinRel(z, 2e-7));
}

TEST_CASE("the slab's body encloses what its table says", "[geometry][samples]") {
  const CheckedSolid slab = read_and_checked("slab4_body.stl");
  CHECK_THAT(enclosed_volume(slab.solid) / millilitre, WithinRel(274.61549, 2e-7));
  CHECK(slab.remarks.empty());
}

TEST_CASE("the loaf's open skin gets no volume", "[geometry][samples]") {
  // One loop of open edges at z = 65, as truth.json says.
  CHECK_THROWS_WITH(read_and_checked("loaf_skin.stl"), Contains("65) mm: is open"));
}

}  // namespace
}  // namespace brimwright::geometry
