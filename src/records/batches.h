#pragma once

#include "units/user_error.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::records {

class Records;

/// A file that a plan was made from, as it was read. Of one that is no text, a mesh, its SHA-256.
struct Source {
  std::string path;
  std::optional<std::string> text = {};
  std::optional<std::string> sha256 = {};

  bool operator==(const Source&) const = default;
};

/// A batch from the moment that its lye was mixed. All but its code and when it was finished is
/// frozen.
struct Batch {
  std::string id = {};
  std::string code = {};      // "2026-12-01A"
  std::string run = {};       // the run's id; of a run without one its file's name, after "file:"
  std::string run_file = {};  // by its name in the folder
  std::string run_name = {};
  std::int64_t number = 1;    // which of the run's batches
  std::string begun_on = {};  // ISO 8601 day
  std::string begun_at = {};  // when that was recorded, with offset
  std::int64_t pieces = 0;    // planned
  std::string program = {};   // the version that planned it
  std::string plan = {};      // the hash of its plan, which batches planned alike share
  std::string sources = {};   // and of what that was made from
  std::optional<std::string> finished_at = {};
};

/// What a batch is begun with.
struct Beginning {
  std::string id = {};  // a new UUID
  std::string run = {}, run_file = {}, run_name = {};
  std::int64_t number = 1;
  std::string begun_on = {}, begun_at = {};
  std::int64_t pieces = 0;
  std::string program = {};
  std::string plan = {};  // the plan's whole answer, as JSON
  std::vector<Source> sources = {};
  std::optional<std::string> code = {};  // hers; else the reserved one, else the next of the day
};

/// Freezes a batch. Within an act. UserError at `code_at` where the code is given already.
Batch begin_batch(Records& records, const Beginning& beginning, const Place& code_at);
/// Another code for `batch`, given on `day`. Within an act. UserError as above.
Batch with_code(Records& records, const Batch& batch, const std::string& code,
                const std::string& day, const Place& code_at);

/// All, or those of one run, by the day they were begun on and their code.
std::vector<Batch> batches(const Records& records);
std::vector<Batch> batches_of(const Records& records, const std::string& run);
/// By its code, whatever the capitals; none for a code that it had before.
std::optional<Batch> batch_called(const Records& records, const std::string& code);
std::optional<Batch> batch_of_id(const Records& records, const std::string& id);
/// The last making of batch `number` of `run` that was begun.
std::optional<Batch> newest_batch(const Records& records, const std::string& run,
                                  std::int64_t number);

/// The plan's answer as it was frozen, JSON.
std::string plan_of(const Records& records, const Batch& batch);
std::vector<Source> sources_of(const Records& records, const Batch& batch);
/// Those of that hash.
std::vector<Source> sources_of(const Records& records, const std::string& hash);

}  // namespace brimwright::records
