#pragma once

#include "moulds/library.h"
#include "records/batches.h"
#include "records/notes.h"
#include "records/records.h"
#include "reports/note_report.h"
#include "runs/order_file.h"
#include "service/actual_weights.h"
#include "service/freezing.h"
#include "service/lot_taking.h"
#include "service/noted_batches.h"
#include "service/notes_reading.h"
#include "service/poured_base.h"
#include "service/requests.h"
#include "service/run_records.h"
#include "service/shown_batch.h"
#include "units/question.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::service {

/// What confirms that more lye was weighed than planned.
inline constexpr auto more_lye = "lye-heavy";
[[noreturn]] void ask_about_lye(const std::vector<Remark>& told, const Place& where,
                                const std::string& remedy);

/// One request on the records of one run, or of a base for several.
class NoteDesk {
 public:
  NoteDesk(const NoteRequest& request, const UserTerms& terms, const moulds::Library& library,
           const Caller& caller, const ShownBatch& shown);

  bool begins_records() const { return request_.begin && !records::Records::in(run_.folder); }
  void rehearse();

  reports::NoteReport report();

 private:
  // note_desk.cpp
  std::string word_asked() const;
  void refuse_what_does_not_go_together();
  std::int64_t read_batch_number(const std::string& typed) const;
  std::string act_id() const;
  std::string about(const char* code, const std::string& which) const;
  FrozenPlan planned();
  // note_beginning.cpp
  void begin(records::Records& records);
  records::Batch begun(records::Records& records, const FrozenPlan& frozen);
  std::string begun_on() const;
  void refuse_begun(const records::Records& records) const;
  void refuse_other_weights(const FrozenPlan& frozen) const;
  void look_at_orders();
  void ask_about_lots(const LotsTaken& taken);
  void reserve();
  // note_changing.cpp
  void change();
  void check_code_of_file(const records::Batch& batch) const;
  void ask_about_unseen(const records::Records& records, const records::Batch& batch) const;
  void note(records::Records& records, const records::Batch& batch);
  std::vector<records::Note> uses() const;
  void weigh_otherwise(records::Records& records, const records::Batch& batch,
                       const records::Notes& before, bool is_meant);
  bool was_told(const records::Records& records, const records::Batch& batch,
                const records::Notes& before, const AsWeighed& told) const;
  void tell_noted(const records::Batch& batch);
  // note_looking.cpp
  void look();
  void look_at_form(const records::Records* records);
  records::Batch picked(const records::Records& records) const;
  records::Batch batch_with_code(const records::Records& records) const;
  records::Batch batch_with_id(const records::Records& records) const;
  void show(const records::Records& records, const records::Batch& batch);
  reports::NotedBatch shown_of(const records::Records& records, NotedBatches& noted,
                               const records::Batch& batch);

  const NoteRequest& request_;
  const UserTerms& terms_;
  const moulds::Library& library_;
  const Caller& caller_;
  const ShownBatch& shown_;
  std::optional<runs::Order> order_;  // whose lines are poured together
  std::optional<PouredBase> base_;    // once that is planned
  RunRecords run_;
  std::vector<records::Batch> begun_lines_;  // poured from it
  NotesAsked asked_;
  std::optional<std::string> code_;
  std::optional<std::int64_t> number_;
  reports::NoteReport report_;
};

}  // namespace brimwright::service
