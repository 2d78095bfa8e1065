#include "geometry/files/package_model.h"

#include "geometry/files/text_lines.h"
#include "geometry/files/xml_tags.h"
#include "units/user_error.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <map>
#include <vector>

namespace brimwright::geometry {
namespace {

struct Object {
  std::vector<std::string> components;
  double placings = -1;  // of meshes, in all; below 0 while not known
  bool has_mesh = false;
  bool being_counted = false;
};

class Model {
 public:
  explicit Model(const std::string& file) : file_(file) {}

  bool see(std::string_view name, const XmlAttributes& attributes) {
    if (name == "object") begin_object(attributes);
    if (name == "vertex") pass_vertex(attributes);
    if (name == "triangle") pass_triangle(attributes);
    if (name == "component") current().components.push_back(placed_object(attributes));
    if (name == "item") items_.push_back(placed_object(attributes));
    return true;
  }

  void check_placings() {
    constexpr double most = 10'000;  // our own bound
    double placings = 0;
    for (const std::string& item : items_) placings += placings_of(item, 0);
    if (placings > most) refuse("places its objects more than 10000 times");
  }

  [[noreturn]] void refuse(const std::string& problem) const {
    throw UserError({.file = file_,
                     .field = "",
                     .problem = "is not a sound 3MF file: it " + problem,
                     .remedy = "export it again, or as a binary STL"});
  }

 private:
  std::string attribute(const XmlAttributes& attributes, std::string_view name) const {
    const auto found = attributes.find(name);
    if (found == attributes.end()) refuse("lacks \"" + std::string(name) + "\" in a tag");
    return found->second;
  }

  Object& current() {
    if (current_ == objects_.end()) refuse("has a component outside of any object");
    return current_->second;
  }

  void begin_object(const XmlAttributes& attributes) {
    const auto [object, is_new] = objects_.emplace(attribute(attributes, "id"), Object{});
    if (!is_new) refuse("gives two objects the number " + object->first);
    current_ = object;
    vertices_ = 0;
  }

  void pass_vertex(const XmlAttributes& attributes) {
    for (const char* axis : {"x", "y", "z"}) {
      if (!plain_number(attribute(attributes, axis)))
        refuse("has a corner that is not a number, or one that no mould has");
    }
    ++vertices_;
  }

  void pass_triangle(const XmlAttributes& attributes) {
    for (const char* corner : {"v1", "v2", "v3"}) {
      const auto index = whole_number(attribute(attributes, corner));
      if (!index || *index < 0 || *index >= vertices_)
        refuse("has a facet with a corner that is not there");
    }
    current().has_mesh = true;
  }

  /// Of an item or component; its transform must be twelve numbers.
  std::string placed_object(const XmlAttributes& attributes) const {
    const auto transform = attributes.find("transform");
    if (transform != attributes.end()) {
      TextLines numbers(transform->second, "3MF", file_);
      for (int i = 0; i < 12; ++i)
        if (!plain_number(numbers.word_anywhere())) refuse("places an object by no proper matrix");
      if (!numbers.word_anywhere().empty()) refuse("places an object by no proper matrix");
    }
    return attribute(attributes, "objectid");
  }

  double placings_of(const std::string& id, int depth) {
    constexpr int deepest = 64;  // our own bound
    const auto found = objects_.find(id);
    if (found == objects_.end()) refuse("places object " + id + ", which is not there");
    Object& object = found->second;
    if (object.being_counted) refuse("has object " + id + " within itself");
    if (depth > deepest) refuse("has objects within each other more than 64 deep");
    if (object.placings >= 0) return object.placings;
    object.being_counted = true;
    double placings = object.has_mesh ? 1 : 0;
    for (const std::string& component : object.components)
      placings += placings_of(component, depth + 1);
    object.being_counted = false;
    return object.placings = placings;
  }

  const std::string& file_;
  std::map<std::string, Object> objects_;
  std::map<std::string, Object>::iterator current_ = objects_.end();
  std::int64_t vertices_ = 0;  // of the current object
  std::vector<std::string> items_;
};

}  // namespace

void check_package_model(std::string_view xml, const std::string& file) {
  Model model(file);
  const bool sound = for_each_tag(xml, [&](std::string_view name, const XmlAttributes& attributes) {
    return model.see(name, attributes);
  });
  if (!sound) model.refuse("breaks the rules of XML");
  model.check_placings();
}

}  // namespace brimwright::geometry
