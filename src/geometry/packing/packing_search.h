#pragma once

#include "geometry/packing/packing_model.h"
#include "geometry/packing/packing_pose.h"
#include "geometry/packing/packing_proof.h"
#include "geometry/packing/packing_repair.h"

#include <cstddef>
#include <optional>

namespace brimwright::geometry {

/// Looks for room by throwing bodies in and pushing them apart, over and over.
class PackingSearch {
 public:
  PackingSearch(const PackingModel& model, const PackingProof& proof, PackingWork& work)
      : model_(model), proof_(proof), work_(work) {}

  /// A single body, proved.
  std::optional<Arrangement> one();
  /// One body more than `found` has, proved.
  std::optional<Arrangement> one_more_than(const Arrangement& found);

 private:
  Arrangement thrown_in(std::size_t bodies, std::size_t levels);
  Arrangement shaken(const Arrangement& found);
  void add_roomiest(Arrangement& arrangement, std::size_t levels, const Turn* turn, int tries);
  Pose anywhere(const Turn* turn);
  Turn any_turn();
  double room_mm(const Arrangement& arrangement, const Pose& pose) const;
  static void make_level(Arrangement& arrangement);

  const PackingModel& model_;
  const PackingProof& proof_;
  PackingWork& work_;
  Dice dice_{20261125};
};

}  // namespace brimwright::geometry
