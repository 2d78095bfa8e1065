// Writes the sample meshes of this folder: `make_meshes FOLDER`. Two are cavities, that is solids
// of what is filled, one is a mould's body with pockets; all in millimetres and upright, with
// volumes that a formula gives (see README.md).

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstdint>
#include <fstream>
#include <iostream>
#include <numbers>
#include <string>
#include <vector>

namespace {

using Point = std::array<double, 3>;
using Facet = std::array<Point, 3>;
using Ring = std::vector<Point>;

constexpr double pi = std::numbers::pi;

static_assert(std::endian::native == std::endian::little, "binary STL is written as it lies");

/// The facets between two rings of equally many points, the lower first, facing outward.
void add_wall(std::vector<Facet>& facets, const Ring& lower, const Ring& upper) {
  for (std::size_t i = 0; i < lower.size(); ++i) {
    const std::size_t next = (i + 1) % lower.size();
    facets.push_back({lower[i], lower[next], upper[next]});
    facets.push_back({lower[i], upper[next], upper[i]});
  }
}

void add_floor(std::vector<Facet>& facets, const Point& middle, const Ring& ring) {
  for (std::size_t i = 0; i < ring.size(); ++i)
    facets.push_back({middle, ring[(i + 1) % ring.size()], ring[i]});
}

void add_lid(std::vector<Facet>& facets, const Ring& ring, const Point& middle) {
  for (std::size_t i = 0; i < ring.size(); ++i)
    facets.push_back({middle, ring[i], ring[(i + 1) % ring.size()]});
}

/// r = R(z) (1 + 0.07 cos 8(t - twist z)), R from 22 mm at the floor to 33 mm at the brim, 36 mm
/// up, the flutes turning by 40 degrees on the way.
std::vector<Facet> twisted_cup() {
  constexpr int around = 128, levels = 24, flutes = 8;
  constexpr double floor = 22, brim = 33, height = 36, wave = 0.07, twist = 40 * pi / 180;
  std::vector<Ring> rings;
  for (int k = 0; k <= levels; ++k) {
    const double up = static_cast<double>(k) / levels;
    Ring ring;
    for (int i = 0; i < around; ++i) {
      const double angle = 2 * pi * i / around;
      const double r =
          (floor + (brim - floor) * up) * (1 + wave * std::cos(flutes * (angle - twist * up)));
      ring.push_back({r * std::cos(angle), r * std::sin(angle), height * up});
    }
    rings.push_back(ring);
  }
  std::vector<Facet> facets;
  add_floor(facets, {0, 0, 0}, rings.front());
  for (std::size_t k = 1; k < rings.size(); ++k) add_wall(facets, rings[k - 1], rings[k]);
  add_lid(facets, rings.back(), {0, 0, height});
  return facets;
}

/// A flat, pebble-shaped dish with shell ribs: its brim is 34 mm (1 + 0.18 cos(t) + 0.10 cos(2t +
/// 0.6)
/// + 0.05 cos(3t + 2.1)) from the middle; at share s of the way out the floor has risen by
/// 18 mm s^2 (1 + 0.25 (1 - s^2) cos 15t).
std::vector<Facet> shell_pebble() {
  constexpr int around = 120, steps = 24, ribs = 15;
  constexpr double size = 34, height = 18, rib = 0.25;
  std::vector<Ring> rings;
  for (int k = 1; k <= steps; ++k) {
    const double s = static_cast<double>(k) / steps;
    Ring ring;
    for (int i = 0; i < around; ++i) {
      const double t = 2 * pi * i / around;
      const double out =
          size * s *
          (1 + 0.18 * std::cos(t) + 0.10 * std::cos(2 * t + 0.6) + 0.05 * std::cos(3 * t + 2.1));
      const double rise = height * s * s * (1 + rib * (1 - s * s) * std::cos(ribs * t));
      ring.push_back({out * std::cos(t), out * std::sin(t), rise});
    }
    rings.push_back(ring);
  }
  std::vector<Facet> facets;
  add_floor(facets, {0, 0, 0}, rings.front());
  for (std::size_t k = 1; k < rings.size(); ++k) add_wall(facets, rings[k - 1], rings[k]);
  add_lid(facets, rings.back(), {0, 0, height});
  return facets;
}

Ring moved(Ring ring, const Point& by) {
  for (Point& point : ring)
    for (std::size_t i = 0; i < 3; ++i) point[i] += by[i];
  return ring;
}

/// A slab of 3 x 2 cells of 60 x 60 mm, 30 mm high, with a pocket in the middle of each: a 48-gon
/// of radius 20 mm at its floor, 5 mm up, and 25 mm at its brim, the slab's top.
std::vector<Facet> six_pocket_tray() {
  constexpr int around = 48, columns = 3, rows = 2;
  constexpr double cell = 60, top = 30, floor_up = 5, floor_radius = 20, brim_radius = 25;
  Ring square, brim, floor;  // of one cell, point for point at the same angles
  for (int i = 0; i < around; ++i) {
    const double angle = 2 * pi * i / around;
    const double x = std::cos(angle), y = std::sin(angle);
    const double out = cell / 2 / std::max(std::abs(x), std::abs(y));
    // Rounded, so that points shared by neighbours are the same to the last bit.
    square.push_back({std::round(out * x * 1e3) / 1e3, std::round(out * y * 1e3) / 1e3, 0});
    brim.push_back({brim_radius * x, brim_radius * y, 0});
    floor.push_back({floor_radius * x, floor_radius * y, 0});
  }
  std::vector<Facet> facets;
  for (int column = 0; column < columns; ++column)
    for (int row = 0; row < rows; ++row) {
      const Point middle = {cell * (column - 1), cell * (row - 0.5), 0};
      const auto at = [&](const Ring& ring, double z) {
        return moved(ring, {middle[0], middle[1], z});
      };
      add_floor(facets, middle, at(square, 0));
      add_wall(facets, at(square, top), at(brim, top));      // the slab's top
      add_wall(facets, at(brim, top), at(floor, floor_up));  // the pocket's wall
      add_lid(facets, at(floor, floor_up), {middle[0], middle[1], floor_up});
      for (int i = 0; i < around; ++i) {
        const Point& a = square[static_cast<std::size_t>(i)];
        const Point& b = square[static_cast<std::size_t>((i + 1) % around)];
        const auto on_side = [&](std::size_t axis, double side) {
          return a[axis] == side && b[axis] == side;
        };
        const bool is_outside = (on_side(0, cell / 2) && column == columns - 1) ||
                                (on_side(0, -cell / 2) && column == 0) ||
                                (on_side(1, cell / 2) && row == rows - 1) ||
                                (on_side(1, -cell / 2) && row == 0);
        if (!is_outside) continue;
        const Point low_a = {middle[0] + a[0], middle[1] + a[1], 0};
        const Point low_b = {middle[0] + b[0], middle[1] + b[1], 0};
        const Point high_a = {low_a[0], low_a[1], top}, high_b = {low_b[0], low_b[1], top};
        facets.push_back({low_a, low_b, high_b});
        facets.push_back({low_a, high_b, high_a});
      }
    }
  return facets;
}

template <class Number>
void put(std::ostream& out, Number number) {
  const auto bytes = std::bit_cast<std::array<char, sizeof(Number)>>(number);
  out.write(bytes.data(), bytes.size());
}

std::array<float, 3> rounded(const Point& p) {
  // Adding zero turns -0 into 0, so that a point written twice has the same bytes.
  return {static_cast<float>(p[0]) + 0.0F, static_cast<float>(p[1]) + 0.0F,
          static_cast<float>(p[2]) + 0.0F};
}

/// Binary STL: 80 bytes of heading, a count, then 50 bytes a facet (normal, three points, two
/// spare).
bool write_stl(const std::string& path, const std::string& what, const std::vector<Facet>& facets) {
  std::ofstream out(path, std::ios::binary);
  std::string heading = what;
  heading.resize(80, ' ');
  out << heading;
  put(out, static_cast<std::uint32_t>(facets.size()));
  for (const Facet& facet : facets) {
    for (int i = 0; i < 3; ++i) put(out, 0.0F);  // normal left to the reader, as the format allows
    for (const Point& point : facet)
      for (const float coordinate : rounded(point)) put(out, coordinate);
    put(out, std::uint16_t{0});
  }
  return static_cast<bool>(out.flush());
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 2) {
    std::cerr << "usage: make_meshes FOLDER\n";
    return 1;
  }
  const std::string folder = argv[1];
  const bool written =
      write_stl(folder + "/twisted_cup.stl", "twisted cup, cavity, mm, +z up", twisted_cup()) &&
      write_stl(folder + "/shell_pebble.stl", "shell pebble, cavity, mm, +z up", shell_pebble()) &&
      write_stl(folder + "/six_pocket_tray.stl", "tray of six pockets, body, mm, +z up",
                six_pocket_tray());
  if (!written) std::cerr << folder << ": cannot be written\n";
  return written ? 0 : 1;
}
