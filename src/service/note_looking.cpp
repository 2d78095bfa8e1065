#include "records/batch_code.h"
#include "records/blanks.h"
#include "service/note_desk.h"
#include "units/written_number.h"

#include <utility>

namespace brimwright::service {
namespace {

using records::Batch;
using records::Records;

}  // namespace

Batch NoteDesk::batch_with_code(const Records& records) const {
  const Place where = terms_.place("batch-code");
  const std::string code = records::read_batch_code(*request_.batch_code, where);
  const auto batch = records::batch_called(records, code);
  if (!batch)
    throw UserError(where, "no batch has the code " + brimwright::quoted(code),
                    "look which ones there are with brimwright note " + run_.file);
  for (const std::string& key : run_.keys())
    if (batch->run == key) return *batch;
  throw UserError(where, brimwright::quoted(code) + " is a batch of " + batch->run_file,
                  "name that run");
}

Batch NoteDesk::batch_with_id(const Records& records) const {
  for (const Batch& batch : batches_of(records, run_))
    if (batch.id == *shown_.id) return batch;
  throw UserError({run_.file, ""}, "has no batch of that id any more", "look again");
}

/// The one that is meant, by its id, its code, its number or because there is no other.
Batch NoteDesk::picked(const Records& records) const {
  if (shown_.id) return batch_with_id(records);
  if (request_.batch_code) return batch_with_code(records);
  if (number_) {
    if (auto batch = newest_batch(records, run_, *number_)) return *batch;
    throw UserError(terms_.place("batch"),
                    "batch " + std::to_string(*number_) + " has not been begun",
                    "give " + terms_.say({"begin"}) + " when its lye is mixed");
  }
  const auto all = batches_of(records, run_);
  if (all.size() == 1) return all.front();
  if (all.empty())
    throw UserError({run_.file, ""}, "has no batch that was begun",
                    "give " + terms_.say({"begin"}) + " when its lye is mixed");
  throw UserError(terms_.place("batch"),
                  "is missing: " + std::to_string(all.size()) + " batches of this run were begun",
                  "say which, " + terms_.say({"batch", "1"}) + " or " +
                      terms_.say({"batch-code", all.back().code}));
}

reports::NotedBatch NoteDesk::shown_of(const Records& records, NotedBatches& noted,
                                       const Batch& batch) {
  reports::NotedBatch shown = noted.of(batch);
  shown.as_weighed =
      as_weighed(records, batch, shown.notes, request_.file, library_, caller_).remarks;
  return shown;
}

void NoteDesk::show(const Records& records, const Batch& batch) {
  report_.is_form = true;
  NotedBatches noted(records, run_, request_.today);
  report_.batches.push_back(shown_of(records, noted, batch));
}

/// By today's plan, of a batch that has not been begun.
void NoteDesk::look_at_form(const Records* records) {
  const FrozenPlan frozen = planned();
  reports::NotedBatch form{.number = *number_,
                           .blanks = records::blanks_in(frozen.answer, *number_)};
  if (records != nullptr) form.reserved = reserved_code(*records, run_, *number_);
  report_.is_form = true;
  report_.batches.push_back(std::move(form));
}

void NoteDesk::look() {
  const auto records = Records::in(run_.folder);
  if (records && (request_.batch_code || (number_ && newest_batch(*records, run_, *number_))))
    return show(*records, picked(*records));
  if (number_) return look_at_form(records ? &*records : nullptr);
  if (request_.batch_code)
    throw UserError(terms_.place("batch-code"), "no batch of this run has been begun",
                    "give " + terms_.say({"begin"}) + " when its lye is mixed");
  if (!records) return;
  NotedBatches noted(*records, run_, request_.today);
  for (const Batch& batch : batches_of(*records, run_)) {
    report_.batches.push_back(shown_of(*records, noted, batch));
    report_.in_all = noted.in_all(batch);
  }
}

}  // namespace brimwright::service
