#pragma once

#include "units/user_error.h"

#include <cstddef>
#include <optional>
#include <string>
#include <utility>

namespace brimwright {

/// What of a complaint a program acts upon, so that none has to read its words.
struct ComplaintFacts {
  /// What keeps a figure that is asked about.
  struct Confirmation {
    std::string at;      // the pointer of the "confirmed" that would name it
    std::string figure;  // as it is named there
  };

  bool is_lye_heavy = false;  // the soap would be, or might be
  std::optional<Confirmation> keeps = {};
  std::optional<std::size_t> entry = {};  // of the list at the field the one meant, from 0
};

/// A mistake that more is known of than is told in words.
class UserErrorWithFacts : public UserError {
 public:
  UserErrorWithFacts(const Place& place, std::string problem, std::string remedy,
                     ComplaintFacts facts)
      : UserError(place, std::move(problem), std::move(remedy)), facts_(std::move(facts)) {}

  const ComplaintFacts& facts() const { return facts_; }

 private:
  ComplaintFacts facts_;
};

}  // namespace brimwright
