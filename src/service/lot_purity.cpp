#include "service/lot_purity.h"

#include "chemistry/alkali_form.h"
#include "reports/weigh_out.h"
#include "units/printing.h"
#include "units/written_number.h"

#include <cmath>
#include <optional>
#include <set>

namespace brimwright::service {
namespace {

using records::Weighed;
using runs::PlannedPurity;

bool is_dry_alkali(const Weighed& row) { return row.material == "NaOH" || row.material == "KOH"; }

/// In per cent, upwards: of what is told as more or less than planned.
std::string at_most(double ratio) {
  return trimmed(std::ceil(std::abs(ratio - 1) * 1000 - 1e-6) / 10, 1) + " %";
}

/// What comes of alkali of that lot in place of the one planned.
Remark remark_of(const records::Lot& lot, const chemistry::StatedPurity& is,
                 const PlannedPurity& planned) {
  const std::string what = planned.dry + " of lot " + lot.code + " is " + lot.make + ", and " +
                           brimwright::quoted(planned.formula) + " is planned with " +
                           trimmed(planned.purity.of_one() * 100, 1) + " %: up to ";
  if (is.low > planned.high)
    return {Severity::danger, "LYE-HEAVY SOAP MAY COME OUT. " + what +
                                  at_most(is.high.of_one() / planned.purity.of_one()) +
                                  " more lye than planned. Give the formula that purity and weigh "
                                  "anew; if it is mixed, keep it apart, and sell nothing of it "
                                  "that was not tested."};
  return {Severity::caution, what + at_most(is.low.of_one() / planned.purity.of_one()) +
                                 " less lye than planned, so that more fat is left in the soap. "
                                 "Give the formula that purity before you weigh the next."};
}

}  // namespace

std::vector<PlannedPurity> purities_of_row(const planning::Run& run, const Weighed& row) {
  if (!is_dry_alkali(row)) return {};
  if (row.row.starts_with(reports::base_key() + "."))
    return runs::purities_planned(run.pour.formula);
  const bool is_topping = run.pipe && row.row.starts_with(reports::whipping_key(0));
  return is_topping ? runs::purities_planned(run.pipe->formula) : runs::purities_planned({&run});
}

std::vector<PlannedPurity> purities_in_name(const Weighed& row) {
  const auto stated = chemistry::stated_purity(row.shown);
  if (!is_dry_alkali(row) || !stated) return {};
  return {{row.material, stated->low, stated->low, stated->high, row.shown}};
}

void leave_out_other_purity(Weighed& row, const std::string& make,
                            const std::vector<PlannedPurity>& planned) {
  if (planned.empty()) return;
  const auto meaning = runs::meaning_of(make);
  if (meaning.dry == row.material &&
      runs::planned_otherwise(meaning, runs::Needed({row.material}, planned)) != nullptr)
    row.unfit.push_back(make);
}

OtherPurities other_purities(const records::Records& records, const records::Batch& batch,
                             const planning::Run& run) {
  OtherPurities told;
  std::set<std::string> seen;  // by row's formula and lot, once
  for (const auto& [row, takes] : records::used_by(records, batch.id)) {
    const runs::Needed needed({row.material}, purities_of_row(run, row));
    if (needed.purities.empty()) continue;
    for (const auto& take : takes) {
      const auto lot = records::lot_of_id(records, take.lot);
      if (!lot || lot->lot.make.empty()) continue;
      const auto meaning = runs::meaning_of(lot->lot.make);
      const auto* other = runs::planned_otherwise(meaning, needed);
      if (other == nullptr || !seen.insert(other->formula + "\n" + take.lot).second) continue;
      told.remarks.push_back(remark_of(lot->lot, *meaning.purity, *other));
      told.has_more_lye |= told.remarks.back().severity == Severity::danger;
    }
  }
  return told;
}

}  // namespace brimwright::service
