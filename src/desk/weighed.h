#pragma once

#include "desk/bench_batch.h"
#include "desk/desk.h"
#include "units/fields.h"

#include <cstdint>
#include <optional>
#include <string>

namespace brimwright::desk {

/// What the page has weighed, or takes back.
struct Desk::Weighed {
  std::string file;
  std::optional<std::string> text;  // of the run as typed
  std::int64_t batch;
  std::string seen;  // the mark of the weights that it shows
  bool begins;       // a batch that has not been begun yet

  Weighed(const Fields& fields, bool is_beginning);
};

/// What is asked rests on weights that the page shows, which must be those that are kept.
void check_mark(const BenchBatch& batch, const std::string& seen);

}  // namespace brimwright::desk
