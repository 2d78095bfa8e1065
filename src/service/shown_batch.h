#pragma once

#include "moulds/library.h"
#include "service/requests.h"

#include <map>
#include <optional>
#include <string>

namespace brimwright::service {

/// What is in sight of whoever notes: nothing else is begun or written over unasked.
struct ShownBatch {
  std::optional<std::string> id = {};            // in place of its number or code
  std::optional<std::string> mark = {};          // of the weights that it is begun with
  std::map<std::string, std::string> seen = {};  // what is noted, by its key; "" for nothing
};

/// As answer() of service.h. It begins a batch by the weights of that mark alone; where another
/// note stands by now than was seen, it changes nothing and asks for "seen".
Reply answer(const NoteRequest& request, const ShownBatch& shown, const UserTerms& terms,
             const moulds::Library& library, const Caller& caller);

}  // namespace brimwright::service
