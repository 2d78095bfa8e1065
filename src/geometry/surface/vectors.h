#pragma once

#include "geometry/surface/triangle_mesh.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <cstdint>

namespace brimwright::geometry {

// Points and directions in millimetres, for the arithmetic of facets.

using Vector = Point;

inline Vector operator-(const Vector& a, const Vector& b) {
  return {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
}
inline Vector operator+(const Vector& a, const Vector& b) {
  return {a[0] + b[0], a[1] + b[1], a[2] + b[2]};
}
inline Vector operator*(const Vector& a, double factor) {
  return {a[0] * factor, a[1] * factor, a[2] * factor};
}
inline double dot(const Vector& a, const Vector& b) {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}
inline Vector cross(const Vector& a, const Vector& b) {
  return {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
}
inline double length(const Vector& a) { return std::sqrt(dot(a, a)); }

/// The same in the plane.
using FlatPoint = std::array<double, 2>;

inline FlatPoint operator-(const FlatPoint& a, const FlatPoint& b) {
  return {a[0] - b[0], a[1] - b[1]};
}
inline FlatPoint operator+(const FlatPoint& a, const FlatPoint& b) {
  return {a[0] + b[0], a[1] + b[1]};
}
inline FlatPoint operator*(const FlatPoint& a, double factor) {
  return {a[0] * factor, a[1] * factor};
}
inline double dot(const FlatPoint& a, const FlatPoint& b) { return a[0] * b[0] + a[1] * b[1]; }
inline double cross(const FlatPoint& a, const FlatPoint& b) { return a[0] * b[1] - a[1] * b[0]; }
inline double length(const FlatPoint& a) { return std::hypot(a[0], a[1]); }

/// Twice the area of a triangle, above 0 where it runs anticlockwise.
inline double turn(const FlatPoint& a, const FlatPoint& b, const FlatPoint& c) {
  return cross(b - a, c - a);
}

/// Twice the area of a triangle, as a vector along its normal.
inline Vector doubled_area(const Vector& a, const Vector& b, const Vector& c) {
  return cross(b - a, c - a);
}

inline double area_mm2(const TriangleMesh& mesh, const std::array<std::uint32_t, 3>& corners) {
  const auto& v = mesh.vertices_mm;
  return length(doubled_area(v[corners[0]], v[corners[1]], v[corners[2]])) / 2;
}

inline Vector middle_of(const TriangleMesh& mesh, const std::array<std::uint32_t, 3>& corners) {
  const auto& v = mesh.vertices_mm;
  return (v[corners[0]] + v[corners[1]] + v[corners[2]]) * (1.0 / 3);
}

/// How far `p` lies from the stretch from `a` to `b`.
inline double distance_mm(const Vector& p, const Vector& a, const Vector& b) {
  const Vector along = b - a;
  const double whole = dot(along, along);
  const double share = whole > 0 ? std::clamp(dot(p - a, along) / whole, 0.0, 1.0) : 0;
  return length(p - (a + along * share));
}

}  // namespace brimwright::geometry
