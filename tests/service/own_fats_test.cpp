#include "scratch_folder.h"
#include "service/service.h"

#include <catch2/catch.hpp>

#include <fstream>
#include <sstream>
#include <string>

namespace brimwright::service {
namespace {

using Catch::Matchers::Contains;

const std::string root = BRIMWRIGHT_SOURCE_DIR;

std::string text_of(const std::string& path) {
  std::ifstream file(path);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

/// A run of plain bars from a formula of half coconut, half `fat`, with its own fats from `file`.
Reply planned(const ScratchFolder& folder, const std::string& file, const std::string& fat) {
  folder.write("own.formula.json", R"({
    "schema": "brimwright.formula/2", "name": "Own", "own_fats": ")" +
                                       file + R"(",
    "fats": [ { "fat": "coconut", "share": "50 %" }, { "fat": ")" +
                                       fat + R"(", "share": "50 %" } ],
    "superfat": "8 %",
    "alkali": [ { "alkali": "NaOH", "share": "100 %", "purity": "99 %" } ],
    "water": { "lye_strength": "33 %" }, "pour_temperature": "38 °C" })");
  std::string run = text_of(root + "/examples/plain_bars.run.json");
  const std::string shipped = "meadow_base.formula.json";
  run.replace(run.find(shipped), shipped.size(), "own.formula.json");
  return answer({PlanRequest{.file = folder.write("own.run.json", run), .sell = {}}, Form::text},
                {.shipped = root, .folders = {}});
}

TEST_CASE("a plan weighs a maker's own fat from the file beside its formula", "[service]") {
  const ScratchFolder folder;
  folder.write("fats/mine.fats.json", text_of(root + "/examples/studio.fats.json"));
  const Reply reply = planned(folder, "fats/mine.fats.json", "argan_studio");
  CHECK(reply.complaint.empty());
  CHECK_THAT(reply.document, Contains("Argan oil"));
  CHECK_THAT(reply.document, Contains("Likely") && Contains("(19 batches\n    in 20)"));
}

TEST_CASE("a file of fats that leaves the folders is not read", "[service]") {
  const ScratchFolder folder;
  const Reply reply = planned(folder, "../../../../etc/passwd", "argan_studio");
  CHECK(reply.status == Status::wanting);
  CHECK(reply.document.empty());
  CHECK_THAT(reply.complaint, Contains("/own_fats"));
}

TEST_CASE("a slip in the file of fats is told at that file", "[service]") {
  const ScratchFolder folder;
  std::string fats = text_of(root + "/examples/studio.fats.json");
  const std::string range = R"({"low": 189, "high": 199})";
  fats.replace(fats.find(range), range.size(), "138");  // its NaOH value
  folder.write("mine.fats.json", fats);
  const Reply reply = planned(folder, "mine.fats.json", "argan_studio");
  CHECK(reply.status == Status::wanting);
  CHECK_THAT(reply.complaint, Contains("mine.fats.json") && Contains("looks like a NaOH value"));
}

/// Olive oil by name, coconut's value by a slipped line.
std::string slipped_olive(const std::string& more) {
  return R"({ "schema": "brimwright.fats/1", "fats": [ { "id": "market", "name": "Olive",
    "kind": "triglyceride", "inci": "Olive", "inci_sodium_soap": "Sodium Olivate",
    "saponification_value": 266.5, "iodine_value": 80, "source": "a delivery note")" +
         more + " } ] }";
}

TEST_CASE("an own olive oil at 266.5 without fatty acids is not planned", "[service]") {
  const ScratchFolder folder;
  folder.write("mine.fats.json", slipped_olive(""));
  const Reply reply = planned(folder, "mine.fats.json", "market");
  CHECK(reply.status == Status::wanting);
  CHECK(reply.document.empty());
  CHECK_THAT(reply.complaint, Contains("mine.fats.json: /fats/0/saponification_value") &&
                                  Contains("known for Olive oil, whose name it has"));
}

TEST_CASE("an own value confirmed against what is known begins the plan with its danger",
          "[service]") {
  const ScratchFolder folder;
  folder.write("mine.fats.json", slipped_olive(R"(, "confirmed": true)"));
  const Reply reply = planned(folder, "mine.fats.json", "market");
  REQUIRE(reply.complaint.empty());
  const auto danger = reply.document.find("was confirmed");
  REQUIRE(danger != std::string::npos);
  // Before anything that could be weighed.
  CHECK(danger < reply.document.find("NaOH, 99 % pure"));
  CHECK(reply.document.find("LYE-HEAVY") < danger);
}

TEST_CASE("a fat that neither ships nor stands in the file is refused with the nearest",
          "[service]") {
  const ScratchFolder folder;
  folder.write("mine.fats.json", text_of(root + "/examples/studio.fats.json"));
  const Reply reply = planned(folder, "mine.fats.json", "argan_studo");
  CHECK(reply.status == Status::wanting);
  CHECK_THAT(reply.complaint, Contains("did you mean \"argan_studio\"?"));
}

}  // namespace
}  // namespace brimwright::service
