#include "client.h"
#include "desk/uploads.h"
#include "scratch_folder.h"
#include "service/service.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <sys/stat.h>

#include <filesystem>
#include <fstream>
#include <sstream>

using namespace brimwright;
using namespace brimwright::web;
using namespace brimwright::web::test;
using namespace std::chrono_literals;
using Catch::Matchers::Contains;
using desk::UploadFolder, desk::Uploads;
using Json = nlohmann::ordered_json;

namespace {

namespace fs = std::filesystem;

const fs::path root = BRIMWRIGHT_SOURCE_DIR;

std::string file_text(const fs::path& path) {
  std::ostringstream text;
  text << std::ifstream(path, std::ios::binary).rdbuf();
  return text.str();
}

/// TMPDIR for one test, so that what is left behind can be seen.
class TemporaryPlace {
 public:
  explicit TemporaryPlace(const fs::path& folder) { ::setenv("TMPDIR", folder.c_str(), 1); }
  ~TemporaryPlace() { ::unsetenv("TMPDIR"); }
  TemporaryPlace(const TemporaryPlace&) = delete;
  TemporaryPlace& operator=(const TemporaryPlace&) = delete;
};

}  // namespace

TEST_CASE("a dropped mesh is measured as the command line measures it", "[web][upload]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  const std::string bytes = file_text(root / "meshes/six_pocket_tray.stl");
  const Json sent =
      Json::parse(server.ask("POST", "/api/mesh?name=..%2Fmy%20tray.stl", bytes).body);
  CHECK(sent["name"] == "my_tray.stl");
  CHECK(sent["bytes"] == bytes.size());

  const Response unsaid = server.ask("POST", "/api/gauge", Json{{"file", sent["file"]}}.dump());
  CHECK(unsaid.status == 422);
  CHECK(Json::parse(unsaid.body)["complaint"]["file"] == "my_tray.stl");
  const Json asked = Json::parse(unsaid.body)["complaint"];
  CHECK_THAT(asked["line"].get<std::string>(), Contains("mm") && Contains("cm") && Contains(" in"));
  CHECK_THAT(asked["line"].get<std::string>(), !Contains("--"));
  CHECK(asked["asks"] == "unit");
  REQUIRE(asked["choices"].size() == 4);
  // meshes/README.md: a slab of 180 x 120 x 30; an inch is 25.4 mm.
  for (const auto& [choice, unit, in_mm] :
       {std::tuple{0, "mm", 1.0}, {1, "cm", 10.0}, {2, "m", 1000.0}, {3, "in", 25.4}}) {
    const Json& said = asked["choices"][choice];
    CHECK(said["unit"] == unit);
    CHECK(said["size"] == Json({180.0, 120.0, 30.0}));
    for (const int i : {0, 1, 2})
      CHECK(said["size_mm"][i].get<double>() ==
            Approx(in_mm * said["size"][i].get<double>()).margin(0.01));
  }

  const Response measured =
      server.ask("POST", "/api/gauge", Json{{"file", sent["file"]}, {"unit", "mm"}}.dump());
  service::GaugeRequest same;
  same.file = (root / "meshes/six_pocket_tray.stl").string();
  same.unit = "mm";
  Json expected =
      Json::parse(service::answer({same, service::Form::json}, {root.string(), {}}).document);
  Json found = Json::parse(measured.body);
  CHECK(found["source"] == "my_tray.stl");  // nothing of the folder it lies in
  for (const char* named : {"source", "name"}) {
    found.erase(named);
    expected.erase(named);
  }
  for (Json& working : expected["how"])
    for (Json& with : working["with"])
      if (with["value"] == "mesh six_pocket_tray.stl in mm")
        with["value"] = "mesh my_tray.stl in mm";
  CHECK(found == expected);
}

TEST_CASE("a mesh that is broken, of no known kind or too large is refused in words",
          "[web][upload]") {
  const ScratchFolder folder, place;
  const TemporaryPlace temporary(place.path());
  {
    RunningServer server(settings_in(folder.path().string()));
    for (const char* name : {"", "cup", "cup.exe", ".stl", "cup.stl%0a.sh"})
      CHECK(server.ask("POST", std::string("/api/mesh?name=") + name, "x").status == 422);
    CHECK(server.ask("POST", "/api/mesh", "x").status == 422);
    const Json sent = Json::parse(server.ask("POST", "/api/mesh?name=cup.stl", "no mesh").body);
    const Response broken =
        server.ask("POST", "/api/gauge", Json{{"file", sent["file"]}, {"unit", "mm"}}.dump());
    CHECK(broken.status == 422);
    CHECK_THAT(broken.body, Contains("cup.stl: ") && !Contains(place.path().string()));
    CHECK(server.ask("POST", "/api/gauge", R"({"file":"upload:99","unit":"mm"})").status == 422);

    Client large(server.port());
    large.send(server.head("POST", "/api/mesh?name=cup.stl") +
               "Content-Length: " + std::to_string((200 << 20) + 1) + "\r\n\r\n");
    CHECK(large.receive().status == 413);

    Client gone(server.port());  // half a file is no file
    gone.send(server.head("POST", "/api/mesh?name=half.stl") + "Content-Length: 1000\r\n\r\nhalf");
    CHECK(gone.is_closed_within(2s));
    const fs::path kept = fs::directory_iterator(place.path())->path();
    struct stat facts {};
    REQUIRE(::stat(kept.c_str(), &facts) == 0);
    CHECK((facts.st_mode & 0777) == 0700);
    const auto files = [&] {
      return std::distance(fs::directory_iterator(kept), fs::directory_iterator());
    };
    const auto end = std::chrono::steady_clock::now() + 2s;  // the socket goes first, then the file
    while (files() > 1 && std::chrono::steady_clock::now() < end) std::this_thread::sleep_for(5ms);
    CHECK(files() == 1);
  }
  CHECK(fs::is_empty(place.path()));  // gone with the server
}

TEST_CASE("nobody is given half an upload", "[web][upload]") {
  Uploads uploads;
  const auto file = uploads.incoming("cup.stl");
  std::ofstream(file->path()) << "half";
  const UploadFolder seen(uploads.folder());
  for (const char* name : {"upload:1", "upload:01", "upload:", "upload:arriving-1", "upload:1/..",
                           "upload:-1", "upload:99999999999999999999999"})
    CHECK_THROWS_AS(seen.path_of(name), UserError);
  CHECK(uploads.keep(file) == "upload:1");
  CHECK(file_text(seen.path_of("upload:1")) == "half");
  CHECK_THROWS_AS(seen.path_of("upload:01"), UserError);
}

TEST_CASE("what a killed server left is removed by the next, and a running one's is not",
          "[web][upload]") {
  const ScratchFolder place;
  const TemporaryPlace temporary(place.path());
  place.write("brimwright-serve-killed/1/cup.stl", "left");
  place.write("brimwright-serve-young/1/cup.stl", "its server is about to lock it");
  place.write("brimwright-other/cup.stl", "another's");
  const Uploads running;
  place.write(fs::path(running.folder()).filename().string() + "/1/cup.stl", "in use");
  const auto long_ago = fs::file_time_type::clock::now() - 1h;
  for (const auto& folder : fs::directory_iterator(place.path()))
    if (folder.path().filename() != "brimwright-serve-young")
      fs::last_write_time(folder.path(), long_ago);
  const Uploads next;
  CHECK(!fs::exists(place.path() / "brimwright-serve-killed"));
  CHECK(fs::exists(place.path() / "brimwright-serve-young/1/cup.stl"));
  CHECK(fs::exists(place.path() / "brimwright-other/cup.stl"));
  CHECK(fs::exists(running.folder() + "/1/cup.stl"));
}

TEST_CASE("the oldest uploads go when all together are too large", "[web][upload]") {
  Uploads uploads(100);
  std::vector<std::string> ids;
  for (int i = 0; i < 3; ++i) {
    const auto file = uploads.incoming("cup.stl");
    std::ofstream(file->path()) << std::string(40, 'x');
    ids.push_back(uploads.keep(file));
  }
  const UploadFolder seen(uploads.folder());
  CHECK_THROWS_AS(seen.path_of(ids[0]), UserError);
  CHECK(fs::exists(seen.path_of(ids[1])));
  CHECK(fs::exists(seen.path_of(ids[2])));
  CHECK(std::distance(fs::directory_iterator(uploads.folder()), fs::directory_iterator()) == 2);
}

TEST_CASE("a dropped mesh is put beside the runs, over nothing", "[web][upload]") {
  const ScratchFolder folder;
  folder.write("other.stl", "another");
  RunningServer server(settings_in(folder.path().string()));
  const std::string bytes = file_text(root / "meshes/twisted_cup.stl");
  const Json sent = Json::parse(server.ask("POST", "/api/mesh?name=cup.stl", bytes).body);
  const auto keep = [&](const char* name) {
    return server.ask("POST", "/api/keep", Json{{"upload", sent["file"]}, {"as", name}}.dump())
        .status;
  };
  CHECK(keep("cup.stl") == 200);
  CHECK(file_text(folder.path() / "cup.stl") == bytes);
  CHECK(keep("cup.stl") == 200);  // the same once more
  CHECK(keep("other.stl") == 409);
  CHECK(file_text(folder.path() / "other.stl") == "another");
  for (const char* name : {"../cup.stl", "/tmp/cup.stl", "cup.json", ".cup.stl", ""})
    CHECK(keep(name) == 422);
}
