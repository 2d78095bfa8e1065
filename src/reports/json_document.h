#pragma once

#include <nlohmann/json_fwd.hpp>

#include <string>

namespace brimwright::reports {

/// `json` as a document that ends its last line. A name of a file need not be UTF-8, which JSON has
/// to be: what is not becomes U+FFFD.
std::string json_document(const nlohmann::ordered_json& json);

}  // namespace brimwright::reports
