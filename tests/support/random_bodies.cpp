#include "random_bodies.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace brimwright::geometry::test {
namespace {

using Cell = std::array<int, 3>;

constexpr std::array<Cell, 6> steps = {
    {{1, 0, 0}, {-1, 0, 0}, {0, 1, 0}, {0, -1, 0}, {0, 0, 1}, {0, 0, -1}}};

Cell moved(const Cell& c, const Cell& by) { return {c[0] + by[0], c[1] + by[1], c[2] + by[2]}; }

/// A mark for each cell of a body and of the air one cell round it.
class Marks {
 public:
  explicit Marks(const CellBody& body) : size_(body.size()) {
    marks_.assign(static_cast<std::size_t>((size_[0] + 2) * (size_[1] + 2) * (size_[2] + 2)), 0);
  }
  bool holds(const Cell& c) const {
    for (std::size_t i = 0; i < 3; ++i) {
      if (c[i] < -1 || c[i] > size_[i]) return false;
    }
    return true;
  }
  int& operator[](const Cell& c) {
    return marks_[static_cast<std::size_t>(
        ((c[2] + 1) * (size_[1] + 2) + c[1] + 1) * (size_[0] + 2) + c[0] + 1)];
  }
  template <class See>
  void for_each(See see) const {
    for (int z = -1; z <= size_[2]; ++z) {
      for (int y = -1; y <= size_[1]; ++y) {
        for (int x = -1; x <= size_[0]; ++x) see(Cell{x, y, z});
      }
    }
  }

 private:
  Cell size_;
  std::vector<int> marks_;
};

/// Marks all cells that `may` be entered, from `start` on, by their faces.
template <class May>
void spread(Marks& marks, const Cell& start, int mark, May may) {
  std::vector<Cell> front = {start};
  marks[start] = mark;
  while (!front.empty()) {
    const Cell cell = front.back();
    front.pop_back();
    for (const Cell& step : steps) {
      const Cell next = moved(cell, step);
      if (!marks.holds(next) || marks[next] != 0 || !may(next)) continue;
      marks[next] = mark;
      front.push_back(next);
    }
  }
}

bool is_air(const CellBody& body, const Cell& c) { return !body.solid(c[0], c[1], c[2]); }

/// Corners of a body's surface, numbered as they come.
class Corners {
 public:
  Corners(const std::vector<double>& x, const std::vector<double>& y, const std::vector<double>& z)
      : places_{&x, &y, &z} {}
  std::uint32_t number(const Cell& corner, TriangleMesh& mesh) {
    const auto [at, fresh] =
        numbers_.try_emplace(corner, static_cast<std::uint32_t>(mesh.vertices_mm.size()));
    if (fresh) {
      std::array<double, 3> p{};
      for (std::size_t i = 0; i < 3; ++i) {
        p[i] = (*places_[i])[static_cast<std::size_t>(corner[i])];
      }
      mesh.vertices_mm.push_back(p);
    }
    return at->second;
  }

 private:
  std::array<const std::vector<double>*, 3> places_;
  std::map<Cell, std::uint32_t> numbers_;
};

/// The face of a cell across `axis`, on its high or low side, as two facets facing out.
void add_face(TriangleMesh& mesh, Corners& corners, const Cell& cell, std::size_t axis, bool high) {
  Cell u{}, v{}, base = cell;
  u[(axis + 1) % 3] = 1;
  v[(axis + 2) % 3] = 1;
  if (high) base[axis] += 1;
  std::array<std::uint32_t, 4> ring = {
      corners.number(base, mesh), corners.number(moved(base, u), mesh),
      corners.number(moved(moved(base, u), v), mesh), corners.number(moved(base, v), mesh)};
  if (!high) std::swap(ring[1], ring[3]);
  if ((cell[0] + cell[1] + cell[2]) % 2 == 0)
    std::rotate(ring.begin(), ring.begin() + 1, ring.end());
  mesh.triangles.push_back({ring[0], ring[1], ring[2]});
  mesh.triangles.push_back({ring[0], ring[2], ring[3]});
}

std::vector<double> millimetres(int cells) {
  std::vector<double> places;
  for (int i = 0; i <= cells; ++i) places.push_back(i);
  return places;
}

double width(const std::vector<double>& places, int i) {
  return places[static_cast<std::size_t>(i) + 1] - places[static_cast<std::size_t>(i)];
}

}  // namespace

CellBody::CellBody(std::array<int, 3> size, const std::vector<Cut>& cuts)
    : size_(size), cells_(static_cast<std::size_t>(size[0] * size[1] * size[2]), 0) {
  for (const Cut& cut : cuts) {
    for (int z = cut.low[2]; z < std::min(cut.high[2], size[2]); ++z) {
      for (int y = cut.low[1]; y < std::min(cut.high[1], size[1]); ++y) {
        for (int x = cut.low[0]; x < std::min(cut.high[0], size[0]); ++x) {
          cells_[static_cast<std::size_t>((z * size_[1] + y) * size_[0] + x)] = cut.adds;
        }
      }
    }
  }
  while (mend_edges()) {
  }
}

bool CellBody::solid(int x, int y, int z) const {
  if (x < 0 || y < 0 || z < 0 || x >= size_[0] || y >= size_[1] || z >= size_[2]) return false;
  return cells_[static_cast<std::size_t>((z * size_[1] + y) * size_[0] + x)] != 0;
}

void CellBody::fill(int x, int y, int z) {
  cells_[static_cast<std::size_t>((z * size_[1] + y) * size_[0] + x)] = 1;
}

/// Fills one of the two air cells round each edge at which two solid cells meet across.
bool CellBody::mend_edges() {
  bool mended = false;
  for (int z = 0; z < size_[2]; ++z) {
    for (int y = 0; y < size_[1]; ++y) {
      for (int x = 0; x < size_[0]; ++x) {
        if (!solid(x, y, z)) continue;
        for (std::size_t i = 0; i < 3; ++i) {
          for (const int way : {-1, 1}) {
            Cell u{}, v{};
            u[(i + 1) % 3] = 1;
            v[(i + 2) % 3] = way;
            const Cell a = moved({x, y, z}, u), b = moved({x, y, z}, v), across = moved(a, v);
            if (!solid(across[0], across[1], across[2]) || solid(a[0], a[1], a[2]) ||
                solid(b[0], b[1], b[2])) {
              continue;
            }
            fill(a[0], a[1], a[2]);
            mended = true;
          }
        }
      }
    }
  }
  return mended;
}

TriangleMesh CellBody::mesh(const std::vector<double>& x, const std::vector<double>& y,
                            const std::vector<double>& z) const {
  TriangleMesh mesh;
  Corners corners(x, y, z);
  for (int k = 0; k < size_[2]; ++k) {
    for (int j = 0; j < size_[1]; ++j) {
      for (int i = 0; i < size_[0]; ++i) {
        if (!solid(i, j, k)) continue;
        for (std::size_t step = 0; step < steps.size(); ++step) {
          const Cell next = moved({i, j, k}, steps[step]);
          if (is_air(*this, next)) add_face(mesh, corners, {i, j, k}, step / 2, step % 2 == 0);
        }
      }
    }
  }
  return mesh;
}

TriangleMesh CellBody::mesh() const {
  return mesh(millimetres(size_[0]), millimetres(size_[1]), millimetres(size_[2]));
}

std::vector<FloodedHollow> flooded_hollows(const CellBody& body, int level,
                                           const std::vector<double>& x,
                                           const std::vector<double>& y,
                                           const std::vector<double>& z) {
  Marks marks(body);
  const auto below = [&](const Cell& c) { return c[2] < level && is_air(body, c); };
  spread(marks, {-1, -1, -1}, 1, below);
  int hollows = 0;
  marks.for_each([&](const Cell& c) {
    if (marks[c] == 0 && below(c)) spread(marks, c, 2 + hollows++, below);
  });
  std::vector<FloodedHollow> found(static_cast<std::size_t>(hollows),
                                   FloodedHollow{body.size()[2], 0});
  marks.for_each([&](const Cell& c) {
    if (marks[c] < 2) return;
    FloodedHollow& hollow = found[static_cast<std::size_t>(marks[c] - 2)];
    hollow.floor = std::min(hollow.floor, c[2]);
    hollow.volume += width(x, c[0]) * width(y, c[1]) * width(z, c[2]);
  });
  std::sort(found.begin(), found.end());
  return found;
}

double air_left(const CellBody& body, std::array<int, 3> start, int brim) {
  Marks hollow(body), wet(body);
  spread(hollow, start, 1, [&](const Cell& c) { return c[2] < brim && is_air(body, c); });
  double left = 0;
  for (int layer = 0; layer < brim; ++layer) {
    Marks open(body);
    spread(open, {-1, -1, -1}, 1, [&](const Cell& c) { return is_air(body, c) && wet[c] == 0; });
    hollow.for_each([&](const Cell& c) {
      if (c[2] != layer || hollow[c] == 0) return;
      if (open[c] != 0) {
        wet[c] = 1;
      } else {
        left += 1;
      }
    });
  }
  return left;
}

TriangleMesh Terrain::mesh() const {
  TriangleMesh mesh;
  for (const auto* heights : {&bottom, &top}) {
    for (int y = 0; y < rows; ++y) {
      for (int x = 0; x < columns; ++x) {
        mesh.vertices_mm.push_back(
            {double(x), double(y), (*heights)[static_cast<std::size_t>(y * columns + x)]});
      }
    }
  }
  const auto corner = [&](bool up, int x, int y) {
    return static_cast<std::uint32_t>(((up ? rows : 0) + y) * columns + x);
  };
  const auto add = [&](std::uint32_t a, std::uint32_t b, std::uint32_t c, std::uint32_t d) {
    mesh.triangles.push_back({a, b, c});
    mesh.triangles.push_back({a, c, d});
  };
  for (int y = 0; y + 1 < rows; ++y) {
    for (int x = 0; x + 1 < columns; ++x) {
      add(corner(true, x, y), corner(true, x + 1, y), corner(true, x + 1, y + 1),
          corner(true, x, y + 1));
      add(corner(false, x, y), corner(false, x, y + 1), corner(false, x + 1, y + 1),
          corner(false, x + 1, y));
    }
  }
  const auto side = [&](int x0, int y0, int x1, int y1) {
    add(corner(false, x0, y0), corner(false, x1, y1), corner(true, x1, y1), corner(true, x0, y0));
  };
  for (int x = 0; x + 1 < columns; ++x) {
    side(x, 0, x + 1, 0);
    side(x + 1, rows - 1, x, rows - 1);
  }
  for (int y = 0; y + 1 < rows; ++y) {
    side(columns - 1, y, columns - 1, y + 1);
    side(0, y + 1, 0, y);
  }
  return mesh;
}

namespace {

using Index = std::pair<int, int>;

/// The corners joined to one by an edge: its squares' sides and their rising diagonals.
std::vector<Index> joined(const Terrain& t, int x, int y) {
  std::vector<Index> corners;
  for (const auto& [dx, dy] : {Index{1, 0}, {-1, 0}, {0, 1}, {0, -1}, {1, 1}, {-1, -1}}) {
    const int i = x + dx, j = y + dy;
    if (i >= 0 && j >= 0 && i < t.columns && j < t.rows) corners.emplace_back(i, j);
  }
  return corners;
}

/// For each corner the level at which its water runs off, found by relaxing until nothing changes.
std::map<Index, double> water_levels(const Terrain& t) {
  std::map<Index, double> level;
  for (int y = 0; y < t.rows; ++y) {
    for (int x = 0; x < t.columns; ++x) {
      const bool edge = x == 0 || y == 0 || x + 1 == t.columns || y + 1 == t.rows;
      level[{x, y}] = edge ? t.top_at(x, y) : HUGE_VAL;
    }
  }
  for (bool changed = true; changed;) {
    changed = false;
    for (auto& [corner, here] : level) {
      for (const Index& next : joined(t, corner.first, corner.second)) {
        const double over = std::max(level[next], t.top_at(corner.first, corner.second));
        if (over < here) {
          here = over;
          changed = true;
        }
      }
    }
  }
  return level;
}

/// Water over a triangle below a level: the part of it that is lower, cut out as a polygon.
double water_over(const std::array<std::array<double, 3>, 3>& triangle, double level) {
  std::vector<std::array<double, 3>> wet;
  for (std::size_t i = 0; i < 3; ++i) {
    const auto &a = triangle[i], &b = triangle[(i + 1) % 3];
    if (a[2] <= level) wet.push_back(a);
    if ((a[2] < level) == (b[2] < level) || a[2] == level || b[2] == level) continue;
    const double t = (level - a[2]) / (b[2] - a[2]);
    wet.push_back({a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1]), level});
  }
  double volume = 0;
  for (std::size_t i = 2; i < wet.size(); ++i) {
    const auto &a = wet[0], &b = wet[i - 1], &c = wet[i];
    const double area = ((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) / 2;
    volume += area * (level - (a[2] + b[2] + c[2]) / 3);
  }
  return volume;
}

}  // namespace

std::vector<TerrainPool> rain_pools(const Terrain& t) {
  const std::map<Index, double> level = water_levels(t);
  std::map<Index, std::size_t> pool_of;
  std::vector<TerrainPool> pools;
  const auto is_wet = [&](const Index& c) { return t.top_at(c.first, c.second) < level.at(c); };
  for (const auto& [start, brim] : level) {
    if (!is_wet(start) || pool_of.contains(start)) continue;
    std::vector<Index> front = {start};
    pool_of[start] = pools.size();
    pools.push_back({HUGE_VAL, brim, 0});
    while (!front.empty()) {
      const Index c = front.back();
      front.pop_back();
      pools.back().floor = std::min(pools.back().floor, t.top_at(c.first, c.second));
      for (const Index& next : joined(t, c.first, c.second)) {
        if (is_wet(next) && pool_of.emplace(next, pools.size() - 1).second) front.push_back(next);
      }
    }
  }
  for (int y = 0; y + 1 < t.rows; ++y) {
    for (int x = 0; x + 1 < t.columns; ++x) {
      for (const auto& half : {std::array<Index, 3>{{{x, y}, {x + 1, y}, {x + 1, y + 1}}},
                               std::array<Index, 3>{{{x, y}, {x + 1, y + 1}, {x, y + 1}}}}) {
        const Index lowest = *std::min_element(half.begin(), half.end(), [&](auto& a, auto& b) {
          return t.top_at(a.first, a.second) < t.top_at(b.first, b.second);
        });
        if (!pool_of.contains(lowest)) continue;
        std::array<std::array<double, 3>, 3> corners{};
        for (std::size_t i = 0; i < 3; ++i) {
          corners[i] = {double(half[i].first), double(half[i].second),
                        t.top_at(half[i].first, half[i].second)};
        }
        TerrainPool& pool = pools[pool_of[lowest]];
        pool.volume += water_over(corners, pool.brim);
      }
    }
  }
  std::sort(pools.begin(), pools.end(),
            [](const TerrainPool& a, const TerrainPool& b) { return a.floor < b.floor; });
  return pools;
}

}  // namespace brimwright::geometry::test
