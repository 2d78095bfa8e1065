#include "records/act.h"
#include "records/batch_code.h"
#include "schemas/tidying.h"
#include "service/batch_beginning.h"
#include "service/note_desk.h"
#include "service/pouring_orders.h"
#include "service/rehearsal.h"
#include "units/reading.h"
#include "units/wording.h"
#include "units/written_number.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <chrono>
#include <utility>

namespace brimwright::service {
namespace {

using records::Batch;
using records::Records;
using Json = nlohmann::ordered_json;

constexpr auto by_itself = "by-itself";    // a batch is beside what an order pours together
constexpr std::chrono::days long_ago{60};  // a batch begun before that may be a slip of the year

std::chrono::sys_days day_of(const std::string& text, const Place& where) {
  return std::chrono::sys_days(read_date(text, where));
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

}  // namespace

std::string NoteDesk::begun_on() const {
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

void NoteDesk::refuse_begun(const Records& records) const {
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
void NoteDesk::look_at_orders() {
  if (order_) return;
  if (const auto records = Records::in(run_.folder);
      records && !request_.again && newest_batch(*records, run_, *number_))
    return;
  PouringOrders orders = pouring_orders(request_.file, begun_on(), library_);
  report_.remarks = std::move(orders.remarks);
  if (!orders.all.empty() && std::erase(asked_.confirmed, by_itself) == 0)
    ask_about_orders(orders.all);
}

void NoteDesk::refuse_other_weights(const FrozenPlan& frozen) const {
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

Batch NoteDesk::begun(Records& records, const FrozenPlan& frozen) {
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
void NoteDesk::ask_about_lots(const LotsTaken& taken) {
  std::vector<Remark> dangers = taken.remarks;
  std::erase_if(dangers, [](const Remark& one) { return one.severity != Severity::danger; });
  if (std::erase(asked_.confirmed, more_lye) == 0)
    ask_about_lye(dangers, terms_.place("lot"), "name another lot, or if it was of that one");
}

void NoteDesk::rehearse() {
  service::rehearse(run_.folder, [&](Records& none) { begin(none); });
}

void NoteDesk::begin(Records& records) {
  const FrozenPlan frozen = planned();
  (void)begun_on();
  refuse_other_weights(frozen);
  look_at_orders();
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

void NoteDesk::reserve() {
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

}  // namespace brimwright::service
