#include "reports/gauge_report.h"
#include "reports/label_report.h"
#include "reports/plan_report.h"
#include "reports/text_table.h"
#include "units/printing.h"

#include <algorithm>

namespace brimwright::reports {
namespace {

using planning::Ingredient;
using Side = TextTable::Side;

std::string grams(Mass mass, Mass step) { return fixed(mass / gram, decimals_for(step)) + " g"; }
std::string grams(Mass mass) { return fixed(mass / gram, 1) + " g"; }
std::string ml(Volume volume) { return fixed(volume / millilitre, 1) + " ml"; }
std::string per_cent(Share share, int decimals = 1) {
  return fixed(share.in_percent(), decimals) + " %";
}
std::string density_text(Density density) {
  return fixed(density / gram_per_millilitre, 3) + " g/ml";
}

/// Ounces of mass beside grams: to the hundredth, below a pound as the trade's scales show them.
std::string ounces(Mass mass) { return fixed(mass / ounce, 2) + " oz"; }

std::string counted(std::int64_t n, const std::string& one, const std::string& many) {
  return std::to_string(n) + " " + (n == 1 ? one : many);
}

/// A spoon is rough; one decimal of a teaspoon says so.
std::string spoons(const Ingredient& ingredient) {
  if (!ingredient.spoonful) return "";
  return "about " + fixed(*ingredient.spoonful / us_teaspoon, 1) + " tsp";
}

std::string title(const std::string& left, const std::string& right) {
  const std::size_t used = shown_width(left) + shown_width(right);
  const std::size_t gap = used + 2 < page_width ? page_width - used : 2;
  return left + std::string(gap, ' ') + right + "\n";
}

std::string line(const std::string& text) { return wrapped(text, "  ", "    "); }

std::string ingredient_table(const planning::Weighing& weighing) {
  TextTable table({Side::left, Side::right, Side::right, Side::left, Side::left});
  table.row({"", "", "", "into"});
  for (const auto& ingredient : weighing.ingredients)
    table.row({ingredient.name, grams(ingredient.weighed, ingredient.step),
               ounces(ingredient.weighed), ingredient.goes_into, spoons(ingredient)});
  Mass finest = weighing.ingredients.front().step;
  for (const auto& ingredient : weighing.ingredients) finest = std::min(finest, ingredient.step);
  table.rule();
  table.row({"Batter", grams(weighing.batter, finest), ounces(weighing.batter)});
  return table.text();
}

std::string set_aside_lines(const planning::Weighing& weighing) {
  std::string text;
  for (const auto& ingredient : weighing.ingredients)
    if (ingredient.set_aside > Mass{})
      text += line("Set " + grams(ingredient.set_aside) + " of the " + ingredient.name +
                   " aside to disperse the colours; it is part of the weight above.");
  return text;
}

std::string superfat_line(const planning::Weighing& weighing) {
  const auto& superfat = weighing.superfat;
  std::string text = "Superfat: aim " + per_cent(weighing.aim) + ", comes out " +
                     per_cent(superfat.nominal) + ". Likely " + per_cent(superfat.likely_low) +
                     " to " + per_cent(superfat.likely_high) + " (19 batches in 20), at worst " +
                     per_cent(superfat.low) + " to " + per_cent(superfat.high) + ".";
  if (superfat.doubts.empty()) return line(text);
  const auto& most = superfat.doubts.front();
  return line(text + " " + per_cent(most.of_variance, 0) + " of the doubt is " + most.cause + ".");
}

std::string lye_lines(const planning::Weighing& weighing) {
  std::string text = superfat_line(weighing);
  text += line("Lye " + per_cent(weighing.lye_strength) + " strong = water " +
               fixed(weighing.water_to_alkali, 2) + " : 1 to pure alkali = water " +
               per_cent(weighing.water_of_fats) + " of the fats.");
  return text;
}

std::string density_line(const planning::BatterTally& batter, const std::string& what) {
  return line(what + " at " + density_text(batter.density) + " (plain batter, computed from its " +
              "ingredients: " + density_text(batter.density_computed) + "). In the pieces " +
              grams(batter.in_pieces) + ", lost " + grams(batter.lost) + ".");
}

std::string layer_lines(const planning::PourTally& pour, const planning::Scales& scales) {
  if (pour.layers.empty()) return "";
  TextTable table({Side::left, Side::right, Side::right, Side::right, Side::left});
  table.row({"Layer, lowest first", "depth", "each", "of the batter"});
  for (const auto& layer : pour.layers) {
    table.row({layer.name,
               fixed(layer.from / millimetre, 1) + " to " + fixed(layer.to / millimetre, 1) + " mm",
               grams(layer.mass_each), grams(layer.mass, scales.fine.reads)});
    for (const auto& colour : layer.colours)
      table.row({"  + " + colour.name, "", "", grams(colour.weighed, colour.step), spoons(colour)});
  }
  return "\n" + table.text();
}

std::string pour_text(const planning::Plan& plan, const planning::Run& run) {
  const auto& pour = plan.pour;
  std::string text = title("POUR  " + run.pour.formula.name,
                           "make " + grams(pour.batter.weighing.batter, run.scales.fine.reads));
  text += ingredient_table(pour.batter.weighing);
  text += set_aside_lines(pour.batter.weighing) + lye_lines(pour.batter.weighing);
  text += layer_lines(pour, run.scales);
  text += line("Pour to " + depth_text(pour.headspace) + " below the brim, " +
               depth_text(pour.line) + " deep: " + ml(pour.batter.volume_each) + ", " +
               grams(pour.batter.mass_each) + " each. A cavity holds " + ml(pour.brimful) +
               " to the brim; at the line 1 mm is " + ml(pour.surface * millimetre) + ".");
  text += density_line(pour.batter, "Base");
  return text + "\n";
}

std::string pipe_text(const planning::Plan& plan, const planning::Run& run) {
  if (!plan.pipe) return "";
  const auto& pipe = *plan.pipe;
  std::string text = title("PIPE  " + run.pipe->formula.name,
                           "make " + grams(pipe.batter.weighing.batter, run.scales.fine.reads));
  text += ingredient_table(pipe.batter.weighing);
  text += set_aside_lines(pipe.batter.weighing) + lye_lines(pipe.batter.weighing);
  text += line("Pipe " + ml(pipe.batter.volume_each) + " each: " + ml(pipe.visible_each) +
               " to be seen and " + ml(pipe.in_headspace_each) + " in the recess below the brim; " +
               grams(pipe.batter.mass_each) + " at this whip, overrun " +
               fixed(100 * pipe.overrun, 0) + " %.");
  text += density_line(pipe.batter, "Topping");
  if (pipe.loads) text += line(counted(*pipe.loads, "bag load.", "bag loads."));
  if (pipe.pieces_now)
    text += line("At today's weigh-cup the bowl pipes " +
                 counted(*pipe.pieces_now, "piece.", "pieces."));
  return text + "\n";
}

std::string perch_text(const planning::Plan& plan, const planning::Run& run) {
  std::string text;
  for (const auto& perch : plan.perch) {
    text += title("PERCH  " + perch.name, "melt " + grams(perch.make, run.scales.large.reads));
    text += line(perch.material + ", " + ounces(perch.make) + " by weight. " +
                 counted(perch.casts, "cast", "casts") + " in " + perch.mould + ": " +
                 counted(perch.cavity_fills, "cavity fill, ", "cavity fills, ") +
                 counted(perch.tray_fills, "tray fill; ", "tray fills; ") + ml(perch.volume_each) +
                 ", " + grams(perch.mass_each) + " each, " + std::to_string(perch.per_piece) +
                 " a piece.");
    text += "\n";
  }
  return text;
}

std::string dust_text(const planning::Plan& plan, const planning::Run& run) {
  if (plan.dust.empty()) return "";
  TextTable table({Side::left, Side::right, Side::left});
  for (const auto& dust : plan.dust)
    table.row({dust.name, grams(dust.make, run.scales.fine.reads),
               fixed(dust.each / gram, 2) + " g a piece"});
  return "DUST\n" + table.text() + "\n";
}

std::string cost_text(const planning::Plan& plan) {
  if (!plan.cost) return line("Cost: the run gives no prices (section \"money\").");
  const auto& cost = *plan.cost;
  const std::string& code = cost.total.currency.code;
  TextTable table({Side::left, Side::right, Side::right});
  for (const auto& l : cost.lines)
    table.row({l.name, grams(l.used), l.cost ? amount_text(*l.cost) + " " + code : "unpriced"});
  table.rule();
  table.row({"Material of the run", "", amount_text(cost.total) + " " + code});
  table.row({"Material of one saleable piece", "", amount_text(cost.per_piece) + " " + code});
  std::string text = table.text();
  if (!cost.unpriced.empty()) text += line("Without what is unpriced: the true cost is higher.");
  return text;
}

std::string piece_text(const planning::Plan& plan) {
  std::string text = "A PIECE\n" + cost_text(plan);
  text +=
      line("Fresh " + grams(plan.piece.fresh) + "; " +
           (plan.piece.cured ? "after the cure about " + grams(*plan.piece.cured) + "."
                             : "the cured weight needs \"water_lost_in_cure\" or \"drying\" in "
                               "each formula."));
  if (!plan.label) text += line("Label: the run asks for none (section \"label\").");
  return text + cure_text(plan) + "\n";
}

std::string remarks_text(const planning::Plan& plan, bool dangers) {
  std::string text;
  for (const auto& remark : plan.cautions)
    if ((remark.severity == Severity::danger) == dangers)
      text += wrapped(remark.text,
                      dangers                                ? "!! "
                      : remark.severity == Severity::caution ? " ! "
                                                             : " - ",
                      "   ");
  return text;
}

std::string head_text(const planning::Plan& plan, const planning::Run& run) {
  const auto& pieces = plan.pieces;
  const auto& mould = run.pour.mould;
  std::string text = title(plan.name, counted(pieces.sell, "piece", "pieces") + " to sell, make " +
                                          std::to_string(pieces.make));
  std::string moulds_line = mould.name + ": " + counted(mould.owned, "mould", "moulds") + " of " +
                            counted(mould.cavities, "cavity", "cavities") + ", " +
                            counted(pieces.fillings, "filling", "fillings");
  if (mould.unmould_after)
    moulds_line += ", " + trimmed(static_cast<double>(mould.unmould_after->count()) / 60, 1) +
                   " h each before unmoulding";
  return text + wrapped(moulds_line, "", "  ") + "\n";
}

}  // namespace

std::string plan_text(const planning::Run& run, const planning::Plan& plan) {
  const std::string dangers = remarks_text(plan, true);
  return (dangers.empty() ? "" : dangers + "\n") + head_text(plan, run) + pour_text(plan, run) +
         pipe_text(plan, run) + perch_text(plan, run) + dust_text(plan, run) + bottles_text(plan) +
         piece_text(plan) + label_text(plan) +
         "WATCH OUT\n" + remarks_text(plan, false);
}

}  // namespace brimwright::reports
