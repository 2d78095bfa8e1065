#pragma once

#include "records/batches.h"
#include "records/blanks.h"
#include "records/notes.h"
#include "records/weighing.h"
#include "units/remark.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::reports {

/// A batch of a run with all that may be noted of it, and what is.
struct NotedBatch {
  std::int64_t number = 1;
  std::optional<records::Batch> batch = {};  // nothing where it has not been begun
  std::optional<std::string> reserved = {};  // the code that waits for its next making
  std::vector<records::Blank> blanks = {};   // as frozen, or by today's plan
  std::vector<records::Blank> rows = {};     // what it weighs, once it is begun
  records::Notes notes = {};
  std::vector<records::Weighing> weighings = {};
  records::ForSale for_sale = {};
  /// The batches that are poured from it, where it is a base for several runs; and, of one of them,
  /// the code of that base.
  std::vector<records::Batch> lines = {};
  std::string poured_from = {};
  std::vector<Remark> as_weighed = {};  // what comes of its lye by weights that were not planned
};

/// What `note` answers.
struct NoteReport {
  std::string run, file, id;                // its name, its file's, its id or nothing
  std::optional<std::int64_t> in_all = {};  // batches of the run, where that is known
  std::vector<NotedBatch> batches = {};
  bool is_form = false;                // show all blanks, filled in or not
  std::vector<std::string> done = {};  // what was done, in sentences
  std::vector<Remark> remarks = {};    // what came up with it
};

std::string note_text(const NoteReport& report);
std::string note_json(const NoteReport& report);  // schema brimwright.note/1

}  // namespace brimwright::reports
