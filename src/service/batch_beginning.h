#pragma once

#include "moulds/library.h"
#include "planning/run.h"
#include "records/batches.h"
#include "records/lot_use.h"
#include "records/records.h"
#include "service/lot_taking.h"
#include "service/poured_base.h"
#include "units/question.h"

#include <string>
#include <vector>

namespace brimwright::service {

/// A batch that begins, and what it weighs. It refers to its run.
struct Begun {
  records::Batch batch;
  const planning::Run* run;
  std::vector<records::Weighed> rows;
};

/// Begins a batch of each line that is poured from `of`, which is one of `base`, beside the records
/// of `folder`. Within the act that begins it. UserError for a run that lies elsewhere; a Question
/// about a line that was begun on its own that day, whose answer is taken out of `confirmed`.
std::vector<Begun> begin_lines(records::Records& records, const PouredBase& base,
                               const records::Batch& of, const std::string& folder,
                               const moulds::Library& library, std::vector<std::string>& confirmed,
                               const UserTerms& terms);

/// Takes what all of them weigh from lots (lot_taking.h), each by the wishes that are for it.
LotsTaken take_of_lots(records::Records& records, std::vector<Begun> all, const LotWishes& typed,
                       const moulds::Library& library, const UserTerms& terms);

}  // namespace brimwright::service
