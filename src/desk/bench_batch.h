#pragma once

#include "units/fields.h"

#include <nlohmann/json_fwd.hpp>

#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <string>

namespace brimwright::desk {

/// A batch that is being weighed, or was: frozen as it was when its first row was ticked.
struct BenchBatch {
  std::string id = {};
  std::string run = {};                    // its file, by the name that the page asks for
  std::optional<std::string> run_id = {};  // none where the file has none
  std::int64_t number = 1;                 // which of the run's batches
  std::string begun_at = {};               // with offset
  std::optional<std::string> finished_at = {};
  std::map<std::string, std::string> ticks = {};  // when, by the row's key
  std::optional<std::string> weigh_cup = {};      // its reading, as typed
  std::string mark = {};                          // of what is to be weighed
  std::set<std::string> rows = {};                // what is to be weighed, by its keys
  std::string plan = {};                          // the whole answer, as JSON
};

/// Gives `batch` the plan's answer, and from it the mark and rows of the size of batch that it is.
/// UserError at `where` if the plan has no batch of its number.
void freeze(BenchBatch& batch, const Fields& plan, const Place& where);

/// With its plan, or without where that would be too much.
nlohmann::ordered_json bench_json(const BenchBatch& batch, bool has_plan = true);
/// As it is kept: src/schemas/bench.schema.json.
std::string kept_text(const BenchBatch& batch);
/// UserError, naming `file`, for anything else.
BenchBatch read_bench_batch(const std::string& text, const std::string& file);

}  // namespace brimwright::desk
