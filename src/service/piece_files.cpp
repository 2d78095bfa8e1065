#include "service/piece_files.h"

#include "geometry/files/mesh_writing.h"
#include "geometry/sections/filled_part.h"
#include "planning/piece.h"
#include "reports/piece_picture.h"
#include "service/cut_open.h"
#include "service/outputs.h"
#include "units/user_error.h"
#include "units/written_number.h"

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

bool is_solid(const std::string& path) { return ending_of(path) != ".svg"; }

}  // namespace

void check_piece_endings(const std::vector<std::string>& paths) {
  for (const auto& path : paths)
    if (const std::string ending = ending_of(path);
        ending != ".svg" && ending != ".glb" && ending != ".stl")
      throw UserError({"command line", "--piece"},
                      brimwright::quoted(path) + " does not say what to write",
                      "end it in .svg (a drawing), .glb (a coloured model) or .stl");
}

std::vector<std::pair<std::string, std::string>> piece_files(const std::vector<std::string>& paths,
                                                             const planning::Run& run,
                                                             const planning::Plan& plan,
                                                             bool is_cut_open) {
  std::vector<std::pair<std::string, std::string>> files;
  if (is_cut_open && std::none_of(paths.begin(), paths.end(), is_solid))
    throw UserError({"command line", "--cut-open"}, "is of no use alone",
                    "it goes with --piece FILE.glb or FILE.stl");
  if (paths.empty()) return files;
  const auto model = planning::piece_model(run, plan);
  const auto opened = is_cut_open ? cut_open(model) : planning::PieceModel{};
  const auto& solids = is_cut_open ? opened : model;
  for (const auto& path : paths) {
    const std::string ending = ending_of(path);
    if (ending == ".svg")
      files.emplace_back(path, reports::piece_picture_svg(model, plan));
    else if (ending == ".glb")
      files.emplace_back(path, glb_of(solids));
    else
      files.emplace_back(path, stl_of(solids));
  }
  return files;
}

}  // namespace brimwright::service
