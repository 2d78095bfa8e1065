#include "service/inspect.h"

#include "moulds/mesh_memory.h"

#include <filesystem>
#include <utility>

namespace brimwright::service {
namespace {

void refuse_other_options(const GaugeRequest& request, const UserTerms& terms) {
  if (request.text || std::filesystem::path(request.file).extension() == ".json")
    throw UserError(terms.place("inspect"),
                    "is only for a mesh, and " + request.file + " is a mould file",
                    "name the mesh itself");
  for (const auto& [name, is_given] : {std::pair{"role", request.role.has_value()},
                                       {"on-board", request.on_board},
                                       {"cavity", request.cavity.has_value()},
                                       {"depth", !request.depths.empty()},
                                       {"fit-volume", request.fit_volume.has_value()},
                                       {"fit-mass", request.fit_mass.has_value()},
                                       {"cast-wall", request.cast_wall.has_value()},
                                       {"tilt", request.tilt.has_value()},
                                       {"pour", request.pour.has_value()},
                                       {"embed", request.embed.has_value()},
                                       {"stl", wants(request.files, FileKind::stl)},
                                       {"glb", wants(request.files, FileKind::glb)},
                                       {"picture", wants(request.files, FileKind::picture)}})
    if (is_given)
      throw UserError(terms.place(name),
                      "does nothing with " + terms.say({"inspect"}) + ", which measures nothing",
                      "leave one of the two out");
}

}  // namespace

reports::InspectionFinding inspected(const GaugeRequest& request, const UserTerms& terms,
                                     const moulds::Library& library) {
  refuse_other_options(request, terms);
  if (library.only_remembered) throw moulds::NotYetMeasured(request.file);
  geometry::MeshReading reading;
  if (request.unit) reading.unit = geometry::length_unit(*request.unit, terms.place("unit"));
  if (request.up && request.up->find(',') != std::string::npos)
    reading.straight_up = geometry::direction(*request.up, terms.place("up"));
  else if (request.up)
    reading.up = geometry::axis(*request.up, terms.place("up"));
  geometry::MeshFile file = geometry::read_mesh(request.file, reading);
  constexpr auto all = geometry::InspectFor::defects_and_crossings;
  return {request.file, file.frame,
          file.is_welded ? geometry::inspected_welded(std::move(file.mesh), all, request.file)
                         : geometry::inspected(file.mesh, all, request.file)};
}

}  // namespace brimwright::service
