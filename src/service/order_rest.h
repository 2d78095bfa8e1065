#pragma once

#include "days/calendar.h"
#include "moulds/library.h"
#include "reports/ready_report.h"
#include "runs/order_file.h"
#include "service/ready_pieces.h"
#include "service/requests.h"

#include <cstdint>
#include <optional>
#include <string>

namespace brimwright::service {

/// An order beside the records of its runs, and what is left to plan of it.
struct RestOfOrder {
  reports::ReadyOrder ready;
  /// Lines with the pieces to make, those of which nothing is to make left out; there may be none.
  runs::Order order;
};

/// Of `order` made `times` times, all in one. Fewer pieces are taken than stand ready where the
/// rest would be so few that they cannot be made; the notes then say so. UserError as ready_for(),
/// and where the order cannot be made at all.
RestOfOrder rest_of(const runs::Order& order, std::int64_t times, const ReadyBy& by,
                    const moulds::Library& library, const Caller& caller);

/// By when pieces for the order are to be ready: `today`, or, where it is due later, before the
/// last hours of making days that packing it takes by its studio. `due` stands in place of the
/// order's own day.
ReadyBy ready_by(const runs::Order& order, std::optional<days::Day> due, const std::string& today,
                 const moulds::Library& library);

}  // namespace brimwright::service
