// The solids of moulds, and what is made from them: cavities scaled to fit, casting boxes.

#include "moulds/mould_solid.h"

#include "any_shape.h"
#include "geometry/files/mesh_writing.h"
#include "geometry/levels/tilted_pour.h"
#include "geometry/repair/mesh_checks.h"
#include "geometry/surface/enclosed_volume.h"
#include "moulds/casting_box.h"
#include "moulds/fit.h"
#include "moulds/mould_file.h"
#include "moulds/shape_curve.h"
#include "moulds/shape_solid.h"
#include "scratch_folder.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>
#include <filesystem>

namespace brimwright::moulds {
namespace {

namespace fs = std::filesystem;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

const fs::path shipped = BRIMWRIGHT_SOURCE_DIR;
const Place option{"command line", "--fit"};

Mould catalogue_mould(const std::string& name) {
  return read_mould((shipped / "moulds" / name).string(),
                    {.shipped = shipped.string(), .folders = {}});
}

Mould mould_of(const Shape& shape) {
  return {.file = "shape.json",
          .name = "shape",
          .description = described(shape),
          .note = {},
          .cavities = 1,
          .owned = 1,
          .unmould_after = {},
          .curve = level_curve(shape),
          .detail_factor = 1,
          .measurements = {},
          .floor = {},
          .remarks = {},
          .shape = shape};
}

double mm3(Volume volume) { return volume / cubic_millimetre; }

}  // namespace

TEST_CASE("every mould of the catalogue has a sound solid that stands on zero and is as high as it",
          "[moulds][solid]") {
  for (const auto& entry : fs::directory_iterator(shipped / "moulds")) {
    if (entry.path().extension() != ".json") continue;
    CAPTURE(entry.path().string());
    const Mould mould = catalogue_mould(entry.path().filename().string());
    const geometry::TriangleMesh solid = solid_of(mould);
    const geometry::CheckedSolid checked = geometry::checked_solid(solid, "solid");
    CHECK(checked.remarks.empty());
    const geometry::Box box = geometry::bounding_box(solid);
    CHECK_THAT(box.low_mm[2], WithinAbs(0, 1e-9));
    CHECK_THAT(box.high_mm[2], WithinRel(mould.curve.height() / millimetre, 1e-9));
    // Round walls of 96 facets hold (96 / 2 pi) sin(2 pi / 96) of the circle, 0.07 % less; a ball,
    // faceted both ways, twice that. Water may have found as much again as the detail factor says.
    const double holding = holding_of(mould, solid);
    CHECK(holding >= mould.detail_factor * (1 - 1e-9));
    CHECK(holding <= mould.detail_factor * 1.0022);
  }
}

TEST_CASE("a mesh that does not stand on zero is set down there", "[moulds][solid]") {
  const ScratchFolder folder;
  geometry::TriangleMesh cup =
      solid_of(Shape(Frustum{40 * millimetre, 60 * millimetre, 30 * millimetre}), 24);
  for (auto& vertex : cup.vertices_mm) vertex[2] += 117;
  const std::string path = folder.write("cup.stl", geometry::binary_stl_of(cup));
  const Mould mould = mould_of_mesh(
      path, {.reading = {.unit = geometry::LengthUnit::millimetre, .up = {}}, .role = {}});
  const geometry::Box box = geometry::bounding_box(solid_of(mould));
  CHECK_THAT(box.low_mm[2], WithinAbs(0, 1e-12));
  CHECK_THAT(box.high_mm[2], WithinAbs(30, 1e-5));
  CHECK_THAT(holding_of(mould, solid_of(mould)), WithinRel(1.0, 1e-12));
}

TEST_CASE("a round cup under-reads by the inscribed polygon's share, and by nothing once corrected",
          "[moulds][solid]") {
  const Mould cup = mould_of(Frustum{50 * millimetre, 50 * millimetre, 40 * millimetre});
  for (const int n : {24, 96, 720}) {
    // n / 2 r^2 sin(2 pi / n) against pi r^2.
    const double share = n / (2 * pi) * std::sin(2 * pi / n);
    CHECK_THAT(holding_of(cup, solid_of(cup, n)), WithinRel(1 / share, 1e-12));
  }
}

TEST_CASE("a cavity scaled to fit holds what was wished", "[moulds][fit][law]") {
  rc::prop("the scaled solid's volume is the wish", [] {
    const Mould mould = mould_of(*any_shape());
    const geometry::TriangleMesh solid = solid_of(mould);
    const double ratio = *rc::gen::inRange(1, 400) / 100.0;
    const auto stretch = *rc::gen::arbitrary<bool>() ? Stretch::every_way : Stretch::depth_only;
    const Fit fit =
        fit_for(mould, {.pour = ratio * mould.curve.brimful(), .headspace = {}, .stretch = stretch},
                option);
    const Volume before = geometry::enclosed_volume(solid);
    const Volume after = geometry::enclosed_volume(scaled(solid, fit));
    RC_ASSERT(std::abs(after / before / ratio - 1) <= 1e-12);
    RC_ASSERT(std::abs(fit.brimful / mould.curve.brimful() / ratio - 1) <= 1e-12);
    RC_ASSERT((stretch == Stretch::every_way ? fit.across == fit.depth : fit.across == 1));
  });
}

TEST_CASE("a mesh scaled to a piece of so many grams holds them to the brim", "[moulds][fit]") {
  const Mould mould = catalogue_mould("twisted_cup.json");
  const Mass piece = 120 * gram;
  const Density batter = 0.98 * gram_per_millilitre;
  const Fit fit = fit_for(mould, {.pour = piece / batter}, option);
  const geometry::TriangleMesh bigger = scaled(solid_of(mould), fit);
  CHECK_THAT(geometry::enclosed_volume(bigger) * batter / gram, WithinRel(120.0, 1e-12));
  const geometry::Box box = geometry::bounding_box(bigger);
  CHECK_THAT((box.high_mm[0] - box.low_mm[0]), WithinRel(fit.length / millimetre, 1e-12));
  CHECK_THAT((box.high_mm[1] - box.low_mm[1]), WithinRel(fit.width / millimetre, 1e-12));
  CHECK_THAT((box.high_mm[2] - box.low_mm[2]), WithinRel(fit.height / millimetre, 1e-9));
}

TEST_CASE("twice as large each way holds eight times, twice as deep two times", "[moulds][fit]") {
  const Mould mould = catalogue_mould("plain_bar.json");
  const Volume brimful = mould.curve.brimful();
  const Fit larger = fit_for(mould, {.pour = 8 * brimful}, option);
  CHECK_THAT(larger.across, WithinRel(2.0, 1e-14));
  CHECK_THAT(larger.height / mould.curve.height(), WithinRel(2.0, 1e-14));
  const Fit deeper = fit_for(
      mould, {.pour = 2 * brimful, .headspace = {}, .stretch = Stretch::depth_only}, option);
  CHECK(deeper.across == 1);
  CHECK_THAT(deeper.depth, WithinRel(2.0, 1e-14));
}

TEST_CASE("headspace that is kept free is not filled by the fit", "[moulds][fit]") {
  // A box 80 x 60 x 40 less 5 mm holds 168 ml; to hold 240 ml below 5 mm of headspace in depth
  // only, it must be 50 + 5 mm deep.
  const Mould box = mould_of(Block{80 * millimetre, 60 * millimetre, 40 * millimetre, {}, {}});
  const Fit deeper = fit_for(
      box, {.pour = 240 * millilitre, .headspace = 5 * millimetre, .stretch = Stretch::depth_only},
      option);
  CHECK_THAT(deeper.height / millimetre, WithinRel(55.0, 1e-13));
  rc::prop("the scaled cavity holds the pour below the headspace", [] {
    const Shape shape = *any_shape();
    const Mould mould = mould_of(shape);
    const Length headspace = *rc::gen::inRange(1, 90) / 100.0 * mould.curve.height();
    const Volume pour = *rc::gen::inRange(1, 300) / 100.0 * mould.curve.brimful();
    const Fit fit = fit_for(mould, {.pour = pour, .headspace = headspace}, option);
    const geometry::LevelCurve now = level_curve(enlarged(shape, fit.depth));
    const Volume held = now.volume_below(now.height() - headspace);
    RC_ASSERT(std::abs(held / pour - 1) <= 1e-9);
  });
}

TEST_CASE("a cavity is not scaled to nothing", "[moulds][fit]") {
  const Mould mould = catalogue_mould("plain_bar.json");
  CHECK_THROWS_WITH(fit_for(mould, {.pour = Volume()}, option),
                    Contains("command line: --fit: is zero"));
  CHECK_THROWS_AS(fit_for(mould, {.pour = -1 * millilitre}, option), UserError);
  CHECK_THROWS_AS(fit_for(mould, {.pour = millilitre, .headspace = -1 * millimetre}, option),
                  UserError);
}

TEST_CASE("silicone for a mould is the box less the master", "[moulds][casting]") {
  // An 80 x 60 x 40 bar, 10 mm of wall and 8 mm of base: 100 x 80 x 48 less 192 ml.
  const geometry::TriangleMesh bar =
      solid_of(Shape(Block{80 * millimetre, 60 * millimetre, 40 * millimetre, {}, {}}), 96);
  CastingBox box{.wall = 10 * millimetre, .base = 8 * millimetre};
  const CastingNeed standing = casting_need(bar, box, option);
  CHECK_THAT(mm3(standing.material), WithinRel(100.0 * 80 * 48 - 80 * 60 * 40, 1e-13));
  CHECK_THAT(mm3(standing.master), WithinRel(80.0 * 60 * 40, 1e-13));
  CHECK_THAT(standing.length / millimetre, WithinRel(100.0, 1e-13));
  CHECK_THAT(standing.width / millimetre, WithinRel(80.0, 1e-13));
  CHECK_THAT(standing.height / millimetre, WithinRel(48.0, 1e-13));
  CHECK(standing.master_from == Length());
  box.master = CastingBox::Master::hung;
  const CastingNeed hung = casting_need(bar, box, option);
  CHECK(hung.material == standing.material);
  CHECK(hung.master_from == 8 * millimetre);
  CHECK(hung.master_to == hung.height);
  // At 1.15 g/ml, as a sheet for a tin-cured silicone may say: 192 ml are 220.8 g.
  CHECK_THAT(standing.material * (1.15 * gram_per_millilitre) / gram, WithinRel(220.8, 1e-12));
}

TEST_CASE("silicone does not run into a void sealed in the master", "[moulds][casting]") {
  const auto block = [](double side) {
    return solid_of(Shape(Block{side * millimetre, side * millimetre, side * millimetre, {}, {}}),
                    8);
  };
  geometry::TriangleMesh hollow = block(40);
  geometry::TriangleMesh core = block(20);
  const auto first = static_cast<std::uint32_t>(hollow.vertices_mm.size());
  for (auto vertex : core.vertices_mm) {
    vertex[2] += 10;
    hollow.vertices_mm.push_back(vertex);
  }
  for (const auto& [a, b, c] : core.triangles)
    hollow.triangles.push_back({first + a, first + c, first + b});  // facing inward
  CHECK_THAT(mm3(geometry::enclosed_volume(hollow)), WithinRel(64000.0 - 8000, 1e-12));
  const CastingNeed need =
      casting_need(hollow, {.wall = 5 * millimetre, .base = 5 * millimetre}, option);
  CHECK_THAT(mm3(need.master), WithinRel(64000.0, 1e-12));
  CHECK_THAT(mm3(need.material), WithinRel(50.0 * 50 * 45 - 64000, 1e-12));
}

TEST_CASE("a casting box has walls and a base", "[moulds][casting]") {
  const geometry::TriangleMesh ball = solid_of(Shape(Ball{30 * millimetre}), 24);
  CHECK_THROWS_WITH(casting_need(ball, {.wall = {}, .base = 5 * millimetre}, option),
                    Contains("leaves no wall round the master"));
  CHECK_THROWS_WITH(casting_need(ball, {.wall = 5 * millimetre, .base = {}}, option),
                    Contains("leaves no base round the master"));
}

TEST_CASE("a tilted pour into a shape comes out the same by its solid, corrected for facets",
          "[moulds][tilt]") {
  // Half full, a cup of 60 mm and 60 mm depth tilted 20 degrees holds its middle height, whatever
  // the tilt: pi r^2 h (a truncated cylinder).
  const Mould cup = mould_of(Frustum{60 * millimetre, 60 * millimetre, 60 * millimetre});
  const double rise = 60 * std::tan(20 * pi / 180);
  const geometry::TriangleMesh solid = solid_of(cup, 720);
  const geometry::TiltedPour pour(solid, {Angle::in_degrees(20), Angle::in_degrees(15)});
  const Volume held = holding_of(cup, solid) * pour.volume_at((30 + rise / 2) * millimetre);
  CHECK_THAT(mm3(held), WithinRel(pi * 900 * 30, 1e-5));
}

}  // namespace brimwright::moulds
