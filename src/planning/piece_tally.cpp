#include "planning/piece_tally.h"

namespace brimwright::planning {
namespace {

/// What of a cast's base ends up in each piece: all of it, or a bar's mean share of the loaf.
double share_in_a_piece(const Plan& plan) {
  if (!plan.cut) return 1;
  return plan.cut->share_in_bars() / static_cast<double>(plan.pieces.per_cast);
}

std::vector<PartMass> parts_of(const Plan& plan, const Run& run) {
  const double share = share_in_a_piece(plan);
  std::vector<PartMass> parts;
  const auto add_batter = [&](const BatterTally& batter, const chemistry::Formula& formula) {
    std::optional<Mass> cured;
    if (batter.cure) cured = share * batter.cure->cured;
    parts.push_back({formula.name, share * batter.mass_each, cured});
  };
  add_batter(plan.pour.batter, run.pour.formula);
  if (plan.pipe) add_batter(plan.pipe->batter, run.pipe->formula);
  // Melt-and-pour and powders keep their mass.
  for (const auto& decoration : plan.perch) {
    const Mass mass = decoration.per_piece * decoration.mass_each;
    parts.push_back({decoration.name, mass, mass});
  }
  for (const auto& dust : plan.dust) parts.push_back({dust.name, dust.on_piece, dust.on_piece});
  return parts;
}

}  // namespace

PieceTally piece_of(const Plan& plan, const Run& run) {
  PieceTally piece;
  piece.parts = parts_of(plan, run);
  piece.cured = Mass{};
  for (const auto& part : piece.parts) {
    piece.fresh += part.fresh;
    piece.cured =
        piece.cured && part.cured ? std::optional(*piece.cured + *part.cured) : std::nullopt;
  }
  return piece;
}

}  // namespace brimwright::planning
