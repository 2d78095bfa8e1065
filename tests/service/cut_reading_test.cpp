#include "service/cut_reading.h"

#include <catch2/catch.hpp>

using namespace brimwright;
using namespace brimwright::planning;
using Catch::Matchers::Contains;

namespace {

Fields fields(const std::string& json) { return Fields::parse(json, "loaf.run.json"); }

}  // namespace

TEST_CASE("a cut is read as it is written", "[service]") {
  const Cut loaf = service::read_cut(fields(R"({ "bar": { "thickness": "1 in" }, "along": "y",
      "end_trim": "3 mm", "side_trim": "2 mm", "top_planing": "1,5 mm", "kerf": "0.8 mm",
      "face_planing": "0.5 mm" })"));
  CHECK(std::get<Slices>(loaf.bar).thickness == 25.4 * millimetre);
  CHECK(loaf.along == Axis::y);
  CHECK(loaf.end_trim == 3 * millimetre);
  CHECK(loaf.side_trim == 2 * millimetre);
  CHECK(loaf.top_planing == 1.5 * millimetre);
  CHECK(loaf.kerf == 0.8 * millimetre);
  CHECK(loaf.face_planing == 0.5 * millimetre);

  const Cut slab = service::read_cut(
      fields(R"({ "bar": { "length": "8 cm", "width": "55 mm" }, "kerf": "0 mm" })"));
  CHECK(std::get<Grid>(slab.bar).length == 80 * millimetre);
  CHECK(std::get<Grid>(slab.bar).width == 55 * millimetre);
  CHECK_FALSE(slab.along.has_value());
  CHECK(slab.end_trim + slab.side_trim + slab.top_planing + slab.face_planing == Length{});
}

TEST_CASE("a cut that leaves something open is refused with field and remedy", "[service]") {
  struct Row {
    std::string json, said;
  };
  const auto row = GENERATE(values<Row>({
      {R"({ "bar": { "thickness": "25 mm" } })", "/kerf: is missing"},
      {R"({ "kerf": "0 mm" })", "/bar"},
      {R"({ "bar": {}, "kerf": "0 mm" })", "/bar: says no size"},
      {R"({ "bar": { "thickness": "25 mm", "width": "55 mm" }, "kerf": "0 mm" })",
       "/bar: says its size in two ways"},
      {R"({ "bar": { "length": "80 mm" }, "kerf": "0 mm" })", "/bar/width"},
      {R"({ "bar": { "thickness": "0 mm" }, "kerf": "0 mm" })", "/bar/thickness"},
      {R"({ "bar": { "thickness": "25 mm" }, "kerf": "-1 mm" })", "/kerf"},
      {R"({ "bar": { "thickness": "25 mm" }, "kerf": 1 })", "/kerf"},
      {R"({ "bar": { "thickness": "25 mm" }, "along": "w", "kerf": "0 mm" })", "/along"},
      {R"({ "bar": { "thickness": "25 mm" }, "kerf": "0 mm", "end_trimm": "3 mm" })",
       "did you mean \"end_trim\""},
  }));
  CHECK_THROWS_WITH(service::read_cut(fields(row.json)), Contains(row.said));
}

TEST_CASE("a propped mould's low side is a side or a direction", "[service]") {
  const auto tilt = service::read_tilt(fields(R"({ "angle": "12 deg", "low_side": "-x" })"));
  CHECK(tilt.angle.degrees() == Approx(12));
  CHECK(tilt.low_side.degrees() == Approx(180));
  const Place place{"command line", "--low-side"};
  CHECK(service::read_low_side("+y", place).degrees() == Approx(90));
  CHECK(service::read_low_side("45°", place).degrees() == Approx(45));
  CHECK_THROWS_WITH(service::read_low_side("left", place), Contains("command line: --low-side"));
  CHECK_THROWS_WITH(service::read_tilt(fields(R"({ "angle": "12 deg" })")), Contains("/low_side"));
  CHECK_THROWS_WITH(service::read_tilt(fields(R"({ "angle": "90 deg", "low_side": "+x" })")),
                    Contains("/angle"));
  CHECK_THROWS_WITH(
      service::read_tilt(fields(R"({ "angle": "5 deg", "low_side": "+x", "way": "a" })")),
      Contains("/way"));
}
