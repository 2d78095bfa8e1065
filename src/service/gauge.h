#pragma once

#include "reports/gauge_report.h"
#include "service/requests.h"

namespace brimwright::service {

/// Measures what the request names, as asked, and writes the files it asks for. UserError for
/// anything wrong in the file or the options; then no file is written.
reports::GaugeFindings gauged(const GaugeRequest& request, const moulds::Library& library,
                              const geometry::Progress& progress = {});

}  // namespace brimwright::service
