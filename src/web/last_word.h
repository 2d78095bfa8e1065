#pragma once

#include <cstdint>

namespace brimwright::web {

/// From now on a thread that breaks down (a fault of memory, an abort) first writes the number of
/// the request it works on, 8 bytes, to the descriptor; then the process ends as it would have.
void tell_of_breakdowns(int descriptor);

/// While this lives, this thread works on that request.
class LastWord {
 public:
  explicit LastWord(std::uint64_t request);
  ~LastWord();
  LastWord(const LastWord&) = delete;
  LastWord& operator=(const LastWord&) = delete;
};

}  // namespace brimwright::web
