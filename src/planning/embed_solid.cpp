#include "planning/embed_solid.h"

#include "geometry/sections/filled_part.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/vectors.h"
#include "geometry/surface/weld.h"
#include "moulds/mould_solid.h"
#include "planning/fill_level.h"

#include <algorithm>
#include <cmath>

namespace brimwright::planning {
namespace {

using geometry::TriangleMesh;
using geometry::operator+;
using geometry::operator-;
using geometry::operator*;

Place fill_place(const Run& run, std::size_t index) {
  return run.place("/decorations/" + std::to_string(index) + "/fill");
}

/// The solid and its mirror image above it, joined where the flat top of both was.
///
/// Only the flat's facets are left away, so the rims must be the same: those of a mirror image are.
TriangleMesh joined_at_the_flat(const TriangleMesh& half) {
  const double flat = geometry::bounding_box(half).high_mm[2];
  // A cut at the fill puts its vertices within this of the level.
  const double near = 1e-9 * std::max(1.0, std::abs(flat));
  const auto is_flat = [&](std::uint32_t vertex) {
    return std::abs(half.vertices_mm[vertex][2] - flat) <= near;
  };
  TriangleMesh whole;
  const auto count = static_cast<std::uint32_t>(half.vertices_mm.size());
  for (std::uint32_t v = 0; v < count; ++v) {
    auto point = half.vertices_mm[v];
    if (is_flat(v)) point[2] = flat;
    whole.vertices_mm.push_back(point);
  }
  for (std::uint32_t v = 0; v < count; ++v) {
    auto point = whole.vertices_mm[v];
    point[2] = 2 * flat - point[2];
    whole.vertices_mm.push_back(point);
  }
  for (const auto& facet : half.triangles) {
    if (is_flat(facet[0]) && is_flat(facet[1]) && is_flat(facet[2])) continue;
    whole.triangles.push_back(facet);
    whole.triangles.push_back({facet[0] + count, facet[2] + count, facet[1] + count});
  }
  return geometry::welded(whole);
}

TriangleMesh solid_of_cast(const InMould& made) {
  const TriangleMesh cavity = moulds::solid_of(made.mould);
  const Length depth = depth_of(made.fill, made.mould, {});
  const bool is_full = depth >= made.mould.curve.height() * (1 - 1e-12);
  const TriangleMesh cast = is_full ? cavity : geometry::filled_part(cavity, depth);
  return made.form == CastForm::two_halves ? joined_at_the_flat(cast) : cast;
}

/// A prism of the circle's own area: corners stand a little outside the circle, flats inside.
TriangleMesh solid_of_rod(const Rod& rod) {
  const std::uint32_t sides = 96;
  const double turn = 2 * pi / sides;
  const double radius = rod.diameter / millimetre / 2 * std::sqrt(turn / std::sin(turn));
  const double half = rod.length / millimetre / 2;
  TriangleMesh solid;
  for (std::uint32_t i = 0; i < sides; ++i) {
    const double y = radius * std::cos(i * turn), z = radius * std::sin(i * turn);
    solid.vertices_mm.push_back({-half, y, z});
    solid.vertices_mm.push_back({half, y, z});
  }
  for (std::uint32_t i = 0; i < sides; ++i) {
    const std::uint32_t a = 2 * i, b = 2 * ((i + 1) % sides);
    solid.triangles.push_back({a, b + 1, a + 1});
    solid.triangles.push_back({a, b, b + 1});
    if (i > 0 && i + 1 < sides) {
      solid.triangles.push_back({0, b, a});
      solid.triangles.push_back({1, a + 1, b + 1});
    }
  }
  return solid;
}

TriangleMesh about_its_middle(TriangleMesh solid) {
  const auto box = geometry::bounding_box(solid);
  const geometry::Vector middle = (box.low_mm + box.high_mm) * 0.5;
  for (auto& vertex : solid.vertices_mm) vertex = vertex - middle;
  return solid;
}

}  // namespace

std::optional<TriangleMesh> embed_solid(const Decoration& decoration) {
  if (const auto* made = std::get_if<InMould>(&decoration.made))
    return about_its_middle(solid_of_cast(*made));
  if (const auto* rod = std::get_if<Rod>(&decoration.made)) return solid_of_rod(*rod);
  return std::nullopt;
}

std::vector<DecorationBody> bodies_of(const Run& run) {
  std::vector<DecorationBody> bodies;
  for (std::size_t i = 0; i < run.decorations.size(); ++i)
    bodies.push_back({embed_solid(run.decorations[i]), embed_volume(run, i)});
  return bodies;
}

Volume embed_volume(const Run& run, std::size_t index) {
  const auto& made = run.decorations[index].made;
  if (const auto* rod = std::get_if<Rod>(&made))
    return pi / 4 * rod->diameter * rod->diameter * rod->length;
  if (const auto* drizzle = std::get_if<Drizzle>(&made)) return drizzle->area * drizzle->thickness;
  if (std::holds_alternative<Bought>(made)) return {};
  const auto& cast = std::get<InMould>(made);
  const double cavities = cast.form == CastForm::two_halves ? 2 : 1;
  return cavities *
         cast.mould.curve.volume_below(depth_of(cast.fill, cast.mould, fill_place(run, index)));
}

}  // namespace brimwright::planning
