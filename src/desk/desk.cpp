#include "desk/desk.h"

#include "desk/answers.h"
#include "desk/desk_parts.h"
#include "desk/request_reading.h"
#include "schemas/tidying.h"
#include "units/fields.h"
#include "units/present_moment.h"
#include "units/question.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <exception>
#include <new>
#include <utility>

namespace brimwright::desk {

using Json = nlohmann::ordered_json;

namespace {

constexpr std::uint64_t longest_json = 4u << 20;

/// A document that may be asked for, and of what.
struct Kind {
  const char *name, *ending, *type;
  std::optional<service::FileKind> of_plan = {}, of_gauge = {}, of_quote = {}, of_buy = {},
                                   of_days = {}, of_learned = {};
  bool is_sheet = false;
};

constexpr auto html_type = "text/html; charset=utf-8";
constexpr auto pdf_type = "application/pdf";
constexpr auto svg_type = "image/svg+xml";

const Kind& kind_of(const Fields& fields) {
  using enum service::FileKind;
  static const std::array<Kind, 16> kinds = {
      {{.name = "picture",
        .ending = ".svg",
        .type = svg_type,
        .of_plan = picture,
        .of_gauge = picture,
        .of_quote = picture,
        .of_days = picture,
        .of_learned = picture},
       {"piece", ".svg", svg_type, piece_picture},
       {"glb", ".glb", "model/gltf-binary", glb, glb},
       {"stl", ".stl", "model/stl", stl, stl},
       {.name = "sheet", .ending = ".html", .type = html_type, .of_plan = html, .is_sheet = true},
       {.name = "sheet-pdf", .ending = ".pdf", .type = pdf_type, .of_plan = pdf, .is_sheet = true},
       {"label", ".txt", "text/plain; charset=utf-8", label},
       {.name = "quote", .ending = ".html", .type = html_type, .of_quote = html},
       {.name = "quote-pdf", .ending = ".pdf", .type = pdf_type, .of_quote = pdf},
       {.name = "offer", .ending = ".html", .type = html_type, .of_quote = offer},
       {.name = "offer-pdf", .ending = ".pdf", .type = pdf_type, .of_quote = offer_pdf},
       {.name = "list", .ending = ".html", .type = html_type, .of_buy = html},
       {.name = "list-pdf", .ending = ".pdf", .type = pdf_type, .of_buy = pdf},
       {.name = "list-csv", .ending = ".csv", .type = "text/csv; charset=utf-8", .of_buy = csv},
       {.name = "calendar",
        .ending = ".ics",
        .type = "text/calendar; charset=utf-8",
        .of_days = calendar},
       {.name = "days-csv", .ending = ".csv", .type = "text/csv; charset=utf-8", .of_days = csv}}};
  std::vector<std::string> names;
  for (const Kind& kind : kinds) names.emplace_back(kind.name);
  const std::string name = fields.choice("kind", names);
  return *std::find_if(kinds.begin(), kinds.end(),
                       [&](const Kind& kind) { return name == kind.name; });
}

service::SheetRequest sheet_request(const service::PlanRequest& plan,
                                    const std::optional<std::string>& paper,
                                    const std::optional<std::string>& batch, bool with_days) {
  return {.file = plan.file,
          .text = plan.text,
          .sell = plan.sell,
          .batch = batch,
          .paper = paper,
          .printed_at = present_moment(),
          .with_days = with_days};
}

/// Of a purchase and of days what is wanted has another name.
std::vector<service::WantedFile>& files_of(service::BuyRequest& request) { return request.wanted; }
std::vector<service::WantedFile>& files_of(service::DaysRequest& request) { return request.wanted; }
std::vector<service::WantedFile>& files_of(service::LearnRequest& request) {
  return request.wanted;
}
std::vector<service::WantedFile>& files_of(auto& request) { return request.files; }

/// The request for the one document that `fields` ask for.
class DocumentRequest {
 public:
  DocumentRequest(const Fields& fields, const Kind& kind, const PathFor& path_for)
      : fields_(fields), kind_(kind), path_for_(path_for) {}

  service::Request request() const {
    const auto plan = fields_.optional_object("plan"), gauge = fields_.optional_object("gauge"),
               quote = fields_.optional_object("quote"), buy = fields_.optional_object("buy"),
               days = fields_.optional_object("days"), learned = fields_.optional_object("learned");
    const auto paper = kind_.is_sheet ? fields_.optional_text("paper") : std::nullopt;
    const auto batch = kind_.is_sheet ? fields_.optional_text("batch") : std::nullopt;
    const bool with_days = kind_.is_sheet && fields_.has("with-days") && fields_.truth("with-days");
    fields_.refuse_unknown();
    if (plan.has_value() + gauge.has_value() + quote.has_value() + buy.has_value() +
            days.has_value() + learned.has_value() !=
        1)
      throw UserError(fields_.place(), "asks for a document of nothing, or of two things",
                      R"(give one of "plan", "gauge", "quote", "buy", "days" and "learned")");
    if (learned)
      return of(kind_.of_learned, learn_request(*learned, path_for_), "what batches tell");
    if (gauge) return of(kind_.of_gauge, gauge_request(*gauge, path_for_), "a measured mould");
    if (days) return of(kind_.of_days, days_asked(*days), "days");
    if (buy) return of(kind_.of_buy, dated(buy_request(*buy, path_for_)), "a purchase");
    if (quote) return of(kind_.of_quote, dated(quote_request(*quote, path_for_)), "a quote");
    const auto planned = plan_request(*plan, path_for_);
    return kind_.is_sheet
               ? of(kind_.of_plan, sheet_request(planned, paper, batch, with_days), "a plan")
               : of(kind_.of_plan, planned, "a plan");
  }

 private:
  service::DaysRequest days_asked(const Fields& fields) const {
    service::DaysRequest request = days_request(fields, path_for_);
    request.today = present_moment().substr(0, 10);
    request.printed_at = present_moment_in_utc();
    return request;
  }

  template <class Asked>
  static Asked dated(Asked request) {
    request.printed_at = present_moment();
    return request;
  }

  template <class Asked>
  service::Request of(std::optional<service::FileKind> file, Asked request,
                      const char* what) const {
    if (!file)
      throw UserError(fields_.place("kind"), "cannot be made from " + std::string(what),
                      "ask for another document");
    files_of(request) = {{*file, std::string(kind_.name) + kind_.ending}};
    return {std::move(request), service::Form::json, page_terms()};
  }

  const Fields& fields_;
  const Kind& kind_;
  const PathFor& path_for_;
};

/// What the page gets of a file: of the version of its schema before today's, what `tidy` would
/// make of it, which is written with the first change. A text that is no file of this program
/// stays.
std::string in_todays_words(const std::string& text, const std::string& name) {
  try {
    return schemas::tidied(text, name).text;
  } catch (const UserError&) {
    return text;
  }
}

}  // namespace

Desk::Desk(moulds::Library library, service::MeasureMemory& memory, Workspace& workspace,
           UploadFolder uploads, std::optional<std::string> open)
    : library_(std::move(library)),
      memory_(memory),
      workspace_(workspace),
      uploads_(std::move(uploads)),
      open_(std::move(open)),
      bench_(OwnFolder(workspace.folder()), [this](const std::string& file) {
        try {
          return bench_run(file).id;
        } catch (const UserError&) {
          return std::optional<std::string>();
        }
      }) {}

const Desk::Route* Desk::route(std::string_view method, std::string_view path, bool& has_path) {
  using enum Budget;
  static constexpr auto routes = std::to_array<Route>({
      {"GET", "/api/files", 0, quick, &Desk::files},
      {"GET", "/api/file", 0, quick, &Desk::read},
      {"PUT", "/api/file", longest_json, quick, &Desk::save},
      {"POST", "/api/plan", longest_json, quick, &Desk::plan},
      {"POST", "/api/quote", longest_json, slow, &Desk::quote},
      {"POST", "/api/days", longest_json, slow, &Desk::days},
      {"POST", "/api/gauge", longest_json, quick, &Desk::gauge},
      {"POST", "/api/list", longest_json, quick, &Desk::list},
      {"POST", "/api/document", longest_json, slow, &Desk::document},
      {"POST", "/api/keep", longest_json, quick, &Desk::keep},
      {"POST", "/api/file/rename", longest_json, quick, &Desk::rename},
      {"POST", "/api/file/copy", longest_json, quick, &Desk::copy},
      {"POST", "/api/file/remove", longest_json, quick, &Desk::remove},
      {"POST", "/api/file/restore", longest_json, quick, &Desk::restore},
      {"GET", "/api/removed", 0, quick, &Desk::removed},
      {"POST", "/api/removed/forget", longest_json, quick, &Desk::forget},
      {"GET", "/api/bench", 0, quick, &Desk::bench},
      {"POST", "/api/bench/tick", longest_json, quick, &Desk::tick},
      {"POST", "/api/bench/weigh_cup", longest_json, quick, &Desk::weigh_cup},
      {"POST", "/api/bench/anew", longest_json, quick, &Desk::anew},
      {"POST", "/api/bench/finish", longest_json, quick, &Desk::finish},
      {"GET", "/api/record", 0, quick, &Desk::record},
      {"POST", "/api/record/begin", longest_json, quick, &Desk::begin_record},
      {"POST", "/api/record/note", longest_json, quick, &Desk::note},
      {"GET", "/api/stock", 0, quick, &Desk::stock},
      {"POST", "/api/stock/act", longest_json, quick, &Desk::change_stock},
      {"GET", "/api/learned", 0, quick, &Desk::learned},
      {"POST", "/api/learned/take", longest_json, quick, &Desk::take_learned},
      {"GET", "/api/trail", 0, quick, &Desk::trail},
  });
  has_path = false;
  for (const Route& route : routes) {
    if (route.path != path) continue;
    has_path = true;
    if (route.method == method) return &route;
  }
  return nullptr;
}

std::optional<DeskAnswer> Desk::answer(const Route& route, const DeskRequest& request,
                                       Budget budget) const {
  try {
    return (this->*route.act)(request, budget);
  } catch (const NeedsSlowQueue&) {
    return std::nullopt;
  } catch (const Overtaken& error) {
    return DeskAnswer{complaint(409, error.parts(), error.what())};
  } catch (const UserError& error) {
    return DeskAnswer{complaint(error)};
  } catch (const std::bad_alloc&) {
    return DeskAnswer{fault("this takes more memory than brimwright may use")};
  } catch (const std::exception& error) {
    return DeskAnswer{fault(
        std::string(
            "internal error in brimwright (your files are not at fault); please report it: ") +
        error.what())};
  }
}

std::string Desk::path_for(const std::string& name, bool may_be_new) const {
  if (UploadFolder::is_upload(name)) return uploads_.path_of(name);
  return workspace_.path_to_read(name, may_be_new);
}

service::Reply Desk::replied(const service::Request& request, Budget budget) const {
  moulds::Library library = library_;
  library.only_remembered = budget == Budget::quick;
  service::Reply reply = service::answer(request, library, {.memory = &memory_});
  if (reply.status == service::Status::not_yet) throw NeedsSlowQueue{};
  auto& parts = reply.wanting;
  for (std::string* part :
       {&parts.file, &parts.problem, &parts.remedy, &reply.complaint, &reply.document})
    *part = uploads_.without_folder(std::move(*part));
  return reply;
}

HttpAnswer Desk::served(const service::Request& request, Budget budget) const {
  service::Reply reply = replied(request, budget);
  if (reply.status != service::Status::done) return refused(reply);
  return {.body = std::move(reply.document)};
}

DeskAnswer Desk::files(const DeskRequest&, Budget) const {
  Json json = workspace_.files(open_);
  const auto [makes_pdf, imports_meshes] = service::abilities();
  json["makes_pdf"] = makes_pdf;
  json["imports_meshes"] = imports_meshes;
  return {json_answer(json)};
}

DeskAnswer Desk::read(const DeskRequest& request, Budget) const {
  const std::string name = asked(request, "file");
  const auto document = workspace_.document(name);
  return {json_answer({{"file", name},
                       {"version", document.version},
                       {"text", in_todays_words(document.text, name)},
                       {"shipped", document.is_shipped}})};
}

DeskAnswer Desk::save(const DeskRequest& request, Budget) const {
  const Fields fields = fields_of(request);
  const std::string name = fields.text("file");
  std::optional<std::string> expected;
  if (!fields.is_null("version")) expected = fields.text("version");
  const std::string text = fields.text("text");
  const auto from = fields.optional_text("from");
  const bool goes_on = fields.has("goes_on") && fields.truth("goes_on");
  fields.refuse_unknown();
  const auto saved = workspace_.save(name, expected, text, from);
  if (from && goes_on && saved.is_saved) bench_.go_on_as(bench_run(*from), bench_run(name));
  Json json = {{"file", name}, {"version", nullptr}, {"text", nullptr}};
  if (saved.present) {
    json["version"] = saved.present->version;
    json["text"] = in_todays_words(saved.present->text, name);
  }
  if (saved.is_saved) return {json_answer(json)};
  const auto conflict = refusal(409, "version", "\"" + name + "\" was changed outside this page",
                                "look at what is in it now, and save again to overwrite it");
  json["complaint"] = Json::parse(conflict.body)["complaint"];
  return {json_answer(json, 409)};
}

DeskAnswer Desk::plan(const DeskRequest& request, Budget budget) const {
  const auto path = [this](const std::string& name, bool is_new) { return path_for(name, is_new); };
  return {
      served({plan_request(fields_of(request), path), service::Form::json, page_terms()}, budget)};
}

DeskAnswer Desk::quote(const DeskRequest& request, Budget budget) const {
  const auto path = [this](const std::string& name, bool is_new) { return path_for(name, is_new); };
  service::QuoteRequest asked = quote_request(fields_of(request), path);
  asked.printed_at = present_moment();
  return {served({std::move(asked), service::Form::json, page_terms()}, budget)};
}

DeskAnswer Desk::days(const DeskRequest& request, Budget budget) const {
  const auto path = [this](const std::string& name, bool is_new) { return path_for(name, is_new); };
  service::DaysRequest asked = days_request(fields_of(request), path);
  asked.today = present_moment().substr(0, 10);
  return {served({std::move(asked), service::Form::json, page_terms()}, budget)};
}

DeskAnswer Desk::gauge(const DeskRequest& request, Budget budget) const {
  const auto path = [this](const std::string& name, bool is_new) { return path_for(name, is_new); };
  return {
      served({gauge_request(fields_of(request), path), service::Form::json, page_terms()}, budget)};
}

DeskAnswer Desk::list(const DeskRequest& request, Budget budget) const {
  return {served({list_request(fields_of(request)), service::Form::json, page_terms()}, budget)};
}

DeskAnswer Desk::document(const DeskRequest& request, Budget budget) const {
  const auto path = [this](const std::string& name, bool is_new) { return path_for(name, is_new); };
  const Fields fields = fields_of(request);
  const Kind& kind = kind_of(fields);
  const bool opens = fields.has("open") && fields.truth("open");
  service::Reply reply = replied(DocumentRequest(fields, kind, path).request(), budget);
  if (reply.status != service::Status::done) return {refused(reply)};
  auto& file = reply.files.front();
  return {.answer = {.type = kind.type, .body = std::move(file.bytes)},
          .shared_as = opens ? std::move(file.name) : std::string()};
}

DeskAnswer Desk::keep(const DeskRequest& request, Budget) const {
  const Fields fields = fields_of(request);
  const std::string path = uploads_.path_of(fields.text("upload"));
  const std::string name = fields.text("as");
  fields.refuse_unknown();
  if (workspace_.keep_mesh(name, path)) return {json_answer({{"file", name}})};
  return {refusal(409, "as", "there is another file called \"" + name + "\"", "give another name")};
}

}  // namespace brimwright::desk
