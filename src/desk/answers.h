#pragma once

#include "desk/request.h"
#include "units/complaint_facts.h"
#include "units/question.h"
#include "units/user_error.h"

#include <nlohmann/json_fwd.hpp>

#include <string>
#include <vector>

namespace brimwright::desk {

/// Texts in it may hold names of files, which need not be UTF-8.
HttpAnswer json_answer(const nlohmann::ordered_json& json, int status = 200);

/// What a page may act upon: what a complaint asks for, if it does, and what is known of it.
struct Asked {
  std::string member = {};
  std::vector<Choice> choices = {};
  ComplaintFacts facts = {};
};

/// {"complaint": {"file", "field", "problem", "remedy", "line"}}: all that is wrong, in parts and
/// as one line. One that asks also has "asks", the member of the request that answers, and may have
/// "choices", what can be said: each the request's own members, and in "size" how large the thing
/// then is, in that unit, and in "size_mm". Where the soap would be lye-heavy, or might, it has
/// "lye_heavy": true; where a figure is asked about that may be right, "keep", {"at", "figure"}:
/// what "confirmed" at that pointer has to name; and where it is about one entry of a list,
/// "entry", counted from 0.
HttpAnswer complaint(int status, const UserError::Parts& parts, const std::string& line,
                     const Asked& asked = {});

/// Status 422, the server's word for "the input wants mending".
HttpAnswer complaint(const UserError& error);

/// What was asked rests on what is so no longer: somebody else was quicker. Status 409.
class Overtaken : public UserError {
 public:
  using UserError::UserError;
};

/// A refusal of the request as such, told like every complaint.
HttpAnswer refusal(int status, const std::string& field, const std::string& problem,
                   const std::string& remedy);

/// Status 500: a fault of this program.
HttpAnswer fault(const std::string& line);

}  // namespace brimwright::desk
