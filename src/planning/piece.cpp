#include "planning/piece.h"

#include "geometry/exposure/exposed_surface.h"
#include "geometry/sections/filled_part.h"
#include "geometry/sections/plane_cut.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/mesh_error.h"
#include "geometry/surface/weld.h"
#include "planning/layer_solids.h"
#include "units/advice_text.h"
#include "units/printing.h"

#include <algorithm>
#include <cmath>

namespace brimwright::planning {
namespace {

using geometry::TriangleMesh;
using geometry::Vector;
using geometry::operator+;
using geometry::operator-;
using geometry::operator*;

TriangleMesh moved(TriangleMesh mesh, const Vector& by) {
  for (auto& vertex : mesh.vertices_mm) vertex = vertex + by;
  return mesh;
}

/// A profile of radii and heights, from the axis to the axis, turned into a solid.
TriangleMesh turned_solid(const std::vector<std::array<double, 2>>& profile) {
  const std::uint32_t round = 96;
  TriangleMesh solid;
  const auto rings = static_cast<std::uint32_t>(profile.size());
  for (const auto& [radius, height] : profile)
    for (std::uint32_t k = 0; k < round; ++k)
      solid.vertices_mm.push_back(
          {radius * std::cos(2 * pi * k / round), radius * std::sin(2 * pi * k / round), height});
  for (std::uint32_t i = 0; i + 1 < rings; ++i)
    for (std::uint32_t k = 0; k < round; ++k) {
      const std::uint32_t a = i * round + k, b = i * round + (k + 1) % round;
      if (profile[i][0] > 0) solid.triangles.push_back({a, b, a + round});
      if (profile[i + 1][0] > 0) solid.triangles.push_back({b, b + round, a + round});
    }
  return geometry::welded(solid);
}

/// The envelope of a topping, standing on z = 0.
TriangleMesh envelope_solid(const Envelope& envelope) {
  const double radius = envelope.diameter / millimetre / 2, height = envelope.height / millimetre;
  std::vector<std::array<double, 2>> profile = {{0, 0}, {radius, 0}};
  const int steps = envelope.form == EnvelopeForm::cone ? 1 : 24;
  for (int i = 1; i < steps; ++i) {
    const double angle = pi / 2 * i / steps;
    profile.push_back({radius * std::cos(angle), height * std::sin(angle)});
  }
  profile.push_back({0, height});
  return turned_solid(profile);
}

std::vector<TriangleMesh> visible_solids(const Pipe& pipe) {
  if (pipe.beads)
    return geometry::swept(pipe.beads->moves, pipe.beads->tip.opening, pipe.beads->bead_to_opening);
  if (pipe.envelope) return {envelope_solid(*pipe.envelope)};
  return {};
}

/// What a cut left nothing of is no part of a piece.
void add_solid(PiecePart& part, TriangleMesh solid) {
  if (!solid.triangles.empty()) part.solids.push_back(std::move(solid));
}

void add_base(PieceModel& model, const Run& run, const PieceShape& shape) {
  const auto& layers = shape.pour.layers;
  auto solids = base_solids(run, shape.cavity, shape.pour);
  for (std::size_t i = 0; i < solids.size(); ++i) {
    PiecePart base{.name = layers.empty() ? run.pour.formula.name : layers[i].name,
                   .kind = PartKind::base,
                   .solids = {}};
    add_solid(base, std::move(solids[i]));
    model.parts.push_back(std::move(base));
  }
}

/// Topping that sits on top stands on the line itself; its depth read back from its volume is only
/// nearly the line.
Length foot_of_topping(const Run& run, const PourTally& pour, Volume in_headspace_each) {
  if (!(in_headspace_each > Volume{})) return pour.line;
  return run.pour.mould.curve.depth_at(pour.batter.volume_each + pour.displaced +
                                       in_headspace_each);
}

ToppingSolids topping_over(const Run& run, const Cavity& cavity, Length foot) {
  ToppingSolids topping;
  if (foot > cavity.line)
    topping.in_headspace.push_back(geometry::layer_between(cavity.solid, cavity.line, foot));
  const Vector up = cavity.middle + Vector{0, 0, foot / millimetre};
  for (auto& solid : visible_solids(*run.pipe))
    topping.visible.push_back(moved(std::move(solid), up));
  return topping;
}

void add_topping(PieceModel& model, const Run& run, const Cavity& cavity) {
  if (!run.pipe) return;
  PiecePart topping{.name = run.pipe->formula.name, .kind = PartKind::topping, .solids = {}};
  auto solids = topping_over(run, cavity, model.foot);
  for (auto& solid : solids.in_headspace) add_solid(topping, std::move(solid));
  for (auto& solid : solids.visible) add_solid(topping, std::move(solid));
  model.is_topping_shape_known = run.pipe->beads || run.pipe->envelope;
  if (!topping.solids.empty()) model.parts.push_back(std::move(topping));
}

/// The highest point of the model's parts above (x, y); `floor` where nothing is.
double height_at(const PieceModel& model, double x, double y, double floor) {
  double highest = floor;
  for (const auto& part : model.parts)
    for (const auto& solid : part.solids)
      for (const auto& facet : solid.triangles) {
        const auto& a = solid.vertices_mm[facet[0]];
        const auto& b = solid.vertices_mm[facet[1]];
        const auto& c = solid.vertices_mm[facet[2]];
        const double whole = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
        if (whole == 0) continue;
        const double v = ((x - a[0]) * (c[1] - a[1]) - (y - a[1]) * (c[0] - a[0])) / whole;
        const double w = ((b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0])) / whole;
        if (v < 0 || w < 0 || v + w > 1) continue;
        highest = std::max(highest, a[2] + v * (b[2] - a[2]) + w * (c[2] - a[2]));
      }
  return highest;
}

/// Several side by side stand on a circle on which they just do not touch.
double circle_for(const TriangleMesh& solid, std::int64_t count) {
  if (count == 1) return 0;
  double reach = 0;
  for (const auto& v : solid.vertices_mm) reach = std::max(reach, std::hypot(v[0], v[1]));
  return reach / std::sin(pi / static_cast<double>(count));
}

void add_on_top(PieceModel& model, const Decoration& decoration, const TriangleMesh& body,
                const Vector& middle) {
  const auto& on_top = std::get<OnTop>(decoration.where);
  const TriangleMesh solid = geometry::placed(
      body,
      {geometry::turned_about_axes(on_top.turned.x, on_top.turned.y, on_top.turned.z), {0, 0, 0}});
  const double lowest = geometry::bounding_box(solid).low_mm[2];
  const double circle = circle_for(solid, decoration.per_cast);
  PiecePart part{.name = decoration.name, .kind = PartKind::decoration, .solids = {}};
  for (std::int64_t i = 0; i < decoration.per_cast; ++i) {
    const double angle = 2 * pi * static_cast<double>(i) / static_cast<double>(decoration.per_cast);
    const double x = middle[0] + circle * std::cos(angle);
    const double y = middle[1] + circle * std::sin(angle);
    const double on = height_at(model, x, y, model.foot / millimetre);
    part.solids.push_back(moved(solid, {x, y, on - on_top.pressed_in / millimetre - lowest}));
  }
  model.parts.push_back(std::move(part));
}

void add_decorations(PieceModel& model, const Run& run, const PieceShape& shape) {
  for (std::size_t i = 0; i < run.decorations.size(); ++i) {
    const auto& decoration = run.decorations[i];
    const auto& solid = shape.bodies[i].solid;
    if (!solid || decoration.per_piece > 0) continue;  // what goes on cut bars is not on the loaf
    if (std::holds_alternative<OnTop>(decoration.where)) {
      add_on_top(model, decoration, *solid, shape.cavity.middle);
      continue;
    }
    PiecePart part{.name = decoration.name, .kind = PartKind::decoration, .solids = {}};
    part.is_buried = true;
    for (const auto& embed : shape.fits[i].embeds)
      part.solids.push_back(geometry::placed(*solid, embed.place));
    if (!part.solids.empty()) model.parts.push_back(std::move(part));
  }
}

/// Half of the widest circle about the middle that the opening at the brim holds, and half of its
/// extent along x and y.
struct Opening {
  double radius, half_x, half_y;
};
Opening opening_of(const Cavity& cavity) {
  const auto box = geometry::bounding_box(cavity.solid);
  const Vector& middle = cavity.middle;
  const double height = box.high_mm[2] - box.low_mm[2];
  // Just under the brim: at it, a lid that is not quite level leaves no section.
  const auto lines =
      geometry::plane_section(cavity.solid, geometry::Plane::level(box.high_mm[2] - 1e-6 * height));
  Opening opening{1e300, 0, 0};
  for (const auto& line : lines)
    for (std::size_t i = 0; i < line.size(); ++i) {
      const Vector a = line[i], b = line[(i + 1) % line.size()];
      const Vector centre{middle[0], middle[1], a[2]};
      opening.radius = std::min(opening.radius, geometry::distance_mm(centre, a, b));
      opening.half_x = std::max(opening.half_x, std::abs(a[0] - middle[0]));
      opening.half_y = std::max(opening.half_y, std::abs(a[1] - middle[1]));
    }
  return opening;
}

}  // namespace

std::vector<TriangleMesh> base_solids(const Run& run, const Cavity& cavity, const PourTally& pour) {
  const auto& layers = pour.layers;
  const bool is_level = std::none_of(layers.begin(), layers.end(),
                                     [](const LayerTally& layer) { return layer.tilted; });
  std::vector<TriangleMesh> solids;
  if (!is_level) {
    // What is pressed in afterwards lifts the last, level layer to the line.
    auto raised = layers;
    raised.back().volume_each += pour.displaced;
    for (auto& layer : poured_cavity(run, cavity.solid, pour.line, raised).layers)
      solids.push_back(std::move(layer.solid));
    return solids;
  }
  if (layers.empty()) return {geometry::filled_part(cavity.solid, pour.line)};
  for (const auto& layer : layers) {
    const bool is_last = &layer == &layers.back();
    solids.push_back(
        geometry::layer_between(cavity.solid, layer.from, is_last ? pour.line : layer.to));
  }
  return solids;
}

ToppingSolids topping_solids(const Run& run, const Cavity& cavity, const PourTally& pour,
                             Volume in_headspace_each) {
  return topping_over(run, cavity, foot_of_topping(run, pour, in_headspace_each));
}

PieceModel piece_model(const Run& run, const PieceShape& shape) {
  PieceModel model;
  model.pour_line = shape.pour.line;
  model.brim = run.pour.mould.curve.height();
  model.foot = foot_of_topping(run, shape.pour, shape.in_headspace_each);
  add_base(model, run, shape);
  add_topping(model, run, shape.cavity);
  add_decorations(model, run, shape);
  return model;
}

std::optional<PieceSize> size_of(const PieceModel& model) {
  if (!model.is_topping_shape_known) return std::nullopt;
  Vector low{1e300, 1e300, 1e300}, high{-1e300, -1e300, -1e300};
  for (const auto& part : model.parts)
    for (const auto& solid : part.solids) {
      const auto box = geometry::bounding_box(solid);
      for (std::size_t k = 0; k < 3; ++k) {
        low[k] = std::min(low[k], box.low_mm[k]);
        high[k] = std::max(high[k], box.high_mm[k]);
      }
    }
  const Vector size = high - low;
  return PieceSize{size[0] * millimetre, size[1] * millimetre, size[2] * millimetre};
}

namespace {

// Large facets are split so far: an area for dusting, not for fitting.
constexpr double coarse_mm = 2;

/// What each of `solids` shows above `foot_mm`, worked out once for the same solids: the same area
/// is dusted whatever the number of pieces and the price.
std::vector<Area> shown_by(const std::vector<TriangleMesh>& solids, double foot_mm,
                           MeasureMemory* memory) {
  const auto look = [&] { return geometry::exposed_surface(solids, foot_mm, coarse_mm).area; };
  if (memory == nullptr) return look();
  MemoKey key;
  key.with(foot_mm).with(solids.size());
  for (const auto& solid : solids) key.with(solid);
  return memory->exposed(key, look);
}

std::vector<Area> shown_on(const Run& run, const std::vector<TriangleMesh>& solids, double foot_mm,
                           MeasureMemory* memory) try {
  return shown_by(solids, foot_mm, memory);
} catch (const geometry::TooManyLayers&) {
  throw UserError(run.place("/dust"),
                  "goes by the surface, and the piece has too many facets over each other",
                  "simplify the mesh of the decoration, or give the dust \"per_piece\"");
}

}  // namespace

Area exposed_area(const Run& run, const Cavity& cavity, const PieceModel& model,
                  MeasureMemory* memory) {
  if (!model.is_topping_shape_known)
    throw UserError(run.place("/dust"),
                    "goes by the surface, and trials alone do not give the topping's shape",
                    "give the topping \"beads\" or an \"envelope\" too, or the dust \"per_piece\"");
  // Of what lies below the foot only its surface matters: a thin slab shows and hides as well.
  const double foot = model.foot / millimetre;
  std::vector<TriangleMesh> solids = {geometry::layer_between(
      cavity.solid, std::max(Length{}, model.foot - 1 * millimetre), model.foot)};
  for (const auto& part : model.parts)
    for (const auto& solid : part.solids)
      if (part.kind != PartKind::base && geometry::bounding_box(solid).high_mm[2] > foot + 1e-9)
        solids.push_back(solid);
  // A hair lower, so that the level surface at the foot counts, and no wall beneath it.
  constexpr double hair_mm = 1e-3;
  const auto shown = shown_on(run, solids, foot - hair_mm, memory);
  const bool shows_base = run.pipe && model.foot <= model.pour_line;  // which is not dusted then
  Area area;
  for (std::size_t i = shows_base ? 1 : 0; i < solids.size(); ++i) area += shown[i];
  return area;
}

namespace {

std::string bead_within(const Opening& opening, double half_bead) {
  const std::string length = "give a bead at most " + most_text(2 * opening.half_x * millimetre);
  const double aside = opening.half_y - half_bead;
  if (!(aside > 0)) return "take a narrower tip: its bead is wider than the mould";
  return length + " long, and at most " + most_text(aside * millimetre) + " aside";
}

}  // namespace

void require_moves_over_the_cup(const Run& run, const Cavity& cavity) {
  if (!run.pipe || !run.pipe->beads) return;
  const auto& beads = *run.pipe->beads;
  const Opening opening = opening_of(cavity);
  const double half_bead = std::sqrt(beads.bead_to_opening / pi *
                                     (geometry::area_of(beads.tip.opening) / square_millimetre));
  for (std::size_t i = 0; i < beads.moves.size(); ++i) {
    const Place where = run.place("/pipe/beads/moves/" + std::to_string(i));
    if (const auto* straight = std::get_if<geometry::StraightBead>(&beads.moves[i])) {
      if (straight->length / millimetre > 2 * opening.half_x + 1e-9 ||
          std::abs(straight->aside / millimetre) + half_bead > opening.half_y + 1e-9)
        throw UserError(where,
                        "leaves the mould, whose opening is " + trimmed(2 * opening.half_x, 1) +
                            " mm along x and " + trimmed(2 * opening.half_y, 1) + " mm across",
                        bead_within(opening, half_bead));
      continue;
    }
    const auto strayed = geometry::strays_beyond(opening.radius * millimetre, {beads.moves[i]},
                                                 beads.tip.opening, beads.bead_to_opening);
    if (strayed)
      throw UserError(where,
                      "reaches " + trimmed(strayed->reach / millimetre, 1) +
                          " mm from the middle, beyond the opening's " +
                          trimmed(opening.radius, 1) + " mm",
                      "take at least " + least_text(strayed->reach - opening.radius * millimetre) +
                          " off its radius");
  }
}

}  // namespace brimwright::planning
