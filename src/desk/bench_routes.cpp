#include "desk/answers.h"
#include "desk/clock.h"
#include "desk/desk.h"
#include "desk/desk_parts.h"
#include "desk/weighed.h"
#include "schemas/tidying.h"
#include "units/reading.h"

#include <nlohmann/json.hpp>

#include <utility>

namespace brimwright::desk {

using Json = nlohmann::ordered_json;

namespace {

constexpr std::int64_t most_batches = 1'000'000;
constexpr std::size_t most_shown_whole = 8u << 20;  // of an answer, in bytes of its plans

/// The run as typed, as an object or as the text of its file.
std::optional<std::string> text_in(const Fields& fields) {
  if (!fields.has("text") || fields.is_null("text")) return std::nullopt;
  return fields.is_object("text") ? fields.object("text").json() : fields.text("text");
}

Json complaint_json(const UserError& error) {
  return Json::parse(complaint(error).body)["complaint"];
}

/// Every batch that is under way has its plan with it. Of those that are done, the plan is left out
/// where the answer would be too long for a page that asks for it at each change.
Json listed_json(const BenchKeeping::Listed& listed) {
  Json batches = Json::array(), complaints = Json::array();
  std::size_t length = 0;
  for (const BenchBatch& batch : listed.batches) {
    const bool has_plan = !batch.finished_at || length + batch.plan.size() <= most_shown_whole;
    if (has_plan) length += batch.plan.size();
    batches.push_back(bench_json(batch, has_plan));
  }
  for (const UserError& error : listed.complaints) complaints.push_back(complaint_json(error));
  return {{"batches", std::move(batches)},
          {"version", listed.version},
          {"complaints", std::move(complaints)}};
}

std::string called(const BenchBatch& batch) { return "batch " + std::to_string(batch.number); }

void check_seen(const BenchBatch& batch, const std::string& seen) {
  check_mark(batch, seen);
  if (batch.finished_at)
    throw Overtaken({"", "batch"}, called(batch) + " is finished",
                    "start it anew to weigh it once more");
}

Overtaken not_begun(std::int64_t number) {
  return {{"", "batch"}, "batch " + std::to_string(number) + " has not been begun", "look again"};
}

}  // namespace

void check_mark(const BenchBatch& batch, const std::string& seen) {
  if (batch.mark != seen)
    throw Overtaken({"", "seen"}, "the weights of " + called(batch) + " changed just now",
                    "look again");
}

Desk::Weighed::Weighed(const Fields& fields, bool is_beginning)
    : file(fields.text("run")),
      text(text_in(fields)),
      batch(fields.whole_number("batch", 1, most_batches)),
      seen(fields.text("seen")),
      begins(is_beginning) {
  fields.refuse_unknown();
}

/// The id counts only where the run's file has it: one that is typed, but not saved, is not found
/// again. Where the file cannot be read, what is typed has to do.
BenchRun Desk::bench_run(const std::string& file, const std::optional<std::string>& text) const {
  const auto run = [&](const std::string& document, bool is_built_in) {
    const Fields fields = Fields::parse(document, file);
    BenchRun found{.file = file, .id = {}, .is_built_in = is_built_in};
    // One that came with the program has its id in every copy that a hand made of it.
    if (!is_built_in && fields.has("id")) found.id = fields.uuid("id");
    return found;
  };
  try {
    const auto document = workspace_.document(file);
    return run(document.text, document.is_shipped);
  } catch (const UserError&) {
    if (!text) throw;
    return run(*text, false);
  }
}

DeskAnswer Desk::bench(const DeskRequest& request, Budget) const {
  return {json_answer(listed_json(bench_.listed(bench_run(asked(request, "run")))))};
}

/// Planned while nobody is kept waiting; what another tab began meanwhile counts.
DeskAnswer Desk::weighed(const Weighed& asked, const BenchKeeping::Change& change,
                         Budget budget) const {
  const BenchRun run = bench_run(asked.file, asked.text);
  const auto checked = [&](BenchBatch& batch) {
    check_seen(batch, asked.seen);
    change(batch);
  };
  if (const auto batch = bench_.change(run, asked.batch, checked))
    return {json_answer(bench_json(*batch))};
  if (!asked.begins) throw not_begun(asked.batch);
  const service::PlanRequest wanted{
      .file = path_for(asked.file, asked.text.has_value()), .text = asked.text, .sell = {}};
  const HttpAnswer answer = served({wanted, service::Form::json, page_terms()}, budget);
  if (answer.status != 200) return {answer};
  BenchBatch fresh{.id = schemas::new_id(),
                   .run = run.file,
                   .run_id = run.id,
                   .number = asked.batch,
                   .begun_at = now_in_words()};
  freeze(fresh, Fields::parse(answer.body, "the plan"), {"", "batch"});
  return {json_answer(bench_json(bench_.begin(run, std::move(fresh), checked)))};
}

DeskAnswer Desk::tick(const DeskRequest& request, Budget budget) const {
  const Fields fields = fields_of(request);
  const std::string key = fields.text("key");
  const bool is_done = fields.truth("done");
  return weighed(
      {fields, is_done},
      [&](BenchBatch& batch) {
        if (!batch.rows.contains(key))
          throw UserError({"", "key"}, "\"" + key + "\" is not to be weighed in this batch",
                          "tick one of its rows");
        if (is_done)
          batch.ticks.emplace(key, now_in_words());
        else
          batch.ticks.erase(key);
      },
      budget);
}

DeskAnswer Desk::weigh_cup(const DeskRequest& request, Budget budget) const {
  const Fields fields = fields_of(request);
  std::optional<std::string> reading;
  if (!fields.is_null("reading")) reading = fields.text("reading");
  if (reading && !(read_mass(*reading, {"", "reading"}, "61 g") > Mass{}))
    throw UserError({"", "reading"}, "is not above 0", "give what the full cup weighs");
  return weighed(
      {fields, reading.has_value()}, [&](BenchBatch& batch) { batch.weigh_cup = reading; }, budget);
}

DeskAnswer Desk::anew(const DeskRequest& request, Budget) const {
  const Fields fields = fields_of(request);
  const BenchRun run = bench_run(fields.text("run"));
  const std::int64_t number = fields.whole_number("batch", 1, most_batches);
  fields.refuse_unknown();
  bench_.put_away(run, number);
  return {json_answer(listed_json(bench_.listed(run)))};
}

DeskAnswer Desk::finish(const DeskRequest& request, Budget) const {
  const Fields fields = fields_of(request);
  const BenchRun run = bench_run(fields.text("run"));
  const std::int64_t number = fields.whole_number("batch", 1, most_batches);
  fields.refuse_unknown();
  const auto finished = bench_.change(run, number, [](BenchBatch& batch) {
    if (!batch.finished_at) batch.finished_at = now_in_words();
  });
  if (!finished) throw not_begun(number);
  return {json_answer(listed_json(bench_.listed(run)))};
}

}  // namespace brimwright::desk
