#include "reports/days_report.h"
#include "reports/json_document.h"
#include "reports/json_numbers.h"
#include "reports/lye_report.h"
#include "reports/plan_words.h"

#include <nlohmann/json.hpp>

#include <array>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;
using days::Day;

Json date_json(const std::optional<Day>& day) {
  return day ? Json(iso_date(std::chrono::year_month_day(*day))) : Json(nullptr);
}

double minutes(std::chrono::seconds time) {
  return to_decimals(static_cast<double>(time.count()) / 60, 2);
}

Json asked_json(const DaysReport::Asked& asked) {
  Json lines = Json::array();
  for (const auto& one : asked.lines)
    lines.push_back({{"runs", one.files},
                     {"name", one.name},
                     {"moulds", one.moulds},
                     {"sell", one.sell},
                     {"make", one.make},
                     {"batches", one.batches},
                     {"batch_limits", one.batch_limits}});
  Json json = {
      {"file", asked.file},
      {"name", asked.name},
      {"due", date_json(asked.due)},
      {"kept", asked.due ? Json(!asked.is_late) : Json(nullptr)},
      {"pieces", asked.pieces},
      {"in_time", asked.due ? Json(asked.is_late ? asked.in_time : asked.pieces) : Json(nullptr)},
      {"rest_on", date_json(asked.rest)},
      {"last_making_day", date_json(asked.last_making_day)},
      {"lines", lines},
      {"ready", asked.is_order ? ready_json(asked.ready) : Json(nullptr)}};
  if (!asked.id.empty()) json["id"] = asked.id;
  return json;
}

std::chrono::seconds used(const std::vector<DayEntry>& entries, Day day) {
  std::chrono::seconds time{};
  for (const auto& entry : entries)
    if (entry.day == day) time += entry.time;
  return time;
}

Json acts_json(const DaysReport& report) {
  const auto entries = entries_of(report);
  Json list = Json::array();
  std::optional<Day> day;
  for (const auto& entry : entries) {
    if (day != entry.day)
      list.push_back({{"day", date_json(entry.day)},
                      {"hours_min", minutes(report.studio.calendar.hours(entry.day))},
                      {"used_min", minutes(used(entries, entry.day))},
                      {"off", report.studio.calendar.is_off(entry.day)},
                      {"acts", Json::array()}});
    day = entry.day;
    Json act = {{"act", name_of(entry.act)}, {"key", entry.key},
                {"of", entry.asked},         {"text", entry.text},
                {"runs", entry.files},       {"batches", entry.batches},
                {"pieces", entry.pieces},    {"min", minutes(entry.time)}};
    if (!entry.caution.empty()) act["caution"] = entry.caution;
    list.back()["acts"].push_back(std::move(act));
  }
  return list;
}

/// Each day from the first on which something is done to the last.
Json calendar_json(const DaysReport& report) {
  const auto entries = entries_of(report);
  Json list = Json::array();
  for (Day day = entries.front().day; day <= entries.back().day; day += std::chrono::days(1))
    list.push_back({{"day", date_json(day)},
                    {"hours_min", minutes(report.studio.calendar.hours(day))},
                    {"used_min", minutes(used(entries, day))},
                    {"off", report.studio.calendar.is_off(day)}});
  return list;
}

Json batches_json(const DaysReport& report) {
  Json list = Json::array();
  for (const auto& one : report.schedule.batches) {
    const auto& delivery = report.deliveries[one.delivery];
    const auto& line = delivery.lines[one.line];
    list.push_back({{"of", delivery.asked},
                    {"runs", report.asked[delivery.asked].lines[one.line].files},
                    {"batch", line.batches[one.batch].number},
                    {"pieces", line.batches[one.batch].pieces},
                    {"moulds", report.asked[delivery.asked].lines[one.line].moulds},
                    {"poured", date_json(one.poured)},
                    {"unmoulded", date_json(one.unmoulded)},
                    {"cured", date_json(one.cured)}});
  }
  return list;
}

std::string name_of(planning::PotOfBatch::For of) {
  using For = planning::PotOfBatch::For;
  if (of == For::all) return "all";
  return of == For::base ? "base" : "topping";
}

Json lye_json(const DaysReport::Lye& lye, const DaysReport& report) {
  Json batches = Json::array(), remarks = Json::array();
  for (const std::size_t b : lye.batches()) {
    const auto& one = report.schedule.batches[b];
    const auto& delivery = report.deliveries[one.delivery];
    Json shares = Json::array();  // of the pot, by their places there
    for (std::size_t s = 0; s < lye.shares.size(); ++s)
      if (lye.shares[s].batch == b) shares.push_back(s);
    batches.push_back({{"of", delivery.asked},
                       {"runs", report.asked[delivery.asked].lines[one.line].files},
                       {"batch", delivery.lines[one.line].batches[one.batch].number},
                       {"shares", std::move(shares)}});
  }
  for (const Remark& remark : remarks_of(lye))
    remarks.push_back({{"severity", name_of(remark.severity)}, {"text", remark.text}});
  return {{"made", date_json(lye.made)},
          {"poured", date_json(report.schedule.batches[lye.shares.front().batch].poured)},
          {"lye_of", name_of(lye.of)},
          {"for", whom_for(lye, report)},
          {"batches", batches},
          {"pot", pot_json(lye.pot, lye.heat)},
          {"cautions", remarks}};
}

Json what_if_json(const DaysReport::WhatIf& one) {
  return {{"limit", one.limit},
          {"text", one.text},
          {"keeps_due", one.keeps},
          {"latest_start", date_json(one.start)},
          {"promise", date_json(one.promise)},
          {"proved", one.is_proved}};
}

Json lack_json(const DayLack& lack) {
  Json json = {{"severity", name_of(lack.severity)}, {"text", words_of(lack)}};
  if (!lack.is_of_studio) return json;
  std::string field;
  for (const std::string& key : lack.keys) field += "/" + key;
  json["field"] = field;
  return json;
}

}  // namespace

std::string days_json(const DaysReport& report) {
  Json json = {{"schema", "brimwright.days/1"},
               {"studio", report.studio_file},
               {"from", date_json(report.from)},
               {"kept", report.is_due ? Json(report.is_kept) : Json(nullptr)},
               {"latest_start",
                date_json(report.is_kept ? std::optional(report.schedule.begin) : std::nullopt)},
               {"latest_start_proved", report.is_kept && report.schedule.is_proved},
               {"promise", date_json(report.promise)},
               {"promise_proved", report.is_promise_proved},
               {"in_time_proved", report.is_due && !report.is_kept && report.is_parting_proved}};
  for (const auto& asked : report.asked) json["asked"].push_back(asked_json(asked));
  json["days"] = acts_json(report);
  json["calendar"] = calendar_json(report);
  json["batches"] = batches_json(report);
  json["lyes"] = Json::array();
  for (const auto& one : report.lyes) json["lyes"].push_back(lye_json(one, report));
  json["what_if"] = Json::array();
  for (const auto& one : report.what_ifs) json["what_if"].push_back(what_if_json(one));
  json["extras"] = Json::array();
  for (const auto& one : report.extras)
    json["extras"].push_back(
        {{"run", one.run}, {"batch", one.batch}, {"mould", one.mould}, {"cavities", one.cavities}});
  json["notes"] = Json::array();
  for (const Remark& note : report.notes)
    json["notes"].push_back({{"severity", name_of(note.severity)}, {"text", note.text}});
  for (const DayLack& lack : report.lacks) json["notes"].push_back(lack_json(lack));
  return json_document(json);
}

}  // namespace brimwright::reports
