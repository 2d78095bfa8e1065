#pragma once

#include "desk/bench_keeping.h"
#include "desk/desk_request.h"
#include "desk/uploads.h"
#include "desk/workspace.h"
#include "service/service.h"
#include "service/shown_batch.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace brimwright::desk {

/// What is asked of the server, apart from how it is asked; see web/server.h, where it is told.
/// Used by several threads at once.
class Desk {
 public:
  /// `memory`, where what was measured is kept from one request to the next, outlives it.
  Desk(moulds::Library library, service::MeasureMemory& memory, Workspace& workspace,
       UploadFolder uploads, std::optional<std::string> open);

  struct Route {
    std::string_view method, path;
    std::uint64_t most_body;
    Budget from_the_start;  // quick: first tried so
    DeskAnswer (Desk::*act)(const DeskRequest&, Budget) const;
  };
  /// Nothing if there is none for this method; `has_path` tells whether there is for another.
  static const Route* route(std::string_view method, std::string_view path, bool& has_path);

  /// Nothing if it has to go to the slow queue. Never throws.
  std::optional<DeskAnswer> answer(const Route& route, const DeskRequest& request,
                                   Budget budget) const;

 private:
  DeskAnswer files(const DeskRequest&, Budget) const;
  DeskAnswer read(const DeskRequest& request, Budget) const;
  DeskAnswer save(const DeskRequest& request, Budget) const;
  DeskAnswer plan(const DeskRequest& request, Budget budget) const;
  DeskAnswer quote(const DeskRequest& request, Budget budget) const;
  DeskAnswer days(const DeskRequest& request, Budget budget) const;
  DeskAnswer gauge(const DeskRequest& request, Budget budget) const;
  DeskAnswer list(const DeskRequest& request, Budget budget) const;
  DeskAnswer document(const DeskRequest& request, Budget budget) const;
  DeskAnswer keep(const DeskRequest& request, Budget) const;
  // file_routes.cpp
  DeskAnswer rename(const DeskRequest& request, Budget) const;
  DeskAnswer copy(const DeskRequest& request, Budget) const;
  DeskAnswer remove(const DeskRequest& request, Budget) const;
  DeskAnswer restore(const DeskRequest& request, Budget) const;
  DeskAnswer removed(const DeskRequest& request, Budget) const;
  DeskAnswer forget(const DeskRequest& request, Budget) const;
  // bench_routes.cpp
  DeskAnswer bench(const DeskRequest& request, Budget) const;
  DeskAnswer tick(const DeskRequest& request, Budget budget) const;
  DeskAnswer weigh_cup(const DeskRequest& request, Budget budget) const;
  DeskAnswer anew(const DeskRequest& request, Budget) const;
  DeskAnswer finish(const DeskRequest& request, Budget) const;
  // record_routes.cpp
  DeskAnswer record(const DeskRequest& request, Budget budget) const;
  DeskAnswer begin_record(const DeskRequest& request, Budget budget) const;
  DeskAnswer note(const DeskRequest& request, Budget budget) const;
  // stock_routes.cpp
  DeskAnswer stock(const DeskRequest& request, Budget budget) const;
  DeskAnswer change_stock(const DeskRequest& request, Budget budget) const;
  DeskAnswer trail(const DeskRequest& request, Budget budget) const;
  // learned_routes.cpp
  DeskAnswer learned(const DeskRequest& request, Budget budget) const;
  DeskAnswer take_learned(const DeskRequest& request, Budget budget) const;

  service::Reply replied(const service::Request& request, Budget budget) const;
  HttpAnswer served(const service::Request& request, Budget budget) const;
  struct Weighed;
  BenchRun bench_run(const std::string& file, const std::optional<std::string>& text = {}) const;
  DeskAnswer noted(const service::NoteRequest& request, const service::ShownBatch& shown,
                   Budget budget) const;
  DeskAnswer weighed(const Weighed& asked, const BenchKeeping::Change& change, Budget budget) const;
  std::string path_for(const std::string& name, bool may_be_new) const;

  moulds::Library library_;
  service::MeasureMemory& memory_;
  Workspace& workspace_;
  UploadFolder uploads_;
  std::optional<std::string> open_;
  BenchKeeping bench_;
};

}  // namespace brimwright::desk
