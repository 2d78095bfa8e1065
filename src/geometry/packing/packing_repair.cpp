#include "geometry/packing/packing_repair.h"

#include "geometry/packing/packing_contacts.h"
#include "geometry/packing/packing_energy.h"

#include <algorithm>
#include <utility>

namespace brimwright::geometry {
namespace {

constexpr double point_cost = 1000;  // of a measured distance and its slope, in readings

}  // namespace

double exact_cost(const PackingModel& model) {
  return 5000 + static_cast<double>(model.body.solid().triangles.size());
}

Relaxed relaxed_by_model(const PackingModel& model, Arrangement arrangement, std::size_t points,
                         PackingWork& work) {
  constexpr std::size_t rounds = 100;
  PackingEnergy energy(model, points);
  Relaxed result = relaxed(
      [&](const Arrangement& now, std::vector<double>& slope) { return energy.at(now, slope); },
      std::move(arrangement), model.reach_mm, rounds);
  work.done += static_cast<double>(energy.readings());
  return result;
}

std::optional<Arrangement> repaired(const PackingModel& model, const PackingProof& proof,
                                    Arrangement arrangement, PackingWork& work) {
  ContactSurvey survey(model, proof);
  // First with room to spare, to come clear of what lies between the points; then with less and
  // less, in case there is no room.
  double spare = 1e-2 * model.skin.depth_mm();
  double last = model.skin.depth_mm();
  for (int round = 0; round < 8; ++round, spare /= 4) {
    const std::size_t points = survey.points(), surfaces = survey.surfaces();
    survey.measure(arrangement);
    work.done += point_cost * static_cast<double>(survey.points() - points) +
                 exact_cost(model) * static_cast<double>(survey.surfaces() - surfaces);
    if (survey.is_met()) break;
    const ContactEnergy energy(model, survey.contacts(), spare);
    Relaxed next = relaxed(
        [&](const Arrangement& now, std::vector<double>& slope) { return energy.at(now, slope); },
        std::move(arrangement), model.reach_mm, 60);
    // Where there is room it comes within a round or two.
    if (next.worst_mm > 3 * spare && next.worst_mm > last / 2) return {};
    last = next.worst_mm;
    arrangement = std::move(next.arrangement);
  }
  if (survey.is_met() && proof.is_kept_by(arrangement.poses)) return arrangement;
  return {};
}

std::optional<Arrangement> settled(const PackingModel& model, const PackingProof& proof,
                                   Arrangement start, PackingWork& work) {
  Relaxed rough = relaxed_by_model(model, std::move(start), PackingModel::few, work);
  const double unsure = 0.3 * std::max(model.wall.step_mm(), model.skin.step_mm());
  if (rough.worst_mm > unsure + 0.05 * model.skin.depth_mm()) return {};
  Relaxed fine = relaxed_by_model(model, std::move(rough.arrangement), PackingModel::all, work);
  if (fine.worst_mm > unsure) return {};
  return repaired(model, proof, std::move(fine.arrangement), work);
}

}  // namespace brimwright::geometry
