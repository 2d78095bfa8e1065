#pragma once

#include "geometry/packing/packing_energy.h"
#include "geometry/packing/packing_model.h"
#include "geometry/packing/packing_proof.h"

#include <cstddef>
#include <vector>

namespace brimwright::geometry {

/// A point of one body near the wall or near another body, with the distance that was measured
/// there and how it changes.
struct Contact {
  std::size_t body;
  std::size_t other;      // a body, or `wall`
  Vector point_mm;        // of `body`, from its centre, as if it was not turned
  Vector slope;           // of the distance, as seen from the wall or from the unturned other
  double distance_mm;     // measured, with the point at
  Vector measured_at_mm;  // this place, likewise seen

  static constexpr std::size_t wall = static_cast<std::size_t>(-1);
};

/// The shortfall of an arrangement by contacts measured near it. Exact where they were measured,
/// straight on from there.
class ContactEnergy {
 public:
  ContactEnergy(const PackingModel& model, const std::vector<Contact>& contacts, double spare_mm)
      : model_(model), contacts_(contacts), spare_(spare_mm) {}

  /// Of what is asked and `spare_mm` more.
  Shortfall at(const Arrangement& arrangement, std::vector<double>& slope) const;

 private:
  const PackingModel& model_;
  const std::vector<Contact>& contacts_;
  double spare_;
};

/// The contacts of an arrangement.
class ContactSurvey {
 public:
  ContactSurvey(const PackingModel& model, const PackingProof& proof)
      : model_(model), proof_(proof) {}

  /// Measures anew. Nearest pairs of whole surfaces are kept from call to call, so that a body
  /// cannot rock from one contact to another.
  void measure(const Arrangement& arrangement);

  const std::vector<Contact>& contacts() const { return contacts_; }
  bool is_met() const { return is_met_; }             // every distance is as asked
  std::size_t points() const { return points_; }      // measured so far, each some hundred readings
  std::size_t surfaces() const { return surfaces_; }  // pairs of them measured so far

 private:
  double add_points(const std::vector<Pose>& poses, std::size_t body, std::size_t other);
  void add_nearest(const std::vector<Pose>& poses, std::size_t body, std::size_t other,
                   double least);
  bool is_far_enough(const std::vector<Pose>& poses, std::size_t body, std::size_t other) const;
  void take_nearer(std::size_t body, std::size_t other, std::size_t bodies);

  static constexpr double far = 1e300;
  const PackingModel& model_;
  const PackingProof& proof_;
  std::vector<Contact> contacts_, nearest_;
  std::vector<int> unseen_;  // how often surfaces were found to cross where no point showed it
  bool is_met_ = false;
  std::size_t points_ = 0, surfaces_ = 0;
};

}  // namespace brimwright::geometry
