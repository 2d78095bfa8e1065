#pragma once

#include <memory>

namespace brimwright::records {

class Records;

/// What is read of records while this lives is all of one moment, whatever others write meanwhile;
/// they wait for its end to do so, so it is not to live long.
class AsOfNow {
 public:
  explicit AsOfNow(const Records& records);
  ~AsOfNow();
  AsOfNow(const AsOfNow&) = delete;
  AsOfNow& operator=(const AsOfNow&) = delete;

 private:
  struct Open;
  std::unique_ptr<Open> open_;
};

}  // namespace brimwright::records
