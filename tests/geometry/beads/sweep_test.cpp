#include "geometry/beads/bead.h"
#include "geometry/exposure/facets_above.h"
#include "geometry/repair/mesh_checks.h"
#include "geometry/surface/enclosed_volume.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <numeric>
#include <stdexcept>
#include <utility>
#include <vector>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

const Opening round_8mm = RoundOpening{.radius = 4 * millimetre};
const Opening star_6 = StarOpening{6, 5 * millimetre, 3 * millimetre};
const Opening star_5 = StarOpening{5, 5 * millimetre, 2 * millimetre};
// A C, whose middle lies outside it.
const Opening hook =
    OutlineOpening{{{0, 0}, {8, 0}, {8, 2}, {2, 2}, {2, 6}, {8, 6}, {8, 8}, {0, 8}}};

ConicalSpiral spiral(double turns, double start_mm, double end_mm, double rise_mm) {
  return {.turns = turns,
          .start_radius = start_mm * millimetre,
          .end_radius = end_mm * millimetre,
          .rise = rise_mm * millimetre};
}

double volume_mm3(const std::vector<TriangleMesh>& solids) {
  return std::accumulate(solids.begin(), solids.end(), 0.0, [](double sum, const auto& solid) {
    return sum + enclosed_volume(solid) / cubic_millimetre;
  });
}
double laid_mm3(const Move& move, const Opening& opening, double bead_to_opening = 1) {
  return laid_by({move}, opening, bead_to_opening).front().volume / cubic_millimetre;
}

/// Accepted as it is: nothing turned, dropped or grazing.
void require_sound(const TriangleMesh& solid) {
  const CheckedSolid checked = checked_solid(solid, "bead");
  CHECK(checked.remarks.empty());
}

double between(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 100'001) / 100'000;
}

TEST_CASE("a bead swept for the picture is sound and holds what was laid down",
          "[geometry][sweep]") {
  const Opening opening = GENERATE(round_8mm, star_6, star_5, hook);
  // Facets are widened to hold the same, exactly but on a spiral.
  const auto [move, within] = GENERATE(table<Move, double>({
      {Ring{.radius = 25 * millimetre}, 1e-12},
      {StraightBead{.length = 200 * millimetre, .aside = 12 * millimetre}, 1e-12},
      {Tail{.length = 20 * millimetre}, 1e-12},
      {Dollop{.diameter = 30 * millimetre, .height = 12 * millimetre}, 1e-12},
      {Dots{.count = 7, .circle_radius = 30 * millimetre, .height = 9 * millimetre}, 1e-12},
      {Dots{.count = 1, .circle_radius = {}, .height = 3 * millimetre}, 1e-12},
      {Shells{.count = 6, .circle_radius = 20 * millimetre, .length = 18 * millimetre}, 1e-12},
      {spiral(3, 50, 15, 0), 1e-4},   // its turns 12 mm apart, flat
      {spiral(4, 15, 15, 60), 1e-4},  // its turns 15 mm apart, upright
      {spiral(2.6, 40, 14, 20), 1e-4},
      {spiral(0.3, 30, 26, 0), 1e-4},
  }));
  const auto solids = swept({move}, opening, 1);
  CHECK_THAT(volume_mm3(solids), WithinRel(laid_mm3(move, opening), within));
  for (const TriangleMesh& solid : solids) require_sound(solid);
}

TEST_CASE("a coarse ring holds no less than a fine one", "[geometry][sweep]") {
  // Pappus, 2 pi^2 R r^2.
  const double facet_mm = GENERATE(0.2, 1.0, 30.0);
  const auto ring = swept({Ring{.radius = 20 * millimetre}}, round_8mm, 1, facet_mm);
  CHECK_THAT(volume_mm3(ring), WithinRel(2 * pi * pi * 20 * 16, 1e-12));
}

TEST_CASE("finer steps bring a spiral's solid nearer to its section times its length",
          "[geometry][sweep]") {
  const Move move = spiral(3, 50, 12, 10);
  const double whole = laid_mm3(move, star_6);
  const auto off = [&](double facet_mm) {
    return std::abs(volume_mm3(swept({move}, star_6, 1, facet_mm)) / whole - 1);
  };
  CHECK(off(4) < 1e-3);
  CHECK(off(1) < off(4) / 8);  // by the square of the step, or better
  CHECK(off(0.25) < 1e-6);
}

TEST_CASE("any spiral wider than its bead counts what overlaps twice", "[geometry][sweep][law]") {
  // Pappus again: a section carried about its middle sweeps section times way, turn over turn.
  rc::prop("volume of the mesh, by the divergence theorem", [] {
    const Move move = spiral(between(0.1, 6), between(6, 40), between(6, 40), between(0, 60));
    const double laid = laid_mm3(move, star_6);
    RC_ASSERT(std::abs(volume_mm3(swept({move}, star_6, 1)) / laid - 1) < 2e-4);
  });
}

TEST_CASE("a bead that bends more tightly than it is wide winds round no point backwards",
          "[geometry][sweep]") {
  const Move move = GENERATE(Move(spiral(5, 20, 0, 30)), Move(spiral(3, 0, 12, 5)),
                             Move(spiral(3, 5, 0, 0)), Move(Ring{.radius = 1.5 * millimetre}));
  const Opening opening = GENERATE(round_8mm, star_6);
  const TriangleMesh bead = swept({move}, opening, 1).front();
  std::vector<FacetCorners> facets;
  for (const auto& [a, b, c] : bead.triangles)
    facets.push_back({bead.vertices_mm[a], bead.vertices_mm[b], bead.vertices_mm[c]});
  const Box box = bounding_box(bead);
  std::vector<Vector> points;
  constexpr int steps = 37;  // points on a grid that shares nothing with the facets
  for (int i = 0; i < steps * steps * steps; ++i) {
    Vector p{};
    for (std::size_t axis = 0, left = static_cast<std::size_t>(i); axis < 3; ++axis) {
      const double share = (static_cast<double>(left % steps) + 0.4142) / steps;
      p[axis] = std::lerp(box.low_mm[axis], box.high_mm[axis], share);
      left /= steps;
    }
    points.push_back(p);
  }
  const auto above = facets_above(points, facets);
  CHECK(std::none_of(above.begin(), above.end(), [](const Above& a) { return a.winding < 0; }));
  // By Pappus a fold would take off what lies beyond the axis; it is left away instead.
  CHECK(volume_mm3({bead}) >= laid_mm3(move, opening) * (1 - 1e-4));
}

TEST_CASE("a spiral without radius goes straight up", "[geometry][sweep]") {
  const auto straight_up = swept({spiral(2, 0, 0, 30)}, round_8mm, 1);
  CHECK_THAT(volume_mm3(straight_up), WithinRel(16 * pi * 30, 1e-12));
  require_sound(straight_up.front());
}

TEST_CASE("beads lie on the floor and dabs stand on it", "[geometry][sweep]") {
  const auto [move, top_mm] = GENERATE(table<Move, double>({
      {Ring{.radius = 25 * millimetre}, 10},
      {StraightBead{.length = 90 * millimetre}, 10},
      {Tail{.length = 20 * millimetre}, 20},
      {Dollop{.diameter = 30 * millimetre, .height = 12 * millimetre}, 12},
      {Dots{.count = 7, .circle_radius = 30 * millimetre, .height = 9 * millimetre}, 9},
      {Shells{.count = 6, .circle_radius = 20 * millimetre, .length = 18 * millimetre}, 10},
  }));
  for (const TriangleMesh& solid : swept({move}, star_6, 1)) {  // 10 mm from point to point
    const Box box = bounding_box(solid);
    CHECK_THAT(box.low_mm[2], WithinAbs(0, 1e-12));
    CHECK_THAT(box.high_mm[2], WithinRel(top_mm, 1e-3));  // shells are widened a little
  }
}

TEST_CASE("a move that says its height starts there", "[geometry][sweep]") {
  const Length height = 7 * millimetre;
  const Move move = GENERATE_REF(
      Move(Ring{.radius = 25 * millimetre, .at_height = height}),
      Move(StraightBead{.length = 90 * millimetre, .aside = {}, .at_height = height}),
      Move(Tail{.length = 20 * millimetre, .at_height = height}),
      Move(Dollop{.diameter = height, .height = height, .at_height = height}),
      Move(Dots{.count = 7, .circle_radius = height, .height = height, .at_height = height}),
      Move(Shells{.count = 6, .circle_radius = height, .length = height, .at_height = height}));
  const auto solids = swept({Ring{.radius = 9 * millimetre}, move}, star_6, 1);
  CHECK_THAT(bounding_box(solids[1]).low_mm[2], WithinAbs(7, 1e-12));
}

TEST_CASE("a spiral goes on where the one before it ended", "[geometry][sweep]") {
  const auto one = swept({spiral(3, 50, 14, 30)}, round_8mm, 1);
  const auto two = swept({spiral(1.25, 50, 35, 12.5), spiral(1.75, 35, 14, 17.5)}, round_8mm, 1);
  REQUIRE(two.size() == 2);
  CHECK_THAT(volume_mm3(two), WithinRel(volume_mm3(one), 1e-4));
  const auto end = [](const TriangleMesh& bead) {  // the middle of its last section's 24 corners
    Vector sum{};
    for (std::size_t i = 1; i <= 24; ++i) sum = sum + bead.vertices_mm[bead.vertices_mm.size() - i];
    return sum * (1.0 / 24);
  };
  CHECK_THAT(length(end(two[1]) - end(one[0])), WithinAbs(0, 1e-9));
  // Of a 8 mm bead on the floor: 4 mm to the middle (0.6 % more to a corner), and 30 mm of rise.
  CHECK_THAT(end(one[0])[2], WithinAbs(34, 0.03));
}

TEST_CASE("a tail stands on the end of the bead, or on the dollop", "[geometry][sweep]") {
  const Tail tail{.length = 9 * millimetre};
  const auto foot = [](const TriangleMesh& mesh) { return bounding_box(mesh).low_mm; };
  // A bead of 10 mm from point to point, on a spiral of two and a half turns that rises by 20.
  const auto after_spiral = swept({spiral(2.5, 20, 6, 20), tail}, star_6, 1);
  CHECK_THAT(foot(after_spiral[1])[2], WithinAbs(30, 1e-9));
  const Vector tip = after_spiral[1].vertices_mm.back();
  CHECK_THAT(length(tip - Vector{-6, 0, 39}), WithinAbs(0, 1e-9));
  const Dollop dollop{.diameter = 30 * millimetre, .height = 12 * millimetre};
  CHECK_THAT(foot(swept({Ring{.radius = 20 * millimetre}, dollop, tail}, star_6, 1)[2])[2],
             WithinAbs(12, 1e-12));
  CHECK_THAT(foot(swept({tail}, star_6, 1)[0])[2], WithinAbs(0, 1e-12));
}

TEST_CASE("a straight run keeps its section unturned and a flat one upright", "[geometry][sweep]") {
  // The section's highest corner stays the highest all along.
  for (const Move& move : {Move(spiral(3, 50, 14, 0)), Move(StraightBead{.length = metre})}) {
    const auto mesh = swept({move}, star_5, 1).front();
    for (std::size_t i = 0; i < mesh.vertices_mm.size(); i += 10)
      CHECK_THAT(mesh.vertices_mm[i][2], WithinAbs(5 + 5 * std::cos(pi / 5), 1e-9));
  }
}

TEST_CASE("a bead on a screw line turns by its torsion, as a bead left to itself does",
          "[geometry][sweep]") {
  // Against the direction to the axis a rotation-minimising frame turns back by torsion times
  // length; a screw line of radius r and rise h for each radian has torsion h / (r^2 + h^2), and a
  // radian is sqrt(r^2 + h^2) long (do Carmo, Differential Geometry of Curves, 1-5).
  const double radius = 30, rise = 12, turns = 2;
  const auto mesh =
      swept({spiral(turns, radius, radius, rise * 2 * pi * turns)}, round_8mm, 1, 0.5).front();
  const auto turned = [&](std::size_t first, double angle) {
    const Vector outward = {std::cos(angle), std::sin(angle), 0};
    const Vector tangent = Vector{-radius * std::sin(angle), radius * std::cos(angle), rise} *
                           (1 / std::hypot(radius, rise));
    const Vector corner = mesh.vertices_mm[first] - mesh.vertices_mm[first + 12];  // across it
    return std::atan2(dot(corner, cross(tangent, outward)), dot(corner, outward));
  };
  const double end = 2 * pi * turns;
  const double change = turned(mesh.vertices_mm.size() - 24, end) - turned(0, 0);
  const double expected = -rise / std::hypot(radius, rise) * end;
  CHECK_THAT(std::remainder(change - expected, 2 * pi), WithinAbs(0, 1e-3));
}

TEST_CASE("facets too fine for the memory are refused", "[geometry][sweep][refusal]") {
  CHECK_THROWS_AS(swept({Ring{.radius = metre}}, round_8mm, 1, 0.01), std::logic_error);
  CHECK_THROWS_AS(swept({spiral(100, 2000, 2000, 0)}, round_8mm, 1, 1), std::length_error);
}

TEST_CASE("every solid of any moves is closed and faces outward", "[geometry][sweep][law]") {
  rc::prop("edges pair up and the volume is above zero, wherever beads overlap", [] {
    const Opening opening = *rc::gen::element(round_8mm, star_6, star_5, hook);
    const std::vector<Move> moves = {
        Ring{.radius = between(1, 30) * millimetre},
        spiral(between(0.05, 5), between(0, 30), between(0, 30), between(0.1, 40)),
        spiral(between(0.05, 5), between(0, 30), between(0, 30), 0.1),
        Tail{.length = between(1, 30) * millimetre},
        Shells{3, between(0, 20) * millimetre, between(1, 20) * millimetre}};
    for (const TriangleMesh& solid : swept(moves, opening, between(1, 1.5))) {
      std::vector<std::array<std::uint32_t, 2>> forth, back;
      for (const auto& corners : solid.triangles) {
        for (std::size_t i = 0; i < 3; ++i) {
          forth.push_back({corners[i], corners[(i + 1) % 3]});
          back.push_back({corners[(i + 1) % 3], corners[i]});
        }
      }
      std::sort(forth.begin(), forth.end());
      std::sort(back.begin(), back.end());
      RC_ASSERT(forth == back);
      RC_ASSERT(enclosed_volume(solid) > Volume());
    }
  });
}

}  // namespace
}  // namespace brimwright::geometry
