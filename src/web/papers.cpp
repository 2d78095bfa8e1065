#include "web/papers.h"

#include "web/secret.h"

#include <utility>

namespace brimwright::web {
namespace {

constexpr std::string_view place = "/paper/";

}  // namespace

std::string Papers::lay_out(HttpAnswer document, const std::string& name) {
  document.more.emplace_back("Content-Security-Policy",
                             "default-src 'none'; style-src 'unsafe-inline'; img-src data:; "
                             "form-action 'none'; base-uri 'none'; frame-ancestors 'none'");
  const std::string path = std::string(place) + new_token() + "/" + name;
  const std::scoped_lock alone(mutex_);
  papers_.push_back({path, std::move(document)});
  if (papers_.size() > most_) papers_.pop_front();
  return path;
}

std::optional<HttpAnswer> Papers::at(const std::string& path) const {
  const std::scoped_lock alone(mutex_);
  for (const auto& paper : papers_)
    if (is_same_secret(paper.path, path)) return paper.document;
  return std::nullopt;
}

bool Papers::is_path(const std::string& path) { return path.starts_with(place); }

}  // namespace brimwright::web
