#include "geometry/beads/sweep.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace brimwright::geometry {
namespace {

constexpr Vector upward = {0, 0, 1};

Vector mirrored(const Vector& v, const Vector& across) {
  const double size = dot(across, across);
  return size > 0 ? v - across * (2 * dot(across, v) / size) : v;
}

/// `up` at a right angle to the tangent, of length one.
Frame frame_at(const Vector& tangent, const Vector& up) {
  const Vector level = up - tangent * dot(up, tangent);
  const Vector unit = level * (1 / length(level));
  return {.aside = cross(unit, tangent), .up = unit};
}

Vector first_up(const Vector& tangent) {
  const bool is_upright = std::abs(tangent[2]) > 1 - 1e-12;
  return is_upright ? Vector{0, 1, 0} : upward;
}

/// The frames along the path, each turned as little as possible against the one before.
std::vector<Frame> frames_along(const BeadPath& path) {
  std::vector<Frame> frames = {frame_at(path.tangents[0], first_up(path.tangents[0]))};
  for (std::size_t i = 1; i < path.points_mm.size(); ++i) {
    const Vector step = path.points_mm[i] - path.points_mm[i - 1];
    const Vector up = mirrored(frames.back().up, step);
    const Vector tangent = mirrored(path.tangents[i - 1], step);
    frames.push_back(frame_at(path.tangents[i], mirrored(up, path.tangents[i] - tangent)));
  }
  return frames;
}

/// How far the path turns from point i to the next, in radians.
double turn_after(const BeadPath& path, std::size_t i) {
  const Vector& here = path.tangents[i];
  const Vector& next = path.tangents[(i + 1) % path.tangents.size()];
  return std::atan2(length(cross(here, next)), dot(here, next));
}

/// The turn of a step at point i: of the two steps that meet there, or of the one.
double turn_at(const BeadPath& path, std::size_t i) {
  const std::size_t count = path.points_mm.size();
  const bool has_before = path.is_closed || i > 0, has_after = path.is_closed || i + 1 < count;
  const double before = has_before ? turn_after(path, (i + count - 1) % count) : 0;
  const double after = has_after ? turn_after(path, i) : 0;
  return has_before && has_after ? (before + after) / 2 : before + after;
}

double widening_for(double turn) { return turn > 1e-9 ? turn / std::sin(turn) : 1; }

/// A corner's offset from the centre line, widened towards the bend and held at its centre.
Vector bent(const Vector& offset, const Vector& bend, double widening) {
  const double curvature = length(bend);
  if (!(curvature > 0)) return offset;
  // A little short of the centre, where corners of neighbouring sections would fall together.
  constexpr double held_at = 0.99;
  const Vector inward = bend * (1 / curvature);
  const double reach = dot(offset, inward);
  return offset + inward * (std::min(reach * widening, held_at / curvature) - reach);
}

std::uint32_t number(std::size_t n) { return static_cast<std::uint32_t>(n); }

/// A ring of quadrilaterals between the corners from `first` on and those from `second` on.
void join(TriangleMesh& mesh, std::uint32_t first, std::uint32_t second, std::size_t corners) {
  for (std::size_t j = 0; j < corners; ++j) {
    const std::uint32_t a = number(j), b = number((j + 1) % corners);
    mesh.triangles.push_back({first + a, first + b, second + b});
    mesh.triangles.push_back({first + a, second + b, second + a});
  }
}

void close_to_point(TriangleMesh& mesh, std::uint32_t first, const Vector& point,
                    std::size_t corners) {
  const std::uint32_t tip = number(mesh.vertices_mm.size());
  mesh.vertices_mm.push_back(point);
  for (std::size_t j = 0; j < corners; ++j)
    mesh.triangles.push_back({first + number(j), first + number((j + 1) % corners), tip});
}

void close_flat(TriangleMesh& mesh, std::uint32_t first, const Section& section, bool forward) {
  for (auto [a, b, c] : section.filling) {
    if (!forward) std::swap(b, c);
    mesh.triangles.push_back({first + a, first + b, first + c});
  }
}

/// What the stacked frustums hold, as a share of section x length.
double frustum_share(const std::vector<Narrowing>& steps) {
  double share = 0;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const Narrowing next = i + 1 < steps.size() ? steps[i + 1] : Narrowing{.along = 1, .width = 0};
    const double a = steps[i].width, b = next.width;
    share += (next.along - steps[i].along) * (a * a + a * b + b * b) / 3;
  }
  return share;
}

}  // namespace

Section section_of(FlatOutline corners_mm) {
  auto filling = triangulated(corners_mm);
  return {.corners_mm = std::move(corners_mm), .filling = std::move(filling)};
}

TriangleMesh swept_along(const BeadPath& path, const Section& section) {
  TriangleMesh mesh;
  const std::size_t count = path.points_mm.size(), corners = section.corners_mm.size();
  const auto frames = frames_along(path);
  for (std::size_t i = 0; i < count; ++i) {
    const double widening = widening_for(turn_at(path, i));
    for (const auto& [aside, up] : section.corners_mm) {
      const Vector offset = frames[i].aside * aside + frames[i].up * up;
      mesh.vertices_mm.push_back(path.points_mm[i] + bent(offset, path.bends[i], widening));
    }
    if (i > 0) join(mesh, number((i - 1) * corners), number(i * corners), corners);
  }
  const std::uint32_t last = number((count - 1) * corners);
  if (path.is_closed) {
    join(mesh, last, 0, corners);
  } else {
    close_flat(mesh, 0, section, false);
    close_flat(mesh, last, section, true);
  }
  return mesh;
}

TriangleMesh tapered(const Section& section, const Vector& foot, const Frame& frame,
                     const Vector& axis, const Taper& taper) {
  TriangleMesh mesh;
  const std::size_t corners = section.corners_mm.size();
  const double widening = std::sqrt(taper.volume_share / frustum_share(taper.steps));
  double lowest = 0;
  for (const FlatPoint& corner : section.corners_mm) lowest = std::min(lowest, corner[1]);
  for (std::size_t i = 0; i < taper.steps.size(); ++i) {
    const auto [along, width] = taper.steps[i];
    const double scale = widening * width, sunk = taper.lying ? lowest * (1 - scale) : 0;
    for (const auto& [aside, up] : section.corners_mm)
      mesh.vertices_mm.push_back(foot + axis * along + frame.aside * (aside * scale) +
                                 frame.up * (up * scale + sunk));
    if (i > 0) join(mesh, number((i - 1) * corners), number(i * corners), corners);
  }
  close_to_point(mesh, number((taper.steps.size() - 1) * corners),
                 foot + axis + frame.up * (taper.lying ? lowest : 0), corners);
  close_flat(mesh, 0, section, false);
  return mesh;
}

}  // namespace brimwright::geometry
