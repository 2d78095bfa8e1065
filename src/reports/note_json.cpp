#include "reports/json_document.h"
#include "reports/json_numbers.h"
#include "reports/note_report.h"

#include <nlohmann/json.hpp>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;

void add(Json& json, const char* key, const std::string& text) {
  if (!text.empty()) json[key] = text;
}

Json blank_json(const records::Blank& blank, const records::Notes& notes) {
  Json json = {{"key", blank.key}};
  add(json, "of", blank.of);
  json["words"] = blank.words;
  json["kind"] = blank.kind;
  json["when"] = blank.when;
  add(json, "unit", blank.unit);
  add(json, "planned", blank.planned);
  if (!blank.choices.empty()) json["choices"] = blank.choices;
  if (const auto at = notes.all.find(blank.key); at != notes.all.end()) {
    json["noted"] = at->second.value;
    json["noted_at"] = at->second.noted_at;
  }
  return json;
}

Json row_json(const records::Blank& row, const records::Notes& notes) {
  Json json = {{"key", row.key},   {"of", row.of},     {"words", row.words},
               {"role", row.role}, {"unit", row.unit}, {"planned", row.planned}};
  if (const auto at = notes.all.find(row.key); at != notes.all.end()) {
    json["noted"] = at->second.value;
    json["noted_at"] = at->second.noted_at;
  }
  return json;
}

Json weighings_json(const std::vector<records::Weighing>& weighings) {
  Json json = Json::array();
  for (const auto& weighing : weighings)
    json.push_back({{"on", weighing.day},
                    {"pieces", weighing.pieces},
                    {"written", weighing.written},
                    {"together_g", to_decimals(weighing.together / gram, 3)}});
  return json;
}

Json begun_json(const records::Batch& batch) {
  Json json = {{"id", batch.id},
               {"code", batch.code},
               {"begun_on", batch.begun_on},
               {"begun_at", batch.begun_at},
               {"pieces", batch.pieces},
               {"program", batch.program},
               {"plan_sha256", batch.plan}};
  return json;
}

Json remarks_json(const std::vector<Remark>& remarks) {
  Json json = Json::array();
  for (const auto& remark : remarks)
    json.push_back({{"severity", name_of(remark.severity)}, {"text", remark.text}});
  return json;
}

Json lines_json(const std::vector<records::Batch>& lines) {
  Json json = Json::array();
  for (const auto& line : lines)
    json.push_back({{"id", line.id},
                    {"code", line.code},
                    {"run", line.run_name},
                    {"file", line.run_file},
                    {"number", line.number},
                    {"pieces", line.pieces}});
  return json;
}

Json batch_json(const NotedBatch& noted) {
  Json json = {{"number", noted.number},
               {"begun", noted.batch ? begun_json(*noted.batch) : Json(nullptr)},
               {"reserved_code", noted.reserved ? Json(*noted.reserved) : Json(nullptr)},
               {"poured_from", noted.poured_from.empty() ? Json(nullptr) : Json(noted.poured_from)},
               {"lines", lines_json(noted.lines)},
               {"for_sale", noted.for_sale.is}};
  add(json, "not_for_sale_because", noted.for_sale.why_not);
  json["blanks"] = Json::array();
  for (const auto& blank : noted.blanks) json["blanks"].push_back(blank_json(blank, noted.notes));
  json["cured"] = weighings_json(noted.weighings);
  json["rows"] = Json::array();
  for (const auto& row : noted.rows) json["rows"].push_back(row_json(row, noted.notes));
  json["as_weighed"] = remarks_json(noted.as_weighed);
  return json;
}

}  // namespace

std::string note_json(const NoteReport& report) {
  Json json = {{"schema", "brimwright.note/1"}, {"run", report.run}, {"file", report.file}};
  json["id"] = report.id.empty() ? Json(nullptr) : Json(report.id);
  json["run_batches"] = report.in_all ? Json(*report.in_all) : Json(nullptr);
  json["done"] = report.done;
  json["remarks"] = remarks_json(report.remarks);
  json["batches"] = Json::array();
  for (const auto& batch : report.batches) json["batches"].push_back(batch_json(batch));
  return json_document(json);
}

}  // namespace brimwright::reports
