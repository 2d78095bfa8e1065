#pragma once

#include "moulds/library.h"
#include "planning/plan.h"
#include "planning/run.h"
#include "service/requests.h"
#include "units/question.h"

#include <cstdint>
#include <optional>
#include <string>

namespace brimwright::service {

/// Which run, as a request names it.
struct RunAsked {
  const std::string& file;
  const std::optional<std::string>& text;  // in place of what stands in the file
  const std::optional<std::string>& sell;  // as typed, in place of the file's own number
};

/// A number of pieces as typed: whole, 1 or more.
std::int64_t pieces_from(const std::string& typed, const Place& where,
                         const std::string& what = "pieces");

/// The run that is asked about; the caller hears of all files that it was read from. A search for
/// places is refused where nothing but what is remembered may be used.
planning::Run told_run(const RunAsked& asked, const UserTerms& terms, const moulds::Library& given,
                       const Caller& caller);

planning::Measured measured_run(const planning::Run& run, const Caller& caller);

/// The run in `file` for `sell` pieces or its own number of them, as told_run() has it.
planning::Run run_from(const std::string& file, std::optional<std::int64_t> sell,
                       const moulds::Library& library);

/// Throws where a batch of `plan` would be lye-heavy, or a name in it stands for something else.
void pass_gates(const planning::Run& run, const planning::Plan& plan);
/// The same where the base is weighed with others, and passes for all of them.
void pass_gates_beside_base(const planning::Run& run, const planning::Plan& plan);

/// The plan of the run's own number of pieces, past those gates.
planning::Plan gated_plan(const planning::Run& run, const planning::Measured& measured);

/// That of number `number` of the run's batches. Expects there to be one.
const planning::Batch& batch_numbered(const planning::Plan& plan, std::int64_t number);

/// A run with its plan, and what that was made from.
struct PlannedRun {
  planning::Run run;
  planning::Measured measured;
  planning::Plan plan;
};

/// The run in `file`, planned for `sell` pieces or its own number of them, past the gates.
PlannedRun planned_run(const std::string& file, std::optional<std::int64_t> sell,
                       const moulds::Library& library, const Caller& caller);
/// The same of a document that stands for the file.
PlannedRun planned_text(const std::string& text, const std::string& file,
                        const moulds::Library& library, const Caller& caller);

}  // namespace brimwright::service
