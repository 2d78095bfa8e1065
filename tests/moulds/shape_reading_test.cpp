#include "moulds/shape_reading.h"

#include "complaint.h"
#include "moulds/shape.h"
#include "moulds/shape_curve.h"

#include <catch2/catch.hpp>

#include <string>

namespace brimwright::moulds {
namespace {

using Catch::Matchers::WithinRel;

Shape read(const std::string& json) { return read_shape(Fields::parse(json, "cup.json")); }

std::string complaint(const std::string& json) {
  return brimwright::test::complaint_of([&] { read(json); });
}

double brimful_ml(const std::string& json) {
  return level_curve(read(json)).brimful() / millilitre;
}

}  // namespace

TEST_CASE("every kind of shape is read with its measures", "[moulds]") {
  struct Row {
    const char* json;
    double ml;
  };
  // Volumes by the handbook's formulas (CRC Standard Mathematical Tables), worked by hand.
  const auto row = GENERATE(values<Row>({
      {R"({"kind":"block","length":"100 mm","width":"5 cm","height":"2 cm"})", 100},
      {R"({"kind":"block","length":"4 in","width":"2 in","height":"1/2 in"})", 4 * 16.387064},
      {R"({"kind":"frustum","floor_diameter":"60 mm","brim_diameter":"80 mm","height":"25 mm"})",
       96.865773486},
      {R"({"kind":"fluted_cup","floor_diameter":"60 mm","brim_diameter":"80 mm","height":"25 mm",
           "flutes":12,"flute_depth":"8 mm"})",
       96.865773486 * 1.005},
      {R"({"kind":"polygon","sides":4,"across_flats":"50 mm","height":"20 mm","draft":"0°"})", 50},
      {R"({"kind":"outline","points":[{"x":"0 mm","y":"0 mm"},{"x":"40 mm","y":"0 mm"},
           {"x":"0 mm","y":"30 mm"}],"height":"10 mm"})",
       6},
      {R"({"kind":"turned_profile","points":[{"radius":"30 mm","height":"5 mm"},
           {"radius":"40 mm","height":"30 mm"}]})",
       96.865773486},
      {R"({"kind":"dome","diameter":"60 mm","height":"20 mm"})", 2.0 / 3 * pi * 18},
      {R"({"kind":"ball","diameter":"60 mm"})", 4.0 / 3 * pi * 27},
      {R"({"kind":"half_ball","diameter":"60 mm"})", 2.0 / 3 * pi * 27},
      {R"({"kind":"half_ring","centre_diameter":"60 mm","tube_diameter":"20 mm"})",
       59.217626407 / 2},
      {R"({"kind":"turned_ring","outer_floor_diameter":"40 mm","outer_brim_diameter":"40 mm",
           "post_floor_diameter":"20 mm","post_brim_diameter":"20 mm","height":"10 mm"})",
       pi * 3},
      {R"({"kind":"heart","side":"40 mm","height":"10 mm"})", 16 + pi * 4},
  }));
  CAPTURE(row.json);
  CHECK_THAT(brimful_ml(row.json), WithinRel(row.ml, 1e-10));
}

TEST_CASE("measures that make no cavity are refused with the field and the way out", "[moulds]") {
  struct Row {
    const char* json;
    const char* says;
  };
  const auto row = GENERATE(values<Row>({
      {R"({"kind":"blok"})", R"(/kind: is "blok"; did you mean "block"?)"},
      {R"({"kind":"block","length":80,"width":"5 cm","height":"2 cm"})",
       "/length: is the bare number 80 without a unit"},
      {R"({"kind":"block","length":"0 mm","width":"5 cm","height":"2 cm"})", "/length: is zero"},
      {R"({"kind":"block","length":"-8 cm","width":"5 cm","height":"2 cm"})", "is negative"},
      {R"({"kind":"block","length":"8 cm","width":"5 cm","height":"2 cm","draught":"2°"})",
       "/draught: unknown key"},
      {R"({"kind":"block","length":"8 cm","width":"5 cm","height":"4 cm","draft":"33°"})",
       "/draft: walls leaning 33\u00b0 over 40 mm of height meet before the floor; give the draft "
       "of "
       "one wall from upright, below 32.0\u00b0 here"},
      {R"({"kind":"block","length":"8 cm","width":"5 cm","height":"2 cm","corner_radius":"26 mm"})",
       "/corner_radius: 26 mm is more than half the narrower side; give the radius of the upright "
       "edges at the brim, at most 25 mm"},
      {R"({"kind":"polygon","sides":2,"across_flats":"5 cm","height":"2 cm"})", "/sides: is 2"},
      {R"({"kind":"polygon","sides":6,"across_flats":"40 mm","height":"30 mm","draft":"40°"})",
       "/draft: walls leaning 40"},
      {R"({"kind":"fluted_cup","floor_diameter":"4 cm","brim_diameter":"6 cm","height":"3 cm",
           "flutes":9,"flute_depth":"30 mm"})",
       "/flute_depth: 30 mm is too deep"},
      {R"({"kind":"outline","points":[{"x":"0 mm","y":"0 mm"},{"x":"4 cm","y":"0 mm"}],
           "height":"2 cm"})",
       "/points: has 2 points; give 3 to 500"},
      {R"({"kind":"outline","points":[{"x":"0 mm","y":"0 mm"},{"x":"4 cm","y":"4 cm"},
           {"x":"4 cm","y":"0 mm"},{"x":"0 mm","y":"4 cm"}],"height":"2 cm"})",
       "/points: the edge from point 1 to 2 meets the edge from point 3 to 4"},
      {R"({"kind":"outline","points":[{"x":"0 mm","y":"0 mm"},{"x":"4 cm","y":"0 mm"},
           {"x":"0 mm","y":"3 cm"}],"height":"2 cm","draft":"27°"})",
       "/draft: walls leaning 27\u00b0 over 20 mm of height meet before the floor"},
      {R"({"kind":"outline","points":[{"x":"0 mm","y":"0 mm","z":"0 mm"}],"height":"2 cm"})",
       "/points/0/z: unknown key"},
      {R"({"kind":"turned_profile","points":[{"radius":"2 cm","height":"1 cm"},
           {"radius":"3 cm","height":"5 mm"}]})",
       "/points/1: lies lower than the point before it"},
      {R"({"kind":"turned_profile","points":[{"radius":"2 cm","height":"1 cm"},
           {"radius":"0 mm","height":"3 cm"}]})",
       "/points/1: closes the cavity on its middle line"},
      {R"({"kind":"turned_profile","points":[{"radius":"2 cm","height":"1 cm"},
           {"radius":"3 cm","height":"1 cm"}]})",
       "/points: all points lie at one height"},
      {R"({"kind":"turned_profile","points":[{"radius":"2 cm","height":"1 cm"},
           {"radius":"3 cm","height":"4 cm"},{"radius":"4 cm","height":"4 cm"}]})",
       "/points/2: runs level at the brim"},
      {R"({"kind":"half_ring","centre_diameter":"40 mm","tube_diameter":"40 mm"})",
       "/tube_diameter: a tube of 40 mm leaves no hole in a ring of 40 mm"},
      {R"({"kind":"turned_ring","outer_floor_diameter":"4 cm","outer_brim_diameter":"5 cm",
           "post_floor_diameter":"41 mm","post_brim_diameter":"2 cm","height":"1 cm"})",
       "/post_floor_diameter: a post 41 mm across leaves no room in a cup of 40 mm"},
      {R"({"kind":"heart","side":"40 mm","height":"20 mm","draft":"45°"})",
       "/draft: walls leaning 45\u00b0 over 20 mm"},
      {R"({"kind":"ball","diameter":"0.001 mm"})",
       "these measures make a cavity of less than 1 mm³"},
  }));
  CAPTURE(row.json);
  CHECK_THAT(complaint(row.json), Catch::Matchers::Contains(row.says));
  CHECK_THAT(complaint(row.json), Catch::Matchers::StartsWith("cup.json: /"));
}

TEST_CASE("a draft just short of closing the floor is taken", "[moulds]") {
  // 25 mm of half width over 40 mm of height: atan(25 / 40) = 32.005 degrees.
  CHECK(complaint(R"({"kind":"block","length":"8 cm","width":"5 cm","height":"4 cm",
                      "draft":"32.0°"})") == "");
}

}  // namespace brimwright::moulds
