#include "web/server.h"

#include "web/answers.h"
#include "web/desk.h"
#include "web/foreman.h"
#include "web/page_assets.h"
#include "web/papers.h"
#include "web/request_head.h"
#include "web/secret.h"
#include "web/workers.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <charconv>
#include <filesystem>
#include <utility>

namespace brimwright::web {

using Json = nlohmann::ordered_json;
using Clock = std::chrono::steady_clock;
namespace fs = std::filesystem;

namespace {

constexpr std::string_view api = "/api/", changed_path = "/api/changed", mesh_path = "/api/mesh";
constexpr std::uint64_t longest_mesh = std::uint64_t{200} << 20;

/// A file of this folder that is looked at until it changes or the time is up.
struct Watch {
  std::string file, version;
  Clock::time_point end;
  HttpListener::Answer answer;
};

const PageAsset* asset(std::string_view path) {
  for (const PageAsset& each : page_assets())
    if (each.path == path) return &each;
  return nullptr;
}

HttpAnswer answer_with(const PageAsset& asset) {
  return {.type = std::string(asset.type),
          .body = std::string(asset.gzipped),
          .more = {{"Content-Encoding", "gzip"}}};
}

HttpAnswer not_for_this_method(const std::string& path) {
  return refusal(405, "", path + " is not asked for in this way",
                 "use the page that brimwright serves");
}

std::string folder_of(const ServerSettings& settings) {
  if (!settings.run) return settings.folder;
  std::error_code none;
  if (!fs::is_regular_file(*settings.run, none))
    throw UserError({*settings.run, ""}, "is not there", "check the name of the run file");
  const fs::path parent = fs::path(*settings.run).parent_path();
  return parent.empty() ? "." : parent.string();
}

std::optional<std::string> name_in_its_folder(const std::optional<std::string>& run) {
  if (!run) return std::nullopt;
  return fs::path(*run).filename().string();
}

/// The same at every start in a folder, so that a page left open finds its program again, and what
/// a browser keeps for an address (what was typed last, say) is found after a restart.
std::uint16_t own_port(const std::string& folder) {
  constexpr int first = 49152, many = 16384;  // the dynamic ports, RFC 6335, section 6
  const std::string name = version_of(folder);
  int number = 0;
  for (const char digit : name.substr(0, 6))
    number = number * 16 + (digit <= '9' ? digit - '0' : digit - 'a' + 10);
  return static_cast<std::uint16_t>(first + number % many);
}

std::chrono::seconds wait_of(const HttpHead& head) {
  constexpr int longest = 20;
  const auto at = head.query.find("wait");
  if (at == head.query.end()) return std::chrono::seconds(longest);
  int seconds = 0;
  const char* const end = at->second.data() + at->second.size();
  const auto [stop, error] = std::from_chars(at->second.data(), end, seconds);
  if (error != std::errc() || stop != end || seconds < 0)
    throw UserError({"", "wait"}, "\"" + at->second + "\" is no number of seconds",
                    "give 0 to 20, or leave it out");
  return std::chrono::seconds(std::min(seconds, longest));
}

}  // namespace

struct Server::Parts {
  explicit Parts(const ServerSettings& settings)
      : workspace(folder_of(settings), settings.library),
        listener(
            settings.port, own_port(workspace.folder()), settings.limits,
            [this](const HttpHead& head) { return judged(head); },
            [this](HttpRequest request, HttpListener::Answer answer) {
              take(std::move(request), std::move(answer));
            }),
        foreman({.folder = workspace.folder(),
                 .open = name_in_its_folder(settings.run),
                 .library = settings.library,
                 .uploads = uploads.folder(),
                 .limits = settings.worker},
                settings.program, settings.tell,
                [this](std::uint64_t request) { uploads.drop_scratch(request); }) {}

  std::string token = new_token();
  Workspace workspace;  // for names and versions: what is in the files, the worker reads
  Uploads uploads;
  Papers papers;
  std::uint64_t last_request = 0;  // of the listener's thread
  HttpListener listener;
  // Ended before all else, so that no answer comes after the listener's end; the foreman first,
  // because it hands on to these.
  Workers errands{2};
  Foreman foreman;

  std::optional<HttpAnswer> stranger(const HttpHead& head) const {
    if (!head.key || !is_same_secret(*head.key, token))
      return refusal(401, "X-Bench-Key", "the request has not this start's key",
                     "open the address that brimwright serve printed last");
    const bool is_ours = !head.origin || *head.origin == "http://" + head.host;
    const bool is_near = !head.fetch_site || *head.fetch_site == "same-origin";
    if (!is_ours || !is_near)
      return refusal(403, "Origin", "another site asks", "use the page that brimwright serves");
    return std::nullopt;
  }

  std::variant<HttpAnswer, BodyPlan> judged(const HttpHead& head) try {
    if (!head.path.starts_with(api)) {
      if (asset(head.path) == nullptr && !papers.at(head.path))
        return refusal(404, "", "there is nothing of that name", "open the address as printed");
      if (head.method != "GET") return not_for_this_method(head.path);
      return BodyPlan{};
    }
    if (auto no = stranger(head)) return std::move(*no);
    if (head.path == changed_path && head.method == "GET") return BodyPlan{};
    if (head.path == mesh_path && head.method == "POST")
      return BodyPlan{.most_bytes = longest_mesh, .file = uploads.incoming(value_of(head, "name"))};
    bool has_path = head.path == changed_path || head.path == mesh_path;
    const Desk::Route* route = has_path ? nullptr : Desk::route(head.method, head.path, has_path);
    if (route) return BodyPlan{.most_bytes = route->most_body};
    if (has_path) return not_for_this_method(head.path);
    return refusal(404, "", "there is nothing of that name", "use the page that brimwright serves");
  } catch (const UserError& error) {
    return complaint(error);
  } catch (const std::exception& error) {
    return fault(error.what());
  }

  static std::string value_of(const HttpHead& head, const std::string& name) {
    const auto at = head.query.find(name);
    return at == head.query.end() ? std::string() : at->second;
  }

  HttpAnswer paper(const std::string& path) const {
    auto found = papers.at(path);
    return found ? std::move(*found)
                 : refusal(404, "", "this paper has been put away", "make it again on the page");
  }

  void take(HttpRequest request, HttpListener::Answer answer) {
    if (const PageAsset* page = asset(request.head.path)) return answer(answer_with(*page));
    if (Papers::is_path(request.head.path)) return answer(paper(request.head.path));
    if (request.head.path == changed_path) return begin_watch(request.head, std::move(answer));
    if (request.head.path == mesh_path) return answer(received(request.file));
    foreman.give(
        {.number = ++last_request,
         .method = std::move(request.head.method),
         .path = std::move(request.head.path),
         .query = std::move(request.head.query),
         .body = std::move(request.body)},
        [this, answer = std::move(answer)](DeskAnswer made) { hand_out(std::move(made), answer); });
  }

  HttpAnswer received(const std::shared_ptr<IncomingFile>& file) try {
    const std::string upload = uploads.keep(file);
    const fs::path path = file->path();
    return json_answer(
        {{"file", upload}, {"name", path.filename().string()}, {"bytes", fs::file_size(path)}});
  } catch (const std::exception& error) {
    return fault(error.what());
  }

  /// A large document comes in a file, not through the worker's socket.
  void hand_out(DeskAnswer made, const HttpListener::Answer& answer) {
    if (made.file.empty()) return answer(std::move(made.answer));
    errands.add(
        [this, made = std::move(made), answer]() mutable { answer(read_back(std::move(made))); });
  }

  HttpAnswer read_back(DeskAnswer made) try {
    made.answer.body = uploads.take_scratch(made.file);
    if (made.paper.empty()) return std::move(made.answer);
    return json_answer({{"address", papers.lay_out(std::move(made.answer), made.paper)}});
  } catch (const std::exception& error) {
    return fault(error.what());
  }

  void begin_watch(const HttpHead& head, HttpListener::Answer answer) try {
    auto watch = std::make_shared<Watch>(Watch{.file = value_of(head, "file"),
                                               .version = value_of(head, "version"),
                                               .end = Clock::now() + wait_of(head),
                                               .answer = std::move(answer)});
    look(watch);
  } catch (const UserError& error) {
    answer(complaint(error));
  }

  /// A file is read whole to look at it, which is far less than planning it.
  void look(const std::shared_ptr<Watch>& watch) {
    errands.add([this, watch] {
      try {
        const auto version = workspace.version(watch->file);
        const bool has_changed = version.value_or("") != watch->version;
        if (!has_changed && Clock::now() < watch->end && !listener.is_stopping())
          return listener.later(std::chrono::milliseconds(300), [this, watch] { look(watch); });
        Json json = {{"file", watch->file}, {"changed", has_changed}, {"version", nullptr}};
        if (version) json["version"] = *version;
        watch->answer(json_answer(json));
      } catch (const UserError& error) {
        watch->answer(complaint(error));
      } catch (const std::exception& error) {
        watch->answer(fault(error.what()));
      }
    });
  }
};

Server::Server(const ServerSettings& settings) : parts_(std::make_unique<Parts>(settings)) {}

Server::~Server() = default;

std::uint16_t Server::port() const { return parts_->listener.port(); }

const std::string& Server::token() const { return parts_->token; }

std::string Server::address() const {
  return "http://127.0.0.1:" + std::to_string(port()) + "/#" + token();
}

void Server::run() { parts_->listener.run(); }

void Server::stop() { parts_->listener.stop(); }

void Server::stop_at_signals() { parts_->listener.stop_at_signals(); }

void Server::clear_up() {
  parts_->foreman.stop();  // it may be writing there
  parts_->uploads.remove_all();
}

}  // namespace brimwright::web
