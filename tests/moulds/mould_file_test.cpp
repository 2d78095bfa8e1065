#include "moulds/mould_file.h"

#include "complaint.h"
#include "scratch_folder.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <fstream>
#include <sstream>

namespace brimwright::moulds {
namespace {

using Catch::Matchers::Contains;
using Catch::Matchers::WithinRel;

// 100 x 50 x 20 mm: 100 ml, 5 ml for each millimetre.
const std::string box =
    R"("shape":{"kind":"block","length":"100 mm","width":"50 mm","height":"20 mm"})";

std::string file(const std::string& rest) {
  return R"({"schema":"brimwright.mould/2","name":"Test bar","cavities":4,)" + rest + "}";
}

/// A closed box as an ASCII STL, in millimetres, standing on `floor`.
std::string box_stl(double x, double y, double z, double floor) {
  const double corners[8][3] = {{0, 0, 0}, {x, 0, 0}, {x, y, 0}, {0, y, 0},
                                {0, 0, z}, {x, 0, z}, {x, y, z}, {0, y, z}};
  const int facets[12][3] = {{0, 2, 1}, {0, 3, 2}, {4, 5, 6}, {4, 6, 7}, {0, 1, 5}, {0, 5, 4},
                             {1, 2, 6}, {1, 6, 5}, {2, 3, 7}, {2, 7, 6}, {3, 0, 4}, {3, 4, 7}};
  std::ostringstream out;
  out.imbue(std::locale::classic());
  out << "solid box\n";
  for (const auto& facet : facets) {
    out << "facet normal 0 0 0\nouter loop\n";
    for (const int i : facet)
      out << "vertex " << corners[i][0] << ' ' << corners[i][1] << ' ' << corners[i][2] + floor
          << '\n';
    out << "endloop\nendfacet\n";
  }
  out << "endsolid box\n";
  return out.str();
}

Mould read(const std::string& json) {
  const ScratchFolder folder;
  folder.write("box.stl", box_stl(100, 50, 20, -3));
  return read_mould(folder.write("bar.json", json), {});
}

std::string complaint(const std::string& json) {
  return brimwright::test::complaint_of([&] { read(json); });
}

std::string cautions(const Mould& mould) {
  std::string all;
  for (const Remark& remark : mould.remarks)
    if (remark.severity == Severity::caution) all += remark.text + "\n";
  return all;
}

double brimful_ml(const Mould& mould) { return mould.curve.brimful() / millilitre; }

}  // namespace

TEST_CASE("a mould file tells its name, count, hours and shape", "[moulds]") {
  const Mould mould =
      read(file(R"("note":"from a friend","owned":2,"unmould_after":"36 h",)" + box));
  CHECK(mould.name == "Test bar");
  CHECK(mould.note == "from a friend");
  CHECK(mould.description == "block 100 x 50 mm, 20 mm high");
  CHECK(mould.cavities == 4);
  CHECK(mould.owned == 2);
  CHECK(mould.unmould_after == std::chrono::minutes(36 * 60));
  CHECK_THAT(brimful_ml(mould), WithinRel(100.0, 1e-12));
  REQUIRE(mould.measurements.size() == 1);
  CHECK(name_of(mould.measurements[0].way) == "dimensions");
  CHECK(mould.detail_factor == 1);
  CHECK(mould.remarks.empty());
}

TEST_CASE("water weighed corrects the dimensions by its own density", "[moulds][water]") {
  struct Row {
    const char* water;
    double brimful_ml;
  };
  // Density of water: 0.998207 g/ml at 20 degC, 0.994034 at 35 (Kell 1975, Table; the IAPWS values
  // agree to 1e-5). A line 5 mm below the brim of 20 is three quarters of an upright block.
  const auto row = GENERATE(values<Row>({
      {R"({"temperature":"20 °C","filled_to":"brim","weighed_in":"each cavity","weighings":["98.00 g"]})",
       98.0 / 0.998207},
      {R"({"temperature":"95 °F","filled_to":"brim","weighed_in":"each cavity","weighings":["98 g"]})",
       98.0 / 0.994034},
      {R"({"temperature":"20 °C","filled_to":"brim","weighed_in":"all cavities","weighings":["392 g"]})",
       98.0 / 0.998207},
      {R"({"temperature":"20 °C","filled_to":{"below_brim":"5 mm"},"weighed_in":"each cavity",
           "weighings":["73.5 g"]})",
       98.0 / 0.998207},
      {R"({"temperature":"20 °C","filled_to":{"depth":"15 mm"},"weighed_in":"each cavity","weighings":["73.5 g"]})",
       98.0 / 0.998207},
      {R"({"temperature":"20 °C","filled_to":{"depth":"20 mm"},"weighed_in":"each cavity",
           "weighings":["97 g","98 g","99 g"]})",
       98.0 / 0.998207},
  }));
  CAPTURE(row.water);
  const Mould mould = read(file(box + R"(,"water":)" + row.water));
  CHECK_THAT(brimful_ml(mould), WithinRel(row.brimful_ml, 2e-5));
  CHECK_THAT(mould.detail_factor, WithinRel(row.brimful_ml / 100, 2e-5));
  REQUIRE(mould.measurements.size() == 2);
  CHECK(mould.measurements[0].way == Way::water);
  CHECK_THAT(mould.measurements[0].brimful / millilitre, WithinRel(row.brimful_ml, 2e-5));
  CHECK_THAT(mould.measurements[1].brimful / millilitre, WithinRel(100.0, 1e-12));
  CHECK(cautions(mould).empty());
}

TEST_CASE("rounds of water that differ by more than 3 % are cautioned", "[moulds][water]") {
  const auto with = [](const std::string& weighings) {
    return read(
        file(box + R"(,"water":{"temperature":"20 °C","filled_to":"brim","weighed_in":"each cavity",
                              "weighings":[)" +
             weighings + "]}"));
  };
  const Mould wide = with(R"("98 g","102 g")");
  // 4 g between them, 100 g their mean.
  CHECK_THAT(wide.measurements[0].spread->in_percent(), WithinRel(4.0, 1e-12));
  CHECK_THAT(cautions(wide), Contains("The water weighings differ by 4.0 %"));
  CHECK(cautions(with(R"("98.6 g","101.4 g")")).empty());
  CHECK_FALSE(with(R"("100 g")").measurements[0].spread.has_value());
}

TEST_CASE("water that disagrees by more than 3 % is used, and both figures shown",
          "[moulds][water]") {
  // 104.6 g at 20 degC: 104.79 ml.
  const Mould mould = read(file(box + R"(,"water":{"temperature":"20 °C","filled_to":"brim",
                                "weighed_in":"each cavity","weighings":["104.6 g"]})"));
  CHECK_THAT(cautions(mould),
             Contains("By water a cavity holds 104.8 ml to the brim, by dimensions "
                      "100.0 ml: 4.8 % more. The water figure is used."));
}

TEST_CASE("a mesh is trusted over dimensions, and both are reported", "[moulds]") {
  const std::string mesh = R"("mesh":{"file":"box.stl","unit":"mm","role":"cavity","up":"+z"})";
  const Mould same = read(file(box + "," + mesh));
  REQUIRE(same.measurements.size() == 2);
  CHECK(same.measurements[0].way == Way::mesh);
  CHECK(same.measurements[1].way == Way::dimensions);
  CHECK(cautions(same).empty());
  CHECK_THAT(same.floor / millimetre, WithinRel(-3.0, 1e-12));

  const std::string tall =
      R"("shape":{"kind":"block","length":"100 mm","width":"50 mm","height":"22 mm"})";
  const Mould apart = read(file(tall + "," + mesh));
  CHECK_THAT(brimful_ml(apart), WithinRel(100.0, 1e-6));
  CHECK_THAT(cautions(apart), Contains("By mesh a cavity holds 100.0 ml to the brim, by dimensions "
                                       "110.0 ml: 9.1 % less. The mesh figure is used."));
}

TEST_CASE("a mesh lying on its side is stood up as told", "[moulds]") {
  const Mould mould =
      read(file(R"("mesh":{"file":"box.stl","unit":"cm","role":"cavity","up":"+x"})"));
  CHECK_THAT(mould.curve.height() / metre, WithinRel(1.0, 1e-6));  // 100 cm along x
  CHECK_THAT(cautions(mould), Contains("One cavity holds 100.0 litres; check the unit"));
}

TEST_CASE("a cavity of less than a millilitre is questioned", "[moulds]") {
  const Mould mould = read(file(R"("shape":{"kind":"half_ball","diameter":"9 mm"})"));
  CHECK_THAT(cautions(mould), Contains("One cavity holds only 0.1909 ml"));  // 2/3 pi 4.5^3 mm3
}

TEST_CASE("a cup narrower at the brim than at the floor is questioned", "[moulds]") {
  const Mould mould = read(file(
      R"("shape":{"kind":"frustum","floor_diameter":"7 cm","brim_diameter":"6 cm","height":"3 cm"})"));
  CHECK_THAT(cautions(mould), Contains("narrower at the brim"));
}

TEST_CASE("the mesh of a hollow is, on its own, a mould of one cavity", "[moulds]") {
  const ScratchFolder folder;
  const std::string path = folder.write("bar.stl", box_stl(100, 50, 20, 7));
  const Mould mould = mould_of_mesh(path, {.reading = {.unit = geometry::LengthUnit::millimetre}});
  CHECK(mould.name == "bar");
  CHECK(mould.file == path);
  CHECK(mould.description == "mesh bar.stl in mm");
  CHECK(mould.cavities == 1);
  CHECK_THAT(brimful_ml(mould), WithinRel(100.0, 1e-9));
  CHECK_THAT(mould.floor / millimetre, WithinRel(7.0, 1e-9));
  CHECK_THROWS_AS(mould_of_mesh(path, {}), UserError);  // an STL does not tell its unit
}

TEST_CASE("a mould file that cannot be believed is refused in one line", "[moulds]") {
  const auto water = [](const std::string& rest) {
    return file(box + R"(,"water":{)" + rest + "}");
  };
  struct Row {
    std::string json;
    const char* says;
  };
  const auto row = GENERATE_COPY(values<Row>({
      {R"({"schema":"brimwright.mould/3","name":"x","cavities":1})", "/schema: is"},
      {file(R"("owned":0,)" + box), "/owned: is 0"},
      {file(R"("shapes":{},)" + box), R"(/shapes: unknown key; did you mean "shape"?)"},
      {R"({"schema":"brimwright.mould/2","name":"x",)" + box + "}", "/cavities: is missing"},
      {file(R"("note":"nothing measured")"), R"(/shape: is missing, and so is "mesh")"},
      {file(R"("water":{"temperature":"20 °C","filled_to":"brim","weighed_in":"each cavity",
               "weighings":["98 g"]})"),
       "add the shape's rough measures; the water then corrects them"},
      {file(R"("mesh":{"file":"box.stl","unit":"mm","role":"body"})"),
       "box.stl holds no liquid, whichever way up"},
      {file(R"("mesh":{"file":"box.stl","unit":"mm","role":"lid"})"),
       R"(/mesh/role: "lid" is not what a mesh can be)"},
      {file(R"("mesh":{"file":"box.stl","unit":"mm"})"), "/mesh/role: is missing"},
      {file(R"("mesh":{"file":"box.stl","unit":"furlong","role":"cavity"})"), "/mesh/unit: "},
      {file(R"("mesh":{"file":"box.stl","role":"cavity"})"), "box.stl"},
      {file(R"("mesh":{"file":"../box.stl","unit":"mm","role":"cavity"})"), "/mesh/file: "},
      {file(R"("mesh":{"file":"cup.stl","unit":"mm","role":"cavity"})"),
       R"(/mesh/file: there is no file "cup.stl")"},
      {water(
           R"("temperature":"70 °C","filled_to":"brim","weighed_in":"each cavity","weighings":["98 g"])"),
       "/water/temperature: is 70 °C (158 °F); weigh water between 0 and 60 °C"},
      {water(
           R"("temperature":"20 °C","filled_to":"brim","weighed_in":"each cavity","weighings":[])"),
       "/water/weighings: holds no weighing"},
      {water(
           R"("temperature":"20 °C","filled_to":"brim","weighed_in":"each cavity","weighings":["98 ml"])"),
       "/water/weighings/0: "},
      {water(
           R"("temperature":"20 °C","filled_to":"brim","weighed_in":"each cavity","weighings":["98 g","0 g"])"),
       "/water/weighings/1: is zero"},
      {water(R"("temperature":"20 °C","weighed_in":"each cavity","weighings":["98 g"])"),
       "/water/filled_to: is missing"},
      {water(
           R"("temperature":"20 °C","filled_to":"line","weighed_in":"each cavity","weighings":["98 g"])"),
       R"(/water/filled_to: is "line")"},
      {water(
           R"("temperature":"20 °C","filled_to":{},"weighed_in":"each cavity","weighings":["98 g"])"),
       R"(/water/filled_to: must hold either "depth" or "below_brim")"},
      {water(R"("temperature":"20 °C","filled_to":{"depth":"21 mm"},"weighed_in":"each cavity",
                "weighings":["98 g"])"),
       "/water/filled_to/depth: 21 mm deep lies outside the cavity, which is 20 mm deep"},
      {water(R"("temperature":"20 °C","filled_to":{"below_brim":"20 mm"},"weighed_in":"each cavity",
                "weighings":["98 g"])"),
       "/water/filled_to/below_brim: 20 mm below the brim lies outside the cavity"},
      // Four cavities weighed together, entered as one: 392 g.
      {water(
           R"("temperature":"20 °C","filled_to":"brim","weighed_in":"each cavity","weighings":["392 g"])"),
       "/water/weighings: by water a cavity holds 392.7 ml, 3.93 times the 100.0 ml of its "
       "dimensions"},
      {water(
           R"("temperature":"20 °C","filled_to":"brim","weighed_in":"all cavities","weighings":["98 g"])"),
       "check whether one cavity or all were weighed"},
  }));
  CAPTURE(row.json);
  CHECK_THAT(complaint(row.json), Contains(row.says));
}

}  // namespace brimwright::moulds
