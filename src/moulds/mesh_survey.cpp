#include "moulds/mesh_survey.h"

#include "geometry/pockets/pockets.h"
#include "geometry/repair/sound_solid.h"
#include "geometry/sections/facet_deficit.h"
#include "geometry/sections/filled_part.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/mesh_error.h"
#include "geometry/surface/shell_nesting.h"
#include "geometry/surface/surface_edges.h"
#include "geometry/surface/weld.h"
#include "moulds/mesh_standing.h"
#include "units/printing.h"
#include "units/wording.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace brimwright::moulds {

using namespace geometry;  // of meshes from end to end

namespace {

std::string cavities(std::size_t number) {
  return std::to_string(number) + (number == 1 ? " cavity" : " cavities");
}

void add(std::vector<Advice>& all, const std::vector<Remark>& more) {
  for (const auto& [severity, text] : more) all.push_back({severity, text});
}

/// Makes the survey's mesh a closed solid; gives its edges.
SurfaceEdges take_closed(MeshSurvey& survey, TriangleMesh mesh, bool is_welded,
                         const std::string& path) {
  SoundSolid sound = sound_solid(std::move(mesh), is_welded, path, survey.frame);
  add(survey.remarks, sound.remarks);
  survey.mesh = std::move(sound.solid);
  return std::move(sound.edges);
}

/// A mould's inner surface is open above: all of its rims lie in its upper half.
bool is_open_above_only(const SoundSkin& sound) {
  const Box box = bounding_box(sound.skin);
  const double middle_mm = (box.low_mm[2] + box.high_mm[2]) / 2;
  return !sound.rims.empty() &&
         std::all_of(sound.rims.begin(), sound.rims.end(),
                     [&](const Rim& rim) { return rim.low_mm[2] >= middle_mm; });
}

std::vector<Hollow> hollows_of(const PocketSurvey& survey) {
  std::vector<Hollow> hollows;
  for (const Pocket& pocket : survey.pockets)
    hollows.push_back({.curve = pocket.curve,
                       .floor_mm = pocket.floor_mm,
                       .brim_mm = pocket.brim_mm,
                       .middle_mm = pocket.middle_mm,
                       .opening = pocket.opening,
                       .trapped_air = pocket.trapped_air,
                       .spills_at_mm = pocket.spills_at_mm,
                       .rim_highest_mm = pocket.rim_highest_mm,
                       .rim_usual_mm = pocket.rim_usual_mm,
                       .wall = pocket.wall});
  return hollows;
}

std::optional<std::string> told(const std::vector<Undercut>& undercuts, const FileFrame& frame) {
  if (undercuts.empty()) return std::nullopt;
  const auto widest =
      std::max_element(undercuts.begin(), undercuts.end(),
                       [](const Undercut& a, const Undercut& b) { return a.area < b.area; });
  return "Undercut: " +
         (undercuts.size() == 1 ? std::string("1 patch")
                                : std::to_string(undercuts.size()) + " patches") +
         " of wall leaning over what is poured, the largest " +
         fixed(widest->area / square_centimetre, 2) + " cm² " + place_text(widest->at_mm, frame);
}

/// Where a notch or spout, or a slope of the rim, makes a pocket spill before it is full all round.
/// What pockets have in common (a low wall between two) is told with their joint basin.
void remark_on_rims(MeshSurvey& survey) {
  std::vector<std::size_t> uneven;
  for (std::size_t i = 0; i < survey.hollows.size(); ++i) {
    const Hollow& hollow = survey.hollows[i];
    const bool is_joint =
        std::any_of(survey.basins.begin(), survey.basins.end(), [&](const JointBasin& basin) {
          return std::find(basin.pockets.begin(), basin.pockets.end(), i) != basin.pockets.end();
        });
    // Below half a millimetre and a fiftieth of the depth a rim is as level as prints and scans
    // make it: common practice, no source.
    const double depth_mm = hollow.brim_mm - hollow.floor_mm;
    const double tolerance_mm = std::max(0.5, 0.02 * depth_mm);
    if (!is_joint && hollow.rim_highest_mm - hollow.brim_mm > tolerance_mm) uneven.push_back(i);
  }
  if (uneven.empty()) return;
  const Hollow& first = survey.hollows[uneven.front()];
  const double highest_mm = first.rim_highest_mm - first.brim_mm;
  const double usual_mm = first.rim_usual_mm - first.brim_mm;
  const bool is_notch = usual_mm >= 0.8 * highest_mm;
  std::string text = survey.hollows.size() == 1 ? std::string("It")
                                                : "Cavity " + std::to_string(uneven.front() + 1);
  text += " spills " + place_text(*first.spills_at_mm, survey.frame) + ", ";
  text += is_notch ? trimmed(usual_mm, 1) +
                         " mm below most of its rim: a notch, a spout or a hole there lowers its "
                         "brim."
                   : "where its rim is lowest; the rim is not level and stands up to " +
                         trimmed(highest_mm, 1) + " mm higher elsewhere.";
  if (uneven.size() > 1)
    text += " " + std::to_string(uneven.size() - 1) +
            (uneven.size() == 2 ? " other cavity" : " other cavities") + " likewise " +
            (uneven.size() == 2 ? "has" : "have") + " a rim that is not level.";
  survey.remarks.push_back({Severity::note, text});
}

void remark_on_air(const std::vector<Hollow>& hollows, std::vector<Advice>& remarks) {
  for (std::size_t i = 0; i < hollows.size(); ++i) {
    const auto& air = hollows[i].trapped_air;
    // A thousandth of a hollow is less than the bubbles of any pour.
    if (!air || *air <= 0.001 * hollows[i].curve.brimful()) continue;
    remarks.push_back({Severity::caution, "Poured upright, cavity " + std::to_string(i + 1) +
                                              " keeps " + fixed_ml(*air, 2) +
                                              " of air under a ledge: tap it, tilt it while "
                                              "pouring, or plan with less."});
  }
}

void remark_on_leftovers(const PocketSurvey& survey, std::vector<Advice>& remarks) {
  if (survey.dents > 0)
    remarks.push_back({Severity::note, counted(survey.dents, "dent") + " that would hold " +
                                           fixed_ml(survey.dents_volume, 2) +
                                           " in all are not counted as cavities."});
  if (survey.sealed_voids > 0)
    remarks.push_back({Severity::note, counted(survey.sealed_voids, "sealed hollow") +
                                           " (no way in), " + fixed_ml(survey.sealed_volume) +
                                           " in all, cannot be filled."});
}

void remark_on_lean(MeshSurvey& survey) {
  const auto lean = lean_of(survey.mesh);
  if (!lean || survey.up != Axis::plus_z) return;
  const auto& [x, y, z] = lean->up;
  survey.remarks.push_back(
      {Severity::caution, "Its largest flat face leans " + fixed(lean->angle.degrees(), 1) +
                              "° from level. If it should be level, give " +
                              Answer{"up", fixed(x, 4) + "," + fixed(y, 4) + "," + fixed(z, 4)} +
                              "."});
}

/// Each hollow is measured, told and held against the others.
void refuse_too_many_hollows(std::size_t hollows, const std::string& path) {
  constexpr std::size_t most = 1000;  // our own bound: no tray has as many
  if (hollows <= most) return;
  throw UserError({.file = path,
                   .field = "",
                   .problem = "has " + std::to_string(hollows) +
                              " separate cavities, and more than " + std::to_string(most) +
                              " are not measured",
                   .remedy = "give a part of it that repeats, or remove loose bits"});
}

struct ShutUp {
  std::size_t hollows = 0;
  Volume volume;
};

/// The shells of one solid that face inward.
void add_shut_up(const TriangleMesh& part, ShutUp& shut_up) {
  const SurfaceEdges edges = surface_edges(part);
  if (edges.shells < 2) return;
  for (const ShellPlace& place : shell_places(part, edges, "the mesh")) {
    if (place.volume_mm3 >= 0) continue;
    ++shut_up.hollows;
    shut_up.volume += -place.volume_mm3 * cubic_millimetre;
  }
}

void measure_part(MeshSurvey& survey, const TriangleMesh& part, std::vector<Undercut>& undercuts) {
  const Box box = bounding_box(part);
  LevelCurve curve = LevelCurve::of_solid(part);
  const Area opening = curve.free_surface(curve.height());
  Hollow hollow{
      .curve = std::move(curve),
      .floor_mm = box.low_mm[2],
      .brim_mm = box.high_mm[2],
      .middle_mm = {(box.low_mm[0] + box.high_mm[0]) / 2, (box.low_mm[1] + box.high_mm[1]) / 2},
      .opening = opening,
      .trapped_air = {},
      .spills_at_mm = {},
      .wall = {}};
  // Without a level opening, how it is filled is not known.
  if (opening > Area()) {
    FilledFromAbove filled = filled_from_above(part, hollow.curve.brimful());
    hollow.trapped_air = filled.trapped_air;
    std::move(filled.undercuts.begin(), filled.undercuts.end(), std::back_inserter(undercuts));
  }
  survey.hollows.push_back(std::move(hollow));
}

void remark_on_shut_up(const ShutUp& shut_up, std::vector<Advice>& remarks) {
  if (shut_up.hollows == 0) return;
  remarks.push_back(
      {Severity::caution,
       counted(shut_up.hollows, "sealed hollow") + " (no way in), " + fixed_ml(shut_up.volume) +
           " in all, " +
           (shut_up.hollows == 1 ? "lies inside and is left out of the volume; if it is left over "
                                   "from modelling, take it out and measure again."
                                 : "lie inside and are left out of the volume; if they are left "
                                   "over from modelling, take them out and measure again.")});
}

void remark_on_facets(MeshSurvey& survey) {
  const Share deficit = facet_deficit(survey.mesh);
  if (std::abs(deficit.of_one()) <= 0.003) return;
  survey.remarks.push_back(
      {Severity::note, "Its round walls are coarse facets: smooth ones would hold about " +
                           fixed(std::abs(deficit.in_percent()), 1) + " % " +
                           (deficit > Share() ? "more." : "less.")});
}

void measure_cavities(MeshSurvey& survey, const SurfaceEdges& edges, const std::string& path) {
  survey.role = Role::cavity;
  std::vector<Undercut> undercuts;
  if (edges.shells == 1) {
    measure_part(survey, survey.mesh, undercuts);
  } else {
    ShutUp shut_up;
    const std::vector<TriangleMesh> parts = parts_of(survey.mesh);
    refuse_too_many_hollows(parts.size(), path);
    for (const TriangleMesh& part : parts) {
      add_shut_up(part, shut_up);
      measure_part(survey, part, undercuts);
    }
    remark_on_shut_up(shut_up, survey.remarks);
  }
  survey.undercuts = told(undercuts, survey.frame);
  remark_on_facets(survey);
}

[[noreturn]] void refuse_without_pockets(const MeshSurvey& survey, const std::string& path) {
  const auto others =
      survey.role == Role::body ? other_ways_up(survey.mesh, survey.up) : std::vector<OtherWayUp>{};
  const Answer cavity{"role", name_of(Role::cavity)}, on_board{"on-board"};
  if (others.empty())
    throw Question(
        {.file = path,
         .field = "",
         .asks = "role",
         .problem = "holds no liquid, whichever way up",
         .remedy = "if it is a tube or frame without a floor, stand it on a board with " +
                   on_board + "; if it is the cavity itself or the finished piece, give " + cavity,
         .choices = {{{on_board}}, {{cavity}}}});
  const Answer up{"up", name_of(others.front().up)};
  throw Question({.file = path,
                  .field = "",
                  .asks = "up",
                  .problem = "holds no liquid this way up; with " + up + " it has " +
                             cavities(others.front().pockets),
                  .remedy = "try " + up + "; if that is wrong, give the direction that points up",
                  .choices = {{{up}}}});
}

void take_pockets(MeshSurvey& survey, PocketSurvey pockets, const std::string& path) {
  if (pockets.pockets.empty()) refuse_without_pockets(survey, path);
  refuse_too_many_hollows(pockets.pockets.size(), path);
  survey.hollows = hollows_of(pockets);
  survey.basins = std::move(pockets.basins);
  survey.undercuts = told(pockets.undercuts, survey.frame);
  remark_on_rims(survey);
  remark_on_leftovers(pockets, survey.remarks);
}

[[noreturn]] void ask(const RoleQuestion& question, const std::string& path) {
  throw Question({.file = path,
                  .field = "",
                  .asks = question.asks,
                  .problem = question.problem,
                  .remedy = question.remedy,
                  .choices = question.choices});
}

void measure_body(MeshSurvey& survey, PocketSurvey pockets, const std::string& path,
                  bool up_is_said) {
  survey.role = Role::body;
  if (!up_is_said)
    if (const auto question = is_it_upside_down(survey.mesh, pockets, survey.up))
      ask(*question, path);
  take_pockets(survey, std::move(pockets), path);
}

void find_role_of_closed(MeshSurvey& survey, const SurfaceEdges& edges, const std::string& path,
                         bool up_is_said) {
  PocketSurvey pockets = pockets_if_any(survey.mesh);
  const RoleFinding found = role_of_closed(survey.mesh, edges, pockets, survey.up, up_is_said);
  if (!found.role) ask(found.question, path);
  survey.remarks.push_back({Severity::note, found.told});
  if (*found.role == Role::cavity) return measure_cavities(survey, edges, path);
  survey.role = Role::body;
  take_pockets(survey, std::move(pockets), path);
}

/// What stands on both sides of one sheet is a body's pocket and its own stuff, which a missing
/// facet has made one.
void refuse_wet_on_both_sides(const MeshSurvey& survey, const std::vector<Rim>& rims,
                              const std::string& path) {
  throw Question({.file = path,
                  .field = rims.empty() ? "" : place_text(rims.front().middle_mm, survey.frame),
                  .asks = "role",
                  .problem = "is open, and as a skin it would hold liquid on both sides",
                  .remedy = "if it is a mould's body, close it in the modelling program and give " +
                            Answer{"role", name_of(Role::body)} +
                            "; if it is a skin, keep only the inner surface"});
}

void measure_skin(MeshSurvey& survey, SoundSkin sound, const std::string& path) {
  survey.role = Role::skin;
  add(survey.remarks, sound.remarks);
  survey.mesh = std::move(sound.skin);
  SkinWells skin = skin_wells(survey.mesh);
  if (skin.wet_both_sides) refuse_wet_on_both_sides(survey, sound.rims, path);
  take_pockets(survey, std::move(skin.wells), path);
}

/// A board under the body that reaches a hair into it, so that the two unite.
void put_on_board(TriangleMesh& body) {
  const Box box = bounding_box(body);
  const double margin = 5, thickness = 5, hair = 1e-3;  // mm; the hair is lost from the depth
  const double top = box.low_mm[2] + hair;
  const auto base = static_cast<std::uint32_t>(body.vertices_mm.size());
  for (const double z : {top - thickness, top})
    for (const auto& [x, y] : {std::pair{box.low_mm[0] - margin, box.low_mm[1] - margin},
                               {box.high_mm[0] + margin, box.low_mm[1] - margin},
                               {box.high_mm[0] + margin, box.high_mm[1] + margin},
                               {box.low_mm[0] - margin, box.high_mm[1] + margin}})
      body.vertices_mm.push_back({x, y, z});
  const auto quad = [&](std::uint32_t a, std::uint32_t b, std::uint32_t c, std::uint32_t d) {
    body.triangles.push_back({base + a, base + b, base + c});
    body.triangles.push_back({base + a, base + c, base + d});
  };
  quad(3, 2, 1, 0);
  quad(4, 5, 6, 7);
  for (std::uint32_t i = 0; i < 4; ++i) quad(i, (i + 1) % 4, 4 + (i + 1) % 4, 4 + i);
}

void survey_as_said(MeshSurvey& survey, MeshFile file, const SurveyWishes& wishes,
                    const std::string& path) {
  const bool up_is_said = wishes.reading.up || wishes.reading.straight_up;
  survey.role = wishes.on_board ? Role::body : *wishes.role;
  if (survey.role == Role::skin)
    return measure_skin(survey, sound_skin(file.mesh, file.is_welded, path, survey.frame), path);
  if (wishes.on_board) put_on_board(file.mesh);
  const SurfaceEdges edges =
      take_closed(survey, std::move(file.mesh), file.is_welded && !wishes.on_board, path);
  if (survey.role == Role::cavity) return measure_cavities(survey, edges, path);
  measure_body(survey, pockets_of_body(survey.mesh), path, up_is_said);
}

/// An open mesh as a skin, if it can be one.
std::optional<SoundSkin> as_skin(const MeshFile& file, const std::string& path) {
  try {
    SoundSkin sound = sound_skin(file.mesh, file.is_welded, path, file.frame);
    if (is_open_above_only(sound)) return sound;
  } catch (const UserError&) {
    // What closing it complained of says more.
  }
  return std::nullopt;
}

void survey_as_found(MeshSurvey& survey, MeshFile file, const SurveyWishes& wishes,
                     const std::string& path) {
  SurfaceEdges edges;
  try {
    edges = take_closed(survey, file.mesh, file.is_welded, path);
  } catch (const UserError&) {
    auto skin = as_skin(file, path);
    if (!skin) throw;
    skin->remarks.push_back(
        {Severity::note, "Taken for a mould's inner surface: it is open above."});
    return measure_skin(survey, std::move(*skin), path);
  }
  file = {};
  find_role_of_closed(survey, edges, path, wishes.reading.up || wishes.reading.straight_up);
}

/// The hole of a solid may be the opening of a skin.
[[noreturn]] void ask_whether_skin(const LargeHole& hole, const FileFrame& frame) {
  const Answer skin{"role", name_of(Role::skin)};
  throw Question({.file = hole.parts().file,
                  .field = place_text(hole.at_mm(), frame),
                  .asks = "role",
                  .problem = hole.parts().problem,
                  .remedy = hole.parts().remedy +
                            "; if it is the inner surface of a mould, open at the top, give " +
                            skin,
                  .choices = {{{skin}}}});
}

}  // namespace

MeshSurvey surveyed(const std::string& path, const SurveyWishes& wishes) {
  MeshFile file = read_mesh(path, wishes.reading);
  MeshSurvey survey{.role = Role::cavity,
                    .unit = file.unit,
                    .up = file.up,
                    .frame = file.frame,
                    .mesh = {},
                    .hollows = {},
                    .basins = {},
                    .remarks = {},
                    .undercuts = {}};
  add(survey.remarks, file.remarks);
  try {
    if (wishes.role || wishes.on_board)
      survey_as_said(survey, std::move(file), wishes, path);
    else
      survey_as_found(survey, std::move(file), wishes, path);
  } catch (const LargeHole& hole) {
    ask_whether_skin(hole, survey.frame);
  } catch (const PlacedError& error) {
    UserError::Parts parts = error.parts();
    parts.field = place_text(error.at_mm(), survey.frame);
    throw UserError(parts);
  } catch (const TooManyLayers&) {
    throw UserError({.file = path,
                     .field = "",
                     .problem = "has too many facets over each other to find what holds liquid",
                     .remedy = "simplify or remesh it in the modelling program"});
  }
  remark_on_air(survey.hollows, survey.remarks);
  remark_on_lean(survey);
  return survey;
}

TriangleMesh solid_of(const MeshSurvey& survey, std::size_t hollow) {
  if (survey.role == Role::cavity && survey.hollows.size() == 1) {
    TriangleMesh whole = survey.mesh;  // the only part, whatever is shut up in it
    drop_unused_vertices(whole);
    return whole;
  }
  if (survey.role == Role::cavity) return parts_of(survey.mesh)[hollow];
  TriangleMesh wall = welded(survey.hollows[hollow].wall);
  for (auto& facet : wall.triangles) std::swap(facet[1], facet[2]);
  return part_below(wall, Plane::level(survey.hollows[hollow].brim_mm));
}

}  // namespace brimwright::moulds
