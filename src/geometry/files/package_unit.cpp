#include "geometry/files/package_unit.h"

#include "geometry/files/package_model.h"
#include "geometry/files/xml_tags.h"
#include "geometry/files/zip_archive.h"
#include "units/user_error.h"

#include <array>

namespace brimwright::geometry {
namespace {

// 3MF Core Specification 1.3, ST_Unit. An inch is 25.4 mm and a foot 12 inches by definition.
const std::array<PackageUnit, 6> package_units = {{{"micron", 0.001},
                                                   {"millimeter", 1},
                                                   {"centimeter", 10},
                                                   {"inch", 25.4},
                                                   {"foot", 304.8},
                                                   {"meter", 1000}}};

[[noreturn]] void refuse(const std::string& file, const std::string& problem,
                         const std::string& remedy) {
  throw UserError({.file = file, .field = "", .problem = problem, .remedy = remedy});
}

PackageUnit named_unit(const XmlAttributes& model, const std::string& file) {
  const auto unit = model.find("unit");
  const std::string name = unit == model.end() ? "millimeter" : unit->second;
  for (const PackageUnit& known : package_units)
    if (known.name == name) return known;
  refuse(file, "states the unit \"" + name + "\", which its standard does not know",
         "export it again in millimetres");
}

}  // namespace

std::string model_part(const ZipArchive& package, const std::string& file) {
  constexpr std::string_view relations = "_rels/.rels";
  if (!package.has(relations)) refuse(file, "is not a 3MF package", "export it again as 3MF");
  std::string part;
  const bool sound = for_each_tag(
      package.unpacked(relations), [&](std::string_view name, const XmlAttributes& attributes) {
        const auto type = attributes.find("Type");
        const auto target = attributes.find("Target");
        if (name != "Relationship" || type == attributes.end() || target == attributes.end())
          return true;
        if (!type->second.ends_with("/3dmodel")) return true;
        part = target->second;
        return false;
      });
  if (!sound || part.empty()) refuse(file, "is not a sound 3MF file", "export it again as 3MF");
  return part.starts_with('/') ? part.substr(1) : part;
}

PackageUnit unit_of_package(std::string_view bytes, const std::string& file) {
  const ZipArchive package(bytes, file);
  const std::string xml = package.unpacked(model_part(package, file));
  PackageUnit unit{"", 0};
  const bool sound = for_each_tag(xml, [&](std::string_view name, const XmlAttributes& attributes) {
    if (name == "model") unit = named_unit(attributes, file);
    return false;  // a model's unit stands in its first tag
  });
  if (!sound || unit.name.empty())
    refuse(file, "is not a sound 3MF file", "export it again as 3MF");
  unit.is_split = xml.find(":path=") != std::string::npos;
  if (!unit.is_split) check_package_model(xml, file);
  return unit;
}

}  // namespace brimwright::geometry
