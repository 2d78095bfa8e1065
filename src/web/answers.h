#pragma once

#include "units/user_error.h"
#include "web/http_listener.h"

#include <nlohmann/json_fwd.hpp>

#include <string>

namespace brimwright::web {

/// Texts in it may hold names of files, which need not be UTF-8.
HttpAnswer json_answer(const nlohmann::ordered_json& json, int status = 200);

/// {"complaint": {"file", "field", "problem", "remedy", "line"}}: all that is wrong, in parts and
/// as the one line that the command line would print.
HttpAnswer complaint(int status, const UserError::Parts& parts, const std::string& line);

/// Status 422, the server's word for "the input wants mending".
HttpAnswer complaint(const UserError& error);

/// Status 500: a fault of this program.
HttpAnswer fault(const std::string& line);

}  // namespace brimwright::web
