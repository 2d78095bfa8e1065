#pragma once

#include "moulds/library.h"
#include "reports/days_report.h"
#include "service/requests.h"

namespace brimwright::service {

/// When to make what is asked about. Beginning on the day that stands for today: back from the due
/// days where all have one, else forward to the day for which all of it can be promised.
///
/// UserError for a date that is none, for a due day that is over, where only some have a due day,
/// for a studio without making days, for a formula without a cure, and for a batch that no day
/// takes: with what stands against it.
reports::DaysReport days_report(const DaysRequest& request, const UserTerms& terms,
                                const moulds::Library& library, const Caller& caller);

/// The same as an answer, with the files that are asked for.
Reply scheduled(const DaysRequest& request, const Request& asked, const moulds::Library& library,
                const Caller& caller);

}  // namespace brimwright::service
