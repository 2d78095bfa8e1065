#include "service/plan_again.h"

#include "records/poured_from.h"
#include "reports/plan_report.h"
#include "service/poured_base.h"
#include "service/run_planning.h"
#include "units/user_error.h"

#include <nlohmann/json.hpp>

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <utility>

namespace brimwright::service {
namespace {

namespace fs = std::filesystem;
using Json = nlohmann::ordered_json;
using records::Batch;
using records::Records;

const Json* batch_in(const Json& plan, std::int64_t number) {
  for (const Json& batch : plan.at("batches"))
    for (const Json& one : batch.at("numbers"))
      if (one.get<std::int64_t>() == number) return &batch;
  return nullptr;
}

Json superfats_of(const Json& batch) {
  Json superfats = Json::array();
  for (const char* batter : {"pour", "pipe"})
    if (batch.contains(batter) && batch[batter].is_object())
      superfats.push_back(batch[batter].value("superfat_percent", Json()));
  return superfats;
}

/// Whether two plans weigh the same batch of the same things.
bool are_alike(const Json& one, const Json& other, std::int64_t number) {
  const Json* a = batch_in(one, number);
  const Json* b = batch_in(other, number);
  return a != nullptr && b != nullptr && a->at("mark") == b->at("mark") &&
         superfats_of(*a) == superfats_of(*b);
}

/// The base that the batch is, or is poured from.
std::optional<Batch> base_of(const Records& records, const Batch& batch) {
  if (const auto poured = records::poured_from(records, batch.id))
    return records::batch_of_id(records, poured->base);
  if (!records::poured_of(records, batch.id).empty()) return batch;
  return std::nullopt;
}

/// `base` begins what is left of its order on the day that it was begun on.
std::optional<FrozenPlan> poured_again(const Records& records, const Batch& base,
                                       const Batch& batch, const fs::path& folder,
                                       const moulds::Library& library, const Caller& caller) {
  const auto word = Json::parse(records::plan_of(records, base)).at("word").get<std::string>();
  PouredBase now =
      poured_base((folder / base.run_file).string(), word, base.begun_on, library, caller);
  if (base.id == batch.id)
    return FrozenPlan{
        std::move(now.together.run), std::move(now.together.plan), std::move(now.answer), {}};
  for (std::size_t i = 0; i < now.lines.size(); ++i)
    if (fs::path(now.lines[i].file).filename() == batch.run_file)
      return FrozenPlan{std::move(now.runs[i]),
                        std::move(now.together.lines[i]),
                        std::move(now.lines[i].answer),
                        {}};
  return std::nullopt;
}

std::optional<FrozenPlan> planned_now(const Records& records, const Batch& batch,
                                      const std::string& file, const moulds::Library& library,
                                      const Caller& caller) {
  if (const auto base = base_of(records, batch))
    return poured_again(records, *base, batch, fs::path(file).parent_path(), library, caller);
  PlannedRun now = planned_run(file, {}, library, caller);
  std::string answer = reports::plan_json(now.run, now.plan);
  return FrozenPlan{std::move(now.run), std::move(now.plan), std::move(answer), {}};
}

}  // namespace

std::optional<FrozenPlan> plan_again(const Records& records, const Batch& batch,
                                     const std::string& file, const moulds::Library& library,
                                     const Caller& caller) try {
  auto now = planned_now(records, batch, file, library, caller);
  if (now && !are_alike(Json::parse(records::plan_of(records, batch)), Json::parse(now->answer),
                        batch.number))
    return std::nullopt;
  return now;
} catch (const UserError&) {
  return std::nullopt;
}

}  // namespace brimwright::service
