// Requests that no page of ours sends. Each must be refused, and the server must answer the next.

#include "client.h"
#include "scratch_folder.h"

#include <catch2/catch.hpp>

#include <filesystem>
#include <memory>
#include <vector>

using namespace brimwright;
using namespace brimwright::web;
using namespace brimwright::web::test;
using namespace std::chrono_literals;
using Catch::Matchers::Contains;

namespace {

using Texts = std::vector<std::string>;

const std::string plan = R"({"file":"examples/plain_bars.run.json"})";

bool is_alive(RunningServer& server) { return server.ask("POST", "/api/plan", plan).status == 200; }

std::string without(std::string head, const std::string& field) {
  const std::size_t at = head.find(field + ":");
  return head.erase(at, head.find("\r\n", at) + 2 - at);
}

Response raw(RunningServer& server, const std::string& bytes) {
  Client client(server.port());
  client.send(bytes);
  return client.receive();
}

}  // namespace

TEST_CASE("another Host, Origin or key is refused before anything is planned", "[web][hostile]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  const std::string head = server.head("POST", "/api/plan");
  const std::string body = "Content-Length: " + std::to_string(plan.size()) + "\r\n\r\n" + plan;
  const std::string port = std::to_string(server.port());
  REQUIRE(raw(server, head + body).status ==
          200);  // so that what follows is refused for its change

  const auto with_host = [&](const std::string& host) {
    return raw(server, without(head, "Host") + "Host: " + host + "\r\n" + body).status;
  };
  CHECK(with_host("localhost:" + port) == 200);
  for (const std::string& host :
       Texts{"evil.example:" + port, std::string("127.0.0.1"), "127.0.0.1:1", "127.0.0.1.:" + port,
             "127.0.0.1.evil.example:" + port, "LOCALHOST:" + port, "user@127.0.0.1:" + port,
             "[::1]:" + port, "0.0.0.0:" + port, std::string()})
    CHECK(with_host(host) == 421);
  CHECK(raw(server, without(head, "Host") + body).status == 421);
  CHECK(raw(server, head + "Host: evil.example\r\n" + body).status == 421);

  const auto with = [&](const std::string& field) {
    return raw(server, head + field + "\r\n" + body).status;
  };
  CHECK(with("Origin: http://127.0.0.1:" + port) == 200);
  for (const std::string& origin :
       Texts{std::string("https://evil.example"), "http://localhost:" + port,
             "https://127.0.0.1:" + port, std::string("http://127.0.0.1"), std::string("null"),
             std::string("")})
    CHECK(with("Origin: " + origin) == 403);
  CHECK(with("Sec-Fetch-Site: same-origin") == 200);
  CHECK(with("Sec-Fetch-Site: cross-site") == 403);

  CHECK(raw(server, without(head, "X-Bench-Key") + body).status == 401);
  const std::string token = (*server).token();
  for (const std::string& key :
       Texts{std::string(), token.substr(1), token + "0", std::string(48, '0')})
    CHECK(
        raw(server, without(head, "X-Bench-Key") + "X-Bench-Key: " + key + "\r\n" + body).status ==
        401);
  CHECK(with("X-Bench-Key: " + token) == 400);  // twice
  CHECK(is_alive(server));
}

TEST_CASE("a start's key is long and new each time", "[web][hostile]") {
  const ScratchFolder folder;
  Server first(settings_in(folder.path().string())), second(settings_in(folder.path().string()));
  CHECK(first.token().size() == 48);  // 192 bits
  CHECK(first.token() != second.token());
  CHECK(first.port() != second.port());
  CHECK(first.address() ==
        "http://127.0.0.1:" + std::to_string(first.port()) + "/#" + first.token());
}

TEST_CASE("lengths that lie are refused, unread", "[web][hostile]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  const std::string head = server.head("POST", "/api/plan");
  const std::string size = std::to_string(plan.size());
  const auto status = [&](const std::string& fields, const std::string& body = plan) {
    return raw(server, head + fields + "\r\n\r\n" + body).status;
  };
  REQUIRE(status("Content-Length: " + size) == 200);
  CHECK(status("Content-Length: -1") == 400);
  CHECK(status("Content-Length: +" + size) == 400);
  CHECK(status("Content-Length: 0x20") == 400);
  CHECK(status("Content-Length: 99999999999999999999999") == 400);
  CHECK(status("Content-Length: " + size + "\r\nContent-Length: " + size) == 400);
  CHECK(status("Content-Length: " + size + ", " + size) == 400);
  CHECK(status("Content-Length: 1\r\nContent-Length: " + size) == 400);
  // Two ways to tell the length: RFC 9112, 6.3, calls it a possible smuggling.
  CHECK(status("Content-Length: " + size + "\r\nTransfer-Encoding: chunked") == 400);
  CHECK(status("Transfer-Encoding: chunked\r\nContent-Length: " + size) == 400);
  CHECK(status("Transfer-Encoding: gzip, chunked") == 400);
  CHECK(status("Transfer-Encoding: identity") == 400);
  CHECK(status("Transfer-Encoding: chunked\r\nTransfer-Encoding: chunked") == 400);
  CHECK(status("Content-Length: " + std::to_string((4 << 20) + 1), "") == 413);
  CHECK(status("Content-Length: 18446744073709551615", "") == 413);
  CHECK(status("Content-Length: 3") == 422);  // cut short: no JSON; the rest is no request
  CHECK(is_alive(server));
}

TEST_CASE("a chunked body is read, and cut off when it grows too long", "[web][hostile]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  const std::string head = server.head("POST", "/api/plan") + "Transfer-Encoding: chunked\r\n\r\n";
  const auto chunk = [](const std::string& bytes) {
    char size[20];
    std::snprintf(size, sizeof size, "%zx", bytes.size());
    return size + ("\r\n" + bytes + "\r\n");
  };
  CHECK(raw(server, head + chunk(plan.substr(0, 9)) + chunk(plan.substr(9)) + "0\r\n\r\n").status ==
        200);
  CHECK(raw(server, head + "zz\r\n").status == 400);
  Client endless(server.port());
  endless.send(head);
  const std::string mebibyte = chunk(std::string(1 << 20, ' '));
  for (int i = 0; i < 8 && endless.send(mebibyte); ++i) continue;
  CHECK(endless.receive().status == 413);
  CHECK(is_alive(server));
}

TEST_CASE("who sends slowly is cut off, and holds nobody up", "[web][hostile]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));  // half a second for a head or a pause
  Client silent(server.port()), half_head(server.port()), half_body(server.port());
  half_head.send("POST /api/plan HTTP/1.1\r\nHo");
  half_body.send(server.head("POST", "/api/plan") + "Content-Length: 1000\r\n\r\n{");
  CHECK(is_alive(server));
  CHECK(silent.is_closed_within(2s));
  CHECK(half_head.is_closed_within(2s));
  CHECK(half_body.is_closed_within(2s));

  Client drip(server.port());  // never a long pause, but two seconds are enough for a whole body
  drip.send(server.head("POST", "/api/plan") + "Content-Length: 1000\r\n\r\n");
  const auto start = std::chrono::steady_clock::now();
  while (!drip.is_closed_within(100ms) && std::chrono::steady_clock::now() - start < 10s)
    drip.send(" ");
  CHECK(std::chrono::steady_clock::now() - start < 5s);
  CHECK(is_alive(server));
}

TEST_CASE("a huge head is refused before it has all come", "[web][hostile]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  CHECK(raw(server,
            server.head("GET", "/api/files") + "X-Long: " + std::string(17 << 10, 'a') + "\r\n\r\n")
            .status == 431);
  CHECK(raw(server, "GET /" + std::string(40 << 10, 'a') + " HTTP/1.1\r\n\r\n").status == 431);
  std::string many = server.head("GET", "/api/files");
  for (int i = 0; i < 2000; ++i) many += "X-" + std::to_string(i) + ": 1\r\n";
  CHECK(raw(server, many + "\r\n").status == 431);
  CHECK(is_alive(server));
}

TEST_CASE("what is not HTTP is refused", "[web][hostile]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  const std::string host = "Host: " + server.host() + "\r\n\r\n";
  for (const std::string& line :
       Texts{"\x16\x03\x01\x02\r\n\r\n", "GET\r\n\r\n" + host, "GET  /  HTTP/1.1\r\n" + host,
             "GET / HTTP/1.1\r\nHost : " + server.host() + "\r\n\r\n",
             "GET / HTTP/1.1\r\nA b: c\r\n" + host, "GET / HTTP/9.9\r\n" + host,
             "GET / HTTP/1.1\r\nX: a\nHost: x\r\n" + host,
             "GET http://127.0.0.1/ HTTP/1.1\r\n" + host, "GET * HTTP/1.1\r\n" + host,
             "CONNECT example.org:443 HTTP/1.1\r\n" + host})
    CHECK(raw(server, line).status == 400);
  CHECK(raw(server, "GET / HTTP/1.1\r\nExpect: the best\r\n" + host).status == 417);
  CHECK(raw(server, "POST / HTTP/1.1\r\n" + host).status == 405);
  CHECK(raw(server, server.head("DELETE", "/api/file?file=a.json") + "\r\n").status == 405);
  CHECK(raw(server, server.head("GET", "/api/plan") + "\r\n").status == 405);
  CHECK(raw(server, server.head("GET", "/api/files") + "Content-Length: 5\r\n\r\nabcde").status ==
        413);
  CHECK(is_alive(server));
}

TEST_CASE("no name from the page leads out of the folders that may be read", "[web][hostile]") {
  const ScratchFolder outside, folder;
  outside.write("secret.json", R"({"schema":"brimwright.run/2","name":"secret"})");
  folder.write("mine.run.json", "{}");
  namespace fs = std::filesystem;
  fs::create_symlink(outside.path() / "secret.json", folder.path() / "link.json");
  fs::create_directory_symlink(outside.path(), folder.path() / "linked");
  RunningServer server(settings_in(folder.path().string()));
  REQUIRE(server.ask("GET", "/api/file?file=mine.run.json").status == 200);

  const std::string up = "../" + outside.path().filename().string() + "/secret.json";
  for (const std::string& name :
       Texts{up, "%2e%2e/" + up.substr(3), "%2e%2e%2f" + up.substr(3), "moulds/../../" + up,
             outside.path().string() + "/secret.json", "/etc/passwd", "link.json",
             "linked/secret.json", "file:///etc/passwd", "....//" + up.substr(3),
             "%252e%252e/" + up.substr(3), ".", ""}) {
    CAPTURE(name);
    const Response read = server.ask("GET", "/api/file?file=" + name);
    CHECK(read.status == 422);
    CHECK_THAT(read.body, !Contains("\"secret\""));
  }
  CHECK(server.ask("GET", "/api/file?file=mine.run.json%00.txt").status == 400);
  CHECK(server.ask("GET", "/api/file?file=%").status == 400);
  CHECK(server.ask("GET", "/api/file?file=a&file=b").status == 400);
  for (const std::string& path :
       Texts{"/../secret.json", "/%2e%2e/secret.json", "/page.js/../index.html", "//etc/passwd",
             "/.git/config", "/api/../page.js"})
    CHECK(server.ask("GET", path).status == 404);

  for (const std::string& name :
       Texts{up, outside.path().string() + "/new.json", std::string("link.json"),
             std::string("linked/new.json"), std::string("../new.json"),
             std::string("a/../../new.json"), std::string(".hidden.json"),
             std::string("no such folder/new.json"), std::string("new.txt"),
             std::string("a\\u0000.json")}) {
    CAPTURE(name);
    const Response saved =
        server.ask("PUT", "/api/file", R"({"file":")" + name + R"(","version":null,"text":"{}"})");
    CHECK(saved.status == 422);
  }
  CHECK(std::distance(fs::directory_iterator(outside.path()), fs::directory_iterator()) == 1);
  for (const std::string& request :
       Texts{R"({"file":")" + up + R"("})", std::string(R"({"file":"/etc/passwd","unit":"mm"})"),
             std::string(R"({"file":"upload:1/../../x.stl","unit":"mm"})"),
             std::string(R"({"file":"mine.run.json","write":"/tmp/x.stl"})"),
             std::string(R"({"file":"moulds/plain_bar.json","picture":"x.svg"})")}) {
    CHECK(server.ask("POST", "/api/gauge", request).status == 422);
    CHECK(server.ask("POST", "/api/plan", request).status == 422);
  }
  CHECK(is_alive(server));
}

TEST_CASE("deep, broken and strange JSON is refused in words", "[web][hostile]") {
  const ScratchFolder folder;
  RunningServer server(settings_in(folder.path().string()));
  for (const std::string& body :
       Texts{std::string(1 << 20, '['), R"({"run":)" + std::string(100'000, '[') + "}",
             std::string("{"), std::string("null"), std::string("[]"), std::string(),
             std::string(R"({"file":1})"), std::string(R"({"file":"a.json","file":"b.json"})"),
             std::string(R"({"file":"a.json","run":[]})"), std::string("{\"file\":\"\xff\xfe\"}"),
             std::string(R"({"file":"examples/plain_bars.run.json","sell":1e999})"),
             std::string(R"({"file":"examples/plain_bars.run.json","sell":-3})"),
             std::string(R"({"file":"examples/plain_bars.run.json","run":{"name":1}})"),
             std::string(R"({"file":"examples/plain_bars.run.json","colour":"red"})")})
    for (const char* path : {"/api/plan", "/api/quote", "/api/days", "/api/gauge", "/api/list",
                             "/api/document", "/api/keep"}) {
      const Response refused = server.ask("POST", path, body);
      CHECK(refused.status == 422);
      CHECK_THAT(refused.body, Contains("\"complaint\"") && Contains("\"line\""));
    }
  CHECK(is_alive(server));
}

TEST_CASE("no more than 64 connections are held, who is too many is told, and room comes back",
          "[web][hostile]") {
  const ScratchFolder folder;
  ServerSettings settings = settings_in(folder.path().string());
  settings.limits.header = 2s;
  RunningServer server(settings);
  std::vector<std::unique_ptr<Client>> crowd;
  for (int i = 0; i < 64; ++i) crowd.push_back(std::make_unique<Client>(server.port()));
  {
    Client one_too_many(server.port());
    one_too_many.send(server.head("GET", "/api/files") + "\r\n");
    const Response told = one_too_many.receive();
    CHECK(told.status == 503);
    CHECK(told.fields.at("connection") == "close");
    CHECK_THAT(told.body, Contains("connections to this program are in use"));
    CHECK(one_too_many.is_closed_within(1s));
  }
  // So are many too many, but not without end: an answer, too, takes room.
  for (int i = 0; i < 200; ++i) crowd.push_back(std::make_unique<Client>(server.port()));
  int answered = 0;
  for (std::size_t i = 64; i < crowd.size(); ++i) answered += crowd[i]->receive().status == 503;
  CHECK(answered >= 64);
  CHECK(answered < 200);
  crowd.clear();
  const auto end = std::chrono::steady_clock::now() + 5s;
  int status = 0;
  while (status != 200 && std::chrono::steady_clock::now() < end)
    status = server.ask("POST", "/api/plan", plan).status;
  CHECK(status == 200);
}
