#pragma once

#include "moulds/library.h"
#include "moulds/mould.h"
#include "reports/ways_report.h"
#include "service/requests.h"

#include <optional>

namespace brimwright::service {

/// What one cavity holds by each way in which the mould file gives it, and by the batches that are
/// recorded in the folder of `request.batches_of`; nothing where that is not asked, or of a mesh
/// on its own.
std::optional<reports::WaysFinding> ways_of(const GaugeRequest& request, const UserTerms& terms,
                                            const moulds::Mould& mould,
                                            const moulds::Library& library, const Caller& caller);

}  // namespace brimwright::service
