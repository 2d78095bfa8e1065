#pragma once

#include "records/lots.h"
#include "records/taking.h"
#include "units/remark.h"

#include <string>
#include <vector>

namespace brimwright::records {

class Records;

/// What a batch weighed in a row, and what lots that was taken from. Where these do not come to all
/// of it, the lot of the rest is unknown.
struct RowUse {
  Weighed weighed;
  std::vector<LotChange> takes = {};

  std::int64_t unknown() const;  // micrograms or pieces
};
/// By the rows' keys.
std::vector<RowUse> used_by(const Records& records, const std::string& batch);

/// A row of which all or a part is of an unknown lot.
struct UnknownLot {
  std::string batch = {}, row = {};
};
/// Those of a material in batches that were begun on `since` or later.
std::vector<UnknownLot> unknown_lots(const Records& records, const std::string& material,
                                     const std::string& since);

/// Takes what `batch` weighs in `rows` on `day` from lots, and keeps what was weighed. Within an
/// act. A row that was taken before is taken anew, first of the same lots: what is weighed is what
/// it says last, and more may be taken of a lot that she had more from before. Tells of lots that
/// were passed over. Question as taken_from() asks.
std::vector<Remark> use_lots(Records& records, const std::string& batch, const std::string& day,
                             std::vector<Weighed> rows, FromLots wishes);

}  // namespace brimwright::records
