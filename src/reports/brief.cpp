#include "reports/brief.h"

#include "reports/batch_text.h"
#include "reports/gauge_report.h"
#include "reports/plan_words.h"
#include "reports/text_table.h"
#include "units/printing.h"
#include "units/weight_text.h"
#include "units/wording.h"

#include <algorithm>
#include <vector>

namespace brimwright::reports {
namespace {

using Lines = std::vector<std::string>;
using Side = TextTable::Side;

/// One batter of a batch, as it is weighed.
struct Weighed {
  std::string act;  // "POUR", "PIPE"
  const planning::BatterTally* batter;
  std::string name;      // of its formula
  std::string how_many;  // whippings of a batch; empty for one
};

std::vector<Weighed> batters_of(const planning::Batch& batch, const planning::Run& run) {
  std::vector<Weighed> all = {{"POUR", &batch.pour.batter, run.pour.formula.name, ""}};
  for (const auto& whipping : batch.whippings) {
    const bool is_one = batch.whippings.size() == 1 && whipping.count == 1;
    all.push_back({"PIPE", &whipping.pipe.batter, run.pipe->formula.name,
                   is_one ? "" : std::to_string(whipping.count) + " x "});
  }
  return all;
}

std::string weight_of(const planning::Ingredient& ingredient) {
  return on_scale(ingredient.weighed, ingredient.step, ingredient.shown);
}

std::string made(const Weighed& weighed, const planning::Run& run) {
  return weighed.how_many + on_scale(weighed.batter->weighing.batter, run.scales.fine.step);
}

/// Over the whole page, as the plan has it.
std::string one_batter_text(const Weighed& weighed, const planning::Run& run) {
  TextTable table({Side::left, Side::right, Side::right, Side::left});
  for (const auto& i : weighed.batter->weighing.ingredients) {
    const WeightText weight = weight_text(i.weighed, i.step, i.shown);
    table.row({i.name, weight.grams + " g", weight.ounces + " oz", "into the " + i.goes_into});
  }
  return title(weighed.act + "  " + weighed.name, "make " + made(weighed, run)) + table.text();
}

constexpr std::size_t gap = 2, column = (page_width - gap) / 2;

/// `text` in lines of at most `width`, broken at blanks; a longer word stands in a line alone.
Lines broken(const std::string& text, std::size_t width) {
  Lines lines(1);
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find(' ', at), text.size());
    const std::string word = text.substr(at, end - at);
    if (!lines.back().empty() && shown_width(lines.back()) + 1 + shown_width(word) > width)
      lines.emplace_back();
    lines.back() += (lines.back().empty() ? "" : " ") + word;
    at = end + 1;
  }
  return lines;
}

std::string padded(const std::string& text, std::size_t width) {
  const std::size_t used = shown_width(text);
  return used < width ? text + std::string(width - used, ' ') : text;
}

/// A row of a column: what stands right goes with the first line of what stands left, which begins
/// after `indent`.
void put_row(Lines& lines, const std::string& indent, const std::string& left,
             const std::string& right) {
  const std::size_t room = column - shown_width(right) - gap;
  const Lines name = broken(left, room - indent.size());
  lines.push_back(padded(indent + name.front(), room) + std::string(gap, ' ') + right);
  for (std::size_t i = 1; i < name.size(); ++i) lines.push_back(indent + "  " + name[i]);
}

Lines column_of(const Weighed& weighed, const planning::Run& run) {
  Lines lines;
  put_row(lines, "", weighed.act + "  " + weighed.name, made(weighed, run));
  for (const auto& i : weighed.batter->weighing.ingredients)
    put_row(lines, "  ", i.name, weight_of(i));
  return lines;
}

std::string side_by_side(const Lines& left, const Lines& right) {
  std::string text;
  for (std::size_t i = 0; i < std::max(left.size(), right.size()); ++i) {
    const std::string first = i < left.size() ? left[i] : "",
                      second = i < right.size() ? right[i] : "";
    text += second.empty() ? first : padded(first, column + gap) + second;
    text += "\n";
  }
  return text;
}

std::string weights_text(const std::vector<Weighed>& batters, const planning::Run& run) {
  if (batters.size() == 1) return one_batter_text(batters.front(), run);
  std::string text;
  for (std::size_t i = 0; i < batters.size(); i += 2)
    text += side_by_side(column_of(batters[i], run),
                         i + 1 < batters.size() ? column_of(batters[i + 1], run) : Lines());
  return text;
}

std::string superfat_text(const std::vector<Weighed>& batters) {
  using chemistry::highest_in_words, chemistry::lowest_in_words;
  std::string text;
  for (const auto& [act, batter, name, how_many] : batters) {
    const auto& superfat = batter->weighing.superfat;
    text += line("Superfat of " + name + ": " + fixed_percent(superfat.nominal) + ", likely " +
                 lowest_in_words(superfat.likely_low) + " to " +
                 highest_in_words(superfat.likely_high) + ", at worst " +
                 lowest_in_words(superfat.low) + ".");
  }
  return text;
}

std::string jugs_text(const planning::PourTally& pour) {
  std::string text;
  for (const auto& layer : pour.layers) {
    text += (text.empty() ? "Jugs, lowest layer first: " : "; ") + layer.name + " " +
            on_scale(layer.mass, layer.step);
    for (const auto& colour : layer.colours)
      text += " + " + on_scale(colour.weighed, colour.step) + " " + colour.name;
  }
  return text.empty() ? "" : line(text + ".");
}

/// The pot that stands for the batters' own lyes; whoever shares it must have put back the water
/// that it lost, or each share is too strong.
std::string pot_text(const planning::Batch& batch) {
  if (!batch.lye_pot) return "";
  const auto& pot = *batch.lye_pot;
  std::string text =
      "Or one pot of lye solution for all, not both: " + on_scale(pot.water, pot.water_step) +
      " of water";
  for (const auto& alkali : pot.alkalis)
    text += ", " + on_scale(alkali.weighed, alkali.step, Rounded::down) + " of " + alkali.name;
  text += ". Cooled, top up with plain water until " +
          (pot.full_pot
               ? "pot and lye solution weigh " + on_scale(*pot.full_pot, pot.lye_step, Rounded::up)
               : "the lye solution weighs " + on_scale(pot.lye, pot.lye_step, Rounded::up)) +
          ". Then of the lye solution";
  for (const auto& share : pot.shares)
    text += (&share == &pot.shares.front() ? " " : "; ") +
            on_scale(share.lye, pot.share_step, Rounded::down) + " for " + share.batter +
            (share.top_up > Mass{}
                 ? " and " + on_scale(share.top_up, share.top_up_step) + " of plain water"
                 : "");
  return line(text + ".");
}

std::string each_text(const planning::Batch& batch, const planning::Run& run) {
  const auto& pour = batch.pour;
  std::string text = "Pour to " + depth_text(run.pour.mould.curve.height() - pour.poured_to) +
                     " below the brim, " + fixed_grams(pour.batter.mass_each) + " each.";
  if (!batch.whippings.empty()) {
    const auto& pipe = batch.whippings.front().pipe.batter;
    text += " Pipe " + fixed_ml(pipe.volume_each) + " each, " + fixed_grams(pipe.mass_each) +
            " at this whipped density.";
  }
  return line(text);
}

std::string dusts_text(const std::vector<planning::DustTally>& dusts, const planning::Run& run) {
  std::string text;
  for (const auto& dust : dusts)
    text += (text.empty() ? "Dust: " : ", ") + dust.name + " " +
            on_scale(dust.make, run.scales.fine.step);
  return text.empty() ? "" : line(text + ".");
}

std::string batch_part(const planning::Batch& batch, const planning::Plan& plan,
                       const planning::Run& run) {
  const bool is_alone = plan.pieces.batches == 1;
  const auto batters = batters_of(batch, run);
  std::string text;
  if (!is_alone)
    text = "\n" + title("ONE BATCH OF " + batch_size(batch, plan.pieces),
                        "made " + counted(batch.count(), "time", "times"));
  return text + weights_text(batters, run) + superfat_text(batters) + pot_text(batch) +
         jugs_text(batch.pour) + each_text(batch, run) +
         dusts_text(is_alone ? plan.dust : batch.dust, run);
}

std::string decorations_text(const planning::Plan& plan, const planning::Run& run) {
  std::string text;
  for (const auto& decoration : plan.decorations)
    text += line(decoration.name + ": " +
                 (decoration.is_bought
                      ? std::to_string(decoration.casts) + " bought"
                      : "melt " + on_scale(decoration.make, run.scales.large.step) + " of " +
                            decoration.material + " for " + std::to_string(decoration.casts)) +
                 ", " + decoration.count_text + ".");
  return text.empty() ? "" : "DECORATION\n" + text;
}

std::string cut_line(const planning::Plan& plan) {
  if (!plan.cut) return "";
  return line("Cut each loaf into " +
              counted(static_cast<std::int64_t>(plan.cut->bars.size()), "bar.", "bars."));
}

std::string dangers_text(const planning::Plan& plan) {
  std::string text;
  for (const auto& caution : plan.cautions)
    if (caution.severity == Severity::danger) text += wrapped(caution.text, "!! ", "   ");
  return text.empty() ? "" : text + "\n";
}

std::string not_shown_text(const planning::Plan& plan) {
  const auto of = [&](Severity severity) {
    return std::count_if(plan.cautions.begin(), plan.cautions.end(),
                         [&](const auto& caution) { return caution.severity == severity; });
  };
  return wrapped(
      "Not shown here: " + counted(of(Severity::caution), "caution", "cautions") + ", " +
          counted(of(Severity::note), "note", "notes") +
          ", how warm the lye solution gets, limits, volumes, cost, cure, label and first aid.",
      "", "");
}

}  // namespace

std::string plan_brief(const planning::Run& run, const planning::Plan& plan) {
  const auto& pieces = plan.pieces;
  std::string text =
      dangers_text(plan) + title(plan.name, counted(pieces.sell, "piece", "pieces") +
                                                " to sell, make " + std::to_string(pieces.make));
  for (const auto& batch : plan.batches) text += batch_part(batch, plan, run);
  if (plan.pieces.batches > 1) text += "\n";
  return text + decorations_text(plan, run) + cut_line(plan) + not_shown_text(plan);
}

}  // namespace brimwright::reports
