#pragma once

#include "desk/desk.h"
#include "desk/own_folder.h"
#include "desk/request.h"
#include "desk/shared_documents.h"
#include "desk/uploads.h"
#include "desk/workspace.h"

#include <chrono>
#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <string>
#include <string_view>
#include <variant>

namespace brimwright::desk {

/// What a reception has done by others.
struct Staff {
  /// A desk's answer to a request, whenever it comes.
  std::function<void(DeskRequest, std::function<void(DeskAnswer)>)> ask;
  /// Work that reads files, off the thread that serves.
  std::function<void(std::function<void()>)> errand;
  /// Calls again after a pause.
  std::function<void(std::chrono::milliseconds, std::function<void()>)> later;
  std::function<bool()> is_closing;
};

/// Takes what the page asks, apart from how it comes here: lets in who has this start's key,
/// answers what needs no looking into (a shared document, a mesh that arrives, whether files have
/// changed), and gives the rest to a desk.
class Reception {
 public:
  /// UserError if `folder` is not one.
  Reception(const std::string& folder, const moulds::Library& library, Staff staff);

  const std::string& key() const { return key_; }
  const std::string& folder() const { return workspace_.folder(); }
  const std::string& uploads_folder() const { return uploads_.folder(); }

  /// From the head alone: a refusal, or what body may come. Never throws.
  std::variant<HttpAnswer, BodyPlan> judged(const HttpHead& head);
  /// Of a request that was let in. From one thread.
  void take(HttpRequest request, Answering answer);
  /// Has the run planned that the page is likely to open first, so that what takes a while the
  /// first time is known by then. Before the first `take`.
  void plan_ahead();
  /// Removes what the page has sent.
  void clear_up() { uploads_.remove_all(); }

 private:
  struct Watch;

  HttpAnswer received(const std::shared_ptr<IncomingFile>& file);
  void hand_out(DeskAnswer made, const Answering& answer);
  HttpAnswer shared(DeskAnswer made);
  void begin_watch(const HttpHead& head, const Answering& answer);
  void end_watch_of(const std::string& tab, const std::shared_ptr<Watch>& next);
  void look(const std::shared_ptr<Watch>& watch);

  Staff staff_;
  std::string key_;
  Workspace workspace_;  // for names and versions: what is in the files, a desk reads
  OwnFolder own_;        // for whether something was kept there
  Uploads uploads_;
  SharedDocuments shared_;
  std::map<std::string, std::weak_ptr<Watch>> watches_;  // the one of each tab
  std::uint64_t last_request_ = 0;
};

/// A path that is not asked for by this method.
HttpAnswer not_for_this_method(const std::string& path);

}  // namespace brimwright::desk
