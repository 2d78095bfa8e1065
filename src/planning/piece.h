#pragma once

#include "geometry/surface/triangle_mesh.h"
#include "planning/cavity.h"
#include "planning/embed_solid.h"
#include "planning/measure_memory.h"
#include "planning/run.h"
#include "planning/tally.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::planning {

/// The base's layers as they lie in one cavity, lowest first; one for a plain pour. Buried embeds
/// take up room in them. (Where embeds are pressed in, the last layer is shown raised to the line
/// and the others where they were poured.)
std::vector<geometry::TriangleMesh> base_solids(const Run& run, const Cavity& cavity,
                                                const PourTally& pour);

enum class PartKind { base, topping, decoration };

/// One part of a whole piece as closed, outward-facing solids in the cavity's frame, standing on
/// z = 0.
struct PiecePart {
  std::string name;
  PartKind kind;
  bool is_buried = false;
  std::vector<geometry::TriangleMesh> solids;  // layer, bead or embed, none empty; may overlap
};

/// What one cavity yields, whole: the base by its layers, lowest first; the topping; decorations in
/// the run's order.
struct PieceModel {
  std::vector<PiecePart> parts;
  Length pour_line, brim;
  Length foot;  // of the visible topping: the headspace filled as far as the topping fills it
  bool is_topping_shape_known = true;  // false: only its volume is, so no solid shows it
};

/// The topping of one cast, in the cavity's frame: what fills the headspace, and what
/// stands over it, where trials alone do not tell its shape nothing.
struct ToppingSolids {
  std::vector<geometry::TriangleMesh> in_headspace, visible;
};
ToppingSolids topping_solids(const Run& run, const Cavity& cavity, const PourTally& pour,
                             Volume in_headspace_each);

/// What a piece is put together from.
struct PieceShape {
  const Cavity& cavity;
  const PourTally& pour;
  Volume in_headspace_each;  // of topping
  const std::vector<DecorationBody>& bodies;
  const std::vector<DecorationFit>& fits;
};

/// Beads where the run gives moves, otherwise the envelope: a cone or half an ellipsoid over the
/// pour line. Decorations on top stand on the topping at the middle, several evenly round it.
PieceModel piece_model(const Run& run, const PieceShape& shape);

/// The box that the piece just fits; nothing where the topping's shape is not known.
std::optional<PieceSize> size_of(const PieceModel& model);

/// Surface of topping and of what lies on it that the air sees, above the topping's foot; the level
/// surface at the foot counts where it is topping in the headspace, or where there is no topping.
/// UserError at the run's dust where the topping's shape is not known. `memory` may be none.
Area exposed_area(const Run& run, const Cavity& cavity, const PieceModel& model,
                  MeasureMemory* memory);

/// UserError at the first move that leaves the opening over which it is piped, with what would fit.
void require_moves_over_the_cup(const Run& run, const Cavity& cavity);

}  // namespace brimwright::planning
