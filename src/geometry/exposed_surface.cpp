#include "geometry/exposed_surface.h"

#include "geometry/facet_columns.h"
#include "geometry/vectors.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <stdexcept>
#include <utility>

namespace brimwright::geometry {
namespace {

using Facet = FacetColumns::Facet;

/// Facets cut until no edge is longer than wished, up to a number of pieces. Each edge is cut by
/// its own length alone, so that neighbours stay joined corner to corner.
class Pieces {
 public:
  Pieces(double longest_mm, std::size_t most) : longest_mm_(longest_mm), most_(most) {}

  std::size_t count() const { return pieces_.size(); }
  bool too_many() const { return count() > most_; }
  std::vector<Facet> taken() && { return std::move(pieces_); }

  void add(const Facet& f) {
    if (too_many()) return;
    std::array<bool, 3> is_long{};
    for (std::size_t i = 0; i < 3; ++i) is_long[i] = length(f[i] - f[(i + 1) % 3]) > longest_mm_;
    const auto count = std::count(is_long.begin(), is_long.end(), true);
    if (count == 0) return pieces_.push_back(f);
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

  double longest_mm_;
  std::size_t most_;
  std::vector<Facet> pieces_;
};

/// All parts' pieces, one part after the other, and where each part's begin.
struct CutParts {
  std::vector<Facet> pieces;
  std::vector<std::size_t> first;  // one more at the end
};

CutParts cut(const std::vector<TriangleMesh>& parts, double longest_mm) {
  constexpr std::size_t most_beyond = 300'000;  // some 0.1 GB and a second
  std::size_t facets = 0;
  for (const TriangleMesh& part : parts) facets += part.triangles.size();
  for (;; longest_mm *= 1.5) {
    Pieces pieces(longest_mm, 2 * facets + most_beyond);
    CutParts cut;
    for (const TriangleMesh& part : parts) {
      cut.first.push_back(pieces.count());
      for (const auto& [a, b, c] : part.triangles)
        pieces.add({part.vertices_mm[a], part.vertices_mm[b], part.vertices_mm[c]});
    }
    if (pieces.too_many()) continue;
    cut.first.push_back(pieces.count());
    cut.pieces = std::move(pieces).taken();
    return cut;
  }
}

/// What the air sees of one piece, in square millimetres.
struct Seen {
  double area = 0, upward = 0, from_above = 0;
};

Seen seen(const Facet& piece, const FacetColumns& columns, double floor_mm) {
  // Beside the surface by more than rounding and less than shows; what touches lies closer.
  constexpr double beside_mm = 1e-4;
  constexpr double level = 1e-9;  // of a normal that is horizontal but for rounding
  const Vector middle = (piece[0] + piece[1] + piece[2]) * (1.0 / 3);
  const Vector doubled = doubled_area(piece[0], piece[1], piece[2]);
  const double size = length(doubled);
  if (!(size > 0) || middle[2] <= floor_mm + beside_mm) return {};
  const Vector normal = doubled * (1 / size);
  const auto above = columns.above(middle + normal * beside_mm);
  if (above.winding > 0) return {};
  const bool faces_up = normal[2] > level;
  return {.area = size / 2,
          .upward = faces_up ? size / 2 : 0,
          .from_above = faces_up && !above.any ? doubled[2] / 2 : 0};
}

}  // namespace

ExposedSurface exposed_surface(const std::vector<TriangleMesh>& parts, double floor_mm,
                               double facet_mm) {
  if (!(facet_mm >= 0.01)) throw std::logic_error("facets would be too fine");
  // The diagonal of a square, and a little more for one that is askew.
  const CutParts all = cut(parts, 1.5 * facet_mm);
  const FacetColumns columns(all.pieces);
  ExposedSurface exposed;
  for (std::size_t part = 0; part < parts.size(); ++part) {
    Seen sum;
    for (std::size_t i = all.first[part]; i < all.first[part + 1]; ++i) {
      const Seen here = seen(all.pieces[i], columns, floor_mm);
      sum.area += here.area;
      sum.upward += here.upward;
      sum.from_above += here.from_above;
    }
    exposed.area.push_back(sum.area * square_millimetre);
    exposed.upward.push_back(sum.upward * square_millimetre);
    exposed.from_above.push_back(sum.from_above * square_millimetre);
  }
  return exposed;
}

}  // namespace brimwright::geometry
