#include "planning/cost.h"
#include "reports/cut_words.h"
#include "reports/gauge_report.h"
#include "reports/label_report.h"
#include "reports/lye_report.h"
#include "reports/plan_report.h"
#include "reports/text_table.h"
#include "units/printing.h"
#include "units/rounding.h"
#include "units/weight_text.h"

#include <algorithm>

namespace brimwright::reports {
namespace {

using planning::Ingredient;
using Side = TextTable::Side;

std::string grams(Mass mass) { return fixed(mass / gram, 1) + " g"; }
std::string ml(Volume volume) { return fixed(volume / millilitre, 1) + " ml"; }
std::string per_cent(Share share, int decimals = 1) {
  return fixed(share.in_percent(), decimals) + " %";
}
std::string density_text(Density density) {
  return fixed(density / gram_per_millilitre, 3) + " g/ml";
}

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
  std::string text = "Superfat: aim " + per_cent(weighing.aim) + ", comes out " +
                     per_cent(superfat.nominal) + ". Likely " +
                     lowest_in_words(superfat.likely_low) + " to " +
                     highest_in_words(superfat.likely_high) + " (19 batches in 20), at worst " +
                     lowest_in_words(superfat.low) + " to " + highest_in_words(superfat.high) + ".";
  if (superfat.doubts.empty()) return line(text);
  const auto& most = superfat.doubts.front();
  return line(text + " " + per_cent(most.of_variance, 0) + " of the doubt is " + most.cause + ".");
}

/// What is on the bench is not what the batter has, while some of the water is still in a jug.
std::string pot_words(const planning::Weighing& weighing) {
  const std::string pot = per_cent(weighing.pot_strength);
  return pot == per_cent(weighing.lye_strength) ? "" : " In its pot the lye is " + pot + " strong.";
}

std::string lye_lines(const planning::Weighing& weighing) {
  std::string text = superfat_line(weighing);
  text += line("Lye " + per_cent(weighing.lye_strength) + " strong = water " +
               fixed(weighing.water_to_alkali, 2) + " : 1 to pure alkali = water " +
               per_cent(weighing.water_of_fats) + " of the fats." + pot_words(weighing));
  return text;
}

std::string density_line(const planning::BatterTally& batter, const std::string& what) {
  return line(what + " at " + density_text(batter.density) + " (plain batter, computed from its " +
              "ingredients: " + density_text(batter.density_computed) + "). In the pieces " +
              grams(batter.in_pieces) + ", lost " + grams(batter.lost) + ".");
}

std::string layer_lines(const planning::PourTally& pour) {
  if (pour.layers.empty()) return "";
  TextTable table({Side::left, Side::right, Side::right, Side::right, Side::left});
  table.row({"Layer, lowest first", "depth", "each", "in its jug"});
  for (const auto& layer : pour.layers) {
    table.row({layer.name,
               fixed(layer.from / millimetre, 1) + " to " + fixed(layer.to / millimetre, 1) + " mm",
               grams(layer.mass_each), on_scale(layer.mass, layer.step)});
    for (const auto& colour : layer.colours)
      table.row(
          {"  + " + colour.name, "", "", on_scale(colour.weighed, colour.step), spoons(colour)});
  }
  return "\n" + table.text();
}

std::string pour_text(const planning::PourTally& pour, const planning::Run& run) {
  std::string text = title("POUR  " + run.pour.formula.name,
                           "make " + on_scale(pour.batter.weighing.batter, run.scales.fine.reads));
  text += ingredient_table(pour.batter.weighing);
  text += set_aside_lines(pour.batter.weighing, run.scales.fine.reads) +
          lye_lines(pour.batter.weighing) + heat_text(pour.batter.heat);
  text += layer_lines(pour);
  text += line("Pour to " + depth_text(run.pour.mould.curve.height() - pour.poured_to) +
               " below the brim, " + depth_text(pour.poured_to) +
               " deep: " + ml(pour.batter.volume_each) + ", " + grams(pour.batter.mass_each) +
               " each. A cavity holds " + ml(pour.brimful) + " to the brim; at the line 1 mm is " +
               ml(pour.surface * millimetre) + ".");
  text += density_line(pour.batter, "Base");
  return text + "\n";
}

std::string minutes(std::chrono::seconds time) {
  return trimmed(static_cast<double>(time.count()) / 60, 1) + " min";
}

/// Each way to the topping's visible volume, and how the hand compares with the geometry.
std::string visible_lines(const planning::VisibleTopping& visible, const planning::Run& run) {
  std::string text;
  if (visible.by_trials)
    text += line("By " +
                 counted(static_cast<std::int64_t>(run.pipe->trials->weighed.size()),
                         "weighed trial ", "weighed trials ") +
                 ml(*visible.by_trials) + ".");
  if (visible.by_beads) {
    std::string moves;
    for (const auto& laid : visible.moves)
      moves += (moves.empty() ? "" : " + ") + ml(laid.volume) +
               (laid.length > Length{} ? " (" + fixed(laid.length / centimetre, 1) + " cm)" : "");
    text += line(
        "By the beads of " + run.pipe->beads->tip.name + ": " + moves +
        (visible.hand_used ? ", times your hand's " + trimmed(visible.hand_used->factor, 2) : "") +
        ", " + ml(*visible.by_beads) + ".");
  }
  if (visible.by_envelope) text += line("By its envelope " + ml(*visible.by_envelope) + ".");
  if (visible.hand_suggested)
    text += line("Your hand lays down " + trimmed(visible.hand_suggested->factor, 2) +
                 " times the computed beads (" +
                 counted(visible.hand_suggested->trials, "trial", "trials") +
                 "): keep that as the tip's hand factor.");
  return text;
}

/// What is piped on: a piece, or a loaf that is cut into several.
std::string casts_counted(std::int64_t n, const planning::Pieces& pieces) {
  return pieces.per_cast > 1 ? counted(n, "loaf", "loaves") : counted(n, "piece", "pieces");
}

std::string whip_table_text(const planning::PipeTally& pipe, const planning::Run& run,
                            const planning::Pieces& pieces) {
  TextTable table({Side::left, Side::right, Side::right, Side::right});
  table.row({"Weigh-cup of " + ml(run.pipe->whip.holds) + " reads", "density", "overrun",
             pieces.per_cast > 1 ? "pipes loaves" : "pipes"});
  for (const auto& reading : pipe.readings)
    table.row({grams(reading.net) + (reading.is_planned ? "  as planned" : ""),
               density_text(reading.density), fixed(100 * reading.overrun, 0) + " %",
               std::to_string(reading.casts)});
  return "\n" + table.text();
}

std::string whip_lines(const planning::PipeTally& pipe) {
  std::string text;
  for (const auto& limit : pipe.limits) text += line(limit.text);
  if (pipe.piping) text += line("Piping takes " + minutes(*pipe.piping) + ".");
  if (pipe.lye)
    text += line("The lye is " + counted(pipe.lye->spoonfuls, "spoonful", "spoonfuls") + ", " +
                 std::to_string(pipe.lye->each.count()) +
                 " s each: " + minutes(pipe.lye->altogether) + ".");
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
            "make " + on_scale(pipe.batter.weighing.batter, run.scales.fine.reads));
  text += ingredient_table(pipe.batter.weighing);
  text += set_aside_lines(pipe.batter.weighing, run.scales.fine.reads) +
          lye_lines(pipe.batter.weighing) + heat_text(pipe.batter.heat);
  text += line("Pipe " + ml(pipe.batter.volume_each) + " each: " + ml(pipe.visible_each) +
               " to be seen and " + ml(pipe.in_headspace_each) + " in the recess below the brim; " +
               grams(pipe.batter.mass_each) + " at this whip, overrun " +
               fixed(100 * pipe.overrun, 0) + " %.");
  text += visible_lines(pipe.visible, run);
  text += density_line(pipe.batter, "Topping");
  if (pipe.loads) text += line(counted(*pipe.loads, "bag load.", "bag loads."));
  text += whip_table_text(pipe, run, plan.pieces);
  if (pipe.casts_now)
    text += line("At today's weigh-cup the bowl pipes " +
                 casts_counted(*pipe.casts_now, plan.pieces) + ".");
  return text + whip_lines(pipe) + "\n";
}

std::string dust_text(const std::vector<planning::DustTally>& dusts, const planning::Run& run) {
  if (dusts.empty()) return "";
  TextTable table({Side::left, Side::right, Side::left});
  for (const auto& dust : dusts)
    table.row({dust.name, on_scale(dust.make, run.scales.fine.reads),
               fixed(dust.each / gram, 3) + " g a piece" +
                   (dust.exposed ? ", over " + fixed(*dust.exposed / square_centimetre, 1) + " cm2"
                                 : "")});
  return "DUST\n" + table.text() + "\n";
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

std::string batch_size(const planning::Batch& batch, const planning::Pieces& pieces) {
  return counted(batch.pieces, "piece", "pieces") +
         (pieces.per_cast > 1 ? " in " + counted(batch.casts, "loaf", "loaves") : "");
}

/// The column of one batch, headed where there are several.
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

/// What is to stand ready for all batches together; nothing where there is one.
std::string whole_run_text(const planning::Plan& plan) {
  if (plan.pieces.batches == 1) return "";
  TextTable table({Side::left, Side::right, Side::right});
  const auto rows = [&](const std::string& head, const planning::BatterTally& batter) {
    table.row({head, on_scale(batter.weighing.batter, Mass(0.1 * gram)), ""});
    for (const auto& i : batter.weighing.ingredients) {
      const WeightText weight = weight_text(i.weighed, i.step, i.shown);
      table.row({"  " + i.name, weight.grams + " g", weight.ounces + " oz"});
    }
  };
  rows(plan.pipe ? "Base" : "Batter", plan.pour.batter);
  for (const auto& layer : plan.pour.layers)
    for (const auto& colour : layer.colours)
      table.row(
          {"  + " + colour.name + ", " + layer.name, on_scale(colour.weighed, colour.step), ""});
  if (plan.pipe) rows("Topping", plan.pipe->batter);
  return "THE WHOLE RUN NEEDS, in " + counted(plan.pieces.batches, "batch", "batches") + "\n" +
         table.text() +
         line("To have ready, not to weigh at once: each batch is weighed by itself.") + "\n";
}

std::string batch_limits_text(const planning::Plan& plan) {
  std::string text;
  for (const auto& limit : plan.batch_limits)
    if (limit.sets) text += wrapped(limit.text, "", "  ");
  return text;
}

std::string in_mm(Length length) { return fixed(length / millimetre, 1) + " mm"; }

std::string on_top_line(const planning::DecorationFit& fit) {
  std::string text = "Sits on a circle " + in_mm(*fit.contact) + " across";
  if (fit.peak_flat) text += " (the peak is flat over " + in_mm(*fit.peak_flat) + ")";
  return line(text + ", stands " + in_mm(*fit.stands_proud) + " proud, " + ml(fit.sunk) +
              " of it sunk.");
}

std::string buried_text(const planning::DecorationFit& fit) {
  TextTable table({Side::left, Side::right, Side::right, Side::right, Side::right});
  table.row({"Embed, with the least cover to", "floor", "wall", "pour line", "next one"});
  // A round hollow has no floor or no wall to keep clear of.
  const auto cover = [](Length gap) { return is_finite(gap) ? in_mm(gap) : std::string("-"); };
  for (std::size_t i = 0; i < fit.embeds.size(); ++i) {
    const auto& embed = fit.embeds[i];
    table.row({std::to_string(i + 1), cover(embed.floor_cover), cover(embed.wall_cover),
               in_mm(embed.line_cover), embed.apart ? in_mm(*embed.apart) : "-"});
  }
  return "\n" + table.text() +
         line("They take " + ml(fit.displaced) + " of the base's room, which is not poured.");
}

std::string decoration_text(const planning::Plan& plan, const planning::Run& run) {
  std::string text;
  for (const auto& decoration : plan.decorations) {
    text += title("PERCH  " + decoration.name,
                  "melt " + on_scale(decoration.make, run.scales.large.reads));
    std::string made = decoration.material + ", " +
                       beside_scale(decoration.make, run.scales.large.reads) + " by weight. " +
                       counted(decoration.casts, "cast", "casts");
    if (!decoration.mould.empty())
      made += " in " + decoration.mould + ": " +
              counted(decoration.cavity_fills, "cavity fill, ", "cavity fills, ") +
              counted(decoration.tray_fills, "tray fill", "tray fills");
    if (decoration.time) made += ", " + minutes(*decoration.time);
    text += line(made + "; " + ml(decoration.volume_each) + ", " + grams(decoration.mass_each) +
                 " each, " + decoration.count_text + ".");
    if (decoration.fit.contact) text += on_top_line(decoration.fit);
    if (!decoration.fit.embeds.empty()) text += buried_text(decoration.fit);
    text += "\n";
  }
  return text;
}

std::string one_more_lines(const planning::CutTally& cut) {
  std::string text;
  for (const auto& more : cut.one_more)
    text += line("Cut to " + more.text + " along " + name_of(more.direction) + ", a loaf gives " +
                 std::to_string(more.bars) + ".");
  return text;
}

/// What of each layer a bar has: one figure where all bars have the same.
std::string layers_of_bars(const planning::Plan& plan) {
  const auto& bars = plan.cut->bars;
  std::string text;
  for (std::size_t i = 0; i < plan.pour.layers.size(); ++i) {
    Volume least = bars.front().layers[i], most = least;
    for (const auto& bar : bars) {
      least = std::min(least, bar.layers[i]);
      most = std::max(most, bar.layers[i]);
    }
    const bool all_alike = most - least < 0.05 * millilitre;
    text += (text.empty() ? "" : ", ") + plan.pour.layers[i].name + " " + ml(least) +
            (all_alike ? "" : " to " + ml(most));
  }
  return text.empty() ? "" : line("A bar has " + text + ".");
}

std::string cut_text(const planning::Plan& plan) {
  if (!plan.cut) return "";
  const auto& cut = *plan.cut;
  const auto& off = plan.piece.cut_off;
  const auto bars = static_cast<std::int64_t>(cut.bars.size());
  std::string text = title("CUT  " + counted(bars, "bar", "bars") + " from each loaf",
                           counted(plan.pieces.casts, "loaf", "loaves"));
  const auto& bar = cut.bars.front();
  text += line(std::to_string(cut.rows) + " x " + std::to_string(cut.columns) +
               ", the columns along " + name_of(cut.along) + "; the first is " + in_mm(bar.along) +
               " x " + in_mm(bar.across) + ", " + in_mm(bar.height) + " high.");
  text += line(bar_weights(plan.piece));
  text += line("Of a loaf " + grams(off.offcuts) + " are offcuts, " + grams(off.kerf) +
               " go in the cuts and " + grams(off.planing) + " are planed off.");
  text += layers_of_bars(plan);
  if (cut.other_way)
    text +=
        line("With the bars the other way round it gives " + std::to_string(*cut.other_way) + ".");
  return text + one_more_lines(cut) + "\n";
}

std::string cost_text(const planning::Plan& plan) {
  if (!plan.cost) return line("Cost: the run gives no prices (section \"money\").");
  const auto& cost = *plan.cost;
  if (!planning::is_any_priced(cost))
    return line("Cost: unpriced, as no price is given of anything in it.");
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

std::string parts_table(const planning::PieceTally& piece) {
  TextTable table({Side::left, Side::right, Side::right});
  table.row({"", "fresh", "cured"});
  const auto cured = [](const std::optional<Mass>& mass) { return mass ? grams(*mass) : "?"; };
  for (const auto& part : piece.parts) table.row({part.name, grams(part.fresh), cured(part.cured)});
  table.rule();
  table.row({piece.bars.empty() ? "One piece" : "One bar on average", grams(piece.fresh),
             cured(piece.cured)});
  if (piece.bars.empty()) return table.text();
  const auto at_least = [](const std::optional<Mass>& mass) {
    return mass ? grams(rounded_down(*mass, 0.1 * gram)) : "?";
  };
  const auto& lightest = piece.bars[piece.lightest_bar];
  table.row({"The lightest bar", at_least(lightest.fresh), at_least(lightest.cured)});
  return table.text();
}

std::string size_line(const planning::PieceTally& piece, const planning::Plan& plan) {
  if (piece.size)
    return line("For its box: " + depth_text(piece.size->width) + " by " +
                depth_text(piece.size->depth) + ", " + depth_text(piece.size->height) + " tall.");
  if (plan.cut) return "";
  return line("Its height is not known: trials alone do not say the topping's shape.");
}

std::string piece_text(const planning::Plan& plan) {
  std::string text = "A PIECE\n" + cost_text(plan) + "\n" + parts_table(plan.piece);
  if (!plan.piece.cured)
    text += line("The cured weight needs \"water_lost_in_cure\" or \"drying\" in each formula.");
  if (!plan.label) text += line("Label: the run asks for none (section \"label\").");
  return text + size_line(plan.piece, plan) + cure_text(plan) + "\n";
}

std::string remark_text(const Remark& remark) {
  const auto mark = [](Severity severity) {
    if (severity == Severity::danger) return "!! ";
    return severity == Severity::caution ? " ! " : " - ";
  };
  return wrapped(remark.text, mark(remark.severity), "   ");
}

std::string dangers_text(const planning::Plan& plan) {
  std::string text;
  for (const auto& remark : plan.cautions)
    if (remark.severity == Severity::danger) text += remark_text(remark);
  return text.empty() ? "" : text + "\n";
}

/// What is about this very batch, and apart from it what holds at any bench.
std::string cautions_text(const planning::Plan& plan) {
  std::string of_batch, of_bench;
  for (const auto& caution : plan.cautions)
    if (caution.severity != Severity::danger)
      (caution.is_general ? of_bench : of_batch) += remark_text(caution);
  return (of_batch.empty() ? "" : "WATCH OUT\n" + of_batch + "\n") + "AT THE BENCH\n" + of_bench +
         "\n";
}

std::string first_aid_text() {
  std::string text = "FIRST AID: LYE AND RAW BATTER\n";
  for (const auto& line : planning::first_aid())
    text += wrapped(line.what + ": " + line.to_do, " + ", "   ");
  return text + wrapped(planning::first_aid_source(), "   ", "   ");
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
  text += wrapped(moulds_line, "", "  ");
  if (pieces.batches > 1) {
    std::string sizes;
    for (const auto& batch : plan.batches)
      sizes += (sizes.empty() ? "" : ", ") + counted(batch.count(), "batch", "batches") + " of " +
               batch_size(batch, pieces);
    text += wrapped("Made in " + sizes + ".", "", "  ") + batch_limits_text(plan);
  }
  for (const auto& around : plan.around)
    if (around.sell > pieces.sell &&
        (around.fillings != pieces.fillings || around.batches != pieces.batches))
      text += wrapped("One more, " + around.text, "", "  ");
  if (pieces.to_stock > 0)
    text += wrapped(counted(pieces.to_stock, "piece goes", "pieces go") + " to stock.", "", "  ");
  return text + "\n";
}

}  // namespace

std::string plan_text(const planning::Run& run, const planning::Plan& plan) {
  std::string batches;
  for (const auto& batch : plan.batches) batches += batch_text(batch, plan, run);
  return dangers_text(plan) + head_text(plan, run) + batches + whole_run_text(plan) +
         decoration_text(plan, run) + dust_text(plan.dust, run) + cut_text(plan) +
         bottles_text(plan.bottles) + piece_text(plan) + label_text(plan) + cautions_text(plan) +
         first_aid_text();
}

}  // namespace brimwright::reports
