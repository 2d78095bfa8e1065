#pragma once

#include "geometry/surface/triangle_mesh.h"
#include "planning/free_curve.h"
#include "planning/plan.h"
#include "planning/run.h"

#include <optional>
#include <vector>

namespace brimwright::planning {

/// One decoration as a closed solid, the middle of its bounding box at the origin, lying as it was
/// cast (a rod along x): the cavity up to its fill, or that and its mirror image on its flat; none
/// for a drizzle.
std::optional<geometry::TriangleMesh> embed_solid(const Decoration& decoration);

/// Volume of one decoration, by its mould's level curve, as a rod or as a coat. UserError at the
/// decoration's place in the run for a fill outside its mould.
Volume embed_volume(const Run& run, std::size_t index);

/// A decoration pressed into a flat top: where it meets it and how far it stands out.
///
/// `surface` names what it sits on. UserError where it is pressed in deeper than it is tall.
PerchFit fit_on_top(const Run& run, std::size_t index);

/// A cavity for its embeds: its solid standing on z = 0, and how deep it is filled.
struct Hollow {
  geometry::TriangleMesh solid;
  Length line;
};
Hollow hollow_of(const Run& run, Length line);

/// Embeds of one decoration below the pour line: as placed, or at places that the packing search
/// finds. Displaced volumes are of the part below the line, by level curve.
///
/// UserError where an embed does not lie within the cavity or meets another one of it, or where
/// fewer fit than a piece has, with how many would, or how large one may be.
PerchFit fit_buried(const Run& run, std::size_t index, const Hollow& hollow,
                    const geometry::Progress& progress);

/// UserError where embeds of two decorations meet.
void require_apart(const Run& run, const std::vector<PerchFit>& fits);

/// What takes up room in the cavity: the buried embeds of all decorations.
std::vector<Submerged> submerged(const Run& run, const std::vector<PerchFit>& fits);

}  // namespace brimwright::planning
