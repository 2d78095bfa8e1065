#include "units/read_once.h"

#include "units/field_node.h"

#include <nlohmann/json.hpp>

namespace brimwright {

Fields ReadOnce::document(const std::string& file) {
  const auto json = of<Fields::Node::Json>(file, [&] {
    return json_of_document(of<Text>(file, [&] { return Text{text_of_file(file)}; })->text, file);
  });
  return document_of(json, file);
}

const std::string* ReadOnce::text(const std::string& file) const {
  const auto known = known_.find({typeid(Text), file});
  return known == known_.end() ? nullptr : &static_cast<const Text*>(known->second.get())->text;
}

}  // namespace brimwright
