#include "reports/batch_sheet.h"

#include "reports/vessel_filling.h"
#include "units/printing.h"
#include "units/weight_text.h"
#include "units/wording.h"

#include <utility>

namespace brimwright::reports {
namespace {

template <class Block>
void add(Sheet& sheet, Block block) {
  sheet.blocks.push_back(std::move(block));
}

}  // namespace

std::string casts_on_sheet(std::int64_t casts, const planning::Run& run) {
  return run.cut ? counted(casts, "loaf", "loaves") : counted(casts, "piece", "pieces");
}

std::string held_to_line(const planning::Run& run, const planning::PourTally& pour) {
  const Volume holds = run.pour.mould.curve.volume_below(pour.poured_to);
  const Volume taken = holds - pour.batter.volume_each;
  std::string text = "A cavity holds " + fixed_ml(holds) + " to it";
  if (taken > 0.05 * millilitre)
    text += ", of which the embeds displace " + fixed_ml(taken) + " and the batter fills " +
            fixed_ml(pour.batter.volume_each);
  return text;
}

void add_weigh_cup(const planning::PipeTally& pipe, const planning::Run& run, Sheet& sheet) {
  const auto& readings = pipe.readings;
  if (readings.empty()) return;
  const std::string cup = fixed_ml(run.pipe->whip.holds, 0);
  add(sheet, SheetStep{"Whipped, with its fragrance: fill the weigh-cup of " + cup});
  SheetGrid grid{{{"Cup weighs", "Density", "Overrun", "Enough for"}}, 0};
  for (const auto& reading : readings) {
    if (reading.is_planned) grid.marked = grid.rows.size();
    grid.rows.push_back(
        {on_display(reading.net, run.scales.fine.step) + (reading.is_planned ? " (planned)" : ""),
         fixed_g_per_ml(reading.density, 3), fixed(100 * reading.overrun, 0) + " %",
         casts_on_sheet(reading.casts, run)});
  }
  add(sheet, std::move(grid));
}

void add_piping(const planning::PipeTally& pipe, const planning::Run& run, Sheet& sheet) {
  add(sheet, SheetWords{"Pipe " + fixed_ml(pipe.batter.volume_each, 0) + " on each: " +
                            on_display(pipe.batter.mass_each, run.scales.large.step) +
                            " at the planned whipped density.",
                        true});
  for (const auto& limit : pipe.limits) add(sheet, SheetWords{limit.text});
  if (pipe.piping) add(sheet, SheetWords{"Piping takes " + in_minutes(*pipe.piping) + "."});
  if (pipe.loads) add(sheet, SheetCounts{"Bag loads", *pipe.loads});
}

void add_places(const planning::DecorationFit& fit, Sheet& sheet) {
  SheetGrid grid{{{"Embed", "above floor", "from wall", "below line"}}, 0};
  const auto gap = [](Length length) { return is_finite(length) ? in_mm(length) : "-"; };
  for (std::size_t i = 0; i < fit.embeds.size(); ++i) {
    const auto& embed = fit.embeds[i];
    grid.rows.push_back({std::to_string(i + 1), gap(embed.floor_cover), gap(embed.wall_cover),
                         gap(embed.line_cover)});
  }
  add(sheet, std::move(grid));
}

void add_blanks(const std::vector<planning::Blank>& blanks, planning::Blank::When when,
                std::size_t part, Sheet& sheet) {
  using Kind = planning::Blank::Kind;
  constexpr int weighings = 3;  // room for so many
  SheetBlanks on_sheet;
  for (const auto& blank : blanks) {
    if (blank.when != when || blank.part != part) continue;
    const SheetBlank line{blank.words, blank.unit, blank.planned};
    on_sheet.blanks.insert(on_sheet.blanks.end(), blank.kind == Kind::weighing ? weighings : 1,
                           line);
  }
  if (!on_sheet.blanks.empty()) add(sheet, std::move(on_sheet));
}

}  // namespace brimwright::reports
