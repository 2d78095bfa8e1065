#include "service/piece_files.h"

#include "geometry/files/mesh_writing.h"
#include "geometry/sections/filled_part.h"
#include "planning/measured_piece.h"
#include "reports/piece_picture.h"
#include "service/cut_open.h"

#include <algorithm>
#include <array>

namespace brimwright::service {
namespace {

using geometry::TriangleMesh;

void append(TriangleMesh& mesh, const TriangleMesh& more) {
  const auto offset = static_cast<std::uint32_t>(mesh.vertices_mm.size());
  mesh.vertices_mm.insert(mesh.vertices_mm.end(), more.vertices_mm.begin(), more.vertices_mm.end());
  for (const auto& facet : more.triangles)
    mesh.triangles.push_back({facet[0] + offset, facet[1] + offset, facet[2] + offset});
}

TriangleMesh joined(const std::vector<TriangleMesh>& solids) {
  TriangleMesh all;
  for (const auto& solid : solids) append(all, solid);
  return all;
}

/// Colours for the screen only, of our own choosing: soaps of a warm white to brown, topping cream,
/// decorations clear and bright.
std::array<float, 4> colour_of(planning::PartKind kind, std::size_t which) {
  constexpr std::array<std::array<float, 4>, 4> base = {{{0.86f, 0.62f, 0.56f, 1},
                                                         {0.96f, 0.87f, 0.70f, 1},
                                                         {0.62f, 0.72f, 0.58f, 1},
                                                         {0.58f, 0.47f, 0.42f, 1}}};
  constexpr std::array<std::array<float, 4>, 3> decoration = {
      {{0.55f, 0.70f, 0.90f, 0.75f}, {0.90f, 0.75f, 0.35f, 0.9f}, {0.75f, 0.55f, 0.80f, 0.8f}}};
  if (kind == planning::PartKind::topping) return {0.99f, 0.97f, 0.92f, 1};
  if (kind == planning::PartKind::decoration) return decoration[which % decoration.size()];
  return base[which % base.size()];
}

std::string glb_of(const planning::PieceModel& model) {
  std::vector<geometry::ColouredPart> parts;
  std::array<std::size_t, 3> seen{};  // of each kind
  for (const auto& part : model.parts)
    parts.push_back({part.name, joined(part.solids),
                     colour_of(part.kind, seen[static_cast<std::size_t>(part.kind)]++)});
  return geometry::glb_of(parts);
}

std::string stl_of(const planning::PieceModel& model) {
  TriangleMesh all;
  for (const auto& part : model.parts) append(all, joined(part.solids));
  return geometry::binary_stl_of(all);
}

planning::PieceModel cut_open(planning::PieceModel model) {
  std::vector<const TriangleMesh*> all;
  for (const auto& part : model.parts)
    for (const auto& solid : part.solids) all.push_back(&solid);
  const auto knife = knife_through(all);
  for (auto& part : model.parts)
    for (auto& solid : part.solids) solid = geometry::part_above(solid, knife);
  return model;
}

bool is_solid(const WantedFile& file) {
  return file.kind == FileKind::glb || file.kind == FileKind::stl;
}

}  // namespace

std::vector<MadeFile> piece_files(const std::vector<WantedFile>& wanted, const planning::Run& run,
                                  const planning::Measured& measured, const planning::Plan& plan,
                                  bool is_cut_open) {
  const bool any_solid = std::any_of(wanted.begin(), wanted.end(), is_solid);
  if (!any_solid && !wants(wanted, FileKind::piece_picture)) return {};
  const auto model = planning::piece_model(run, measured);
  const auto opened = is_cut_open ? cut_open(model) : planning::PieceModel{};
  const auto& solids = is_cut_open ? opened : model;
  std::vector<MadeFile> files;
  for (const auto& [kind, name] : wanted) {
    if (kind == FileKind::piece_picture)
      files.push_back({name, reports::piece_picture_svg(model, plan)});
    else if (kind == FileKind::glb)
      files.push_back({name, glb_of(solids)});
    else if (kind == FileKind::stl)
      files.push_back({name, stl_of(solids)});
  }
  return files;
}

}  // namespace brimwright::service
