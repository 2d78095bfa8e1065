#include "web/desk.h"

#include "units/fields.h"
#include "web/answers.h"
#include "web/request_head.h"
#include "web/request_reading.h"

#include <nlohmann/json.hpp>

#include <array>
#include <exception>
#include <filesystem>
#include <new>
#include <utility>

namespace brimwright::web {

using Json = nlohmann::ordered_json;

namespace {

constexpr std::uint64_t longest_json = 4u << 20;

/// Not for maker's eyes: the request goes to the end of the other queue.
struct WantsPatience {};

Fields fields_of(const DeskRequest& request) { return Fields::parse(request.body, "the request"); }

std::string asked(const DeskRequest& request, const std::string& name) {
  const auto at = request.query.find(name);
  if (at == request.query.end() || at->second.empty())
    throw UserError({"", name}, "is missing in the address", "add ?" + name + "=...");
  return at->second;
}

struct Kind {
  const char *name, *ending, *type;
};
constexpr Kind kinds[] = {
    {"picture", ".svg", "image/svg+xml"},           {"piece", ".svg", "image/svg+xml"},
    {"glb", ".glb", "model/gltf-binary"},           {"stl", ".stl", "model/stl"},
    {"sheet", ".html", "text/html; charset=utf-8"}, {"sheet-pdf", ".pdf", "application/pdf"},
    {"label", ".txt", "text/plain; charset=utf-8"}};

const Kind& kind_of(const Fields& fields) {
  const std::string name =
      fields.choice("kind", {"picture", "piece", "glb", "stl", "sheet", "sheet-pdf", "label"});
  for (const Kind& kind : kinds)
    if (name == kind.name) return kind;
  throw std::logic_error("a kind of document without a row");
}

service::SheetRequest sheet_request(const service::PlanRequest& plan, const std::string& kind,
                                    const std::optional<std::string>& paper,
                                    const std::optional<std::string>& batch,
                                    const std::string& path) {
  service::SheetRequest sheet{
      .file = plan.file, .text = plan.text, .sell = plan.sell, .batch = batch, .paper = paper};
  (kind == "sheet" ? sheet.html : sheet.pdf) = path;
  return sheet;
}

/// The request for the file that a document's request is about, to be written to `path`.
service::Request file_request(const Fields& fields, const Kind& kind, const std::string& path,
                              const PathFor& path_for) {
  const std::string name = kind.name;
  const auto plan = fields.optional_object("plan");
  const auto gauge = fields.optional_object("gauge");
  const bool is_sheet = name == "sheet" || name == "sheet-pdf";
  const auto paper = is_sheet ? fields.optional_text("paper") : std::nullopt;
  const auto batch = is_sheet ? fields.optional_text("batch") : std::nullopt;
  fields.refuse_unknown();
  if (plan.has_value() == gauge.has_value())
    throw UserError(fields.place(), "asks for a document of nothing, or of two things",
                    "give either \"plan\" or \"gauge\"");
  if (plan) {
    auto request = plan_request(*plan, path_for);
    if (is_sheet) return {sheet_request(request, name, paper, batch, path), service::Form::json};
    if (name == "picture")
      request.picture = path;
    else if (name == "label")
      request.label = path;
    else
      request.piece = {path};
    return {request, service::Form::json};
  }
  if (name == "piece" || name == "label" || is_sheet)
    throw UserError(fields.place("kind"), "is not made of a gauge", "ask for a picture");
  auto request = gauge_request(*gauge, path_for);
  (name == "picture" ? request.picture : name == "glb" ? request.glb : request.write) = path;
  return {request, service::Form::json};
}

}  // namespace

Desk::Desk(const moulds::Library& library, Workspace& workspace, UploadFolder uploads,
           std::optional<std::string> open)
    : library_(library),
      workspace_(workspace),
      uploads_(std::move(uploads)),
      open_(std::move(open)) {}

const Desk::Route* Desk::route(std::string_view method, std::string_view path, bool& has_path) {
  using enum Patience;
  static constexpr std::array<Route, 8> routes = {{
      {"GET", "/api/files", 0, none, &Desk::files},
      {"GET", "/api/run", 0, none, &Desk::read},
      {"PUT", "/api/run", longest_json, none, &Desk::save},
      {"POST", "/api/plan", longest_json, none, &Desk::plan},
      {"POST", "/api/gauge", longest_json, none, &Desk::gauge},
      {"POST", "/api/list", longest_json, none, &Desk::list},
      {"POST", "/api/document", longest_json, long_enough, &Desk::document},
      {"POST", "/api/keep", longest_json, none, &Desk::keep},
  }};
  has_path = false;
  for (const Route& route : routes) {
    if (route.path != path) continue;
    has_path = true;
    if (route.method == method) return &route;
  }
  return nullptr;
}

std::optional<DeskAnswer> Desk::answer(const Route& route, const DeskRequest& request,
                                       Patience patience) const {
  try {
    return (this->*route.act)(request, patience);
  } catch (const WantsPatience&) {
    return std::nullopt;
  } catch (const UserError& error) {
    return DeskAnswer{complaint(error)};
  } catch (const std::bad_alloc&) {
    return DeskAnswer{fault("this takes more memory than brimwright may have")};
  } catch (const std::exception& error) {
    return DeskAnswer{
        fault(std::string("a fault of brimwright itself, please report it: ") + error.what())};
  }
}

std::string Desk::path_for(const std::string& name, bool may_be_new) const {
  if (UploadFolder::is_upload(name)) return uploads_.path_of(name);
  return workspace_.path_to_read(name, may_be_new);
}

HttpAnswer Desk::served(const service::Request& request, Patience patience) const {
  moulds::Library library = library_;
  library.only_remembered = patience == Patience::none;
  service::Reply reply = service::answer(request, library);
  const auto shown = [&](std::string text) { return uploads_.without_folder(std::move(text)); };
  switch (reply.status) {
    case 0:
      return {.body = shown(std::move(reply.document))};
    case 1: {
      auto& parts = reply.wanting;
      for (std::string* part : {&parts.file, &parts.problem, &parts.remedy}) *part = shown(*part);
      return complaint(422, parts, shown(reply.complaint));
    }
    case 3:
      throw WantsPatience{};
    default:
      return fault(shown(reply.complaint));
  }
}

DeskAnswer Desk::files(const DeskRequest&, Patience) const {
  return {{.body = workspace_.files_json(open_)}};
}

DeskAnswer Desk::read(const DeskRequest& request, Patience) const {
  const std::string name = asked(request, "file");
  const auto document = workspace_.document(name);
  return {json_answer({{"file", name},
                       {"version", document.version},
                       {"text", document.text},
                       {"shipped", document.is_shipped}})};
}

DeskAnswer Desk::save(const DeskRequest& request, Patience) const {
  const Fields fields = fields_of(request);
  const std::string name = fields.text("file");
  std::optional<std::string> expected;
  if (!fields.is_null("version")) expected = fields.text("version");
  const std::string text = fields.text("text");
  const auto from = fields.optional_text("from");
  fields.refuse_unknown();
  const auto saved = workspace_.save(name, expected, text, from);
  Json json = {{"file", name}, {"version", nullptr}, {"text", nullptr}};
  if (saved.present) {
    json["version"] = saved.present->version;
    json["text"] = saved.present->text;
  }
  if (saved.is_saved) return {json_answer(json)};
  const auto conflict = refusal(409, "version", "\"" + name + "\" has changed underneath",
                                "look at what is in it now, and save again over that version");
  json["complaint"] = Json::parse(conflict.body)["complaint"];
  return {json_answer(json, 409)};
}

DeskAnswer Desk::plan(const DeskRequest& request, Patience patience) const {
  const auto path = [this](const std::string& name, bool is_new) { return path_for(name, is_new); };
  return {served({plan_request(fields_of(request), path), service::Form::json}, patience)};
}

DeskAnswer Desk::gauge(const DeskRequest& request, Patience patience) const {
  const auto path = [this](const std::string& name, bool is_new) { return path_for(name, is_new); };
  return {served({gauge_request(fields_of(request), path), service::Form::json}, patience)};
}

DeskAnswer Desk::list(const DeskRequest& request, Patience patience) const {
  return {served({list_request(fields_of(request)), service::Form::json}, patience)};
}

DeskAnswer Desk::document(const DeskRequest& request, Patience patience) const {
  const auto path = [this](const std::string& name, bool is_new) { return path_for(name, is_new); };
  const Fields fields = fields_of(request);
  const Kind& kind = kind_of(fields);
  const bool opens = fields.has("open") && fields.truth("open");
  const std::string file = UploadFolder::scratch(request.number, kind.ending);
  const std::string place = uploads_.path() + "/" + file;
  HttpAnswer answer = served(file_request(fields, kind, place, path), patience);
  if (answer.status != 200) {
    std::error_code none;
    std::filesystem::remove(place, none);
    return {std::move(answer)};
  }
  const std::string paper = opens ? std::string(kind.name) + kind.ending : std::string();
  return {.answer = {.type = kind.type}, .file = file, .paper = paper};
}

DeskAnswer Desk::keep(const DeskRequest& request, Patience) const {
  const Fields fields = fields_of(request);
  const std::string path = uploads_.path_of(fields.text("upload"));
  const std::string name = fields.text("as");
  fields.refuse_unknown();
  if (workspace_.keep_mesh(name, path)) return {json_answer({{"file", name}})};
  return {refusal(409, "as", "another file is called \"" + name + "\"", "give another name")};
}

}  // namespace brimwright::web
