#include "service/coded_batches.h"

#include "records/batch_code.h"
#include "records/batches.h"
#include "records/records.h"
#include "reports/plan_report.h"
#include "service/run_records.h"
#include "units/user_error.h"

#include <nlohmann/json.hpp>

#include <filesystem>
#include <map>
#include <utility>

namespace brimwright::service {
namespace {

using Json = nlohmann::json;

/// The mark of what is weighed for a batch of that number in a plan's answer.
std::string mark_of(const Json& plan, std::int64_t number) {
  for (const Json& batch : plan.at("batches"))
    for (const Json& its : batch.at("numbers"))
      if (its == number) return batch.at("mark").get<std::string>();
  return "";
}

/// The records of one run beside its plan of today.
class Looking {
 public:
  Looking(const records::Records& records, const RunRecords& run, Json today)
      : records_(records), run_(run), today_(std::move(today)) {}

  CodedBatches found(std::int64_t batches) {
    for (std::int64_t number = 1; number <= batches; ++number) look_at(number);
    return std::move(found_);
  }

 private:
  void look_at(std::int64_t number) {
    if (const auto code = records::reserved_code(records_, run_.key(), number)) {
      found_.codes.push_back({number, *code, ""});
      return;
    }
    const auto batch = newest_batch(records_, run_, number);
    if (!batch) return;
    if (mark_of(plan_of(*batch), number) == mark_of(today_, number)) {
      found_.codes.push_back({number, batch->code, batch->begun_on});
      return;
    }
    found_.remarks.push_back(
        {Severity::caution, "Batch " + std::to_string(number) + " was begun on " + batch->begun_on +
                                " as " + batch->code +
                                " by another plan than this: its weights are on the sheet that "
                                "was printed then."});
  }

  const Json& plan_of(const records::Batch& batch) {
    Json& plan = plans_[batch.plan];
    if (plan.is_null()) plan = Json::parse(records::plan_of(records_, batch));
    return plan;
  }

  const records::Records& records_;
  const RunRecords& run_;
  Json today_;
  std::map<std::string, Json> plans_;
  CodedBatches found_;
};

std::string folder_of(const std::string& file) {
  const auto folder = std::filesystem::path(file).parent_path();
  return folder.empty() ? "." : folder.string();
}

}  // namespace

CodedBatches coded_batches(const planning::Run& run, const planning::Plan& plan) try {
  const auto records = records::Records::in(folder_of(run.file));
  if (!records) return {};
  const RunRecords its{.folder = folder_of(run.file),
                       .file = std::filesystem::path(run.file).filename().string(),
                       .id = run.id,
                       .name = run.name};
  return Looking(*records, its, Json::parse(reports::plan_json(run, plan)))
      .found(plan.pieces.batches);
} catch (const UserError& error) {
  return {.remarks = {{Severity::caution,
                       "The batch numbers are not known: " + std::string(error.what()) + "."}}};
}

}  // namespace brimwright::service
