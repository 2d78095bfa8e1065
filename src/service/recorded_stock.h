#pragma once

#include "moulds/library.h"
#include "records/records.h"
#include "reports/buying_report.h"
#include "runs/supplies.h"
#include "service/material_names.h"
#include "units/question.h"
#include "units/remark.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::service {

/// What the studio's "have" lists that no lot was made of: beside lots it is not counted.
std::vector<std::string> have_left_out(const runs::Supplies& supplies, const MaterialNames& names,
                                       const records::Records& records);
/// A sentence on it, which names what makes lots of it; nothing where nothing is left out.
std::optional<Remark> note_on_have(const std::vector<std::string>& left_out,
                                   const UserTerms& terms);

/// The records of the folder that all of `runs` lie in; nothing where none of their folders has
/// any. UserError where two have.
std::optional<records::Records> records_of(const std::vector<std::string>& runs);

/// What stands on the shelf, and what is to be told of it.
struct Shelf {
  runs::Supplies supplies;
  std::vector<Remark> notes = {};
};
void put_notes(reports::Buying& buying, const Shelf& shelf);
/// Where the folder of `runs` has records, their lots that are not past their best-before on `day`
/// take the place of the studio's "have".
Shelf with_recorded_stock(runs::Supplies supplies, const std::vector<std::string>& runs,
                          const std::string& day, const moulds::Library& library,
                          const UserTerms& terms);

}  // namespace brimwright::service
