#pragma once

#include "learning/figures.h"
#include "planning/plan.h"
#include "planning/run.h"
#include "reports/learned_report.h"
#include "service/requests.h"

namespace brimwright::service {

/// What the plan of a run comes to once a figure is written where `figure.writes` says, beside what
/// it comes to today, into `named`; or why there would be none. Nothing of a figure that changes no
/// weight, such as a time. May be called by several threads at once.
void tell_effects(reports::NamedFigure& named, const planning::Run& run,
                  const planning::Measured& measured, const planning::Plan& plan,
                  const Caller& caller);

}  // namespace brimwright::service
