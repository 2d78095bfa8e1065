#include "reports/json_document.h"

#include <nlohmann/json.hpp>

namespace brimwright::reports {

std::string json_document(const nlohmann::ordered_json& json) {
  constexpr int indent = 2;
  return json.dump(indent, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + "\n";
}

}  // namespace brimwright::reports
