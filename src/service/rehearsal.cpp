#include "service/rehearsal.h"

#include "units/user_error.h"

namespace brimwright::service {

using records::Records;

void rehearse(const std::string& folder, const std::function<void(Records&)>& act) {
  Records none = Records::rehearsed_in(folder);
  try {
    act(none);
  } catch (const UserError&) {
    if (!Records::in(folder)) throw;
  }
}

}  // namespace brimwright::service
