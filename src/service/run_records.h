#pragma once

#include "moulds/library.h"
#include "records/batches.h"
#include "records/records.h"
#include "runs/order_file.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::service {

/// Where what happened to a run is recorded, and under which names.
struct RunRecords {
  std::string folder;  // its own
  std::string file;    // its name there
  std::string id;      // empty where the file has none
  std::string name;    // as it calls itself, or its file's name
  std::string word =
      {};  // of the lines of an order, where it is the base that they are poured from

  /// What its batches are recorded under from now on.
  std::string key() const;
  /// That, and what they were recorded under while the file had no id.
  std::vector<std::string> keys() const;
};

/// Of the run in `file`, which need not be fit to be planned. UserError for a built-in file, in
/// whose folder nothing is recorded.
RunRecords run_records(const std::string& file, const moulds::Library& library);

/// Of the base that the lines of `order` with that word are poured from. UserError as above.
RunRecords poured_records(const runs::Order& order, const std::string& word,
                          const moulds::Library& library);

std::vector<records::Batch> batches_of(const records::Records& records, const RunRecords& run);
std::optional<records::Batch> newest_batch(const records::Records& records, const RunRecords& run,
                                           std::int64_t number);

/// The code that waits for the next making of a batch, under whichever name of the run.
std::optional<std::string> reserved_code(const records::Records& records, const RunRecords& run,
                                         std::int64_t number);
/// What was reserved while the file had no id waits under its id from now on. Within an act.
void keep_reserved(records::Records& records, const RunRecords& run);

/// UserError where another file of the folder has the run's id too, and a batch by it: whose batch
/// this would be is not known then.
void refuse_shared_id(const records::Records& records, const RunRecords& run);

}  // namespace brimwright::service
