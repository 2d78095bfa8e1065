#include "client.h"
#include "desk/workspace.h"
#include "scratch_folder.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <future>
#include <sstream>

using namespace brimwright;
using namespace brimwright::web;
using namespace brimwright::web::test;
using namespace std::chrono_literals;
using Json = nlohmann::ordered_json;

namespace {

const std::string root = BRIMWRIGHT_SOURCE_DIR;

std::string file_text(const std::filesystem::path& path) {
  std::ostringstream text;
  text << std::ifstream(path, std::ios::binary).rdbuf();
  return text.str();
}

/// The entry of a list whose file has that name; null if none has.
Json entry(const Json& list, const std::string& file) {
  const auto at = std::find_if(list.begin(), list.end(),
                               [&](const Json& each) { return each["file"] == file; });
  return at == list.end() ? Json() : *at;
}

Response put(RunningServer& server, const std::string& file, const Json& version,
             const std::string& text) {
  return server.ask("PUT", "/api/file",
                    Json{{"file", file}, {"version", version}, {"text", text}}.dump());
}

}  // namespace

TEST_CASE("where no run is wanted, her own that was changed last is shown first", "[web][files]") {
  const ScratchFolder folder;
  const auto shown_first = [&] {
    RunningServer server(settings_in(folder.path().string()));
    return Json::parse(server.ask("GET", "/api/files").body)["shown_first"];
  };
  CHECK(shown_first() == "examples/spring_cups.run.json");
  const auto write = [&](const std::string& name, int hours_ago) {
    folder.write(name, R"({"schema":"brimwright.run/2","name":"May"})");
    std::filesystem::last_write_time(
        folder.path() / name,
        std::filesystem::file_time_type::clock::now() - std::chrono::hours(hours_ago));
  };
  write("a.run.json", 3);
  write("b.run.json", 1);
  write("c.run.json", 2);
  CHECK(shown_first() == "b.run.json");
}

TEST_CASE("the files of the folder and the shipped ones are listed by kind", "[web][files]") {
  const ScratchFolder folder;
  folder.write("may.run.json", R"({"schema":"brimwright.run/2","name":"May"})");
  folder.write("moulds/cup.json", R"({"schema":"brimwright.mould/2","name":"Cup"})");
  folder.write("half.json", "{ \"schema\": ");
  folder.write("other.json", R"({"a":1})");
  folder.write(".hidden.run.json", R"({"schema":"brimwright.run/2","name":"Hidden"})");
  folder.write("piece.STL", "x");
  auto settings = settings_in("");
  settings.run = (folder.path() / "may.run.json").string();
  RunningServer server(settings);
  const Json files = Json::parse(server.ask("GET", "/api/files").body);
  CHECK(files["folder"] == folder.path().string());
  CHECK(files["open"] == "may.run.json");
  CHECK(files["makes_pdf"] == true);  // the helper programs are built beside the program
  CHECK(files["imports_meshes"] == true);
  CHECK(entry(files["runs"], "may.run.json")["shipped"] == false);
  CHECK(entry(files["runs"], "may.run.json")["name"] == "May");
  CHECK(entry(files["runs"], ".hidden.run.json").is_null());
  CHECK(entry(files["runs"], "examples/spring_cups.run.json")["shipped"] == true);
  CHECK(entry(files["moulds"], "moulds/cup.json")["shipped"] == false);
  CHECK(entry(files["moulds"], "moulds/low_bowl.json")["shipped"] == true);
  CHECK(entry(files["formulas"], "examples/meadow_base.formula.json")["shipped"] == true);
  CHECK(entry(files["meshes"], "piece.STL")["shipped"] == false);
  CHECK(entry(files["fats"], "examples/studio.fats.json")["shipped"] == true);
  CHECK(entry(files["tips"], "examples/studio.tips.json")["shipped"] == true);
  for (const char* kind : {"runs", "moulds", "formulas", "fats", "tips"})
    for (const Json& each : files[kind])  // each may be read by the name listed
      CHECK(server.ask("GET", "/api/file?file=" + each["file"].get<std::string>()).status == 200);
}

TEST_CASE("a folder with too many files to list says that some may be missing", "[web][files]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  for (int i = 0; i < 2000; ++i) folder.write("note " + std::to_string(i) + ".txt", "");
  const auto cut = [&] { return Json::parse(server.ask("GET", "/api/files").body)["cut"]; };
  CHECK(cut() == Json::array());
  folder.write("one more.txt", "");
  CHECK(cut() == Json::array({{{"folder", folder.path().string()}, {"looked_at", 2000}}}));
}

TEST_CASE("a run is saved over the version it was made from, and over no other", "[web][files]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  const std::string first = "{\n  \"schema\": \"brimwright.run/2\"\n}\n",
                    second = R"({"name":"b"})";
  const Response made = put(server, "may.run.json", nullptr, first);
  REQUIRE(made.status == 200);
  CHECK(file_text(folder.path() / "may.run.json") == first);  // her own layout, byte for byte
  const Json version = Json::parse(made.body)["version"];
  CHECK(Json::parse(server.ask("GET", "/api/file?file=may.run.json").body)["version"] == version);
  CHECK(put(server, "may.run.json", nullptr, second).status == 409);  // it is there by now

  folder.write("may.run.json", R"({"name":"from an editor"})");
  const Response refused = put(server, "may.run.json", version, second);
  CHECK(refused.status == 409);
  const Json present = Json::parse(refused.body);
  CHECK(present["text"] == R"({"name":"from an editor"})");
  CHECK(present["complaint"]["line"].is_string());
  CHECK(file_text(folder.path() / "may.run.json") == R"({"name":"from an editor"})");
  CHECK(put(server, "may.run.json", present["version"], second).status == 200);
  CHECK(file_text(folder.path() / "may.run.json") == second);

  std::filesystem::remove(folder.path() / "may.run.json");
  CHECK(put(server, "may.run.json", present["version"], second).status == 409);
  CHECK(put(server, "bad.json", nullptr, "{").status == 422);
  CHECK(!std::filesystem::exists(folder.path() / "bad.json"));
}

TEST_CASE("a saving that is asked for twice, because its answer was lost, is no conflict",
          "[web][files]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  const Response first = put(server, "may.run.json", nullptr, R"({"name":"May"})");
  const Response again = put(server, "may.run.json", nullptr, R"({"name":"May"})");
  CHECK(again.status == 200);
  CHECK(again.body == first.body);
  CHECK(put(server, "may.run.json", nullptr, R"({"name":"June"})").status == 409);
}

TEST_CASE("of two tabs that save over the same version, one is told", "[web][files]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  Json version = Json::parse(put(server, "may.run.json", nullptr, "{}").body)["version"];
  for (int round = 0; round < 20; ++round) {
    const auto save = [&](const char* who) {
      return put(server, "may.run.json", version,
                 Json{{"name", who + std::to_string(round)}}.dump());
    };
    auto a = std::async(std::launch::async, save, "a"),
         b = std::async(std::launch::async, save, "b");
    const Response one = a.get(), other = b.get();
    CHECK(std::min(one.status, other.status) == 200);
    CHECK(std::max(one.status, other.status) == 409);
    version = Json::parse((one.status == 200 ? one : other).body)["version"];
  }
}

TEST_CASE("a shipped run saved under a name of her own plans the same", "[web][files]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  const std::string spring = "examples/spring_cups.run.json";
  const std::string before = file_text(root + "/" + spring);
  const Response saved = server.ask("PUT", "/api/file",
                                    Json{{"file", "spring_cups.run.json"},
                                         {"version", nullptr},
                                         {"text", before},
                                         {"from", spring}}
                                        .dump());
  REQUIRE(saved.status == 200);
  CHECK(file_text(root + "/" + spring) == before);
  CHECK(file_text(folder.path() / "spring_cups.run.json") ==
        Json::parse(saved.body)["text"].get<std::string>());
  Json shipped = Json::parse(server.ask("POST", "/api/plan", Json{{"file", spring}}.dump()).body);
  Json own =
      Json::parse(server.ask("POST", "/api/plan", R"({"file":"spring_cups.run.json"})").body);
  CHECK(own.erase("source") == 1);
  shipped.erase("source");
  CHECK(own == shipped);
}

TEST_CASE("the page hears of a change underneath", "[web][files]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  const std::string version =
      Json::parse(put(server, "may.run.json", nullptr, "{}").body)["version"];
  const std::string other =
      Json::parse(put(server, "other.run.json", nullptr, R"({"sell":1})").body)["version"];
  const std::string asks = "/api/changed?file%3Aother.run.json=" + other +
                           "&file:may.run.json=" + version + "&file:not_there.json=";
  const Json same = Json::parse(server.ask("GET", asks + "&wait=0").body);
  CHECK(same["changed"].empty());
  CHECK(same["unreadable"].empty());

  auto waiting = std::async(std::launch::async, [&] { return server.ask("GET", asks); });
  CHECK(waiting.wait_for(500ms) == std::future_status::timeout);
  // As an editor saves: whole or not at all.
  std::filesystem::rename(folder.write("may.new", R"({"name":"from an editor"})"),
                          folder.path() / "may.run.json");
  REQUIRE(waiting.wait_for(3s) == std::future_status::ready);
  const std::string now = desk::version_of(R"({"name":"from an editor"})");
  CHECK(Json::parse(waiting.get().body)["changed"] == Json{{"may.run.json", now}});

  folder.write("not_there.json", "{}");
  std::filesystem::remove(folder.path() / "may.run.json");
  CHECK(Json::parse(server.ask("GET", asks).body)["changed"] ==
        Json{{"may.run.json", nullptr}, {"not_there.json", desk::version_of("{}")}});
  CHECK(server.ask("GET", asks + "&wait=soon").status == 422);
  CHECK(Json::parse(server.ask("GET", "/api/changed?file:../x.json=").body)["unreadable"] ==
        Json{"../x.json"});
}

TEST_CASE("a tab that asks anew leaves no request behind it", "[web][files]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  const auto ask = [&](const std::string& tab) {
    return std::async(std::launch::async, [&server, tab] {
      return server.ask("GET", "/api/changed?file:none.json=&tab=" + tab);
    });
  };
  auto first = ask("a"), of_another = ask("b");
  CHECK(first.wait_for(500ms) == std::future_status::timeout);
  auto second = ask("a");
  REQUIRE(first.wait_for(3s) == std::future_status::ready);
  CHECK(Json::parse(first.get().body)["changed"].empty());
  CHECK(second.wait_for(500ms) == std::future_status::timeout);
  CHECK(of_another.wait_for(0s) == std::future_status::timeout);
  folder.write("none.json", "{}");
  CHECK(Json::parse(second.get().body)["changed"].size() == 1);
  CHECK(Json::parse(of_another.get().body)["changed"].size() == 1);
}

TEST_CASE("who waits for a change is answered when the server stops", "[web][files]") {
  const ScratchFolder folder;
  auto server = std::make_unique<RunningServer>(settings_in(folder.path().string()));
  const std::string version =
      Json::parse(put(*server, "may.run.json", nullptr, "{}").body)["version"];
  Client client(server->port());
  client.send(server->head("GET", "/api/changed?file:may.run.json=" + version) + "\r\n");
  std::this_thread::sleep_for(100ms);
  const auto start = std::chrono::steady_clock::now();
  server.reset();
  CHECK(std::chrono::steady_clock::now() - start < 2500ms);
  CHECK(client.receive().status == 200);
}

TEST_CASE("contents that differ have different versions", "[web][files]") {
  CHECK(desk::version_of("") ==
        "cbf29ce484222325-0");  // FNV-1a's offset basis (draft-eastlake-fnv)
  CHECK(desk::version_of("a") == "af63dc4c8601ec8c-1");  // its published test vector
  CHECK(desk::version_of("{\"sell\": 46}") != desk::version_of("{\"sell\": 64}"));
}
