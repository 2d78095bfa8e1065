#include "service/scheduling.h"

#include "reports/calendar_file.h"
#include "reports/plan_words.h"
#include "runs/days_reading.h"
#include "runs/order_file.h"
#include "runs/packaging_reading.h"
#include "runs/studio_file.h"
#include "service/day_buying.h"
#include "service/day_extras.h"
#include "service/day_lyes.h"
#include "service/day_work.h"
#include "service/never_made.h"
#include "service/order_rest.h"
#include "service/ordered.h"
#include "service/recorded_stock.h"
#include "service/what_ifs.h"
#include "units/reading.h"
#include "units/wording.h"
#include "units/written_number.h"

#include <algorithm>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <utility>

namespace brimwright::service {
namespace {

using days::Day;
using reports::DaysReport;

Day day_typed(const std::string& typed, const Place& where) { return {read_date(typed, where)}; }

std::optional<Day> day_of(const std::optional<std::chrono::year_month_day>& date) {
  return date ? std::optional<Day>(*date) : std::nullopt;
}

/// Reads and plans what is asked about.
class Reading {
 public:
  Reading(const DaysRequest& request, const UserTerms& terms, Day from,
          const moulds::Library& library, const Caller& caller, std::vector<Remark>& notes)
      : request_(request), from_(from), library_(library), caller_(caller), notes_(notes) {
    if (request.due) due_ = day_typed(*request.due, terms.place("due"));
  }

  std::vector<DayFile> files() {
    for (const std::string& file : request_.files) {
      library_.named->push_back(file);
      refuse_twice(file);
      const auto order = order_in(file, request_.text, library_);
      files_.push_back(order ? ordered(*order) : run_alone(file));
    }
    caller_.tell_read(*library_.named);
    return std::move(files_);
  }

 private:
  void refuse_twice(const std::string& file) const {
    for (const DayFile& other : files_)
      if (one_name_of(other.file) == one_name_of(file))
        throw UserError({file, ""}, "is named twice", "name each file once");
  }

  DayFile ordered(const runs::Order& order) const {
    DayFile file{.file = order.file,
                 .id = order.id,
                 .name = order.whom_for.empty() ? "Order" : order.whom_for,
                 .is_order = true,
                 .due = day_of(order.due),
                 .due_at = {order.file, "/due"}};
    auto rest = rest_of(
        order, 1,
        ready_by(order, due_, reports::iso_date(std::chrono::year_month_day(from_)), library_),
        library_, caller_);
    refuse_delivered(order, rest.ready);
    file.ready = std::move(rest.ready);
    file.runs = ordered_runs(rest.order, library_, caller_);
    for (const reports::ReadyLine& line : file.ready.lines)
      if (line.to_make() == 0)
        file.of_stock.push_back(
            std::make_unique<planning::Run>(run_from(line.run, std::nullopt, library_)));
    file.order = std::make_unique<PlannedOrder>(planned_order(file.runs, 1));
    for (const std::string& remark : lone_words(order)) notes_.push_back({Severity::note, remark});
    for (std::size_t i = 0; i < file.runs.size(); ++i) {
      const PlannedTogether* with = file.order->with(i);
      if (with && with->lines.front() != i) continue;  // it stands with the first of them
      file.lines.push_back(with ? together_in(file, *with) : DayLine{.parts = {part_in(file, i)}});
    }
    return file;
  }

  static void refuse_delivered(const runs::Order& order, const reports::ReadyOrder& ready) {
    for (const reports::ReadyLine& line : ready.lines)
      if (line.to_pack() > 0) return;
    throw UserError({order.file, ""}, "is delivered whole, so nothing of it is to make or to pack",
                    "leave it out");
  }

  static DayPart part_in(const DayFile& file, std::size_t line) {
    const OrderedRun& one = *file.runs[line];
    return {one.line.run, &one.run, &one.measured, &file.order->lines[line]};
  }

  static DayLine together_in(const DayFile& file, const PlannedTogether& with) {
    DayLine line{.parts = {}, .together = &with.together};
    for (const std::size_t i : with.lines) line.parts.push_back(part_in(file, i));
    return line;
  }

  DayFile run_alone(const std::string& name) const {
    auto planned = std::make_unique<PlannedRun>(
        request_.text ? planned_text(*request_.text, name, library_, caller_)
                      : planned_run(name, std::nullopt, library_, caller_));
    const planning::Run& run = planned->run;
    DayFile file{.file = name,
                 .id = run.id,
                 .name = run.whom_for.empty() ? run.name : run.name + " for " + run.whom_for,
                 .due = day_of(run.due),
                 .due_at = run.place("/due")};
    file.lines.push_back({.parts = {{name, &run, &planned->measured, &planned->plan}}});
    file.alone = std::move(planned);
    return file;
  }

  const DaysRequest& request_;
  Day from_;
  std::optional<Day> due_ = {};
  const moulds::Library& library_;
  const Caller& caller_;
  std::vector<Remark>& notes_;
  std::vector<DayFile> files_;
};

std::vector<std::string> runs_of(const std::vector<DayFile>& files) {
  std::vector<std::string> names;
  for (const DayFile& file : files)
    for (std::string& name : file.run_files()) names.push_back(std::move(name));
  return names;
}

std::string beside(const std::string& file, const std::string& name) {
  return (std::filesystem::path(file).parent_path() / name).string();
}

runs::Studio studio_for_all(const std::vector<DayFile>& files, const moulds::Library& library) {
  const std::vector<std::string> names = runs_of(files);
  if (studio_of_all(names, library).empty())
    throw UserError({beside(names.front(), "studio.json"), "/days"},
                    "is missing: there is no studio.json beside " + names.front() +
                        ", so there is no making day",
                    "say in one when you make, or name the studio's file");
  return runs::studio_for(names.front(), library);
}

/// A due day that is typed takes the place of all others.
void settle_due_days(std::vector<DayFile>& files, const DaysRequest& request,
                     const UserTerms& terms, Day from) {
  for (DayFile& file : files) {
    if (request.due) {
      file.due_at = terms.place("due");
      file.due = day_typed(*request.due, file.due_at);
    }
    if (file.due && *file.due < from)
      throw UserError(file.due_at,
                      "is " + reports::weekday_and_date(*file.due) + ", before " +
                          reports::weekday_and_date(from) + ", on which the work could begin",
                      "give a day that is still to come");
  }
  const auto has_due = [](const DayFile& file) { return file.due.has_value(); };
  const auto lacks = std::find_if_not(files.begin(), files.end(), has_due);
  if (lacks != files.end() && std::any_of(files.begin(), files.end(), has_due))
    throw UserError(lacks->due_at, "is missing, and others have a due day",
                    "give it, or one for all with " + terms.say({"due", "2026-12-20"}));
}

void describe(DaysReport& report, const std::vector<DayFile>& files) {
  for (const DayFile& file : files) {
    DaysReport::Asked asked{.file = file.file,
                            .id = file.id,
                            .name = file.name,
                            .is_order = file.is_order,
                            .due = file.due,
                            .lines = {},
                            .ready = file.ready,
                            .pieces = file.ready.taken()};
    report.notes.insert(report.notes.end(), file.ready.notes.begin(), file.ready.notes.end());
    for (const DayLine& line : file.lines) {
      DaysReport::Line told{.files = {}, .name = line.name(), .moulds = {}};
      const planning::Plan& mixed = line.together ? line.together->plan : *line.parts.front().plan;
      for (const auto& batch : mixed.batches) told.batches += batch.count();
      for (const auto& limit : mixed.batch_limits)
        if (limit.sets) told.batch_limits.push_back(limit.text);
      for (const DayPart& part : line.parts) {
        told.files.push_back(part.file);
        told.moulds.push_back(part.run->pour.mould.name);
        told.sell += part.plan->pieces.sell;
        told.make += part.plan->pieces.make;
      }
      asked.pieces += told.sell;
      asked.lines.push_back(std::move(told));
    }
    report.asked.push_back(std::move(asked));
  }
}

std::vector<days::Delivery> without_due(std::vector<days::Delivery> deliveries) {
  for (auto& delivery : deliveries) delivery.due.reset();
  return deliveries;
}

/// One after the other, the most urgent first: as many as can keep their day do, of the others a
/// part.
void part_what_is_late(DaysReport& report, const DayWork& work, std::int64_t most_looks) {
  std::vector<std::size_t> order;
  for (std::size_t i = 0; i < work.deliveries.size(); ++i) order.push_back(i);
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return work.deliveries[a].due < work.deliveries[b].due;
  });
  std::vector<days::Delivery> settled;
  bool is_proved = order.size() == 1;
  for (const std::size_t i : order) {
    settled.push_back(work.deliveries[i]);
    if (days::latest_start(report.studio, settled, report.from, most_looks).schedule) continue;
    const std::size_t late = settled.size() - 1;
    const auto parted = days::parted(report.studio, settled, late, report.from, most_looks);
    auto& asked = report.asked[i];
    asked.is_late = true;
    asked.in_time = parted.pieces_kept;
    is_proved = is_proved && parted.is_proved;
    settled = days::parted_deliveries(settled, late, parted.kept, parted.keeps_ready);
    if (!parted.schedule)
      throw UserError({asked.file, ""}, "finds no day in five years", "ask for fewer pieces");
    asked.rest = parted.schedule->due.back();
    report.schedule = *parted.schedule;
    report.deliveries = settled;
    settled.back().due = asked.rest;
  }
  if (const auto last = days::earliest_promise(report.studio, settled, report.from, most_looks)) {
    report.schedule = *last;
    report.deliveries = settled;
  }
  for (auto& delivery : report.deliveries)
    if (report.asked[delivery.asked].is_late && delivery.due == report.asked[delivery.asked].rest)
      delivery.due.reset();
  report.is_parting_proved = is_proved;
}

void schedule(DaysReport& report, const DayWork& work, std::int64_t most_looks) {
  const auto promise =
      days::earliest_promise(report.studio, without_due(work.deliveries), report.from, most_looks);
  if (!promise)
    throw UserError({report.asked.front().file, ""}, "finds no day in five years",
                    "ask for fewer pieces");
  report.promise = promise->due.front();
  report.is_promise_proved = promise->is_proved;
  if (!report.is_due) {
    report.schedule = *promise;
    report.deliveries = work.deliveries;
    return;
  }
  const auto latest = days::latest_start(report.studio, work.deliveries, report.from, most_looks);
  report.is_kept = latest.schedule.has_value();
  if (!latest.schedule) return part_what_is_late(report, work, most_looks);
  report.schedule = *latest.schedule;
  report.deliveries = work.deliveries;
}

/// The last day on which a batch of each may be poured for its due day.
void find_last_making_days(DaysReport& report) {
  for (const auto& [d, line, day] : report.schedule.last_days) {
    const auto& delivery = report.deliveries[d];
    if (!delivery.due || delivery.is_rest) continue;
    auto& last = report.asked[delivery.asked].last_making_day;
    last = last ? std::max(*last, day) : day;
  }
}

std::int64_t batches_in(const DayWork& work) {
  std::size_t count = 0;
  for (const auto& delivery : work.deliveries)
    for (const auto& line : delivery.lines) count += line.batches.size();
  return static_cast<std::int64_t>(count);
}

/// Few batches are searched until it is proved; of many the search ends before anybody waits, that
/// of each wider limit even sooner.
struct Looks {
  std::int64_t of_answer = days::usual_looks, of_what_if = days::usual_looks;
};
Looks looks_for(std::int64_t batches) {
  constexpr std::int64_t few = 8;
  return batches <= few ? Looks{} : Looks{.of_answer = 2'000, .of_what_if = 300};
}

/// "18:00", as the time after midnight.
std::chrono::minutes alarm_typed(const std::string& typed, const Place& where) {
  const auto is_digit = [&](std::size_t i) { return typed[i] >= '0' && typed[i] <= '9'; };
  const bool is_written_so = typed.size() == 5 && typed[2] == ':' && is_digit(0) && is_digit(1) &&
                             is_digit(3) && is_digit(4);
  const int hour = is_written_so ? std::stoi(typed.substr(0, 2)) : 24;
  const int minute = is_written_so ? std::stoi(typed.substr(3)) : 60;
  if (hour > 23 || minute > 59)
    throw UserError(where, brimwright::quoted(typed) + " is not a time of day",
                    "write hours and minutes, such as 18:00");
  return std::chrono::hours(hour) + std::chrono::minutes(minute);
}

std::string calendar_of(const DaysReport& report, const DaysRequest& request,
                        const UserTerms& terms) {
  reports::CalendarWishes wishes{.stamp = request.printed_at};
  if (request.alarm) wishes.alarm = alarm_typed(*request.alarm, terms.place("alarm"));
  if (request.since)
    wishes.earlier = reports::events_in(
        request.since_text ? *request.since_text : text_of_file(*request.since), *request.since);
  for (const auto& asked : report.asked)
    if (asked.id.empty())
      throw UserError({asked.file, "/id"},
                      "is missing, and a calendar knows its entries by it for ever",
                      "add an id of its own, a UUID such as uuidgen prints");
  return reports::calendar_file(report, wishes);
}

void refuse_alone(const DaysRequest& request, const UserTerms& terms) {
  if (wants(request.wanted, FileKind::calendar)) return;
  for (const auto& [member, is_said] :
       {std::pair{"since", request.since.has_value()}, {"alarm", request.alarm.has_value()}})
    if (is_said)
      throw UserError(terms.place(member), "does nothing alone",
                      "give it together with " + terms.say({"ics", "FILE.ics"}));
}

}  // namespace

DaysReport days_report(const DaysRequest& request, const UserTerms& terms,
                       const moulds::Library& given, const Caller& caller) {
  moulds::Library library = given;
  library.named = std::make_shared<std::vector<std::string>>();
  if (request.since && !request.since_text) library.named->push_back(*request.since);
  DaysReport report{.studio_file = {},
                    .from = request.from ? day_typed(*request.from, terms.place("from"))
                                         : day_typed(request.today, {"", "today"}),
                    .asked = {},
                    .studio = {},
                    .deliveries = {},
                    .schedule = {}};
  auto files = Reading(request, terms, report.from, library, caller, report.notes).files();
  const runs::Studio studio = studio_for_all(files, library);
  report.studio_file = studio.fields()->file();
  const runs::StudioDays days = runs::read_days(studio);
  settle_due_days(files, request, terms, report.from);
  report.is_due = files.front().due.has_value();
  const auto packaging = runs::read_packaging(studio);
  Shelf shelf = with_recorded_stock(*runs::supplies_of(studio, library), runs_of(files),
                                    request.today, library, terms);
  report.notes.insert(report.notes.end(), shelf.notes.begin(), shelf.notes.end());
  const auto buying =
      buying_for_days(files, studio, std::move(shelf.supplies), packaging, report.notes);
  const DayWork work = day_work(files, days, library);
  report.notes.insert(report.notes.end(), work.notes.begin(), work.notes.end());
  report.lacks = work.lacks;
  report.studio = work.studio;
  describe(report, files);
  refuse_never_made(work, files, studio, report.from);
  const Looks looks = looks_for(batches_in(work));
  schedule(report, work, looks.of_answer);
  find_last_making_days(report);
  report.ordering = orderings(buying, packaging, files, report);
  if (days.one_lye) report.lyes = day_lyes(report, files, *days.one_lye);
  report.extras = extras(report, files, work, studio, library);
  report.what_ifs = what_ifs(report, files, work, days, looks.of_what_if);
  return report;
}

Reply scheduled(const DaysRequest& request, const Request& asked, const moulds::Library& library,
                const Caller& caller) {
  refuse_alone(request, asked.terms);
  const DaysReport report = days_report(request, asked.terms, library, caller);
  Reply reply{.document = asked.form == Form::json ? reports::days_json(report)
                                                   : reports::days_text(report)};
  for (const auto& [kind, name] : request.wanted) {
    if (kind == FileKind::csv)
      reply.files.push_back(
          {name, reports::days_csv(report, reports::mark_of(request.decimal_comma))});
    if (kind == FileKind::picture) reply.files.push_back({name, reports::days_picture(report)});
    if (kind == FileKind::calendar)
      reply.files.push_back({name, calendar_of(report, request, asked.terms)});
  }
  return reply;
}

}  // namespace brimwright::service
