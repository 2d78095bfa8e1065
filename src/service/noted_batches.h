#pragma once

#include "records/batches.h"
#include "records/blanks.h"
#include "records/records.h"
#include "reports/note_report.h"
#include "service/run_records.h"

#include <cstdint>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace brimwright::service {

/// What is noted of batches, for the records of one run; plans that batches share are read once.
class NotedBatches {
 public:
  NotedBatches(const records::Records& records, const RunRecords& run, std::string today)
      : records_(records), run_(run), today_(std::move(today)) {}

  reports::NotedBatch of(const records::Batch& batch);
  /// How many batches the run of `batch` was planned in.
  std::int64_t in_all(const records::Batch& batch);

 private:
  struct Plan {
    std::string answer;
    std::int64_t in_all = 0;
    std::map<std::int64_t, std::vector<records::Blank>> blanks = {},  // by the batch's number
        rows = {};
  };
  Plan& plan_of(const records::Batch& batch);

  const records::Records& records_;
  const RunRecords& run_;
  std::string today_;
  std::map<std::string, Plan> plans_;  // by their hash
};

}  // namespace brimwright::service
