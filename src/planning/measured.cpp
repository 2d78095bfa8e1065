#include "planning/measured.h"

#include "planning/cut_loaf.h"
#include "planning/embed_fit.h"
#include "planning/free_curve.h"
#include "planning/layers.h"
#include "planning/piece.h"

#include <algorithm>
#include <utility>
#include <variant>

namespace brimwright::planning {
namespace {

/// Buried embeds of all decorations, where they lie and what they displace.
std::vector<DecorationFit> fits_of(const Run& run, const Cavity& cavity,
                                   const std::vector<DecorationBody>& bodies,
                                   const Measuring& help) {
  std::vector<DecorationFit> fits(run.decorations.size());
  for (std::size_t i = 0; i < run.decorations.size(); ++i) {
    const auto& where = run.decorations[i].where;
    if (std::holds_alternative<OnTop>(where)) fits[i] = fit_on_top(run, i, bodies);
    if (std::holds_alternative<Buried>(where))
      fits[i] = fit_buried(run, i, cavity, bodies, help.progress, help.memory);
  }
  require_apart(run, bodies, fits);
  return fits;
}

bool is_any_pressed_in(const Run& run) {
  return std::any_of(run.decorations.begin(), run.decorations.end(),
                     [](const Decoration& decoration) {
                       const auto* buried = std::get_if<Buried>(&decoration.where);
                       return buried != nullptr && buried->pressed_in;
                     });
}

/// What batter the cavity has room for: round the embeds that are there when it is poured.
FreeCurve room_at_the_pour(const Run& run, const std::vector<DecorationBody>& bodies,
                           const std::vector<DecorationFit>& fits) {
  std::vector<DecorationFit> there = fits;
  for (std::size_t i = 0; i < fits.size(); ++i) {
    const auto* buried = std::get_if<Buried>(&run.decorations[i].where);
    if (buried == nullptr || buried->pressed_in) there[i] = {};
  }
  return FreeCurve(run.pour.mould.curve, submerged(bodies, there));
}

/// Depths, volumes and layers of one cavity's pour. Embeds take up their room whenever they go in:
/// those pressed in afterwards raise a lower pour to the line.
PourTally pour_into(const Cavity& cavity, const Run& run, const Measured& so_far,
                    chemistry::Proportions per_fat) {
  const auto& curve = run.pour.mould.curve;
  const Density density = so_far.density.used;
  PourTally tally;
  tally.line = cavity.line;
  tally.headspace = curve.height() - tally.line;
  tally.brimful = curve.brimful();
  tally.surface = curve.free_surface(tally.line);
  tally.headspace_volume = tally.brimful - curve.volume_below(tally.line);
  for (const auto& fit : so_far.fits) {
    tally.displaced += fit.displaced;
    tally.headspace_volume -= fit.in_headspace;
  }
  const FreeCurve room = room_at_the_pour(run, so_far.bodies, so_far.fits);
  auto& batter = tally.batter;
  batter.density = density;
  batter.density_computed = so_far.density.computed;
  batter.per_fat = std::move(per_fat);
  batter.volume_each = curve.volume_below(tally.line) - tally.displaced;
  batter.mass_each = batter.volume_each * density;
  tally.poured_to = is_any_pressed_in(run) ? room.depth_at(batter.volume_each) : tally.line;
  tally.layers = layers_of(run, cavity, room, tally.poured_to, density);
  return tally;
}

void require_two_batters(const Run& run) {
  if (run.lye_pot && !run.pipe)
    throw UserError(run.lye_pot->where,
                    "shares a pot of lye solution with a batter that is not there",
                    "a shared pot needs \"pour\" and \"pipe\"; leave \"lye_pot\" out");
}

bool is_any_dusted_by_area(const Run& run) {
  return std::any_of(run.dust.begin(), run.dust.end(), [](const Dusting& dusting) {
    return std::holds_alternative<DustByArea>(dusting.per_piece);
  });
}

/// The shape of the whole piece, and the surface that powders go over.
void measure_piece(Measured& measured, const Run& run, MeasureMemory* memory) {
  const bool is_dusted = is_any_dusted_by_area(run);
  if (run.cut && !is_dusted) return;
  const PieceModel model = piece_model(
      run, {.cavity = measured.cavity,
            .pour = measured.pour,
            .in_headspace_each = measured.topping ? measured.topping->in_headspace_each : Volume{},
            .bodies = measured.bodies,
            .fits = measured.fits});
  const bool has_bought = std::any_of(run.decorations.begin(), run.decorations.end(), is_bought);
  if (!run.cut && !has_bought) measured.size = size_of(model);
  if (is_dusted) measured.exposed = exposed_area(run, measured.cavity, model, memory);
}

}  // namespace

std::int64_t pieces_in_a_cast(const Measured& measured) {
  return measured.cut ? static_cast<std::int64_t>(measured.cut->bars.size()) : 1;
}

Measured measured(const Run& run, const Measuring& help) {
  Measured measured{
      .cavity = cavity_of(run), .bodies = bodies_of(run), .fits = {}, .pour = {}, .density = {}};
  const Cavity& cavity = measured.cavity;
  require_moves_over_the_cup(run, cavity);
  require_two_batters(run);
  auto per_fat = chemistry::proportions(run.pour.formula);
  measured.density = chemistry::batter_density(run.pour.formula, per_fat);
  measured.fits = fits_of(run, cavity, measured.bodies, help);
  measured.pour = pour_into(cavity, run, measured, std::move(per_fat));
  if (run.cut) measured.cut = cut_tally(run, cavity, measured.bodies, measured.pour, measured.fits);
  if (run.pipe) measured.topping = topping_of(run, measured.pour.headspace_volume);
  if (run.pipe && run.cut)
    measured.cut->topping =
        topping_parted(run, cavity, measured.pour, *measured.cut, *measured.topping);
  measure_piece(measured, run, help.memory);
  return measured;
}

}  // namespace brimwright::planning
