#include "moulds/mesh_role.h"

#include "geometry/files/mesh_writing.h"
#include "geometry/surface/enclosed_volume.h"
#include "moulds/mesh_survey.h"
#include "role_solids.h"
#include "scratch_file.h"
#include "solids.h"
#include "survey_wishes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <set>
#include <string>

using namespace brimwright;
using namespace brimwright::geometry;
using namespace brimwright::moulds;
using namespace brimwright::geometry::test;
using brimwright::moulds::test::in_mm;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinRel;

namespace {

enum class Outcome { right, asked, wrong };

/// A leaking mould and one the wrong way up is told rightly by no role at all: what it holds as it
/// stands is not what it is for. That a tray with one cup drained has one pocket is no mistake.
Outcome outcome_of(const RoleSolid& solid) {
  const ScratchFile file("solid.stl", binary_stl_of(solid.mesh));
  try {
    const Role role = surveyed(file.path(), in_mm()).role;
    const bool is_hollow = solid.truth == Truth::cavity || solid.truth == Truth::piece;
    if (is_hollow) return role == Role::cavity ? Outcome::right : Outcome::wrong;
    return solid.truth == Truth::body && role == Role::body ? Outcome::right : Outcome::wrong;
  } catch (const UserError& question) {
    const std::string text = question.what();
    CAPTURE(solid.name, text);
    CHECK_THAT(text, Contains("give role \"cavity\""));
    CHECK_THAT(text, !Contains(" ml"));  // no figure stands above a question
    return Outcome::asked;
  }
}

/// Two finished pieces shaped as a mould is, and a mould whose hollow runs out at both ends and is
/// no deeper than what is engraved on a piece.
const std::set<std::string> known_misses = {"egg tray of soap", "shallow groove in a thick slab",
                                            "tea cup"};

struct Counts {
  int right = 0, asked = 0;
  std::set<std::string> wrong;
};

Counts counted(const std::vector<RoleSolid>& solids) {
  Counts counts;
  for (const RoleSolid& solid : solids) {
    const Outcome outcome = outcome_of(solid);
    counts.right += outcome == Outcome::right;
    counts.asked += outcome == Outcome::asked;
    if (outcome == Outcome::wrong) counts.wrong.insert(solid.name);
  }
  return counts;
}

}  // namespace

TEST_CASE(
    "a mould that holds nothing is never taken for a cavity of its own plastic, nor a piece "
    "with hollows for a mould, but for those we know",
    "[survey][role]") {
  const std::vector<RoleSolid> solids = role_solids();
  std::map<Truth, int> of_each;
  for (const RoleSolid& solid : solids) ++of_each[solid.truth];
  for (const auto& [truth, count] : of_each) CHECK(count >= 12);
  CHECK(solids.size() >= 90);
  const Counts counts = counted(solids);
  CHECK(counts.wrong == known_misses);
  CHECK(counts.right >= 26);  // the rest are questions
}

TEST_CASE("stretched and turned, bodies are told no worse", "[survey][role]") {
  Counts counts;
  std::set<std::string> wrong;
  for (const std::uint32_t seed : {1U, 2U}) {
    const Counts more = counted(varied_role_solids(seed));
    counts.right += more.right;
    counts.asked += more.asked;
    wrong.insert(more.wrong.begin(), more.wrong.end());
  }
  std::set<std::string> new_misses;
  std::set_difference(wrong.begin(), wrong.end(), known_misses.begin(), known_misses.end(),
                      std::inserter(new_misses, new_misses.end()));
  CHECK(new_misses == std::set<std::string>{});
  CHECK(counts.right >= 48);
}

TEST_CASE("a role that was said is not asked for again", "[survey][role]") {
  for (const RoleSolid& solid : role_solids()) {
    if (solid.truth != Truth::piece && solid.truth != Truth::cavity) continue;
    CAPTURE(solid.name);
    const ScratchFile file("solid.stl", binary_stl_of(solid.mesh));
    SurveyWishes wishes = in_mm();
    wishes.role = Role::cavity;
    const MeshSurvey survey = surveyed(file.path(), wishes);
    CHECK(survey.role == Role::cavity);
    Volume held;
    for (const Hollow& hollow : survey.hollows) held += hollow.curve.brimful();
    // The file's numbers are floats: 1e-7 of a coordinate.
    CHECK_THAT(held / cubic_millimetre,
               WithinRel(std::abs(enclosed_volume(solid.mesh) / cubic_millimetre), 1e-4));
  }
}

TEST_CASE("a tray upside down is asked about even when said to be a body, until up is said",
          "[survey][role]") {
  const auto solids = role_solids();
  const auto found = std::find_if(solids.begin(), solids.end(), [](const RoleSolid& solid) {
    return solid.name == "skirted tray upside down";
  });
  const ScratchFile file("skirted.stl", binary_stl_of(found->mesh));
  SurveyWishes wishes = in_mm();
  wishes.role = Role::body;
  CHECK_THROWS_WITH(surveyed(file.path(), wishes),
                    Contains("as it stands it is one basin, with up \"-z\" it has 4 cavities") &&
                        Contains("give up \"+z\" if it is, or up \"-z\"") && !Contains(" ml"));
  wishes.reading.up = Axis::plus_z;
  CHECK(surveyed(file.path(), wishes).hollows.size() == 1);
  wishes.reading.up = Axis::minus_z;
  CHECK(surveyed(file.path(), wishes).hollows.size() == 4);
}
