#include "reports/workings_json.h"

#include "reports/json_document.h"
#include "reports/workings_report.h"

#include <nlohmann/json.hpp>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;

Json given_json(const Given& given) {
  Json json = {{"name", given.name}, {"value", given.value}};
  if (!given.from.empty()) json["from"] = given.from;
  return json;
}

Json working_json(const Working& working) {
  Json json = {{"of", working.of}, {"formula", working.formula}, {"with", Json::array()}};
  for (const Given& given : working.with) json["with"].push_back(given_json(given));
  if (!working.sum.empty()) json["sum"] = working.sum;
  if (!working.rounded.empty()) json["rounded"] = working.rounded;
  if (!working.comes_to.empty()) json["comes_to"] = working.comes_to;
  json["sources"] = working.sources;
  return json;
}

}  // namespace

Json how_json(const std::vector<Working>& workings) {
  Json how = Json::array();
  for (const Working& working : workings) how.push_back(working_json(working));
  return how;
}

std::string workings_json(const std::string& run, const std::vector<Working>& workings) {
  return json_document(
      {{"schema", "brimwright.explain/1"}, {"run", run}, {"how", how_json(workings)}});
}

}  // namespace brimwright::reports
