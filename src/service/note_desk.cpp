#include "service/note_desk.h"

#include "records/batch_code.h"
#include "schemas/tidying.h"
#include "service/ordered.h"
#include "units/reading.h"
#include "units/written_number.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <utility>

namespace brimwright::service {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::int64_t most_batches = 1'000'000;

}  // namespace

NoteDesk::NoteDesk(const NoteRequest& request, const UserTerms& terms,
                   const moulds::Library& library, const Caller& caller, const ShownBatch& shown)
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

reports::NoteReport NoteDesk::report() {
  if (request_.begin) {
    records::Records records = records::Records::kept_in(run_.folder);
    begin(records);
  } else if (request_.reserve) {
    reserve();
  } else if (code_ || !asked_.changes.empty()) {
    change();
  } else {
    look();
  }
  return std::move(report_);
}

std::string NoteDesk::word_asked() const {
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

void NoteDesk::refuse_what_does_not_go_together() {
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

std::int64_t NoteDesk::read_batch_number(const std::string& typed) const {
  const double number = read_number(typed, terms_.place("batch"));
  if (number < 1 || number > static_cast<double>(most_batches) || number != std::floor(number))
    throw UserError(terms_.place("batch"),
                    brimwright::quoted(typed) + " is not the number of a batch",
                    "give 1 for the run's first, 2 for its second");
  return static_cast<std::int64_t>(number);
}

std::string NoteDesk::about(const char* code, const std::string& which) const {
  Json json = {{"run", run_.key()}, {"run_file", run_.file}};
  if (number_) json["number"] = *number_;
  json[code] = which;
  Json set = Json::object();
  for (const records::Note& change : asked_.changes) set[change.key] = change.value;
  if (!set.empty()) json["set"] = std::move(set);
  return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

/// Past the gates; which of its batches is meant is known then.
FrozenPlan NoteDesk::planned() {
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

std::string NoteDesk::act_id() const {
  return request_.act.empty() ? schemas::new_id() : request_.act;
}

void ask_about_lye(const std::vector<Remark>& told, const Place& where, const std::string& remedy) {
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

}  // namespace brimwright::service
