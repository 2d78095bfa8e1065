#include "desk/reception.h"

#include "desk/answers.h"
#include "desk/bench_keeping.h"
#include "desk/record_version.h"
#include "desk/secret.h"
#include "units/user_error.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <atomic>
#include <charconv>
#include <exception>
#include <filesystem>
#include <optional>
#include <set>
#include <utility>
#include <vector>

namespace brimwright::desk {

using Json = nlohmann::ordered_json;
using Clock = std::chrono::steady_clock;

namespace {

constexpr std::string_view api = "/api/", changed_path = "/api/changed", mesh_path = "/api/mesh";
constexpr std::uint64_t longest_mesh = std::uint64_t{200} << 20;

HttpAnswer nothing_there(const std::string& remedy) {
  return refusal(404, "", "there is nothing by that name", remedy);
}

std::string value_of(const HttpHead& head, const std::string& name) {
  const auto at = head.query.find(name);
  return at == head.query.end() ? std::string() : at->second;
}

std::chrono::seconds wait_of(const HttpHead& head) {
  constexpr int longest = 20;
  const auto at = head.query.find("wait");
  if (at == head.query.end()) return std::chrono::seconds(longest);
  int seconds = 0;
  const char* const end = at->second.data() + at->second.size();
  const auto [stop, error] = std::from_chars(at->second.data(), end, seconds);
  if (error != std::errc() || stop != end || seconds < 0)
    throw UserError({"", "wait"}, "\"" + at->second + "\" is not a number of seconds",
                    "give 0 to 20, or leave it out");
  return std::chrono::seconds(std::min(seconds, longest));
}

/// Each "MARK:NAME" with what stands there: of a "file:" the version known of it, empty for one
/// that was not there.
std::vector<std::pair<std::string, std::string>> marked_in(const HttpHead& head,
                                                           std::string_view mark) {
  std::vector<std::pair<std::string, std::string>> files;
  for (const auto& [name, value] : head.query)
    if (name.starts_with(mark)) files.emplace_back(name.substr(mark.size()), value);
  return files;
}

/// What has changed, and names of nothing that may be read.
struct Looked {
  Json changed = Json::object(), unreadable = Json::array();
};

Looked looked_at(const Workspace& workspace,
                 const std::vector<std::pair<std::string, std::string>>& known) {
  Looked looked;
  for (const auto& [file, version] : known) try {
      const auto now = workspace.version(file);
      if (now.value_or("") != version) looked.changed[file] = now ? Json(*now) : Json(nullptr);
    } catch (const UserError&) {
      looked.unreadable.push_back(file);
    }
  return looked;
}

/// Of a file that may be read.
std::optional<std::string> folder_of(const Workspace& workspace, const std::string& file) try {
  const std::filesystem::path path = workspace.path_to_read(file, false);
  return path.has_parent_path() ? path.parent_path().string() : ".";
} catch (const UserError&) {
  return std::nullopt;
}

/// The version of what is recorded beside a run; of one that may not be read there is none.
std::string record_beside(const Workspace& workspace, const std::string& run) {
  const auto folder = folder_of(workspace, run);
  return folder ? record_version(*folder) : "none";
}

/// Of what is recorded beside all of these files; without any, in the folder itself.
std::string records_beside(const Workspace& workspace, const std::vector<std::string>& files) {
  if (files.empty()) return record_version(workspace.folder());
  std::set<std::string> folders;
  for (const std::string& file : files)
    if (auto folder = folder_of(workspace, file)) folders.insert(std::move(*folder));
  std::string versions;
  for (const std::string& folder : folders)
    versions += (versions.empty() ? "" : ",") + record_version(folder);
  return versions;
}

/// Who may not ask: another site's page, or one of another start.
std::optional<HttpAnswer> stranger(const HttpHead& head, const std::string& key) {
  if (!head.key || !is_same_secret(*head.key, key))
    return refusal(401, "X-Bench-Key", "this page belongs to an earlier start of brimwright",
                   "open the address that brimwright serve printed last");
  const bool is_ours = !head.origin || *head.origin == "http://" + head.host;
  const bool is_near = !head.fetch_site || *head.fetch_site == "same-origin";
  if (!is_ours || !is_near)
    return refusal(403, "Origin", "another website is asking",
                   "use the page that brimwright serves");
  return std::nullopt;
}

}  // namespace

/// Files that are looked at until one of them changes or the time is up.
struct Reception::Watch {
  std::vector<std::pair<std::string, std::string>> known;  // files and their versions
  std::optional<std::string> bench;   // the version known of what is kept there
  std::optional<std::string> record;  // likewise of what is recorded beside the run
  std::string run;
  std::optional<std::string> stock;  // the version known of what is recorded in the folder itself,
  std::vector<std::string> beside;   // or beside these files
  Clock::time_point end;
  Answering answer;
  std::atomic<bool> is_over = false;  // its tab has asked anew, and hears no more of this
};

HttpAnswer not_for_this_method(const std::string& path) {
  return refusal(405, "", path + " does not take this kind of request",
                 "use the page that brimwright serves");
}

Reception::Reception(const std::string& folder, const moulds::Library& library, Staff staff)
    : staff_(std::move(staff)),
      key_(new_token()),
      workspace_(folder, library),
      own_(workspace_.folder()) {}

std::variant<HttpAnswer, BodyPlan> Reception::judged(const HttpHead& head) try {
  if (!head.path.starts_with(api)) {
    if (!shared_.has(head.path)) return nothing_there("open the address as printed");
    if (head.method != "GET") return not_for_this_method(head.path);
    return BodyPlan{};
  }
  if (auto no = stranger(head, key_)) return std::move(*no);
  if (head.path == changed_path && head.method == "GET") return BodyPlan{};
  if (head.path == mesh_path && head.method == "POST")
    return BodyPlan{.most_bytes = longest_mesh, .file = uploads_.incoming(value_of(head, "name"))};
  bool has_path = head.path == changed_path || head.path == mesh_path;
  const Desk::Route* route = has_path ? nullptr : Desk::route(head.method, head.path, has_path);
  if (route) return BodyPlan{.most_bytes = route->most_body};
  if (has_path) return not_for_this_method(head.path);
  return nothing_there("use the page that brimwright serves");
} catch (const UserError& error) {
  return complaint(error);
} catch (const std::exception& error) {
  return fault(error.what());
}

void Reception::take(HttpRequest request, Answering answer) {
  if (SharedDocuments::is_path(request.head.path)) {
    auto found = shared_.at(request.head.path);
    return answer(
        found ? std::move(*found)
              : refusal(404, "", "this printout has expired", "open it again from the page"));
  }
  if (request.head.path == changed_path) return begin_watch(request.head, answer);
  if (request.head.path == mesh_path) return answer(received(request.file));
  staff_.ask(
      {.number = ++last_request_,
       .method = std::move(request.head.method),
       .path = std::move(request.head.path),
       .query = std::move(request.head.query),
       .body = std::move(request.body)},
      [this, answer = std::move(answer)](DeskAnswer made) { hand_out(std::move(made), answer); });
}

void Reception::plan_ahead() {
  const std::uint64_t second = last_request_ += 2;
  staff_.ask({.number = second - 1, .method = "GET", .path = "/api/files"},
             [this, second](const DeskAnswer& files) {
               const Json json = Json::parse(files.answer.body, nullptr, false);
               if (!json.is_object()) return;
               const Json run = json.value("open", Json());
               const Json file = run.is_string() ? run : json.value("shown_first", Json());
               if (!file.is_string()) return;
               staff_.ask({.number = second,
                           .method = "POST",
                           .path = "/api/plan",
                           .body = Json{{"file", file}}.dump()},
                          [](const DeskAnswer&) {});
             });
}

HttpAnswer Reception::received(const std::shared_ptr<IncomingFile>& file) try {
  const std::string upload = uploads_.keep(file);
  const std::filesystem::path path = file->path();
  return json_answer({{"file", upload},
                      {"name", path.filename().string()},
                      {"bytes", std::filesystem::file_size(path)}});
} catch (const std::exception& error) {
  return fault(error.what());
}

void Reception::hand_out(DeskAnswer made, const Answering& answer) {
  if (made.shared_as.empty()) return answer(std::move(made.answer));
  answer(shared(std::move(made)));
}

HttpAnswer Reception::shared(DeskAnswer made) try {
  return json_answer({{"address", shared_.share(std::move(made.answer), made.shared_as)}});
} catch (const std::exception& error) {
  return fault(error.what());
}

void Reception::begin_watch(const HttpHead& head, const Answering& answer) try {
  const auto watch = std::make_shared<Watch>();
  watch->known = marked_in(head, "file:");
  if (const auto at = head.query.find("bench"); at != head.query.end()) watch->bench = at->second;
  if (const auto at = head.query.find("record"); at != head.query.end()) watch->record = at->second;
  watch->run = value_of(head, "run");
  if (const auto at = head.query.find("stock"); at != head.query.end()) watch->stock = at->second;
  for (auto& [file, none] : marked_in(head, "beside:")) watch->beside.push_back(file);
  watch->end = Clock::now() + wait_of(head);
  watch->answer = answer;
  if (const std::string tab = value_of(head, "tab"); !tab.empty()) end_watch_of(tab, watch);
  look(watch);
} catch (const UserError& error) {
  answer(complaint(error));
}

/// A browser that gives up waiting is not heard of before something is sent to it: a tab that asks
/// anew would leave its connection taken until then.
void Reception::end_watch_of(const std::string& tab, const std::shared_ptr<Watch>& next) {
  std::erase_if(watches_, [](const auto& one) { return one.second.expired(); });
  auto& current = watches_[tab];
  if (const auto before = current.lock()) before->is_over = true;
  current = next;
}

/// A file is read whole to look at it, which is far less than planning it.
void Reception::look(const std::shared_ptr<Watch>& watch) {
  staff_.errand([this, watch] {
    try {
      const auto [changed, unreadable] = looked_at(workspace_, watch->known);
      const std::string bench = watch->bench ? bench_version(own_) : "";
      const bool has_bench_changed = watch->bench && *watch->bench != bench;
      const std::string record = watch->record ? record_beside(workspace_, watch->run) : "";
      const bool has_record_changed = watch->record && *watch->record != record;
      const std::string stock = watch->stock ? records_beside(workspace_, watch->beside) : "";
      const bool has_stock_changed = watch->stock && *watch->stock != stock;
      const bool is_at_an_end = watch->is_over || Clock::now() >= watch->end || staff_.is_closing();
      if (changed.empty() && unreadable.empty() && !has_bench_changed && !has_record_changed &&
          !has_stock_changed && !is_at_an_end)
        return staff_.later(std::chrono::milliseconds(300), [this, watch] { look(watch); });
      Json answer = {{"changed", changed}, {"unreadable", unreadable}};
      if (has_bench_changed) answer["bench"] = bench;
      if (has_record_changed) answer["record"] = record;
      if (has_stock_changed) answer["stock"] = stock;
      watch->answer(json_answer(answer));
    } catch (const std::exception& error) {
      watch->answer(fault(error.what()));
    }
  });
}

}  // namespace brimwright::desk
