#include "service/learning.h"

#include "geometry/surface/parallel.h"
#include "learning/learned.h"
#include "records/records.h"
#include "reports/learned_report.h"
#include "reports/plan_report.h"
#include "schemas/kinds.h"
#include "service/figure_effects.h"
#include "service/figure_taking.h"
#include "service/learned_batches.h"
#include "service/run_planning.h"
#include "units/fields.h"
#include "units/shown_text.h"
#include "units/wording.h"
#include "units/written_number.h"

#include <algorithm>
#include <filesystem>
#include <future>
#include <map>
#include <mutex>
#include <utility>

namespace brimwright::service {
namespace {

using learning::FigureId;
using learning::Kind;

std::string folder_of(const std::string& file) {
  const auto folder = std::filesystem::path(file).parent_path();
  return folder.empty() ? "." : folder.string();
}

bool is_studio(const std::string& file) {
  const Fields fields = Fields::read(file);
  return fields.is_text("schema") && fields.text("schema").starts_with("brimwright.studio/");
}

/// The run as it would be planned today, and where its figures stand. Of a studio the latter alone.
struct Today {
  FigureFiles files;
  std::string name;
  std::optional<planning::Run> run = {};
  std::optional<planning::Measured> measured = {};
  std::optional<planning::Plan> plan = {};
  std::shared_ptr<const PlannedFacts> planned = {};
  std::optional<learning::BatchFacts> facts = {};
};

Today today_of(const LearnRequest& request, const UserTerms& terms, const moulds::Library& library,
               const Caller& caller) {
  if (is_studio(request.file)) return {.files = {.studio = request.file}, .name = "the studio"};
  const std::optional<std::string> none;
  Today today{.files = {}, .name = {}};
  today.run = told_run({request.file, none, none}, terms, library, caller);
  today.measured = measured_run(*today.run, caller);
  today.plan = gated_plan(*today.run, *today.measured);
  today.files = figure_files(*today.run, library);
  today.name = today.run->name;
  today.planned = planned_facts(reports::plan_json(*today.run, *today.plan));
  today.facts = facts_of_plan(*today.planned, 1);
  return today;
}

/// Whether a figure is of what the run is made with; of a studio all are.
bool is_of(const FigureId& id, const Today& today) {
  if (!today.facts) return true;
  const learning::BatchFacts& facts = *today.facts;
  if (const auto* of = std::get_if<learning::OfMould>(&id.of))
    return std::any_of(facts.base->moulds.begin(), facts.base->moulds.end(),
                       [&](const auto& mould) { return mould.mould == of->mould; });
  if (const auto* of = std::get_if<learning::OfFormula>(&id.of))
    return id.kind == Kind::whipped_density
               ? !facts.toppings.empty() && facts.toppings.front().formula == of->formula
               : facts.base->formula == of->formula;
  if (const auto* of = std::get_if<learning::OfTopping>(&id.of))
    return of->topping == facts.run && !facts.toppings.empty() &&
           facts.toppings.front().tip == of->tip;
  if (const auto* of = std::get_if<learning::OfLoss>(&id.of); of && !of->decoration.empty())
    return std::any_of(facts.decorations.begin(), facts.decorations.end(),
                       [&](const auto& one) { return one.decoration == of->decoration; });
  if (const auto* of = std::get_if<learning::OfHand>(&id.of))
    return !facts.toppings.empty() && facts.toppings.front().tip == of->tip;
  return true;
}

bool is_earlier(const FigureId& id) {
  const auto ends = [](const std::string& name) { return name.ends_with(" (earlier)"); };
  if (const auto* of = std::get_if<learning::OfMould>(&id.of)) return ends(of->mould);
  if (const auto* of = std::get_if<learning::OfFormula>(&id.of)) return ends(of->formula);
  if (const auto* of = std::get_if<learning::OfTopping>(&id.of)) return ends(of->topping);
  return false;
}

/// What the studio says of her time, which no plan keeps.
std::map<learning::TimeOf, learning::Minutes> times_of(const std::string& studio) {
  std::map<learning::TimeOf, learning::Minutes> times;
  if (studio.empty()) return times;
  const auto work = Fields::read(studio).optional_object("work");
  if (!work) return times;
  using enum learning::TimeOf;
  for (const auto time : {batch, piece_made, tray_fill, piece_packed})
    if (const std::string key = reports::figure_name({Kind::time, learning::OfTime{time}});
        work->has(key))
      times[time] = work->positive_short_time(key, "2 min");
  return times;
}

/// What the plan would use today, of what is not the same in every batch's own plan.
std::map<FigureId, learning::Value> used_today(const Today& today) {
  std::map<FigureId, learning::Value> used;
  for (const auto& [time, minutes] : times_of(today.files.studio))
    used[{Kind::time, learning::OfTime{time}}] = minutes;
  if (!today.facts) return used;
  // A batch that went as planned tells what the plan uses, whatever else it may tell.
  learning::BatchFacts facts = *today.facts;
  learning::BaseFacts& base = *facts.base;
  used[{Kind::base_density, learning::OfFormula{base.formula}}] = base.density_planned;
  const auto loss = [&](learning::LossOf of, learning::Value value) {
    used[{Kind::loss, learning::OfLoss{of, {}}}] = value;
  };
  loss(learning::LossOf::pot, base.pot_planned);
  loss(learning::LossOf::jugs, base.jugs_planned);
  loss(learning::LossOf::overpour, base.overpour_planned);
  for (const auto& mould : base.moulds)
    used[{Kind::volume_error, learning::OfMould{mould.mould}}] =
        (mould.factor_used - 1) * mould.volume_each / mould.surface;
  if (!facts.toppings.empty()) {
    const auto& topping = facts.toppings.front();
    loss(learning::LossOf::bowl_and_whisk, topping.bowl_and_whisk_planned);
    loss(learning::LossOf::bag, topping.bag_planned);
    loss(learning::LossOf::tip, topping.tip_planned);
    loss(learning::LossOf::bag_changes, topping.each_bag_change_planned);
    used[{Kind::topping_each, learning::OfTopping{topping.topping, topping.tip, topping.hand}}] =
        topping.visible_planned;
    used[{Kind::hand_correction, learning::OfHand{topping.tip, topping.hand}}] =
        learning::Factor{topping.correction_used};
  }
  for (const auto& decoration : facts.decorations) {
    const auto loss_of = [&](learning::LossOf of) {
      return FigureId{Kind::loss, learning::OfLoss{of, decoration.decoration}};
    };
    used[loss_of(learning::LossOf::melt)] = decoration.melt_loss_planned;
    used[loss_of(learning::LossOf::decoration_jug)] = decoration.left_in_jug_planned;
  }
  if (facts.cure && facts.cure->lost_planned)
    used[{Kind::cure_loss, learning::OfFormula{base.formula}}] = *facts.cure->lost_planned;
  return used;
}

/// Names that several figures of a studio have are told apart by what they are of.
void tell_names_apart(std::vector<reports::NamedFigure>& figures) {
  std::map<std::string, int> counts;
  for (const auto& named : figures) ++counts[named.name];
  for (auto& named : figures) {
    if (const auto* of = std::get_if<learning::OfLoss>(&named.figure.id.of);
        of && !of->decoration.empty())
      named.name += ":" + of->decoration;  // always: what is taken must be found by it again
    if (counts[named.name] > 1) {
      if (const auto* of = std::get_if<learning::OfMould>(&named.figure.id.of))
        named.name += ":" + of->mould;
      if (const auto* of = std::get_if<learning::OfFormula>(&named.figure.id.of))
        named.name += ":" + of->formula;
      if (const auto* of = std::get_if<learning::OfHand>(&named.figure.id.of))
        named.name += ":" + of->tip;
      if (const auto* of = std::get_if<learning::OfTopping>(&named.figure.id.of))
        named.name += ":" + of->topping;
    }
  }
}

/// The files of the run that may have been called otherwise when earlier batches were made.
std::vector<std::string> named_in(const Today& today) {
  if (!today.run) return {};
  std::vector<std::string> files = {today.run->pour.formula.file, today.run->pour.mould.file};
  if (today.run->pipe) files.push_back(today.run->pipe->formula.file);
  return files;
}

/// Of the figures that are suggested: the run is planned once more for each.
void tell_all_effects(std::vector<reports::NamedFigure>& figures, const Today& today,
                      const Caller& caller) {
  std::mutex one_at_a_time;
  Caller quiet{.memory = caller.memory};
  if (caller.progress)
    quiet.progress = [&](double part) {
      const std::scoped_lock alone(one_at_a_time);
      caller.progress(part);
    };
  geometry::in_parallel(figures.size(), [&](std::size_t i) {
    if (figures[i].figure.standing == learning::Standing::suggested)
      tell_effects(figures[i], *today.run, *today.measured, *today.plan, quiet);
  });
}

/// The records beside a file and what they hold, read by another thread while the run is planned.
class ReadingRecords {
 public:
  explicit ReadingRecords(const LearnRequest& request)
      : folder_(folder_of(request.file)),
        kept_(
            std::async(geometry::things_at_once() > 1 ? std::launch::async : std::launch::deferred,
                       [this] { return kept(); })) {}
  ReadingRecords(const ReadingRecords&) = delete;
  ReadingRecords& operator=(const ReadingRecords&) = delete;

  /// Nothing where there are no records. UserError where they cannot be read.
  std::optional<KeptBatches> found() { return kept_.get(); }

 private:
  std::optional<KeptBatches> kept() {
    records_ = records::Records::in(folder_);
    if (!records_) return std::nullopt;
    return kept_batches(*records_);
  }

  std::string folder_;
  std::optional<records::Records> records_;
  std::future<std::optional<KeptBatches>> kept_;  // whose end waits for what was begun
};

std::vector<int> years_of(const std::vector<learning::BatchFacts>& facts) {
  std::vector<int> years;
  for (const auto& batch : facts)
    if (const int year(batch.date.year()); years.empty() || years.back() < year)
      years.push_back(year);
  return years;
}

reports::LearnedReport report_of(const LearnRequest& request, const Today& today,
                                 ReadingRecords& reading, const moulds::Library& library,
                                 const Caller& caller) {
  auto kept = reading.found();
  if (!kept)
    throw UserError({request.file, ""}, "has no records beside it, so there are no batches yet",
                    "begin a batch with note, and note what happens to it");
  RenamedFiles renamed(kept->records, folder_of(request.file), named_in(today));
  const LearnedBatches batches = learned_batches(*std::move(kept), today.planned.get(), &renamed);
  learning::Learned learned = learning::learned_from(batches.facts, used_today(today));
  reports::LearnedReport report{.source = request.file,
                                .run = today.name,
                                .batches = batches.facts.size(),
                                .earlier = batches.earlier,
                                .years = years_of(batches.facts),
                                .figures = {},
                                .untold = {},
                                .contradictions = std::move(learned.contradictions)};
  for (learning::Figure& figure : learned.figures)
    if (is_of(figure.id, today) && !is_earlier(figure.id))
      report.figures.push_back({reports::figure_name(figure.id), std::move(figure)});
  for (learning::Untold& untold : learned.untold)
    if (is_of(untold.id, today) && !is_earlier(untold.id))
      report.untold.push_back(std::move(untold));
  tell_names_apart(report.figures);
  for (auto& named : report.figures) {
    named.in = stands_in(named.name, named.figure, today.files, library);
    if (today.run && named.in.file.empty()) named.figure.standing = learning::Standing::nowhere;
  }
  if (today.run) tell_all_effects(report.figures, today, caller);
  return report;
}

const reports::NamedFigure& figure_called(const std::string& name,
                                          const reports::LearnedReport& report,
                                          const UserTerms& terms) {
  std::vector<std::string> names;
  for (const auto& named : report.figures) {
    if (named.name == name) return named;
    names.push_back(named.name);
  }
  const auto near = nearest_name(name, names);
  throw UserError(terms.place("take"), brimwright::quoted(name) + " is not a figure that is shown",
                  near ? "did you mean \"" + *near + "\"?"
                       : "give the name of one that three batches or more tell");
}

Reply taking(const LearnRequest& request, const UserTerms& terms, const Today& today,
             ReadingRecords& reading, const moulds::Library& library, const Caller& caller) {
  const reports::LearnedReport report = report_of(request, today, reading, library, caller);
  const auto& named = figure_called(*request.take, report, terms);
  if (named.figure.standing == learning::Standing::too_few)
    throw UserError(terms.place("take"),
                    "rests on " + std::to_string(named.figure.values.size()) +
                        " batches, too few to tell it from chance",
                    "wait for " + std::to_string(learning::fewest_to_suggest) +
                        ", or type the value where it stands");
  MadeFile file = taken(named.name, named.figure, today.files, request.today, terms, library);
  const bool is_by_outline = named.figure.id.kind == Kind::topping_each && today.files.outline;
  Reply reply;
  reply.document =
      on_one_line(file.name) + ": " + named.name + " is now " +
      reports::value_words(named.figure.writes->value) +
      (is_by_outline ? ", " + named.in.would_say + " of its outline" : "") +
      (named.figure.id.kind == Kind::volume_error ? " times what was measured, from " : ", from ") +
      counted(static_cast<std::int64_t>(named.figure.values.size()), "batch", "batches") + "; " +
      terms.say({"undo", named.name}) + " takes it back\n";
  reply.files.push_back(std::move(file));
  return reply;
}

Reply undoing(const LearnRequest& request, const UserTerms& terms, const Today& today,
              const moulds::Library& library) {
  Undone back = undone(*request.undo, today.files, terms, library);
  std::string text = on_one_line(back.file.name) + ": " + *request.undo +
                     (back.says ? " is " + *back.says + " again" : " stands there no more");
  if (back.still_taken)
    text += ", as it was taken on " + back.still_taken->on + " from " +
            counted(static_cast<std::int64_t>(back.still_taken->batches), "batch", "batches") +
            "; " + terms.say({"undo", *request.undo}) + " takes that back too";
  Reply reply;
  reply.document = text + "\n";
  reply.files.push_back(std::move(back.file));
  return reply;
}

/// The year as typed.
std::chrono::year year_from(const std::string& typed, const Place& where) {
  const bool is_plain =
      typed.size() == 4 && typed.find_first_not_of("0123456789") == std::string::npos;
  if (!is_plain || typed < "1990" || typed > "2199")
    throw UserError(where, brimwright::quoted(typed) + " is not a year", "give one such as 2026");
  return std::chrono::year(std::stoi(typed));
}

bool is_in(const std::chrono::year_month_day& date, std::chrono::year year) {
  return date.year() == year;
}

/// Each batch counts against the plan that was frozen with it, whatever bears its names today.
reports::YearReport year_of(const LearnRequest& request, const Today& today,
                            std::chrono::year year) {
  reports::YearReport report{.name = today.name, .year = year, .batches = {}, .told = {}};
  if (const auto records = records::Records::in(folder_of(request.file)))
    report.batches = learned_batches(kept_batches(*records), nullptr).facts;
  const bool is_of_run = today.facts.has_value();
  std::erase_if(report.batches, [&](const auto& batch) {
    return !is_in(batch.date, year) || (is_of_run && batch.run != today.facts->run);
  });
  report.told = learning::batch_by_batch(report.batches);
  return report;
}

std::string picture_of(const LearnRequest& request, const UserTerms& terms, const Today& today,
                       const reports::LearnedReport& report) {
  if (!request.year) return reports::learned_picture(report);
  return reports::year_picture(
      year_of(request, today, year_from(*request.year, terms.place("year"))));
}

void refuse_both(const LearnRequest& request, const Request& asked) {
  const bool changes = request.take || request.undo;
  const auto refuse = [&](const char* member, const std::string& other) {
    throw UserError(asked.terms.place(member), "does not go with " + other, "give one of the two");
  };
  if (request.take && request.undo) refuse("take", asked.terms.say({"undo"}));
  const char* const member = request.take ? "take" : "undo";
  if (changes && asked.form == Form::json) refuse(member, "JSON");
  if (changes && !request.wanted.empty()) refuse(member, "a picture");
  if (request.year && request.wanted.empty())
    throw UserError(asked.terms.place("year"), "does nothing alone",
                    "give it together with " + asked.terms.say({"picture"}));
}

}  // namespace

Reply learned_for(const LearnRequest& request, const Request& asked, const moulds::Library& library,
                  const Caller& asked_by) {
  refuse_both(request, asked);
  MeasureMemory shapes;  // the run is planned once more for each figure, of which few change one
  Caller caller = asked_by;
  if (caller.memory == nullptr) caller.memory = &shapes;
  if (request.undo)
    return undoing(request, asked.terms, today_of(request, asked.terms, library, caller), library);
  ReadingRecords reading(request);
  const Today today = today_of(request, asked.terms, library, caller);
  if (request.take) return taking(request, asked.terms, today, reading, library, caller);
  const reports::LearnedReport report = report_of(request, today, reading, library, caller);
  Reply reply;
  reply.document = asked.form == Form::json ? reports::learned_json(report)
                                            : reports::learned_text(report, asked.terms);
  for (const WantedFile& file : request.wanted)
    reply.files.push_back({file.name, picture_of(request, asked.terms, today, report)});
  return reply;
}

}  // namespace brimwright::service
