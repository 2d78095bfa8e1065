#pragma once

#include <memory>
#include <string>

namespace brimwright::records {

class Records;

/// One act, whole or not at all: what is written while it lives is there once `done()` came back,
/// whatever happens then, and is not if it ends without.
///
/// From its beginning nobody else writes. An act whose id was done before changes nothing: a page
/// that got no answer asks again with the same id.
class Act {
 public:
  /// `id` is the asker's, a UUID; `at` a moment with its offset; `about` JSON of what was asked.
  /// UserError where another program does not come to an end of its own act.
  Act(Records& records, const std::string& id, const std::string& at, const std::string& what,
      const std::string& about);
  ~Act();
  Act(const Act&) = delete;
  Act& operator=(const Act&) = delete;

  bool was_done_before() const { return was_done_before_; }
  /// On the disk when it returns. UserError where the disk is full or not to be written: then
  /// nothing of the act is there.
  void done();

 private:
  struct Open;
  std::unique_ptr<Open> open_;
  bool was_done_before_ = false;
};

}  // namespace brimwright::records
