#include "planning/hours_in_mould.h"
#include "reports/batch_text.h"
#include "reports/cut_words.h"
#include "reports/gauge_report.h"
#include "reports/label_report.h"
#include "reports/lye_report.h"
#include "reports/plan_report.h"
#include "reports/plan_words.h"
#include "reports/text_table.h"
#include "units/rounding.h"
#include "units/weight_text.h"
#include "units/wording.h"

#include <algorithm>

namespace brimwright::reports {
namespace {

using Side = TextTable::Side;

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

std::string on_top_line(const planning::DecorationFit& fit) {
  std::string text = "Sits on a circle " + fixed_mm(*fit.contact) + " across";
  if (fit.peak_flat) text += " (the peak is flat over " + fixed_mm(*fit.peak_flat) + ")";
  return line(text + ", sticks out " + fixed_mm(*fit.stands_proud) + "; " + fixed_ml(fit.sunk) +
              " of it is pressed in.");
}

std::string buried_text(const planning::DecorationFit& fit) {
  TextTable table({Side::left, Side::right, Side::right, Side::right, Side::right});
  table.row({"Embed, with the least cover to", "floor", "wall", "pour line", "next one"});
  // A round cavity has no floor or no wall to keep clear of.
  const auto cover = [](Length gap) { return is_finite(gap) ? fixed_mm(gap) : std::string("-"); };
  for (std::size_t i = 0; i < fit.embeds.size(); ++i) {
    const auto& embed = fit.embeds[i];
    table.row({std::to_string(i + 1), cover(embed.floor_cover), cover(embed.wall_cover),
               fixed_mm(embed.line_cover), embed.apart ? fixed_mm(*embed.apart) : "-"});
  }
  return "\n" + table.text() +
         line("They displace " + fixed_ml(fit.displaced) + " of base, which is not poured.");
}

std::string bought_text(const planning::DecorationTally& decoration) {
  const std::string each = decoration.mass_each > Mass{}
                               ? ", " + fixed_grams(decoration.mass_each) + " each"
                               : ", weight not given";
  return title("DECORATE  " + decoration.name, counted(decoration.casts, "piece", "pieces")) +
         line(decoration.material + ", bought, spares included" + each + ", " +
              decoration.count_text + ".") +
         "\n";
}

std::string decoration_text(const planning::Plan& plan, const planning::Run& run) {
  std::string text;
  for (const auto& decoration : plan.decorations) {
    if (decoration.is_bought) {
      text += bought_text(decoration);
      continue;
    }
    text += title("DECORATE  " + decoration.name,
                  "melt " + on_scale(decoration.make, run.scales.large.step));
    std::string made = decoration.material + ", " +
                       beside_scale(decoration.make, run.scales.large.step) + " by weight. Cast " +
                       std::to_string(decoration.casts);
    if (!decoration.mould.empty())
      made += " in " + decoration.mould + ": " +
              counted(decoration.cavity_fills, "cavity fill, ", "cavity fills, ") +
              counted(decoration.tray_fills, "tray fill", "tray fills");
    if (decoration.time) made += ", " + in_minutes(*decoration.time);
    text += line(made + "; " + fixed_ml(decoration.volume_each) + ", " +
                 fixed_grams(decoration.mass_each) + " each, " + decoration.count_text + ".");
    if (decoration.fit.contact) text += on_top_line(decoration.fit);
    if (!decoration.fit.embeds.empty()) text += buried_text(decoration.fit);
    text += "\n";
  }
  return text;
}

std::string one_more_lines(const planning::CutTally& cut) {
  std::string text;
  for (const auto& more : cut.one_more)
    text += line("Cut to " + more.text + " along " + name_of(more.direction) + ": " +
                 counted(more.bars, "bar", "bars") + " from each loaf.");
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
    text += (text.empty() ? "" : ", ") + plan.pour.layers[i].name + " " + fixed_ml(least) +
            (all_alike ? "" : " to " + fixed_ml(most));
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
  text +=
      line(std::to_string(cut.rows) + " x " + std::to_string(cut.columns) + ", the columns along " +
           name_of(cut.along) + "; the first is " + fixed_mm(bar.along) + " x " +
           fixed_mm(bar.across) + ", " + fixed_mm(bar.height) + " high.");
  text += line(bar_weights(plan.piece));
  text += line("Of a loaf " + fixed_grams(off.offcuts) + " are offcuts, " + fixed_grams(off.kerf) +
               " go in the cuts and " + fixed_grams(off.planing) + " are planed off.");
  text += layers_of_bars(plan);
  if (cut.other_way)
    text += line("With the bars the other way round a loaf gives " +
                 std::to_string(*cut.other_way) + ".");
  return text + one_more_lines(cut) + "\n";
}

std::string cost_text(const planning::Plan& plan, const planning::Run& run) {
  if (!plan.cost) return line("No prices in the run (section \"money\"), so no cost.");
  const auto& cost = *plan.cost;
  if (!planning::is_any_priced(cost))
    return line("Nothing in the run has a price (section \"money\"), so no cost.");
  const std::string& code = cost.total.currency.code;
  TextTable table({Side::left, Side::right, Side::right});
  for (const auto& l : cost.lines)
    table.row({material_name(l.name, run),
               l.pieces > 0 ? counted(l.pieces, "piece") : fixed_grams(l.used),
               l.is_from_tap ? "from the tap"
               : l.cost      ? amount_text(*l.cost) + " " + code
                             : "unpriced"});
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
  const auto cured = [](const std::optional<Mass>& mass) {
    return mass ? fixed_grams(*mass) : "?";
  };
  for (const auto& part : piece.parts)
    table.row({part.name, fixed_grams(part.fresh), cured(part.cured)});
  table.rule();
  table.row({piece.bars.empty() ? "One piece" : "One bar on average", fixed_grams(piece.fresh),
             cured(piece.cured)});
  if (piece.bars.empty()) return table.text();
  const auto at_least = [](const std::optional<Mass>& mass) {
    return mass ? fixed_grams(rounded_down(*mass, 0.1 * gram)) : "?";
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
  for (const auto& decoration : plan.decorations)
    if (decoration.is_bought)
      return line("Its size is not known: " + decoration.name +
                  ", which is bought, has no shape here.");
  return line("Its height is not known: weighed trials alone do not give the topping's shape.");
}

std::string piece_text(const planning::Plan& plan, const planning::Run& run) {
  std::string text = "A PIECE\n" + cost_text(plan, run) + "\n" + parts_table(plan.piece);
  if (!plan.piece.cured)
    text += line("The cured weight needs \"water_lost_in_cure\" or \"drying\" in each formula.");
  if (!plan.label) text += line("No label in the run (section \"label\").");
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
  return (of_batch.empty() ? "" : "CAUTIONS\n" + of_batch + "\n") + "AT THE BENCH\n" + of_bench +
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
  if (const auto hours = planning::hours_in_mould(run))
    moulds_line += ", " + in_hours(*hours) + " each before unmoulding";
  text += wrapped(moulds_line, "", "  ");
  if (!run.from_studio.sections.empty())
    text += wrapped("From the studio: " + studio_words(run.from_studio) + ".", "", "  ");
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

std::string plan_text(const planning::Run& run, const planning::Plan& plan,
                      const BatchCodes& codes) {
  std::string batches;
  for (const auto& batch : plan.batches) batches += batch_text(batch, plan, run);
  return dangers_text(plan) + head_text(plan, run) + batches + whole_run_text(plan) +
         decoration_text(plan, run) + dust_text(plan.dust, run) + cut_text(plan) +
         bottles_text(plan.bottles) + piece_text(plan, run) + label_text(plan, codes) +
         cautions_text(plan) + first_aid_text();
}

}  // namespace brimwright::reports
