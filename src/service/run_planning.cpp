#include "service/run_planning.h"

#include "moulds/mesh_memory.h"
#include "planning/shared_pot.h"
#include "runs/run_file.h"
#include "service/lye_gate.h"
#include "service/name_gate.h"
#include "units/fields.h"
#include "units/reading.h"

#include <algorithm>
#include <memory>
#include <stdexcept>
#include <vector>

namespace brimwright::service {
namespace {

bool is_searching(const planning::Run& run) {
  return std::any_of(run.decorations.begin(), run.decorations.end(), [](const auto& decoration) {
    const auto* buried = std::get_if<planning::Buried>(&decoration.where);
    return buried != nullptr && std::holds_alternative<planning::FindPlaces>(buried->places);
  });
}

planning::Run run_in(const Fields& file, std::optional<std::int64_t> sell,
                     const moulds::Library& library) {
  planning::Run run = runs::read_run(file, library, sell);
  // A search for places takes seconds: not for who answers what is quickly said.
  if (library.only_remembered && is_searching(run)) throw moulds::NotYetMeasured(file.file());
  return run;
}

planning::Run run_of(const RunAsked& asked, const UserTerms& terms,
                     const moulds::Library& library) {
  std::optional<std::int64_t> sell;
  if (asked.sell) sell = pieces_from(*asked.sell, terms.place("sell"));
  return run_in(asked.text ? Fields::parse(*asked.text, asked.file) : library.document(asked.file),
                sell, library);
}

/// The gate, and a look that the plan tells what the weights may come to.
void pass(const chemistry::Formula& formula, const planning::Weighing& weighing) {
  pass_lye_gate(formula, weighing);
  require_alarm(weighing);
}

PlannedRun planned(const Fields& file, std::optional<std::int64_t> sell,
                   const moulds::Library& library, const Caller& caller) {
  planning::Run run = run_in(file, sell, library);
  planning::Measured measured = measured_run(run, caller);
  planning::Plan plan = gated_plan(run, measured);
  return {std::move(run), std::move(measured), std::move(plan)};
}

}  // namespace

std::int64_t pieces_from(const std::string& typed, const Place& where, const std::string& what) {
  const double number = read_number(typed, where);
  if (number < 1 || number > 1e6 ||
      number != static_cast<double>(static_cast<std::int64_t>(number)))
    throw UserError(where, "\"" + typed + "\" is not a number of " + what,
                    "give a whole number, 1 or more");
  return static_cast<std::int64_t>(number);
}

planning::Run told_run(const RunAsked& asked, const UserTerms& terms, const moulds::Library& given,
                       const Caller& caller) {
  moulds::Library library = given;
  library.named = std::make_shared<std::vector<std::string>>();
  planning::Run run = run_of(asked, terms, library);
  library.named->push_back(asked.file);
  caller.tell_read(*library.named);
  return run;
}

planning::Measured measured_run(const planning::Run& run, const Caller& caller) {
  return planning::measured(run, {.progress = caller.progress, .memory = caller.memory});
}

planning::Run run_from(const std::string& file, std::optional<std::int64_t> sell,
                       const moulds::Library& library) {
  return run_in(library.document(file), sell, library);
}

void pass_gates(const planning::Run& run, const planning::Plan& plan) {
  for (const auto& batch : plan.batches) pass(run.pour.formula, batch.pour.batter.weighing);
  pass_gates_beside_base(run, plan);
}

void pass_gates_beside_base(const planning::Run& run, const planning::Plan& plan) {
  for (const auto& batch : plan.batches) {
    for (const auto& whipping : batch.whippings)
      pass(run.pipe->formula, whipping.pipe.batter.weighing);
    if (batch.lye_pot)
      pass_pot_gate(planning::batters_of_pot(run, batch), *batch.lye_pot, run.lye_pot->where);
  }
  pass_name_gate(run, plan);
}

planning::Plan gated_plan(const planning::Run& run, const planning::Measured& measured) {
  planning::Plan plan = planning::plan_of(run, measured);
  pass_gates(run, plan);
  return plan;
}

const planning::Batch& batch_numbered(const planning::Plan& plan, std::int64_t number) {
  for (const auto& batch : plan.batches)
    if (std::find(batch.numbers.begin(), batch.numbers.end(), number) != batch.numbers.end())
      return batch;
  throw std::logic_error("the plan has no batch " + std::to_string(number));
}

PlannedRun planned_run(const std::string& file, std::optional<std::int64_t> sell,
                       const moulds::Library& library, const Caller& caller) {
  return planned(library.document(file), sell, library, caller);
}

PlannedRun planned_text(const std::string& text, const std::string& file,
                        const moulds::Library& library, const Caller& caller) {
  return planned(Fields::parse(text, file), std::nullopt, library, caller);
}

}  // namespace brimwright::service
