// The worker dies, hangs or eats memory: each time the request at fault is told so, and the server
// answers the next as though nothing had been.

#include "client.h"
#include "scratch_folder.h"
#include "web/frames.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <rapidcheck/catch.h>
#include <signal.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <unistd.h>

#include <atomic>
#include <filesystem>
#include <fstream>
#include <future>
#include <sstream>
#include <thread>

using namespace brimwright;
using namespace brimwright::web;
using namespace brimwright::web::test;
using namespace std::chrono_literals;
using Catch::Matchers::Contains;
using Json = nlohmann::ordered_json;

namespace {

namespace fs = std::filesystem;

const std::string plan = R"({"file":"examples/plain_bars.run.json"})";
const std::string measure = R"({"file":"upload:1","unit":"mm"})";

ServerSettings patient_settings(const ScratchFolder& folder) {
  ServerSettings settings = settings_in(folder.path().string());
  settings.limits.body = settings.limits.body_pause = 30s;
  return settings;
}

void send_large_mesh(RunningServer& server, int copies = 100) {
  REQUIRE(server.ask("POST", "/api/mesh?name=large.stl", large_mesh(copies)).status == 200);
}

pid_t only_child() {
  const auto all = children();
  REQUIRE(all.size() == 1);
  return all.front();
}

/// The clock ticks that a thread has worked: the 12th field after the name in proc(5).
long worked(const fs::path& thread) {
  std::string facts, field;
  std::getline(std::ifstream(thread / "stat"), facts);
  std::istringstream after(facts.substr(facts.rfind(')') + 1));
  for (int i = 0; i < 12; ++i) after >> field;
  return field.empty() ? 0 : std::stol(field);
}

/// The thread of a process that has worked most.
pid_t busiest_thread(pid_t process) {
  fs::path busiest;
  for (const auto& thread : fs::directory_iterator("/proc/" + std::to_string(process) + "/task"))
    if (busiest.empty() || worked(thread) > worked(busiest)) busiest = thread;
  return std::stoi(busiest.filename().string());
}

/// Until one of its threads has worked for a tenth of a second: it is in the middle of an answer.
void wait_until_busy(pid_t process) {
  constexpr long tenth_of_a_second = 10;  // clock ticks
  const auto thread_work = [&] {
    return worked("/proc/" + std::to_string(process) + "/task/" +
                  std::to_string(busiest_thread(process)));
  };
  for (int i = 0; i < 3000 && thread_work() < tenth_of_a_second; ++i)
    std::this_thread::sleep_for(10ms);
  REQUIRE(thread_work() >= tenth_of_a_second);
}

std::string line_of(const Response& refused) {
  return Json::parse(refused.body)["complaint"]["line"].get<std::string>();
}

}  // namespace

TEST_CASE("a worker killed in the middle of an answer costs that answer and nothing else",
          "[web][worker]") {
  const ScratchFolder folder;
  folder.write("may.run.json", R"({"schema":"brimwright.run/2","name":"May"})");
  ServerSettings settings = patient_settings(folder);
  settings.folder = "";
  settings.run = (folder.path() / "may.run.json").string();
  std::promise<std::string> told;
  settings.tell = [&](const std::string& line) { told.set_value(line); };
  RunningServer server(settings);
  send_large_mesh(server);
  const pid_t first = only_child();
  auto slow =
      std::async(std::launch::async, [&] { return server.ask("POST", "/api/gauge", measure); });
  wait_until_busy(first);
  REQUIRE(::kill(first, SIGKILL) == 0);
  const Response lost = slow.get();
  CHECK(lost.status == 500);
  CHECK(lost.fields.at("content-type") == "application/json");
  CHECK_THAT(line_of(lost), Contains("stopped while working") && Contains("signal 9"));
  CHECK_THAT(told.get_future().get(), Contains("POST /api/gauge") && Contains("signal 9"));
  // The same key, the same folder and run, and what was sent is still there.
  CHECK(server.ask("POST", "/api/plan", plan).status == 200);
  CHECK(Json::parse(server.ask("GET", "/api/files").body)["open"] == "may.run.json");
  CHECK(server.ask("POST", "/api/gauge", measure).status == 200);
  CHECK(only_child() != first);
}

#ifndef __SANITIZE_ADDRESS__  // which takes the signals for itself
TEST_CASE("an answer that breaks down takes no other along", "[web][worker]") {
  const ScratchFolder folder;
  RunningServer server(patient_settings(folder));
  send_large_mesh(server);
  auto slow =
      std::async(std::launch::async, [&] { return server.ask("POST", "/api/gauge", measure); });
  const pid_t worker = only_child();
  wait_until_busy(worker);
  std::atomic<bool> is_over = false;
  const auto keep_asking = [&] {
    int refused = 0;
    while (!is_over) refused += server.ask("POST", "/api/plan", plan).status != 200;
    return refused;
  };
  auto one = std::async(std::launch::async, keep_asking),
       other = std::async(std::launch::async, keep_asking);
  // As a fault of memory in that thread would end it.
  REQUIRE(::syscall(SYS_tgkill, worker, busiest_thread(worker), SIGSEGV) == 0);
  CHECK(slow.get().status == 500);
  std::this_thread::sleep_for(200ms);
  is_over = true;
  CHECK(one.get() == 0);
  CHECK(other.get() == 0);
}
#endif

TEST_CASE("an answer that takes too long is broken off, and says so", "[web][worker]") {
  const ScratchFolder folder;
  ServerSettings settings = patient_settings(folder);
  settings.worker.patient = 200ms;
  RunningServer server(settings);
  send_large_mesh(server);
  const Response late = server.ask("POST", "/api/gauge", measure);
  CHECK(late.status == 500);
  CHECK_THAT(line_of(late), Contains("took longer than 200 ms") && Contains("coarser mesh"));
  CHECK(server.ask("POST", "/api/plan", plan).status == 200);
}

TEST_CASE("a worker that hangs before it begins is replaced, and the answer comes from the next",
          "[web][worker]") {
  const ScratchFolder folder;
  ServerSettings settings = settings_in(folder.path().string());
  settings.worker.quick = 3s;
  RunningServer server(settings);
  REQUIRE(server.ask("POST", "/api/plan", plan).status == 200);
  const pid_t first = only_child();
  REQUIRE(::kill(first, SIGSTOP) == 0);
  CHECK(server.ask("POST", "/api/plan", plan).status == 200);
  CHECK(only_child() != first);
}

#ifndef __SANITIZE_ADDRESS__  // under which no limit of addresses can be set
TEST_CASE("an answer that wants more memory than it may have is refused, and the worker goes on",
          "[web][worker]") {
  const ScratchFolder folder;
  ServerSettings settings = patient_settings(folder);
  // A worker that has planned goes on in 120 MiB; a mesh of two million facets is read in 200, and
  // this one has four.
  settings.worker.memory_bytes = std::size_t{200} << 20;
  RunningServer server(settings);
  REQUIRE(server.ask("POST", "/api/plan", plan).status == 200);
  send_large_mesh(server, 2000);
  const Response refused = server.ask("POST", "/api/gauge", measure);
  CHECK(refused.status == 500);
  CHECK_THAT(line_of(refused), Contains("more memory") || Contains("stopped while working"));
  CHECK(server.ask("POST", "/api/plan", plan).status == 200);
}
#endif

TEST_CASE("a worker that dies at every start is not started in a hurry, and who asks is told",
          "[web][worker]") {
  const ScratchFolder folder;
  const fs::path program = folder.path() / "program", starts = folder.path() / "starts";
  std::ofstream(program) << "#!/bin/sh\necho >> '" << starts.string() << "'\nexit 3\n";
  ::chmod(program.c_str(), 0700);
  ServerSettings settings = settings_in(folder.path().string());
  settings.program = program.string();
  RunningServer server(settings);
  const Response refused = server.ask("POST", "/api/plan", plan);
  CHECK(refused.status == 500);
  CHECK_THAT(line_of(refused), Contains("cannot be started"));
  CHECK(server.ask("GET", "/").status == 200);
  std::this_thread::sleep_for(500ms);
  std::string lines;
  std::getline(std::ifstream(starts), lines, '\0');
  CHECK(lines.size() >= 4);
  CHECK(lines.size() <= 5);  // after 0, 0.1, 0.3, 0.7 and 1.5 s, by and by every five seconds
}

TEST_CASE("a program that is not there is told like one that cannot be started", "[web][worker]") {
  const ScratchFolder folder;
  ServerSettings settings = settings_in(folder.path().string());
  settings.program = (folder.path() / "nowhere").string();
  RunningServer server(settings);
  CHECK(server.ask("POST", "/api/plan", plan).status == 500);
}

TEST_CASE("what goes through the socket comes out as it went in, however it is cut",
          "[web][worker][law]") {
  rc::prop("frames survive the stream", [] {
    const auto parts =
        *rc::gen::container<std::vector<std::string>>(rc::gen::arbitrary<std::string>());
    const auto number = *rc::gen::arbitrary<std::uint64_t>();
    const std::string bytes =
        encoded({.kind = Frame::Kind::request, .request = number, .parts = parts}) +
        encoded({.kind = Frame::Kind::answer, .request = 7});
    const auto step = static_cast<std::size_t>(*rc::gen::inRange(1, 64));
    FrameReader reader;
    std::vector<Frame> got;
    for (std::size_t at = 0; at < bytes.size(); at += step) {
      reader.add(std::string_view(bytes).substr(at, step));
      while (auto frame = reader.next()) got.push_back(*std::move(frame));
    }
    RC_ASSERT(got.size() == 2u);
    RC_ASSERT(got[0].kind == Frame::Kind::request);
    RC_ASSERT(got[0].request == number);
    RC_ASSERT(got[0].parts == parts);
    RC_ASSERT(got[1].kind == Frame::Kind::answer);
  });
}

TEST_CASE("a frame out of form is not believed", "[web][worker]") {
  const std::string sound = encoded({.kind = Frame::Kind::begun, .request = 1, .parts = {"abc"}});
  const auto is_refused = [](const std::string& bytes) {
    FrameReader reader;
    reader.add(bytes);
    try {
      return !reader.next();
    } catch (const std::runtime_error&) {
      return true;
    }
  };
  REQUIRE(!is_refused(sound));
  for (std::size_t at = 0; at < 4; ++at)  // each other length
    for (const char byte : {'\x01', '\x7f', '\xff'}) {
      std::string bytes = sound;
      if (bytes[at] == byte) continue;
      bytes[at] = byte;
      CHECK(is_refused(bytes));
    }
  std::string kind = sound, part = sound;
  kind[4] = '\x09';
  part[13] = '\x04';  // longer than what is there
  CHECK(is_refused(kind));
  CHECK(is_refused(part));
}
