#include "geometry/packing/packing_model.h"

#include "geometry/packing/packing_shape.h"
#include "geometry/surface/enclosed_volume.h"

#include <algorithm>
#include <cmath>

namespace brimwright::geometry {
namespace {

// Grid points: as many as are measured in some tenths of a second.
constexpr std::size_t wall_grid = 20000, skin_grid = 20000;

// What is asked is kept to a hair, so that what fits exactly on paper fits. And surfaces that touch
// have no gap that could be told from crossing. Gaps are good to 1e-9 of the
// coordinates; ten times that is a gap.
double least_gap_mm(const TriangleMesh& hollow) {
  const Box box = bounding_box(hollow);
  return 1e-8 * length(box.high_mm - box.low_mm);
}

Vector middle_of_box(const TriangleMesh& mesh) {
  const Box box = bounding_box(mesh);
  return (box.low_mm + box.high_mm) * 0.5;
}

TriangleMesh centred(const TriangleMesh& mesh, const Vector& centre) {
  return placed(mesh, Placement{.move_mm = centre * -1});
}

/// Of the body's box: no ball within the body is larger.
double half_thickness(const TriangleMesh& body) {
  const Box box = bounding_box(body);
  const Vector size = box.high_mm - box.low_mm;
  return *std::min_element(size.begin(), size.end()) / 2;
}

double reach_of(const TriangleMesh& body) {
  double reach = 0;
  for (const Vector& vertex : body.vertices_mm) reach = std::max(reach, length(vertex));
  return reach;
}

std::vector<Probe> probes_of(const SurfaceTree& body, const DistanceField& skin) {
  std::vector<Probe> probes = inner_balls(body, skin, PackingModel::few / 4);
  for (const Vector& point : spread_points(body.solid(), PackingModel::all - probes.size()))
    probes.push_back({point, 0});
  return probes;
}

double swollen_volume(double volume, double swelling) {
  const double ball = std::cbrt(4 * pi / 3);
  const double edge = std::cbrt(volume) + swelling * ball;
  return edge * edge * edge;
}

}  // namespace

PackingModel::PackingModel(const PackingTask& task)
    : centre_mm(middle_of_box(task.body)),
      hollow(task.hollow),
      body(centred(task.body, centre_mm)),
      hair_mm(least_gap_mm(task.hollow)),
      cover_mm(std::max(task.cover / millimetre - hair_mm, hair_mm)),
      apart_mm(std::max(task.apart / millimetre - hair_mm, hair_mm)),
      lying(task.lying),
      reach_mm(reach_of(body.solid())),
      wall(hollow,
           0.02 * length(bounding_box(task.hollow).high_mm - bounding_box(task.hollow).low_mm),
           wall_grid),
      skin(body, apart_mm + 1.1 * half_thickness(body.solid()), skin_grid),
      probes(probes_of(body, skin)) {}

double PackingModel::wall_gap_mm(const Pose& pose, std::size_t count) const {
  double gap = wall.depth_mm();
  for (std::size_t i = 0; i < std::min(count, probes.size()); ++i) {
    const Vector point = pose.at_mm + turned(probes[i].at_mm, pose.turn);
    gap = std::min(gap, -wall.at(point).distance_mm - probes[i].radius_mm);
  }
  return gap;
}

double PackingModel::body_gap_mm(const Pose& a, const Pose& b, std::size_t count) const {
  double gap = length(a.at_mm - b.at_mm);
  for (std::size_t i = 0; i < std::min(count, probes.size()); ++i) {
    const Vector of_a = a.at_mm + turned(probes[i].at_mm, a.turn) - b.at_mm;
    const Vector of_b = b.at_mm + turned(probes[i].at_mm, b.turn) - a.at_mm;
    gap = std::min({gap, skin.at_least_mm(turned_back(of_a, b.turn)) - probes[i].radius_mm,
                    skin.at_least_mm(turned_back(of_b, a.turn)) - probes[i].radius_mm});
  }
  return gap;
}

bool PackingModel::may_meet(const Pose& a, const Pose& b) const {
  return length(a.at_mm - b.at_mm) < 2 * reach_mm + apart_mm;
}

PackingModel with_body_scaled(const PackingModel& model, const TriangleMesh& body, double factor) {
  PackingModel scaled = model;
  TriangleMesh mesh = centred(body, model.centre_mm);
  for (Vector& vertex : mesh.vertices_mm) vertex = vertex * factor;
  for (Probe& probe : scaled.probes) probe = {probe.at_mm * factor, probe.radius_mm * factor};
  scaled.centre_mm = model.centre_mm * factor;
  scaled.reach_mm *= factor;
  scaled.body = SurfaceTree(mesh);
  return scaled;
}

double most_by_volume(const PackingModel& model) {
  const double hollow = enclosed_volume(model.hollow.solid()) / cubic_millimetre;
  const double body = enclosed_volume(model.body.solid()) / cubic_millimetre;
  if (!(body > 0)) return 0;
  return hollow / swollen_volume(body, std::min(model.apart_mm / 2, model.cover_mm));
}

}  // namespace brimwright::geometry
