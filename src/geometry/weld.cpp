#include "geometry/weld.h"

#include <algorithm>
#include <bit>
#include <cstdint>
#include <limits>
#include <vector>

namespace brimwright::geometry {
namespace {

using Point = std::array<double, 3>;
constexpr std::uint32_t none = std::numeric_limits<std::uint32_t>::max();

std::uint64_t hash_of(const Point& p) {
  std::uint64_t hash = 0;
  for (const double coordinate : p) {
    hash ^= std::bit_cast<std::uint64_t>(coordinate);
    hash *=
        0x9e3779b97f4a7c15;  // 2^64 / golden ratio: multiplicative hashing (Knuth, TAOCP 3, 6.4)
    hash ^= hash >> 32;
  }
  return hash;
}

/// A table of vertices by place: an open hash table, which never holds more than half its slots.
class VertexTable {
 public:
  explicit VertexTable(std::size_t most)
      : slots_(std::bit_ceil(2 * most + 2), none), mask_(slots_.size() - 1) {}

  /// The number of `p` in `vertices`, where it is added if it is new.
  std::uint32_t number_of(const Point& p, std::vector<Point>& vertices) {
    std::size_t slot = hash_of(p) & mask_;
    while (slots_[slot] != none && vertices[slots_[slot]] != p) slot = (slot + 1) & mask_;
    if (slots_[slot] == none) {
      slots_[slot] = static_cast<std::uint32_t>(vertices.size());
      vertices.push_back(p);
    }
    return slots_[slot];
  }

 private:
  std::vector<std::uint32_t> slots_;
  std::size_t mask_;
};

}  // namespace

TriangleMesh welded(const TriangleMesh& mesh) {
  TriangleMesh joined;
  joined.triangles = mesh.triangles;
  joined.vertices_mm.reserve(mesh.triangles.size() / 2 + 2);  // what a closed surface has (Euler)
  VertexTable table(mesh.vertices_mm.size());
  std::vector<std::uint32_t> number(mesh.vertices_mm.size(), none);
  for (auto& corners : joined.triangles) {
    for (std::uint32_t& corner : corners) {
      std::uint32_t& known = number[corner];
      if (known == none) {
        Point p = mesh.vertices_mm[corner];
        for (double& coordinate : p) coordinate += 0.0;  // makes 0 of -0
        known = table.number_of(p, joined.vertices_mm);
      }
      corner = known;
    }
  }
  return joined;
}

void drop_unused_vertices(TriangleMesh& mesh) {
  std::vector<std::uint32_t> number(mesh.vertices_mm.size(), none);
  std::vector<Point> used;
  for (auto& corners : mesh.triangles) {
    for (std::uint32_t& corner : corners) {
      if (number[corner] == none) {
        number[corner] = static_cast<std::uint32_t>(used.size());
        used.push_back(mesh.vertices_mm[corner]);
      }
      corner = number[corner];
    }
  }
  mesh.vertices_mm = std::move(used);
}

std::size_t drop_collapsed_facets(TriangleMesh& mesh) {
  return std::erase_if(mesh.triangles, [](const auto& corners) {
    return corners[0] == corners[1] || corners[1] == corners[2] || corners[2] == corners[0];
  });
}

}  // namespace brimwright::geometry
