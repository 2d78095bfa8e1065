#include "web/renaming.h"

#include "scratch_folder.h"
#include "web/request_head.h"
#include "web/uploads.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <rapidcheck/catch.h>

#include <array>

using namespace brimwright;
using namespace brimwright::web;
using Json = nlohmann::ordered_json;

TEST_CASE("files named in a copy are those the original meant", "[web]") {
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
                    {"fats_from", "own.fats.json"},
                    {"pour", {{"mould", "moulds/bowl.json"}, {"formula", "a.formula.json"}}},
                    {"pipe", {{"beads", {{"tips_from", "own.tips.json"}}}}},
                    {"perch", {{{"mould", "cup.json"}}, {{"mould", "nowhere.json"}}}}};
  const Json copy =
      Json::parse(named_from(run.dump(), (shipped.path() / "examples/x.run.json").string(),
                             (own.path() / "x.run.json").string(), library));
  CHECK(!copy.contains("$schema"));
  CHECK(copy["name"] == "cup.json");
  CHECK(copy["pour"]["mould"] == "moulds/bowl.json");
  CHECK(copy["pour"]["formula"] == "examples/a.formula.json");
  CHECK(copy["perch"][0]["mould"] == "examples/cup.json");
  CHECK(copy["perch"][1]["mould"] == "nowhere.json");
  CHECK(copy["fats_from"] == "examples/own.fats.json");
  CHECK(copy["pipe"]["beads"]["tips_from"] == "examples/own.tips.json");
}

TEST_CASE("a file's name as a browser gives it becomes a plain one", "[web]") {
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

TEST_CASE("an address's query reads back as what was asked", "[web]") {
  rc::prop("escaped, then decoded", [](const std::map<std::string, std::string>& asked) {
    const auto escaped = [](const std::string& text) {
      std::string out;
      for (const char c : text) {
        char hex[4];
        std::snprintf(hex, sizeof hex, "%%%02x", static_cast<unsigned char>(c));
        out += hex;
      }
      return out;
    };
    std::string address = "/api/run?";
    bool has_nul = false;
    for (const auto& [name, value] : asked) {
      address += escaped(name) + "=" + escaped(value) + "&";
      has_nul = has_nul || (name + value).find('\0') != std::string::npos;
    }
    const auto target = target_of(address);
    RC_ASSERT(target.has_value() == !has_nul);
    if (target) RC_ASSERT(target->query == asked);
  });
  for (const char* broken : {"", "x", "/a b", "/a#b", "/?a=%", "/?a=%4", "/?a=%zz", "/?a=%00",
                             "/?a=1&a=2", "http://127.0.0.1/", "/\x80"})
    CHECK(!target_of(broken));
  CHECK(target_of("/%2e%2e/x")->path == "/%2e%2e/x");  // a path is compared, never decoded
}
