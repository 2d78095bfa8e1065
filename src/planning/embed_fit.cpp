#include "planning/embed_fit.h"

#include "geometry/distance/surface_tree.h"
#include "geometry/sections/filled_part.h"
#include "geometry/surface/enclosed_volume.h"
#include "units/advice_text.h"
#include "units/wording.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace brimwright::planning {
namespace {

using geometry::Placement;
using geometry::SurfaceTree;
using geometry::TriangleMesh;
using geometry::Vector;
using geometry::operator+;
using geometry::operator-;
using geometry::operator*;

// What is to be below a bound, and not at it, is this far below: far less than is shown.
constexpr Length hair = 1e-6 * millimetre;

Place place_of(const Run& run, std::size_t index, const std::string& key) {
  return run.place("/decorations/" + std::to_string(index) + "/" + key);
}

Placement turned(const Turned& turn) {
  return {geometry::turned_about_axes(turn.x, turn.y, turn.z), {0, 0, 0}};
}

/// The level curve of a placed embed, holding what its mould says (a detail factor, round walls).
geometry::LevelCurve curve_of(const TriangleMesh& solid, Volume real) {
  return geometry::LevelCurve::of_solid(solid).holding(real / geometry::enclosed_volume(solid));
}

/// A circle as wide as the last move leaves the topping's top flat; nothing where it ends in a
/// point or no move says.
std::optional<Length> flat_left_by(const std::optional<Pipe>& pipe) {
  if (!pipe || !pipe->beads) return std::nullopt;
  const auto& beads = *pipe->beads;
  const Length bead = 2 * sqrt(beads.bead_to_opening / pi * geometry::area_of(beads.tip.opening));
  const auto& last = beads.moves.back();
  if (const auto* ring = std::get_if<geometry::Ring>(&last)) return 2 * ring->radius + bead;
  if (const auto* spiral = std::get_if<geometry::ConicalSpiral>(&last))
    return 2 * spiral->end_radius + bead;
  return std::nullopt;
}

// A cavity's surface in the parts that cover is told of. The open top is none of them.
struct Surroundings {
  std::optional<SurfaceTree> floor, walls;
  SurfaceTree whole;
};

TriangleMesh with_facets(const TriangleMesh& mesh,
                         std::vector<std::array<std::uint32_t, 3>> facets) {
  return {mesh.vertices_mm, std::move(facets)};
}

Surroundings surroundings_of(const TriangleMesh& cavity) {
  const double brim = geometry::bounding_box(cavity).high_mm[2];
  std::vector<std::array<std::uint32_t, 3>> floor, walls;
  for (const auto& facet : cavity.triangles) {
    const auto& v = cavity.vertices_mm;
    const bool is_lid = std::min({v[facet[0]][2], v[facet[1]][2], v[facet[2]][2]}) >= brim - 1e-9;
    if (is_lid) continue;
    const Vector area = geometry::doubled_area(v[facet[0]], v[facet[1]], v[facet[2]]);
    // Flatter than 45 degrees counts as floor.
    const bool is_floor = area[2] < -std::sqrt(0.5) * geometry::length(area);
    (is_floor ? floor : walls).push_back(facet);
  }
  Surroundings around{.floor = {}, .walls = {}, .whole = SurfaceTree(cavity)};
  if (!floor.empty()) around.floor.emplace(with_facets(cavity, std::move(floor)));
  if (!walls.empty()) around.walls.emplace(with_facets(cavity, std::move(walls)));
  return around;
}

Length gap_to(const std::optional<SurfaceTree>& part, const SurfaceTree& embed,
              const Placement& at) {
  // A ball has no wall and a trough no floor: nothing there is nothing to keep clear of.
  if (!part) return Length::from_base(std::numeric_limits<double>::infinity());
  return geometry::gap_between(embed, at, *part, {}).width;
}

// That an embed is longer than its hollow by less than this matters to no one: rounding, and a
// bar's length (see Division::bars).
constexpr Length no_matter = 0.01 * millimetre;

/// Smaller by that on each side of its middle, which is at the origin.
TriangleMesh slimmer(TriangleMesh solid) {
  const auto box = geometry::bounding_box(solid);
  for (std::size_t k = 0; k < 3; ++k) {
    const double size = box.high_mm[k] - box.low_mm[k];
    const double factor = std::max(0.5, 1 - 2 * (no_matter / millimetre) / size);
    for (auto& vertex : solid.vertices_mm) vertex[k] *= factor;
  }
  return solid;
}

/// Whether a facet stops a rod that ends at `end`, its axis along `axis`.
bool stops(const std::array<Vector, 3>& facet, const Vector& end, const Vector& axis,
           Length radius) {
  const Vector area = geometry::doubled_area(facet[0], facet[1], facet[2]);
  const double size = geometry::length(area);
  if (!(size > 0)) return false;
  const double along = std::abs(geometry::dot(area, axis)) / size;
  const double away = std::abs(geometry::dot(area, end - facet[0])) / size;
  // Not square to the rod, it meets the rod's rim first. Flatter than 45 degrees is a wall beside.
  const double reach = radius / millimetre * std::sqrt(std::max(0.0, 1 - along * along));
  return along > std::sqrt(0.5) && away <= reach + 2 * (no_matter / millimetre);
}

/// The walls beside a rod that reaches from wall to wall; nothing where either end is free.
std::optional<TriangleMesh> walls_beside(const TriangleMesh& cavity, const Rod& rod,
                                         const Placement& place) {
  const TriangleMesh line{
      {{-rod.length / millimetre / 2, 0, 0}, {rod.length / millimetre / 2, 0, 0}}, {}};
  const auto ends = geometry::placed(line, place).vertices_mm;
  const Vector axis = (ends[1] - ends[0]) * (1 / geometry::length(ends[1] - ends[0]));
  std::array<bool, 2> stopped{};
  TriangleMesh beside{cavity.vertices_mm, {}};
  for (const auto& facet : cavity.triangles) {
    const std::array<Vector, 3> corners{cavity.vertices_mm[facet[0]], cavity.vertices_mm[facet[1]],
                                        cavity.vertices_mm[facet[2]]};
    bool is_end = false;
    for (std::size_t i = 0; i < 2; ++i)
      if (stops(corners, ends[i], axis, rod.diameter / 2)) is_end = stopped[i] = true;
    if (!is_end) beside.triangles.push_back(facet);
  }
  if (!stopped[0] || !stopped[1]) return std::nullopt;
  return beside;
}

/// Where an embed whose lowest point and middle are said comes to lie in the cavity's frame.
Placement placement_of(const TriangleMesh& solid, const BuriedAt& at, const TriangleMesh& cavity) {
  Placement place = turned(at.turned);
  const auto embed = geometry::bounding_box(geometry::placed(solid, place));
  const auto hollow = geometry::bounding_box(cavity);
  const Vector middle = (hollow.low_mm + hollow.high_mm) * 0.5;
  place.move_mm = {middle[0] + at.x / millimetre, middle[1] + at.y / millimetre,
                   hollow.low_mm[2] + at.height / millimetre - embed.low_mm[2]};
  return place;
}

/// As geometry::packed, which takes seconds: a search that was made before is not made again when
/// only a price or a number of pieces is another.
geometry::Packing packed_once(const geometry::PackingTask& task, const geometry::Progress& progress,
                              MeasureMemory* memory) {
  if (memory == nullptr) return geometry::packed(task, progress);
  const auto& [hollow, body, cover, apart, lying, most] = task;
  const auto key = MemoKey()
                       .with(hollow)
                       .with(body)
                       .with(cover / millimetre)
                       .with(apart / millimetre)
                       .with(lying)
                       .with(most);
  return memory->packings(key, [&] { return geometry::packed(task, progress); });
}

/// Buried embeds of one decoration, and what is asked of them again and again.
class Burial {
 public:
  Burial(const Run& run, std::size_t index, const Cavity& cavity, const DecorationBody& body)
      : run_(run),
        index_(index),
        cavity_(cavity),
        solid_(*body.solid),
        real_(body.volume),
        tree_(solid_),
        around_(surroundings_of(cavity.solid)) {}

  std::vector<Placement> said(const std::vector<BuriedAt>& places) const;
  std::vector<Placement> found(const FindPlaces& find, const geometry::Progress& progress,
                               MeasureMemory* memory) const;
  PlacedEmbed look_at(const Placement& place, std::size_t which) const;
  void require_apart(std::vector<PlacedEmbed>& embeds) const;

 private:
  const Decoration& decoration() const { return run_.decorations[index_]; }
  const Buried& buried() const { return std::get<Buried>(decoration().where); }
  geometry::PackingTask task() const;
  [[noreturn]] void refuse_size(const Place& where, const std::string& problem) const;
  void tell_cover(PlacedEmbed& embed, const Place& where) const;

  const Run& run_;
  std::size_t index_;
  const Cavity& cavity_;
  const TriangleMesh& solid_;
  Volume real_;
  SurfaceTree tree_;
  Surroundings around_;
};

std::vector<Placement> Burial::said(const std::vector<BuriedAt>& places) const {
  const auto wanted = static_cast<std::size_t>(decoration().per_cast);
  if (places.size() != wanted)
    throw UserError(place_of(run_, index_, "buried/places"),
                    "names " + std::to_string(places.size()) + " places for " +
                        std::to_string(wanted) + " embeds",
                    "name one place for each of \"per_cast\"");
  std::vector<Placement> placements;
  for (const auto& at : places) placements.push_back(placement_of(solid_, at, cavity_.solid));
  return placements;
}

geometry::PackingTask Burial::task() const {
  return {.hollow = geometry::filled_part(cavity_.solid, cavity_.line),
          // Without cover it may touch, such as a rod that is as long as its slab.
          .body = buried().cover > Length{} ? solid_ : slimmer(solid_),
          .cover = buried().cover,
          .apart = buried().cover,
          .lying = geometry::Lying::free,
          .most = static_cast<std::size_t>(decoration().per_cast)};
}

void Burial::refuse_size(const Place& where, const std::string& problem) const {
  const double scale = geometry::largest_scale_that_fits(task());
  const auto box = geometry::bounding_box(solid_);
  const Length across = std::max({box.high_mm[0] - box.low_mm[0], box.high_mm[1] - box.low_mm[1],
                                  box.high_mm[2] - box.low_mm[2]}) *
                        millimetre;
  throw UserError(where, problem,
                  scale >= 1 ? "move or turn it: there is room for it in this cavity"
                  : scale > 0
                      ? "one of " + most_text(scale * across) + " across would fit with " +
                            in_mm(buried().cover, 3) + " cover; this one is " + in_mm(across, 3)
                      : "nothing fits with " + in_mm(buried().cover, 3) + " cover; ask for less");
}

std::vector<Placement> Burial::found(const FindPlaces& find, const geometry::Progress& progress,
                                     MeasureMemory* memory) const {
  geometry::PackingTask wanted = task();
  wanted.lying = find.lying;
  const auto packing = packed_once(wanted, progress, memory);
  const Place where = place_of(run_, index_, "buried");
  if (packing.places.empty()) refuse_size(where, decoration().name + " does not fit even once");
  if (packing.places.size() < wanted.most)
    throw UserError(where,
                    "only " + std::to_string(packing.places.size()) + " of " +
                        std::to_string(wanted.most) + " fit with " + in_mm(buried().cover) +
                        " cover, as far as the search finds",
                    "ask for fewer, smaller ones or less cover");
  return packing.places;
}

/// Gaps to floor and walls; none where it touches them. A rod from wall to wall is told of the
/// walls beside it.
void Burial::tell_cover(PlacedEmbed& embed, const Place& where) const {
  embed.floor_cover = gap_to(around_.floor, tree_, embed.place);
  embed.wall_cover = gap_to(around_.walls, tree_, embed.place);
  const TriangleMesh slim = slimmer(solid_);
  if (!(embed.wall_cover > Length{}) || !(embed.floor_cover > Length{})) {
    const SurfaceTree tree(slim);
    if (!(gap_to(around_.walls, tree, embed.place) > Length{}) ||
        !(gap_to(around_.floor, tree, embed.place) > Length{}))
      refuse_size(where, decoration().name + " sticks out of the cavity's floor or wall there");
    const auto* rod = std::get_if<Rod>(&decoration().made);
    const auto beside =
        rod != nullptr ? walls_beside(cavity_.solid, *rod, embed.place) : std::nullopt;
    if (beside) embed.wall_cover = gap_to(surroundings_of(*beside).walls, tree_, embed.place);
  }
  // Clear of floor and walls, it is in the cavity if any point of it below the brim is.
  const TriangleMesh placed = geometry::placed(slim, embed.place);
  const auto lowest =
      *std::min_element(placed.vertices_mm.begin(), placed.vertices_mm.end(),
                        [](const Vector& a, const Vector& b) { return a[2] < b[2]; });
  if (!around_.whole.contains(lowest))
    refuse_size(where, decoration().name + " sticks out of the cavity's floor or wall there");
}

PlacedEmbed Burial::look_at(const Placement& place, std::size_t which) const {
  const bool is_said = std::holds_alternative<std::vector<BuriedAt>>(buried().places);
  const Place where =
      place_of(run_, index_, is_said ? "buried/places/" + std::to_string(which) : "buried");
  const TriangleMesh placed = geometry::placed(solid_, place);
  const auto box = geometry::bounding_box(placed);
  PlacedEmbed embed;
  embed.place = place;
  embed.line_cover = cavity_.line - box.high_mm[2] * millimetre;
  tell_cover(embed, where);
  const Length bottom = box.low_mm[2] * millimetre;
  if (bottom >= cavity_.line)
    throw UserError(where, "lies above the pour line, " + in_mm(cavity_.line) + " deep",
                    "give a \"height\" of at most " + most_text(cavity_.line - hair));
  const auto curve = curve_of(placed, real_);
  const Length brim = geometry::bounding_box(cavity_.solid).high_mm[2] * millimetre;
  embed.displaced = curve.volume_below(cavity_.line - bottom);
  embed.in_headspace = curve.volume_below(brim - bottom) - embed.displaced;
  return embed;
}

void Burial::require_apart(std::vector<PlacedEmbed>& embeds) const {
  for (std::size_t i = 0; i < embeds.size(); ++i)
    for (std::size_t j = i + 1; j < embeds.size(); ++j) {
      const Length gap =
          geometry::gap_between(tree_, embeds[i].place, tree_, embeds[j].place).width;
      if (!(gap > Length{}))
        throw UserError(place_of(run_, index_, "buried/places/" + std::to_string(j)),
                        "is too close: it cuts into place " + std::to_string(i + 1),
                        "move one of the two, or turn it");
      for (PlacedEmbed* embed : {&embeds[i], &embeds[j]})
        embed->apart = std::min(embed->apart.value_or(gap), gap);
    }
}

}  // namespace

DecorationFit fit_on_top(const Run& run, std::size_t index,
                         const std::vector<DecorationBody>& bodies) {
  const Decoration& decoration = run.decorations[index];
  const OnTop& on_top = std::get<OnTop>(decoration.where);
  const TriangleMesh solid = geometry::placed(*bodies[index].solid, turned(on_top.turned));
  const auto curve = curve_of(solid, bodies[index].volume);
  if (on_top.pressed_in >= curve.height())
    throw UserError(place_of(run, index, "on_top/pressed_in"),
                    "is " + in_mm(on_top.pressed_in) + ", but " + decoration.name + " is " +
                        in_mm(curve.height()) + " tall as it lies",
                    "give at most " + most_text(curve.height() - hair) + ", or bury it");
  DecorationFit fit;
  // Set down without pressing it touches with what is flat at its very foot.
  const Length where = std::max(on_top.pressed_in, 1e-6 * curve.height());
  fit.contact = 2 * sqrt(curve.free_surface(where) / pi);
  fit.peak_flat = on_top.peak_flat ? on_top.peak_flat : flat_left_by(run.pipe);
  fit.stands_proud = curve.height() - on_top.pressed_in;
  fit.sunk = curve.volume_below(on_top.pressed_in);
  return fit;
}

DecorationFit fit_buried(const Run& run, std::size_t index, const Cavity& cavity,
                         const std::vector<DecorationBody>& bodies,
                         const geometry::Progress& progress, MeasureMemory* memory) {
  const auto& buried = std::get<Buried>(run.decorations[index].where);
  const Burial burial(run, index, cavity, bodies[index]);
  const auto* said = std::get_if<std::vector<BuriedAt>>(&buried.places);
  const auto places = said != nullptr
                          ? burial.said(*said)
                          : burial.found(std::get<FindPlaces>(buried.places), progress, memory);
  DecorationFit fit;
  for (std::size_t i = 0; i < places.size(); ++i)
    fit.embeds.push_back(burial.look_at(places[i], i));
  burial.require_apart(fit.embeds);
  for (const auto& embed : fit.embeds) {
    fit.displaced += embed.displaced;
    fit.in_headspace += embed.in_headspace;
  }
  return fit;
}

void require_apart(const Run& run, const std::vector<DecorationBody>& bodies,
                   const std::vector<DecorationFit>& fits) {
  std::vector<std::size_t> buried;
  for (std::size_t i = 0; i < fits.size(); ++i)
    if (!fits[i].embeds.empty()) buried.push_back(i);
  if (buried.size() < 2) return;
  std::vector<SurfaceTree> trees;
  for (const std::size_t i : buried) trees.emplace_back(*bodies[i].solid);
  for (std::size_t first = 0; first < buried.size(); ++first)
    for (std::size_t second = first + 1; second < buried.size(); ++second) {
      const std::size_t i = buried[first], j = buried[second];
      for (const auto& a : fits[i].embeds)
        for (const auto& b : fits[j].embeds)
          if (!(geometry::gap_between(trees[first], a.place, trees[second], b.place).width >
                Length{}))
            throw UserError(place_of(run, j, "buried"),
                            "one of " + run.decorations[j].name + " cuts into one of " +
                                run.decorations[i].name,
                            "move one of the two, or turn it");
    }
}

std::vector<Submerged> submerged(const std::vector<DecorationBody>& bodies,
                                 const std::vector<DecorationFit>& fits) {
  std::vector<Submerged> all;
  for (std::size_t i = 0; i < fits.size(); ++i) {
    if (fits[i].embeds.empty()) continue;
    for (const auto& embed : fits[i].embeds) {
      const TriangleMesh placed = geometry::placed(*bodies[i].solid, embed.place);
      all.push_back({curve_of(placed, bodies[i].volume),
                     geometry::bounding_box(placed).low_mm[2] * millimetre});
    }
  }
  return all;
}

}  // namespace brimwright::planning
