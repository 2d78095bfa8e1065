#include "desk/answers.h"
#include "desk/desk.h"
#include "desk/desk_parts.h"
#include "desk/record_version.h"
#include "desk/weighed.h"
#include "service/pouring_orders.h"
#include "units/present_moment.h"

#include <nlohmann/json.hpp>

#include <cstdint>
#include <filesystem>
#include <utility>

namespace brimwright::desk {

using Json = nlohmann::ordered_json;

namespace {

constexpr std::int64_t most_batches = 1'000'000;

std::string folder_of(const std::string& path) {
  const std::filesystem::path folder = std::filesystem::path(path).parent_path();
  return folder.empty() ? "." : folder.string();
}

/// The page's own words for what the command line is told by options.
UserTerms record_terms() {
  UserTerms terms = page_terms();
  terms.say = [say = terms.say](const Answer& answer) {
    if (answer.member == "begin") return std::string("the word that its lye is mixed");
    return say(answer);
  };
  return terms;
}

void date(service::NoteRequest& request) {
  request.now = present_moment_with_offset();
  request.today = request.now.substr(0, 10);
}

service::NoteRequest dated(const std::string& path) {
  service::NoteRequest request;
  request.file = path;
  request.program = BRIMWRIGHT_VERSION;
  date(request);
  return request;
}

/// Nothing is null.
std::string note_at(const Fields& fields, const std::string& key) {
  return fields.is_null(key) ? "" : fields.text(key);
}

std::vector<std::string> texts_at(const Fields& fields, const std::string& key) {
  return fields.has(key) ? fields.texts(key) : std::vector<std::string>();
}

/// The order that waits to pour the run together with others, before any of it is weighed.
Json poured_by(const std::string& run, const service::NoteRequest& note,
               const moulds::Library& library) {
  const auto orders = service::pouring_orders(note.file, note.today, library).all;
  if (orders.empty()) return nullptr;
  const std::filesystem::path name = std::filesystem::path(orders.front().file).filename();
  return {{"order", (std::filesystem::path(run).parent_path() / name).string()},
          {"words", service::pouring_words(orders)}};
}

void count_noted(Json& record) {
  for (Json& batch : record["batches"]) {
    std::size_t noted = batch["cured"].size();
    for (const char* list : {"blanks", "rows"})
      for (const Json& blank : batch[list]) noted += blank.contains("noted") ? 1 : 0;
    batch["noted"] = noted;
  }
}

/// What may be noted of a batch takes hundreds of lines, and a run may have been made very often.
void leave_out_others(Json& record, const std::string& chosen) {
  Json& batches = record["batches"];
  std::size_t shown = batches.empty() ? 0 : batches.size() - 1;
  for (std::size_t i = 0; i < batches.size(); ++i)
    if (batches[i]["begun"]["id"] == chosen) shown = i;
  for (std::size_t i = 0; i < batches.size(); ++i) {
    if (i == shown) continue;
    batches[i].erase("blanks");
    batches[i].erase("cured");
    batches[i].erase("rows");
  }
}

}  // namespace

/// The version is of before what it is the version of.
DeskAnswer Desk::record(const DeskRequest& request, Budget budget) const {
  const std::string file = asked(request, "run");
  if (bench_run(file).is_built_in)
    return {json_answer({{"version", "none"},
                         {"record", {{"batches", Json::array()}, {"run_batches", nullptr}}},
                         {"poured_by", nullptr}})};
  const std::string path = path_for(file, false);
  const std::string version = record_version(folder_of(path));
  service::NoteRequest note = dated(path);
  if (const auto word = request.query.find("together"); word != request.query.end())
    note.together = word->second;
  DeskAnswer answer = noted(note, {}, budget);
  if (answer.answer.status != 200) return answer;
  Json json = Json::parse(answer.answer.body);
  const auto chosen = request.query.find("batch");
  leave_out_others(json["record"], chosen == request.query.end() ? "" : chosen->second);
  json["version"] = version;
  json["poured_by"] = note.together ? Json(nullptr) : poured_by(file, note, library_);
  return {json_answer(json)};
}

DeskAnswer Desk::noted(const service::NoteRequest& request, const service::ShownBatch& shown,
                       Budget budget) const {
  moulds::Library library = library_;
  library.only_remembered = budget == Budget::quick;
  const service::Reply reply =
      service::answer(request, shown, record_terms(), library, {.memory = &memory_});
  if (reply.status == service::Status::not_yet) throw NeedsSlowQueue{};
  if (reply.status != service::Status::done) return {refused(reply)};
  Json record = Json::parse(reply.document);
  count_noted(record);
  return {json_answer({{"record", std::move(record)}})};
}

/// What is recorded are the weights that the bench has frozen, or freezes now. A batch at the bench
/// is one act: however often and from wherever it is asked, it has one record. The base of lines
/// that are poured together is never at the bench: it is frozen at once, and the act is the
/// asker's.
DeskAnswer Desk::begin_record(const DeskRequest& request, Budget budget) const {
  const Fields fields = fields_of(request);
  service::NoteRequest note = dated("");
  note.begin = true;
  note.code = fields.optional_text("code");
  note.again = fields.has("again") && fields.truth("again");
  note.confirmed = texts_at(fields, "confirmed");
  note.lots = texts_at(fields, "lot");
  note.beyond_stock = texts_at(fields, "beyond-stock");
  note.together = fields.optional_text("together");
  if (note.together) {
    note.file = path_for(fields.text("run"), false);
    note.batch = std::to_string(fields.whole_number("batch", 1, most_batches));
    note.act = fields.uuid("act");
    fields.refuse_unknown();
    return noted(note, {}, budget);
  }
  const Weighed asked(fields, true);
  const BenchRun run = bench_run(asked.file);
  note.file = path_for(asked.file, false);
  note.batch = std::to_string(asked.batch);
  const auto look = [&](const BenchBatch& batch) {
    check_mark(batch, asked.seen);
    note.act = batch.id;
  };
  if (!bench_.change(run, asked.batch, look)) {
    DeskAnswer frozen = weighed(asked, look, budget);
    if (frozen.answer.status != 200) return frozen;
  }
  date(note);  // the record never begins before what it is of
  return noted(note, {.mark = asked.seen}, budget);
}

DeskAnswer Desk::note(const DeskRequest& request, Budget budget) const {
  const Fields fields = fields_of(request);
  service::NoteRequest note = dated(path_for(fields.text("run"), false));
  note.together = fields.optional_text("together");
  service::ShownBatch shown{.id = fields.uuid("batch")};
  note.act = fields.uuid("act");
  note.code = fields.optional_text("code");
  note.confirmed = texts_at(fields, "confirmed");
  note.beyond_stock = texts_at(fields, "beyond-stock");
  if (const auto set = fields.optional_object("set"))
    for (const std::string& key : set->keys()) note.set.push_back(key + "=" + note_at(*set, key));
  if (const auto seen = fields.optional_object("seen"))
    for (const std::string& key : seen->keys()) shown.seen.emplace(key, note_at(*seen, key));
  fields.refuse_unknown();
  return noted(note, shown, budget);
}

}  // namespace brimwright::desk
