#include "units/usual_measures.h"

#include "complaint.h"

#include <catch2/catch.hpp>

#include <string>

using namespace brimwright;
using Catch::Matchers::Contains;

namespace {

const UsualMeasures& cups() {
  static const UsualMeasures usual(R"({"measures": [{"measure": "cup", "in": "volume",
      "least": "20 ml", "most": "360 ml", "what": "a weigh-cup", "slip": "ml for fl oz",
      "source": "common practice, no source"}]})",
                                   "cups.json");
  return usual;
}

Fields object(const std::string& json) { return Fields::parse(json, "run.json"); }

/// What is said against the cup that `json` holds; empty if it passes.
std::string complaint(const std::string& json) {
  return test::complaint_of([&] {
    const Fields fields = object(json);
    cups().ask(fields, "holds", "cup", fields.positive_volume("holds"));
    fields.refuse_unknown();
  });
}

}  // namespace

TEST_CASE("a measure far from usual was taken without a word", "[units]") {
  CHECK(complaint(R"({"holds": "120 ml"})").empty());
  CHECK(complaint(R"({"holds": "20 ml"})").empty());
  CHECK(complaint(R"({"holds": "360 ml"})").empty());
  CHECK(complaint(R"({"holds": "4 l"})") ==
        "run.json: /holds: \"4 l\" is far from usual for a weigh-cup, 20 ml to 360 ml (common "
        "practice, no source); is it a slip (ml for fl oz)? If it is right, put \"confirmed\": \"4 "
        "l\" into that object");
  CHECK_THAT(complaint(R"({"holds": "4 ml"})"), Contains("far from usual"));
}

TEST_CASE("what was confirmed is not asked again, and covers no later slip", "[units]") {
  CHECK(complaint(R"({"holds": "4 l", "confirmed": "4 l"})").empty());
  CHECK(complaint(R"({"holds": "4 l", "confirmed": ["2 mm", " 4 l"]})").empty());
  CHECK_THAT(complaint(R"({"holds": "5 l", "confirmed": "4 l"})"), Contains("\"5 l\" is far"));
  CHECK_THAT(complaint(R"({"holds": "4 l", "confirmed": false})"), Contains("\"4 l\" is far"));
  CHECK_THAT(complaint(R"({"holds": "4 l", "confirmed": null})"), Contains("/confirmed: is null"));
  // One left behind by a figure that has become usual is in nobody's way.
  CHECK(complaint(R"({"holds": "120 ml", "confirmed": "4 l"})").empty());
}

TEST_CASE("a bare true keeps whatever stands there, and is said to", "[units]") {
  const Fields fields = object(R"({"holds": "4 l", "confirmed": true})");
  cups().ask(fields, "holds", "cup", 4 * litre);
  REQUIRE(fields.said().size() == 1);
  CHECK(fields.said()[0].severity == Severity::caution);
  CHECK_THAT(fields.said()[0].text,
             Contains("/holds: \"4 l\"") && Contains("\"confirmed\": \"4 l\" keeps this value"));
  const Fields named = object(R"({"holds": "4 l", "confirmed": "4 l"})");
  cups().ask(named, "holds", "cup", 4 * litre);
  CHECK(named.said().empty());
  // Said of the whole document, wherever in it.
  const Fields run = object(R"({"cup": {"holds": "4 l", "confirmed": true}})");
  cups().ask(run.object("cup"), "holds", "cup", 4 * litre);
  CHECK(run.said().size() == 1);
}
