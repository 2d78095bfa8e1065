#include "geometry/files/text_lines.h"
#include "geometry/files/text_meshes.h"
#include "units/user_error.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstring>
#include <limits>
#include <string>
#include <utility>
#include <vector>

// G. Turk, The PLY Polygon File Format, 1994.

namespace brimwright::geometry {
namespace {

struct Type {
  std::string_view name, other_name;
  std::size_t size;
  enum class Kind { natural, whole, real } kind;
};

constexpr std::array<Type, 8> types = {{{"char", "int8", 1, Type::Kind::whole},
                                        {"uchar", "uint8", 1, Type::Kind::natural},
                                        {"short", "int16", 2, Type::Kind::whole},
                                        {"ushort", "uint16", 2, Type::Kind::natural},
                                        {"int", "int32", 4, Type::Kind::whole},
                                        {"uint", "uint32", 4, Type::Kind::natural},
                                        {"float", "float32", 4, Type::Kind::real},
                                        {"double", "float64", 8, Type::Kind::real}}};

struct Property {
  std::string_view name;
  Type type{};
  bool is_list = false;
  Type count_type{};  // of a list
};

struct Element {
  std::string_view name;
  std::size_t count = 0;
  std::vector<Property> properties;
};

enum class Writing { text, little_endian, big_endian };

struct Layout {
  Writing writing = Writing::text;
  std::vector<Element> elements;
  std::size_t vertices = 0, faces = 0;
};

bool is_place(const Property& property) {
  return property.name == "x" || property.name == "y" || property.name == "z";
}
bool is_corners(const Property& property) {
  return property.name == "vertex_indices" || property.name == "vertex_index";
}

Type type_named(std::string_view name, const TextLines& lines) {
  for (const Type& type : types)
    if (name == type.name || name == type.other_name) return type;
  lines.refuse("has a kind of number that PLY does not know");
}

Property property_of(TextLines& lines) {
  Property property;
  std::string_view word = lines.word();
  if (word == "list") {
    property.is_list = true;
    property.count_type = type_named(lines.word(), lines);
    if (property.count_type.kind == Type::Kind::real) lines.refuse("counts a list in fractions");
    word = lines.word();
  }
  property.type = type_named(word, lines);
  property.name = lines.word();
  return property;
}

void check(const Layout& layout, const TextLines& lines) {
  for (const Element& element : layout.elements) {
    // Rows of nothing cost a file no byte, and their reader a step each.
    if (element.properties.empty() && element.count > 0)
      lines.refuse("has an element of which it does not say how it is written");
    const auto count = [&](auto is) {
      return std::count_if(element.properties.begin(), element.properties.end(), is);
    };
    const bool ok = element.name == "vertex"
                        ? count([](const Property& p) { return is_place(p) && !p.is_list; }) == 3 &&
                              count(is_place) == 3
                        : element.name != "face" || (count([](const Property& p) {
                                                       return is_corners(p) && p.is_list &&
                                                              p.type.kind != Type::Kind::real;
                                                     }) == 1 &&
                                                     count(is_corners) == 1);
    if (!ok) lines.refuse("does not say how its corners and facets are written");
    for (const std::string_view axis : {"x", "y", "z"}) {
      if (element.name == "vertex" &&
          count([&](const Property& p) { return p.name == axis; }) != 1) {
        lines.refuse("does not say how its corners are written");
      }
    }
  }
}

/// The part up to "end_header", and how long it is.
Layout layout_of(std::string_view head, std::size_t size, const std::string& file) {
  TextLines lines(head, "PLY", file);
  Layout layout;
  if (!lines.next_line() || lines.word() != "ply") lines.refuse("does not begin with \"ply\"");
  while (lines.next_line()) {
    const std::string_view keyword = lines.word();
    if (keyword == "format") {
      const std::string_view writing = lines.word();
      if (writing == "binary_little_endian") {
        layout.writing = Writing::little_endian;
      } else if (writing == "binary_big_endian") {
        layout.writing = Writing::big_endian;
      } else if (writing != "ascii") {
        lines.refuse("is written in a way that PLY does not know");
      }
    } else if (keyword == "element") {
      Element element{.name = lines.word(), .properties = {}};
      element.count = lines.index(lines.word(), std::numeric_limits<std::int64_t>::max());
      if (element.count > size)
        lines.refuse("says it holds more than it does; it was cut short or is broken");
      if (element.name == "vertex") layout.vertices += element.count;
      if (element.name == "face") layout.faces += element.count;
      layout.elements.push_back(std::move(element));
    } else if (keyword == "property") {
      if (layout.elements.empty()) lines.refuse("has a property of nothing");
      layout.elements.back().properties.push_back(property_of(lines));
    } else if (keyword != "comment" && keyword != "obj_info" && keyword != "end_header") {
      lines.refuse("has a line in its head that PLY does not know");
    }
  }
  check(layout, lines);
  return layout;
}

void pass_text(const Layout& layout, TextLines lines) {
  while (lines.next_line() && lines.word() != "end_header") {
  }
  for (const Element& element : layout.elements) {
    for (std::size_t row = 0; row < element.count; ++row) {
      if (!lines.next_line())
        lines.refuse("says it holds more than it does; it was cut short or is broken");
      for (const Property& property : element.properties) {
        const bool corners = element.name == "face" && is_corners(property);
        const std::size_t values =
            property.is_list ? lines.index(lines.word(), std::numeric_limits<std::int32_t>::max())
                             : 1;
        if (corners && values < 3) lines.refuse("has a facet of fewer than three corners");
        for (std::size_t i = 0; i < values; ++i) {
          if (corners) {
            lines.index(lines.word(), layout.vertices);
          } else {
            lines.number(lines.word());
          }
        }
      }
      if (!lines.word().empty()) lines.refuse("has more numbers in a line than it says");
    }
  }
  if (lines.next_line()) lines.refuse("holds more than it says");
}

/// Numbers of a binary PLY, one after the other.
class Numbers {
 public:
  Numbers(std::string_view bytes, Writing writing, const std::string& file)
      : bytes_(bytes), swap_(writing == Writing::big_endian), file_(file) {
    static_assert(std::endian::native == std::endian::little);
  }

  double take(const Type& type) {
    if (bytes_.size() < type.size)
      refuse("says it holds more than it does; it was cut short or is broken");
    std::array<char, 8> raw{};
    std::copy_n(bytes_.begin(), type.size, raw.begin());
    if (swap_) std::reverse(raw.begin(), raw.begin() + static_cast<std::ptrdiff_t>(type.size));
    bytes_.remove_prefix(type.size);
    switch (type.kind) {
      case Type::Kind::real:
        return type.size == 4 ? static_cast<double>(as<float>(raw)) : as<double>(raw);
      case Type::Kind::natural:
        return static_cast<double>(as<std::uint64_t>(raw));
      case Type::Kind::whole:
        break;
    }
    if (type.size == 1) return as<std::int8_t>(raw);
    return type.size == 2 ? as<std::int16_t>(raw) : as<std::int32_t>(raw);
  }
  bool at_end() const { return bytes_.find_first_not_of(" \r\n") == std::string_view::npos; }

  [[noreturn]] void refuse(const std::string& problem) const {
    throw UserError({.file = file_,
                     .field = "",
                     .problem = "is not a sound PLY file: it " + problem,
                     .remedy = "export it again, or as a binary STL"});
  }

 private:
  template <class Number>
  static Number as(const std::array<char, 8>& raw) {
    Number number;
    std::memcpy(&number, raw.data(), sizeof number);
    return number;
  }

  std::string_view bytes_;
  bool swap_;
  const std::string& file_;
};

void pass_binary(const Layout& layout, Numbers numbers) {
  for (const Element& element : layout.elements) {
    for (std::size_t row = 0; row < element.count; ++row) {
      for (const Property& property : element.properties) {
        const bool corners = element.name == "face" && is_corners(property);
        const bool place = element.name == "vertex" && is_place(property);
        const double values = property.is_list ? numbers.take(property.count_type) : 1;
        if (corners && values < 3) numbers.refuse("has a facet of fewer than three corners");
        for (double i = 0; i < values; ++i) {
          const double value = numbers.take(property.type);
          if (corners && (value < 0 || value >= static_cast<double>(layout.vertices)))
            numbers.refuse("has a facet with a corner that is not there");
          if (place && !(std::abs(value) <= std::numeric_limits<float>::max()))
            numbers.refuse("has a corner that is not a number");
        }
      }
    }
  }
  if (!numbers.at_end()) numbers.refuse("holds more than it says");
}

}  // namespace

std::size_t polygons_of_ply(std::string_view bytes, const std::string& file) {
  constexpr std::string_view last_line = "end_header";
  const std::size_t last = bytes.find(last_line);
  const std::size_t start = last == std::string_view::npos ? last : bytes.find('\n', last);
  if (start == std::string_view::npos)
    throw UserError({.file = file,
                     .field = "",
                     .problem = "is not a sound PLY file: it lacks \"end_header\"",
                     .remedy = "it was cut short or is broken; copy or export it again"});
  const Layout layout = layout_of(bytes.substr(0, start), bytes.size(), file);
  if (layout.writing == Writing::text) {
    pass_text(layout, TextLines(bytes, "PLY", file));
  } else {
    pass_binary(layout, Numbers(bytes.substr(start + 1), layout.writing, file));
  }
  return layout.faces;
}

}  // namespace brimwright::geometry
