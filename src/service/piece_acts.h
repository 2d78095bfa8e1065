#pragma once

#include "moulds/library.h"
#include "records/batches.h"
#include "records/records.h"
#include "reports/stock_report.h"
#include "service/requests.h"

#include <chrono>
#include <map>
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

/// How long batches cure by their formulas, as they were frozen: read once for all that were made
/// of the same files.
class Cures {
 public:
  explicit Cures(const records::Records& records) : records_(records) {}

  /// The day until which a batch cures; nothing where no formula says.
  std::optional<std::string> until(const records::Batch& batch);

 private:
  const records::Records& records_;
  std::map<std::string, std::optional<std::chrono::minutes>> known_ = {};  // by the sources' hash
};

/// The pieces of all batches that have some, or of which nobody noted how many there are, with the
/// day until which they cure by their formula.
std::vector<reports::Stock::Pieces> pieces_in(const records::Records& records,
                                              const std::string& day);

}  // namespace brimwright::service
