#pragma once

#include "moulds/library.h"
#include "planning/run.h"
#include "planning/tally.h"
#include "records/batches.h"
#include "records/lot_use.h"
#include "records/records.h"
#include "reports/together_report.h"
#include "runs/supplies.h"
#include "units/question.h"
#include "units/remark.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <string>
#include <vector>

namespace brimwright::service {

/// What is weighed and counted for the run's batch of that number, a row for each thing as often as
/// it is weighed; what is melted ahead for the whole run, and decorations that are bought, with the
/// first.
std::vector<records::Weighed> weighed_for(const planning::Run& run, const planning::Plan& plan,
                                          std::int64_t number);
/// The same of a line whose base is mixed with others'; and of that base, with what is stirred into
/// each line's jugs.
std::vector<records::Weighed> weighed_beside_base(const planning::Run& run,
                                                  const planning::Plan& plan, std::int64_t number);
std::vector<records::Weighed> weighed_for_base(const reports::PouredTogether& base,
                                               std::size_t batch);

/// How pure a row's alkali was planned to be.
using PuritiesOf = std::function<std::vector<runs::PlannedPurity>(const records::Weighed& row)>;

/// Puts into `rows` what lots serve as their materials besides those called so, by the studio, and
/// what of them is alkali of another purity.
void find_what_serves(std::vector<records::Weighed>& rows, const records::Records& records,
                      const runs::Supplies& supplies, const PuritiesOf& purities);
/// By the run's studio and formulas.
void find_what_serves(std::vector<records::Weighed>& rows, const records::Records& records,
                      const planning::Run& run, const moulds::Library& library);

/// What was typed of lots to take: "olive=OL-12" or "pour.fats.olive=OL-12", repeated for more than
/// one, and codes of lots of which more is taken than is left.
struct LotWishes {
  std::vector<std::string> lots = {}, beyond_stock = {};
};
records::FromLots read_wishes(const LotWishes& typed, const UserTerms& terms);

/// What is to be told of lots that were taken.
struct LotsTaken {
  std::vector<Remark> remarks = {};
  bool has_more_lye = false;  // than planned: to be asked about
};

/// Those of the wishes that are for anything in `rows`.
LotWishes wishes_for(const std::vector<records::Weighed>& rows, const LotWishes& typed,
                     const records::Records& records, const UserTerms& terms);

/// Takes from lots what the batch of `run` weighs, once find_what_serves() has seen it. Within the
/// act that begins it. Tells of lots that were passed over, and of chosen ones that the plan is not
/// for. Question where the records have too little.
LotsTaken take_of_lots(records::Records& records, const records::Batch& batch,
                       const planning::Run& run, std::vector<records::Weighed> rows,
                       const LotWishes& wishes, const UserTerms& terms);

}  // namespace brimwright::service
