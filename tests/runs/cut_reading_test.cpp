#include "runs/cut_reading.h"

#include <catch2/catch.hpp>

using namespace brimwright;
using namespace brimwright::planning;
using Catch::Matchers::Contains;

namespace {

Fields fields(const std::string& json) { return Fields::parse(json, "loaf.run.json"); }

}  // namespace

TEST_CASE("a cut is read as it is written", "[runs]") {
  const Cut loaf = runs::read_cut(fields(R"({ "bar": { "thickness": "1 in" }, "along": "y",
      "end_trim": "3 mm", "side_trim": "2 mm", "top_planing": "1,5 mm", "kerf": "0.8 mm",
      "face_planing": "0.5 mm" })"));
  CHECK(std::get<Slices>(loaf.bar).thickness == 25.4 * millimetre);
  CHECK(loaf.along == Axis::y);
  CHECK(loaf.end_trim == 3 * millimetre);
  CHECK(loaf.side_trim == 2 * millimetre);
  CHECK(loaf.top_planing == 1.5 * millimetre);
  CHECK(loaf.kerf == 0.8 * millimetre);
  CHECK(loaf.face_planing == 0.5 * millimetre);

  const Cut slab = runs::read_cut(
      fields(R"({ "bar": { "length": "8 cm", "width": "55 mm" }, "kerf": "0 mm" })"));
  CHECK(std::get<Grid>(slab.bar).length == 80 * millimetre);
  CHECK(std::get<Grid>(slab.bar).width == 55 * millimetre);
  CHECK_FALSE(slab.along.has_value());
  CHECK(slab.end_trim + slab.side_trim + slab.top_planing + slab.face_planing == Length{});
}

TEST_CASE("a cut that leaves something open is refused with field and remedy", "[runs]") {
  struct Row {
    std::string json, said;
  };
  const auto row = GENERATE(values<Row>({
      {R"({ "bar": { "thickness": "25 mm" } })", "/kerf: is missing"},
      {R"({ "kerf": "0 mm" })", "/bar"},
      {R"({ "bar": {}, "kerf": "0 mm" })", "/bar: gives no size"},
      {R"({ "bar": { "thickness": "25 mm", "width": "55 mm" }, "kerf": "0 mm" })",
       "/bar: gives its size in two ways"},
      {R"({ "bar": { "length": "80 mm" }, "kerf": "0 mm" })", "/bar/width"},
      {R"({ "bar": { "thickness": "0 mm" }, "kerf": "0 mm" })", "/bar/thickness"},
      {R"({ "bar": { "thickness": "25 mm" }, "kerf": "-1 mm" })", "/kerf"},
      {R"({ "bar": { "thickness": "25 mm" }, "kerf": 1 })", "/kerf"},
      {R"({ "bar": { "thickness": "25 mm" }, "along": "w", "kerf": "0 mm" })", "/along"},
      {R"({ "bar": { "thickness": "25 mm" }, "kerf": "0 mm", "end_trimm": "3 mm" })",
       "did you mean \"end_trim\""},
  }));
  CHECK_THROWS_WITH(runs::read_cut(fields(row.json)), Contains(row.said));
}
