#include "geometry/overlap.h"

#include "geometry/child_process.h"
#include "geometry/enclosed_volume.h"
#include "geometry/exact_solid.h"
#include "geometry/mend_touching.h"
#include "geometry/packing_shape.h"
#include "geometry/self_crossing.h"
#include "geometry/surface_edges.h"
#include "geometry/weld.h"
#include "units/printing.h"
#include "units/user_error.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstring>
#include <optional>
#include <utility>
#include <vector>

namespace brimwright::geometry {
namespace {

enum class Share { none, some, all };

/// How much of `surface` lies in `solid`, which it does not meet: each shell wholly or not at all.
Share share_inside(const SurfaceTree& surface, const SurfaceTree& solid) {
  const std::vector<Vector> points = shell_points(surface.solid());
  const auto is_in = [&](const Vector& point) { return solid.contains(point); };
  if (std::all_of(points.begin(), points.end(), is_in)) return Share::all;
  return std::any_of(points.begin(), points.end(), is_in) ? Share::some : Share::none;
}

double largest_coordinate_mm(const TriangleMesh& mesh) {
  const auto [low, high] = bounding_box(mesh);
  double largest = 0;
  for (std::size_t i = 0; i < 3; ++i)
    largest = std::max({largest, std::abs(low[i]), std::abs(high[i])});
  return largest;
}

/// One way to try the boolean.
struct Attempt {
  TriangleMesh first, second;
  SelfCrossings crossings = SelfCrossings::refused;
};

/// In the child, whose failing stands for all reasons.
bool send_common(const Attempt& attempt, const Send& send) {
  const auto as_surface = [](const TriangleMesh& mesh) {  // even where its parts touch
    return exact_solid(touching_apart(welded(mesh)));
  };
  std::optional<ExactSolid> a = as_surface(attempt.first), b = as_surface(attempt.second);
  if (!a || !b) return false;
  const std::optional<double> mm3 = common_mm3(std::move(*a), std::move(*b), attempt.crossings);
  return mm3 && send(&*mm3, sizeof *mm3);
}

struct Tried {
  ChildEnd end;
  double common_mm3 = 0;  // if it finished

  bool failed() const { return end == ChildEnd::gave_up || end == ChildEnd::broke_down; }
};

Tried tried(const Attempt& attempt, const ChildLimits& limits) {
  const ChildReport report =
      run_in_child(limits, [&](const Send& send) { return send_common(attempt, send); });
  Tried result{.end = report.end};
  if (report.end == ChildEnd::finished)
    std::memcpy(&result.common_mm3, report.bytes.data(), sizeof result.common_mm3);
  return result;
}

/// Off by a billionth of the coordinates, in a direction that no mould's faces have.
TriangleMesh nudged(const TriangleMesh& solid, double size_mm) {
  constexpr Vector aside = {0.5773, 0.3217, 0.7504};
  return placed(solid, {.move_mm = aside * (1e-9 * size_mm)});
}

std::optional<std::string> self_crossing_told(const TriangleMesh& mesh, const std::string& file) {
  TriangleMesh whole = welded(mesh);
  drop_collapsed_facets(whole);
  const auto crossing = self_crossing(whole, surface_edges(whole), file);
  if (!crossing) return std::nullopt;
  const auto& [x, y, z] = crossing->first_mm;
  return "crosses itself at (" + trimmed(x, 2) + ", " + trimmed(y, 2) + ", " + trimmed(z, 2) +
         ") mm";
}

std::string reason_for(ChildEnd end) {
  if (end == ChildEnd::out_of_time) return "it could not be found in reasonable time";
  if (end == ChildEnd::out_of_memory) return "finding it took more than 2 GiB of memory";
  if (end == ChildEnd::not_confined) return "the system would not confine its finding (seccomp)";
  return "it could not be found";
}

[[noreturn]] void refuse(const std::string& file, const std::string& reason) {
  throw UserError(
      {.file = file,
       .field = "",
       .problem = "has two surfaces that cross, and what they share is not known: " + reason,
       .remedy = "move them so that one lies inside the other or apart from it, or "
                 "mend their meshes"});
}

/// As they are, in a quarter of the time; then a hair apart, as it may be only how exactly the two
/// touch that stops the boolean; then with a word of our own that neither crosses itself, as CGAL
/// refuses those too that touch themselves at a corner.
double crossing_mm3(const TriangleMesh& first, const TriangleMesh& second,
                    const std::string& file) {
  const ChildLimits limits = corefinement_limits(first.triangles.size() + second.triangles.size());
  Attempt attempt{first, second};
  Tried result = tried(attempt, {limits.memory_bytes, limits.time / 4});
  if (result.failed() || result.end == ChildEnd::out_of_time) {
    const double size_mm = std::max(largest_coordinate_mm(first), largest_coordinate_mm(second));
    attempt.second = nudged(second, size_mm);
    result = tried(attempt, limits);
  }
  if (result.failed()) {
    if (const auto told = self_crossing_told(first, file)) refuse(file, "the first " + *told);
    if (const auto told = self_crossing_told(second, file)) refuse(file, "the second " + *told);
    attempt.crossings = SelfCrossings::known_absent;
    result = tried(attempt, limits);
  }
  if (result.end != ChildEnd::finished) refuse(file, reason_for(result.end));
  return result.common_mm3;
}

}  // namespace

Standing standing_of(const SurfaceTree& first, const SurfaceTree& second) {
  const double rounding_mm =
      1e-9 * std::max(largest_coordinate_mm(first.solid()), largest_coordinate_mm(second.solid()));
  if (!is_gap_at_least(rounding_mm * millimetre, first, {}, second, {})) return Standing::crossing;
  const Share first_inside = share_inside(first, second);
  const Share second_inside = share_inside(second, first);
  if (first_inside == Share::none && second_inside == Share::none) return Standing::apart;
  if (first_inside == Share::all && second_inside == Share::none) return Standing::inside;
  if (first_inside == Share::none && second_inside == Share::all) return Standing::around;
  return Standing::crossing;  // some shells in, some out: the boolean knows
}

Volume common_volume(const SurfaceTree& first, const SurfaceTree& second, const std::string& file) {
  const Volume least = std::min(enclosed_volume(first.solid()), enclosed_volume(second.solid()));
  switch (standing_of(first, second)) {
    case Standing::inside:
      return enclosed_volume(first.solid());
    case Standing::around:
      return enclosed_volume(second.solid());
    case Standing::apart:
      return {};
    case Standing::crossing:
      break;
  }
  const double common_mm3 = crossing_mm3(first.solid(), second.solid(), file);
  return std::clamp(common_mm3 * cubic_millimetre, Volume{}, least);
}

}  // namespace brimwright::geometry
