#include "service/noted_batches.h"

#include "records/poured_from.h"

#include <nlohmann/json.hpp>

#include <utility>

namespace brimwright::service {

reports::NotedBatch NotedBatches::of(const records::Batch& batch) {
  Plan& plan = plan_of(batch);
  if (!plan.blanks.contains(batch.number))
    plan.blanks[batch.number] = records::blanks_in(plan.answer, batch.number);
  if (!plan.rows.contains(batch.number))
    plan.rows[batch.number] = records::rows_in(plan.answer, batch.number);
  reports::NotedBatch noted{.number = batch.number,
                            .batch = batch,
                            .reserved = reserved_code(records_, run_, batch.number),
                            .blanks = plan.blanks[batch.number],
                            .rows = plan.rows[batch.number],
                            .notes = records::notes_of(records_, batch),
                            .weighings = records::weighings_of(records_, batch)};
  noted.for_sale = records::for_sale(noted.notes, today_);
  for (const auto& line : records::poured_of(records_, batch.id))
    if (auto its = records::batch_of_id(records_, line.batch))
      noted.lines.push_back(std::move(*its));
  if (!noted.lines.empty()) noted.for_sale = {.why_not = "has no pieces of its own"};
  if (const auto poured = records::poured_from(records_, batch.id))
    if (const auto base = records::batch_of_id(records_, poured->base))
      noted.poured_from = base->code;
  return noted;
}

std::int64_t NotedBatches::in_all(const records::Batch& batch) {
  Plan& plan = plan_of(batch);
  if (plan.in_all == 0)
    plan.in_all = nlohmann::json::parse(plan.answer).at("pieces").at("batches").get<std::int64_t>();
  return plan.in_all;
}

NotedBatches::Plan& NotedBatches::plan_of(const records::Batch& batch) {
  Plan& plan = plans_[batch.plan];
  if (plan.answer.empty()) plan.answer = records::plan_of(records_, batch);
  return plan;
}

}  // namespace brimwright::service
