#pragma once

#include "units/user_error.h"

#include <string>

namespace brimwright::test {

/// What `act` complains of, as it is printed; empty if it passes.
template <class Act>
std::string complaint_of(Act act) {
  try {
    act();
  } catch (const UserError& error) {
    return error.what();
  }
  return "";
}

}  // namespace brimwright::test
