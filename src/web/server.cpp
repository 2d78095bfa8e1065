#include "web/server.h"

#include "moulds/mesh_memory.h"
#include "service/service.h"
#include "web/answers.h"
#include "web/desk.h"
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

moulds::Library with_memory(moulds::Library library) {
  if (!library.memory) library.memory = std::make_shared<moulds::MeshMemory>();
  return library;
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
      : library(with_memory(settings.library)),
        workspace(folder_of(settings), library),
        desk(library, workspace, uploads, papers, name_in_its_folder(settings.run)),
        listener(
            settings.port, own_port(workspace.folder()), settings.limits,
            [this](const HttpHead& head) { return judged(head); },
            [this](HttpRequest request, HttpListener::Answer answer) {
              take(std::move(request), std::move(answer));
            }) {
    // What is read once for all (fats, tables, the shipped meshes) is read before anybody asks, and
    // before the one thread that starts child processes can start one: a child is a copy in which
    // no other thread goes on, so nothing may be half-way through its first use then.
    slow.add([this] { service::answer({service::ListRequest{}, service::Form::json}, library); });
  }

  std::string token = new_token();
  moulds::Library library;
  Workspace workspace;
  Uploads uploads;
  Papers papers;
  Desk desk;
  HttpListener listener;
  // Ended before all else, so that no answer comes after the listener's end; the quick ones first,
  // because they hand on to the slow one.
  Workers slow{1}, quick{2};

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
    bool has_path = false;
    const Desk::Route* route = Desk::route(head.method, head.path, has_path);
    if (head.path == changed_path && head.method == "GET") return BodyPlan{};
    if (head.path == changed_path || (has_path && !route)) return not_for_this_method(head.path);
    if (!route)
      return refusal(404, "", "there is nothing of that name",
                     "use the page that brimwright serves");
    BodyPlan body{.most_bytes = route->most_body};
    if (head.path == mesh_path) body.file = uploads.incoming(value_of(head, "name"));
    return body;
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
    bool has_path = false;
    const Desk::Route* route = Desk::route(request.head.method, request.head.path, has_path);
    work(*route, std::make_shared<const HttpRequest>(std::move(request)), std::move(answer),
         route->from_the_start);
  }

  void work(const Desk::Route& route, std::shared_ptr<const HttpRequest> request,
            HttpListener::Answer answer, Patience patience) {
    Workers& workers = patience == Patience::none ? quick : slow;
    workers.add([this, &route, request = std::move(request), answer = std::move(answer),
                 patience]() mutable {
      auto found = desk.answer(route, *request, patience);
      if (found)
        answer(std::move(*found));
      else
        work(route, std::move(request), std::move(answer), Patience::long_enough);
    });
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
    quick.add([this, watch] {
      try {
        const auto version = workspace.version(watch->file);
        const bool has_changed = version.value_or("") != watch->version;
        if (!has_changed && Clock::now() < watch->end && !listener.is_stopping())
          return listener.later(std::chrono::milliseconds(300), [this, watch] { look(watch); });
        Json json = {{"file", watch->file}, {"changed", has_changed}, {"version", nullptr}};
        if (version) json["version"] = *version;
        watch->answer({.body = json.dump() + "\n"});
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

bool Server::run() { return parts_->listener.run(); }

void Server::stop() { parts_->listener.stop(); }

void Server::stop_at_signals() { parts_->listener.stop_at_signals(); }

void Server::remove_uploads() { parts_->uploads.remove_all(); }

}  // namespace brimwright::web
