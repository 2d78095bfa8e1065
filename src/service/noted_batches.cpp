#include "service/noted_batches.h"

#include "records/batch_code.h"

#include <nlohmann/json.hpp>

namespace brimwright::service {

reports::NotedBatch NotedBatches::of(const records::Batch& batch) {
  reports::NotedBatch noted{.number = batch.number,
                            .batch = batch,
                            .reserved = records::reserved_code(records_, batch.run, batch.number),
                            .blanks = records::blanks_in(plan_of(batch), batch.number),
                            .notes = records::notes_of(records_, batch),
                            .weighings = records::weighings_of(records_, batch)};
  noted.for_sale = records::for_sale(noted.notes, today_);
  return noted;
}

std::int64_t NotedBatches::in_all(const records::Batch& batch) {
  const auto plan = nlohmann::json::parse(plan_of(batch));
  return plan.at("pieces").at("batches").get<std::int64_t>();
}

const std::string& NotedBatches::plan_of(const records::Batch& batch) {
  std::string& plan = plans_[batch.plan];
  if (plan.empty()) plan = records::plan_of(records_, batch);
  return plan;
}

}  // namespace brimwright::service
