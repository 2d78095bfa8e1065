#pragma once

// Moulds' bodies made of random parts, with the truth about their pockets found by brute force:
// flooding cells and corners, layer by layer. They share nothing with the code under test.

#include "geometry/surface/triangle_mesh.h"

#include <array>
#include <vector>

namespace brimwright::geometry::test {

/// A box of cells put into a body or taken out of it: from `low` up to, without, `high`.
struct Cut {
  bool adds;
  std::array<int, 3> low, high;
};

/// A body of cells, each solid or air. Round it is air.
class CellBody {
 public:
  /// All air, then the cuts in turn; then air is filled where two solid cells meet only at an edge.
  CellBody(std::array<int, 3> size, const std::vector<Cut>& cuts);

  std::array<int, 3> size() const { return size_; }
  bool solid(int x, int y, int z) const;
  /// Its surface; `x`, `y` and `z` are the places of the cells' walls, one more than cells.
  TriangleMesh mesh(const std::vector<double>& x, const std::vector<double>& y,
                    const std::vector<double>& z) const;
  TriangleMesh mesh() const;  ///< cells of one millimetre

 private:
  void fill(int x, int y, int z);
  bool mend_edges();
  std::array<int, 3> size_;
  std::vector<char> cells_;
};

/// What liquid fills when it stands `level` layers high in one hollow.
struct FloodedHollow {
  int floor = 0;  // its lowest layer
  double volume = 0;
  auto operator<=>(const FloodedHollow&) const = default;
};

/// All hollows below a level that have no way to the outside below it, sorted. `x`, `y`, `z` as for
/// the mesh.
std::vector<FloodedHollow> flooded_hollows(const CellBody& body, int level,
                                           const std::vector<double>& x,
                                           const std::vector<double>& y,
                                           const std::vector<double>& z);

/// Fills the hollow that holds the air cell `start` layer by layer up to `brim`, never a cell from
/// which no air can leave; tells the volume left empty below the brim.
double air_left(const CellBody& body, std::array<int, 3> start, int brim);

/// A body under a rolling top: heights at the corners of a square grid with a spacing of one
/// millimetre, each square halved; a bottom likewise.
struct Terrain {
  int columns = 0, rows = 0;  // corners
  std::vector<double> top, bottom;

  double top_at(int x, int y) const { return top[static_cast<std::size_t>(y * columns + x)]; }
  TriangleMesh mesh() const;
};

struct TerrainPool {
  double floor = 0, brim = 0, volume = 0;
};

/// The pools that rain would leave on the terrain, by ascending floor: each corner's water level is
/// the lowest that a way from it to the edge must climb.
std::vector<TerrainPool> rain_pools(const Terrain& terrain);

}  // namespace brimwright::geometry::test
