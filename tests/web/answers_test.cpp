#include "client.h"
#include "scratch_folder.h"
#include "service/service.h"
#include "units/present_moment.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <zlib.h>

#include <cstdlib>
#include <fstream>
#include <future>
#include <sstream>

using namespace brimwright;
using namespace brimwright::web;
using namespace brimwright::web::test;
using namespace std::chrono_literals;
using Catch::Matchers::Contains;
using Json = nlohmann::ordered_json;

namespace {

const std::string root = BRIMWRIGHT_SOURCE_DIR;

/// What `brimwright ... --json` prints: the command line prints the service's document as it is.
service::Reply printed(service::Request request) {
  request.form = service::Form::json;
  return service::answer(request, {root, {}});
}

service::PlanRequest plan_of(const std::string& file) {
  service::PlanRequest request;
  request.file = file;
  return request;
}

service::QuoteRequest quote_of(const std::string& file) {
  service::QuoteRequest request;
  request.file = file;
  return request;
}

service::GaugeRequest gauge_of(const std::string& file) {
  service::GaugeRequest request;
  request.file = file;
  return request;
}

std::string file_text(const std::string& path) {
  std::ostringstream text;
  text << std::ifstream(path, std::ios::binary).rdbuf();
  return text.str();
}

std::string unpacked(const std::string& gzipped) {
  z_stream stream{};
  REQUIRE(inflateInit2(&stream, 16 + 15) == Z_OK);
  std::string plain(1 << 22, '\0'), packed = gzipped;
  stream.next_in = reinterpret_cast<Bytef*>(packed.data());
  stream.avail_in = static_cast<uInt>(packed.size());
  stream.next_out = reinterpret_cast<Bytef*>(plain.data());
  stream.avail_out = static_cast<uInt>(plain.size());
  CHECK(inflate(&stream, Z_FINISH) == Z_STREAM_END);
  plain.resize(stream.total_out);
  inflateEnd(&stream);
  return plain;
}

}  // namespace

TEST_CASE("the page comes as it was bundled, under a strict policy", "[web]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  Client stranger(server.port());  // the page itself needs no key: it brings it
  stranger.send("GET / HTTP/1.1\r\nHost: " + server.host() + "\r\n\r\n");
  const Response page = stranger.receive();
  CHECK(page.status == 200);
  CHECK(page.fields.at("content-type") == "text/html; charset=utf-8");
  CHECK(page.fields.at("content-encoding") == "gzip");
  CHECK(unpacked(page.body) == file_text(root + "/src/web/page/bundle/index.html"));
  CHECK(page.fields.at("content-security-policy") ==
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; "
        "connect-src 'self'; form-action 'none'; base-uri 'none'; frame-ancestors 'none'");
  CHECK(page.fields.at("x-content-type-options") == "nosniff");
  CHECK(page.fields.at("cache-control") == "no-store");
  CHECK(page.fields.at("referrer-policy") == "no-referrer");
  CHECK(page.fields.count("access-control-allow-origin") == 0);
  const Response script = server.ask("GET", "/page.js");
  CHECK(script.fields.at("content-type") == "text/javascript; charset=utf-8");
  CHECK(unpacked(script.body) == file_text(root + "/src/web/page/bundle/page.js"));
  CHECK(server.ask("GET", "/index.htm").status == 404);
}

TEST_CASE("the page is told what the command line prints, byte for byte", "[web]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  for (const std::string run : {"spring_cups", "plain_bars", "tray_cups"}) {
    const std::string name = "examples/" + run + ".run.json";
    const Response answer = server.ask("POST", "/api/plan", Json{{"file", name}}.dump());
    CHECK(answer.status == 200);
    CHECK(answer.body == printed({plan_of(root + "/" + name)}).document);
  }
  const std::string spring = "examples/spring_cups.run.json";
  auto sixty = plan_of(root + "/" + spring);
  sixty.sell = "60";
  CHECK(server.ask("POST", "/api/plan", Json{{"file", spring}, {"sell", 60}}.dump()).body ==
        printed({sixty}).document);

  auto gauge = gauge_of(root + "/moulds/twisted_cup.json");
  gauge.depths = {"10 mm", "1 in"};
  gauge.fit_mass = "95 g";
  gauge.density = "1.01 g/ml";
  gauge.below_brim = "4 mm";
  gauge.cast_wall = gauge.cast_base = "10 mm";
  gauge.cast_hung = true;
  gauge.tilt = "12 deg";
  gauge.mark = "18 mm";
  CHECK(server
            .ask("POST", "/api/gauge",
                 R"({"file":"moulds/twisted_cup.json","depth":["10 mm","1 in"],"fit-mass":"95 g",
                     "density":"1.01 g/ml","below-brim":"4 mm","cast-wall":"10 mm",
                     "cast-base":"10 mm","cast-hung":true,"tilt":"12 deg","mark":"18 mm"})")
            .body == printed({gauge}).document);
  CHECK(server.ask("POST", "/api/list", R"({"what":"fats","name":"coconut"})").body ==
        printed({service::ListRequest{"fats", "coconut"}}).document);
  CHECK(server.ask("POST", "/api/list", "{}").body == printed({service::ListRequest{}}).document);
}

TEST_CASE("the page is told what a quote says on the command line, byte for byte", "[web]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  const std::string name = "examples/spring_cups.run.json";
  Json run = Json::parse(file_text(root + "/" + name));
  const auto asked = [&](const Json& more) {
    Json question = {{"file", name}};
    question.update(more);
    return server.ask("POST", "/api/quote", question.dump());
  };
  auto quote = quote_of(root + "/" + name);
  CHECK(asked(Json::object()).body == printed({quote}).document);
  CHECK(asked({{"run", run}}).body == printed({quote}).document);
  quote.sell = "12,24";
  quote.price = "6.50";
  const Response several = asked({{"sell", "12,24"}, {"price", "6.50"}});
  CHECK(several.status == 200);
  CHECK(several.body == printed({quote}).document);

  run["sell"] = 30;  // as it stands in no file
  CHECK(Json::parse(asked({{"run", run}}).body)["numbers"][0]["sell"] == 30);

  // A complaint names the page's own field, and the other that it may be instead.
  const Response both = asked({{"margin", "40 %"}, {"price", "6.50"}});
  CHECK(both.status == 422);
  CHECK(Json::parse(both.body)["complaint"]["field"] == "margin");
  CHECK(asked({{"sel", "12"}}).status == 422);
}

TEST_CASE("the page is told the days that the command line tells, byte for byte", "[web]") {
  const ScratchFolder folder;
  const std::string run =
      folder.write("bars.run.json", file_text(root + "/examples/plain_bars.run.json"));
  folder.write("meadow_base.formula.json", file_text(root + "/examples/meadow_base.formula.json"));
  folder.write("studio.json",
               R"({ "schema": "brimwright.studio/1", "currency": "EUR",
              "work": { "paid_an_hour": "15.00", "each_batch": "3 h" },
              "days": { "making": { "tuesday": "6 h", "friday": "6 h" } } })");
  ::setenv("SOURCE_DATE_EPOCH", "1780170360", 1);  // for the calendar's stamp
  RunningServer server(settings_in(folder.path().string()));
  service::DaysRequest days{.files = {run}, .due = "2026-12-20", .from = "2026-10-01"};
  Json asked = {{"file", "bars.run.json"}, {"due", "2026-12-20"}, {"from", "2026-10-01"}};
  const Response kept = server.ask("POST", "/api/days", asked.dump());
  CHECK(kept.status == 200);
  CHECK(kept.body == printed({days}).document);
  asked["run"] = Json::parse(file_text(run));
  CHECK(server.ask("POST", "/api/days", asked.dump()).body == kept.body);

  // The same as a table, a picture and a calendar, byte for byte.
  days.printed_at = present_moment_in_utc();
  days.wanted = {{service::FileKind::csv, "days.csv"},
                 {service::FileKind::picture, "days.svg"},
                 {service::FileKind::calendar, "days.ics"}};
  const auto files = printed({days}).files;
  REQUIRE(files.size() == 3);
  for (const auto& [kind, which, type] : {std::tuple{"days-csv", 0, "text/csv"},
                                          {"picture", 1, "image/svg+xml"},
                                          {"calendar", 2, "text/calendar"}}) {
    const Response document =
        server.ask("POST", "/api/document", Json{{"kind", kind}, {"days", asked}}.dump());
    CHECK(document.status == 200);
    CHECK_THAT(document.fields.at("content-type"), Catch::StartsWith(type));
    CHECK(document.body == files[which].bytes);
  }
  const Response sheet =
      server.ask("POST", "/api/document",
                 R"({"kind":"sheet","plan":{"file":"bars.run.json"},"with-days":true})");
  CHECK_THAT(sheet.body, Contains("<h1>Days: Plain bars</h1>") && Contains("POUR  Meadow base"));
  CHECK(server.ask("POST", "/api/document", Json{{"kind", "glb"}, {"days", asked}}.dump()).status ==
        422);

  // A complaint names the page's own field.
  asked["due"] = "3/4/2026";
  const Response refused = server.ask("POST", "/api/days", asked.dump());
  CHECK(refused.status == 422);
  CHECK(Json::parse(refused.body)["complaint"]["field"] == "due");
}

TEST_CASE("what is typed is planned as though it were in the file already", "[web]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  const std::string name = "examples/spring_cups.run.json";
  Json run = Json::parse(file_text(root + "/" + name));
  const std::string saved = server.ask("POST", "/api/plan", Json{{"file", name}}.dump()).body;
  CHECK(server.ask("POST", "/api/plan", Json{{"file", name}, {"run", run}}.dump()).body == saved);
  run["sell"] = 12;
  const Response fewer = server.ask("POST", "/api/plan", Json{{"file", name}, {"run", run}}.dump());
  CHECK(Json::parse(fewer.body)["pieces"]["sell"] == 12);

  // A mould by its dimensions, and a run, neither of them saved yet.
  const Json bar = {
      {"schema", "brimwright.mould/2"},
      {"name", "Bar"},
      {"cavities", 1},
      {"shape", {{"kind", "block"}, {"width", "50 mm"}, {"length", "80 mm"}, {"height", "25 mm"}}}};
  const Response measured =
      server.ask("POST", "/api/gauge", Json{{"file", "new bar.json"}, {"mould", bar}}.dump());
  REQUIRE(measured.status == 200);
  CHECK(Json::parse(measured.body)["pockets"][0]["brimful_ml"] == 100.0);  // 5 x 8 x 2.5 cm
  Json plain = Json::parse(file_text(root + "/examples/plain_bars.run.json"));
  plain["pour"]["formula"] = "examples/meadow_base.formula.json";
  CHECK(server.ask("POST", "/api/plan", Json{{"file", "new.run.json"}, {"run", plain}}.dump())
            .status == 200);
}

TEST_CASE("a complaint has its parts and one line of all of them", "[web]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  Json run = Json::parse(file_text(root + "/examples/plain_bars.run.json"));
  run["scales"]["large"]["step"] = "1";
  const std::string name = "examples/plain_bars.run.json";
  const Response refused =
      server.ask("POST", "/api/plan", Json{{"file", name}, {"run", run}}.dump());
  CHECK(refused.status == 422);
  const Json said = Json::parse(refused.body)["complaint"];
  CHECK(said["file"] == root + "/" + name);
  CHECK(said["field"] == "/scales/large/step");
  auto same = plan_of(root + "/" + name);
  same.text = run.dump();
  CHECK(said["line"] == printed({same}).complaint);
  CHECK_THAT(said["line"].get<std::string>(), Contains(said["problem"].get<std::string>()) &&
                                                  Contains(said["remedy"].get<std::string>()));
}

TEST_CASE("what is asked of the page is asked in its own fields, and told as values", "[web]") {
  const ScratchFolder folder, outside;
  RunningServer server(settings_in(folder.path().string()));
  const auto complaint = [&](const char* path, const Json& request) {
    const Response refused = server.ask("POST", path, request.dump());
    REQUIRE(refused.status == 422);
    CHECK_THAT(refused.body, !Contains("--"));
    return Json::parse(refused.body)["complaint"];
  };
  const std::string slab = "tests/data/meshes/slab4_body.stl";
  const Json role = complaint("/api/gauge", {{"file", slab}, {"unit", "mm"}, {"up", "-z"}});
  CHECK(role["asks"] == "role");
  CHECK(role["choices"] == Json::parse(R"([{"role":"cavity"},{"role":"body","up":"+z"}])"));
  CHECK_THAT(role["remedy"].get<std::string>(), Contains("give role \"cavity\" if it is"));

  const Json alone =
      complaint("/api/gauge", {{"file", "moulds/low_bowl.json"}, {"density", "1 g/ml"}});
  CHECK(alone["file"] == "");
  CHECK(alone["field"] == "density");
  CHECK(alone["remedy"] == "give it together with fit-mass");
  CHECK(!alone.contains("choices"));

  Json run = Json::parse(file_text(root + "/examples/plain_bars.run.json"));
  run["pour"]["mould"] = outside.write("cup.json", "{}");
  const Json library =
      complaint("/api/plan", {{"file", "examples/plain_bars.run.json"}, {"run", run}});
  CHECK(library["field"] == "/pour/mould");
  CHECK_THAT(library["remedy"].get<std::string>(), Contains("names it as a library"));
}

TEST_CASE("what a page acts upon comes as values, and not in words alone", "[web]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  const auto complaint = [&](const char* path, const Json& request) {
    const Response refused = server.ask("POST", path, request.dump());
    INFO(refused.body);
    REQUIRE(refused.status == 422);
    return Json::parse(refused.body)["complaint"];
  };
  const auto of_shape = [&](const Json& shape) {
    const Json mould = {{"schema", "brimwright.mould/2"}, {"name", "Mine"}, {"shape", shape}};
    return complaint("/api/gauge", {{"file", "mine.json"}, {"mould", mould}});
  };
  const Json far =
      of_shape({{"kind", "block"}, {"length", "9 m"}, {"width", "50 mm"}, {"height", "30 mm"}});
  CHECK(far["keep"] == Json{{"at", "/shape/confirmed"}, {"figure", "9 m"}});
  CHECK(!far.contains("lye_heavy"));
  CHECK(!far.contains("entry"));

  const auto point = [](const char* x, const char* y) { return Json{{"x", x}, {"y", y}}; };
  const Json crossed =
      of_shape({{"kind", "outline"},
                {"points", Json::array({point("0 mm", "0 mm"), point("60 mm", "0 mm"),
                                        point("60 mm", "40 mm"), point("60 mm", "40 mm")})},
                {"height", "30 mm"}});
  CHECK(crossed["field"] == "/shape/points");
  CHECK(crossed["entry"] == 2);

  Json formula = Json::parse(file_text(root + "/examples/meadow_base.formula.json"));
  formula["additives"].push_back(
      {{"name", "vinegar"},
       {"rate", "5 % of fats"},
       {"density", "1 g/ml"},
       {"goes_into", "lye"},
       {"contains_acid", {{"acid", "acetic acid (100 %)"}, {"share", "80 %"}}}});
  folder.write("strong.formula.json", formula.dump());
  Json run = Json::parse(file_text(root + "/examples/plain_bars.run.json"));
  run["pour"]["formula"] = "strong.formula.json";
  const Json heavy = complaint("/api/plan", {{"file", "new.run.json"}, {"run", run}});
  CHECK(heavy["lye_heavy"] == true);
  CHECK(!heavy.contains("keep"));
}

TEST_CASE("pictures and solids come as the command line writes them", "[web]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  auto gauge = gauge_of(root + "/moulds/twisted_cup.json");
  gauge.below_brim = "6 mm";
  gauge.files = {{service::FileKind::picture, "cup.svg"},
                 {service::FileKind::glb, "cup.glb"},
                 {service::FileKind::stl, "cup.stl"}};
  const auto files = printed({gauge}).files;
  REQUIRE(files.size() == 3);
  CHECK(files[2].name == "cup.stl");
  for (const auto& [kind, which, type] :
       {std::tuple{"picture", 0, "image/svg+xml"}, {"glb", 1, "model/gltf-binary"}}) {
    const Response document =
        server.ask("POST", "/api/document",
                   Json{{"kind", kind},
                        {"gauge", {{"file", "moulds/twisted_cup.json"}, {"below-brim", "6 mm"}}}}
                       .dump());
    CHECK(document.status == 200);
    CHECK(document.fields.at("content-type") == type);
    CHECK(document.body == files[which].bytes);
  }
  const Response stl = server.ask("POST", "/api/document",
                                  R"({"kind":"stl","gauge":{"file":"moulds/twisted_cup.json"}})");
  CHECK(stl.body == files[2].bytes);
  const Response pour =
      server.ask("POST", "/api/document",
                 R"({"kind":"picture","plan":{"file":"examples/spring_cups.run.json"}})");
  CHECK_THAT(pour.body, Contains("<svg") && Contains("Rose"));
  CHECK(server.ask("POST", "/api/document", R"({"kind":"glb","plan":{"file":"x"}})").status == 422);
  CHECK(server.ask("POST", "/api/document", R"({"kind":"picture"})").status == 422);
}

TEST_CASE("the bench sheet is the command line's, byte for byte, as HTML and as PDF", "[web]") {
  ::setenv("SOURCE_DATE_EPOCH", "1780170360", 1);  // for the foot of each page
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  const std::string file = "examples/spring_cups.run.json";
  service::SheetRequest sheet{
      .file = root + "/" + file, .sell = "12", .paper = "Letter", .printed_at = present_moment()};
  sheet.files = {{service::FileKind::html, "sheet.html"}, {service::FileKind::pdf, "sheet.pdf"}};
  const auto files = printed({sheet}).files;
  REQUIRE(files.size() == 2);
  for (const auto& [kind, which, type] :
       {std::tuple{"sheet", 0, "text/html"}, {"sheet-pdf", 1, "application/pdf"}}) {
    const Response document = server.ask(
        "POST", "/api/document",
        Json{{"kind", kind}, {"plan", {{"file", file}, {"sell", "12"}}}, {"paper", "Letter"}}
            .dump());
    CHECK(document.status == 200);
    CHECK_THAT(document.fields.at("content-type"), Catch::StartsWith(type));
    CHECK(document.body == files[which].bytes);
  }
  CHECK(server.ask("POST", "/api/document", R"({"kind":"sheet","gauge":{"file":"x"}})").status ==
        422);
}

TEST_CASE("a paper opens by its address alone, brings its styles and runs nothing", "[web]") {
  ::setenv("SOURCE_DATE_EPOCH", "1780170360", 1);  // for the foot of each page
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  const auto open = [&] {
    const Response made = server.ask(
        "POST", "/api/document",
        R"({"kind":"sheet","plan":{"file":"examples/plain_bars.run.json"},"open":true})");
    REQUIRE(made.status == 200);
    return Json::parse(made.body)["address"].get<std::string>();
  };
  const auto seen = [&](const std::string& address) {
    Client stranger(server.port());
    stranger.send("GET " + address + " HTTP/1.1\r\nHost: " + server.host() + "\r\n\r\n");
    return stranger.receive();
  };
  const std::string address = open();
  const Response paper = seen(address);
  CHECK(paper.status == 200);
  service::SheetRequest sheet;
  sheet.file = root + "/examples/plain_bars.run.json";
  sheet.printed_at = present_moment();
  CHECK(paper.body == printed({sheet}).document);
  CHECK(paper.fields.at("content-type") == "text/html; charset=utf-8");
  CHECK(paper.fields.at("content-security-policy") ==
        "default-src 'none'; style-src 'unsafe-inline'; img-src data:; form-action 'none'; "
        "base-uri 'none'; frame-ancestors 'none'");
  CHECK(paper.fields.at("cache-control") == "no-store");

  std::string guessed = address;
  guessed[10] = guessed[10] == '0' ? '1' : '0';
  CHECK(seen(guessed).status == 404);
  CHECK(seen("/paper/").status == 404);
  CHECK(server.ask("POST", address, "").status == 405);
  for (int i = 0; i < 7; ++i) open();
  CHECK(seen(address).status == 200);
  open();
  CHECK(seen(address).status == 404);
}

TEST_CASE("the label's draft is what the plan prints of it; without a label there is none",
          "[web]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  const auto draft = [&](const std::string& run) {
    return server.ask(
        "POST", "/api/document",
        Json{{"kind", "label"}, {"plan", {{"file", "examples/" + run + ".run.json"}}}}.dump());
  };
  const Response label = draft("spring_cups");
  CHECK(label.status == 200);
  CHECK(label.fields.at("content-type") == "text/plain; charset=utf-8");
  const std::string plan =
      service::answer({plan_of(root + "/examples/spring_cups.run.json")}, {root, {}}).document;
  const std::string heading = "Spring cups, twisted\n";
  CHECK_THAT(label.body, Catch::StartsWith(heading + "LABEL, DRAFT"));
  CHECK_THAT(plan, Contains(label.body.substr(heading.size())));
  const Response none = draft("marble_bowls");
  CHECK(none.status == 422);
  CHECK(Json::parse(none.body)["complaint"]["field"] == "/label");
}

TEST_CASE("a folder's port is the same at the next start, and another where it is taken", "[web]") {
  const ScratchFolder folder, other;
  std::uint16_t port = 0;
  {
    const RunningServer first(settings_in(folder.path().string()));
    port = first.port();
    const RunningServer second(settings_in(folder.path().string()));
    CHECK(second.port() != port);
  }
  CHECK(RunningServer(settings_in(folder.path().string())).port() == port);
  CHECK(RunningServer(settings_in(other.path().string())).port() != port);
}

TEST_CASE("a connection answers several requests, in their order, as each asks for", "[web]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  Client client(server.port());
  const auto plan = [&](int sell) {
    const std::string body = Json{{"file", "examples/plain_bars.run.json"}, {"sell", sell}}.dump();
    return server.head("POST", "/api/plan") + "Content-Length: " + std::to_string(body.size()) +
           "\r\n\r\n" + body;
  };
  client.send(plan(5) + plan(6) + "GET / HTTP/1.1\r\nHost: " + server.host() + "\r\n\r\n" +
              plan(7));
  CHECK(Json::parse(client.receive().body)["pieces"]["sell"] == 5);
  CHECK(Json::parse(client.receive().body)["pieces"]["sell"] == 6);
  CHECK(client.receive().fields.at("content-type") == "text/html; charset=utf-8");
  CHECK(Json::parse(client.receive().body)["pieces"]["sell"] == 7);
  CHECK(client.is_closed_within(3s));  // idle

  Client old(server.port());
  old.send("GET / HTTP/1.0\r\nHost: " + server.host() + "\r\n\r\n");
  CHECK(old.receive().status == 200);
  CHECK(old.is_closed_within(1s));
  Client nameless(server.port());
  nameless.send("GET / HTTP/1.0\r\n\r\n");
  CHECK(nameless.receive().status == 421);

  Client polite(server.port());  // asks before it sends, as curl does with long bodies
  polite.send(server.head("POST", "/api/list") +
              "Expect: 100-continue\r\nContent-Length: 2\r\n\r\n");
  CHECK(polite.receive().status == 100);
  polite.send("{}");
  CHECK(polite.receive().status == 200);
}

TEST_CASE("two tabs get the same answers at the same time", "[web]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  const std::string spring = R"({"file":"examples/spring_cups.run.json"})";
  const std::string expected = server.ask("POST", "/api/plan", spring).body;
  const auto tab = [&] {
    int same = 0;
    for (int i = 0; i < 50; ++i) same += server.ask("POST", "/api/plan", spring).body == expected;
    return same;
  };
  auto first = std::async(std::launch::async, tab), second = std::async(std::launch::async, tab);
  CHECK(first.get() == 50);
  CHECK(second.get() == 50);
}
