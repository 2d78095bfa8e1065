#pragma once

#include "service/service.h"
#include "web/http_listener.h"
#include "web/papers.h"
#include "web/uploads.h"
#include "web/workspace.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace brimwright::web {

/// Whether a request may take as long as measuring a mesh does.
enum class Patience { none, long_enough };

/// What is asked of the server, apart from how it is asked; see web/server.h. Used by several
/// threads at once.
class Desk {
 public:
  Desk(const moulds::Library& library, Workspace& workspace, Uploads& uploads, Papers& papers,
       std::optional<std::string> open);

  struct Route {
    std::string_view method, path;
    std::uint64_t most_body;
    Patience from_the_start;  // none: first tried without
    HttpAnswer (Desk::*act)(const HttpRequest&, Patience) const;
  };
  /// Nothing if there is none for this method; `has_path` tells whether there is for another.
  static const Route* route(std::string_view method, std::string_view path, bool& has_path);

  /// Nothing if it cannot be answered without patience. Never throws.
  std::optional<HttpAnswer> answer(const Route& route, const HttpRequest& request,
                                   Patience patience) const;

 private:
  HttpAnswer files(const HttpRequest&, Patience) const;
  HttpAnswer read(const HttpRequest& request, Patience) const;
  HttpAnswer save(const HttpRequest& request, Patience) const;
  HttpAnswer plan(const HttpRequest& request, Patience patience) const;
  HttpAnswer gauge(const HttpRequest& request, Patience patience) const;
  HttpAnswer list(const HttpRequest& request, Patience patience) const;
  HttpAnswer document(const HttpRequest& request, Patience patience) const;
  HttpAnswer receive(const HttpRequest& request, Patience) const;
  HttpAnswer keep(const HttpRequest& request, Patience) const;

  HttpAnswer served(const service::Request& request, Patience patience) const;
  std::string path_for(const std::string& name, bool may_be_new) const;

  moulds::Library library_;
  Workspace& workspace_;
  Uploads& uploads_;
  Papers& papers_;
  std::optional<std::string> open_;
};

}  // namespace brimwright::web
