#pragma once

#include "units/user_error.h"

#include <string>
#include <vector>

namespace brimwright::records {

class Records;
struct Batch;

/// What is noted, or taken back with an empty value. A key "cured.2026-12-29" is a weighing:
/// "12 pieces, 1040 g".
struct Note {
  std::string key, value;
  Place where;  // of the value, for complaints
};
/// What a note is held against.
struct Noting {
  std::string today;                        // ISO 8601 day
  std::string noted_at;                     // moment with offset
  std::vector<std::string> confirmed = {};  // values that were asked about, as they are written
  Place confirmed_at = {};
};

/// Notes all of `changes`, or with a UserError none of them: values that cannot be read or be so, a
/// key that the batch does not have, ready without a test that was passed. A Question
/// (units/question.h) that asks "confirmed" where one is far from usual or does not fit another.
/// Within an act.
void note(Records& records, const Batch& batch, const std::vector<Note>& changes,
          const Noting& noting);

}  // namespace brimwright::records
