#pragma once

#include "moulds/library.h"
#include "reports/inspection_report.h"
#include "service/requests.h"

namespace brimwright::service {

/// Looks for every defect of the mesh that a request with `inspect` names. UserError for what
/// cannot be read, for a mould file, and for options that say how to measure.
reports::InspectionFinding inspected(const GaugeRequest& request, const UserTerms& terms,
                                     const moulds::Library& library);

}  // namespace brimwright::service
