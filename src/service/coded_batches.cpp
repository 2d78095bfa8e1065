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
    if (const auto code = reserved_code(records_, run_, number)) {
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

RunRecords records_for(const std::string& file, const std::string& id, const std::string& word) {
  return {.folder = folder_of(file),
          .file = std::filesystem::path(file).filename().string(),
          .id = id,
          .name = "",
          .word = word};
}

/// Of what `answer` plans in so many batches.
CodedBatches coded(const RunRecords& its, const std::string& answer, std::int64_t batches) try {
  const auto records = records::Records::in(its.folder);
  if (!records) return {};
  return Looking(*records, its, Json::parse(answer)).found(batches);
} catch (const UserError& error) {
  return {.remarks = {{Severity::caution,
                       "The batch numbers are not known: " + std::string(error.what()) + "."}}};
}

}  // namespace

CodedBatches coded_batches(const planning::Run& run, const planning::Plan& plan) {
  const RunRecords its = records_for(run.file, run.id, "");
  std::error_code none;
  if (!std::filesystem::exists(std::filesystem::path(its.folder) / records::file_name, none))
    return {};
  return coded(its, reports::plan_json(run, plan), plan.pieces.batches);
}

reports::PouredCodes coded_base(const runs::Order& order, const reports::PouredTogether& base) {
  reports::PouredCodes codes;
  const auto& together = *base.planned;
  codes.base = coded(records_for(order.file, order.id, base.word), reports::base_json(base),
                     together.plan.pieces.batches)
                   .codes;
  for (std::size_t i = 0; i < base.lines.size(); ++i) {
    const planning::Run& run = *base.lines[i].run;
    codes.lines.push_back(coded(records_for(run.file, run.id, ""),
                                reports::line_json(run, together.lines[i]),
                                together.lines[i].pieces.batches)
                              .codes);
  }
  return codes;
}

}  // namespace brimwright::service
