#include "web/server.h"

#include "desk/reception.h"
#include "desk/workspace.h"
#include "web/foreman.h"
#include "web/http_listener.h"
#include "web/page_assets.h"
#include "web/workers.h"

#include <filesystem>
#include <utility>

namespace brimwright::web {

namespace fs = std::filesystem;
using desk::Answering, desk::HttpAnswer, desk::HttpHead, desk::HttpRequest;

namespace {

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
  const std::string name = desk::version_of(folder);
  int number = 0;
  for (const char digit : name.substr(0, 6))
    number = number * 16 + (digit <= '9' ? digit - '0' : digit - 'a' + 10);
  return static_cast<std::uint16_t>(first + number % many);
}

}  // namespace

struct Server::Parts {
  explicit Parts(const ServerSettings& settings)
      : reception(folder_of(settings), settings.library, staff()),
        listener(
            {settings.port, own_port(reception.folder()), settings.port_said_at}, settings.limits,
            [this](const HttpHead& head) { return judged(head); },
            [this](HttpRequest request, Answering answer) {
              take(std::move(request), std::move(answer));
            }),
        foreman({.folder = reception.folder(),
                 .open = name_in_its_folder(settings.run),
                 .library = settings.library,
                 .uploads = reception.uploads_folder(),
                 .limits = settings.worker},
                settings.program, settings.tell) {}

  desk::Reception reception;
  HttpListener listener;
  // Ended before all else, so that no answer comes after the listener's end; the foreman first,
  // because it hands on to these.
  Workers errands{2};
  Foreman foreman;

  desk::Staff staff() {
    return {.ask = [this](auto request,
                          auto answer) { foreman.give(std::move(request), std::move(answer)); },
            .errand = [this](auto work) { errands.add(std::move(work)); },
            .later = [this](auto pause, auto what) { listener.later(pause, std::move(what)); },
            .is_closing = [this] { return listener.is_stopping(); }};
  }

  std::variant<HttpAnswer, desk::BodyPlan> judged(const HttpHead& head) {
    if (asset(head.path) == nullptr) return reception.judged(head);
    if (head.method != "GET") return desk::not_for_this_method(head.path);
    return desk::BodyPlan{};
  }

  void take(HttpRequest request, Answering answer) {
    if (const PageAsset* page = asset(request.head.path)) return answer(answer_with(*page));
    reception.take(std::move(request), std::move(answer));
  }
};

Server::Server(const ServerSettings& settings) : parts_(std::make_unique<Parts>(settings)) {}

Server::~Server() = default;

std::uint16_t Server::port() const { return parts_->listener.port(); }

const std::string& Server::token() const { return parts_->reception.key(); }

std::string Server::address() const {
  return "http://127.0.0.1:" + std::to_string(port()) + "/#" + token();
}

void Server::plan_ahead() { parts_->reception.plan_ahead(); }

void Server::run() { parts_->listener.run(); }

void Server::stop() { parts_->listener.stop(); }

void Server::stop_at_signals() { parts_->listener.stop_at_signals(); }

void Server::clear_up() {
  parts_->foreman.stop();  // it may be writing there
  parts_->reception.clear_up();
}

}  // namespace brimwright::web
