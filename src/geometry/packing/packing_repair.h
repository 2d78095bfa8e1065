#pragma once

#include "geometry/packing/packing_model.h"
#include "geometry/packing/packing_proof.h"
#include "geometry/packing/packing_relaxation.h"

#include <cstddef>
#include <optional>

namespace brimwright::geometry {

/// What a search has done and may do, in readings of a distance field. No clock: the same task
/// gives the same answer.
struct PackingWork {
  double done = 0, most = 0;
  bool is_over() const { return done >= most; }
};

/// The bodies pushed until they keep their distances by the model's fields, at so many points of
/// each, or until no push helps.
Relaxed relaxed_by_model(const PackingModel& model, Arrangement arrangement, std::size_t points,
                         PackingWork& work);

/// An arrangement that keeps its distances, as measured between the surfaces, made from one that
/// nearly does so: measured where bodies are close, relaxed by what was measured, some times over.
std::optional<Arrangement> repaired(const PackingModel& model, const PackingProof& proof,
                                    Arrangement arrangement, PackingWork& work);

/// The bodies relaxed by the model, roughly and then finely, and repaired; nothing where it shows
/// on the way that there is no room.
std::optional<Arrangement> settled(const PackingModel& model, const PackingProof& proof,
                                   Arrangement start, PackingWork& work);

/// What a question to the surfaces costs, in readings.
double exact_cost(const PackingModel& model);

}  // namespace brimwright::geometry
