#pragma once

#include "records/batches.h"
#include "records/blanks.h"
#include "records/note.h"
#include "records/notes.h"

#include <string>
#include <vector>

namespace brimwright::records {

/// Holds changes of notes against the blanks that they fill in and against each other.
class NoteChecks {
 public:
  /// `blanks` of `batch`, `before` what is noted so far.
  NoteChecks(const Batch& batch, const std::vector<Blank>& blanks, Notes before,
             const Noting& noting);

  /// What would be noted then, each value as it is kept. Throws as note() does.
  std::vector<Note> checked(const std::vector<Note>& changes);

 private:
  std::string checked_value(const Note& change) const;
  void check_size(const Blank& blank, const Note& change) const;
  void check_cup(const Blank& blank, const Note& change) const;
  void check_date(const Blank& blank, const Note& change) const;
  void check_weighing(const Blank& blank, const Note& change, const Weighing& weighing) const;
  void check_against_other(const Blank& blank, const Note& change) const;
  void check_ready(const Note& change) const;
  void ask_about_cure(const Blank& ready, const Note& change) const;
  void ask(const Note& change, const std::string& problem) const;
  const Blank& blank_of(const Note& change) const;

  const Batch& batch_;
  const std::vector<Blank>& blanks_;
  Notes notes_;
  const Noting& noting_;
};

}  // namespace brimwright::records
