#include "service/service.h"

#include "chemistry/fat_search.h"
#include "chemistry/fats.h"
#include "moulds/mesh_memory.h"
#include "moulds/mould_file.h"
#include "planning/plan.h"
#include "planning/shared_pot.h"
#include "planning/tips.h"
#include "reports/bench_sheet.h"
#include "reports/brief.h"
#include "reports/catalogue_report.h"
#include "reports/days_report.h"
#include "reports/gauge_report.h"
#include "reports/label_report.h"
#include "reports/made_lye_report.h"
#include "reports/mould_picture.h"
#include "reports/plan_report.h"
#include "reports/plan_words.h"
#include "reports/ready_report.h"
#include "reports/sheet_html.h"
#include "reports/sheet_pdf.h"
#include "runs/run_file.h"
#include "sandbox/limited_work.h"
#include "service/begin.h"
#include "service/buying.h"
#include "service/coded_batches.h"
#include "service/day_lyes.h"
#include "service/explaining.h"
#include "service/gauge.h"
#include "service/inspect.h"
#include "service/learning.h"
#include "service/lye_gate.h"
#include "service/lye_story_reading.h"
#include "service/noting.h"
#include "service/order_planning.h"
#include "service/order_rest.h"
#include "service/ordered.h"
#include "service/piece_files.h"
#include "service/quoting.h"
#include "service/record_keeping.h"
#include "service/run_planning.h"
#include "service/scheduling.h"
#include "service/shown_batch.h"
#include "service/stocking.h"
#include "service/tidy.h"
#include "service/tracing.h"
#include "units/complaint_facts.h"
#include "units/fields.h"
#include "units/reading.h"
#include "units/shown_text.h"
#include "units/user_error.h"

#include <algorithm>
#include <cmath>
#include <exception>
#include <filesystem>
#include <new>

namespace brimwright::service {
namespace {

std::string picture_of(const planning::Run& run, const planning::Plan& plan) {
  reports::MouldPicture picture;
  picture.pour_line = plan.pour.line;
  for (const auto& layer : plan.pour.layers)
    picture.layers.push_back({layer.name, layer.from, layer.to});
  return reports::mould_picture_svg(run.pour.mould, picture);
}

/// The same gate for what the maker is told to put in, and for a lye that needs no mending.
void pass_made_lye_gate(const planning::MadeLye& made) {
  if (made.as_it_is.superfat.nominal >= Share{} && made.as_it_is.superfat.likely_low >= Share{})
    pass_lye_gate(made.formula, made.as_it_is);
  for (const auto& mend : {made.mends.to_aim, made.mends.to_zero, made.mends.missing})
    if (mend) pass_lye_gate(made.formula, mend->after);
}

/// Puts lye already weighed into `plan`; nothing where the request tells of none.
std::vector<planning::MadeLye> made_lye(planning::Plan& plan, const planning::Run& run,
                                        const planning::LyeStory& story) {
  if (story.used.empty()) return {};
  auto made = planning::tell_made_lye(plan, run, story);
  for (const auto& one : made) pass_made_lye_gate(one);
  return made;
}

/// Without a lye already weighed, another purity is what all weights are reckoned with.
void buy_for_all(planning::Run& run, const planning::LyeStory& story) {
  if (!story.used.empty()) return;
  planning::plan_with(run.pour.formula, story.purities);
  if (run.pipe) planning::plan_with(run.pipe->formula, story.purities);
}

std::string label_draft(const planning::Run& run, const planning::Plan& plan,
                        const reports::BatchCodes& codes) {
  if (!plan.label)
    throw UserError(run.place("/label"), "is missing, so there is no label to draft",
                    "give \"market\" and either what cured pieces weigh (" +
                        run.spelling.quoted("/label/weighed_pieces") +
                        ") or how far they may differ (" +
                        run.spelling.quoted("/label/weight_spread") + ", " +
                        run.spelling.quoted("/label/pour_line_off_by") + ")");
  std::string dangers;  // of a batch that no label should go onto
  for (const auto& caution : plan.cautions)
    if (caution.severity == Severity::danger) dangers += "!! " + caution.text + "\n";
  // `cat` shows it on a terminal.
  return for_terminal(dangers + run.name + "\n" + reports::label_text(plan, codes));
}

/// A label carries the code of its batch, where the records have one.
reports::BatchCodes codes_for_label(planning::Plan& plan, const planning::Run& run) {
  if (!plan.label) return {};
  const CodedBatches coded = coded_batches(run, plan);
  reports::BatchCodes codes;
  for (const auto& batch : coded.codes) codes[batch.number] = batch.code;
  plan.label->remarks.insert(plan.label->remarks.end(), coded.remarks.begin(), coded.remarks.end());
  return codes;
}

/// What is brief is text for people, and of the plan.
void refuse_brief_otherwise(const PlanRequest& request, const Request& asked) {
  if (!request.brief || (asked.form == Form::text && !request.explain)) return;
  throw UserError(asked.terms.place("brief"),
                  "does not go with " + (request.explain ? asked.terms.say({"explain"})
                                                         : std::string("JSON, which is whole")),
                  "leave one of the two out");
}

void refuse_knife_alone(const PlanRequest& request, const UserTerms& terms) {
  if (!request.cut_open || wants(request.files, FileKind::glb) ||
      wants(request.files, FileKind::stl))
    return;
  throw UserError(terms.place("cut-open"), "does nothing alone",
                  "give it together with " + terms.say({"piece", "FILE.glb"}) + " or FILE.stl");
}

std::vector<MadeFile> files_of(const PlanRequest& request, const planning::Run& run,
                               const planning::Measured& measured, const planning::Plan& plan,
                               const reports::BatchCodes& codes) {
  auto files = piece_files(request.files, run, measured, plan, request.cut_open);
  for (const auto& [kind, name] : request.files) {
    if (kind == FileKind::picture) files.push_back({name, picture_of(run, plan)});
    if (kind == FileKind::label) files.push_back({name, label_draft(run, plan, codes)});
  }
  return files;
}

/// Where the lye is mixed: nobody knows yet of which day a batch is.
void tell_lye_of_day(planning::Plan& plan, const std::optional<reports::LyeOfDay>& lye) {
  if (!lye) return;
  const bool is_own = !lye->own_because.empty();
  plan.cautions.push_back({{is_own ? Severity::note : Severity::caution, reports::words_of(*lye)},
                           planning::Topic::lye});
}

Reply planned(const PlanRequest& request, const Request& asked, const moulds::Library& library,
              const Caller& caller) {
  refuse_brief_otherwise(request, asked);
  const planning::LyeStory story = read_lye_story(request, asked.terms);
  planning::Run run =
      told_run({request.file, request.text, request.sell}, asked.terms, library, caller);
  buy_for_all(run, story);
  const planning::Measured measured = measured_run(run, caller);
  planning::Plan plan = gated_plan(run, measured);
  const reports::BatchCodes codes = codes_for_label(plan, run);
  const auto made = made_lye(plan, run, story);
  const auto lye = lye_of_day(run, plan, runs::studio_for(request.file, library));
  tell_lye_of_day(plan, lye);
  refuse_knife_alone(request, asked.terms);
  auto files = files_of(request, run, measured, plan, codes);
  const auto document = [&] {
    if (request.explain) return explained(request, asked, run, plan);
    if (asked.form == Form::json) return reports::plan_json(run, plan, made, codes, lye);
    if (request.brief)
      return reports::made_lye_text(made) + reports::lye_of_day_brief(lye) +
             reports::plan_brief(run, plan);
    return reports::made_lye_text(made) + reports::plan_text(run, plan, codes);
  };
  return {.document = document(), .files = std::move(files)};
}

std::optional<reports::Paper> paper_of(const SheetRequest& request, const UserTerms& terms) {
  if (!request.paper) return std::nullopt;
  if (*request.paper == "A4") return reports::Paper::A4;
  if (*request.paper == "Letter") return reports::Paper::Letter;
  throw UserError(terms.place("paper"), "\"" + *request.paper + "\" is not a paper size known here",
                  "give A4 or Letter");
}

std::optional<std::int64_t> batch_of(const SheetRequest& request, const UserTerms& terms,
                                     const planning::Plan& plan) {
  if (!request.batch) return std::nullopt;
  const Place where = terms.place("batch");
  const double number = read_number(*request.batch, where);
  const auto most = static_cast<double>(plan.pieces.batches);
  if (number < 1 || number > most || number != std::floor(number))
    throw UserError(where, "\"" + *request.batch + "\" is not a batch of this run",
                    plan.pieces.batches == 1
                        ? "the run is made in one batch: leave it out"
                        : "give a number from 1 to " + std::to_string(plan.pieces.batches));
  return static_cast<std::int64_t>(number);
}

/// When all of it is made. The number of pieces is the file's own.
std::optional<reports::DaysReport> days_of(const SheetRequest& request, const UserTerms& terms,
                                           const moulds::Library& library, const Caller& caller) {
  if (!request.with_days) return std::nullopt;
  if (request.sell)
    throw UserError(terms.place("sell"),
                    "does not go with the days, which are of the file's number",
                    "leave one of the two out, or change the file");
  const DaysRequest asked{
      .files = {request.file}, .text = request.text, .today = request.printed_at.substr(0, 10)};
  return days_report(asked, terms, library, caller);
}

/// Where the studio has one lye for several batches of a day, the sheet of a run says where it has
/// a lye of its own which of the two is used: by the days before it, where there are any.
void tell_shared_lye(planning::Plan& plan, const planning::Run& run, const std::string& file,
                     const std::optional<reports::DaysReport>& days,
                     const moulds::Library& library) {
  const auto lye = lye_of_day(run, plan, runs::studio_for(file, library));
  if (!lye) return;
  if (!days || !lye->own_because.empty()) return tell_lye_of_day(plan, lye);
  if (!reports::shares_lye(*days, file)) {
    plan.cautions.push_back(
        {{Severity::note,
          "The days before this sheet share no lye solution between these batches and others: "
          "each is mixed by itself, as it stands here."},
         planning::Topic::lye});
    return;
  }
  plan.cautions.push_back(
      {{Severity::caution,
        "The days before this sheet have one lye solution for several batches. A batch that is "
        "named there gets its share of that one, and what goes into it, by weight, instead of the "
        "lye solution here: one or the other, never both."},
       planning::Topic::lye});
}

reports::Sheet sheet_of_run(const SheetRequest& request, const UserTerms& terms,
                            const std::optional<reports::DaysReport>& days,
                            const moulds::Library& library, const Caller& caller) {
  const planning::Run run =
      told_run({request.file, request.text, request.sell}, terms, library, caller);
  planning::Plan plan = gated_plan(run, measured_run(run, caller));
  const CodedBatches coded = coded_batches(run, plan);
  tell_shared_lye(plan, run, request.file, days, library);
  auto sheet = reports::bench_sheet(run, plan, batch_of(request, terms, plan), request.printed_at,
                                    coded.codes);
  for (const Remark& remark : coded.remarks)
    sheet.blocks.insert(sheet.blocks.begin(), reports::SheetWarning{remark.severity, remark.text});
  return sheet;
}

/// One run after the other; those that are poured together with their base before them.
reports::Sheet sheet_of_order(const runs::Order& order, const SheetRequest& request,
                              const UserTerms& terms,
                              const std::optional<reports::DaysReport>& days,
                              const moulds::Library& given, const Caller& caller) {
  for (const auto& [member, is_said] :
       {std::pair{"sell", request.sell.has_value()}, {"batch", request.batch.has_value()}})
    if (is_said)
      throw UserError(terms.place(member), "is of a run, and this is an order",
                      "leave it out, or ask for the sheet of one of its runs");
  moulds::Library library = given;
  library.named = std::make_shared<std::vector<std::string>>(std::vector{order.file});
  const RestOfOrder rest =
      rest_of(order, 1, ready_by(order, std::nullopt, request.printed_at.substr(0, 10), library),
              library, caller);
  const OrderedRuns runs = ordered_runs(rest.order, library, caller);
  PlannedOrder planned = planned_order(runs, 1);
  for (std::size_t i = 0; i < runs.size(); ++i)
    tell_shared_lye(planned.lines[i], runs[i]->run, runs[i]->line.run, days, library);
  for (auto& one : planned.together)
    tell_shared_lye(one.together.plan, one.together.run, runs[one.lines.front()]->line.run, days,
                    library);
  const auto together = poured_together(runs, planned);
  std::vector<reports::Sheet> sheets;
  for (std::size_t i = 0; i < runs.size(); ++i) {
    if (planned.with(i) == nullptr)
      sheets.push_back(reports::bench_sheet(runs[i]->run, planned.lines[i], {}, request.printed_at,
                                            coded_batches(runs[i]->run, planned.lines[i]).codes));
    for (const auto& one : together)  // all its lines, where the first of them stands
      if (one.lines.front().number == i)
        for (auto& sheet : reports::bench_sheets(one, request.printed_at, coded_base(order, one)))
          sheets.push_back(std::move(sheet));
  }
  const std::string whom = reports::whom_and_when(order.whom_for, order.due);
  if (auto blocks = reports::ready_blocks(rest.ready); !blocks.empty()) {
    reports::Sheet made{.title = "Order", .subtitle = whom, .blocks = std::move(blocks)};
    made.printed_at = request.printed_at;
    if (!sheets.empty()) made.foot = sheets.front().foot;
    sheets.insert(sheets.begin(), std::move(made));
  }
  return reports::sheet_of_all(whom.empty() ? "Order" : "Order " + whom, std::move(sheets));
}

reports::Sheet after_its_days(const reports::DaysReport& days, reports::Sheet sheet,
                              const SheetRequest& request) {
  const std::string foot = sheet.foot;
  std::vector<reports::Sheet> sheets = {reports::days_sheet(days, request.printed_at)};
  sheets.push_back(std::move(sheet));
  reports::Sheet all = reports::sheet_of_all("Days and work", std::move(sheets));
  all.foot = foot;
  return all;
}

Reply bench_sheet_for(const SheetRequest& request, const UserTerms& terms,
                      const moulds::Library& library, const Caller& caller) {
  const auto paper = paper_of(request, terms);
  const auto order = order_in(request.file, request.text, library);
  const auto days = days_of(request, terms, library, caller);
  auto sheet = order ? sheet_of_order(*order, request, terms, days, library, caller)
                     : sheet_of_run(request, terms, days, library, caller);
  if (days) sheet = after_its_days(*days, std::move(sheet), request);
  if (request.files.empty()) return {.document = reports::sheet_html(sheet, paper)};
  Reply reply;
  for (const auto& [kind, name] : request.files) {
    auto bytes = kind == FileKind::pdf
                     ? reports::sheet_pdf(sheet, paper.value_or(reports::Paper::A4))
                     : reports::sheet_html(sheet, paper);
    reply.files.push_back({name, std::move(bytes)});
    reply.document += "Written: " + on_one_line(name) + "\n";
  }
  return reply;
}

std::vector<std::string> shipped_mould_files(const moulds::Library& library) {
  std::vector<std::string> files;
  std::error_code none;
  for (const auto& entry : std::filesystem::directory_iterator(library.shipped + "/moulds", none))
    if (entry.path().extension() == ".json") files.push_back(entry.path().string());
  std::sort(files.begin(), files.end());
  return files;
}

/// All, or the one that has the name asked for.
std::vector<chemistry::Fat> fats_asked_for(const ListRequest& request) {
  if (!request.name) return chemistry::shipped_fats();
  const auto found = chemistry::fats_named(*request.name);
  if (found.size() != 1) return {};
  return {*found.front()};
}

reports::Catalogue catalogue(const ListRequest& request, const moulds::Library& library) {
  reports::Catalogue shown;
  const std::string what = request.what.value_or("");
  if (what.empty() || what == "moulds")
    for (const auto& file : shipped_mould_files(library)) {
      const std::string id = std::filesystem::path(file).stem().string();
      if (!request.name || *request.name == id)
        shown.moulds.push_back({"moulds/" + id + ".json", moulds::read_mould(file, library)});
    }
  if (what.empty() || what == "fats") shown.fats = fats_asked_for(request);
  if (what.empty() || what == "tips")
    for (const auto& tip : planning::shipped_tips())
      if (!request.name || *request.name == tip.name) shown.tips.push_back(tip);
  return shown;
}

std::vector<std::string> names_of(const std::string& what, const moulds::Library& library) {
  std::vector<std::string> names;
  if (what == "tips") {
    for (const auto& tip : planning::shipped_tips()) names.push_back(tip.name);
    return names;
  }
  for (const auto& file : shipped_mould_files(library))
    names.push_back(std::filesystem::path(file).stem().string());
  return names;
}

/// "did you mean ...?", or nothing.
std::string meant_by(const std::string& name, const std::string& what,
                     const moulds::Library& library) {
  if (what == "fats") return chemistry::which_fat(name);
  const auto near = nearest_name(name, names_of(what, library));
  return near ? "did you mean \"" + *near + "\"?" : "";
}

[[noreturn]] void refuse_list(const std::string& what, const UserTerms& terms) {
  const auto near = nearest_name(what, {"moulds", "fats", "tips"});
  const auto list = [&](const std::string& one) { return terms.say({"list", one}); };
  throw UserError(terms.place("list"), "\"" + what + "\" is not a list",
                  near ? "did you mean \"" + *near + "\"?"
                       : "use " + list("moulds") + ", " + list("fats") + " or " + list("tips"));
}

std::string listed(const ListRequest& request, const Request& asked,
                   const moulds::Library& library) {
  const auto list = [&](const std::string& what) { return asked.terms.say({"list", what}); };
  const Place where = asked.terms.place("list");
  if (request.what && *request.what != "moulds" && *request.what != "fats" &&
      *request.what != "tips")
    refuse_list(*request.what, asked.terms);
  const auto shown = catalogue(request, library);
  if (request.name && shown.moulds.empty() && shown.fats.empty() && shown.tips.empty()) {
    const std::string meant = meant_by(*request.name, *request.what, library);
    throw UserError(where, "\"" + *request.name + "\" is not among the " + *request.what,
                    !meant.empty() ? meant : list(*request.what) + " shows all of them");
  }
  return asked.form == Form::json ? reports::catalogue_json(shown)
                                  : reports::catalogue_text(shown, request.name.has_value());
}

Reply measured(const GaugeRequest& request, const Request& asked, const moulds::Library& library,
               const Caller& caller) {
  auto [findings, files] = gauged(request, asked.terms, library, caller);
  return {.document = asked.form == Form::json ? reports::gauge_json(findings)
                                               : reports::gauge_text(findings),
          .files = std::move(files)};
}

std::string shown(const reports::InspectionFinding& finding, Form form) {
  return form == Form::json ? reports::inspection_json(finding) : reports::inspection_text(finding);
}

Reply reply_to(const Request& request, const moulds::Library& library, const Caller& caller) {
  if (const auto* gauge = std::get_if<GaugeRequest>(&request.what); gauge && gauge->inspect)
    return {.document = shown(inspected(*gauge, request.terms, library), request.form)};
  if (const auto* gauge = std::get_if<GaugeRequest>(&request.what))
    return measured(*gauge, request, library, caller);
  if (const auto* plan = std::get_if<PlanRequest>(&request.what))
    return planned(*plan, request, library, caller);
  if (const auto* sheet = std::get_if<SheetRequest>(&request.what))
    return bench_sheet_for(*sheet, request.terms, library, caller);
  if (const auto* quote = std::get_if<QuoteRequest>(&request.what))
    return quoted(*quote, request, library, caller);
  if (const auto* buy = std::get_if<BuyRequest>(&request.what))
    return bought(*buy, request, library, caller);
  if (const auto* days = std::get_if<DaysRequest>(&request.what))
    return scheduled(*days, request, library, caller);
  if (const auto* init = std::get_if<InitRequest>(&request.what))
    return begun(*init, request.terms);
  if (const auto* note = std::get_if<NoteRequest>(&request.what))
    return noted(*note, request, library, caller);
  if (const auto* records = std::get_if<RecordsRequest>(&request.what))
    return record_keeping(*records, request, caller);
  if (const auto* learn = std::get_if<LearnRequest>(&request.what))
    return learned_for(*learn, request, library, caller);
  if (const auto* stock = std::get_if<StockRequest>(&request.what))
    return stocked(*stock, request, library, caller);
  if (const auto* trail = std::get_if<TrailRequest>(&request.what))
    return traced(*trail, request, library, caller);
  if (const auto* tidy = std::get_if<TidyRequest>(&request.what))
    return tidied_up(*tidy, request.terms, library);
  return {.document = listed(std::get<ListRequest>(request.what), request, library)};
}

Reply complaint(const UserError& error) {
  return {.status = Status::wanting, .complaint = error.what(), .wanting = error.parts()};
}

Reply complaint_with_facts(const UserErrorWithFacts& error) {
  Reply reply = complaint(error);
  reply.facts = error.facts();
  return reply;
}

Reply asking(const Question& question) {
  Reply reply = complaint(question);
  reply.asks = question.in_parts().asks;
  reply.choices = question.in_parts().choices;
  return reply;
}

Reply fault(const std::string& line) { return {.status = Status::fault, .complaint = line}; }

}  // namespace

Abilities abilities() {
  return {.makes_pdf = sandbox::has_helper(sandbox::Job::draw_sheet),
          .imports_meshes = sandbox::has_helper(sandbox::Job::import_mesh)};
}

namespace {

/// What `work` gives, or what it throws in words.
template <class Work>
Reply worded(const UserTerms& terms, const Work& work) {
  try {
    return work();
  } catch (const Question& question) {
    return asking(question.in(terms));
  } catch (const UserErrorWithFacts& error) {
    return complaint_with_facts(error);
  } catch (const UserError& error) {
    return complaint(error);
  } catch (const moulds::NotYetMeasured& mesh) {
    return {.status = Status::not_yet, .complaint = mesh.what()};
  } catch (const std::bad_alloc&) {
    return fault("this takes more memory than brimwright may use");
  } catch (const std::exception& error) {
    return fault(
        std::string(
            "internal error in brimwright (your files are not at fault); please report it: ") +
        error.what());
  }
}

/// Reads each file once for one answer.
moulds::Library reading_once(moulds::Library library) {
  library.read_once = std::make_shared<ReadOnce>();
  return library;
}

}  // namespace

Reply answer(const Request& request, const moulds::Library& library, const Caller& caller) {
  return worded(request.terms, [&] { return reply_to(request, reading_once(library), caller); });
}

Reply answer(const NoteRequest& request, const ShownBatch& shown, const UserTerms& terms,
             const moulds::Library& library, const Caller& caller) {
  const Request asked{.what = request, .form = Form::json, .terms = terms};
  return worded(terms, [&] { return noted(request, asked, reading_once(library), caller, shown); });
}

}  // namespace brimwright::service
