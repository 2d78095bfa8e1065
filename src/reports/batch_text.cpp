#include "reports/batch_text.h"

#include "reports/gauge_report.h"
#include "reports/label_report.h"
#include "reports/lye_report.h"
#include "reports/plan_words.h"
#include "reports/text_table.h"
#include "units/printing.h"
#include "units/weight_text.h"
#include "units/wording.h"

#include <algorithm>

namespace brimwright::reports {
namespace {

using planning::Ingredient;
using Side = TextTable::Side;

/// A spoon is rough; one decimal of a teaspoon says so.
std::string spoons(const Ingredient& ingredient) {
  if (!ingredient.spoonful) return "";
  return "about " + fixed(*ingredient.spoonful / us_teaspoon, 1) + " tsp";
}

std::string ingredient_table(const planning::Weighing& weighing) {
  TextTable table({Side::left, Side::right, Side::right, Side::left, Side::left});
  const bool has_spoons =
      std::any_of(weighing.ingredients.begin(), weighing.ingredients.end(),
                  [](const Ingredient& ingredient) { return ingredient.spoonful.has_value(); });
  table.row({"", "weigh", "or", "goes into", has_spoons ? "spoons" : ""});
  const auto row = [&](const std::string& name, Mass mass, Mass step, Rounded towards,
                       const std::string& into, const std::string& by_spoon) {
    const WeightText weight = weight_text(mass, step, towards);
    table.row({name, weight.grams + " g", weight.ounces + " oz", into, by_spoon});
  };
  for (const auto& i : weighing.ingredients)
    row(i.name, i.weighed, i.step, i.shown, i.goes_into, spoons(i));
  Mass finest = weighing.ingredients.front().step;
  for (const auto& ingredient : weighing.ingredients) finest = std::min(finest, ingredient.step);
  table.rule();
  row("Batter", weighing.batter, finest, Rounded::nearest, "", "");
  return table.text();
}

std::string set_aside_lines(const planning::Weighing& weighing, Mass set_aside_step) {
  std::string text;
  for (const auto& ingredient : weighing.ingredients)
    if (ingredient.set_aside > Mass{})
      text +=
          line("Set " + on_scale(ingredient.set_aside, set_aside_step) + " of the " +
               ingredient.name + " aside to disperse the colours; it is part of the weight above.");
  return text;
}

std::string superfat_line(const planning::Weighing& weighing) {
  const auto& superfat = weighing.superfat;
  using chemistry::highest_in_words, chemistry::lowest_in_words;
  std::string text =
      "Superfat: planned " + fixed_percent(weighing.aim) + ", as weighed " +
      fixed_percent(superfat.nominal) + ". Likely " + lowest_in_words(superfat.likely_low) +
      " to " + highest_in_words(superfat.likely_high) + " (19 batches in 20), at worst " +
      lowest_in_words(superfat.low) + ", at most " + highest_in_words(superfat.high) + ".";
  if (superfat.uncertainties.empty()) return line(text);
  const auto& most = superfat.uncertainties.front();
  return line(text + " " + fixed_percent(most.of_variance, 0) + " of the uncertainty comes from " +
              most.cause + ".");
}

/// What is on the bench is not what the batter has, while some of the water is still in a jug.
std::string pot_words(const planning::Weighing& weighing) {
  const std::string pot = fixed_percent(weighing.pot_strength);
  return pot == fixed_percent(weighing.lye_strength)
             ? ""
             : " In its pot the lye solution is " + pot + " strong.";
}

std::string lye_lines(const planning::Weighing& weighing) {
  std::string text = superfat_line(weighing);
  text += line("Lye " + fixed_percent(weighing.lye_strength) + " strong = water " +
               fixed(weighing.water_to_alkali, 2) + " : 1 to pure alkali = water " +
               fixed_percent(weighing.water_of_fats) + " of the fats." + pot_words(weighing));
  return text;
}

std::string density_line(const planning::BatterTally& batter, const std::string& what) {
  return line(
      what + " at " + fixed_g_per_ml(batter.density, 3) + " (plain batter, computed from its " +
      "ingredients: " + fixed_g_per_ml(batter.density_computed, 3) + "). " +
      fixed_grams(batter.in_pieces) + " in the pieces, " + fixed_grams(batter.lost) + " lost.");
}

std::string layer_lines(const planning::PourTally& pour) {
  if (pour.layers.empty()) return "";
  TextTable table({Side::left, Side::right, Side::right, Side::right, Side::left});
  table.row({"Layer, lowest first", "depth", "each", "weigh out"});
  for (const auto& layer : pour.layers) {
    table.row({layer.name, fixed(layer.from / millimetre, 1) + " to " + fixed_mm(layer.to),
               fixed_grams(layer.mass_each), on_scale(layer.mass, layer.step)});
    for (const auto& colour : layer.colours)
      table.row(
          {"  + " + colour.name, "", "", on_scale(colour.weighed, colour.step), spoons(colour)});
  }
  return "\n" + table.text();
}

std::string pour_text(const planning::PourTally& pour, const planning::Run& run) {
  std::string text = title("POUR  " + run.pour.formula.name,
                           "make " + on_scale(pour.batter.weighing.batter, run.scales.fine.step));
  text += ingredient_table(pour.batter.weighing);
  text += set_aside_lines(pour.batter.weighing, run.scales.fine.step) +
          lye_lines(pour.batter.weighing) + heat_text(pour.batter.heat);
  text += layer_lines(pour);
  text += line("Pour to " + depth_text(run.pour.mould.curve.height() - pour.poured_to) +
               " below the brim, " + depth_text(pour.poured_to) + " deep: " +
               fixed_ml(pour.batter.volume_each) + ", " + fixed_grams(pour.batter.mass_each) +
               " each. A cavity holds " + fixed_ml(pour.brimful) +
               " to the brim; at the line 1 mm is " + fixed_ml(pour.surface * millimetre) + ".");
  text += density_line(pour.batter, "Base");
  return text + "\n";
}

/// Each way to the topping's visible volume, and how the hand compares with the geometry.
std::string visible_lines(const planning::VisibleTopping& visible, const planning::Run& run) {
  std::string text;
  if (visible.as_given) text += line("As the run gives it " + fixed_ml(*visible.as_given) + ".");
  if (visible.by_trials)
    text += line("By " +
                 counted(static_cast<std::int64_t>(run.pipe->trials->weighed.size()),
                         "weighed trial ", "weighed trials ") +
                 fixed_ml(*visible.by_trials) + ".");
  if (visible.by_beads) {
    std::string moves;
    for (const auto& laid : visible.moves)
      moves += (moves.empty() ? "" : " + ") + fixed_ml(laid.volume) +
               (laid.length > Length{} ? " (" + fixed(laid.length / centimetre, 1) + " cm)" : "");
    text += line("By the beads of " + run.pipe->beads->tip.name + ": " + moves +
                 (visible.correction_used ? ", times the correction for your hand, " +
                                                trimmed(visible.correction_used->correction, 2)
                                          : "") +
                 ", " + fixed_ml(*visible.by_beads) + ".");
  }
  if (visible.by_envelope) text += line("By its outline " + fixed_ml(*visible.by_envelope) + ".");
  if (visible.suggested_correction)
    text += line("Your toppings weigh " + trimmed(visible.suggested_correction->correction, 2) +
                 " times the calculated beads (" +
                 counted(visible.suggested_correction->trials, "trial", "trials") + "): save " +
                 trimmed(visible.suggested_correction->correction, 2) +
                 " as this tip's correction for your hand.");
  return text;
}

/// What is piped on: a piece, or a loaf that is cut into several.
std::string casts_counted(std::int64_t n, const planning::Pieces& pieces) {
  return pieces.per_cast > 1 ? counted(n, "loaf", "loaves") : counted(n, "piece", "pieces");
}

std::string whip_table_text(const planning::PipeTally& pipe, const planning::Run& run,
                            const planning::Pieces& pieces) {
  TextTable table({Side::left, Side::right, Side::right, Side::right});
  table.row({"Weigh-cup of " + fixed_ml(run.pipe->whip.holds) + " weighs", "density", "overrun",
             pieces.per_cast > 1 ? "loaves it is enough for" : "pieces it is enough for"});
  for (const auto& reading : pipe.readings)
    table.row({fixed_grams(reading.net) + (reading.is_planned ? "  as planned" : ""),
               fixed_g_per_ml(reading.density, 3), fixed(100 * reading.overrun, 0) + " %",
               std::to_string(reading.casts)});
  return "\n" + table.text();
}

std::string whip_lines(const planning::PipeTally& pipe) {
  std::string text;
  for (const auto& limit : pipe.limits) text += line(limit.text);
  if (pipe.piping) text += line("Piping takes " + in_minutes(*pipe.piping) + ".");
  if (pipe.lye)
    text += line("The lye solution is " + counted(pipe.lye->spoonfuls, "spoonful", "spoonfuls") +
                 ", " + std::to_string(pipe.lye->each.count()) +
                 " s each: " + in_minutes(pipe.lye->altogether) + ".");
  return text;
}

/// "each of 2 whippings of 12 pieces": nothing where a batch is whipped in one go.
std::string which_whipping(const planning::Whipping& whipping, const planning::Run& run,
                           const planning::Pieces& pieces) {
  if (run.batch.whippings == 1) return "";
  const std::string of = casts_counted(whipping.casts, pieces);
  return whipping.count == 1
             ? ", the whipping of " + of
             : ", each of " + std::to_string(whipping.count) + " whippings of " + of;
}

std::string pipe_text(const planning::Whipping& whipping, const planning::Plan& plan,
                      const planning::Run& run) {
  const auto& pipe = whipping.pipe;
  std::string text =
      title("PIPE  " + run.pipe->formula.name + which_whipping(whipping, run, plan.pieces),
            "make " + on_scale(pipe.batter.weighing.batter, run.scales.fine.step));
  text += ingredient_table(pipe.batter.weighing);
  text += set_aside_lines(pipe.batter.weighing, run.scales.fine.step) +
          lye_lines(pipe.batter.weighing) + heat_text(pipe.batter.heat);
  text +=
      line("Pipe " + fixed_ml(pipe.batter.volume_each) + " each: " + fixed_ml(pipe.visible_each) +
           " visible and " + fixed_ml(pipe.in_headspace_each) +
           " in the headspace below the brim; " + fixed_grams(pipe.batter.mass_each) +
           " at this whipped density, overrun " + fixed(100 * pipe.overrun, 0) + " %.");
  text += visible_lines(pipe.visible, run);
  text += density_line(pipe.batter, "Topping");
  if (pipe.loads) text += line(counted(*pipe.loads, "bag load.", "bag loads."));
  text += whip_table_text(pipe, run, plan.pieces);
  if (pipe.casts_now)
    text += line("By today's weigh-cup the bowl is enough for " +
                 casts_counted(*pipe.casts_now, plan.pieces) + ".");
  return text + whip_lines(pipe) + "\n";
}

/// "1, 2 and 5", or from where to where when there are many.
std::string numbers_in_words(const std::vector<std::int64_t>& numbers) {
  constexpr std::size_t many = 12;
  if (numbers.size() > many)
    return "from number " + std::to_string(numbers.front()) + " to " +
           std::to_string(numbers.back());
  std::string words = "number ";
  for (std::size_t i = 0; i < numbers.size(); ++i)
    words += (i == 0 ? "" : i + 1 == numbers.size() ? " and " : ", ") + std::to_string(numbers[i]);
  return words;
}

}  // namespace

std::string dust_text(const std::vector<planning::DustTally>& dusts, const planning::Run& run) {
  if (dusts.empty()) return "";
  TextTable table({Side::left, Side::right, Side::left});
  for (const auto& dust : dusts)
    table.row({dust.name, on_scale(dust.make, run.scales.fine.step),
               fixed(dust.each / gram, 3) + " g a piece" +
                   (dust.exposed ? ", over " + fixed(*dust.exposed / square_centimetre, 1) + " cm²"
                                 : "")});
  return "DUST\n" + table.text() + "\n";
}

std::string batch_size(const planning::Batch& batch, const planning::Pieces& pieces) {
  return counted(batch.pieces, "piece", "pieces") +
         (pieces.per_cast > 1 ? " in " + counted(batch.casts, "loaf", "loaves") : "");
}

std::string batch_text(const planning::Batch& batch, const planning::Plan& plan,
                       const planning::Run& run) {
  std::string text;
  if (plan.pieces.batches > 1) {
    text = title("ONE BATCH OF " + batch_size(batch, plan.pieces),
                 "made " + counted(batch.count(), "time", "times"));
    text += line("Of the run's " + std::to_string(plan.pieces.batches) + " batches, " +
                 numbers_in_words(batch.numbers) + ".") +
            "\n";
  }
  text += pour_text(batch.pour, run);
  for (const auto& whipping : batch.whippings) text += pipe_text(whipping, plan, run);
  text += lye_pot_text(batch);
  if (plan.pieces.batches > 1) text += dust_text(batch.dust, run);
  return text + (plan.pieces.batches > 1 ? bottles_text(batch.bottles) : "");
}

}  // namespace brimwright::reports
