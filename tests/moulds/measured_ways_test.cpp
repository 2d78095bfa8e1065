#include "moulds/measured_ways.h"

#include "moulds/mould_file.h"
#include "scratch_folder.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <filesystem>
#include <string>
#include <vector>

namespace brimwright::moulds {
namespace {

namespace fs = std::filesystem;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

const double pi = std::acos(-1);

std::string file(const std::string& rest) {
  return R"({"schema":"brimwright.mould/2","name":"Test cup",)" + rest + "}";
}

/// The ways of a mould file that may name the sample meshes.
std::vector<MeasuredWay> ways_of(const std::string& json) {
  const ScratchFolder folder;
  for (const char* mesh : {"twisted_cup.stl", "six_pocket_tray.stl"})
    fs::copy(fs::path(BRIMWRIGHT_SOURCE_DIR) / "meshes" / mesh, folder.path());
  const std::string name = folder.write("cup.json", json);
  const Mould mould = read_mould(name, {});
  return measured_ways(Fields::read(name), mould);
}

double brimful_ml(const MeasuredWay& way) { return way.curve.brimful() / millilitre; }

/// A frustum of a cone: pi h (R2 + R r + r2) / 3 (CRC Standard Mathematical Tables, "Mensuration
/// formulas", from memory), here by its diameters, in millimetres.
double frustum_ml(double floor, double brim, double height) {
  return pi * height * (brim * brim + brim * floor + floor * floor) / 12 / 1000;
}

const std::string frustum =
    R"("cavities":1,"shape":{"kind":"frustum","floor_diameter":"40 mm","brim_diameter":"60 mm",
       "height":"36 mm"})";

}  // namespace

TEST_CASE(
    "a frustum by its dimensions holds what the handbook says, each good to half a millimetre",
    "[moulds]") {
  const auto ways = ways_of(file(frustum));
  REQUIRE(ways.size() == 1);
  CHECK(ways[0].way == Way::dimensions);
  const double held = frustum_ml(40, 60, 36);  // 71.63 ml
  CHECK_THAT(brimful_ml(ways[0]), WithinRel(held, 1e-9));
  // One measure after the other half a millimetre more, by the same formula; independent errors add
  // as the root of their squares (JCGM 100:2008, 5.1.2; from memory).
  const double off = std::hypot(frustum_ml(40.5, 60, 36) - held, frustum_ml(40, 60.5, 36) - held,
                                frustum_ml(40, 60, 36.5) - held);
  CHECK_THAT(*ways[0].high / millilitre, WithinAbs(held + off, 1e-6));
  CHECK_THAT(*ways[0].low / millilitre, WithinAbs(held - off, 1e-6));
  CHECK_THAT(off, WithinAbs(1.41, 0.01));  // of 0.66, 0.76 and 0.99 ml
}

TEST_CASE("a box by its dimensions is off by the face that each of them moves", "[moulds]") {
  const auto ways =
      ways_of(file(R"("cavities":1,"shape":{"kind":"block","length":"90 mm","width":"60 mm",
              "height":"30 mm"})"));
  REQUIRE(ways.size() == 1);
  CHECK_THAT(brimful_ml(ways[0]), WithinRel(162.0, 1e-9));  // 9 x 6 x 3 cm
  // 0.05 cm times the faces of 6 x 3, 9 x 3 and 9 x 6 cm2.
  const double off = 0.05 * std::hypot(18, 27, 54);
  CHECK_THAT(*ways[0].high / millilitre, WithinAbs(162 + off, 1e-6));
  CHECK_THAT(*ways[0].low / millilitre, WithinAbs(162 - off, 1e-6));
}

TEST_CASE("a half ball by its radius is two thirds of pi times its cube", "[moulds]") {
  // CRC Standard Mathematical Tables, "Mensuration formulas", from memory.
  const auto half_ball_ml = [](double diameter) { return pi * std::pow(diameter, 3) / 12 / 1000; };
  const auto ways =
      ways_of(file(R"("cavities":1,"shape":{"kind":"half_ball","diameter":"50 mm"})"));
  REQUIRE(ways.size() == 1);
  CHECK_THAT(brimful_ml(ways[0]), WithinRel(half_ball_ml(50), 1e-9));
  const double off = half_ball_ml(50.5) - half_ball_ml(50);
  CHECK_THAT(*ways[0].high / millilitre, WithinAbs(half_ball_ml(50) + off, 1e-6));
}

TEST_CASE("a mesh by itself lies between what its facets hold and what is smooth", "[moulds]") {
  // meshes/README.md: the divergence theorem in exact arithmetic, and the formulas of the shapes.
  struct Known {
    std::string mesh;
    double facets_ml, smooth_ml;
  };
  const auto known = GENERATE(
      Known{R"("cavities":1,"mesh":{"file":"twisted_cup.stl","unit":"mm","role":"cavity"})",
            86.83603744139, 86.88260025965},
      Known{R"("mesh":{"file":"six_pocket_tray.stl","unit":"mm","role":"body"})", 39.8104886,
            39.92441});
  const auto ways = ways_of(file(known.mesh));
  REQUIRE(ways.size() == 1);
  CHECK(ways[0].way == Way::mesh);
  CHECK_THAT(brimful_ml(ways[0]), WithinRel(known.facets_ml, 1e-7));
  CAPTURE(brimful_ml(ways[0]), *ways[0].low / millilitre, *ways[0].high / millilitre);
  CHECK_THAT(*ways[0].low / millilitre, WithinRel(known.facets_ml, 1e-7));
  // To second order, and by one section: a fifth of the difference is what that is good to.
  CHECK_THAT(*ways[0].high / millilitre,
             WithinAbs(known.smooth_ml, 0.2 * (known.smooth_ml - known.facets_ml)));
}

TEST_CASE("water by itself lies between its least and its greatest weighing", "[moulds]") {
  const auto ways = ways_of(file(
      frustum + R"(,"water":{"temperature":"25 °C","filled_to":"brim","weighed_in":"each cavity",
                         "weighings":["71.2 g","70.6 g","70.9 g"]})"));
  REQUIRE(ways.size() == 2);
  CHECK(ways[0].way == Way::water);
  // Water at 25 °C: 0.99705 g/ml (CRC Handbook of Chemistry and Physics, after Kell 1975).
  CHECK_THAT(brimful_ml(ways[0]), WithinRel(70.9 / 0.99705, 1e-5));
  CHECK_THAT(*ways[0].low / millilitre, WithinRel(70.6 / 0.99705, 1e-5));
  CHECK_THAT(*ways[0].high / millilitre, WithinRel(71.2 / 0.99705, 1e-5));
  // The other way stays what it was, whatever water says.
  CHECK(ways[1].way == Way::dimensions);
  CHECK_THAT(brimful_ml(ways[1]), WithinRel(frustum_ml(40, 60, 36), 1e-9));
}

TEST_CASE("a single weighing tells nothing of how well it repeats", "[moulds]") {
  const auto ways = ways_of(file(
      frustum + R"(,"water":{"temperature":"25 °C","filled_to":"brim","weighed_in":"each cavity",
                         "weighings":["70.9 g"]})"));
  CHECK_FALSE(ways[0].low);
  CHECK_FALSE(ways[0].high);
  CHECK(ways[0].rests_on.find("weigh once more") != std::string::npos);
}

TEST_CASE("what batches tell of a mould is in none of the other ways", "[moulds]") {
  const auto ways = ways_of(
      file(frustum + R"(,"poured_factor":1.04,"water":{"temperature":"25 °C","filled_to":"brim",
                         "weighed_in":"each cavity","weighings":["71.2 g","70.6 g"]})"));
  CHECK_THAT(brimful_ml(ways[0]), WithinRel(70.9 / 0.99705, 1e-5));
  CHECK_THAT(brimful_ml(ways[1]), WithinRel(frustum_ml(40, 60, 36), 1e-9));
}

TEST_CASE("three ways to one cup each stand by themselves, the most trusted first", "[moulds]") {
  // The cup of the mesh by its mean measures: the flutes take up a2 / 2 of the area, 0.245 %, which
  // the frustum without them lacks (meshes/README.md).
  const auto ways = ways_of(file(
      R"("cavities":1,"mesh":{"file":"twisted_cup.stl","unit":"mm","role":"cavity"},
         "shape":{"kind":"frustum","floor_diameter":"44 mm","brim_diameter":"66 mm",
                  "height":"36 mm"},
         "water":{"temperature":"25 °C","filled_to":"brim","weighed_in":"each cavity",
                  "weighings":["86.3 g","86.9 g"]})"));
  REQUIRE(ways.size() == 3);
  CHECK(ways[0].way == Way::water);
  CHECK(ways[1].way == Way::mesh);
  CHECK(ways[2].way == Way::dimensions);
  CHECK_THAT(brimful_ml(ways[0]), WithinRel(86.6 / 0.99705, 1e-5));
  CHECK_THAT(brimful_ml(ways[1]), WithinRel(86.83603744139, 1e-7));
  CHECK_THAT(brimful_ml(ways[2]), WithinRel(86.88260025965 / 1.00245, 1e-6));
  // The true one, which only the formula knows, lies in what each says of itself.
  for (const MeasuredWay& way : ways) {
    CHECK(*way.low / millilitre <= 86.8827);
    CHECK(86.8825 <= *way.high / millilitre);
  }
}

}  // namespace brimwright::moulds
