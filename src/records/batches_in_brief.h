#pragma once

#include "units/text_places.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace brimwright::records {

class Records;

/// A batch as far as what reads them all together needs it.
struct BatchInBrief {
  std::string id = {}, code = {};
  std::int64_t number = 1;    // which of the run's batches
  std::string begun_on = {};  // ISO 8601 day
  std::size_t plan = 0;       // by its place among the plans
  std::size_t sources = 0;    // and what that was made from
};

/// Every batch, and the hashes of their plans and of what those were made from, each once.
struct BatchesInBrief {
  std::vector<BatchInBrief> all = {};  // in the order of their ids
  TextPlaces plans = {}, sources = {};
};

BatchesInBrief batches_in_brief(const Records& records);

/// Places among `batches`, by the day they were begun on and their code.
std::vector<std::size_t> by_day(const std::vector<BatchInBrief>& batches);

}  // namespace brimwright::records
