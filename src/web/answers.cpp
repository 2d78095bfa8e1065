#include "web/answers.h"

#include <nlohmann/json.hpp>

namespace brimwright::web {

using Json = nlohmann::ordered_json;

HttpAnswer json_answer(const Json& json, int status) {
  return {.status = status,
          .body = json.dump(-1, ' ', false, Json::error_handler_t::replace) + "\n"};
}

HttpAnswer complaint(int status, const UserError::Parts& parts, const std::string& line) {
  const Json json = {{"complaint",
                      {{"file", parts.file},
                       {"field", parts.field},
                       {"problem", parts.problem},
                       {"remedy", parts.remedy},
                       {"line", line}}}};
  // Names of files need not be UTF-8.
  return {.status = status, .body = json.dump(-1, ' ', false, Json::error_handler_t::replace)};
}

HttpAnswer complaint(const UserError& error) { return complaint(422, error.parts(), error.what()); }

HttpAnswer fault(const std::string& line) {
  return complaint(500, {.file = "", .field = "", .problem = line, .remedy = ""}, line);
}

}  // namespace brimwright::web
