#pragma once

#include "service/service.h"
#include "web/http_listener.h"
#include "web/uploads.h"
#include "web/workspace.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>

namespace brimwright::web {

/// Whether a request may take as long as measuring a mesh does.
enum class Patience { none, long_enough };

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
  std::string file = {};   // in the folder of uploads: holds the body, if not empty
  std::string paper = {};  // to be laid out under this name, if not empty
};

/// What is asked of the server, apart from how it is asked; see web/server.h. Used by several
/// threads at once.
class Desk {
 public:
  Desk(const moulds::Library& library, Workspace& workspace, UploadFolder uploads,
       std::optional<std::string> open);

  struct Route {
    std::string_view method, path;
    std::uint64_t most_body;
    Patience from_the_start;  // none: first tried without
    DeskAnswer (Desk::*act)(const DeskRequest&, Patience) const;
  };
  /// Nothing if there is none for this method; `has_path` tells whether there is for another.
  static const Route* route(std::string_view method, std::string_view path, bool& has_path);

  /// Nothing if it cannot be answered without patience. Never throws.
  std::optional<DeskAnswer> answer(const Route& route, const DeskRequest& request,
                                   Patience patience) const;

 private:
  DeskAnswer files(const DeskRequest&, Patience) const;
  DeskAnswer read(const DeskRequest& request, Patience) const;
  DeskAnswer save(const DeskRequest& request, Patience) const;
  DeskAnswer plan(const DeskRequest& request, Patience patience) const;
  DeskAnswer gauge(const DeskRequest& request, Patience patience) const;
  DeskAnswer list(const DeskRequest& request, Patience patience) const;
  DeskAnswer document(const DeskRequest& request, Patience patience) const;
  DeskAnswer keep(const DeskRequest& request, Patience) const;

  HttpAnswer served(const service::Request& request, Patience patience) const;
  std::string path_for(const std::string& name, bool may_be_new) const;

  moulds::Library library_;
  Workspace& workspace_;
  UploadFolder uploads_;
  std::optional<std::string> open_;
};

}  // namespace brimwright::web
