#include "service/noting.h"

#include "records/act.h"
#include "records/batch_code.h"
#include "records/noting.h"
#include "records/records.h"
#include "reports/note_report.h"
#include "reports/plan_report.h"
#include "schemas/tidying.h"
#include "service/actual_weights.h"
#include "service/batch_beginning.h"
#include "service/freezing.h"
#include "service/lot_taking.h"
#include "service/noted_batches.h"
#include "service/notes_reading.h"
#include "service/ordered.h"
#include "service/passing_folder.h"
#include "service/poured_base.h"
#include "service/pouring_orders.h"
#include "service/run_records.h"
#include "units/letters.h"
#include "units/reading.h"
#include "units/wording.h"
#include "units/written_number.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <iterator>
#include <utility>

namespace brimwright::service {
namespace {

using records::Batch;
using records::Records;
using Json = nlohmann::ordered_json;

constexpr std::int64_t most_batches = 1'000'000;
constexpr auto more_lye = "lye-heavy";     // confirms that more lye was weighed than planned
constexpr auto by_itself = "by-itself";    // that a batch is beside what an order pours together
constexpr std::chrono::days long_ago{60};  // a batch begun before that may be a slip of the year

std::chrono::sys_days day_of(const std::string& text, const Place& where) {
  return std::chrono::sys_days(read_date(text, where));
}

[[noreturn]] void ask_about_lye(const std::vector<Remark>& told, const Place& where,
                                const std::string& remedy) {
  std::string problem;
  for (const Remark& remark : told) problem += (problem.empty() ? "" : " ") + remark.text;
  if (problem.ends_with('.')) problem.pop_back();
  throw Question({.file = where.file,
                  .field = where.field,
                  .asks = "confirmed",
                  .problem = problem,
                  .remedy = Words(remedy + ", give ") + Answer{"confirmed", more_lye} + " with it",
                  .choices = {{{{"confirmed", more_lye}}}}});
}

[[noreturn]] void ask_about_orders(const std::vector<PouringOrder>& orders) {
  throw Question(
      {.file = orders.front().file,
       .field = "",
       .asks = "confirmed",
       .problem = pouring_words(orders),
       .remedy = Words("begin the base with the order in place of the run, or if this batch is "
                       "mixed by itself, give ") +
                 Answer{"confirmed", by_itself} + " with it",
       .choices = {{{{"confirmed", by_itself}}}}});
}

/// One request on the records of one run, or of a base for several.
class Desk {
 public:
  Desk(const NoteRequest& request, const UserTerms& terms, const moulds::Library& library,
       const Caller& caller, const ShownBatch& shown)
      : request_(request),
        terms_(terms),
        library_(library),
        caller_(caller),
        shown_(shown),
        order_(order_in(request.file, std::nullopt, library)),
        run_(order_ ? poured_records(*order_, word_asked(), library)
                    : run_records(request.file, library)),
        asked_(notes_asked(request, terms)) {
    refuse_what_does_not_go_together();
    if (request.code) code_ = records::read_batch_code(*request.code, terms.place("code"));
    if (request.batch) number_ = read_batch_number(*request.batch);
    report_ = {.run = run_.name, .file = run_.file, .id = run_.id};
  }

  bool begins_records() const { return request_.begin && !Records::in(run_.folder); }
  void rehearse();

  reports::NoteReport report() {
    if (request_.begin)
      begin(run_.folder);
    else if (request_.reserve)
      reserve();
    else if (code_ || !asked_.changes.empty())
      change();
    else
      look();
    return std::move(report_);
  }

 private:
  std::string word_asked() const;
  void refuse_what_does_not_go_together();
  std::int64_t read_batch_number(const std::string& typed) const;

  void begin(const std::string& folder);
  void reserve();
  void change();
  void look();
  void look_at_form(const Records* records);

  FrozenPlan planned();
  Batch begun(Records& records, const FrozenPlan& frozen);
  std::string begun_on() const;
  Batch picked(const Records& records) const;
  Batch batch_with_code(const Records& records) const;
  Batch batch_with_id(const Records& records) const;
  void check_code_of_file(const Batch& batch) const;
  void note(Records& records, const Batch& batch);
  std::vector<records::Note> uses() const;
  void weigh_otherwise(Records& records, const Batch& batch, const records::Notes& before,
                       bool is_meant);
  bool was_told(const Records& records, const Batch& batch, const records::Notes& before,
                const AsWeighed& told) const;
  void ask_about_lots(const LotsTaken& taken);
  reports::NotedBatch shown_of(const Records& records, NotedBatches& noted, const Batch& batch);
  void refuse_begun(const Records& records) const;
  void look_at_orders();
  void refuse_other_weights(const FrozenPlan& frozen) const;
  void ask_about_unseen(const Records& records, const Batch& batch) const;
  void tell_noted(const Batch& batch);
  void show(const Records& records, const Batch& batch);

  std::string act_id() const { return request_.act.empty() ? schemas::new_id() : request_.act; }
  std::string about(const char* code, const std::string& which) const;

  const NoteRequest& request_;
  const UserTerms& terms_;
  const moulds::Library& library_;
  const Caller& caller_;
  const ShownBatch& shown_;
  std::optional<runs::Order> order_;  // whose lines are poured together
  std::optional<PouredBase> base_;    // once that is planned
  RunRecords run_;
  std::vector<Batch> begun_lines_;  // poured from it
  NotesAsked asked_;
  std::optional<std::string> code_;
  std::optional<std::int64_t> number_;
  reports::NoteReport report_;
};

std::string Desk::word_asked() const {
  const auto words = shared_words(*order_);
  if (words.empty())
    throw UserError({request_.file, ""},
                    "is an order of which no lines are poured together, and batches are of runs",
                    "name one of its runs");
  std::string all;
  for (const std::string& word : words) all += (all.empty() ? "" : ", ") + brimwright::quoted(word);
  const auto& asked = request_.together;
  if (asked && std::find(words.begin(), words.end(), *asked) == words.end())
    throw UserError(terms_.place("together"),
                    brimwright::quoted(*asked) + " is no word that lines of this order share",
                    "give one of " + all);
  if (asked) return *asked;
  if (words.size() > 1)
    throw UserError(terms_.place("together"),
                    "is missing: lines of this order are poured together as " + all,
                    "say which, " + terms_.say({"together", words.front()}));
  return words.front();
}

void Desk::refuse_what_does_not_go_together() {
  const auto refuse = [&](const char* one, const char* other) {
    throw UserError(terms_.place(one), "does not go with " + terms_.say({other}),
                    "leave one of the two out");
  };
  const auto needs = [&](const char* one, const std::string& others) {
    throw UserError(terms_.place(one), "does nothing alone", "give it with " + others);
  };
  if (request_.together && !order_)
    throw UserError(terms_.place("together"), "is of an order, and this is a run", "leave it out");
  const bool notes = !request_.set.empty() || request_.notes;
  if (request_.begin && request_.reserve) refuse("reserve", "begin");
  if (request_.reserve && notes) refuse("reserve", request_.notes ? "notes" : "set");
  if (request_.batch && request_.batch_code) refuse("batch-code", "batch");
  if (request_.batch_code && request_.begin) refuse("batch-code", "begin");
  if (request_.batch_code && request_.reserve) refuse("batch-code", "reserve");
  if (request_.again && !request_.begin && !request_.reserve)
    needs("again", terms_.say({"begin"}) + " or " + terms_.say({"reserve"}));
  if (request_.on && !request_.begin) needs("on", terms_.say({"begin"}));
  const bool takes_lots = request_.begin || !uses().empty();
  if (!request_.lots.empty() && !takes_lots) needs("lot", terms_.say({"begin"}));
  if (!request_.beyond_stock.empty() && !takes_lots) needs("beyond-stock", terms_.say({"begin"}));
}

std::int64_t Desk::read_batch_number(const std::string& typed) const {
  const double number = read_number(typed, terms_.place("batch"));
  if (number < 1 || number > static_cast<double>(most_batches) || number != std::floor(number))
    throw UserError(terms_.place("batch"),
                    brimwright::quoted(typed) + " is not the number of a batch",
                    "give 1 for the run's first, 2 for its second");
  return static_cast<std::int64_t>(number);
}

std::string Desk::about(const char* code, const std::string& which) const {
  Json json = {{"run", run_.key()}, {"run_file", run_.file}};
  if (number_) json["number"] = *number_;
  json[code] = which;
  Json set = Json::object();
  for (const records::Note& change : asked_.changes) set[change.key] = change.value;
  if (!set.empty()) json["set"] = std::move(set);
  return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

/// Past the gates; which of its batches is meant is known then.
FrozenPlan Desk::planned() {
  if (order_) {
    base_ = poured_base(request_.file, run_.word, request_.today, library_, caller_);
    run_.name = base_->together.plan.name + ", poured together (" + run_.word + ")";
    report_.run = run_.name;
  }
  FrozenPlan frozen =
      base_ ? FrozenPlan{base_->together.run, base_->together.plan, base_->answer, base_->sources}
            : frozen_plan(request_.file, library_, caller_);
  const std::int64_t in_all = frozen.plan.pieces.batches;
  report_.in_all = in_all;
  if (!number_ && in_all > 1)
    throw UserError(terms_.place("batch"),
                    "is missing: the run is made in " + std::to_string(in_all) + " batches",
                    "say which, " + terms_.say({"batch", "1"}));
  if (!number_) number_ = 1;
  if (*number_ > in_all)
    throw UserError(terms_.place("batch"),
                    "there is no batch " + std::to_string(*number_) + " in this run",
                    in_all == 1 ? "it is made in one batch"
                                : "it is made in " + std::to_string(in_all) + " batches");
  return frozen;
}

std::string Desk::begun_on() const {
  if (!request_.on) return request_.today;
  const Place where = terms_.place("on");
  const auto day = day_of(*request_.on, where), today = day_of(request_.today, where);
  std::string text = plain(*request_.on);
  if (day > today)
    throw UserError(where, "is " + text + ", which is still to come",
                    "begin a batch when its lye is mixed");
  if (day < today - long_ago &&
      std::find(asked_.confirmed.begin(), asked_.confirmed.end(), text) == asked_.confirmed.end())
    throw Question({.file = where.file,
                    .field = where.field,
                    .asks = "confirmed",
                    .problem = "is " + text + ", long before today, " + request_.today,
                    .remedy = Words("correct it, or if it is so, give ") +
                              Answer{"confirmed", text} + " with it",
                    .choices = {{{{"confirmed", text}}}}});
  return text;
}

void Desk::refuse_begun(const Records& records) const {
  if (request_.again) return;
  const auto before = newest_batch(records, run_, *number_);
  if (!before) return;
  throw UserError(terms_.place(request_.begin ? "begin" : "reserve"),
                  "batch " + std::to_string(*number_) + " was begun on " + before->begun_on +
                      " as " + before->code,
                  "note what happens to it with " + terms_.say({"set", "KEY=VALUE"}) +
                      ", or for another making of it give " + terms_.say({"again"}) + " too");
}

/// Two bases would lie on the scales otherwise, and nobody said so. What was begun already is told
/// first.
void Desk::look_at_orders() {
  if (order_) return;
  if (const auto records = Records::in(run_.folder);
      records && !request_.again && newest_batch(*records, run_, *number_))
    return;
  PouringOrders orders = pouring_orders(request_.file, begun_on(), library_);
  report_.remarks = std::move(orders.remarks);
  if (!orders.all.empty() && std::erase(asked_.confirmed, by_itself) == 0)
    ask_about_orders(orders.all);
}

void Desk::refuse_other_weights(const FrozenPlan& frozen) const {
  if (!shown_.mark) return;
  const std::string& mark = *shown_.mark;
  const Json plan = Json::parse(frozen.answer);
  for (const Json& size : plan.at("batches")) {
    const auto& numbers = size.at("numbers");
    if (std::find(numbers.begin(), numbers.end(), *number_) != numbers.end() &&
        size.at("mark") == mark)
      return;
  }
  throw UserError({run_.file, ""},
                  "has changed since batch " + std::to_string(*number_) +
                      " was weighed, and its record would have other weights",
                  "set the run back to what was weighed, begin the record, and change it then");
}

/// Somebody else noted another value since the asker looked: neither is written over unasked.
void Desk::ask_about_unseen(const Records& records, const Batch& batch) const {
  if (shown_.seen.empty()) return;
  std::map<std::string, std::string> now;
  for (const auto& [key, noted] : notes_of(records, batch).all) now[key] = noted.value;
  for (const auto& weighing : weighings_of(records, batch))
    now["cured." + weighing.day] = std::to_string(weighing.pieces) +
                                   (weighing.pieces == 1 ? " piece, " : " pieces, ") +
                                   weighing.written;
  for (const auto& [key, seen] : shown_.seen) {
    const auto at = now.find(key);
    const std::string there = at == now.end() ? "" : at->second;
    if (there == seen) continue;
    throw Question({.file = "",
                    .field = key,
                    .asks = "seen",
                    .problem = there.empty() ? Words("was taken back meanwhile")
                                             : Words("was noted as " + brimwright::quoted(there) +
                                                     " meanwhile"),
                    .remedy = "say which is right",
                    .choices = {{{{"seen", there}}}}});
  }
}

Batch Desk::begun(Records& records, const FrozenPlan& frozen) {
  Batch batch = records::begin_batch(records,
                                     {.id = schemas::new_id(),
                                      .run = run_.key(),
                                      .run_file = run_.file,
                                      .run_name = run_.name,
                                      .number = *number_,
                                      .begun_on = begun_on(),
                                      .begun_at = request_.now,
                                      .pieces = base_ ? 0 : frozen.batch(*number_).pieces,
                                      .program = request_.program,
                                      .plan = frozen.answer,
                                      .sources = frozen.sources,
                                      .code = code_},
                                     terms_.place("code"));
  std::vector<Begun> all;
  all.push_back({batch, &frozen.run,
                 base_ ? weighed_for_base(base_->told(), base_->size_of(*number_))
                       : weighed_for(frozen.run, frozen.plan, *number_)});
  if (base_)
    for (Begun& line :
         begin_lines(records, *base_, batch, run_.folder, library_, asked_.confirmed, terms_)) {
      begun_lines_.push_back(line.batch);
      all.push_back(std::move(line));
    }
  LotsTaken taken = take_of_lots(records, std::move(all), {request_.lots, request_.beyond_stock},
                                 library_, terms_);
  if (taken.has_more_lye) ask_about_lots(taken);
  for (Remark& remark : taken.remarks) report_.remarks.push_back(std::move(remark));
  return batch;
}

/// Alkali purer than planned is taken of no lot unasked.
void Desk::ask_about_lots(const LotsTaken& taken) {
  std::vector<Remark> dangers = taken.remarks;
  std::erase_if(dangers, [](const Remark& one) { return one.severity != Severity::danger; });
  if (std::erase(asked_.confirmed, more_lye) == 0)
    ask_about_lye(dangers, terms_.place("lot"), "name another lot, or if it was of that one");
}

/// Before the first records of a folder are begun: a batch that cannot be leaves none behind.
void Desk::rehearse() {
  const PassingFolder none;
  try {
    begin(none.path());
  } catch (const UserError& error) {
    const auto& parts = error.parts();
    if (!parts.file.starts_with(none.path())) throw;
    throw UserError({run_.folder + "/" + records::file_name, parts.field}, parts.problem,
                    parts.remedy);
  }
}

void Desk::begin(const std::string& folder) {
  const FrozenPlan frozen = planned();
  (void)begun_on();
  refuse_other_weights(frozen);
  look_at_orders();
  Records records = Records::kept_in(folder);
  records::Act act(records, act_id(), request_.now, "begin", about("code", code_.value_or("")));
  if (act.was_done_before()) return show(records, *newest_batch(records, run_, *number_));
  refuse_shared_id(records, run_);
  keep_reserved(records, run_);
  refuse_begun(records);
  const Batch batch = begun(records, frozen);
  check_code_of_file(batch);
  note(records, batch);
  act.done();
  report_.done.push_back("Begun: " + batch.code + ", batch " + std::to_string(*number_) + " of " +
                         std::to_string(*report_.in_all) + " of " + brimwright::quoted(run_.name) +
                         ", on " + batch.begun_on + ". Its plan is frozen.");
  for (const Batch& line : begun_lines_)
    report_.done.push_back(
        "Poured from it: " + line.code + ", batch " + std::to_string(line.number) + " of " +
        brimwright::quoted(line.run_name) + ", " + counted(line.pieces, "piece") + ".");
  tell_noted(batch);
  for (const auto& caution : frozen.plan.cautions)
    if (caution.severity == Severity::danger) report_.remarks.push_back(caution);
  if (run_.id.empty())
    report_.remarks.push_back(
        {Severity::note, run_.file + " has no id, so that a rename parts it from its batches: "
                                     "brimwright tidy gives it one."});
  show(records, batch);
}

void Desk::reserve() {
  (void)planned();
  Records records = Records::kept_in(run_.folder);
  records::Act act(records, act_id(), request_.now, "reserve", about("code", code_.value_or("")));
  if (!act.was_done_before()) {
    refuse_shared_id(records, run_);
    refuse_begun(records);
    keep_reserved(records, run_);
    (void)records::reserve_code(records, run_.key(), *number_, request_.today, code_,
                                terms_.place("code"));
    act.done();
  }
  const auto code = reserved_code(records, run_, *number_);
  report_.done.push_back("Reserved: " + code.value_or("") + " for batch " +
                         std::to_string(*number_) + " of " + brimwright::quoted(run_.name) +
                         ". Sheet and label carry it from now on.");
  report_.batches.push_back({.number = *number_, .reserved = code});
}

Batch Desk::batch_with_code(const Records& records) const {
  const Place where = terms_.place("batch-code");
  const std::string code = records::read_batch_code(*request_.batch_code, where);
  const auto batch = records::batch_called(records, code);
  if (!batch)
    throw UserError(where, "no batch has the code " + brimwright::quoted(code),
                    "look which ones there are with brimwright note " + run_.file);
  for (const std::string& key : run_.keys())
    if (batch->run == key) return *batch;
  throw UserError(where, brimwright::quoted(code) + " is a batch of " + batch->run_file,
                  "name that run");
}

Batch Desk::batch_with_id(const Records& records) const {
  for (const Batch& batch : batches_of(records, run_))
    if (batch.id == *shown_.id) return batch;
  throw UserError({run_.file, ""}, "has no batch of that id any more", "look again");
}

/// The one that is meant, by its id, its code, its number or because there is no other.
Batch Desk::picked(const Records& records) const {
  if (shown_.id) return batch_with_id(records);
  if (request_.batch_code) return batch_with_code(records);
  if (number_) {
    if (auto batch = newest_batch(records, run_, *number_)) return *batch;
    throw UserError(terms_.place("batch"),
                    "batch " + std::to_string(*number_) + " has not been begun",
                    "give " + terms_.say({"begin"}) + " when its lye is mixed");
  }
  const auto all = batches_of(records, run_);
  if (all.size() == 1) return all.front();
  if (all.empty())
    throw UserError({run_.file, ""}, "has no batch that was begun",
                    "give " + terms_.say({"begin"}) + " when its lye is mixed");
  throw UserError(terms_.place("batch"),
                  "is missing: " + std::to_string(all.size()) + " batches of this run were begun",
                  "say which, " + terms_.say({"batch", "1"}) + " or " +
                      terms_.say({"batch-code", all.back().code}));
}

void Desk::check_code_of_file(const Batch& batch) const {
  if (!asked_.batch_code) return;
  const std::string code = records::read_batch_code(*asked_.batch_code, asked_.batch_code_at);
  if (in_small_letters(code) != in_small_letters(batch.code))
    throw UserError(asked_.batch_code_at,
                    "is " + brimwright::quoted(code) + ", and the batch is " + batch.code,
                    "take the file of that batch");
}

/// The day of the beginning is no note; what else was confirmed is to be one.
void Desk::note(Records& records, const Batch& batch) {
  std::vector<std::string> confirmed = asked_.confirmed;
  if (request_.on) std::erase(confirmed, plain(*request_.on));
  if (asked_.changes.empty() && !confirmed.empty())
    throw UserError(terms_.place("confirmed"),
                    brimwright::quoted(confirmed.front()) + " is nothing that was asked about",
                    "leave it out");
  if (asked_.changes.empty()) return;
  const bool is_lye_meant = !uses().empty() && std::erase(confirmed, more_lye) > 0;
  const records::Notes before = records::notes_of(records, batch);
  records::note(records, batch, asked_.changes,
                {.today = request_.today,
                 .noted_at = request_.now,
                 .confirmed = std::move(confirmed),
                 .confirmed_at = terms_.place("confirmed")});
  weigh_otherwise(records, batch, before, is_lye_meant);
}

/// Of what is noted, what was used otherwise than planned.
std::vector<records::Note> Desk::uses() const {
  std::vector<records::Note> uses;
  std::copy_if(asked_.changes.begin(), asked_.changes.end(), std::back_inserter(uses),
               [](const records::Note& change) { return takes_lots(change.key); });
  return uses;
}

/// Lots lose what was used; more lye than was planned is never recorded unasked.
void Desk::weigh_otherwise(Records& records, const Batch& batch, const records::Notes& before,
                           bool is_meant) {
  const auto changes = uses();
  if (changes.empty()) return;
  std::vector<std::string> keys;
  const records::Note* said = nullptr;
  for (const records::Note& change : changes) {
    keys.push_back(change.key);
    if (!change.value.empty() && change.key.starts_with(records::weighed_prefix)) said = &change;
  }
  const LotWishes wishes =
      request_.begin ? LotWishes{} : LotWishes{request_.lots, request_.beyond_stock};
  for (Remark& remark :
       use_as_weighed(records, batch, keys, request_.file, library_, wishes, terms_))
    report_.remarks.push_back(std::move(remark));
  const AsWeighed told = as_weighed(records, batch, records::notes_of(records, batch),
                                    request_.file, library_, caller_);
  if (said != nullptr && !is_meant && !was_told(records, batch, before, told))
    ask_about_lye(told.remarks, said->where, "correct the weight, or if it was weighed so");
  report_.remarks.insert(report_.remarks.end(), told.remarks.begin(), told.remarks.end());
}

/// Whether all that is to be asked about was noted before, and so meant.
bool Desk::was_told(const Records& records, const Batch& batch, const records::Notes& before,
                    const AsWeighed& told) const {
  if (told.more_lye.empty()) return true;
  const auto then = as_weighed(records, batch, before, request_.file, library_, caller_).more_lye;
  return std::all_of(told.more_lye.begin(), told.more_lye.end(), [&](const std::string& one) {
    return std::find(then.begin(), then.end(), one) != then.end();
  });
}

reports::NotedBatch Desk::shown_of(const Records& records, NotedBatches& noted,
                                   const Batch& batch) {
  reports::NotedBatch shown = noted.of(batch);
  shown.as_weighed =
      as_weighed(records, batch, shown.notes, request_.file, library_, caller_).remarks;
  return shown;
}

void Desk::change() {
  auto records = Records::in(run_.folder);
  if (!records)
    throw UserError({run_.file, ""}, "has no batch that was begun",
                    "give " + terms_.say({"begin"}) + " when its lye is mixed");
  Batch batch = picked(*records);
  records::Act act(*records, act_id(), request_.now, code_ ? "code" : "note",
                   about("code", batch.code));
  if (!act.was_done_before()) {
    check_code_of_file(batch);
    ask_about_unseen(*records, batch);
    if (code_) {
      const std::string before = batch.code;
      batch = records::with_code(*records, batch, *code_, request_.today, terms_.place("code"));
      report_.done.push_back("The batch that was " + before + " is " + batch.code + " now.");
    }
    note(*records, batch);
    act.done();
    tell_noted(batch);
  }
  show(*records, batch);
}

void Desk::tell_noted(const Batch& batch) {
  if (asked_.changes.empty()) return;
  std::string all;
  for (const records::Note& change : asked_.changes)
    all += (all.empty() ? "" : "; ") + change.key +
           (without_blanks(change.value).empty() ? " taken back" : " " + change.value);
  report_.done.push_back("Noted of " + batch.code + ": " + all + ".");
}

void Desk::show(const Records& records, const Batch& batch) {
  report_.is_form = true;
  NotedBatches noted(records, run_, request_.today);
  report_.batches.push_back(shown_of(records, noted, batch));
}

/// By today's plan, of a batch that has not been begun.
void Desk::look_at_form(const Records* records) {
  const FrozenPlan frozen = planned();
  reports::NotedBatch form{.number = *number_,
                           .blanks = records::blanks_in(frozen.answer, *number_)};
  if (records != nullptr) form.reserved = reserved_code(*records, run_, *number_);
  report_.is_form = true;
  report_.batches.push_back(std::move(form));
}

void Desk::look() {
  const auto records = Records::in(run_.folder);
  if (records && (request_.batch_code || (number_ && newest_batch(*records, run_, *number_))))
    return show(*records, picked(*records));
  if (number_) return look_at_form(records ? &*records : nullptr);
  if (request_.batch_code)
    throw UserError(terms_.place("batch-code"), "no batch of this run has been begun",
                    "give " + terms_.say({"begin"}) + " when its lye is mixed");
  if (!records) return;
  NotedBatches noted(*records, run_, request_.today);
  for (const Batch& batch : batches_of(*records, run_)) {
    report_.batches.push_back(shown_of(*records, noted, batch));
    report_.in_all = noted.in_all(batch);
  }
}

}  // namespace

Reply noted(const NoteRequest& request, const Request& asked, const moulds::Library& library,
            const Caller& caller, const ShownBatch& shown) {
  Desk desk(request, asked.terms, library, caller, shown);
  if (desk.begins_records()) Desk(request, asked.terms, library, caller, shown).rehearse();
  const reports::NoteReport report = desk.report();
  return {.document =
              asked.form == Form::json ? reports::note_json(report) : reports::note_text(report)};
}

}  // namespace brimwright::service
