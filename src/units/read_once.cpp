#include "units/read_once.h"

#include "units/field_node.h"

#include <nlohmann/json.hpp>

namespace brimwright {

Fields ReadOnce::document(const std::string& file) {
  const auto json =
      of<Fields::Node::Json>(file, [&] { return json_of_document(text_of_file(file), file); });
  return document_of(json, file);
}

}  // namespace brimwright
