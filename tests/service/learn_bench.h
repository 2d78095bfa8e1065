#pragma once

// Batches of a run in a folder of their own, made and noted, and what is learned of them.

#include "records/act.h"
#include "records/batches.h"
#include "records/noting.h"
#include "records/records.h"
#include "schemas/tidying.h"
#include "service/service.h"
#include "units/fields.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <string>
#include <utility>
#include <vector>

namespace brimwright::service {

namespace fs = std::filesystem;
using Json = nlohmann::json;

/// A folder with plain bars to be made, a mould of her own, and batches of them with their notes.
class Bench {
 public:
  Bench() : folder_(fs::temp_directory_path() / ("learn" + std::to_string(getpid()))) {
    fs::remove_all(folder_);
    fs::create_directories(folder_);
    fs::copy(source() / "examples/meadow_base.formula.json", folder_);
    fs::copy(source() / "moulds/plain_bar.json", folder_ / "my_bar.json");
    Json run = example("plain_bars.run.json");
    run["pour"]["mould"] = "my_bar.json";
    run["losses"] = {
        {"pour", {{"overpour", "0 %"}, {"pot", "20 g"}, {"jugs", "0 g"}, {"test_piece", "0 g"}}}};
    put("bars.run.json", run);
  }
  ~Bench() { fs::remove_all(folder_); }
  Bench(const Bench&) = delete;
  Bench& operator=(const Bench&) = delete;

  static fs::path source() { return BRIMWRIGHT_SOURCE_DIR; }
  static Json example(const std::string& name) {
    return Json::parse(text_of_file((source() / "examples" / name).string()));
  }
  std::string file(const std::string& name) const { return (folder_ / name).string(); }
  Json read(const std::string& name) const { return Json::parse(text_of_file(file(name))); }
  void put(const std::string& name, const Json& json) const {
    std::ofstream(file(name)) << json.dump(2) << "\n";
  }
  void learn_of(std::string run) { run_ = std::move(run); }
  moulds::Library library() const { return {.shipped = source().string(), .folders = {}}; }

  Reply ask(const Request& request) const { return answer(request, library()); }
  Json plan() const {
    PlanRequest request;
    request.file = file(run_);
    const Reply reply = ask({.what = request, .form = Form::json});
    REQUIRE(reply.complaint == "");
    return Json::parse(reply.document);
  }
  LearnRequest request() const {
    LearnRequest request;
    request.file = file(run_);
    request.today = "2026-12-01";
    return request;
  }
  Reply take(const std::string& figure) const {
    LearnRequest asked = request();
    asked.take = figure;
    return ask({.what = asked});
  }
  Reply undo(const std::string& figure) const {
    LearnRequest asked = request();
    asked.undo = figure;
    return ask({.what = asked});
  }
  Json learned() const {
    const Reply reply = ask({.what = request(), .form = Form::json});
    REQUIRE(reply.complaint == "");
    return Json::parse(reply.document);
  }
  Json figure(const std::string& name) const {
    const Json all = learned();
    for (const Json& one : all["figures"])
      if (one["name"] == name) return one;
    return nullptr;
  }
  void keep(const Reply& reply) const {
    REQUIRE(reply.complaint == "");
    for (const MadeFile& made : reply.files) std::ofstream(made.name) << made.bytes;
  }

  /// A batch made on a day of spring 2026, with notes by their keys.
  void made(int number, const std::vector<std::pair<std::string, std::string>>& notes) const {
    const Json answer = plan();
    auto records = records::Records::kept_in(folder_.string());
    records::Act act(records, schemas::new_id(), "2026-12-01T12:00:00+00:00", "test", "{}");
    const auto batch =
        records::begin_batch(records,
                             {.id = schemas::new_id(),
                              .run = "file:" + run_,
                              .run_file = run_,
                              .run_name = "bars",
                              .number = 1,
                              .begun_on = "2026-0" + std::to_string(3 + number / 20) + "-" +
                                          std::to_string(10 + number % 20),
                              .begun_at = "2026-12-01T12:00:00+00:00",
                              .pieces = answer["pieces"]["make"],
                              .program = "test",
                              .plan = answer.dump(),
                              .sources = sources_},
                             {});
    std::vector<records::Note> changes;
    for (const auto& [key, value] : notes) changes.push_back({key, value, {}});
    records::note(records, batch, changes,
                  {.today = "2026-12-01", .noted_at = "2026-12-01T12:00:00+00:00"});
    act.done();
  }
  /// Files of this folder that the batches from now on keep as what they were made from.
  void made_from(const std::vector<std::string>& names) {
    sources_.clear();
    for (const std::string& name : names)
      sources_.push_back({.path = name, .text = text_of_file(file(name)), .sha256 = {}});
  }

 private:
  fs::path folder_;
  std::string run_ = "bars.run.json";
  std::vector<records::Source> sources_ = {};
};

/// So many grams, as they are noted.
inline std::string grams(double grams) { return std::to_string(grams) + " g"; }

}  // namespace brimwright::service
