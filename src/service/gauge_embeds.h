#pragma once

#include "geometry/packing/packing.h"
#include "moulds/library.h"
#include "moulds/mould.h"
#include "reports/packing_report.h"
#include "service/requests.h"

#include <optional>

namespace brimwright::service {

/// How many embeds, cast full in the mould file that the request names, fit in `mould` filled to
/// `line`; nothing where the request does not ask. UserError at what is missing or wrong.
std::optional<reports::PackingFinding> embeds_that_fit(const GaugeRequest& request,
                                                       const UserTerms& terms,
                                                       const moulds::Mould& mould, Length line,
                                                       const moulds::Library& library,
                                                       const geometry::Progress& progress);

}  // namespace brimwright::service
