#pragma once

#include "desk/request.h"
#include "desk/uploads.h"
#include "desk/workspace.h"
#include "service/service.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>

namespace brimwright::desk {

/// How long a request may take: quick ones measure no mesh that is not remembered.
enum class Budget { quick, slow };

/// A request as the worker gets it.
struct DeskRequest {
  std::uint64_t number = 0;  // unlike any other's of this server
  std::string method, path;
  std::map<std::string, std::string> query = {};
  std::string body = {};
};

/// An answer as the worker gives it.
struct DeskAnswer {
  HttpAnswer answer;
  std::string shared_as = {};  // to be opened by its address alone, under this name, if not empty
};

/// What is asked of the server, apart from how it is asked; see web/server.h, where it is told.
/// Used by several threads at once.
class Desk {
 public:
  /// `memory`, where what was measured is kept from one request to the next, outlives it.
  Desk(const moulds::Library& library, service::MeasureMemory& memory, Workspace& workspace,
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
  DeskAnswer gauge(const DeskRequest& request, Budget budget) const;
  DeskAnswer list(const DeskRequest& request, Budget budget) const;
  DeskAnswer document(const DeskRequest& request, Budget budget) const;
  DeskAnswer keep(const DeskRequest& request, Budget) const;

  service::Reply replied(const service::Request& request, Budget budget) const;
  HttpAnswer served(const service::Request& request, Budget budget) const;
  std::string path_for(const std::string& name, bool may_be_new) const;

  moulds::Library library_;
  service::MeasureMemory& memory_;
  Workspace& workspace_;
  UploadFolder uploads_;
  std::optional<std::string> open_;
};

}  // namespace brimwright::desk
