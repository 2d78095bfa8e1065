#pragma once

#include "geometry/packing/packing_model.h"
#include "geometry/packing/packing_pose.h"
#include "geometry/packing/packing_proof.h"
#include "geometry/packing/packing_repair.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace brimwright::geometry {

/// The most bodies found at sites of lattices, all turned alike: rows along the hollow's axes,
/// straight or staggered, in layers over each other or over each other's gaps (so that balls come
/// as in close packing). Proved; empty if no body fits.
Arrangement best_lattice(const PackingModel& model, const PackingProof& proof, std::size_t most,
                         PackingWork& work);

/// The turns worth trying for all bodies alike.
std::vector<Turn> even_turns(Lying lying);

/// One body turned so, proved, if it was found to fit.
std::optional<Pose> placed_once(const PackingModel& model, const PackingProof& proof,
                                const Turn& turn, PackingWork& work);

}  // namespace brimwright::geometry
