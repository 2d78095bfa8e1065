#include "records/batches.h"

#include "records/batch_code.h"
#include "records/database.h"
#include "records/documents.h"
#include "records/records.h"

#include <nlohmann/json.hpp>

#include <utility>

namespace brimwright::records {
namespace {

using Json = nlohmann::ordered_json;

const std::string columns =
    "SELECT id, code, run, run_file, run_name, number, begun_on, begun_at, pieces, program, plan, "
    "sources, finished_at FROM batch ";

Batch batch_in(SQLite::Statement& row) {
  Batch batch{.id = row.getColumn(0).getString(),
              .code = row.getColumn(1).getString(),
              .run = row.getColumn(2).getString(),
              .run_file = row.getColumn(3).getString(),
              .run_name = row.getColumn(4).getString(),
              .number = row.getColumn(5).getInt64(),
              .begun_on = row.getColumn(6).getString(),
              .begun_at = row.getColumn(7).getString(),
              .pieces = row.getColumn(8).getInt64(),
              .program = row.getColumn(9).getString(),
              .plan = row.getColumn(10).getString(),
              .sources = row.getColumn(11).getString()};
  if (!row.getColumn(12).isNull()) batch.finished_at = row.getColumn(12).getString();
  return batch;
}

template <class... Values>
std::vector<Batch> found(const Records& records, const std::string& rest, const Values&... values) {
  return told(records.path(), [&] {
    SQLite::Statement find(records.database().connection(), columns + rest);
    if constexpr (sizeof...(values) > 0) SQLite::bind(find, values...);
    std::vector<Batch> all;
    while (find.executeStep()) all.push_back(batch_in(find));
    return all;
  });
}

template <class... Values>
std::optional<Batch> first_found(const Records& records, const std::string& rest,
                                 const Values&... values) {
  auto all = found(records, rest + " LIMIT 1", values...);
  if (all.empty()) return std::nullopt;
  return std::move(all.front());
}

std::string sources_text(const std::vector<Source>& sources) {
  Json json = Json::array();
  for (const Source& source : sources) {
    json.push_back({{"path", source.path}});
    if (source.text) json.back()["text"] = *source.text;
    if (source.sha256) json.back()["sha256"] = *source.sha256;
  }
  return json.dump();
}

}  // namespace

Batch begin_batch(Records& records, const Beginning& beginning, const Place& code_at) {
  const Beginning& b = beginning;
  Batch batch{.id = b.id,
              .code = taken_code(records, b.run, b.number, b.begun_on, b.code, code_at),
              .run = b.run,
              .run_file = b.run_file,
              .run_name = b.run_name,
              .number = b.number,
              .begun_on = b.begun_on,
              .begun_at = b.begun_at,
              .pieces = b.pieces,
              .program = b.program,
              .plan = keep_document(records, b.plan),
              .sources = keep_document(records, sources_text(b.sources))};
  told(records.path(), [&] {
    SQLite::Statement put(
        records.database().connection(),
        "INSERT INTO batch (id, code, run, run_file, run_name, number, begun_on, begun_at, pieces, "
        "program, plan, sources, act) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, "
        "(SELECT max(number) FROM act))");
    SQLite::bind(put, batch.id, batch.code, batch.run, batch.run_file, batch.run_name, batch.number,
                 batch.begun_on, batch.begun_at, batch.pieces, batch.program, batch.plan,
                 batch.sources);
    put.exec();
  });
  return batch;
}

Batch with_code(Records& records, const Batch& batch, const std::string& code,
                const std::string& day, const Place& code_at) {
  give_code(records, batch.run, batch.number, day, code, code_at);
  told(records.path(), [&] {
    SQLite::Statement put(records.database().connection(),
                          "UPDATE batch SET code = ? WHERE id = ?");
    SQLite::bind(put, code, batch.id);
    put.exec();
  });
  Batch renamed = batch;
  renamed.code = code;
  return renamed;
}

std::vector<Batch> batches(const Records& records) {
  return found(records, "ORDER BY begun_on, code");
}

std::vector<Batch> batches_of(const Records& records, const std::string& run) {
  return found(records, "WHERE run = ? ORDER BY begun_on, code", run);
}

std::optional<Batch> batch_called(const Records& records, const std::string& code) {
  return first_found(records, "WHERE code = ?", code);
}

std::optional<Batch> batch_of_id(const Records& records, const std::string& id) {
  return first_found(records, "WHERE id = ?", id);
}

std::optional<Batch> newest_batch(const Records& records, const std::string& run,
                                  std::int64_t number) {
  return first_found(records, "WHERE run = ? AND number = ? ORDER BY act DESC", run, number);
}

std::string plan_of(const Records& records, const Batch& batch) {
  return document(records, batch.plan);
}

std::vector<Source> sources_of(const Records& records, const Batch& batch) {
  return sources_of(records, batch.sources);
}

std::vector<Source> sources_of(const Records& records, const std::string& hash) {
  const Json json = Json::parse(document(records, hash));
  std::vector<Source> sources;
  for (const Json& one : json) {
    sources.push_back({.path = one.at("path").get<std::string>()});
    if (one.contains("text")) sources.back().text = one["text"].get<std::string>();
    if (one.contains("sha256")) sources.back().sha256 = one["sha256"].get<std::string>();
  }
  return sources;
}

}  // namespace brimwright::records
