#pragma once

#include "moulds/library.h"
#include "records/batches.h"
#include "records/records.h"
#include "reports/stock_report.h"
#include "service/requests.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::service {

/// Does to pieces what `request` tells, within its act: a sentence each, and the codes of their
/// batches. UserError for more pieces than there are, and for a sale of what is not for sale.
struct PiecesDone {
  std::vector<std::string> sentences = {}, batches = {};
};
PiecesDone change_pieces(const StockRequest& request, records::Records& records,
                         const moulds::Library& library, const UserTerms& terms);

/// The day until which a batch cures by its formulas, as they were frozen; nothing where none says.
std::optional<std::string> cures_until(const records::Records& records,
                                       const records::Batch& batch);

/// The pieces of all batches that have some, or of which nobody noted how many there are, with the
/// day until which they cure by their formula.
std::vector<reports::Stock::Pieces> pieces_in(const records::Records& records,
                                              const std::string& day);

}  // namespace brimwright::service
