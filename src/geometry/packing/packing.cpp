#include "geometry/packing/packing.h"

#include "geometry/packing/packing_lattice.h"
#include "geometry/packing/packing_model.h"
#include "geometry/packing/packing_proof.h"
#include "geometry/packing/packing_repair.h"
#include "geometry/packing/packing_search.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace brimwright::geometry {
namespace {

// Readings of a distance field: about 3 s of them on one core of a laptop.
constexpr double whole_work = 6e7;
constexpr double work_for_one = 2e6;

void tell(const Progress& progress, double share) {
  if (progress) progress(std::clamp(share, 0.0, 1.0));
}

bool holds_something(const TriangleMesh& mesh) {
  return !mesh.triangles.empty() && !mesh.vertices_mm.empty();
}

bool is_worth_a_search(const PackingTask& task) {
  return task.most > 0 && holds_something(task.hollow) && holds_something(task.body);
}

/// Bodies added one by one to what a lattice places, until none more is found.
Arrangement filled(const PackingModel& model, const PackingProof& proof, std::size_t most,
                   const Progress& progress) {
  PackingWork work{.most = whole_work};
  PackingSearch search(model, proof, work);
  Arrangement found = best_lattice(model, proof, most, work);
  tell(progress, 0.4);
  if (found.poses.empty()) found = search.one().value_or(Arrangement{});
  while (!found.poses.empty() && found.poses.size() < most) {
    auto more = search.one_more_than(found);
    if (!more) break;
    found = std::move(*more);
    tell(progress, 0.4 + 0.6 * work.done / work.most);
  }
  return found;
}

bool fits_scaled(const PackingTask& task, const PackingModel& model, double scale) {
  const PackingModel scaled = with_body_scaled(model, task.body, scale);
  if (most_by_volume(scaled) < 1) return false;
  const PackingProof proof(scaled);
  PackingWork work{.most = work_for_one};
  return PackingSearch(scaled, proof, work).one().has_value();
}

}  // namespace

Packing packed(const PackingTask& task, const Progress& progress) {
  if (!is_worth_a_search(task)) return {};
  tell(progress, 0);
  const PackingModel model(task);
  const double bound = std::floor(most_by_volume(model) * (1 + 1e-9));
  const std::size_t most = std::min(task.most, static_cast<std::size_t>(std::min(bound, 1e6)));
  tell(progress, 0.2);
  const PackingProof proof(model);
  Packing packing;
  if (most > 0) {
    const Arrangement found = filled(model, proof, most, progress);
    packing = proof.proved(found.poses).value_or(Packing{});
  }
  tell(progress, 1);
  return packing;
}

double largest_scale_that_fits(const PackingTask& task, const Progress& progress) {
  if (!holds_something(task.hollow) || !holds_something(task.body)) return 0;
  tell(progress, 0);
  const PackingModel model(task);
  constexpr double least = 0.01, most = 1000, fine_enough = 1.005;
  double fits = 0, too_large = 1;
  while (too_large < most && fits_scaled(task, model, too_large))
    fits = std::exchange(too_large, too_large * 2);
  for (double scale = 0.5; fits == 0 && scale >= least; scale /= 2) {
    if (fits_scaled(task, model, scale)) {
      fits = scale;
    } else {
      too_large = scale;
    }
  }
  for (int step = 0; fits > 0 && too_large > fits * fine_enough; ++step) {
    tell(progress, 0.2 + 0.8 * step / 9);
    const double scale = std::sqrt(fits * too_large);
    (fits_scaled(task, model, scale) ? fits : too_large) = scale;
  }
  tell(progress, 1);
  return fits;
}

}  // namespace brimwright::geometry
