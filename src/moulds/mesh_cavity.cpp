#include "moulds/mesh_cavity.h"

#include "geometry/enclosed_volume.h"
#include "geometry/mesh_checks.h"

#include <filesystem>
#include <utility>

namespace brimwright::moulds {
namespace {

void check_role(const Fields& fields) {
  const std::string role = fields.choice("role", {"cavity", "body", "skin"});
  if (role == "cavity") return;
  throw UserError(fields.place("role"), "\"" + role + "\" is not measured yet",
                  "give a closed mesh of the cavity itself, that is of what is filled, as "
                  "\"cavity\"");
}

}  // namespace

MeshCavity measured_mesh(const std::string& path, const geometry::MeshReading& reading) {
  geometry::MeshFile file = geometry::read_mesh(path, reading);
  geometry::CheckedSolid checked = geometry::checked_solid(std::move(file.mesh), path);
  std::vector<Remark> remarks = std::move(file.remarks);
  remarks.insert(remarks.end(), checked.remarks.begin(), checked.remarks.end());
  return {.curve = geometry::LevelCurve::of_solid(checked.solid),
          .floor = geometry::bounding_box(checked.solid).low_mm[2] * millimetre,
          .description = "mesh " + std::filesystem::path(path).filename().string() + " in " +
                         geometry::name_of(file.unit),
          .remarks = std::move(remarks)};
}

MeshCavity read_mesh_cavity(const Fields& fields, const Library& library) {
  check_role(fields);
  geometry::MeshReading reading;
  reading.unit_belongs_at = fields.place("unit");
  if (const auto unit = fields.optional_text("unit"))
    reading.unit = geometry::length_unit(*unit, fields.place("unit"));
  if (const auto up = fields.optional_text("up"))
    reading.up = geometry::axis(*up, fields.place("up"));
  const std::string path = library.resolve(fields.text("file"), fields.place("file"));
  fields.refuse_unknown();
  return measured_mesh(path, reading);
}

}  // namespace brimwright::moulds
