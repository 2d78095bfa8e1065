#pragma once

#include "records/note.h"

#include <vector>

namespace brimwright::records {

class Records;
struct Batch;

/// Notes all of `changes`, or with a UserError none of them: values that cannot be read or be so, a
/// key that the batch does not have, ready without a test that was passed. A Question
/// (units/question.h) that asks "confirmed" where one is far from usual or does not fit another.
/// Within an act.
void note(Records& records, const Batch& batch, const std::vector<Note>& changes,
          const Noting& noting);

}  // namespace brimwright::records
