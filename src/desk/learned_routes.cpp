#include "desk/answers.h"
#include "desk/desk.h"
#include "desk/desk_parts.h"
#include "desk/record_version.h"
#include "units/present_moment.h"

#include <nlohmann/json.hpp>

#include <filesystem>
#include <utility>

namespace brimwright::desk {

using Json = nlohmann::ordered_json;
namespace fs = std::filesystem;

namespace {

/// What the page calls a file, and all that is said of it.
std::string without_folder(std::string text, const std::string& folder) {
  const std::string before = folder + "/";
  for (auto at = text.find(before); at != std::string::npos; at = text.find(before, at))
    text.erase(at, before.size());
  return text;
}

/// The page has a button for it.
UserTerms learned_terms() {
  UserTerms terms = page_terms();
  terms.say = [say = terms.say](const Answer& answer) {
    if (answer.member == "take") return std::string("\"Take it\"");
    if (answer.member == "undo") return std::string("\"Take back\"");
    return say(answer);
  };
  return terms;
}

service::LearnRequest asked_today(const std::string& path) {
  service::LearnRequest request;
  request.file = path;
  request.today = present_moment().substr(0, 10);
  return request;
}

Overtaken changed_meanwhile(const std::string& file) {
  return {{"", "version"},
          "\"" + file + "\" was changed meanwhile, so nothing was written",
          "look at what is in it now, then take it"};
}

}  // namespace

/// The version is of before what it is the version of; so are those of the files that figures stand
/// in. Where nothing is recorded, there is nothing to tell.
DeskAnswer Desk::learned(const DeskRequest& request, Budget budget) const {
  const std::string file = asked(request, "run");
  const auto nothing = [](const std::string& version) {
    return DeskAnswer{
        json_answer({{"version", version}, {"learned", nullptr}, {"versions", Json::object()}})};
  };
  if (bench_run(file).is_built_in) return nothing("none");
  const std::string path = path_for(file, false), folder = workspace_.folder();
  const std::string version = record_version(fs::path(path).parent_path().string());
  if (version == "none") return nothing(version);
  const HttpAnswer answer =
      served({asked_today(path), service::Form::json, learned_terms()}, budget);
  if (answer.status != 200) return {answer};
  Json json = {{"version", version},
               {"learned", Json::parse(without_folder(answer.body, folder))},
               {"versions", Json::object()}};
  for (const Json& figure : json["learned"]["figures"]) {
    if (figure["in_file"].is_null() || figure["in_file"].contains("refused")) continue;
    const auto name = figure["in_file"]["file"].get<std::string>();
    if (const auto now = workspace_.version(name)) json["versions"][name] = *now;
  }
  return {json_answer(json)};
}

/// Nothing is written unless the file still is what she saw.
DeskAnswer Desk::take_learned(const DeskRequest& request, Budget budget) const {
  const Fields fields = fields_of(request);
  service::LearnRequest learn = asked_today(path_for(fields.text("run"), false));
  const std::string name = fields.text("file"), version = fields.text("version");
  learn.take = fields.optional_text("take");
  learn.undo = fields.optional_text("undo");
  fields.refuse_unknown();
  if (learn.take.has_value() == learn.undo.has_value())
    throw UserError(fields.place(), "neither takes nor undoes a figure, or does both",
                    R"(give one of "take" and "undo")");
  if (workspace_.version(name) != version) throw changed_meanwhile(name);
  service::Reply reply = replied({learn, service::Form::text, learned_terms()}, budget);
  if (reply.status != service::Status::done) return {refused(reply)};
  const auto& [path, text] = reply.files.front();
  const std::string written =
      fs::path(path).lexically_relative(workspace_.folder()).generic_string();
  if (written != name) throw changed_meanwhile(name);
  const auto saved = workspace_.save(name, version, text, {});
  if (!saved.is_saved) throw changed_meanwhile(name);
  return {json_answer(
      {{"file", name}, {"version", saved.present->version}, {"text", saved.present->text}})};
}

}  // namespace brimwright::desk
