#include "planning/measured_piece.h"

namespace brimwright::planning {

PieceModel piece_model(const Run& run, const Measured& measured) {
  return piece_model(
      run, {.cavity = measured.cavity,
            .pour = measured.pour,
            .in_headspace_each = measured.topping ? measured.topping->in_headspace_each : Volume{},
            .bodies = measured.bodies,
            .fits = measured.fits});
}

}  // namespace brimwright::planning
