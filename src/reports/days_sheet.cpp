#include "reports/days_report.h"
#include "reports/vessel_filling.h"
#include "units/printing.h"
#include "units/shown_text.h"
#include "units/weight_text.h"
#include "units/wording.h"

#include <filesystem>
#include <optional>
#include <utility>

namespace brimwright::reports {
namespace {

std::string when_and_what(const DaysReport& report) {
  std::string text;
  for (const auto& asked : report.asked) {
    text += (text.empty() ? "" : " ") + asked.name + ": " + counted(asked.pieces, "piece");
    if (asked.due) text += ", due " + weekday_and_date(*asked.due);
    text += ".";
    if (asked.is_late)
      text += " THE DUE DAY CANNOT BE KEPT: " + std::to_string(asked.in_time) +
              " in time, the rest on " + weekday_and_date(*asked.rest) + ".";
  }
  return text;
}

std::string names_of(const DaysReport& report) {
  std::string names;
  for (const auto& asked : report.asked) names += (names.empty() ? "" : " + ") + asked.name;
  return names;
}

WeighList pot_list(const planning::LyePot& pot) {
  WeighList list{.rows = {}, .title = "One pot of lye solution", .stays_whole = true};
  list.before.push_back({alkali_into_water, true});
  list.rows.push_back({"Water", "", on_scale(pot.water, pot.water_step),
                       beside_scale(pot.water, pot.water_step),
                       on_display(pot.water, pot.lye_step, Rounded::down)});
  Mass all = pot.water;
  for (const auto& alkali : pot.alkalis) {
    all += alkali.weighed;
    WeighRow row{alkali.name, "", on_scale(alkali.weighed, alkali.step, Rounded::down),
                 beside_scale(alkali.weighed, alkali.step, Rounded::down),
                 on_display(all, pot.lye_step, Rounded::down)};
    if (alkali.weighings > 1)
      row.note =
          "too much for the scale: weigh in " + std::to_string(alkali.weighings) + " portions";
    list.rows.push_back(std::move(row));
  }
  const std::string full = pot.full_pot ? "until pot and lye solution weigh " +
                                              on_scale(*pot.full_pot, pot.lye_step, Rounded::up)
                                        : "to " + on_scale(pot.lye, pot.lye_step, Rounded::up);
  list.after.push_back(
      {"When it has cooled, top up with plain water " + full + " (some has evaporated).", true});
  return list;
}

/// Each share with what is stirred into it, to be weighed out of the cooled pot.
WeighList shares_list(const DaysReport::Lye& lye) {
  const planning::LyePot& pot = lye.pot;
  WeighList list{
      .rows = {}, .title = "Its shares, by weight, when it has cooled", .stays_whole = true};
  const auto put = [&](const std::string& name, const std::string& note, Mass mass, Mass step,
                       Rounded towards, bool keeps_next) {
    list.rows.push_back({name, note, on_scale(mass, step, towards),
                         beside_scale(mass, step, towards), "", false, keeps_next});
  };
  for (std::size_t i = 0; i < pot.shares.size(); ++i) {
    const auto& share = pot.shares[i];
    const auto& additives = lye.shares[i].additives;
    put(share.batter,
        "superfat as weighed " + fixed(share.superfat.nominal.in_percent(), 1) + " %, likely " +
            chemistry::lowest_in_words(share.superfat.likely_low) + " to " +
            chemistry::highest_in_words(share.superfat.likely_high),
        share.lye, pot.share_step, Rounded::down, share.top_up > Mass{} || !additives.empty());
    if (share.top_up > Mass{})
      put("Plain water, stirred in", "into this share", share.top_up, share.top_up_step,
          Rounded::nearest, !additives.empty());
    for (std::size_t a = 0; a < additives.size(); ++a)
      put(additives[a].name, "into this share, not into the pot", additives[a].weighed,
          additives[a].step, additives[a].shown, a + 1 < additives.size());
  }
  list.after.push_back(
      {"This takes the place of the lye solutions on the sheets of these batches: "
       "make this one or those, not both."});
  return list;
}

void add_lye(Sheet& sheet, const DaysReport::Lye& lye) {
  for (const Remark& remark : remarks_of(lye))
    if (remark.severity == Severity::caution)
      sheet.blocks.emplace_back(SheetWarning{remark.severity, remark.text});
  sheet.blocks.emplace_back(pot_list(lye.pot));
  if (lye.heat && lye.heat->is_peak_known)
    sheet.blocks.emplace_back(SheetWords{"It can reach " + in_both_scales(lye.heat->peak.peak) +
                                         " if all the alkali goes in at once, from water at " +
                                         in_both_scales(lye.heat->water_at) +
                                         (lye.heat->assumed ? " (assumed)." : ".")});
  sheet.blocks.emplace_back(shares_list(lye));
}

}  // namespace

Sheet days_sheet(const DaysReport& report, const std::string& printed_at) {
  Sheet sheet{
      .title = "Days: " + names_of(report), .subtitle = when_and_what(report), .blocks = {}};
  for (const DaysReport::Lye& lye : report.lyes)
    for (const Remark& remark : remarks_of(lye))
      if (remark.severity == Severity::danger)
        sheet.blocks.emplace_back(SheetWarning{remark.severity, remark.text});
  for (const auto& asked : report.asked)
    for (const std::string& words : ready_words(asked.ready))
      sheet.blocks.emplace_back(SheetWords{words});
  std::optional<days::Day> day;
  for (const DayEntry& entry : entries_of(report)) {
    if (day != entry.day) sheet.blocks.emplace_back(SheetStep{weekday_and_date(entry.day)});
    day = entry.day;
    sheet.blocks.emplace_back(SheetWords{entry.text + ".", true});
    if (!entry.caution.empty())
      sheet.blocks.emplace_back(SheetWarning{Severity::caution, entry.caution});
    if (entry.lye) add_lye(sheet, report.lyes[*entry.lye]);
  }
  sheet.blocks.emplace_back(SheetDrawing{days_drawing(report)});
  const auto file =
      on_one_line(std::filesystem::path(report.asked.front().file).filename().string());
  sheet.foot =
      (printed_at.empty() ? "Days from " : "Printed " + printed_at + ", days from ") + file;
  sheet.printed_at = printed_at;
  return sheet;
}

}  // namespace brimwright::reports
