#include "geometry/pockets/pocket_choice.h"
#include "geometry/pockets/pocket_tree.h"
#include "geometry/pockets/pocket_volumes.h"
#include "geometry/pockets/pockets.h"
#include "geometry/surface/weld.h"
#include "random_bodies.h"
#include "solids.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <tuple>
#include <utility>
#include <vector>

namespace brimwright::geometry {
namespace {

using test::CellBody;
using test::Cut;
using test::Terrain;
using Places = std::vector<double>;

double between(double low, double high) {
  constexpr int steps = 1'000'000;
  return low + (high - low) * *rc::gen::inRange(0, steps + 1) / steps;
}

/// Equal but for rounding: sums of some hundred terms as large as the whole.
bool alike(double a, double b, double whole) { return std::abs(a - b) <= 1e-10 * whole; }

/// A box to put in or take out, mostly thin in some direction: a wall, a lid, a post, a hole.
Cut any_cut(const std::array<int, 3>& size) {
  Cut cut{.adds = *rc::gen::arbitrary<bool>(), .low = {}, .high = {}};
  for (std::size_t i = 0; i < 3; ++i) {
    const int longest = *rc::gen::element(1, 1, 2, 9);
    cut.low[i] = *rc::gen::inRange(0, size[i]);
    cut.high[i] = std::min(size[i], cut.low[i] + longest);
  }
  return cut;
}

/// A box three wide that hangs in the air; with its middle taken out from below it is a bell.
void add_hanging(std::vector<Cut>& cuts, const std::array<int, 3>& size, bool as_bell) {
  const int x = *rc::gen::inRange(1, size[0] - 2), y = *rc::gen::inRange(1, size[1] - 2);
  const int low = *rc::gen::inRange(1, size[2]);
  const int high = *rc::gen::inRange(low + 1, size[2] + 1);
  cuts.push_back({true, {x, y, low}, {x + 3, y + 3, high}});
  if (as_bell) cuts.push_back({false, {x + 1, y + 1, low}, {x + 2, y + 2, high - 1}});
}

/// A beam from wall to wall, with a peg under it.
void add_bridge(std::vector<Cut>& cuts, const std::array<int, 3>& size) {
  const int x = *rc::gen::inRange(1, size[0]), z = *rc::gen::inRange(2, size[2]);
  const int y = *rc::gen::inRange(1, size[1]), low = *rc::gen::inRange(1, z + 1);
  cuts.push_back({true, {x, 0, z}, {x + 1, size[1], z + 1}});
  cuts.push_back({true, {x, y, low}, {x + 1, y + 1, z}});
}

/// A tub with things in it: wells, walls, bells, bridges, voids, lumps, holes.
CellBody any_cells() {
  const std::array<int, 3> size = {*rc::gen::inRange(5, 11), *rc::gen::inRange(5, 11),
                                   *rc::gen::inRange(4, 10)};
  const int thick = *rc::gen::inRange(1, 3);
  std::vector<Cut> cuts = {{true, {0, 0, 0}, size},
                           {false, {1, 1, thick}, {size[0] - 1, size[1] - 1, size[2]}}};
  for (int n = *rc::gen::inRange(0, 10); n-- > 0;) {
    const int kind = *rc::gen::inRange(0, 6);
    if (kind < 3) cuts.push_back(any_cut(size));
    if (kind == 3) add_bridge(cuts, size);
    if (kind > 3) add_hanging(cuts, size, kind == 5);
  }
  return CellBody(size, cuts);
}

Places any_places(int cells, double least = 0.1) {
  Places places = {between(-50, 50)};
  while (cells-- > 0) places.push_back(places.back() + between(least, 10));
  return places;
}

Places millimetres(int cells) {
  Places places;
  for (int i = 0; i <= cells; ++i) places.push_back(i);
  return places;
}

/// The basins that liquid at a level stands in, each on its own.
std::vector<std::uint32_t> basins_at(const AirTree& tree, double level) {
  Places start(tree.basins.size());
  for (std::size_t b = 1; b < start.size(); ++b) start[b] = tree.basins[b].floor_mm;
  for (const Basin& basin : tree.basins) {
    if (basin.parent != AirTree::never) start[basin.parent] = -HUGE_VAL;
  }
  for (const Basin& basin : tree.basins) {
    if (basin.parent == AirTree::never) continue;
    start[basin.parent] = std::max(start[basin.parent], basin.brim_mm);
  }
  std::vector<std::uint32_t> found;
  for (std::uint32_t b = 1; b < tree.basins.size(); ++b) {
    const bool ended = tree.basins[b].parent != AirTree::never && tree.basins[b].brim_mm < level;
    if (start[b] < level && !ended) found.push_back(b);
  }
  return found;
}

/// Floor and volume of each, by ascending floor.
std::vector<std::pair<double, double>> hollows_at(const TriangleMesh& body, double level) {
  const AirSurface surface = AirSurface::of_body(body);
  const AirTree tree = air_tree(surface);
  const std::vector<std::uint32_t> basins = basins_at(tree, level);
  const Places levels(basins.size(), level);
  const Places volumes = volumes_below(surface, tree, groups_by(tree, basins), levels);
  std::vector<std::pair<double, double>> found;
  for (std::size_t i = 0; i < basins.size(); ++i) {
    found.emplace_back(tree.basins[basins[i]].floor_mm, volumes[i]);
  }
  std::sort(found.begin(), found.end());
  return found;
}

void require_as_flooded(const CellBody& body, const std::array<Places, 3>& at,
                        const TriangleMesh& mesh) {
  for (int level = 1; level <= body.size()[2]; ++level) {
    const double height = at[2][static_cast<std::size_t>(level)];
    const auto found = hollows_at(mesh, height);
    const auto truth = test::flooded_hollows(body, level, at[0], at[1], at[2]);
    RC_ASSERT(found.size() == truth.size());
    std::vector<std::pair<double, double>> expected;
    for (const test::FloodedHollow& hollow : truth) {
      expected.emplace_back(at[2][static_cast<std::size_t>(hollow.floor)], hollow.volume);
    }
    std::sort(expected.begin(), expected.end());
    for (std::size_t i = 0; i < found.size(); ++i) {
      RC_ASSERT(found[i].first == expected[i].first);
      RC_ASSERT(alike(found[i].second, expected[i].second, 1e3 * expected[i].second));
    }
  }
}

TEST_CASE("hollows hold what flooding the body cell by cell finds", "[geometry][pockets][law]") {
  rc::prop("at every level: walls, bridges, bells, lumps hanging in the air, sealed voids", [] {
    const CellBody body = any_cells();
    const std::array<Places, 3> at = {any_places(body.size()[0]), any_places(body.size()[1]),
                                      any_places(body.size()[2])};
    const TriangleMesh mesh = body.mesh(at[0], at[1], at[2]);
    require_as_flooded(body, at, mesh);
  });
  rc::prop("with every wall leaning, which moves no air up or down", [] {
    const CellBody body = any_cells();
    const std::array<Places, 3> at = {millimetres(body.size()[0]), millimetres(body.size()[1]),
                                      millimetres(body.size()[2])};
    TriangleMesh mesh = test::turned_about_z(body.mesh(), between(0, 7));
    const double lean_x = between(-2, 2), lean_y = between(-2, 2);
    for (auto& [x, y, z] : mesh.vertices_mm) {
      x += lean_x * z;
      y += lean_y * z;
    }
    for (int level = 1; level <= body.size()[2]; ++level) {
      const auto found = hollows_at(mesh, level);
      const auto truth = test::flooded_hollows(body, level, at[0], at[1], at[2]);
      RC_ASSERT(found.size() == truth.size());
      double sum = 0, expected = 0;
      for (std::size_t i = 0; i < found.size(); ++i) {
        RC_ASSERT(found[i].first == truth[i].floor);
        sum += found[i].second;
        expected += truth[i].volume;
      }
      RC_ASSERT(alike(sum, expected, 1e3));
    }
  });
}

/// The air cell on a pocket's floor.
std::array<int, 3> cell_on_floor(const CellBody& body, const Pocket& pocket) {
  const auto [x, y, z] = pocket.floor_at_mm;
  const int i = static_cast<int>(x), j = static_cast<int>(y), k = static_cast<int>(z);
  for (const int dx : {0, -1}) {
    for (const int dy : {0, -1}) {
      if (body.solid(i + dx, j + dy, k - 1) && !body.solid(i + dx, j + dy, k)) {
        return {i + dx, j + dy, k};
      }
    }
  }
  throw std::logic_error("no floor there");
}

void require_air_as_poured(const CellBody& body) {
  for (const Pocket& pocket : pockets_of_body(body.mesh()).pockets) {
    const double left =
        test::air_left(body, cell_on_floor(body, pocket), static_cast<int>(pocket.brim_mm));
    RC_ASSERT(alike(pocket.trapped_air / cubic_millimetre, left, 1e3));
  }
}

/// A tub with a notch in its rim and a pipe in its thick wall: up from the pool, across, and down
/// to the outside. Where the pipe crosses below the notch it drains the pool; above, it lets air
/// out; a plug may close it.
CellBody any_piped_tub() {
  constexpr int length = 12, width = 5, height = 10, wall = 5;
  const auto inner = *rc::gen::inRange(1, height), outer = *rc::gen::inRange(1, height);
  const auto across = *rc::gen::inRange(std::max(inner, outer), height);
  const auto notch = *rc::gen::inRange(1, height + 1), roof = *rc::gen::inRange(2, height + 1);
  std::vector<Cut> cuts = {{true, {0, 0, 0}, {length, width, height}},
                           {false, {wall, 1, 1}, {length - 1, width - 1, height}},
                           {false, {length - 1, 2, notch}, {length, 3, height}},
                           {true, {wall, 1, roof}, {wall + 2, width - 1, height}},
                           {false, {wall - 1, 2, inner}, {wall, 3, inner + 1}},
                           {false, {3, 2, inner}, {4, 3, across + 1}},
                           {false, {1, 2, across}, {4, 3, across + 1}},
                           {false, {1, 2, outer}, {2, 3, across + 1}},
                           {false, {0, 2, outer}, {1, 3, outer + 1}}};
  if (*rc::gen::inRange(0, 4) == 0) cuts.push_back({true, {2, 2, across}, {3, 3, across + 1}});
  return CellBody({length, width, height}, cuts);
}

TEST_CASE("air stays where no bubble could leave", "[geometry][pockets][law]") {
  rc::prop("pouring layer by layer leaves as much of each pocket empty",
           [] { require_air_as_poured(any_cells()); });
  rc::prop("and so it does where a pipe leads out over the brim",
           [] { require_air_as_poured(any_piped_tub()); });
}

/// Heights on a few steps, so that many are equal, or on any height.
Terrain any_terrain() {
  Terrain t{.columns = *rc::gen::inRange(3, 12),
            .rows = *rc::gen::inRange(3, 12),
            .top = {},
            .bottom = {}};
  const bool stepped = *rc::gen::arbitrary<bool>();
  for (int i = t.columns * t.rows; i-- > 0;) {
    t.top.push_back(stepped ? *rc::gen::inRange(10, 15) : between(10, 15));
    t.bottom.push_back(stepped ? *rc::gen::inRange(0, 3) : between(0, 9));
  }
  return t;
}

/// Floor, brim and volume of each hollow that spills to the outside, by ascending floor.
std::vector<std::array<double, 3>> pools_of(const AirSurface& surface) {
  const AirTree tree = air_tree(surface);
  std::vector<std::uint32_t> wholes;
  Places brims;
  for (std::uint32_t b = 1; b < tree.basins.size(); ++b) {
    if (tree.basins[b].parent != AirTree::outside) continue;
    wholes.push_back(b);
    brims.push_back(tree.basins[b].brim_mm);
  }
  const Places volumes = volumes_below(surface, tree, groups_by(tree, wholes), brims);
  std::vector<std::array<double, 3>> found;
  for (std::size_t i = 0; i < wholes.size(); ++i) {
    found.push_back({tree.basins[wholes[i]].floor_mm, brims[i], volumes[i]});
  }
  return found;
}

void require_rain_pools(const Terrain& terrain, std::vector<std::array<double, 3>> found) {
  std::vector<std::array<double, 3>> expected;
  for (const test::TerrainPool& pool : test::rain_pools(terrain)) {
    expected.push_back({pool.floor, pool.brim, pool.volume});
  }
  RC_ASSERT(found.size() == expected.size());
  const auto order = [](const auto& a, const auto& b) {
    return std::tuple(a[0], a[1], std::round(a[2] * 1e6)) <
           std::tuple(b[0], b[1], std::round(b[2] * 1e6));
  };
  std::sort(found.begin(), found.end(), order);
  std::sort(expected.begin(), expected.end(), order);
  for (std::size_t i = 0; i < found.size(); ++i) {
    RC_ASSERT(found[i][0] == expected[i][0]);
    RC_ASSERT(found[i][1] == expected[i][1]);
    RC_ASSERT(alike(found[i][2], expected[i][2], 1e3));
  }
}

TEST_CASE("rain fills the same pools as running water down the slopes tells",
          "[geometry][pockets][law]") {
  rc::prop("on a body", [] {
    const Terrain terrain = any_terrain();
    require_rain_pools(terrain, pools_of(AirSurface::of_body(terrain.mesh())));
  });
  rc::prop("on a skin, whichever side faces out", [] {
    const Terrain terrain = any_terrain();
    TriangleMesh skin = terrain.mesh();
    const auto below = static_cast<std::uint32_t>(terrain.bottom.size());
    std::erase_if(skin.triangles, [below](const auto& corners) {
      return std::any_of(corners.begin(), corners.end(),
                         [below](std::uint32_t corner) { return corner < below; });
    });
    drop_unused_vertices(skin);
    if (*rc::gen::arbitrary<bool>()) skin = test::inside_out(skin);
    require_rain_pools(terrain, pools_of(AirSurface::of_skin(skin)));
  });
}

TriangleMesh any_body() {
  return *rc::gen::arbitrary<bool>() ? any_cells().mesh() : any_terrain().mesh();
}

/// Equal pockets may change places: compares them by floor, brim and volume.
void require_same_pockets(const PocketSurvey& a, const PocketSurvey& b) {
  RC_ASSERT(a.pockets.size() == b.pockets.size());
  RC_ASSERT(a.basins.size() == b.basins.size());
  RC_ASSERT(a.sealed_voids == b.sealed_voids);
  RC_ASSERT(a.dents == b.dents);
  const double whole = a.solid / cubic_millimetre;
  RC_ASSERT(alike(b.solid / cubic_millimetre, whole, whole));
  RC_ASSERT(alike(a.sealed_volume / cubic_millimetre, b.sealed_volume / cubic_millimetre, whole));
  const auto sorted = [](const PocketSurvey& survey) {
    std::vector<std::array<double, 5>> rows;
    for (const Pocket& p : survey.pockets) {
      rows.push_back({p.floor_mm, p.brim_mm, std::round(p.brimful / cubic_millimetre * 1e6) / 1e6,
                      std::round(p.trapped_air / cubic_millimetre * 1e6) / 1e6,
                      p.opening / square_millimetre});
    }
    std::sort(rows.begin(), rows.end());
    return rows;
  };
  const auto left = sorted(a), right = sorted(b);
  for (std::size_t i = 0; i < left.size(); ++i) {
    RC_ASSERT(left[i][0] == right[i][0]);
    RC_ASSERT(left[i][1] == right[i][1]);
    for (std::size_t k = 2; k < 5; ++k) RC_ASSERT(std::abs(left[i][k] - right[i][k]) <= 1e-5);
  }
}

TEST_CASE("turning, shifting or refining a body changes no pocket", "[geometry][pockets][law]") {
  rc::prop("about the upright axis", [] {
    const TriangleMesh body = any_body();
    require_same_pockets(pockets_of_body(body),
                         pockets_of_body(test::turned_about_z(body, between(0, 7))));
  });
  rc::prop("into four times as many facets", [] {
    const TriangleMesh body = any_body();
    TriangleMesh fine = test::refined(body);
    require_same_pockets(pockets_of_body(body), pockets_of_body(welded(fine)));
  });
}

TEST_CASE("a pocket's curve runs from nothing at the floor to brimful at the brim",
          "[geometry][pockets][law]") {
  rc::prop("and never falls", [] {
    for (const Pocket& pocket : pockets_of_body(any_body()).pockets) {
      RC_ASSERT(alike(pocket.curve.height() / millimetre, pocket.brim_mm - pocket.floor_mm, 1));
      const double brimful = pocket.brimful / cubic_millimetre;
      RC_ASSERT(brimful > 0);
      RC_ASSERT(pocket.trapped_air <= pocket.brimful);
      double last = 0;
      for (int i = 0; i <= 20; ++i) {
        const double volume =
            pocket.curve.volume_below(i / 20.0 * pocket.curve.height()) / cubic_millimetre;
        RC_ASSERT(volume >= last - 1e-12 * brimful);
        last = volume;
      }
      RC_ASSERT(last == brimful);
    }
  });
}

TEST_CASE("pockets that stand side by side hold together what each holds",
          "[geometry][pockets][law]") {
  rc::prop("at the height of the lowest wall, for a tray of wells within one rim", [] {
    const int wells = *rc::gen::inRange(2, 6), deep = *rc::gen::inRange(2, 8);
    const int rim = *rc::gen::inRange(1, deep + 1);
    std::vector<Cut> cuts = {{true, {0, 0, 0}, {3 * wells + 3, 5, deep + rim + 1}},
                             {false, {1, 1, deep + 1}, {3 * wells + 2, 4, deep + rim + 1}}};
    for (int i = 0; i < wells; ++i) cuts.push_back({false, {3 * i + 2, 1, 1}, {3 * i + 4, 4, 99}});
    const CellBody tray({3 * wells + 3, 5, deep + rim + 1}, cuts);
    // The narrowest well holds a tenth of the widest, so that none is but a dent beside it.
    const auto at =
        std::array{any_places(3 * wells + 3, 1), any_places(5, 1), millimetres(deep + rim + 1)};
    const PocketSurvey survey = pockets_of_body(tray.mesh(at[0], at[1], at[2]));
    RC_ASSERT(survey.pockets.size() == static_cast<std::size_t>(wells));
    RC_ASSERT(survey.basins.size() == 1U);
    const JointBasin& joint = survey.basins.front();
    RC_ASSERT(joint.pockets.size() == static_cast<std::size_t>(wells));
    Volume sum;
    for (const Pocket& pocket : survey.pockets) {
      RC_ASSERT(pocket.basin == std::size_t{0});
      RC_ASSERT(pocket.brim_mm == deep + 1);
      sum += pocket.brimful;
    }
    const double common = joint.curve.volume_below(deep * millimetre) / cubic_millimetre;
    RC_ASSERT(alike(common, sum / cubic_millimetre, common));
    const double above =
        (at[0][static_cast<std::size_t>(3 * wells + 2)] - at[0][1]) * (at[1][4] - at[1][1]) * rim;
    RC_ASSERT(alike(joint.brimful / cubic_millimetre, common + above, common + above));
  });
}

}  // namespace
}  // namespace brimwright::geometry
