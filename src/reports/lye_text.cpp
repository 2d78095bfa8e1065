#include "reports/lye_report.h"
#include "reports/plan_words.h"
#include "reports/text_table.h"
#include "units/printing.h"
#include "units/weight_text.h"
#include "units/wording.h"

namespace brimwright::reports {
namespace {

/// "25 min", or hours once minutes say nothing.
std::string about(std::chrono::minutes time) {
  if (time.count() < 90) return std::to_string(time.count()) + " min";
  return in_hours(time);
}

std::string cooling_line(const chemistry::CoolingTime& cooling) {
  return line("In " + chemistry::name_of(cooling.where) + " it is cool enough after about " +
              about(cooling.shortest) + " to " + about(cooling.longest) +
              ", depending on jug and stirring.");
}

std::string peak_words(const chemistry::HeatFindings& heat) {
  const std::string from =
      ", from water at " + in_both_scales(heat.water_at) + (heat.assumed ? " (assumed)" : "");
  if (!heat.is_peak_known)
    return "The lye solution warms as the KOH solution is diluted; how far is not known here.";
  if (heat.is_of_solution)
    return "Diluted, the lye solution may warm to " + in_both_scales(heat.peak.peak) + from + ".";
  return "Fresh lye solution can reach " + in_both_scales(heat.peak.peak) +
         " if all the alkali goes in at once" + from + "; it boils at " +
         in_both_scales(heat.peak.boiling) + ".";
}

}  // namespace

std::string heat_text(const chemistry::HeatFindings& heat) {
  std::string text = line(peak_words(heat));
  for (const auto& cooling : heat.cooling) text += cooling_line(cooling);
  if (heat.at_pour)
    text += line("Lye solution and fats together come to " + in_both_scales(*heat.at_pour) +
                 "; then the batter warms by itself.");
  return text;
}

std::string pot_text(const planning::LyePot& pot,
                     const std::optional<chemistry::HeatFindings>& heat) {
  using Side = TextTable::Side;
  TextTable table({Side::left, Side::right});
  table.row({"Water", on_scale(pot.water, pot.water_step)});
  for (const auto& alkali : pot.alkalis)
    table.row({alkali.name, on_scale(alkali.weighed, alkali.step, Rounded::down)});
  table.rule();
  table.row({"Lye solution, " + fixed(pot.strength.in_percent(), 1) + " % strong",
             on_scale(pot.lye, pot.lye_step, Rounded::up)});
  std::string text = table.text();
  for (const auto& share : pot.shares)
    text += line(
        share.batter + ": weigh out " + on_scale(share.lye, pot.share_step, Rounded::down) + " (" +
        beside_scale(share.lye, pot.share_step, Rounded::down) + ") of the lye solution" +
        (share.top_up > Mass{}
             ? ", then stir in " + on_scale(share.top_up, share.top_up_step) + " of plain water"
             : "") +
        "; superfat as weighed " + fixed(share.superfat.nominal.in_percent(), 1) + " %, likely " +
        chemistry::lowest_in_words(share.superfat.likely_low) + " to " +
        chemistry::highest_in_words(share.superfat.likely_high) + ", at worst " +
        chemistry::lowest_in_words(share.superfat.low) + ", at most " +
        chemistry::highest_in_words(share.superfat.high) + ".");
  if (heat) text += heat_text(*heat);
  return text +
         line(
             pot.full_pot
                 ? "When it has cooled, top up with plain water until pot and lye solution weigh " +
                       on_scale(*pot.full_pot, pot.lye_step, Rounded::up) +
                       " (some has evaporated), then share it out."
                 : "When it has cooled, top up with plain water to " +
                       on_scale(pot.lye, pot.lye_step, Rounded::up) +
                       " (some has evaporated), then share it out.");
}

std::string lye_pot_text(const planning::Batch& batch) {
  if (!batch.lye_pot) return "";
  return "ONE POT OF LYE SOLUTION FOR ALL BATTERS OF A BATCH\n" +
         pot_text(*batch.lye_pot, batch.pot_heat) +
         line(
             "This takes the place of the lye solutions above: make this one or those, not both.") +
         "\n";
}

}  // namespace brimwright::reports
