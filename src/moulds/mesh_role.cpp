#include "moulds/mesh_role.h"

#include "geometry/repair/sound_solid.h"
#include "geometry/surface/enclosed_volume.h"
#include "moulds/hollowness.h"
#include "moulds/mesh_standing.h"
#include "units/wording.h"

#include <algorithm>
#include <array>
#include <utility>
#include <vector>

namespace brimwright::moulds {

using namespace geometry;  // of meshes from end to end

namespace {

constexpr std::array role_names = {"cavity", "body", "skin"};

// All bounds: our own, see the header.
constexpr double body_of_one = 0.5, body_of_several = 0.25;  // share of pockets
constexpr double deep_pocket = 0.65;                         // of the body's height
constexpr double other_body = 0.25, other_tray = 0.05;       // share of pockets another way up
constexpr double no_pockets = 0.001, none_other_way_up = 0.01;
constexpr double least_fill = 0.78;
constexpr Length deepest_dent = 3 * millimetre;
constexpr double deepest_dent_share = 0.1;

std::string percent_text(double share) {
  return fixed_percent(Share::of_one(share), share < 0.01 ? 2 : 1);
}

std::string cavities(std::size_t number) {
  return std::to_string(number) + (number == 1 ? " cavity" : " cavities");
}

Answer up_is(Axis up) { return {"up", name_of(up)}; }
Answer role_is(Role role) { return {"role", name_of(role)}; }

Words in_words(const OtherWayUp& way) {
  return "with " + up_is(way.up) + " it has " + cavities(way.pockets);
}

/// The depth of the deepest pocket, of the whole height.
double relative_depth(const TriangleMesh& mesh, const PocketSurvey& pockets) {
  const Box box = bounding_box(mesh);
  double deepest_mm = 0;
  for (const Pocket& pocket : pockets.pockets)
    deepest_mm = std::max(deepest_mm, pocket.brim_mm - pocket.floor_mm);
  return deepest_mm / (box.high_mm[2] - box.low_mm[2]);
}

bool looks_like_a_body(const TriangleMesh& mesh, const PocketSurvey& pockets) {
  const double share = share_in_pockets(pockets);
  const bool holds_enough =
      share >= body_of_one || (pockets.pockets.size() > 1 && share >= body_of_several);
  return holds_enough && relative_depth(mesh, pockets) >= deep_pocket;
}

/// `if_mould` is what to say if it is one; `ways_up`, which of them are likely.
RoleFinding asked(Words problem, const Words& if_mould, const std::vector<Axis>& ways_up = {}) {
  std::vector<Choice> choices = {{{role_is(Role::cavity)}}};
  for (const Axis up : ways_up) choices.push_back({{role_is(Role::body), up_is(up)}});
  if (ways_up.empty()) choices.push_back({{role_is(Role::body)}});
  return {.role = {},
          .told = {},
          .question = {.asks = "role",
                       .problem = std::move(problem),
                       .remedy = "give " + role_is(Role::cavity) +
                                 " if it is the cavity itself or the finished piece, or " +
                                 if_mould + " if it is the mould",
                       .choices = std::move(choices)}};
}

RoleFinding of_body(const TriangleMesh& mesh, const SurfaceEdges& edges,
                    const PocketSurvey& pockets, Axis up, bool up_is_said) {
  if (!up_is_said) {
    for (const OtherWayUp& way : other_ways_up(mesh, up)) {
      if (way.share < other_body && (way.pockets < 2 || way.share < other_tray)) continue;
      return asked("may be a mould's body, but which way up is not clear: as it stands it has " +
                       cavities(pockets.pockets.size()) + ", " + in_words(way),
                   role_is(Role::body) + " with " + up_is(up) + " or " + up_is(way.up),
                   {up, way.up});
    }
  }
  Words told = "Taken for a mould's body: its cavities are " +
               percent_text(share_in_pockets(pockets)) +
               " of cavities and solid together. If it is not, give " + role_is(Role::cavity) + ".";
  if (const std::size_t holes = holes_through(mesh, edges); holes > 0)
    told += " It has " + counted(holes, "hole") +
            " right through: a cavity that drains is not among those counted.";
  return {.role = Role::body, .told = told, .question = {}};
}

/// How far a part is from being convex, told by bounds where these are enough.
class Convexity {
 public:
  explicit Convexity(const TriangleMesh& part) : part_(part), bounds_(hollowness_bounds(part)) {}

  bool fills_less_than(double share) {
    if (bounds_ && bounds_->fill_at_least > share) return false;
    if (bounds_ && bounds_->fill_at_most < share) return true;
    return exactly().fill < share;
  }
  bool has_dent_deeper_than(Length depth, double share_of_extent) {
    if (bounds_ && bounds_->deepest_at_most < depth &&
        bounds_->depth_share_at_most < share_of_extent)
      return false;
    return exactly().deepest > depth || exactly().depth_share > share_of_extent;
  }
  const Hollowness& exactly() {
    if (!exact_) exact_ = hollowness_of(part_);
    return *exact_;
  }

 private:
  const TriangleMesh& part_;
  std::optional<HollownessBounds> bounds_;
  std::optional<Hollowness> exact_;
};

/// Of one solid whose pockets do not tell; nothing where all of it is as a cavity's.
std::optional<RoleFinding> asked_for_its_shape(const TriangleMesh& mesh, const SurfaceEdges& edges,
                                               Axis up) {
  Convexity hollow(mesh);
  // Whatever it holds, whichever way up, lies within the least convex solid round it.
  if (hollow.fills_less_than(1 - none_other_way_up)) {
    const auto others = other_ways_up(mesh, up);
    if (!others.empty() && others.front().share >= none_other_way_up)
      return asked("may be the cavity itself, or a mould's body that is not the right way up: " +
                       in_words(others.front()),
                   role_is(Role::body) + " with " + up_is(others.front().up), {others.front().up});
  }
  if (const std::size_t holes = holes_through(mesh, edges); holes > 0)
    return asked("has " + counted(holes, "hole") +
                     " right through, as a tube, a frame or a drained mould has",
                 role_is(Role::body) + " (or " + Answer{"on-board"} + " where it stands on one)");
  if (hollow.fills_less_than(least_fill))
    return asked("may be a mould that holds nothing as it stands: it fills only " +
                     percent_text(hollow.exactly().fill) +
                     " of the smallest shape without dents around it",
                 role_is(Role::body));
  if (hollow.has_dent_deeper_than(deepest_dent, deepest_dent_share))
    return asked("may be a mould that holds nothing as it stands: it has a dent or a gap " +
                     in_mm(hollow.exactly().deepest) + " deep",
                 role_is(Role::body));
  return std::nullopt;
}

}  // namespace

std::string name_of(Role role) { return role_names[static_cast<std::size_t>(role)]; }

Role role(const std::string& text, const Place& where) {
  for (std::size_t i = 0; i < role_names.size(); ++i)
    if (text == role_names[i]) return static_cast<Role>(i);
  throw UserError(
      where, "\"" + text + "\" is not what a mesh can be",
      "give cavity (the space that is filled, or the finished piece), body (the mould with its "
      "cavities) or skin (its inner surface, open above)");
}

RoleFinding role_of_closed(const TriangleMesh& mesh, const SurfaceEdges& edges,
                           const PocketSurvey& pockets, Axis up, bool up_is_said) {
  if (looks_like_a_body(mesh, pockets)) return of_body(mesh, edges, pockets, up, up_is_said);
  const double share = share_in_pockets(pockets);
  if (share >= no_pockets)
    return asked("may be a mould's body, or a piece with a hollow on top: what it would hold is " +
                     percent_text(share) + " of that and its solid together",
                 role_is(Role::body));
  if (pockets.sealed_voids > 0)
    return asked("has " + counted(pockets.sealed_voids, "sealed hollow") +
                     " inside it, as two halves of a mould have when put together",
                 "take one half alone, with " + role_is(Role::body) + ",");
  if (const std::size_t parts = edges.shells > 1 ? parts_of(mesh).size() : 1; parts > 1)
    return asked("is " + std::to_string(parts) +
                     " separate solids: they may be cavities, or the parts of a mould",
                 role_is(Role::body));
  if (const auto question = asked_for_its_shape(mesh, edges, up)) return *question;
  return {.role = Role::cavity,
          .told =
              "Taken for the cavity itself or the finished piece: it holds nothing, and has no "
              "dent or hole to speak of. If it is a mould's body, give " +
              role_is(Role::body) + ".",
          .question = {}};
}

std::optional<RoleQuestion> is_it_upside_down(const TriangleMesh& body, const PocketSurvey& pockets,
                                              Axis up) {
  if (pockets.pockets.size() != 1) return std::nullopt;
  for (const OtherWayUp& way : other_ways_up(body, up)) {
    if (way.pockets < 2 || way.share < other_tray) continue;
    return RoleQuestion{
        .asks = "up",
        .problem = "may not be the right way up: as it stands it is one basin, " + in_words(way),
        .remedy = "give " + up_is(up) + " if it is, or " + up_is(way.up) +
                  Words::outside_a_file(" (in a mould file under \"mesh\": \"up\")"),
        .choices = {{{up_is(up)}}, {{up_is(way.up)}}}};
  }
  return std::nullopt;
}

}  // namespace brimwright::moulds
