#include "geometry/exposure/exposed_surface.h"

#include "geometry/exposure/facets_above.h"
#include "geometry/surface/vectors.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <stdexcept>
#include <utility>

namespace brimwright::geometry {
namespace {

using Facet = FacetCorners;

/// What one piece shows if it is in the open, in square millimetres, and a point just outside its
/// middle, by which that is judged.
struct Piece {
  Vector beside;
  double area, upward, from_above;
};

// Beside the surface by more than rounding and less than shows; what touches lies closer.
constexpr double beside_mm = 1e-4;

/// Facets cut until no edge is longer than wished, up to a number of pieces. Each edge is cut by
/// its own length alone, so that neighbours stay joined corner to corner. What lies below the floor
/// is left out.
class Pieces {
 public:
  Pieces(double longest_mm, double floor_mm, std::size_t most)
      : longest_squared_(longest_mm * longest_mm), floor_mm_(floor_mm), most_(most) {}

  std::size_t count() const { return pieces_.size(); }
  bool too_many() const { return count() > most_; }
  std::vector<Piece> taken() && { return std::move(pieces_); }

  void add(const Facet& f) {
    if (too_many() || std::max({f[0][2], f[1][2], f[2][2]}) <= floor_mm_ + beside_mm) return;
    std::array<bool, 3> is_long{};
    for (std::size_t i = 0; i < 3; ++i) {
      const Vector edge = f[i] - f[(i + 1) % 3];
      is_long[i] = dot(edge, edge) > longest_squared_;
    }
    const auto count = std::count(is_long.begin(), is_long.end(), true);
    if (count == 0) return keep(f);
    if (count == 3) return add_quarters(f);
    // Turned so that the edge from the first corner is to be cut, and with two, the next one too.
    std::size_t first = 0;
    while (!is_long[first] || (count == 2 && !is_long[(first + 1) % 3])) ++first;
    const Vector &a = f[first], &b = f[(first + 1) % 3], &c = f[(first + 2) % 3];
    const Vector ab = between(a, b);
    if (count == 1) {
      add({a, ab, c});
      add({ab, b, c});
      return;
    }
    const Vector bc = between(b, c);
    add({ab, b, bc});
    add({a, ab, bc});
    add({a, bc, c});
  }

 private:
  static Vector between(const Vector& a, const Vector& b) { return (a + b) * 0.5; }

  void add_quarters(const Facet& f) {
    const Vector ab = between(f[0], f[1]), bc = between(f[1], f[2]), ca = between(f[2], f[0]);
    add({f[0], ab, ca});
    add({ab, f[1], bc});
    add({ca, bc, f[2]});
    add({ab, bc, ca});
  }

  void keep(const Facet& f) {
    constexpr double level = 1e-9;  // of a normal that is horizontal but for rounding
    const Vector middle = (f[0] + f[1] + f[2]) * (1.0 / 3);
    const Vector doubled = doubled_area(f[0], f[1], f[2]);
    const double size = length(doubled);
    if (!(size > 0) || middle[2] <= floor_mm_ + beside_mm) return;
    const Vector normal = doubled * (1 / size);
    const bool faces_up = normal[2] > level;
    pieces_.push_back({.beside = middle + normal * beside_mm,
                       .area = size / 2,
                       .upward = faces_up ? size / 2 : 0,
                       .from_above = faces_up ? doubled[2] / 2 : 0});
  }

  double longest_squared_;
  double floor_mm_;
  std::size_t most_;
  std::vector<Piece> pieces_;
};

/// All parts' pieces, one part after the other, and where each part's begin.
struct CutParts {
  std::vector<Piece> pieces;
  std::vector<std::size_t> first;  // one more at the end
};

std::vector<std::vector<Facet>> facets_of(const std::vector<TriangleMesh>& parts) {
  std::vector<std::vector<Facet>> facets(parts.size());
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const auto& v = parts[i].vertices_mm;
    facets[i].reserve(parts[i].triangles.size());
    for (const auto& [a, b, c] : parts[i].triangles) facets[i].push_back({v[a], v[b], v[c]});
  }
  return facets;
}

CutParts cut(const std::vector<std::vector<Facet>>& parts, double longest_mm, double floor_mm) {
  constexpr std::size_t most_beyond = 300'000;  // some tens of MB and a part of a second
  std::size_t facets = 0;
  for (const auto& part : parts) facets += part.size();
  for (;; longest_mm *= 1.5) {
    Pieces pieces(longest_mm, floor_mm, 2 * facets + most_beyond);
    CutParts cut;
    for (const auto& part : parts) {
      cut.first.push_back(pieces.count());
      for (const Facet& facet : part) pieces.add(facet);
    }
    if (pieces.too_many()) continue;
    cut.first.push_back(pieces.count());
    cut.pieces = std::move(pieces).taken();
    return cut;
  }
}

std::vector<Above> above_each(const std::vector<Piece>& pieces,
                              const std::vector<std::vector<Facet>>& parts) {
  std::vector<Vector> points;
  points.reserve(pieces.size());
  for (const Piece& piece : pieces) points.push_back(piece.beside);
  std::vector<Facet> facets;
  for (const auto& part : parts) facets.insert(facets.end(), part.begin(), part.end());
  return facets_above(points, facets);
}

}  // namespace

ExposedSurface exposed_surface(const std::vector<TriangleMesh>& parts, double floor_mm,
                               double facet_mm) {
  if (!(facet_mm >= 0.01)) throw std::logic_error("facets would be too fine");
  const auto facets = facets_of(parts);
  // The diagonal of a square, and a little more for one that is askew.
  const CutParts all = cut(facets, 1.5 * facet_mm, floor_mm);
  const auto above = above_each(all.pieces, facets);
  ExposedSurface exposed;
  for (std::size_t part = 0; part < parts.size(); ++part) {
    double area = 0, upward = 0, from_above = 0;
    for (std::size_t i = all.first[part]; i < all.first[part + 1]; ++i) {
      if (above[i].winding > 0) continue;
      area += all.pieces[i].area;
      upward += all.pieces[i].upward;
      if (!above[i].any) from_above += all.pieces[i].from_above;
    }
    exposed.area.push_back(area * square_millimetre);
    exposed.upward.push_back(upward * square_millimetre);
    exposed.from_above.push_back(from_above * square_millimetre);
  }
  return exposed;
}

}  // namespace brimwright::geometry
