#pragma once

#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace brimwright::desk {

// A request of the page and its answer, as HTTP has them, however they come.

struct HttpAnswer {
  int status = 200;
  std::string type = "application/json";
  std::string body = {};
  std::vector<std::pair<std::string, std::string>> more = {};  // further header fields
};
/// Called once, on any thread.
using Answering = std::function<void(HttpAnswer)>;

/// What is known of a request before its body is read. The path is as sent, never decoded: it is
/// compared with the known ones and goes nowhere else.
struct HttpHead {
  std::string method;
  std::string path;
  std::map<std::string, std::string> query;  // decoded
  std::optional<std::string> key;            // X-Bench-Key
  std::optional<std::string> origin;
  std::optional<std::string> fetch_site;  // Sec-Fetch-Site
  std::string host;                       // one of the listener's own
};

/// A file that a body goes into; removed at the end of its life unless somebody kept it.
class IncomingFile {
 public:
  virtual ~IncomingFile() = default;
  virtual const std::string& path() const = 0;
};

/// Where a body goes and how long it may be.
struct BodyPlan {
  std::uint64_t most_bytes = 0;
  std::shared_ptr<IncomingFile> file = {};  // into memory if none
};

struct HttpRequest {
  HttpHead head;
  std::string body;
  std::shared_ptr<IncomingFile> file;
};

}  // namespace brimwright::desk
