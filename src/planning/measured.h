#pragma once

#include "chemistry/batter_density.h"
#include "geometry/packing/packing.h"
#include "planning/cavity.h"
#include "planning/embed_solid.h"
#include "planning/measure_memory.h"
#include "planning/run.h"
#include "planning/tally.h"
#include "planning/topping.h"
#include "units/quantity.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace brimwright::planning {

/// What of a run is the same for any number of pieces: measured once, planned from often.
struct Measured {
  Cavity cavity;
  std::vector<DecorationBody> bodies;  // of the run's decorations, and how each lies
  std::vector<DecorationFit> fits;
  PourTally pour;                    // of one cavity: depths, volumes, layers; nothing weighed yet
  chemistry::BatterDensity density;  // of its batter
  std::optional<Topping> topping = {};
  std::optional<CutTally> cut = {};    // where the run cuts
  std::optional<PieceSize> size = {};  // of a piece that is not cut, where its shape is known
  std::optional<Area> exposed = {};    // of one cavity's cast, where a powder goes by it
};

/// Help in measuring; either may be empty.
struct Measuring {
  geometry::Progress progress = {};  // told how far a search for embeds' places is
  MeasureMemory* memory = nullptr;
};

/// Measures `run`. UserError where it contradicts itself, or where what is in or on the piece does
/// not fit.
Measured measured(const Run& run, const Measuring& help = {});

/// Bars of a loaf that is cut; one otherwise.
std::int64_t pieces_in_a_cast(const Measured& measured);

}  // namespace brimwright::planning
