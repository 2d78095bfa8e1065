#include "geometry/files/split_package.h"

#include "geometry/files/package_unit.h"
#include "geometry/files/text_lines.h"
#include "geometry/files/xml_tags.h"
#include "geometry/files/zip_archive.h"
#include "units/letters.h"
#include "units/user_error.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <map>
#include <utility>
#include <vector>

namespace brimwright::geometry {
namespace {

// 3MF Production Extension 1.1, Appendix C.
constexpr std::string_view production =
    "http://schemas.microsoft.com/3dmanufacturing/production/2015/06";

[[noreturn]] void refuse(const std::string& file, const std::string& problem) {
  throw UserError({.file = file,
                   .field = "",
                   .problem = "is not a sound 3MF file: it " + problem,
                   .remedy = "export it again as a plain 3MF, or as a binary STL"});
}

/// Twelve numbers of a 4 x 3 matrix for row vectors, the last row the shift (3MF Core 1.3, 3.3).
struct Matrix {
  std::array<double, 12> m = {1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0};

  Point times(const Point& p) const {
    Point q{};
    for (std::size_t i = 0; i < 3; ++i)
      q[i] = p[0] * m[i] + p[1] * m[3 + i] + p[2] * m[6 + i] + m[9 + i];
    return q;
  }
  /// First this, then `outer`.
  Matrix within(const Matrix& outer) const {
    Matrix both;
    for (std::size_t row = 0; row < 4; ++row)
      for (std::size_t i = 0; i < 3; ++i)
        both.m[3 * row + i] = m[3 * row] * outer.m[i] + m[3 * row + 1] * outer.m[3 + i] +
                              m[3 * row + 2] * outer.m[6 + i] + (row == 3 ? outer.m[9 + i] : 0);
    return both;
  }
  bool mirrors() const {
    return m[0] * (m[4] * m[8] - m[5] * m[7]) - m[1] * (m[3] * m[8] - m[5] * m[6]) +
               m[2] * (m[3] * m[7] - m[4] * m[6]) <
           0;
  }
};

/// An item of the build or a component: an object of some part, placed.
struct Placed {
  std::string part, object;
  Matrix matrix;
};

struct Object {
  TriangleMesh mesh;
  std::vector<Placed> components;
  bool is_open = false;  // being placed
};

struct ModelPart {
  std::string unit;
  std::map<std::string, Object> objects;
  std::vector<Placed> items;
};

/// Takes one part's tags.
class PartReader {
 public:
  PartReader(std::string name, bool is_root, const std::string& file)
      : name_(std::move(name)), is_root_(is_root), file_(file) {}

  void see(std::string_view tag, const XmlAttributes& attributes) {
    if (tag == "model") begin_model(attributes);
    if (tag == "object") begin_object(attributes);
    if (tag == "vertex") take_vertex(attributes);
    if (tag == "triangle") take_triangle(attributes);
    if (tag == "component") current().components.push_back(placed(attributes));
    if (tag == "item" && is_root_) part_.items.push_back(placed(attributes));
  }
  ModelPart part() && { return std::move(part_); }

 private:
  std::string attribute(const XmlAttributes& attributes, std::string_view name) const {
    const auto found = attributes.find(name);
    if (found == attributes.end()) refuse(file_, "lacks \"" + std::string(name) + "\" in a tag");
    return found->second;
  }

  void begin_model(const XmlAttributes& attributes) {
    const auto unit = attributes.find("unit");
    part_.unit = unit == attributes.end() ? "millimeter" : unit->second;
    constexpr std::string_view mark = "xmlns:";
    for (const auto& [name, value] : attributes)
      if (name.starts_with(mark) && value == production)
        path_names_.push_back(name.substr(mark.size()) + ":path");
  }

  Object& current() {
    if (current_ == nullptr) refuse(file_, "has a shape outside of any object");
    return *current_;
  }

  void begin_object(const XmlAttributes& attributes) {
    const auto [object, is_new] = part_.objects.emplace(attribute(attributes, "id"), Object{});
    if (!is_new) refuse(file_, "gives two objects of one part the number " + object->first);
    current_ = &object->second;
  }

  void take_vertex(const XmlAttributes& attributes) {
    Point p{};
    for (std::size_t i = 0; i < 3; ++i) {
      constexpr std::array axes = {"x", "y", "z"};
      const auto number = plain_number(attribute(attributes, axes[i]));
      if (!number) refuse(file_, "has a corner that is not a number, or one that no mould has");
      p[i] = *number;
    }
    current().mesh.vertices_mm.push_back(p);
  }

  void take_triangle(const XmlAttributes& attributes) {
    TriangleMesh& mesh = current().mesh;
    std::array<std::uint32_t, 3> corners{};
    for (std::size_t i = 0; i < 3; ++i) {
      constexpr std::array names = {"v1", "v2", "v3"};
      const auto index = whole_number(attribute(attributes, names[i]));
      if (!index || *index < 0 || static_cast<std::uint64_t>(*index) >= mesh.vertices_mm.size())
        refuse(file_, "has a facet with a corner that is not there");
      corners[i] = static_cast<std::uint32_t>(*index);
    }
    mesh.triangles.push_back(corners);
  }

  /// The part that an item or component names; its own if it names none.
  std::string part_of(const XmlAttributes& attributes) const {
    for (const auto& [name, value] : attributes) {
      if (!name.ends_with(":path")) continue;
      if (std::find(path_names_.begin(), path_names_.end(), name) == path_names_.end())
        refuse(file_, "names a part by \"" + name + "\", which belongs to no extension known here");
      if (!is_root_)
        refuse(file_,
               "has a part, " + name_ + ", that names another part, as its standard forbids");
      if (!value.starts_with('/')) refuse(file_, "names the part " + value + " by no whole path");
      return in_small_letters(value.substr(1));  // alike in capitals, as in ZipArchive
    }
    return name_;
  }

  Placed placed(const XmlAttributes& attributes) const {
    Placed placed{part_of(attributes), attribute(attributes, "objectid"), {}};
    const auto transform = attributes.find("transform");
    if (transform == attributes.end()) return placed;
    TextLines numbers(transform->second, "3MF", file_);
    for (double& number : placed.matrix.m) {
      const auto read = plain_number(numbers.word_anywhere());
      if (!read) refuse(file_, "places an object by no proper matrix");
      number = *read;
    }
    if (!numbers.word_anywhere().empty()) refuse(file_, "places an object by no proper matrix");
    return placed;
  }

  std::string name_;
  bool is_root_;
  const std::string& file_;
  ModelPart part_;
  Object* current_ = nullptr;
  std::vector<std::string> path_names_;  // "p:path"
};

/// Builds what the root part's build names, reading parts as they come up.
class Builder {
 public:
  Builder(const ZipArchive& package, std::string root, const std::string& file)
      : package_(package), root_(std::move(root)), file_(file) {}

  ImportedMesh built() {
    const std::vector<Placed> items = part(root_).items;
    for (const Placed& item : items) place(item, {}, 0);
    built_.polygons = built_.mesh.triangles.size();
    return std::move(built_);
  }

 private:
  ModelPart& part(const std::string& name) {
    const auto known = parts_.find(name);
    if (known != parts_.end()) return known->second;
    if (!package_.has(name)) refuse(file_, "names the part /" + name + ", which is not in it");
    PartReader reader(name, name == root_, file_);
    const bool sound =
        for_each_tag(package_.unpacked(name), [&](std::string_view tag, const XmlAttributes& all) {
          reader.see(tag, all);
          return true;
        });
    if (!sound) refuse(file_, "breaks the rules of XML in its part /" + name);
    ModelPart& read = parts_.emplace(name, std::move(reader).part()).first->second;
    if (read.unit != parts_.at(root_).unit)
      refuse(file_, "counts in " + read.unit + " in its part /" + name + ", and in " +
                        parts_.at(root_).unit + " in its first");
    return read;
  }

  void place(const Placed& placed, const Matrix& outer, int depth) {
    constexpr int deepest = 64;  // our own bound, as check_package_model's
    if (depth > deepest) refuse(file_, "has objects within each other more than 64 deep");
    auto& objects = part(placed.part).objects;
    const auto found = objects.find(placed.object);
    if (found == objects.end())
      refuse(file_, "places object " + placed.object + ", which is not there");
    Object& object = found->second;
    if (object.is_open) refuse(file_, "has object " + placed.object + " within itself");
    count_placing();
    const Matrix matrix = placed.matrix.within(outer);
    if (!object.mesh.triangles.empty()) add(object.mesh, matrix);
    object.is_open = true;
    for (const Placed& component : object.components) place(component, matrix, depth + 1);
    object.is_open = false;
  }

  /// Of assemblies too, so that empty ones that double at each level come to an end.
  void count_placing() {
    constexpr std::size_t most = 10'000;  // our own bound, as check_package_model's
    if (++placings_ > most) refuse(file_, "places its objects more than 10000 times");
  }

  void add(const TriangleMesh& mesh, const Matrix& matrix) {
    constexpr std::size_t most_corners = 10'000'000, most_facets = 20'000'000;  // our own bounds
    TriangleMesh& whole = built_.mesh;
    if (whole.vertices_mm.size() + mesh.vertices_mm.size() > most_corners ||
        whole.triangles.size() + mesh.triangles.size() > most_facets)
      refuse(file_, "places more than 10 million corners or 20 million facets");
    const auto first = static_cast<std::uint32_t>(whole.vertices_mm.size());
    for (const auto& vertex : mesh.vertices_mm) whole.vertices_mm.push_back(matrix.times(vertex));
    const bool mirrors = matrix.mirrors();
    for (auto [a, b, c] : mesh.triangles) {
      if (mirrors) std::swap(b, c);
      whole.triangles.push_back({first + a, first + b, first + c});
    }
    ++built_.objects;
  }

  const ZipArchive& package_;
  const std::string root_;
  const std::string& file_;
  std::map<std::string, ModelPart> parts_;
  std::size_t placings_ = 0;
  ImportedMesh built_;
};

}  // namespace

ImportedMesh mesh_of_split_package(std::string_view bytes, const std::string& file) {
  const ZipArchive package(bytes, file);
  return Builder(package, in_small_letters(model_part(package, file)), file).built();
}

}  // namespace brimwright::geometry
