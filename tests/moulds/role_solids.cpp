#include "role_solids.h"

#include "random_bodies.h"
#include "solids.h"

#include <cmath>
#include <functional>
#include <numbers>
#include <random>
#include <utility>

namespace brimwright::geometry::test {
namespace {

using std::numbers::pi;
using Outline = std::function<double(double)>;  // radius by angle

/// A body of cells of 2 mm.
TriangleMesh cells(std::array<int, 3> size, const std::vector<Cut>& cuts) {
  return scaled(CellBody(size, cuts).mesh(), 2);
}

Cut add(std::array<int, 3> low, std::array<int, 3> high) { return {true, low, high}; }
Cut cut(std::array<int, 3> low, std::array<int, 3> high) { return {false, low, high}; }

/// A block of cells with cuts in it.
TriangleMesh block(std::array<int, 3> size, std::vector<Cut> cuts) {
  cuts.insert(cuts.begin(), add({0, 0, 0}, size));
  return cells(size, cuts);
}

/// `across` x `along` cuts of one size, a first one and its steps.
std::vector<Cut> grid(const Cut& first, int across, int step_x, int along, int step_y) {
  std::vector<Cut> cuts;
  for (int i = 0; i < across; ++i) {
    for (int j = 0; j < along; ++j) {
      Cut c = first;
      c.low = {c.low[0] + i * step_x, c.low[1] + j * step_y, c.low[2]};
      c.high = {c.high[0] + i * step_x, c.high[1] + j * step_y, c.high[2]};
      cuts.push_back(c);
    }
  }
  return cuts;
}

std::vector<Cut> both(std::vector<Cut> a, const std::vector<Cut>& b) {
  a.insert(a.end(), b.begin(), b.end());
  return a;
}

/// Outlines one above the other, lidded at both ends; each radius above 0.
TriangleMesh loft(const std::vector<std::pair<double, Outline>>& levels, std::uint32_t sides) {
  TriangleMesh mesh = turned(std::vector<Turned>(levels.size(), {1, 0}), sides);
  for (std::size_t k = 0; k < levels.size(); ++k) {
    for (std::uint32_t i = 0; i < sides; ++i) {
      const double angle = 2 * pi * i / sides, radius = levels[k].second(angle);
      mesh.vertices_mm[k * sides + i] = {radius * std::cos(angle), radius * std::sin(angle),
                                         levels[k].first};
    }
  }
  mesh.vertices_mm[levels.size() * sides] = {0, 0, levels.front().first};
  mesh.vertices_mm[levels.size() * sides + 1] = {0, 0, levels.back().first};
  return mesh;
}

Outline waves(double radius, double share, int count, double turn = 0) {
  return [=](double t) { return radius * (1 + share * std::cos(count * (t - turn))); };
}

/// A loop of radii and heights, none on the axis, turned about z: a tube or a ring.
TriangleMesh ring_of(const std::vector<Turned>& loop, const Outline& shape, std::uint32_t sides) {
  TriangleMesh mesh;
  for (const auto& [radius, height] : loop) {
    for (std::uint32_t i = 0; i < sides; ++i) {
      const double angle = 2 * pi * i / sides, r = radius * shape(angle);
      mesh.vertices_mm.push_back({r * std::cos(angle), r * std::sin(angle), height});
    }
  }
  const auto rings = static_cast<std::uint32_t>(loop.size());
  const auto vertex = [&](std::uint32_t ring, std::uint32_t i) {
    return ring % rings * sides + i % sides;
  };
  for (std::uint32_t k = 0; k < rings; ++k) {
    for (std::uint32_t i = 0; i < sides; ++i) {
      mesh.triangles.push_back({vertex(k, i), vertex(k, i + 1), vertex(k + 1, i + 1)});
      mesh.triangles.push_back({vertex(k, i), vertex(k + 1, i + 1), vertex(k + 1, i)});
    }
  }
  return mesh;
}

TriangleMesh tube(double outer, double inner, double height, std::uint32_t sides = 64) {
  return ring_of(
      {{outer, 0}, {outer, height}, {inner, height}, {inner, 0}}, [](double) { return 1.0; },
      sides);
}

/// A cup's body: outer and inner wall, straight or drafted, with a floor.
TriangleMesh cup(double outer0, double outer1, double height, double inner0, double inner1,
                 double floor, std::uint32_t sides = 64) {
  return turned(
      {{0, 0}, {outer0, 0}, {outer1, height}, {inner1, height}, {inner0, floor}, {0, floor}},
      sides);
}

/// Turned about the x axis.
TriangleMesh tipped(TriangleMesh mesh, double degrees) {
  const double c = std::cos(degrees * pi / 180), s = std::sin(degrees * pi / 180);
  for (Point& p : mesh.vertices_mm) p = {p[0], c * p[1] - s * p[2], s * p[1] + c * p[2]};
  return mesh;
}

TriangleMesh upside_down(TriangleMesh mesh) { return tipped(std::move(mesh), 180); }

/// A slab of 80 x 56 mm whose top is as `height` says.
TriangleMesh terrain(const std::function<double(double, double)>& height) {
  Terrain land{.columns = 81, .rows = 57, .top = {}, .bottom = {}};
  for (int y = 0; y < land.rows; ++y)
    for (int x = 0; x < land.columns; ++x) {
      land.top.push_back(height(x - 40, y - 28));
      land.bottom.push_back(0);
    }
  return land.mesh();
}

double heart(double t) {  // a heart's outline, seen from its middle
  return 26 * (1 - 0.35 * std::exp(-8 * std::pow(std::remainder(t - pi / 2, 2 * pi), 2)));
}

std::vector<Turned> arc(double radius, double drop, int steps) {  // a bowl's inside, rim to middle
  std::vector<Turned> points;
  for (int i = 0; i <= steps; ++i) {
    const double t = pi / 2 * i / steps;
    points.push_back({i == steps ? 0 : radius * std::cos(t), -drop * std::sin(t)});
  }
  return points;
}

/// A turned piece with a bowl in its top.
TriangleMesh bowl_piece(double radius, double height, double bowl, double depth) {
  std::vector<Turned> profile = {{0, 0}, {radius - 3, 0}, {radius, 3}, {radius, height}};
  for (const auto& [r, z] : arc(bowl, depth, 12)) profile.push_back({r, height + z});
  return turned(profile, 72);
}

void add_cavities(std::vector<RoleSolid>& all) {
  const auto put = [&](const char* name, TriangleMesh mesh) {
    all.push_back({name, Truth::cavity, std::move(mesh)});
  };
  put("cup", turned({{25, 0}, {33, 30}}, 96));
  put("deep cup", turned({{15, 0}, {22, 80}}, 96));
  put("shallow dish", turned({{40, 0}, {44, 9}}, 96));
  put("half ball", [] {
    std::vector<Turned> profile;
    for (int i = 0; i <= 16; ++i)
      profile.push_back({30 * std::sin(pi / 2 * i / 16), 30 - 30 * std::cos(pi / 2 * i / 16)});
    return turned(profile, 72);
  }());
  put("ball", ball(24, 24, 48));
  put("loaf", obelisk(60, 200, 70, 210, 65));
  put("bar", box({0, 0, 0}, {80, 55, 25}));
  put("six-sided bar", turned({{30, 0}, {30, 25}}, 6));
  put("fluted cup", loft({{0, waves(18, 0.06, 12)}, {28, waves(26, 0.06, 12)}}, 96));
  put("twisted cup", [] {
    std::vector<std::pair<double, Outline>> levels;
    for (int i = 0; i <= 12; ++i) levels.emplace_back(3.0 * i, waves(22 + i, 0.06, 8, 0.05 * i));
    return loft(levels, 128);
  }());
  put("heart", loft({{0, heart}, {22, heart}}, 120));
  put("ring", torus(30, 10, 24, 64));
  put("star", loft({{0, waves(26, 0.3, 5)}, {25, waves(28, 0.3, 5)}}, 120));
  put("stepped dish", turned({{20, 0}, {20, 12}, {34, 12}, {34, 24}}, 72));
  put("narrow neck", turned({{34, 0}, {34, 18}, {16, 22}, {16, 34}}, 72));
  put("cup round a post", turned({{0, 18}, {8, 18}, {10, 0}, {30, 0}, {34, 30}}, 72));
  put("long oval", stretched(turned({{20, 0}, {22, 25}}, 96), {1.9, 1, 1}));
  put("lettered bar",
      block({40, 28, 12}, {cut({8, 8, 0}, {12, 20, 1}), cut({16, 8, 0}, {18, 20, 1}),
                           cut({24, 8, 0}, {32, 10, 1})}));
  put("three cups", together(together(turned({{25, 0}, {33, 30}}, 48),
                                      moved(turned({{25, 0}, {33, 30}}, 48), {80, 0, 0})),
                             moved(turned({{25, 0}, {33, 30}}, 48), {160, 0, 0})));
  put("cone", turned({{3, 0}, {28, 60}}, 96));
}

void add_pieces(std::vector<RoleSolid>& all) {
  const auto put = [&](const char* name, TriangleMesh mesh) {
    all.push_back({name, Truth::piece, std::move(mesh)});
  };
  put("plain bar", turned({{28, 0}, {30, 2}, {30, 23}, {28, 25}}, 4));
  put("engraved bar",
      block({40, 28, 12}, {cut({8, 8, 11}, {12, 20, 12}), cut({16, 8, 11}, {32, 10, 12})}));
  put("bar with a dish", terrain([](double x, double y) {
        const double r = x * x / 900 + y * y / 324;
        return 25 - (r < 1 ? 6 * (1 - r) : 0);
      }));
  put("shallow bowl", bowl_piece(38, 26, 30, 8));
  put("bowl", bowl_piece(38, 30, 33, 18));
  put("wide bowl", bowl_piece(45, 24, 42, 14));
  put("swirl on a cup", [] {
    std::vector<Turned> profile = {{0, 0}, {25, 0}, {31, 28}};
    for (int i = 0; i < 12; ++i) {
      profile.push_back({34 - 2.4 * i, 30.0 + 3 * i});
      profile.push_back({30 - 2.4 * i, 31.5 + 3 * i});
    }
    profile.push_back({0, 70});
    return turned(profile, 72);
  }());
  put("dome in a moat",
      turned({{0, 0}, {34, 0}, {36, 26}, {30, 26}, {27, 16}, {22, 16}, {14, 28}, {0, 33}}, 72));
  put("flower of bowls", terrain([](double x, double y) {
        double height = 22;
        for (int i = 0; i < 6; ++i) {
          const double dx = x - 17 * std::cos(pi / 3 * i), dy = y - 17 * std::sin(pi / 3 * i);
          const double r = (dx * dx + dy * dy) / 56;
          if (r < 1) height = std::min(height, 22 - 8 * (1 - r));
        }
        return height;
      }));
  put("waffle", block({38, 38, 10}, grid(cut({3, 3, 6}, {9, 9, 10}), 4, 8, 4, 8)));
  put("soap dish", block({44, 30, 9}, grid(cut({4, 4, 5}, {6, 26, 9}), 10, 4, 1, 1)));
  put("heart with a dent",
      terrain([](double x, double y) { return 24 - 7 * std::exp(-(x * x + y * y) / 120); }));
  put("ring soap", torus(32, 12, 24, 64));
  put("soap for a rope", block({40, 28, 14}, {cut({4, 12, 0}, {8, 16, 14})}));
  put("massage bar",
      terrain([](double x, double y) { return 20 + 3 * std::sin(x / 3) * std::sin(y / 3); }));
  put("rough top", terrain([](double x, double y) {
        return 60 + 4 * std::sin(x / 5 + 2 * std::sin(y / 9)) + 2 * std::sin(y / 4 + x / 11);
      }));
  put("dice", block({20, 20, 20}, both(both(grid(cut({3, 3, 18}, {6, 6, 20}), 2, 11, 2, 11),
                                            {cut({8, 8, 0}, {12, 12, 2})}),
                                       {cut({0, 8, 8}, {2, 12, 12}), cut({18, 4, 4}, {20, 8, 8}),
                                        cut({18, 12, 12}, {20, 16, 16})})));
  put("foot ring", turned({{0, 3}, {20, 3}, {22, 0}, {30, 0}, {32, 24}, {0, 26}}, 72));
  put("studded brick", block({32, 16, 12}, both({cut({0, 0, 9}, {32, 16, 12})}, [] {
                               auto studs = grid(add({3, 3, 9}, {6, 6, 12}), 4, 8, 2, 8);
                               return studs;
                             }())));
  put("honeycomb", block({40, 28, 9}, grid(cut({2, 2, 7}, {5, 5, 9}), 9, 4, 6, 4)));
  put("tea cup", bowl_piece(36, 44, 33, 40));
  put("egg tray of soap", block({40, 28, 14}, grid(cut({2, 2, 4}, {12, 12, 14}), 3, 12, 2, 12)));
}

void add_bodies(std::vector<RoleSolid>& all) {
  const auto put = [&](const char* name, TriangleMesh mesh) {
    all.push_back({name, Truth::body, std::move(mesh)});
  };
  put("thin cup", cup(26, 34, 32, 24, 32, 2));
  put("block with a cup", cup(50, 50, 40, 25, 33, 8, 48));
  put("half-ball in a block", bowl_piece(40, 36, 32, 32));
  put("four pockets", block({76, 56, 16}, grid(cut({4, 4, 3}, {36, 26, 16}), 2, 36, 2, 26)));
  put("six in a slab", block({90, 60, 15}, grid(cut({5, 5, 3}, {27, 27, 15}), 3, 29, 2, 28)));
  put("twelve thin cups", [] {
    std::vector<Cut> cuts = {add({0, 0, 14}, {74, 56, 15})};
    cuts = both(cuts, grid(add({2, 2, 0}, {18, 18, 15}), 4, 18, 3, 18));
    return cells({74, 56, 15}, both(cuts, grid(cut({3, 3, 1}, {17, 17, 15}), 4, 18, 3, 18)));
  }());
  put("skirted tray", [] {
    std::vector<Cut> cuts = {add({0, 0, 0}, {60, 60, 16}), cut({1, 1, 0}, {59, 59, 15})};
    cuts = both(cuts, grid(add({4, 4, 2}, {28, 28, 16}), 2, 28, 2, 28));
    return cells({60, 60, 16}, both(cuts, grid(cut({5, 5, 3}, {27, 27, 16}), 2, 28, 2, 28)));
  }());
  put("loaf box", block({44, 110, 36}, {cut({2, 2, 2}, {42, 108, 36})}));
  put("divided slab", block({80, 60, 22}, grid(cut({2, 2, 2}, {20, 58, 22}), 4, 19, 1, 1)));
  put("embed plate", block({60, 44, 6}, grid(cut({3, 3, 3}, {9, 9, 6}), 6, 9, 4, 10)));
  put("small pocket in a plank", block({100, 30, 10}, {cut({45, 12, 7}, {54, 18, 10})}));
  put("bar with legs",
      block({60, 30, 18}, both(grid(cut({3, 3, 8}, {27, 27, 18}), 2, 28, 1, 1),
                               {cut({6, 0, 0}, {54, 30, 5}), cut({0, 6, 0}, {60, 24, 5})})));
  put("jug with a spout",
      block({40, 40, 40}, {cut({2, 2, 2}, {38, 38, 40}), cut({18, 36, 36}, {22, 40, 40})}));
  put("cup with a handle",
      cells({40, 26, 26}, {add({0, 0, 0}, {26, 26, 26}), cut({2, 2, 2}, {24, 24, 26}),
                           add({26, 11, 4}, {36, 15, 22}), cut({26, 11, 8}, {32, 15, 18})}));
  put("tray to screw down",
      block({70, 40, 12}, both(grid(cut({8, 4, 2}, {34, 36, 12}), 2, 28, 1, 1),
                               grid(cut({2, 2, 0}, {4, 4, 12}), 2, 64, 2, 34))));
  put("unlike pockets",
      block({70, 40, 16}, {cut({4, 4, 3}, {30, 36, 16}), cut({34, 4, 9}, {66, 36, 16})}));
  put("ring pocket",
      turned({{0, 0}, {40, 0}, {42, 34}, {38, 34}, {36, 3}, {12, 3}, {10, 30}, {0, 30}}, 72));
  put("thin half balls",
      together(bowl_piece(34, 33, 31, 30), moved(bowl_piece(34, 33, 31, 30), {67, 0, 0})));
}

void add_turned(std::vector<RoleSolid>& all) {
  const auto put = [&](const char* name, TriangleMesh mesh) {
    all.push_back({name, Truth::turned, std::move(mesh)});
  };
  const TriangleMesh four = block({76, 56, 16}, grid(cut({4, 4, 3}, {36, 26, 16}), 2, 36, 2, 26));
  const std::vector<Cut> skirt = {add({0, 0, 0}, {60, 60, 16}), cut({1, 1, 0}, {59, 59, 15})};
  const TriangleMesh skirted =
      cells({60, 60, 16}, both(both(skirt, grid(add({4, 4, 2}, {28, 28, 16}), 2, 28, 2, 28)),
                               grid(cut({5, 5, 3}, {27, 27, 16}), 2, 28, 2, 28)));
  put("four pockets upside down", upside_down(four));
  put("four pockets on a side", tipped(four, 90));
  put("four pockets on another side", tipped(turned_about_z(four, pi / 2), 90));
  put("skirted tray upside down", upside_down(skirted));
  put("thin cup upside down", upside_down(cup(26, 34, 32, 24, 32, 2)));
  put("thin cup lying", tipped(cup(26, 34, 32, 24, 32, 2), 90));
  put("block with a cup upside down", upside_down(cup(50, 50, 40, 25, 33, 8, 48)));
  put("block with a cup lying askew", tipped(cup(50, 50, 40, 25, 33, 8, 48), 125));
  put("embed plate upside down",
      upside_down(block({60, 44, 6}, grid(cut({3, 3, 3}, {9, 9, 6}), 6, 9, 4, 10))));
  put("shallow plate upside down",
      upside_down(block({60, 44, 3}, grid(cut({3, 3, 2}, {9, 9, 3}), 6, 9, 4, 10))));
  put("plank with a small pocket upside down",
      upside_down(block({100, 30, 10}, {cut({45, 12, 7}, {54, 18, 10})})));
  put("ribbed below, upside down", [] {
    std::vector<Cut> cuts = {cut({3, 3, 0}, {57, 57, 6}), add({28, 3, 0}, {32, 57, 6}),
                             add({3, 28, 0}, {57, 32, 6}), cut({3, 3, 8}, {57, 57, 20})};
    return upside_down(block({60, 60, 20}, cuts));
  }());
}

void add_leaking(std::vector<RoleSolid>& all) {
  const auto put = [&](const char* name, TriangleMesh mesh) {
    all.push_back({name, Truth::leaking, std::move(mesh)});
  };
  put("round tube", tube(25, 23, 80));
  put("thick tube", tube(30, 10, 60));
  put("square tube", block({24, 24, 30}, {cut({2, 2, 0}, {22, 22, 30})}));
  put("frame", block({80, 60, 18}, {cut({3, 3, 0}, {77, 57, 18})}));
  put("round cutter", tube(40, 39, 18, 96));
  put("star cutter", ring_of({{1, 0}, {1, 16}, {0.94, 16}, {0.94, 0}}, waves(30, 0.3, 5), 120));
  put("trough without ends", block({30, 100, 26}, {cut({2, 0, 2}, {28, 100, 26})}));
  put("shallow trough without ends", block({40, 100, 5}, {cut({4, 0, 3}, {36, 100, 5})}));
  put("grooved plate", block({60, 44, 3}, grid(cut({3, 0, 2}, {6, 44, 3}), 9, 6, 1, 1)));
  put("shallow groove in a thick slab", block({40, 60, 20}, {cut({5, 0, 19}, {35, 60, 20})}));
  put("loaf with one end", block({30, 100, 26}, {cut({2, 2, 2}, {28, 100, 26})}));
  put("corner of two walls", block({40, 60, 30}, {cut({2, 0, 2}, {40, 60, 30})}));
  put("drained tray", block({76, 56, 16}, both(grid(cut({4, 4, 3}, {36, 26, 16}), 2, 36, 2, 26),
                                               grid(cut({18, 13, 0}, {20, 15, 3}), 2, 36, 2, 26))));
  put("drained shallow plate",
      block({60, 44, 3}, both(grid(cut({3, 3, 2}, {9, 9, 3}), 6, 9, 4, 10),
                              grid(cut({5, 5, 0}, {6, 6, 2}), 6, 9, 4, 10))));
  put("cup with a hole in its floor",
      ring_of(
          {{25, 0}, {33, 32}, {31, 32}, {23, 2}, {3, 2}, {3, 0}}, [](double) { return 1.0; }, 64));
  put("cup with a hole in its wall",
      block({30, 30, 30}, {cut({2, 2, 2}, {28, 28, 30}), cut({14, 28, 4}, {16, 30, 6})}));
  const auto halves = [] {
    return block({50, 50, 30}, {cut({10, 10, 6}, {40, 40, 30}), cut({24, 0, 0}, {25, 50, 30})});
  };
  put("two halves with a gap", halves());
  put("two halves with a gap, askew", turned_about_z(halves(), 0.6));
  put("one half", block({50, 25, 30}, {cut({10, 10, 6}, {40, 25, 30})}));
  put("one half of a thick ball mould", [] {
    std::vector<Cut> cuts;
    for (int z = 0; z < 20; ++z)
      for (int x = 0; x < 40; ++x) {
        const double square = 121 - std::pow(x - 19.5, 2) - std::pow(z - 10, 2);
        if (square > 0)
          cuts.push_back(cut({x, 20 - static_cast<int>(std::sqrt(square)), z}, {x + 1, 20, z + 1}));
      }
    return turned_about_z(block({40, 20, 20}, cuts), 0.7);
  }());
  put("four loose boards",
      together(
          together(box({0, 0, 0}, {100, 10, 40}), box({0, 70.5, 0}, {100, 80.5, 40})),
          together(box({0, 10.25, 0}, {10, 70.25, 40}), box({90, 10.25, 0}, {100, 70.25, 40}))));
  put("grid without a floor",
      block({62, 62, 20}, grid(cut({2, 2, 0}, {20, 20, 20}), 3, 20, 3, 20)));
  put("two halves put together", block({40, 40, 40}, {cut({8, 8, 8}, {32, 32, 32})}));
  put("a small block drained",
      block({50, 50, 20}, {cut({20, 20, 12}, {30, 30, 20}), cut({24, 24, 0}, {26, 26, 12})}));
  put("a tray with one cup drained",
      block({76, 30, 16}, {cut({4, 4, 3}, {36, 26, 16}), cut({40, 4, 3}, {72, 26, 16}),
                           cut({54, 13, 0}, {56, 15, 3})}));
}

}  // namespace

std::vector<RoleSolid> role_solids() {
  std::vector<RoleSolid> all;
  add_cavities(all);
  add_pieces(all);
  add_bodies(all);
  add_turned(all);
  add_leaking(all);
  return all;
}

std::vector<RoleSolid> varied_role_solids(std::uint32_t seed) {
  std::mt19937 random(seed);
  // Not std::uniform_real_distribution, whose numbers are each library's own.
  const auto between = [&](double low, double high) {
    return low + (high - low) * static_cast<double>(random()) / 4294967296.0;
  };
  std::vector<RoleSolid> all = role_solids();
  for (RoleSolid& solid : all) {
    const double x = between(0.6, 1.6), y = between(0.6, 1.6), z = between(0.6, 1.6);
    solid.mesh = turned_about_z(stretched(std::move(solid.mesh), {x, y, z}), between(0, pi));
  }
  return all;
}

}  // namespace brimwright::geometry::test
