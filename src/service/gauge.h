#pragma once

#include "moulds/library.h"
#include "reports/gauge_report.h"
#include "service/requests.h"

#include <vector>

namespace brimwright::service {

struct Gauged {
  reports::GaugeFindings findings;
  std::vector<MadeFile> files;  // as the request wants them
};

/// Measures what the request names, as asked. UserError for anything wrong in the file or in what
/// is asked.
Gauged gauged(const GaugeRequest& request, const UserTerms& terms, const moulds::Library& library,
              const Caller& caller = {});

}  // namespace brimwright::service
