#include "geometry/pockets/pockets.h"

#include "geometry/pockets/low_places.h"
#include "geometry/pockets/pocket_bells.h"
#include "geometry/pockets/pocket_choice.h"
#include "geometry/pockets/pocket_rim.h"
#include "geometry/pockets/pocket_tree.h"
#include "geometry/pockets/pocket_volumes.h"
#include "geometry/pockets/pocket_walls.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/parallel.h"
#include "geometry/surface/surface_edges.h"
#include "geometry/surface/vectors.h"

#include <algorithm>
#include <mutex>
#include <utility>
#include <vector>

namespace brimwright::geometry {
namespace {

using Facets = std::vector<std::uint32_t>;

// Patches smaller than this share of the opening are a scan's or a print's roughness: common
// practice, no source.
constexpr double least_undercut = 1e-3;
// A rim that is usually higher than the brim by no more than this share of the depth is uneven as
// scans are, not notched; puddles on the top face reach no higher than three times that below and
// above it. Common practice, no source.
constexpr double uneven_rim = 0.02;
// Steeper than this (cosine of 25 degrees) is no top face.
constexpr double nearly_level = 0.906;

/// Whether a pocket's wall is wanted.
enum class Walls { kept, left_out };

/// Makes the survey from what was chosen.
class Surveyor {
 public:
  /// `shell_of` tells the sheets of a skin apart, by its facets; of a body it may be empty.
  Surveyor(AirSurface& surface, const AirTree& tree, std::vector<std::uint32_t> shell_of,
           Walls walls)
      : surface_(surface),
        tree_(tree),
        choice_(chosen_pockets(surface, tree)),
        shell_of_(std::move(shell_of)),
        walls_(walls) {}

  SkinWells survey() && {
    const auto pocket_of = groups_by(tree_, choice_.pockets);
    const auto facets = facets_of_groups(tree_, pocket_of, choice_.pockets.size());
    bool roofed = false;
    for (std::size_t i = 0; i < choice_.pockets.size(); ++i) roofed |= add_pocket(i, facets[i]);
    if (roofed) add_trapped_air(pocket_of);
    const bool wet = wet_both_sides(facets);
    add_basins();
    survey_.dents = choice_.dents;
    survey_.dents_volume = choice_.dents_mm3 * cubic_millimetre;
    survey_.sealed_voids = choice_.sealed_voids;
    survey_.sealed_volume = choice_.sealed_mm3 * cubic_millimetre;
    return {std::move(survey_), wet};
  }

  HeldInShort in_short() const {
    const auto pocket_of = groups_by(tree_, choice_.pockets);
    const auto facets = facets_of_groups(tree_, pocket_of, choice_.pockets.size());
    HeldInShort found{.pockets = choice_.pockets.size()};
    for (std::size_t i = 0; i < facets.size(); ++i) {
      const Basin& basin = tree_.basins[choice_.pockets[i]];
      const Volume brimful =
          curve_of(facets[i], basin, rim_of(surface_, facets[i], basin.brim_mm)).brimful();
      found.held += brimful;
      found.largest = std::max(found.largest, brimful);
    }
    return found;
  }

 private:
  /// Whether a roof in it may keep air.
  bool add_pocket(std::size_t number, const Facets& facets) {
    const Basin& basin = tree_.basins[choice_.pockets[number]];
    const PocketWall wall = wall_of(surface_, facets, basin.brim_mm);
    const PocketRim rim = rim_of(surface_, facets, basin.brim_mm);
    const LevelCurve curve = curve_of(facets, basin, rim);
    const Area opening = curve.free_surface(curve.height());
    survey_.pockets.push_back({.curve = curve,
                               .floor_mm = basin.floor_mm,
                               .brim_mm = basin.brim_mm,
                               .floor_at_mm = surface_.mesh().vertices_mm[basin.floor_vertex],
                               .spills_at_mm = surface_.mesh().vertices_mm[basin.spill_vertex],
                               .rim_highest_mm = rim.highest_mm,
                               .rim_usual_mm = rim.usual_mm,
                               .middle_mm = wall.middle_mm,
                               .opening = opening,
                               .brimful = curve.brimful(),
                               .trapped_air = Volume(),
                               .basin = std::nullopt,
                               .wall = walls_ == Walls::kept ? wall_mesh(facets) : TriangleMesh()});
    for (const LeaningPatch& patch : wall.leaning) {
      const Area area = patch.area_mm2 * square_millimetre;
      if (area >= least_undercut * opening)
        survey_.undercuts.push_back({.pocket = number, .at_mm = patch.at_mm, .area = area});
    }
    return wall.roofed_mm2 * square_millimetre * curve.height() > least_roof * curve.brimful();
  }

  LevelCurve curve_of(const Facets& facets, const Basin& basin, const PocketRim& rim) const {
    return LevelCurve::of_facets(surface_.mesh(), without_puddles(facets, basin, rim),
                                 basin.floor_mm, basin.brim_mm);
  }

  /// Of a scanned body, whose top face is uneven, its facets that lie about as low as the brim.
  Facets without_puddles(const Facets& facets, const Basin& basin, const PocketRim& rim) const {
    const double rise = rim.usual_mm - basin.brim_mm;
    if (!(rise > 0) || rise > uneven_rim * (basin.brim_mm - basin.floor_mm)) return facets;
    const TriangleMesh& mesh = surface_.mesh();
    Facets kept;
    for (const std::uint32_t facet : facets) {
      const auto& [a, b, c] = mesh.triangles[facet];
      const Vector normal =
          doubled_area(mesh.vertices_mm[a], mesh.vertices_mm[b], mesh.vertices_mm[c]);
      const double lowest = surface_.height_of(surface_.lowest_corner(facet));
      const bool is_top = normal[2] > nearly_level * length(normal);
      if (!is_top || lowest < basin.brim_mm - 3 * rise) kept.push_back(facet);
    }
    return kept;
  }

  bool wet_both_sides(const std::vector<Facets>& facets_of_pockets) const {
    enum Side : unsigned { front = 1, back = 2 };
    std::vector<unsigned> wet(shell_of_.size(), 0);  // by shell
    for (const Facets& facets : facets_of_pockets) {
      for (const std::uint32_t facet : facets) {
        const std::uint32_t other = surface_.back_of(facet);
        if (other == AirSurface::none) return false;  // a body
        wet[shell_of_[std::min(facet, other)]] |= facet < other ? front : back;
      }
    }
    return std::find(wet.begin(), wet.end(), front | back) != wet.end();
  }

  /// The facets with corners of their own, numbered as they come.
  TriangleMesh wall_mesh(const Facets& facets) {
    constexpr auto none = static_cast<std::uint32_t>(-1);
    const TriangleMesh& whole = surface_.mesh();
    number_.resize(whole.vertices_mm.size(), none);
    TriangleMesh wall;
    std::vector<std::uint32_t> used;
    for (const std::uint32_t facet : facets) {
      std::array<std::uint32_t, 3> corners{};
      for (std::size_t i = 0; i < 3; ++i) {
        const std::uint32_t corner = whole.triangles[facet][i];
        if (number_[corner] == none) {
          number_[corner] = static_cast<std::uint32_t>(used.size());
          used.push_back(corner);
          wall.vertices_mm.push_back(whole.vertices_mm[corner]);
        }
        corners[i] = number_[corner];
      }
      wall.triangles.push_back(corners);
    }
    for (const std::uint32_t corner : used) number_[corner] = none;
    return wall;
  }

  void add_trapped_air(const std::vector<std::uint32_t>& pocket_of) {
    std::vector<double> brims;
    for (const Pocket& pocket : survey_.pockets) brims.push_back(pocket.brim_mm);
    const std::vector<double> trapped = trapped_air(surface_, tree_, pocket_of, brims);
    for (std::size_t i = 0; i < trapped.size(); ++i)
      survey_.pockets[i].trapped_air = trapped[i] * cubic_millimetre;
  }

  /// One after the other: a basin's facets are those of the basins within it too.
  void add_basins() {
    for (std::size_t i = 0; i < choice_.joints.size(); ++i) {
      const PocketChoice::Joint& joint = choice_.joints[i];
      const auto facets = facets_of_groups(tree_, groups_by(tree_, {joint.basin}), 1);
      const Basin& basin = tree_.basins[joint.basin];
      const LevelCurve curve =
          LevelCurve::of_facets(surface_.mesh(), facets.front(), basin.floor_mm, basin.brim_mm);
      for (const std::size_t pocket : joint.pockets) survey_.pockets[pocket].basin = i;
      survey_.basins.push_back({.pockets = joint.pockets,
                                .curve = curve,
                                .floor_mm = basin.floor_mm,
                                .brim_mm = basin.brim_mm,
                                .brimful = curve.brimful()});
    }
  }

  AirSurface& surface_;
  const AirTree& tree_;
  const PocketChoice choice_;
  const std::vector<std::uint32_t> shell_of_;
  const Walls walls_;
  PocketSurvey survey_;
  std::vector<std::uint32_t> number_;  // scratch of wall_mesh
};

SkinWells survey_of(AirSurface surface, std::vector<std::uint32_t> shell_of, Walls walls) {
  const AirTree tree = air_tree(surface);
  return Surveyor(surface, tree, std::move(shell_of), walls).survey();
}

SkinWells wells_of(TriangleMesh skin, Walls walls) {
  if (skin.triangles.empty()) return {};
  std::vector<std::uint32_t> shell_of = surface_edges(skin).shell;
  return survey_of(AirSurface::of_skin(std::move(skin)), std::move(shell_of), walls);
}

}  // namespace

PocketSurvey pockets_of_body(const TriangleMesh& body) {
  if (body.triangles.empty()) return {};
  PocketSurvey survey = survey_of(AirSurface::of_body(body), {}, Walls::kept).wells;
  survey.solid = enclosed_volume(body);
  return survey;
}

PocketSurvey pockets_if_any(const TriangleMesh& closed) {
  if (closed.triangles.empty() || !surely_holds_nothing(closed)) return pockets_of_body(closed);
  PocketSurvey survey;
  survey.solid = enclosed_volume(closed);
  return survey;
}

std::vector<HeldInShort> held_when_turned(const TriangleMesh& body,
                                          const std::vector<Turn>& turns) {
  std::vector<HeldInShort> held(turns.size());
  if (body.triangles.empty()) return held;
  std::once_flag once;
  AirSurface surface;  // made when first asked for: most bodies hold nothing most ways up
  in_parallel(turns.size(), [&](std::size_t i) {
    if (surely_holds_nothing(body, turns[i])) return;
    std::call_once(once, [&] { surface = AirSurface::of_body(body); });
    AirSurface air = surface.turned(turns[i]);
    const AirTree tree = air_tree(air);
    held[i] = Surveyor(air, tree, {}, Walls::left_out).in_short();
    held[i].solid = enclosed_volume(air.mesh());
  });
  return held;
}

SkinWells skin_wells(const TriangleMesh& skin) { return wells_of(skin, Walls::kept); }

FilledFromAbove filled_from_above(const TriangleMesh& solid, Volume brimful) {
  if (is_surely_one_open_well(solid)) return {.trapped_air = Volume(), .undercuts = {}};
  TriangleMesh skin = solid;
  const Box box = bounding_box(solid);
  const double lid = box.high_mm[2] - 1e-9 * (box.high_mm[2] - box.low_mm[2]);
  std::erase_if(skin.triangles, [&](const auto& facet) {
    return std::all_of(facet.begin(), facet.end(),
                       [&](std::uint32_t corner) { return solid.vertices_mm[corner][2] >= lid; });
  });
  PocketSurvey wells = wells_of(std::move(skin), Walls::left_out).wells;
  Volume held, air;
  for (const Pocket& well : wells.pockets) {
    held += well.brimful;
    air += well.trapped_air;
  }
  if (abs(held - brimful) > 1e-6 * brimful) return {};
  return {.trapped_air = air, .undercuts = std::move(wells.undercuts)};
}

}  // namespace brimwright::geometry
