#pragma once

#include "moulds/library.h"
#include "reports/ready_report.h"
#include "runs/order_file.h"

#include <cstdint>
#include <string>

namespace brimwright::service {

/// For when pieces are to be ready, ISO 8601 days.
struct ReadyBy {
  std::string today;
  std::string last;  // the last day that is early enough: `today`, or before the order is packed
};

/// What of `order`, made `times` times, is delivered, and what it takes of pieces that are made, by
/// its own word: those of the same run that were tested and passed, are or will be ready by then,
/// and are made as they would be today. Orders of the same folder that take too and come before
/// this one, by their due days and then their names, have taken already. Nothing where the folder
/// of its runs has no records. Each file that this rests on is put down in `library`.
///
/// UserError where the order takes and does not lie beside the records, where another order has its
/// id, and where a batch that it names is not there or is of another run.
reports::ReadyOrder ready_for(const runs::Order& order, std::int64_t times, const ReadyBy& by,
                              const moulds::Library& library);

}  // namespace brimwright::service
