#include "desk/renaming.h"

#include "desk/uploads.h"
#include "scratch_folder.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <rapidcheck/catch.h>

#include <array>

using namespace brimwright;
using namespace brimwright::desk;
using Json = nlohmann::ordered_json;

TEST_CASE("files named in a copy are those the original meant", "[desk]") {
  const ScratchFolder shipped, own;
  shipped.write("examples/a.formula.json", "{}");
  shipped.write("examples/cup.json", "{}");
  shipped.write("examples/own.fats.json", "{}");
  shipped.write("examples/own.tips.json", "{}");
  shipped.write("moulds/bowl.json", "{}");
  own.write("cup.json", "{}");  // hers, not the one that the example means
  const moulds::Library library{shipped.path().string(), {}};
  const Json run = {{"$schema", "../schemas/run.schema.json"},
                    {"name", "cup.json"},
                    {"own_fats", "own.fats.json"},
                    {"pour", {{"mould", "moulds/bowl.json"}, {"formula", "a.formula.json"}}},
                    {"pipe", {{"beads", {{"own_tips", "own.tips.json"}}}}},
                    {"decorations", {{{"mould", "cup.json"}}, {{"mould", "nowhere.json"}}}}};
  const Json copy =
      Json::parse(named_from(run.dump(), (shipped.path() / "examples/x.run.json").string(),
                             (own.path() / "x.run.json").string(), library));
  CHECK(!copy.contains("$schema"));
  CHECK(copy["name"] == "cup.json");
  CHECK(copy["pour"]["mould"] == "moulds/bowl.json");
  CHECK(copy["pour"]["formula"] == "examples/a.formula.json");
  CHECK(copy["decorations"][0]["mould"] == "examples/cup.json");
  CHECK(copy["decorations"][1]["mould"] == "nowhere.json");
  CHECK(copy["own_fats"] == "examples/own.fats.json");
  CHECK(copy["pipe"]["beads"]["own_tips"] == "examples/own.tips.json");
}

TEST_CASE("a file's name as a browser gives it becomes a plain one", "[desk]") {
  const std::array<std::pair<const char*, const char*>, 8> names = {{
      {"cup.stl", "cup.stl"},
      {"My cup (2).STL", "My_cup__2_.STL"},
      {"../../etc/passwd.stl", "passwd.stl"},
      {"C:\\Users\\me\\cup.obj", "cup.obj"},
      {"-rf.stl", "rf.stl"},
      {"...stl", "stl"},
      {"a\x1b[31m\n.ply", "a__31m_.ply"},
      {"", ""},
  }};
  for (const auto& [given, plain] : names) CHECK(plain_file_name(given) == plain);
  CHECK(is_mesh_name("cup.STL"));
  CHECK(is_mesh_name("cup.3mf"));
  CHECK(!is_mesh_name("cup.stl.exe"));
  CHECK(!is_mesh_name("stl"));
  rc::prop("whatever it is called, it stays in its folder", [](const std::string& name) {
    const std::string plain = plain_file_name(name);
    RC_ASSERT(plain.size() <= 80U);
    RC_ASSERT(plain.find('/') == plain.npos);
    RC_ASSERT(plain.empty() || (plain[0] != '.' && plain[0] != '-'));
  });
}
