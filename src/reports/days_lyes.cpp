#include "reports/days_report.h"
#include "units/printing.h"
#include "units/rounding.h"
#include "units/share_of.h"
#include "units/weight_text.h"

#include <algorithm>
#include <iterator>

namespace brimwright::reports {
namespace {

// Where nothing else is said.
const Temperature usual_room = Temperature::in_celsius(20);

}  // namespace

std::vector<std::size_t> DaysReport::Lye::batches() const {
  std::vector<std::size_t> batches;
  for (const ForBatch& share : shares)
    if (batches.empty() || batches.back() != share.batch) batches.push_back(share.batch);
  return batches;
}

bool shares_lye(const DaysReport& report, const std::string& file) {
  for (const auto& lye : report.lyes)
    for (const std::size_t b : lye.batches()) {
      const auto& one = report.schedule.batches[b];
      const std::size_t asked = report.deliveries[one.delivery].asked;
      const auto& files = report.asked[asked].lines[one.line].files;
      if (std::find(files.begin(), files.end(), file) != files.end()) return true;
    }
  return false;
}

std::vector<Remark> remarks_of(const DaysReport::Lye& lye) {
  const planning::LyePot& pot = lye.pot;
  std::vector<Remark> remarks;
  const auto add = [&](const std::vector<Remark>& more) {
    std::copy_if(more.begin(), more.end(), std::back_inserter(remarks),
                 [](const Remark& remark) { return remark.severity != Severity::note; });
  };
  for (const auto& share : pot.shares) add(share.alarms);
  add(pot.remarks);
  if (lye.heat) add(lye.heat->remarks);
  const Mass ice = rounded_nearest(lye.ice_share * pot.water, pot.water_step);
  if (ice > Mass{})
    remarks.push_back({Severity::caution,
                       "Of the water, " + on_scale(ice, pot.water_step) +
                           " goes in as ice, all of it melted before the lye solution is shared."});
  if (lye.used_at && *lye.used_at > usual_room)
    remarks.push_back({Severity::caution, "It has stood overnight, and is used at " +
                                              in_both_scales(*lye.used_at) +
                                              ": warm each share, closed, in warm water."});
  remarks.push_back({Severity::note, "Shares are rounded down, as alkali is: " +
                                         on_scale(pot.left, pot.share_step) +
                                         " stays in the pot and goes into no batter."});
  std::stable_sort(remarks.begin(), remarks.end(),
                   [](const Remark& a, const Remark& b) { return a.severity > b.severity; });
  return remarks;
}

}  // namespace brimwright::reports
