#include "desk/bench_batch.h"

#include "desk/clock.h"
#include "schemas/kinds.h"
#include "units/user_error.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <vector>

namespace brimwright::desk {

using Json = nlohmann::ordered_json;

namespace {

constexpr std::int64_t most_batches = 1'000'000;

std::string moment(const Fields& fields, const std::string& key) {
  std::string text = fields.text(key);
  if (is_moment(text)) return text;
  throw UserError(fields.place(key), "is no moment", "give one as \"2026-11-14T09:30:05+01:00\"");
}

bool is_number(const Fields& size, std::int64_t number) {
  const auto numbers = size.numbers("numbers");
  return std::count(numbers.begin(), numbers.end(), static_cast<double>(number)) > 0;
}

/// The batch of `plan` that number `number` of its run is.
Fields size_of_batch(const Fields& plan, std::int64_t number, const Place& where) {
  std::int64_t batches = 0;
  for (const Fields& size : plan.objects("batches")) {
    if (is_number(size, number)) return size;
    batches += size.whole_number("count", 0, most_batches);
  }
  throw UserError(where, "there is no batch " + std::to_string(number) + " in this run",
                  batches == 1 ? "it is made in one batch"
                               : "it is made in " + std::to_string(batches) + " batches");
}

std::set<std::string> rows_of(const Fields& size) {
  std::set<std::string> rows;
  for (const Fields& vessel : size.objects("weigh_out"))
    for (const Fields& row : vessel.objects("rows")) rows.insert(row.text("key"));
  return rows;
}

/// What somebody else changed is no batch to weigh by.
void check_frozen(const BenchBatch& batch, const std::string& mark, const Fields& fields) {
  if (mark != batch.mark)
    throw UserError(fields.place("mark"), "does not fit the plan that was frozen with it",
                    "look who changed it");
  for (const auto& [key, when] : batch.ticks)
    if (!batch.rows.contains(key))
      throw UserError(fields.place("ticks"), "has \"" + key + "\", which is not to be weighed",
                      "look who changed it");
}

}  // namespace

void freeze(BenchBatch& batch, const Fields& plan, const Place& where) {
  const Fields size = size_of_batch(plan, batch.number, where);
  batch.mark = size.text("mark");
  batch.rows = rows_of(size);
  batch.plan = plan.json();
}

Json bench_json(const BenchBatch& batch, bool has_plan) {
  Json json = {{"id", batch.id}, {"run", batch.run}};
  if (batch.run_id) json["run_id"] = *batch.run_id;
  json["batch"] = batch.number;
  json["begun_at"] = batch.begun_at;
  if (batch.finished_at) json["finished_at"] = *batch.finished_at;
  json["ticks"] = batch.ticks;
  if (batch.weigh_cup) json["weigh_cup"] = *batch.weigh_cup;
  json["mark"] = batch.mark;
  if (has_plan) json["plan"] = Json::parse(batch.plan);
  return json;
}

std::string kept_text(const BenchBatch& batch) {
  Json json = {{"schema", schemas::bench().today()}};
  json.update(bench_json(batch));
  return json.dump(-1, ' ', false, Json::error_handler_t::replace) + "\n";
}

BenchBatch read_bench_batch(const std::string& text, const std::string& file) {
  const Fields fields = Fields::parse(text, file);
  fields.of(schemas::bench());
  BenchBatch batch{.id = fields.uuid("id"), .run = fields.text("run")};
  if (fields.has("run_id")) batch.run_id = fields.uuid("run_id");
  batch.number = fields.whole_number("batch", 1, most_batches);
  batch.begun_at = moment(fields, "begun_at");
  if (fields.has("finished_at")) batch.finished_at = moment(fields, "finished_at");
  const Fields ticks = fields.object("ticks");
  for (const std::string& key : ticks.keys()) batch.ticks.emplace(key, moment(ticks, key));
  batch.weigh_cup = fields.optional_text("weigh_cup");
  const std::string mark = fields.text("mark");
  freeze(batch, fields.object("plan"), fields.place("batch"));
  fields.refuse_unknown();
  check_frozen(batch, mark, fields);
  return batch;
}

}  // namespace brimwright::desk
