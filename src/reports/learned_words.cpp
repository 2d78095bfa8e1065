#include "reports/learned_report.h"
#include "units/printing.h"
#include "units/wording.h"

#include <cmath>

namespace brimwright::reports {
namespace {

using namespace learning;

std::string loss_name(LossOf loss) {
  switch (loss) {
    case LossOf::pot:
      return "pot";
    case LossOf::jugs:
      return "jugs";
    case LossOf::overpour:
      return "overpour";
    case LossOf::test_piece:
      return "test_piece";
    case LossOf::bowl_and_whisk:
      return "bowl_and_whisk";
    case LossOf::bag:
      return "bag";
    case LossOf::tip:
      return "tip";
    case LossOf::bag_changes:
      return "each_bag_change";
    case LossOf::decoration_jug:
      return "left_in_jug";
    case LossOf::melt:
      return "melt_loss";
    case LossOf::base_altogether:
      return "base_on_tools";
    case LossOf::topping_altogether:
      break;
  }
  return "topping_on_tools";
}

std::string loss_words(const OfLoss& of) {
  switch (of.loss) {
    case LossOf::pot:
      return "left in the pot";
    case LossOf::jugs:
      return "left in the jugs";
    case LossOf::overpour:
      return "poured over, of what is in the pieces";
    case LossOf::test_piece:
      return "test piece";
    case LossOf::bowl_and_whisk:
      return "left in bowl and whisk";
    case LossOf::bag:
      return "left in the last bag";
    case LossOf::tip:
      return "left in the tip";
    case LossOf::bag_changes:
      return "lost at each bag change";
    case LossOf::decoration_jug:
      return of.decoration + ": left in the jug at each filling";
    case LossOf::melt:
      return of.decoration + ": lost in melting";
    case LossOf::base_altogether:
      return "base left on tools, in all";
    case LossOf::topping_altogether:
      break;
  }
  return "topping left on tools, in all";
}

std::string time_name(TimeOf time) {
  switch (time) {
    case TimeOf::batch:
      return "each_batch";
    case TimeOf::piece_made:
      return "each_piece_made";
    case TimeOf::tray_fill:
      return "each_tray_fill";
    case TimeOf::piece_packed:
      break;
  }
  return "each_piece_packed";
}

std::string time_words(TimeOf time) {
  switch (time) {
    case TimeOf::batch:
      return "work on a batch";
    case TimeOf::piece_made:
      return "work on a piece";
    case TimeOf::tray_fill:
      return "work on a tray filling";
    case TimeOf::piece_packed:
      break;
  }
  return "packing a piece";
}

}  // namespace

std::string figure_name(const FigureId& id) {
  switch (id.kind) {
    case Kind::volume_error:
      return "volume";
    case Kind::base_density:
      return "density";
    case Kind::whipped_density:
      return "whipped_density";
    case Kind::loss:
      return loss_name(std::get<OfLoss>(id.of).loss);
    case Kind::topping_each:
      return "topping";
    case Kind::hand_correction:
      return "hand";
    case Kind::cure_loss:
      return "cure";
    case Kind::time:
      break;
  }
  return time_name(std::get<OfTime>(id.of).time);
}

std::string figure_words(const FigureId& id) {
  switch (id.kind) {
    case Kind::volume_error:
      return "volume of a cavity, as a higher pour line (" + std::get<OfMould>(id.of).mould + ")";
    case Kind::base_density:
      return "density of the base (" + std::get<OfFormula>(id.of).formula + ")";
    case Kind::whipped_density:
      return "density of the whipped topping (" + std::get<OfFormula>(id.of).formula + ")";
    case Kind::loss:
      return loss_words(std::get<OfLoss>(id.of));
    case Kind::topping_each:
      return "topping above its foot, each";
    case Kind::hand_correction:
      return "correction for your hand (" + std::get<OfHand>(id.of).tip + ")";
    case Kind::cure_loss:
      return "water lost by the day of sale (" + std::get<OfFormula>(id.of).formula + ")";
    case Kind::time:
      break;
  }
  return time_words(std::get<OfTime>(id.of).time);
}

std::string value_words(const Value& value) {
  if (const auto* length = std::get_if<Length>(&value)) {
    const std::string mm = trimmed(*length / millimetre, 1);
    return (mm.starts_with('-') || mm == "0" ? "" : "+") + mm + " mm";
  }
  if (const auto* volume = std::get_if<Volume>(&value)) return in_ml(*volume);
  if (const auto* mass = std::get_if<Mass>(&value)) return in_grams(*mass);
  if (const auto* density = std::get_if<Density>(&value)) return in_g_per_ml(*density, 3);
  if (const auto* share = std::get_if<Share>(&value)) return in_percent(*share);
  if (const auto* factor = std::get_if<Factor>(&value)) return trimmed(factor->factor, 3);
  const double minutes = std::get<Minutes>(value).count();
  return minutes < 5 ? trimmed(std::round(minutes * 60), 0) + " s" : trimmed(minutes, 0) + " min";
}

}  // namespace brimwright::reports
